/**
 * Claims that the author wrote out: `check:`, `keeps:`, labels within a stage, later nets and
 * holdings. Each false goal of a claim is a finding of its own.
 */
import type { Range, Span } from '../cube/place.ts';
import type { PieceSet } from '../cube/piece.ts';
import { sameArrangement, type State } from '../cube/state.ts';
import type { Goal } from '../goals/goal.ts';
import { goalHolds, goalMissing } from '../goals/judge.ts';
import type { Method } from '../goals/methods.ts';
import type { OwnGoal } from '../goals/own-methods.ts';
import { readStageName, resolveStage } from '../goals/stage-names.ts';
import { sayBadValue } from './bad-values.ts';
import { heldOtherwise } from './check-holding.ts';
import { rangeOfTurn, strays, straysAt, turnBefore, turnRef, type Judged } from './judged.ts';
import type { RawFinding } from './raw-finding.ts';
import {
  readHolding,
  readList,
  readOpens,
  type BadValue,
  type KeyLine,
  type Words,
} from './read/index.ts';
import type { ScriptEvent } from './script.ts';

export function rangeIn(line: number, { start, end }: Span): Range {
  return { start: { line, character: start }, end: { line, character: end } };
}

/** A goal by any of its names, or one that the text defines; undefined if there is none such. */
export function goalNamed(
  text: string,
  method: Method,
  goals: readonly Goal[],
  own: readonly OwnGoal[],
  base: number,
): Goal | undefined {
  const name = readStageName(text, [method]) ?? readStageName(text);
  const index = name && resolveStage(name, method, { base, pairsSoFar: 3 });
  if (index !== undefined) return goals[index];
  const found = own.find((goal) => goal.name.toLowerCase() === text.toLowerCase());
  if (found === undefined) return undefined;
  return {
    name: found.name,
    conditions: [{ kind: 'placed', pieces: found.pieces }],
    upTo: undefined,
    parts: [],
  };
}

export function checkClaims(judged: Judged): RawFinding[] {
  const findings: RawFinding[] = [];
  for (const event of judged.script.events) {
    if (event.line < judged.firstLine || event.kind !== 'key') continue;
    for (const finding of checkKey(judged, event, event.content)) findings.push(finding);
  }
  for (const check of judged.stages.checks) {
    if (check.line < judged.firstLine) continue;
    findings.push(
      ...falseAt(judged, judged.goals[check.goal], check.place, rangeIn(check.line, check.span)),
    );
  }
  for (const claim of judged.start.claims) {
    const state = judged.course.stateAt(claim.place);
    if (state && claim.state && !sameArrangement(state, claim.state)) {
      const pieces = differing(state, claim.state);
      findings.push({
        args: {
          code: 'claim-false',
          kind: 'start',
          base: judged.base,
          pieces: strays(state, pieces),
        },
        range: claim.range,
      });
    }
  }
  return findings;
}

/** Pieces of `state` that lie otherwise than in `other`. */
function differing(state: State, other: State): PieceSet {
  let set = 0;
  for (let slot = 0; slot < 12; slot++)
    if (state.edges[slot] !== other.edges[slot]) set |= 1 << (state.edges[slot] >> 1);
  for (let slot = 0; slot < 8; slot++) {
    if (state.corners[slot] !== other.corners[slot])
      set |= 1 << (((state.corners[slot] / 3) | 0) + 12);
  }
  return set;
}

