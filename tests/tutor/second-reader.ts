/**
 * Reads an answer with no idea of how it was made, takes every piece, slot, goal, turn, number and
 * verdict out of it, and demands each among the answer's facts.
 */
import type { Fact } from '../../engine/tutor/facts.ts';

const COLOUR = '(?:white|yellow|red|orange|green|blue)';
const TURN = "(?:[UDLRFB]w?|[MESxyz])(?:2|'|2')?";
const LETTER: Readonly<Record<string, string>> = {
  top: 'U',
  bottom: 'D',
  front: 'F',
  back: 'B',
  left: 'L',
  right: 'R',
};

/** How goals are called in sentences. */
const GOALS: readonly (readonly [RegExp, readonly string[]])[] = [
  [/\bthe top cross\b/g, ['top cross']],
  [/\bthe first layer\b/g, ['corners']],
  [/\bthe middle layer\b/g, ['middle']],
  [/\bthe top face\b/g, ['top face']],
  [/\bthe arrangement of the top corners\b/g, ['top corners', 'corners placed']],
  [/\bthe oriented last layer\b/g, ['OLL']],
  [
    /\b(?:the solved cube|solves the cube|the cube (?:is|isn’t|is never) solved)\b/g,
    ['solved', 'PLL', 'LSE', 'corners turned'],
  ],
  [/\bthe 1st pair\b/g, ['1st pair']],
  [/\bthe 2nd pair\b/g, ['2nd pair']],
  [/\bthe 3rd pair\b/g, ['3rd pair']],
  [/\bthe 4th pair\b/g, ['4th pair']],
];

/** Words that speak of the middle as a place and not as a goal. */
const MIDDLE_AS_PLACE = /\b(?:in|by way of|slot of|of) the middle layer\b/g;

/** All values below a fact, by the key they stand under. */
function valuesOf(facts: readonly Fact[]): { key: string; value: unknown }[] {
  const result: { key: string; value: unknown }[] = [];
  const stack: { key: string; value: unknown }[] = facts.map((fact) => ({ key: '', value: fact }));
  for (let next = stack.pop(); next; next = stack.pop()) {
    result.push(next);
    if (typeof next.value !== 'object' || next.value === null) continue;
    const isList = Array.isArray(next.value);
    for (const [key, value] of Object.entries(next.value))
      stack.push({ key: isList ? next.key : key, value });
  }
  return result;
}

/** What the text says and the facts lack; empty if nothing. */
export function unsupported(answer: string, facts: readonly Fact[]): string[] {
  const values = valuesOf(facts);
  const missing: string[] = [];
  const demand = (ok: boolean, what: string): void => {
    if (!ok) missing.push(what);
  };
  const strings = (...keys: string[]): string[] =>
    values.flatMap(({ key, value }) =>
      keys.includes(key) && typeof value === 'string' ? [value] : [],
    );
  const lists = values.flatMap(({ value }) =>
    Array.isArray(value) && value.every((one) => typeof one === 'string') ? [value.join('-')] : [],
  );
  const turnNames = values.flatMap(({ value }) =>
    typeof value === 'object' && value !== null && 'index' in value && 'number' in value
      ? [value as unknown as { number: number; line: number; text: string }]
      : [],
  );
  const offered = strings('questions');
  let text = answer;
  for (const question of offered) text = text.replace(`“${question}”`, '');
  // What a term means holds on any cube; the catalogue is reviewed by people.
  for (const meaning of strings('meaning')) text = text.replace(meaning, '');
  demand(!text.includes('“') || /“[^”]*”/.test(text), 'an open quotation');

  for (const [whole, name, kind] of text.matchAll(
    new RegExp(`\\b(${COLOUR}(?:-${COLOUR})+) (edge|corner)\\b`, 'g'),
  )) {
    demand(lists.includes(name), whole);
    demand((kind === 'corner') === (name.split('-').length === 3), whole);
  }
  for (const [whole, words, slot] of text.matchAll(
    /\b((?:(?:top|bottom|front|back|left|right) ?)+) \(([UDFBLR]{2,3})\)/g,
  )) {
    demand(strings('slot', 'home', 'from', 'to').includes(slot), whole);
    demand(
      words
        .trim()
        .split(' ')
        .map((word) => LETTER[word])
        .join('') === slot,
      whole,
    );
  }
  const side = '(?:top|bottom|front|back|left|right)';
  for (const [whole, words, letters] of text.matchAll(
    new RegExp(`\\bat (${side}(?: ${side})+)( \\()?`, 'g'),
  )) {
    if (letters !== undefined) continue;
    const slot = words
      .split(' ')
      .map((word) => LETTER[word])
      .join('');
    demand(strings('slot').includes(slot), whole);
  }
  for (const [whole, turn, number, line] of text.matchAll(
    new RegExp(`(${TURN}) \\(turn (\\d+), line (\\d+)\\)`, 'g'),
  )) {
    demand(
      turnNames.some(
        (one) => one.text === turn && one.number === Number(number) && one.line === Number(line),
      ),
      whole,
    );
  }
  for (const [whole, number, turn, line] of text.matchAll(
    new RegExp(`Turn (\\d+) \\((${TURN}), line (\\d+)\\)`, 'g'),
  )) {
    demand(
      turnNames.some(
        (one) => one.text === turn && one.number === Number(number) && one.line === Number(line),
      ),
      whole,
    );
  }
  const goals = values.flatMap(({ value }) =>
    typeof value === 'object' && value !== null && 'goal' in value && 'base' in value
      ? [value as { goal: string; base: string }]
      : [],
  );
  for (const [whole, base] of text.matchAll(new RegExp(`\\bthe (${COLOUR}) cross\\b`, 'g'))) {
    demand(
      goals.some((one) => one.goal === 'cross' && one.base === base),
      whole,
    );
  }
  const withoutPlaces = text.replace(MIDDLE_AS_PLACE, '');
  for (const [pattern, names] of GOALS) {
    for (const [whole] of withoutPlaces.matchAll(pattern))
      demand(
        goals.some((one) => names.includes(one.goal)),
        whole,
      );
  }
  const sequences = strings(
    ...['turns', 'turn', 'text', 'then', 'atText', 'backText', 'regrip'],
    ...['other', 'first', 'second', 'setup', 'sequence', 'letter', 'asked', 'read'],
  );
  for (const [slot] of text.matchAll(/\b[UDFBLR]{2,3}\b/g))
    demand(
      strings('slot', 'home', 'from', 'to', ...['corners', 'edges', 'twisted', 'flipped']).includes(
        slot,
      ),
      `slot ${slot}`,
    );
  for (const [whole] of text.matchAll(
    new RegExp(`(?<![\\w(’'-])${TURN}(?: ${TURN})*(?![\\w])`, 'g'),
  )) {
    demand(sequences.includes(whole), `turns ${whole}`);
  }
  numbersOf(text, values, demand);
  verdictsOf(text, facts, demand);
  const colours = new Set([
    ...values.flatMap(({ value }) => (typeof value === 'string' ? [value] : [])),
    ...opposites(strings('base')),
  ]);
  for (const [colour] of text.matchAll(new RegExp(`\\b${COLOUR}\\b`, 'g')))
    demand(colours.has(colour), colour);
  return missing;
}

