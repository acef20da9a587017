import { describe, expect, it } from 'vitest';
import { countTurns } from '../../engine/notation/count.ts';
import { execute } from '../../engine/notation/execute.ts';
import { readSequence } from '../../engine/notation/read.ts';
import { resolveNamed } from './sequences.ts';

function counts(text: string) {
  const { codes, jumps } = execute(readSequence(text).items, {
    resolve: resolveNamed,
    limit: 1000,
  });
  return countTurns(codes, (index) => {
    const jump = jumps.get(index);
    return jump?.kind === 'power' ? jump.tally : { obtm: 0, etm: 0, stm: 0, qtm: 0 };
  });
}

describe('counts of turns', () => {
  // WCA Regulations 12a5: face and outer block moves 1, rotations 0; 12a6: rotations 1 as well.
  it.each([
    ["R U2 F'", { obtm: 3, etm: 3, stm: 3, qtm: 4 }],
    ['Rw Uw2', { obtm: 2, etm: 2, stm: 2, qtm: 3 }],
    ['x R y2', { obtm: 1, etm: 3, stm: 1, qtm: 1 }],
  ])('%s by OBTM (12a5) and ETM (12a6)', (text, expected) => {
    expect(counts(text)).toEqual(expected);
  });

  // Common practice; 12a5 leaves slices open.
  it.each([
    ['M', { obtm: 2, etm: 1, stm: 1, qtm: 2 }],
    ['M2', { obtm: 2, etm: 1, stm: 1, qtm: 4 }],
    ["E' S2", { obtm: 4, etm: 2, stm: 2, qtm: 6 }],
  ])('slices: %s', (text, expected) => {
    expect(counts(text)).toEqual(expected);
  });

  it('the flip of all twelve edges takes 20 face turns, 28 quarter turns (Singmaster 1981, recalled)', () => {
    const text = "U R2 F B R B2 R U2 L B2 R U' D' R2 F R' L B2 U2 F2";
    expect(counts(text)).toEqual({ obtm: 20, etm: 20, stm: 20, qtm: 28 });
  });

  it('pauses and unknown stretches count nothing', () => {
    expect(counts('R ~ … U')).toEqual({ obtm: 2, etm: 2, stm: 2, qtm: 2 });
  });

  it('a repeat done as one step counts its turns, null where a count is beyond 2^53 − 1', () => {
    expect(counts('F (M R2)1000')).toEqual({ obtm: 3001, etm: 2001, stm: 2001, qtm: 4001 });
    expect(counts(`(y M2)${String(2 ** 51)}`)).toEqual({
      obtm: 2 ** 52,
      etm: 2 ** 52,
      stm: 2 ** 51,
      qtm: null,
    });
    expect(counts(`(x)${'9'.repeat(40)}`)).toEqual({ obtm: 0, etm: null, stm: 0, qtm: 0 });
  });

  it('a stretch is counted by its places', () => {
    const { codes } = execute(readSequence('R U x F').items, { resolve: resolveNamed, limit: 10 });
    expect(countTurns(codes, undefined, 1, 3)).toEqual({ obtm: 1, etm: 2, stm: 1, qtm: 1 });
  });
});