function checkKey(judged: Judged, event: ScriptEvent, content: KeyLine): RawFinding[] {
  const { line, place } = event;
  const refuse = (key: string, value: BadValue): RawFinding[] => [
    {
      args: { code: 'bad-value', key, reason: sayBadValue(value) },
      range: rangeIn(line, value.span),
    },
  ];
  switch (content.key) {
    case 'check': {
      const value = readList(content.value);
      if (value.kind === 'bad') return refuse('check', value);
      return value.items.flatMap((item) => {
        const goal = findGoal(judged, item);
        return goal
          ? falseAt(judged, goal, place, rangeIn(line, item.span))
          : [unknownGoal(judged, line, item)];
      });
    }
    case 'keeps': {
      if (judged.kind === 'sequence') return [];
      const value = readList(content.value);
      if (value.kind === 'bad') return refuse('keeps', value);
      return value.items.flatMap((item) => {
        const goal = findGoal(judged, item);
        return goal ? lostIn(judged, goal, line, item) : [unknownGoal(judged, line, item)];
      });
    }
    case 'opens': {
      const value = readOpens(content.value);
      if (value.kind === 'bad') return refuse('opens', value);
      return value.items
        .flatMap((item) => (item.until ? [item.goal, item.until] : [item.goal]))
        .filter((item) => findGoal(judged, item) === undefined)
        .map((item) => unknownGoal(judged, line, item));
    }
    case 'holding': {
      const value = readHolding(content.value);
      return value.kind === 'bad' || place === 0
        ? []
        : heldOtherwise(judged, place, value.holding, rangeIn(line, value.span));
    }
    default:
      return [];
  }
}

function findGoal({ method, goals, settings, base }: Judged, { text }: Words): Goal | undefined {
  return goalNamed(text, method, goals, settings.goals, base);
}

export function unknownGoal(
  { goals, settings }: Pick<Judged, 'goals' | 'settings'>,
  line: number,
  item: Words,
): RawFinding {
  const known = [...goals.map((goal) => goal.name), ...settings.goals.map((goal) => goal.name)];
  return {
    args: { code: 'name-unknown', what: 'goal', name: item.text, known: [...new Set(known)] },
    range: rangeIn(line, item.span),
  };
}

function falseAt(judged: Judged, goal: Goal, place: number, range: Range): RawFinding[] {
  const state = judged.course.stateAt(place);
  if (state === undefined || goalHolds(goal, state)) return [];
  const pieces = straysAt(judged, place, goalMissing(goal, state));
  return [
    {
      args: {
        code: 'claim-false',
        kind: 'check',
        goal: goal.name,
        base: judged.base,
        pieces,
        at: turnBefore(judged, place),
      },
      range,
    },
  ];
}

/** `keeps:` in a stage: no break of the goal at any turn of it. */
function lostIn(judged: Judged, goal: Goal, line: number, item: Words): RawFinding[] {
  const index = judged.stages.stageAt(line);
  const stage = index === undefined ? undefined : judged.stages.stages[index];
  const { first, end } = stage ?? { first: judged.ownFrom, end: judged.course.length };
  const turn = firstLoss(judged, goal, first, end);
  const state = turn === undefined ? undefined : judged.course.stateAt(turn + 1);
  if (turn === undefined || state === undefined) return [];
  const ref = turnRef(judged, turn);
  return [
    {
      args: {
        code: 'claim-false',
        kind: 'keeps',
        goal: goal.name,
        base: judged.base,
        pieces: straysAt(judged, turn + 1, goalMissing(goal, state)),
        turn: ref,
      },
      range: rangeIn(line, item.span),
      related: [{ range: rangeOfTurn(judged, turn), note: { kind: 'opened', turn: ref } }],
    },
  ];
}

const LOSSES = new WeakMap<Judged, Map<string, number | undefined>>();

/** The first turn of a stretch that loses a goal; a text may ask the same again and again. */
function firstLoss(judged: Judged, goal: Goal, first: number, end: number): number | undefined {
  const known = LOSSES.get(judged) ?? new Map<string, number | undefined>();
  LOSSES.set(judged, known);
  const key = `${goal.name} ${String(first)} ${String(end)}`;
  if (known.has(key)) return known.get(key);
  let found: number | undefined;
  let held = false;
  for (let place = first; place <= end && found === undefined; place++) {
    const state = judged.course.stateAt(place);
    const holds = state !== undefined && goalHolds(goal, state);
    if (held && !holds && state !== undefined) found = place - 1;
    held = holds;
  }
  known.set(key, found);
  return found;
}
