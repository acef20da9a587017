/**
 * A scene as SVG text that stands alone: colours within, no script, no outside reference. Areas of
 * one class become one path in whole numbers, so that a cube takes a few kilobytes and fits a hover.
 */
import { COLOURS } from '../cube/vocabulary.ts';
import { BODY, INKS, type Palette } from './palette.ts';
import type { Scene, Shape } from './scene.ts';

export interface SvgOptions {
  readonly palette?: Palette;
  /** Width in pixels; that of the scene by default. */
  readonly width?: number;
}

/** Units of the printed picture per unit of the scene. */
const FINENESS = 4;

export function printSvg(scene: Scene, options: SvgOptions = {}): string {
  const width = options.width ?? scene.width;
  const height = Math.round((width * scene.height) / scene.width);
  const box = `0 0 ${String(fine(scene.width))} ${String(fine(scene.height))}`;
  const used = new Set(scene.shapes.flatMap((shape) => shape.className.split(' ')));
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${String(width)}" height="${String(height)}" viewBox="${box}" role="img">` +
    `<title>${escapeXml(scene.label)}</title><style>${printStyle(used, options.palette ?? 'standard')}</style>` +
    `${printShapes(scene.shapes)}</svg>`
  );
}

function printStyle(used: ReadonlySet<string>, palette: Palette): string {
  const rules: [string, string][] = [
    ['body', `fill:${BODY.fill};stroke:${BODY.line};stroke-width:3`],
    ...COLOURS.map((colour): [string, string] => {
      const { fill, line } = INKS[palette][colour];
      return [colour, `fill:${fill};stroke:${line};stroke-width:3`];
    }),
    ...COLOURS.map((colour): [string, string] => [
      `on-${colour}`,
      `fill:${INKS[palette][colour].letter}`,
    ]),
    ['mark-under', `fill:none;stroke:${BODY.arrow};stroke-width:14`],
    ['mark', `fill:none;stroke:${BODY.arrowLine};stroke-width:9;stroke-dasharray:16 12`],
    ['letter', 'font:600 40px sans-serif;text-anchor:middle;dominant-baseline:central'],
    ['arrow', `fill:${BODY.arrow};stroke:${BODY.arrowLine};stroke-width:5;stroke-linejoin:round`],
  ];
  return rules
    .filter(([name]) => used.has(name))
    .map(([name, rule]) => `${name === 'letter' ? 'text' : `.${name}`}{${rule}}`)
    .join('');
}

/** Neighbouring areas of the same class, text and title apart, are one path. */
function printShapes(shapes: readonly Shape[]): string {
  const order: string[] = [];
  const paths = new Map<string, string>();
  const layers = new Map<string, number>();
  let result = '';
  const flush = (): void => {
    for (const className of order)
      result += `<path class="${className}" d="${paths.get(className) ?? ''}"/>`;
    order.length = 0;
    paths.clear();
    layers.clear();
  };
  let layer = '';
  for (const shape of shapes) {
    const [first] = shape.className.split(' ');
    if (first !== layer || shape.kind === 'text') flush();
    layer = first;
    if (shape.kind === 'text') {
      const [x, y] = shape.points;
      const colour = shape.className.split(' ').find((name) => name.startsWith('on-')) ?? 'letter';
      result += `<text class="${colour}" x="${String(fine(x))}" y="${String(fine(y))}">${escapeXml(shape.text ?? '')}</text>`;
      continue;
    }
    if (!paths.has(shape.className)) order.push(shape.className);
    paths.set(shape.className, (paths.get(shape.className) ?? '') + printPath(shape));
  }
  flush();
  return result;
}

function printPath(shape: Shape): string {
  let [x, y] = [fine(shape.points[0]), fine(shape.points[1])];
  let path = `M${String(x)} ${String(y)}l`;
  for (let i = 2; i < shape.points.length; i += 2) {
    const [nextX, nextY] = [fine(shape.points[i]), fine(shape.points[i + 1])];
    path += separated(nextX - x, i > 2) + separated(nextY - y, true);
    [x, y] = [nextX, nextY];
  }
  return shape.kind === 'area' ? `${path}z` : path;
}

/** A minus sign separates two numbers as well as a space. */
function separated(value: number, follows: boolean): string {
  return follows && value >= 0 ? ` ${String(value)}` : String(value);
}

function fine(value: number): number {
  return Math.round(value * FINENESS);
}

export function escapeXml(text: string): string {
  return text.replace(/[<>&"]/g, (sign) => `&#${String(sign.charCodeAt(0))};`);
}
