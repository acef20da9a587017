/**
 * A picture as data: shapes with a class and points, in the units of a canvas. The same scene is
 * printed as SVG text (hovers, shared files) or drawn by a view, which styles it by class.
 *
 * Classes are separated by spaces, as in HTML; the last word about colours is with whoever draws.
 */
export interface Shape {
  readonly kind: 'area' | 'line' | 'text';
  readonly className: string;
  /** x and y in turn; an area is closed, a text has one point. */
  readonly points: readonly number[];
  /** The words of a text. */
  readonly text?: string;
  /** What a click on the shape means: a facelet (0…53), or a place (0…length) in the course. */
  readonly facelet?: number;
  readonly place?: number;
  /** Said to whoever cannot see the shape, and on hovering. */
  readonly title?: string;
}

export interface Scene {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  /** What the picture shows, in a sentence. */
  readonly label: string;
}
