/**
 * What holds for a file or a block: holding, base, method, and the goals and methods that the text
 * defines. Keys of a block go before those above the first block.
 */
import type { Holding } from '../cube/holding.ts';
import { METHODS, findMethod, type Method } from '../goals/methods.ts';
import { makeMethod, makeOwnGoal, type OwnGoal } from '../goals/own-methods.ts';
import { sayBadValue } from './bad-values.ts';
import type { RawFinding } from './raw-finding.ts';
import {
  keyLines,
  readBase,
  readGoal,
  readHolding,
  readMethod,
  readTime,
  readUse,
  type BadValue,
  type DocumentTree,
  type Words,
} from './read/index.ts';

export interface Settings {
  /** How the cube is held for the scramble and the first turn. */
  readonly holding: Holding;
  readonly holdingGiven: boolean;
  /** Colour index, if declared. */
  readonly base: number | undefined;
  readonly method: Method | undefined;
  /** The methods of this project, then those that the text defines. */
  readonly methods: readonly Method[];
  readonly goals: readonly OwnGoal[];
}

/** White up, green in front: WCA Regulation 4d1. */
export const DEFAULT_SETTINGS: Settings = {
  holding: 0,
  holdingGiven: false,
  base: undefined,
  method: undefined,
  methods: METHODS,
  goals: [],
};

export interface ReadSettings {
  readonly settings: Settings;
  readonly findings: readonly RawFinding[];
}

/** `lines`: those whose keys count; `firstTurns`: a `holding:` from this line on is a claim and sets nothing. */
export function readSettings(
  tree: DocumentTree,
  lines: readonly number[],
  inherited: Settings,
  firstTurns: number,
  origin: number,
): ReadSettings {
  const findings: RawFinding[] = [];
  const rangeOf = (line: number, { span }: Pick<Words, 'span'>): RawFinding['range'] => ({
    start: { line: line - origin, character: span.start },
    end: { line: line - origin, character: span.end },
  });
  const refuse = (line: number, key: string, value: BadValue): void => {
    findings.push({
      args: { code: 'bad-value', key, reason: sayBadValue(value) },
      range: rangeOf(line, value),
    });
  };
  for (const [key, read] of [
    ['time', readTime],
    ['use', readUse],
  ] as const) {
    for (const { line, content } of keyLines(tree, lines, key)) {
      const value = read(content.value);
      if (value.kind === 'bad') refuse(line, key, value);
    }
  }
  let { holding, holdingGiven, base, method } = inherited;
  for (const { line, content } of keyLines(tree, lines, 'holding')) {
    const value = readHolding(content.value);
    if (value.kind === 'bad') refuse(line, 'holding', value);
    else if (line < firstTurns) {
      holding = value.holding;
      holdingGiven = true;
      break;
    }
  }
  for (const { line, content } of keyLines(tree, lines, 'base')) {
    const value = readBase(content.value);
    if (value.kind === 'bad') refuse(line, 'base', value);
    else base = value.base;
  }
  const newGoals: OwnGoal[] = [];
  const ownGoals = new Map<string, number>();
  for (const { line, content } of keyLines(tree, lines, 'goal')) {
    const value = readGoal(content.value);
    if (value.kind === 'bad') {
      refuse(line, 'goal', value);
      continue;
    }
    const made = makeOwnGoal(
      value.name.text,
      value.slots.map((slot) => slot.text).join(' '),
      holding,
    );
    if (made.kind !== 'goal') continue;
    const key = made.goal.name.toLowerCase();
    const first = ownGoals.get(key);
    if (first !== undefined) {
      findings.push(twice(value.name, line, first));
      continue;
    }
    ownGoals.set(key, line);
    newGoals.push(made.goal);
  }
  // A goal of the same name takes the place of an inherited one.
  const goals = [
    ...inherited.goals.filter((goal) => !ownGoals.has(goal.name.toLowerCase())),
    ...newGoals,
  ];
  const methods = [...inherited.methods];
  const ownMethods = new Map<string, number>();
  for (const { line, content } of keyLines(tree, lines, 'method')) {
    const value = readMethod(content.value);
    if (value.kind === 'bad') {
      refuse(line, 'method', value);
    } else if (value.kind === 'method-use') {
      const found = findMethod(value.name.text, methods);
      if (found) method = found;
      else {
        findings.push({
          args: {
            code: 'name-unknown',
            what: 'method',
            name: value.name.text,
            known: methods
              .filter((other) => other.variantOf === undefined)
              .map((other) => other.name),
          },
          range: rangeOf(line, value.name),
        });
      }
    } else {
      const key = value.name.text.toLowerCase();
      const first = ownMethods.get(key);
      if (first !== undefined) {
        findings.push(twice(value.name, line, first));
        continue;
      }
      const made = makeMethod(
        value.name.text,
        value.stages.map((stage) => stage.text),
        goals,
      );
      if (made.kind === 'method') {
        ownMethods.set(key, line);
        const same = methods.findIndex((other) => other.name.toLowerCase() === key);
        if (same >= 0) methods.splice(same, 1);
        methods.push(made.method);
        method = made.method;
      } else if (made.kind === 'unknown-stage' || made.kind === 'stage-twice') {
        const stage = value.stages.find((other) => other.text === made.text) ?? value.name;
        findings.push(
          made.kind === 'unknown-stage'
            ? {
                args: {
                  code: 'name-unknown',
                  what: 'goal',
                  name: made.text,
                  known: goals.map((goal) => goal.name),
                },
                range: rangeOf(line, stage),
              }
            : {
                args: {
                  code: 'bad-value',
                  key: 'method',
                  reason: `“${made.text}” is listed twice`,
                },
                range: rangeOf(line, stage),
              },
        );
      }
    }
  }
  return { settings: { holding, holdingGiven, base, method, methods, goals }, findings };

  function twice(name: Words, line: number, first: number): RawFinding {
    const start = { line: first - origin, character: 0 };
    return {
      args: { code: 'name-twice', name: name.text, line: first - origin },
      range: rangeOf(line, name),
      related: [{ range: { start, end: start }, note: { kind: 'first', name: name.text } }],
    };
  }
}
