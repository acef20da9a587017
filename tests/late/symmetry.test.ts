/** Symmetries of an effect, each confirmed on stickers: the turned or mirrored sequence is really done there. */
import { expect, test } from 'vitest';
import { applyTurns, SOLVED } from '../../engine/cube/state.ts';
import { symmetryOf } from '../../engine/late/symmetry.ts';
import { printTurns } from '../../engine/notation/print.ts';
import { invertTurns, mirrorTurns } from '../../engine/notation/transform.ts';
import { turnsOf } from '../../engine/search/person/sequences.ts';
import { readPieces, replay, SOLVED_CUBE } from '../naive/stickers.ts';

/** What lies where relative to the centres, after these turns. */
function lies(turns: string): string {
  const cube = replay(
    SOLVED_CUBE,
    turns.split(' ').filter((turn) => turn !== ''),
  );
  const places = [...readPieces(cube)].map(
    ([name, stickers]) =>
      `${name}: ${stickers.map(({ colour, on }) => `${colour}/${on}`).join(' ')}`,
  );
  return places.toSorted().join('\n');
}

function around(rotation: string, inner: string): string {
  return `${rotation} ${inner} ${printTurns(invertTurns(turnsOf(rotation)))}`;
}

test.each([
  ["R' F R' B2 R F' R' B2 R2"],
  ["R U R' U' R U R' U'"],
  ["F R U R' U' F'"],
  ["R L U2 R' L'"],
  ["U D'"],
  ['M2 E2 S2'],
  ["F2 U' L R' F2 L' R U' F2"],
])('%s: what is said of its symmetry is so on stickers, and nothing is left unsaid', (text) => {
  const turns = turnsOf(text);
  const mirrored = mirrorTurns(turns, 'left-right');
  const said = symmetryOf(applyTurns(SOLVED, turns), applyTurns(SOLVED, mirrored));
  const itself = lies(text);
  const inverse = lies(printTurns(invertTurns(turns)));
  const image = printTurns(mirrored);
  const all = [...said24()];
  const those = (inner: string, wanted: string): string[] =>
    all.filter((rotation) => lies(around(rotation, inner)) === wanted).toSorted();
  expect(['', ...said.rotations].toSorted()).toEqual(those(text, itself));
  expect(said.mirrors.toSorted()).toEqual(those(image, itself));
  expect(said.selfInverse).toBe(itself === inverse);
  const inverses = said.selfInverse ? ['', ...said.inverseRotations] : said.inverseRotations;
  expect(inverses.toSorted()).toEqual(those(text, inverse));
  expect(said.inverseMirrors.toSorted()).toEqual(those(image, inverse));
});

/** All 24 rotations, by the names that the cube with the most symmetry gets. */
function said24(): string[] {
  return ['', ...symmetryOf(SOLVED, SOLVED).rotations];
}
