/**
 * Which words open a stage: those of every method that is known, and those that the text defines
 * itself. Which method is in force is settled later, for it may depend on the names that a text uses.
 */
import { METHODS, stageNames } from '../../goals/methods.ts';
import type { StageWords } from './tree.ts';
import { normalName } from './words.ts';

const DEFINITION = /^\s{0,40}(goal|method)\s{0,10}[:：](.{0,2000})/i;
const MOST_REMEMBERED = 5000;

const BUILT_IN = new Set(METHODS.flatMap((method) => stageNames(method).map(normalName)));

/** Names that `goal: name = …` and `method: name = stage, stage` in these lines make stages. */
export function definedStages(lines: readonly { readonly text: string }[]): string[] {
  const names: string[] = [];
  for (const { text } of lines) {
    const match = DEFINITION.exec(text.startsWith('\uFEFF') ? text.slice(1) : text);
    if (match === null || !match[2].includes('=')) continue;
    const [left, right] = match[2].split(/\/\/|[#;]/)[0].split('=');
    if (match[1].toLowerCase() === 'goal') names.push(left.trim());
    else names.push(...(right ?? '').split(',').map((name) => name.trim()));
  }
  return names.filter((name) => name !== '');
}

/** The stage words of a text; `more` are names that other files define. */
export function stageWords(defined: readonly string[]): StageWords {
  const own = new Set(defined.map(normalName));
  const remembered = new Map<string, boolean>();
  return {
    isStage(text) {
      const known = remembered.get(text);
      if (known !== undefined) return known;
      const name = normalName(text);
      const found = own.has(name) || BUILT_IN.has(name);
      if (remembered.size < MOST_REMEMBERED) remembered.set(text, found);
      return found;
    },
    names: [...BUILT_IN, ...own],
  };
}
