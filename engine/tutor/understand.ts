/**
 * From a text to questions with intents and slots. Slots are found first and stand in the sentence as
 * `<piece>`, `<goal>`, `<turns>`, `<slot>`, `<place>`; then the cues of each intent are weighed. What
 * gathers too little weight is not understood, and is never guessed at.
 */
import { executable, readSequence } from '../notation/read.ts';
import { CUES, ENOUGH, HELP_CUES, OTHER_MATTERS } from './cues.ts';
import {
  findColours,
  findGoals,
  findPieces,
  findPlaces,
  findSlots,
  type Slotted,
} from './slots.ts';
import { tokenize } from './tokens.ts';
import { splitQuestions } from './split.ts';
import type {
  GoalRef,
  HelpWanted,
  Intent,
  Memory,
  PieceRef,
  PlaceRef,
  Understood,
} from './intents.ts';

export const LONGEST_QUESTION = 2000;

const NOTHING = {
  pieces: [],
  goals: [],
  places: [],
  turns: undefined,
  help: undefined,
  onwards: false,
} as const;

function refused(text: string, refusal: NonNullable<Understood['refusal']>): Understood {
  return { ...NOTHING, text, intent: 'not-understood', refusal };
}

/** The questions of a text, in order; at least one. */
export function understand(text: string, memory: Memory): Understood[] {
  if (text.trim() === '') return [refused('', 'empty')];
  if (text.length > LONGEST_QUESTION) return [refused('', 'too-long')];
  // eslint-disable-next-line no-control-regex -- control characters are what tells binary data
  if (/[\u0000-\u0008\u000e-\u001f\ufffd]/.test(text)) return [refused('', 'unreadable')];
  const result: Understood[] = [];
  let before = memory;
  for (const part of splitQuestions(text)) {
    const question = understandOne(part, before);
    if (question === undefined) continue;
    result.push(question);
    if (question.intent !== 'not-understood') {
      const goal = question.goals[0] ?? before.goal;
      const turns = question.turns?.text ?? before.turns;
      before = { ...before, intent: question.intent, goal, turns };
    }
  }
  return result.length > 0 ? result : [refused(text.trim(), 'not-understood')];
}

/** The sentence with its slots, as the cues see it. */
export function skeleton(tokens: readonly Slotted[]): string {
  return tokens
    .map((token) => {
      switch (token.kind) {
        case 'word':
          return token.text;
        case 'number':
          return '<number>';
        case 'mark':
          return '';
        default:
          return `<${token.kind}>`;
      }
    })
    .filter((word) => word !== '')
    .join(' ');
}

/** Greetings and thanks beside a question are no question. */
const SOCIAL =
  /^(?:hi|hello|hey|thanks?|thank you|please|ok|okay|so|well|cool|great|good (?:morning|evening)|sorry|hmm|um|oh|there|everyone|now|listen|dear|tutor|again|very|much|a|lot)(?: (?:hi|hello|hey|there|everyone|thanks?|thank|you|please|ok|okay|so|well|again|very|much|a|lot|tutor|cool|great))*$/;

