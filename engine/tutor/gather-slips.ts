/** Facts on where the written turns went wrong: single changes after which the block ends solved. */
import type { Turn } from '../cube/turn.ts';
import { JUMP } from '../goals/course.ts';
import { printTurns } from '../notation/print.ts';
import { findSlips } from '../search/slips/find.ts';
import type { Search } from '../search/step.ts';
import type { Fact, NoSlipFact, SlipFact } from './facts.ts';
import { isNumbered, nameTurn, type Scene } from './scene.ts';

/** So many are told; the rest are less likely. */
const TOLD = 2;

export function* gatherSlips(scene: Scene): Search<Fact[]> {
  const { block } = scene;
  const { course } = block;
  const place = { block: block.line, at: course.length, then: '' };
  const none = (why: NoSlipFact['why']): Fact[] => [{ kind: 'no-slip', place, why }];
  const codes: Turn[] = Array.from({ length: course.length }, (_, turn) => course.codes[turn]);
  const known = block.startFrom === 'scramble' || block.startFrom === 'net';
  if (block.start === undefined || !known || codes.includes(JUMP)) return none('unknown');
  const result = yield* findSlips(block.start, codes, { pairs: false, most: TOLD * 4 });
  if (result.kind === 'already-solved') return none('solved');
  const facts = result.slips.flatMap(({ edits }): SlipFact[] => {
    if (edits.length !== 1) return [];
    const [{ index, remove, turns }] = edits;
    const at = remove === 0 ? index - 1 : index;
    if (at < 0 || at >= course.length || !isNumbered(block, at)) return [];
    const common = {
      kind: 'slip' as const,
      place,
      turns: printTurns(turns),
      at: nameTurn(block, at),
    };
    if (remove === 0) return [{ ...common, change: 'insert' }];
    if (remove === 1) return [{ ...common, change: turns.length === 0 ? 'remove' : 'replace' }];
    const swapped = remove === 2 && turns[0] === codes[index + 1] && turns[1] === codes[index];
    return swapped ? [{ ...common, change: 'swap' }] : [];
  });
  return facts.length > 0 ? facts.slice(0, TOLD) : none('none');
}
