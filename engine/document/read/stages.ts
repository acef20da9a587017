/**
 * Which words open a stage: those of every method that is known, and those that the text defines
 * itself. Which method is in force is settled later, for it may depend on the names that a text uses.
 */
import { METHODS, stageNames } from '../../goals/methods.ts';
import { ALIAS_ROWS } from '../../goals/stage-aliases.ts';
import { readStageName } from '../../goals/stage-names.ts';
import type { StageWords } from './tree.ts';
import { normalName } from './words.ts';

const DEFINITION = /^\s{0,40}(goal|method)\s{0,10}[:：](.{0,2000})/i;
const MOST_REMEMBERED = 5000;
const WORD = /[\p{L}\p{N}]+/gu;

const BUILT_IN: readonly string[] = [
  ...new Set([
    ...METHODS.flatMap((method) => stageNames(method).map(normalName)),
    ...ALIAS_ROWS.flatMap((row) => row.aliases),
  ]),
];
/** A text without any of these words names no stage; most lines are set aside by that. */
const STAGE_WORDS = new Set(BUILT_IN.flatMap((name) => name.match(WORD) ?? []));

/** Names that `goal: name = …` and `method: name = stage, stage` in these lines make stages. */
export function definedStages(lines: readonly { readonly text: string }[]): string[] {
  const names: string[] = [];
  for (const { text } of lines) {
    const match = DEFINITION.exec(text);
    if (!match?.[2].includes('=')) continue;
    const [left, right] = match[2].split(/\/\/|[#;]/)[0].split('=');
    if (match[1].toLowerCase() === 'goal') names.push(left.trim());
    else for (const name of (right ?? '').split(',')) names.push(name.trim());
  }
  return names.filter((name) => name !== '');
}

/** The stage words of a text that defines these names besides the built-in ones. */
export function stageWords(defined: readonly string[]): StageWords {
  const own = new Set(defined.map(normalName));
  const remembered = new Map<string, boolean>();
  return {
    isStage(text) {
      const name = normalName(text);
      if (own.has(name)) return true;
      const words = name.match(WORD) ?? [];
      if (
        !words.some((word) => STAGE_WORDS.has(word) || STAGE_WORDS.has(word.replace(/\d$/, '')))
      ) {
        return false;
      }
      const known = remembered.get(name);
      if (known !== undefined) return known;
      const found = readStageName(name) !== undefined;
      if (remembered.size < MOST_REMEMBERED) remembered.set(name, found);
      return found;
    },
    names: [...BUILT_IN, ...own],
  };
}
