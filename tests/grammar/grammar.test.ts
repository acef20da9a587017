/** The grammar, run by the editor's own tokenizer: what is coloured as a turn, a key, a stage, a comment. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { beforeAll, describe, expect, it } from 'vitest';
import oniguruma from 'vscode-oniguruma';
import textmate, { type IGrammar } from 'vscode-textmate';

const GRAMMAR = 'extension/grammar/moves.tmLanguage.json';

let grammar: IGrammar;

beforeAll(async () => {
  const wasm = createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm');
  await oniguruma.loadWASM(readFileSync(wasm).buffer);
  const registry = new textmate.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
      createOnigString: (text) => new oniguruma.OnigString(text),
    }),
    loadGrammar: () =>
      Promise.resolve(textmate.parseRawGrammar(readFileSync(GRAMMAR, 'utf8'), GRAMMAR)),
  });
  const loaded = await registry.loadGrammar('source.moves');
  if (loaded === null) throw new Error('the grammar does not load');
  grammar = loaded;
});

/** Words of a line with the part of their scope that tells them apart. */
function scopesOf(line: string): [string, string][] {
  return grammar
    .tokenizeLine(line, textmate.INITIAL)
    .tokens.flatMap(({ startIndex, endIndex, scopes }): [string, string][] => {
      const text = line.slice(startIndex, endIndex).trim();
      const scope = (scopes.at(-1) ?? '').replace(/^source$|\.moves$/, '');
      return text === '' || scope === 'source' ? [] : [[text, scope.split('.').at(-1) ?? '']];
    });
}

describe('the grammar', () => {
  it('tells face turns, wide turns, slices and rotations apart', () => {
    expect(scopesOf("R U2 F' Rw r2 M' E x y2")).toEqual([
      ['R', 'turn'],
      ['U2', 'turn'],
      ["F'", 'turn'],
      ['Rw', 'wide'],
      ['r2', 'wide'],
      ["M'", 'slice'],
      ['E', 'slice'],
      ['x', 'rotation'],
      ['y2', 'rotation'],
    ]);
  });

  it("reads turns without blanks: RUR'U'", () => {
    expect(scopesOf("RUR'U'").map(([text]) => text)).toEqual(['R', 'U', "R'", "U'"]);
  });

  it('reads keys with their values, in any case', () => {
    expect(scopesOf('title: Repair café, second bench')).toEqual([
      ['title', 'key'],
      [':', 'key'],
      ['Repair café, second bench', 'value'],
    ]);
    expect(scopesOf('Scramble: R U')[0]).toEqual(['Scramble', 'block']);
    expect(scopesOf('Scramble: R U').slice(2)).toEqual([
      ['R', 'turn'],
      ['U', 'turn'],
    ]);
  });

  it('reads the name of a sequence as a name, though it begins like a turn', () => {
    expect(scopesOf('sequence: Right insert').at(-1)).toEqual(['Right insert', 'section']);
  });

  it('reads a stage and the turns after it', () => {
    expect(scopesOf("top cross: F R U R' U' F'").slice(0, 3)).toEqual([
      ['top cross', 'stage'],
      [':', 'stage'],
      ['F', 'turn'],
    ]);
  });

  it('reads comments to the end of the line', () => {
    const scopes = scopesOf("R U R' // the red edge: R");
    expect(scopes.slice(0, 3).map(([, scope]) => scope)).toEqual(['turn', 'turn', 'turn']);
    expect(scopes.slice(3).map(([, scope]) => scope)).toEqual(['comment', 'double-slash']);
  });

  it('reads groups, repeats, commutators, names and pauses', () => {
    expect(scopesOf("(R U)3 [F: [R, U]] @right-insert' ~ …").map(([, scope]) => scope)).toEqual([
      'group',
      'turn',
      'turn',
      'group',
      'repeat',
      'group',
      'turn',
      'separator',
      'group',
      'turn',
      'separator',
      'turn',
      'group',
      'group',
      'sequence',
      'pause',
      'pause',
    ]);
  });

  it('leaves prose alone', () => {
    expect(
      scopesOf('Hello from the bench, how are you').filter(([, scope]) => scope === 'turn'),
    ).toEqual([]);
  });
});
