/**
 * Symmetries of an effect: ways of turning or mirroring the whole cube after which the same sequence
 * does the same, or does the inverse. Told of the pieces relative to the centres.
 */
import { HOLDINGS } from '../cube/holding.ts';
import { held, invertState, rename, sameArrangement, type State } from '../cube/state.ts';
import { printTurns } from '../notation/print.ts';
import { regrip } from '../search/person/hands.ts';

export interface Symmetry {
  /** Rotations (as one writes them) after which the sequence does the same as before; the empty one is left out. */
  readonly rotations: readonly string[];
  /** Rotations after which its mirror image, left for right, does the same as the sequence; `''` is the plain mirror image. */
  readonly mirrors: readonly string[];
  /** Done twice, it does nothing. */
  readonly selfInverse: boolean;
  /** Rotations after which it does what its inverse does. */
  readonly inverseRotations: readonly string[];
  /** Rotations after which its mirror image does what its inverse does. */
  readonly inverseMirrors: readonly string[];
}

/** `mirrored`: the effect of the sequence's mirror image, left for right. */
export function symmetryOf(effect: State, mirrored: State): Symmetry {
  const body = held(effect, 0);
  const inverse = invertState(body);
  const image = held(mirrored, 0);
  const those = (from: State, wanted: State): string[] => {
    const found: string[] = [];
    for (let holding = 0; holding < HOLDINGS; holding++) {
      if (sameArrangement(rename(from, holding), wanted)) found.push(nameOf(holding));
    }
    return found.sort((a, b) => a.length - b.length || (a < b ? -1 : 1));
  };
  return {
    rotations: those(body, body).filter((name) => name !== ''),
    mirrors: those(image, body),
    selfInverse: sameArrangement(body, inverse),
    inverseRotations: those(body, inverse).filter((name) => name !== ''),
    inverseMirrors: those(image, inverse),
  };
}

function nameOf(holding: number): string {
  return printTurns(regrip(0, holding));
}
