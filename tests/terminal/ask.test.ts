/** `ask FILE "QUESTION" …`: a dialogue about a place of a text. */
import { describe, expect, test } from 'vitest';
import { ask } from '../../extension/terminal/json.ts';
import { SAMPLES, turnlore, turnloreJson } from './turnlore.ts';

const BROKEN = `${SAMPLES}/broken-cross.moves`;

function asked(...words: string[]) {
  return turnloreJson(ask, ['ask', ...words]).json.answers;
}

describe('a dialogue', () => {
  test('every question has its answer, with intent, facts and what can be asked next', () => {
    const answers = asked(BROKEN, 'why did the cross break?', 'where is the white-green edge?');
    expect(answers.map(({ question }) => question)).toEqual([
      'why did the cross break?',
      'where is the white-green edge?',
    ]);
    for (const { text, facts, followUps } of answers) {
      expect(text).not.toBe('');
      expect(facts.length).toBeGreaterThan(0);
      expect(followUps.length).toBeGreaterThan(0);
    }
  });

  test('names the turn that broke the cross for good, with its number and line', () => {
    const [answer] = asked(BROKEN, 'why did the cross break?');
    const loss = answer.facts.find(({ kind }) => kind === 'loss');
    expect(loss).toMatchObject({
      goal: 'cross',
      fate: 'lasting',
      turn: { text: 'R', number: 18, line: 16 },
    });
    expect(answer.text).toContain('turn 18, line 16');
  });

  test('is about the place that --at names: after the first corner the cross is whole', () => {
    const holds = (at: string) =>
      asked(BROKEN, '--at', at, 'is the cross done?')[0].facts.find(({ kind }) => kind === 'goal');
    expect(holds('13:20')).toMatchObject({ goal: 'cross', holds: true });
    expect(holds('15:20')).toMatchObject({ goal: 'cross', holds: false });
  });

  test('without a place it is about the end of the first solve', () => {
    const [answer] = asked(`${SAMPLES}/first-solve.moves`, 'is the cube solved?');
    expect(answer.facts).toContainEqual(
      expect.objectContaining({ kind: 'goal', goal: 'solved', holds: true }),
    );
  });

  test('a follow-up means what was spoken of before', () => {
    const answers = asked(
      BROKEN,
      '--at',
      '13:20',
      'where is the white-red edge?',
      'and the green one?',
    );
    const pieces = answers.map(({ facts }) => facts.find(({ kind }) => kind === 'piece')?.piece);
    expect(pieces).toEqual([
      ['white', 'red'],
      ['white', 'green'],
    ]);
  });

  test('says what it does not understand, and offers what it does', () => {
    const [answer] = asked(BROKEN, 'what is for lunch?');
    expect(answer.facts.map(({ kind }) => kind)).toContain('refusal');
    expect(answer.facts.map(({ kind }) => kind)).toContain('offer');
  });

  test('the same questions have the same answers', () => {
    const words = ['ask', BROKEN, 'why did the cross break?', 'what is next?', '--json'];
    expect(turnlore(words).out).toBe(turnlore(words).out);
  });
});

describe('as text', () => {
  test('questions, answers, and at the end what can be asked', () => {
    const { out, status } = turnlore([
      'ask',
      BROKEN,
      'why did the cross break?',
      'is the cross done?',
    ]);
    expect(status).toBe(0);
    expect(out).toContain('? why did the cross break?\n  ');
    expect(out.match(/You can go on with:/gu)).toHaveLength(1);
  });
});

describe('what it does not take', () => {
  test.each([
    [['ask'], 'A file is missing'],
    [['ask', BROKEN], 'A question is missing.'],
    [['ask', 'nowhere.moves', 'why?'], 'there is no such file'],
    [['ask', BROKEN, '--at', 'here', 'why?'], '--at wants LINE:CHAR'],
  ])('%j: one sentence, exit status 2', (args, sentence) => {
    const { status, out, err } = turnlore(args);
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(sentence);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });
});
