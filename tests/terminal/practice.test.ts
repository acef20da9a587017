/** `practice GOAL`: scrambles replayed on stickers, goals judged by the naive reading of them. */
import { describe, expect, test } from 'vitest';
import { state } from '../../extension/terminal/json.ts';
import { practice } from '../../extension/terminal/json-searches.ts';
import { cfopOf, holds, layersOf, type NaiveGoal } from '../naive/goals.ts';
import { replay, SOLVED_CUBE } from '../naive/stickers.ts';
import { turnlore, turnloreJson } from './turnlore.ts';

function practiceOf(...args: string[]) {
  return turnloreJson(practice, ['practice', ...args]).json;
}

function heldAfter(scramble: string, goals: readonly NaiveGoal[]): boolean[] {
  const cube = replay(SOLVED_CUBE, scramble.split(' '));
  return goals.map((goal) => holds(goal, cube));
}

describe('states to practise', () => {
  test('top cross: the lower layers are made in all of them, on the base that faces down', () => {
    const { states, base } = practiceOf('top cross', '--seed', '7', '--count', '8');
    expect(base).toBe('yellow');
    expect(states).toHaveLength(8);
    for (const { scramble } of states)
      expect(heldAfter(scramble, layersOf('yellow')).slice(0, 3)).toEqual([true, true, true]);
    // Of eight random ones not all have the top cross by chance (1 in 8 has it).
    const made = states.filter(({ scramble }) => heldAfter(scramble, layersOf('yellow'))[3]);
    expect(made.length).toBeLessThan(8);
  });

  test('a base and a method of one’s choice: the second pair of CFOP on white', () => {
    const { states } = practiceOf('2nd pair', '--method', 'CFOP', '--base', 'white', '--seed', '3');
    expect(heldAfter(states[0].scramble, cfopOf('white')).slice(0, 2)).toEqual([true, true]);
  });

  test('the faces are those that the scramble leads to', () => {
    const { states } = practiceOf('cross', '--seed', '1', '--count', '2');
    for (const { scramble, faces } of states) {
      expect(turnloreJson(state, ['state', '--turns', scramble]).json.faces).toEqual(faces);
    }
  });

  test('the same seed gives the same states, another one others', () => {
    const one = practiceOf('top face', '--seed', '11', '--count', '3');
    expect(practiceOf('top face', '--seed', '11', '--count', '3')).toEqual(one);
    expect(practiceOf('top face', '--seed', '12', '--count', '3').states).not.toEqual(one.states);
  });

  test('without a seed it is told which one was taken, to get the same again', () => {
    const one = practiceOf('OLL', '--method', 'CFOP');
    expect(practiceOf('OLL', '--method', 'CFOP', '--seed', String(one.seed))).toEqual(one);
  });

  test('as text: one scramble a line, which state reads', () => {
    const { out } = turnlore(['practice', 'middle', '--seed', '2', '--count', '3']);
    const [head, ...rows] = out.trimEnd().split('\n');
    expect(head).toContain('middle of layers, base yellow');
    expect(rows).toHaveLength(3);
  });
});

describe('a case of the last layer', () => {
  test.each([
    ['top cross', 'dot', ['--method', 'layers'], { edges: 'dot' }],
    ['top face', 'angle T', [], { edges: 'angle', corners: 'T' }],
    ['OLL', 'line H', ['--method', 'CFOP'], { edges: 'line', corners: 'H' }],
    ['PLL', 'Z', ['--method', 'CFOP'], { permutation: { letter: 'Z' } }],
  ])('%s, %s: state sees it in every scramble', (goal, name, more, wanted) => {
    const { states } = practiceOf(goal, '--case', name, '--seed', '4', '--count', '2', ...more);
    for (const { scramble } of states) {
      const seen = turnloreJson(state, ['state', '--turns', scramble, '--base', 'yellow']).json;
      expect(seen.lastLayer).toMatchObject(wanted);
    }
  });

  test('a name that is none is refused with those there are', () => {
    expect(turnlore(['practice', 'PLL', '--method', 'CFOP', '--case', 'Q']).err).toContain(
      'There is no case "Q" here; there are A, ',
    );
    expect(turnlore(['practice', 'top face', '--case', 'ring']).err).toContain('dot, line, angle');
  });
});

describe('what it does not take', () => {
  test.each([
    [['practice'], 'The goal to practise is missing'],
    [['practice', 'roof'], 'has no goal "roof"'],
    [['practice', 'cross', '--count', '0'], '--count wants'],
    [['practice', 'cross', '--count', 'many'], '--count wants'],
    [['practice', 'cross', '--seed', '-1'], 'needs a value'],
    [['practice', 'cross', '--seed', '1.5'], '--seed wants'],
    [['practice', 'cross', '--method', 'mine'], 'There is no method "mine"'],
  ])('%j: one sentence, exit status 2', (args, sentence) => {
    const { status, out, err } = turnlore(args);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toContain(sentence);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });
});
