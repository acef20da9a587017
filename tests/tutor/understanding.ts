/** Measures understanding on a bank of phrasings: intent, and slots as words. */
import { COLOURS } from '../../engine/cube/vocabulary.ts';
import { NO_MEMORY, type Memory, type Understood } from '../../engine/tutor/intents.ts';
import { understand } from '../../engine/tutor/understand.ts';

export interface Phrasing {
  readonly intent: string;
  readonly question: string;
  /** As in the bank; empty: not compared. */
  readonly slots: string;
}

export function phrasingsOf(bank: Readonly<Record<string, string>>): Phrasing[] {
  return Object.entries(bank).flatMap(([intent, lines]) =>
    lines
      .trim()
      .split('\n')
      .map((line) => {
        const [question, slots = ''] = line.split(' | ');
        return { intent, question, slots: slots.trim() };
      }),
  );
}

/** Slots in the bank's words: colours sorted, goals as written. */
export function slotsOf({ pieces, goals, places, sequences }: Understood): string[] {
  return [
    ...pieces.map((ref) =>
      'colours' in ref ? sorted(ref.colours.map((i) => COLOURS[i])) : ref.kind,
    ),
    ...sequences.map(({ text }) => text),
    ...goals.map(({ text }) => text),
    ...places.map((ref) =>
      ref.kind === 'turn'
        ? `turn ${ref.number}`
        : ref.kind === 'line'
          ? `line ${ref.line}`
          : ref.kind,
    ),
  ];
}

function sorted(colours: readonly string[]): string {
  return [...colours].sort().join('-');
}

/** All slots that were found stand in the bank's line, and nothing else does. */
function sameSlots(found: readonly string[], bank: string): boolean {
  let rest = ` ${bank
    .split(' ')
    .map((word) => (/^[a-z]+(?:-[a-z]+)+$/.test(word) ? sorted(word.split('-')) : word))
    .join(' ')} `;
  for (const slot of found) {
    if (!rest.includes(` ${slot} `)) return false;
    rest = rest.replace(` ${slot} `, ' ');
  }
  return rest.trim() === '';
}

/** A learner has been told of turns before: "shorter?" and "when should I stop" live from them. */
const WITH_TURNS: Memory = { ...NO_MEMORY, turns: "R U R' U'" };

/** What is wrong with how a phrasing is understood; undefined if nothing is. */
export function misread({ intent, question, slots }: Phrasing): string | undefined {
  const [first] = understand(question, WITH_TURNS);
  if (first.intent !== intent) return `${question}: ${first.intent}, not ${intent}`;
  if (slots !== '' && !sameSlots(slotsOf(first), slots))
    return `${question}: [${slotsOf(first).join(', ')}], not [${slots}]`;
  return undefined;
}
