/**
 * Shapes of the stickers. Each kind of piece has its own, so that it is told without colours: a
 * centre is a disc, an edge a keystone whose narrow side faces the centre, a corner a shield that is
 * round where the three faces meet.
 *
 * Outlines are flat lists of [right, down] in the unit square of a sticker, −0.5…0.5.
 */
export type Outline = readonly (readonly [number, number])[];

const GAP = 0.06;
const REACH = 0.5 - GAP;

/** Points of an arc around (x, y), angles in quarters of a circle, 0 to the right, 1 downwards. */
function arc(
  x: number,
  y: number,
  radius: number,
  from: number,
  to: number,
  steps: number,
): [number, number][] {
  return Array.from({ length: steps + 1 }, (_, step) => {
    const angle = ((from + ((to - from) * step) / steps) * Math.PI) / 2;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)] as [number, number];
  });
}

/** The outline of the sticker in this row and column of its face; `steps` points per bend. */
export function stickerOutline(row: number, column: number, steps: number): Outline {
  if (row === 1 && column === 1) return arc(0, 0, 0.37, 0, 4, steps * 4 + 4).slice(1);
  if (row === 1 || column === 1)
    return keystone(steps).map(([x, y]) => quarters(x, y, edgeQuarters(row, column)));
  return shield(steps).map(([x, y]) => quarters(x, y, cornerQuarters(row, column)));
}

/** The edge at the top of a face: wide above, narrow below. */
function keystone(steps: number): [number, number][] {
  const small = 0.09;
  const narrow = 0.13;
  return [
    ...arc(-REACH + small, -REACH + small, small, 2, 3, steps),
    ...arc(REACH - small, -REACH + small, small, 3, 4, steps),
    [REACH - 0.01, 0.02],
    [REACH - narrow, REACH],
    [-REACH + narrow, REACH],
    [-REACH + 0.01, 0.02],
  ];
}

/** The corner at the top right of a face: round there, clipped towards the centre. */
function shield(steps: number): [number, number][] {
  const small = 0.09;
  const round = 0.34;
  const clip = 0.17;
  return [
    ...arc(-REACH + small, -REACH + small, small, 2, 3, steps),
    ...arc(REACH - round, -REACH + round, round, 3, 4, steps + 1),
    ...arc(REACH - small, REACH - small, small, 0, 1, steps),
    [-REACH + clip, REACH],
    [-REACH, REACH - clip],
  ];
}

function edgeQuarters(row: number, column: number): number {
  if (row === 0) return 0;
  if (column === 2) return 1;
  return row === 2 ? 2 : 3;
}

function cornerQuarters(row: number, column: number): number {
  if (row === 0) return column === 2 ? 0 : 3;
  return column === 2 ? 1 : 2;
}

/** Turned clockwise by so many quarters, as seen on the screen (y downwards). */
function quarters(x: number, y: number, times: number): [number, number] {
  let [a, b] = [x, y];
  for (let i = 0; i < times; i++) [a, b] = [-b, a];
  return [a, b];
}
