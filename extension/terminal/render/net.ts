/** The cube as an unfolded net of letters, each on its colour. Without colours the net can be pasted after `start:`. */
import type { Faces } from '../../../engine/cube/facelets.ts';
import { COLOURS, COLOUR_INITIALS } from '../../../engine/cube/vocabulary.ts';
import type { Page } from './page.ts';

const ROWS = [0, 1, 2] as const;

export function netLines(faces: Faces, page: Page): string[] {
  const band = (sides: readonly string[], row: number): string =>
    sides.map((side) => stickers(side.slice(row * 3, row * 3 + 3), page)).join(' ');
  const blank = ' '.repeat(page.depth === 'none' ? 6 : 10);
  return [
    ...ROWS.map((row) => blank + band([faces.U], row)),
    ...ROWS.map((row) => band([faces.L, faces.F, faces.R, faces.B], row)),
    ...ROWS.map((row) => blank + band([faces.D], row)),
  ];
}

/** In colour each sticker is three columns wide, so that it comes out about square. */
function stickers(initials: string, page: Page): string {
  if (page.depth === 'none') return [...initials].join(' ');
  return [...initials]
    .map((initial) => {
      const colour = COLOURS[COLOUR_INITIALS.findIndex((known) => known === initial)];
      return page.sticker(colour, ` ${initial} `);
    })
    .join('');
}
