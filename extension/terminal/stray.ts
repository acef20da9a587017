/** `slips FILE --cube NET`: a cube that does not look as the solve says. */
import { readNet } from '../../engine/cube/net.ts';
import { readState } from '../../engine/cube/possible.ts';
import { explainProblem } from '../../engine/cube/remedy.ts';
import { sayNetProblem } from '../../engine/document/bad-values.ts';
import { strayIn, type StrayAnswer } from '../../engine/late/stray.ts';
import { complete } from '../../engine/search/step.ts';
import { refused, type Arguments, type Outcome } from './command.ts';
import type { StrayJson } from './json-searches.ts';
import { readPlace } from './place.ts';
import { strayText } from './render/stray.ts';

export function strayOutcome(file: string, args: Arguments): Outcome {
  const net = readNet((args.value('cube') ?? '').split('/'));
  if (net.kind === 'bad-net')
    return refused(`The net cannot be read: ${sayNetProblem(net.problems[0])}.`);
  const read = readState(net.colours);
  if (read.kind === 'impossible') {
    return refused(`No turns lead to this cube: ${explainProblem(read.problems[0]).reason}.`);
  }
  const place = readPlace(file, args);
  if (place.kind === 'refused') return place;
  const { block, analysis, turns } = place;
  const answer: StrayAnswer | undefined =
    block && complete(strayIn(analysis.lines, block, read.state, turns));
  if (answer === undefined) return refused('The turns of this solve, or its start, are not known.');
  const json: StrayJson = {
    slips: [],
    stray: {
      places: answer.places.map((one) => ({ ...one })),
      slips: [...answer.slips],
      back: answer.back === undefined ? null : { ...answer.back },
    },
  };
  return { kind: 'done', json, text: (page) => strayText(json, page), status: 0 };
}
