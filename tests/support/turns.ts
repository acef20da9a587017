/** Turns of a plain line such as `R U' M2 x`, read without the engine's own reader. */
import { SOLVED, applyTurns, type State } from '../../engine/cube/state.ts';
import { FAMILIES, makeTurn, type Family, type Turn } from '../../engine/cube/turn.ts';

const WIDE: Readonly<Record<string, Family>> = {
  r: 'Rw',
  l: 'Lw',
  u: 'Uw',
  d: 'Dw',
  f: 'Fw',
  b: 'Bw',
};

export function turns(text: string): Turn[] {
  return text
    .split(' ')
    .filter((word) => word !== '')
    .map((word) => {
      const letters = word.replace(/[2']+$/, '');
      const family = WIDE[letters] ?? (letters as Family);
      if (!FAMILIES.includes(family)) throw new Error(`no turn: ${word}`);
      return makeTurn(family, word.endsWith('2') ? 2 : word.endsWith("'") ? 3 : 1);
    });
}

/** What the sequence leads to from the solved cube, white up and green in front. */
export function after(text: string, start: State = SOLVED): State {
  return applyTurns(start, turns(text));
}
