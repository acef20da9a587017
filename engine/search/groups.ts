/**
 * Which pieces of a goal are looked up together. A lower bound on the turns still needed is the
 * largest distance of any group of up to four pieces, so groups are chosen to hold pieces that
 * hinder each other: the edges of one layer, and each corner with the three edges around it.
 */
import {
  ALL_CORNERS,
  ALL_EDGES,
  faceletsOf,
  piecesIn,
  type Piece,
  type PieceSet,
} from '../cube/piece.ts';
import { GROUP_SIZE, buildDistances, type DistanceTable } from './distances.ts';
import type { Pattern } from './pattern.ts';
import type { Search } from './step.ts';

/** Tables kept, the oldest dropped first: at 324 KiB each, at most 16 MB. */
const KEPT_TABLES = 48;

const tables = new Map<string, DistanceTable>();

/** The groups whose distances bound a search for this pattern. */
export function groupsFor(pattern: Pattern): Piece[][] {
  const edges = byCommonColour(pattern.pieces & ALL_EDGES);
  const corners = byCommonColour(pattern.pieces & ALL_CORNERS);
  if (edges.length + corners.length <= GROUP_SIZE) return [[...edges, ...corners]];
  const groups = [...chunks(edges), ...chunks(corners)];
  for (const corner of corners) {
    const around = edges.filter((edge) =>
      faceletsOf(edge).every((face) => faceletsOf(corner).includes(face)),
    );
    if (around.length >= 2) groups.push([corner, ...around]);
  }
  return groups;
}

/** The pieces of the layer to which most of them belong come first, so that they share a group. */
function byCommonColour(set: PieceSet): Piece[] {
  const pieces = piecesIn(set);
  const counts = new Array<number>(6).fill(0);
  for (const piece of pieces) for (const colour of faceletsOf(piece)) counts[colour]++;
  const common = counts.indexOf(Math.max(...counts));
  const rank = (piece: Piece): number => (faceletsOf(piece).includes(common) ? 0 : 1);
  return pieces.sort((a, b) => rank(a) - rank(b) || a - b);
}

function chunks(pieces: readonly Piece[]): Piece[][] {
  const result: Piece[][] = [];
  for (let i = 0; i < pieces.length; i += GROUP_SIZE) result.push(pieces.slice(i, i + GROUP_SIZE));
  return result;
}

/** The tables for a pattern, built where they are not kept from an earlier search. */
export function* tablesFor(pattern: Pattern): Search<DistanceTable[]> {
  const result: DistanceTable[] = [];
  for (const pieces of groupsFor(pattern)) {
    const masks = pattern.alternatives.map((alternative) =>
      pieces.map((piece) => alternative[piece]),
    );
    const key = `${pieces.join(',')}:${masks.map((own) => own.join(',')).join('|')}`;
    let table = tables.get(key);
    tables.delete(key);
    table ??= yield* buildDistances(pieces, masks);
    tables.set(key, table);
    result.push(table);
  }
  for (const key of tables.keys()) {
    if (tables.size <= KEPT_TABLES) break;
    tables.delete(key);
  }
  return result;
}

/** Drops all kept tables, so that a cold start can be measured. */
export function dropTables(): void {
  tables.clear();
}
