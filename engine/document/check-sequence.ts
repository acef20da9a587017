/**
 * Stand-alone sequences: what they do to any cube, and whether what their block claims of them is so.
 */
import { sameDoes } from '../cube/does.ts';
import { describeEffect, effectOrder, printDoes } from '../cube/effect.ts';
import { SOLVED, applyTurn, applyTurns, compose, type State } from '../cube/state.ts';
import type { Goal } from '../goals/goal.ts';
import { goalHolds, goalPieces, notPlaced, readWhere } from '../goals/judge.ts';
import { effectKeeps } from '../goals/keeps.ts';
import { JUMP } from '../goals/course.ts';
import { withoutRotations } from '../notation/transform.ts';
import type { SequenceFacts } from './analysis.ts';
import { sayBadValue } from './bad-values.ts';
import { goalNamed, rangeIn, unknownGoal } from './check-claims.ts';
import { strays, turnRef, type Judged } from './judged.ts';
import type { RawFinding, RawFix } from './raw-finding.ts';
import { readDoes, readList, readOrder } from './read/index.ts';

/** The effect of all turns done in the reference holding; undefined if some are unknown. */
function wholeEffect({ script }: Judged): State | undefined {
  let state = SOLVED;
  for (const [index, code] of script.codes.entries()) {
    if (code !== JUMP) {
      state = applyTurn(state, code);
      continue;
    }
    const jump = script.jumps.get(index);
    if (jump?.kind !== 'power') return undefined;
    state = compose(state, jump.effect);
  }
  return state;
}

export interface SequenceResult {
  readonly facts: SequenceFacts | undefined;
  readonly findings: readonly RawFinding[];
}

export function checkSequence(judged: Judged): SequenceResult {
  const effect = wholeEffect(judged);
  const findings: RawFinding[] = [];
  // Rotations taken out; where a step is no single turn they cannot be, and stay.
  const still =
    effect &&
    (judged.script.jumps.size === 0
      ? applyTurns(SOLVED, withoutRotations(judged.script.codes))
      : effect);
  // The effect on a cube that is held as this block begins, relative to its centres.
  const onBody = effect && bodyEffect(judged);
  for (const event of judged.script.events) {
    if (event.kind !== 'key') continue;
    const { key, value } = event.content;
    const range = rangeIn(event.line, value.span);
    if (key === 'order') {
      const read = readOrder(value);
      if (read.kind === 'bad')
        findings.push({ args: { code: 'bad-value', key, reason: sayBadValue(read) }, range });
      else if (effect && read.order !== effectOrder(effect)) {
        findings.push({
          args: {
            code: 'claim-false',
            kind: 'order',
            claimed: read.order,
            computed: effectOrder(effect),
          },
          range,
          fixes: [written(String(effectOrder(effect)), range)],
        });
      }
    } else if (key === 'does') {
      const read = readDoes(value);
      if (read.kind === 'bad')
        findings.push({
          args: { code: 'bad-value', key, reason: sayBadValue(read) },
          range: rangeIn(event.line, read.span),
        });
      else if (still) {
        if (!sameDoes(read, still)) {
          const does = printDoes(describeEffect(still));
          findings.push({
            args: {
              code: 'claim-false',
              kind: 'does',
              claimed: value.text,
              computed: does || 'nothing',
            },
            range,
            ...(does === '' ? {} : { fixes: [written(does, range)] }),
          });
        }
      }
    } else if (key === 'keeps') {
      const read = readList(value);
      if (read.kind === 'bad') {
        findings.push({ args: { code: 'bad-value', key, reason: sayBadValue(read) }, range });
        continue;
      }
      for (const item of read.items) {
        const goal = goalNamed(
          item.text,
          judged.method,
          judged.goals,
          judged.settings.goals,
          judged.base,
        );
        if (goal === undefined) findings.push(unknownGoal(judged, event.line, item));
        else if (onBody && !effectKeeps(goal, onBody))
          findings.push(notKept(judged, goal, onBody, rangeIn(event.line, item.span)));
      }
    }
  }
  if (effect === undefined || still === undefined || onBody === undefined)
    return { facts: undefined, findings };
  return {
    findings,
    facts: {
      order: effectOrder(effect),
      keeps: judged.goals.map((goal) => ({ goal: goal.name, holds: effectKeeps(goal, onBody) })),
      does: printDoes(describeEffect(still)),
    },
  };
}

function written(newText: string, range: RawFinding['range']): RawFix {
  return { title: `Write ${newText}`, edits: [{ range, newText }] };
}

function bodyEffect({ course, start }: Judged): State | undefined {
  const first = course.stateAt(0);
  if (first === undefined || start.from !== 'any') return undefined;
  return course.stateAt(course.length);
}

function notKept(
  judged: Judged,
  goal: Goal,
  effect: State,
  range: RawFinding['range'],
): RawFinding {
  const lost = lostFor(judged, goal);
  const moved = notPlaced(readWhere(effect), goalPieces(goal));
  const turn = lost === undefined ? undefined : turnRef(judged, lost);
  return {
    args: {
      code: 'claim-false',
      kind: 'keeps',
      goal: goal.name,
      base: judged.base,
      pieces: strays(effect, moved),
      turn,
    },
    range,
    ...(lost === undefined
      ? {}
      : {
          related: [
            {
              range: {
                start: { line: judged.script.lines[lost], character: judged.script.starts[lost] },
                end: { line: judged.script.lines[lost], character: judged.script.ends[lost] },
              },
              note: { kind: 'opened' as const, turn: turnRef(judged, lost) },
            },
          ],
        }),
  };
}

/** The turn after which the goal, begun on a solved cube, never comes back; undefined if it holds at the end. */
function lostFor({ course }: Judged, goal: Goal): number | undefined {
  let lost: number | undefined;
  for (let place = 1; place <= course.length; place++) {
    const state = course.stateAt(place);
    if (state === undefined || goalHolds(goal, state)) lost = undefined;
    else lost ??= place - 1;
  }
  return lost;
}
