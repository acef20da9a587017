/** Facts on the last layer as people recognise it, and on how to hold it for the sequence that follows. */
import { CENTRE_AT, FACE_OF } from '../cube/holding.ts';
import { colourFacelets } from '../cube/facelets.ts';
import { held } from '../cube/state.ts';
import { COLOURS, FACES, OPPOSITE } from '../cube/vocabulary.ts';
import { lastLayerCase } from '../goals/cases.ts';
import { printTurns } from '../notation/print.ts';
import type { PersonStep } from '../search/person/step.ts';
import type { CaseFact, Fact, HoldFact, SidesFact } from './facts.ts';
import { goalFact } from './goal-facts.ts';
import { standFact } from './gather-where.ts';
import { dueGoal, ownGoal } from './referents.ts';
import { namePiece, type Scene } from './scene.ts';

export function caseFact({ state, base, place }: Scene): CaseFact | undefined {
  const found = lastLayerCase(state, base);
  if (found === undefined) return undefined;
  const { orientation, permutation } = found;
  return {
    kind: 'case',
    place,
    base: COLOURS[base],
    edges: orientation.edges,
    cornersRight: orientation.cornersRight,
    swap: permutation?.corners,
    letter: permutation === undefined || permutation.letter === '' ? undefined : permutation.letter,
  };
}

export function holdFact({ place }: Scene, step: PersonStep): HoldFact {
  const map = CENTRE_AT[step.holding];
  return {
    kind: 'hold',
    place,
    regrip: printTurns(step.regrip),
    up: COLOURS[map[0]],
    front: COLOURS[map[2]],
    setup: printTurns(step.setup),
    sequence: printTurns(step.sequence),
    times: step.times,
  };
}

/** `step`: what a person would do here; undefined where the method has no such way. */
export function gatherCase(scene: Scene, step: PersonStep | undefined): Fact[] {
  const facts: Fact[] = [standFact(scene)];
  const found = caseFact(scene);
  if (found) facts.push(found);
  else {
    const due = dueGoal(scene);
    if (due !== undefined) facts.push(goalFact(scene, ownGoal(scene, due)));
  }
  if (step) {
    const piece = step.piece === undefined ? undefined : namePiece(step.piece, scene.base);
    facts.push(
      { kind: 'cue', place: scene.place, base: COLOURS[scene.base], piece, cue: step.reason },
      holdFact(scene, step),
    );
  }
  return facts;
}

/** Which sides of the last layer agree; its pieces are seen as they lie, whatever layers below are done. */
export function sidesFact({ state, base, place }: Scene): SidesFact {
  const top = OPPOSITE[base];
  // Held with the top up, the upper row of each side shows the layer.
  const holding = CENTRE_AT.findIndex((map) => map[0] === top);
  const colours = colourFacelets(held(state, holding));
  const agree: SidesFact['agree'][number][] = [];
  const finished: SidesFact['agree'][number][] = [];
  for (const face of [2, 1, 4, 3]) {
    const [left, middle, right] = [0, 1, 2].map((i) => colours[face * 9 + i]);
    const shown = FACES[FACE_OF[state.holding][CENTRE_AT[holding][face]]];
    if (left === right) agree.push(shown);
    if (left === right && middle === left) finished.push(shown);
  }
  return { kind: 'sides', place, base: COLOURS[base], agree, finished };
}