function understandOne(text: string, memory: Memory): Understood | undefined {
  const tokens = findColours(findGoals(findPieces(findPlaces(findSlots(tokenize(text))))));
  const sentence = skeleton(tokens);
  if (sentence === '' || (SOCIAL.test(sentence) && memory.intent !== 'next-step')) {
    return sentence === '' && !/[\p{L}\p{N}]/u.test(text) && text.trim() !== '?'
      ? undefined
      : SOCIAL.test(sentence)
        ? undefined
        : refused(text, 'not-understood');
  }
  const pieces: PieceRef[] = [];
  const goals: GoalRef[] = [];
  const places: PlaceRef[] = [];
  const turns = tokens.flatMap((token) => (token.kind === 'turns' ? [token.turns] : []));
  const asksContent =
    /\b(?:what|which|who)\b.*\b(?:in|at|on|is)\b.*<slot>/.test(sentence) ||
    /<slot>.*\b(?:contain|holds?)\b/.test(sentence);
  for (const token of tokens) {
    if (token.kind === 'piece') pieces.push(token.ref);
    if (token.kind === 'goal') goals.push(token.ref);
    if (token.kind === 'place') places.push(token.ref);
    if (token.kind === 'slot') {
      if (asksContent) pieces.push({ kind: 'slot', faces: token.faces });
      else if (/\b(?:where|which|find)\b.*<slot>/.test(sentence) && !sentence.includes('<piece>'))
        pieces.push({ kind: 'home', faces: token.faces });
    }
  }
  const slots = { pieces, goals, places, turns: turns.at(-1) };
  const unreadTurns = slots.turns !== undefined && !executable(readSequence(slots.turns.text));
  const { intent, score } = weigh(sentence);
  const other = OTHER_MATTERS.some((pattern) => pattern.test(sentence));
  const help = helpWanted(sentence, memory);
  const onwards =
    /^(?:ok |okay )?(?:and |so )?(?:then|afterwards|after (?:that|this)|next|what then|what next|what comes (?:then|next|after))(?: what)?$/.test(
      sentence,
    );
  const found = { text, ...slots, help, onwards };
  if (other) return { ...NOTHING, text, intent: 'not-understood', refusal: 'not-understood' };
  if (intent !== undefined && score >= ENOUGH) {
    if (intent === 'judge-turns' && slots.turns === undefined) {
      if (memory.turns === undefined)
        return {
          ...found,
          intent: 'not-understood',
          refusal: unreadSequence(text) ? 'turns-unread' : 'no-turns-named',
        };
    }
    if (intent === 'judge-turns' && unreadTurns)
      return { ...found, intent: 'not-understood', refusal: 'turns-unread' };
    return { ...found, intent };
  }
  return (
    followUp(sentence, found, memory) ?? {
      ...found,
      intent: 'not-understood',
      refusal: 'not-understood',
    }
  );
}

/** `is this right: R U Q`: what stands after a colon was meant as turns. */
function unreadSequence(text: string): boolean {
  const after = /:\s*(\S.*)$/.exec(text);
  return after?.[1].split(/\s+/).every((token) => token.length <= 4) ?? false;
}

function weigh(sentence: string): { intent: Intent | undefined; score: number } {
  let best: Intent | undefined;
  let most = 0;
  for (const [intent, cues] of CUES) {
    let score = 0;
    for (const [pattern, weight] of cues) if (pattern.test(sentence)) score += weight;
    if (score > most) [best, most] = [intent, score];
  }
  return { intent: best, score: most };
}

function helpWanted(sentence: string, memory: Memory): HelpWanted {
  for (const [pattern, level] of HELP_CUES) {
    if (pattern.test(sentence))
      return level === 'more' && memory.intent !== 'next-step' ? undefined : level;
  }
  return undefined;
}

/** Questions that live from the one before: "and the red one?", "why not R?", "why?", "and then?". */
function followUp(
  sentence: string,
  found: Omit<Understood, 'intent'>,
  memory: Memory,
): Understood | undefined {
  const short = sentence.split(' ').length <= 6;
  if (!short) return undefined;
  if (found.onwards) return { ...found, intent: 'next-step' };
  if (found.turns !== undefined)
    return executable(readSequence(found.turns.text))
      ? { ...found, intent: 'judge-turns' }
      : undefined;
  if (found.pieces.length > 0) return { ...found, intent: 'where-piece' };
  if (found.goals.length > 0)
    return { ...found, intent: memory.intent === 'why-broke' ? 'why-broke' : 'is-done' };
  if (found.places.length > 0 && memory.intent !== undefined && memory.intent !== 'not-understood')
    return { ...found, intent: memory.intent };
  if (/^(?:but |and |ok )?(?:why|how|how so|how come|why is that|reason)$/.test(sentence)) {
    if (memory.intent === 'next-step')
      return { ...found, intent: 'next-step', help: memory.level < 2 ? 2 : 'more' };
    if (memory.intent === 'is-done' && memory.goal) return { ...found, intent: 'is-done' };
    if (memory.intent === 'why-broke') return { ...found, intent: 'why-broke' };
    if (memory.intent === 'judge-turns' && memory.turns !== undefined)
      return { ...found, intent: 'judge-turns' };
  }
  if (
    /^(?:yes|ok|okay|yes please|please|sure|more|go on|again|and|and now)$/.test(sentence) &&
    memory.intent === 'next-step'
  ) {
    return { ...found, intent: 'next-step', help: 'more' };
  }
  return undefined;
}
