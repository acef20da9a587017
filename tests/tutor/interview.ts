/** Asks random questions about random solves, and lets the witnesses speak. */
import { analyse } from '../../engine/document/analyse.ts';
import { NO_MEMORY, ask } from '../../engine/tutor/tutor.ts';
import { Checker } from './checker.ts';
import { unsupported } from './second-reader.ts';
import { pick, randomFrom, randomTurns, writeSolve, type Random } from './solves.ts';

export const COLOURS = ['white', 'yellow', 'red', 'orange', 'green', 'blue'];
const GOALS = [
  'cross',
  'first layer',
  'middle layer',
  'top cross',
  'top face',
  'top corners',
  'F2L',
  'OLL',
  'PLL',
  '2nd pair',
];

function piece(random: Random): string {
  const colours = [...COLOURS].sort(() => random() - 0.5).slice(0, random() < 0.5 ? 2 : 3);
  return `${colours.join('-')} ${colours.length === 2 ? 'edge' : 'corner'}`;
}

const SEQUENCES = [
  "R U R'",
  "R U R' U'",
  "F R U R' U' F'",
  "R U R' U R U2 R'",
  "R' D' R D",
  'U U2 R',
  "M' U M U",
  "y R U R' y'",
  "r U R' U' r'",
  "R L' R",
  'F2 U L',
];

function sequence(random: Random): string {
  return random() < 0.7
    ? pick(random, SEQUENCES)
    : randomTurns(random, 2 + Math.floor(random() * 4)).join(' ');
}

const QUESTIONS: readonly ((random: Random, turns: number, lines: number) => string)[] = [
  () => 'what is next?',
  () => 'more help',
  () => 'just show me the turns',
  () => 'and then?',
  () => 'which goals hold?',
  () => 'where did it go wrong?',
  () => 'why?',
  (random) => `where is the ${piece(random)}?`,
  (random) => `where is the ${piece(random)} and the ${piece(random)}`,
  (random) => `and the ${pick(random, COLOURS)} one?`,
  (random) => `is the ${pick(random, GOALS)} done?`,
  (random) => `is the ${pick(random, COLOURS)} cross done`,
  (random) => `why did the ${pick(random, GOALS)} break?`,
  (random, turns) =>
    `why did turn ${1 + Math.floor(random() * turns)} break the ${pick(random, GOALS)}?`,
  (random, _, lines) =>
    `what broke the ${pick(random, GOALS)} in line ${1 + Math.floor(random() * lines)}?`,
  (random) => `is this right: ${randomTurns(random, 1 + Math.floor(random() * 6)).join(' ')}`,
  (random) =>
    `is this right: ${pick(random, ["R U R'", "U R U' R' U' F' U F", "F R U R' U' F'", "(R U R' U')3", '[R, U]', "R U2 R' U'", 'D', "U'"])}`,
  () => "is this right: r u r' u'",
  (random) => `why not ${pick(random, ['R', 'U', "F'", 'D2', "R U R'"])}?`,
  (random, turns) => `what is next at move ${1 + Math.floor(random() * turns)}?`,
  (random) => `how did the ${piece(random)} get there?`,
  (random) => `can i do the ${piece(random)} first?`,
  () => 'undo my last turn',
  () => 'why must the sides match?',
  (random) => `trace the ${piece(random)}`,
  (random) => `where does the ${pick(random, GOALS)} stage end?`,
  () => 'how many turns has this stage',
  () => 'which case is this?',
  () => 'how do i hold it',
  () => 'where did I go wrong?',
  () => 'is there a shorter way?',
  () => 'is this state possible?',
  (random) =>
    pick(random, [
      'only one edge is flipped',
      'can two edges be flipped',
      'only one corner is twisted',
      'can two corners be twisted',
      'only two edges are swapped',
      'only two corners are swapped',
    ]),
  (random) =>
    `what is ${pick(random, ['an oriented edge', 'an oriented corner', 'a cross', 'parity', 'a headlight', 'a commutator', 'a finished side'])}`,
  (random) => `what does ${pick(random, GOALS)} mean?`,
  (random) => `what does ${sequence(random)} do?`,
  (random) => `what is the inverse of ${sequence(random)}`,
  (random) => `mirror ${sequence(random)}`,
  (random) => `what is the order of ${sequence(random)}`,
  (random) => `how many turns is ${sequence(random)}`,
  (random) => `is there a shorter way for ${sequence(random)}`,
  (random) => `compare ${sequence(random)} and ${sequence(random)}`,
  (random) => `how often do i repeat ${sequence(random)}`,
  () => 'how often do i repeat it?',
  (random) => `which way does ${pick(random, ['B', "D'", 'L2', 'M', 'r', 'F', 'U'])} turn`,
  (random, turns) => `what does turn ${1 + Math.floor(random() * turns)} do?`,
  (random, _, lines) => `what does line ${4 + Math.floor(random() * (lines - 3))} do?`,
  (random) => `what is in ${pick(random, ['UF', 'DFR', 'BL', 'UBL', 'DR'])}?`,
];

export const QUESTIONS_EACH = 8;

export interface Findings {
  readonly problems: readonly string[];
  /** How often each kind of fact was checked. */
  readonly kinds: ReadonlyMap<string, number>;
}

/** The same solves and questions for the same seed. */
export function interview(seed: number, solves: number): Findings {
  const random = randomFrom(seed);
  const problems: string[] = [];
  const kinds = new Map<string, number>();
  for (let i = 0; i < solves; i++) {
    const { text, history, doneByLine } = writeSolve(random, i % 4 === 3 ? 'CFOP' : 'layers');
    const analysis = analyse(text);
    const checker = new Checker(history);
    let memory = NO_MEMORY;
    const line = Math.floor(random() * doneByLine.length);
    const position = { line, character: text.split('\n')[line].length };
    for (let k = 0; k < QUESTIONS_EACH; k++) {
      const question = pick(random, QUESTIONS)(random, history.turns.length, doneByLine.length);
      const reply = ask(analysis, position, question, memory);
      memory = reply.memory;
      const { facts, text: said, intent } = reply.answer;
      for (const fact of facts) {
        kinds.set(fact.kind, (kinds.get(fact.kind) ?? 0) + 1);
        const wrong = checker.check(fact);
        if (wrong !== undefined) problems.push(`${question}\n${wrong}\n${text}`);
        if (fact.kind === 'stand' && !/move|what does (?:turn|line)/.test(question)) {
          if (fact.place.at !== doneByLine[line])
            problems.push(`${question}: stands elsewhere\n${text}`);
        }
      }
      const beyond = unsupported(said, facts);
      if (beyond.length > 0)
        problems.push(
          `${question} [${intent}]\n${said}\nlacks ${beyond.join(' | ')}\n${JSON.stringify(facts)}`,
        );
      if (said.trim() === '') problems.push(`${question}: nothing is said\n${text}`);
      if (said.split(/\s+/).length > 150) problems.push(`too long: ${said}`);
    }
  }
  return { problems, kinds };
}
