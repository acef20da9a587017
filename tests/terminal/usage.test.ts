/** The command line itself: help, unknown commands and options. */
import { describe, expect, test } from 'vitest';
import { depthFor } from '../../extension/terminal/render/page.ts';
import { turnlore } from './turnlore.ts';

describe('help', () => {
  test.each([['--help'], ['-h'], ['help']])('%s names every command', (word) => {
    const { status, out } = turnlore([word]);
    expect(status).toBe(0);
    for (const command of ['check', 'state', 'ask', 'effect'])
      expect(out).toContain(`turnlore ${command}`);
  });

  test('of one command tells its own use', () => {
    const { status, out } = turnlore(['state', '--help']);
    expect(status).toBe(0);
    expect(out).toContain('state FILE [--at LINE:CHAR]');
    expect(out).not.toContain('turnlore check');
  });
});

describe('wrong use is one sentence on standard error and exit status 2', () => {
  test.each([
    [[], 'A command is missing; there are check, state,'],
    [['chekc'], 'There is no command "chekc"'],
    [['constructor'], 'There is no command "constructor"'],
    [['check', '--colour', 'x'], '"check" has no option --colour'],
    [['check', '-x'], '"check" has no option -x'],
    [['state', '--at'], 'The option --at needs a value.'],
    [['check', '--json=yes'], 'The option --json takes no value.'],
  ])('%j', (args, sentence) => {
    const { status, out, err } = turnlore(args);
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(sentence);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });
});

describe('how many colours', () => {
  test.each([
    [{}, false, 'none'],
    [{ TERM: 'xterm-256color' }, true, '256'],
    [{ COLORTERM: 'truecolor' }, true, 'true'],
    [{ TERM: 'dumb' }, true, 'none'],
    [{ NO_COLOR: '1', COLORTERM: 'truecolor' }, true, 'none'],
    [{ NO_COLOR: '' }, true, '256'],
    [{ FORCE_COLOR: '0' }, true, 'none'],
    [{ FORCE_COLOR: '1' }, false, '256'],
    [{ FORCE_COLOR: '3' }, false, 'true'],
    [{ FORCE_COLOR: '1', NO_COLOR: '1' }, false, '256'],
  ] as const)('%j, terminal %s: %s', (env, terminal, depth) => {
    expect(depthFor(env, terminal)).toBe(depth);
  });
});
