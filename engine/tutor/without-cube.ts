/** Where the cube at a place is not known: why not, and what can be said all the same, of any cube. */
import type { Position } from '../cube/place.ts';
import { SOLVED } from '../cube/state.ts';
import type { Analysis } from '../document/analysis.ts';
import type { Search } from '../search/step.ts';
import type { Fact, FactPlace } from './facts.ts';
import { gatherOther } from './gather-other.ts';
import type { Intent, Memory, Understood } from './intents.ts';
import { blockOf, type Scene } from './scene.ts';

/** Facts that hold on any cube. */
const OF_ANY_CUBE: ReadonlySet<Fact['kind']> = new Set<Fact['kind']>([
  'effect',
  'counts',
  'related',
  'shorter',
  'compare',
  'way',
  'term',
  'flaw',
]);

const WITHOUT_CUBE: ReadonlySet<Intent> = new Set<Intent>([
  'what-does',
  'shorter',
  'compare',
  'which-way',
  'explain-term',
  'is-possible',
]);

/** No facts: nothing can be said. */
export function* gatherWithoutCube(
  analysis: Analysis,
  position: Position | undefined,
  place: FactPlace,
  understood: Understood,
  memory: Memory,
): Search<readonly Fact[]> {
  const block = blockOf(analysis, position);
  if (block === undefined || understood.intent === 'not-understood') return [];
  const asksState = understood.intent === 'is-possible' && understood.flaw === undefined;
  if (WITHOUT_CUBE.has(understood.intent) && !asksState && understood.places.length === 0) {
    const { goals } = block.timeline;
    const scene: Scene = { block, at: 0, then: [], state: SOLVED, goals, base: block.base, place };
    const found = yield* gatherOther(scene, understood, { goal: undefined, pieces: [] }, memory);
    const facts = found.kind === 'facts' ? found.facts : [];
    const sound = facts.filter(({ kind }) => OF_ANY_CUBE.has(kind));
    if (sound.length > 0) return sound;
  }
  const finding = analysis.findings.find(
    ({ code, range }) =>
      code === 'state-impossible' &&
      range.start.line >= block.range.start.line &&
      range.start.line <= block.range.end.line,
  );
  return finding === undefined ? [] : [{ kind: 'impossible', place, message: finding.message }];
}
