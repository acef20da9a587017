/**
 * Holdings: which colour is up and which is in front, one of 24. Holding 0 is white up, green
 * front (the scrambling position of WCA Regulation 4d1); red is then on the right.
 *
 * A holding is an index. `CENTRE_AT[h][face]` is the colour of the centre seen at `face` in the
 * hands; as colour `i` belongs to face `i` of the reference holding, it is a map of face indices,
 * too, and composing holdings is composing these maps.
 */
import { COLOURS, NORMALS, OPPOSITE, type Colour } from './vocabulary.ts';

export type Holding = number;

export const HOLDINGS = 24;

/** `ROTATED_FACE[f][g]`: where the facelet at face `g` goes when the whole cube turns a quarter clockwise as seen at face `f`. */
const ROTATED_FACE: readonly (readonly number[])[] = NORMALS.map((axis) =>
  NORMALS.map((normal) => {
    const turned = quarterTurn(axis, normal);
    return NORMALS.findIndex((other) => other.every((value, i) => value === turned[i]));
  }),
);

/** A vector turned a quarter about an axis, clockwise as seen from the tip of the axis. */
export function quarterTurn(
  axis: readonly [number, number, number],
  vector: readonly [number, number, number],
): [number, number, number] {
  const [ax, ay, az] = axis;
  const [x, y, z] = vector;
  const along = ax * x + ay * y + az * z;
  // Clockwise by 90°: the part along the axis stays, the rest becomes vector × axis.
  return [
    ax * along + (y * az - z * ay),
    ay * along + (z * ax - x * az),
    az * along + (x * ay - y * ax),
  ];
}

function rotateMap(centreAt: readonly number[], axisFace: number): number[] {
  const result = new Array<number>(6);
  for (let face = 0; face < 6; face++) {
    result[ROTATED_FACE[axisFace][face]] = centreAt[face];
  }
  return result;
}

/** `CENTRE_AT[h][face]` = colour index of the centre at that face in the hands. */
export const CENTRE_AT: readonly (readonly number[])[] = buildHoldings();

function buildHoldings(): number[][] {
  const found: number[][] = [[0, 1, 2, 3, 4, 5]];
  for (let i = 0; i < found.length; i++) {
    for (const axisFace of [0, 3]) {
      const next = rotateMap(found[i], axisFace);
      if (!found.some((other) => other.every((value, k) => value === next[k]))) found.push(next);
    }
  }
  return found;
}

function holdingOf(centreAt: readonly number[]): Holding {
  return CENTRE_AT.findIndex((other) => other[0] === centreAt[0] && other[2] === centreAt[2]);
}

/** `FACE_OF[h][colour]` = face in the hands at which that centre is seen. */
export const FACE_OF: readonly (readonly number[])[] = CENTRE_AT.map((map) =>
  COLOURS.map((_, colour) => map.indexOf(colour)),
);

/** `ROTATE[h][face * 4 + quarters]`: the holding after turning the whole cube as seen at `face`. */
export const ROTATE: readonly (readonly Holding[])[] = CENTRE_AT.map((map) => {
  const row: Holding[] = [];
  for (let face = 0; face < 6; face++) {
    let turned: readonly number[] = map;
    for (let quarters = 0; quarters < 4; quarters++) {
      row.push(holdingOf(turned));
      turned = rotateMap(turned, face);
    }
  }
  return row;
});

/** `COMPOSE_HOLDINGS[a][b]`: held as `a`, then turned by the rotation that leads from holding 0 to `b`. */
export const COMPOSE_HOLDINGS: readonly (readonly Holding[])[] = CENTRE_AT.map((a) =>
  CENTRE_AT.map((b) => holdingOf(b.map((face) => a[face]))),
);

export const INVERSE_HOLDING: readonly Holding[] = COMPOSE_HOLDINGS.map((row) => row.indexOf(0));

/** The holding with these colours up and in front; undefined if they are the same or opposite. */
export function holdingFrom(up: Colour, front: Colour): Holding | undefined {
  const upIndex = COLOURS.indexOf(up);
  const frontIndex = COLOURS.indexOf(front);
  if (upIndex === frontIndex || OPPOSITE[upIndex] === frontIndex) return undefined;
  return CENTRE_AT.findIndex((map) => map[0] === upIndex && map[2] === frontIndex);
}

export function colourAt(holding: Holding, face: number): Colour {
  return COLOURS[CENTRE_AT[holding][face]];
}