const OPPOSITE: Readonly<Record<string, string>> = {
  white: 'yellow',
  yellow: 'white',
  red: 'orange',
  orange: 'red',
  green: 'blue',
  blue: 'green',
};

function opposites(bases: readonly string[]): string[] {
  return bases.map((base) => OPPOSITE[base]);
}

type Demand = (ok: boolean, what: string) => void;

/** Every number must be a number of the facts, or count what they list. */
function numbersOf(
  text: string,
  values: readonly { readonly value: unknown }[],
  demand: Demand,
): void {
  const known = new Set<number>([1, 2, 3, 4]);
  known.clear();
  for (const { value } of values) {
    if (typeof value === 'number') known.add(value);
    // Lists longer than what is named are said as "and so many more".
    if (Array.isArray(value) && value.length > 4) known.add(value.length - 4).add(value.length);
  }
  const plain = text
    .replace(new RegExp(TURN, 'g'), (turn) => (/[2]/.test(turn) ? '' : turn))
    .replace(/\b[1-4](?:st|nd|rd|th) pair\b/g, '')
    .replace(/\bat most 200 single turns\b/g, '')
    .replace(/\bof 4\b/g, '');
  for (const [digits] of plain.matchAll(/\d+/g))
    demand(known.has(Number(digits)), `number ${digits}`);
}

function isYes(fact: Fact): boolean {
  return (
    (fact.kind === 'shorter' && fact.other !== undefined) ||
    (fact.kind === 'flaw' && fact.possible) ||
    (fact.kind === 'solvable' && fact.solvable) ||
    (fact.kind === 'order' && fact.when === 'due')
  );
}

function isNo(fact: Fact): boolean {
  return (
    (fact.kind === 'shorter' && fact.other === undefined) ||
    (fact.kind === 'flaw' && !fact.possible) ||
    (fact.kind === 'solvable' && !fact.solvable)
  );
}

function verdictsOf(text: string, facts: readonly Fact[], demand: Demand): void {
  const goals = facts.filter((fact) => fact.kind === 'goal');
  const verdicts = facts.flatMap((fact) => (fact.kind === 'verdict' ? [fact.verdict] : []));
  for (const [, answer] of text.matchAll(/(?:^|\n)(Yes|No|Not quite|That does no harm)\b/g)) {
    const fits =
      answer === 'Yes'
        ? goals.some(({ holds }) => holds) ||
          verdicts.some((one) => one === 'reaches' || one === 'gains') ||
          facts.some(isYes)
        : answer === 'No'
          ? facts.some(isNo) ||
            goals.some(({ holds }) => !holds) ||
            verdicts.some((one) => one === 'nothing' || one === 'loses') ||
            facts.some(
              (fact) =>
                fact.kind === 'no-loss' || fact.kind === 'never-lost' || fact.kind === 'no-piece',
            )
          : verdicts.includes(answer === 'Not quite' ? 'trades' : 'keeps');
    demand(fits, answer);
  }
  if (/\bturned right\b/.test(text))
    demand(
      facts.some(
        (fact) =>
          (fact.kind === 'piece' && fact.status === 'placed') ||
          (fact.kind === 'case' && fact.swap !== undefined),
      ),
      'turned right',
    );
  if (/\bsolved\b/.test(text) && !/isn’t solved|the solved cube|never solved/i.test(text)) {
    demand(
      goals.some(({ holds }) => holds) ||
        verdicts.some((one) => one === 'reaches' || one === 'keeps') ||
        facts.some(
          (fact) =>
            fact.kind === 'slip' ||
            fact.kind === 'no-slip' ||
            (fact.kind === 'repeat' && fact.effect === 'goal'),
        ),
      'solved',
    );
  }
}
