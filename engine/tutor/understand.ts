/**
 * From a text to questions with intents and slots. Slots are found first and stand in the sentence as
 * `<piece>`, `<goal>`, `<turns>`, `<slot>`, `<place>`, `<term>`; then the concepts of its words are
 * weighed by rules. What gathers too little weight is not understood, and is never guessed at.
 */
import { executable, readSequence } from '../notation/read.ts';
import { aspectOf, flawIn, helpWanted } from './details.ts';
import {
  findColours,
  findGoals,
  findPieces,
  findPlaces,
  findSlots,
  findTerms,
  type Slotted,
} from './slots.ts';
import { OTHER_MATTERS } from './other-matters.ts';
import { termNamed } from './terms.ts';
import { tokenize } from './tokens.ts';
import { weigh } from './weigh.ts';
import { splitQuestions } from './split.ts';
import type { GoalRef, Memory, PieceRef, PlaceRef, Understood } from './intents.ts';

export const LONGEST_QUESTION = 2000;

const NOTHING = {
  pieces: [],
  goals: [],
  places: [],
  turns: undefined,
  sequences: [],
  aspect: 'effect',
  flaw: undefined,
  term: undefined,
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

/** Words by which a question asks what another word means. */
const ASKS_MEANING =
  /\b(?:means?|meaning|meant|defin\w+|explain|explanation|term|word)\b|\bwhat (?:is|are) an? |\btell me (?:about|what) /;

function asksMeaning(plain: string): boolean {
  const bare = /^(?:and |but |so )?(?:what|who) (?:is|are) (?:the )?(.*)$/.exec(plain);
  return ASKS_MEANING.test(plain) || (bare !== null && termNamed(bare[1]) !== undefined);
}

function slotted(text: string): Slotted[] {
  const tokens = tokenize(text);
  const plain = tokens.map((token) => (token.kind === 'word' ? token.text : '·')).join(' ');
  const opened = asksMeaning(plain) ? findTerms(tokens) : tokens;
  return findColours(findGoals(findPieces(findPlaces(findSlots(opened)))));
}

function understandOne(text: string, memory: Memory): Understood | undefined {
  const tokens = slotted(text);
  const sentence = skeleton(tokens);
  if (sentence === '' || (SOCIAL.test(sentence) && memory.intent !== 'next-step')) {
    if (SOCIAL.test(sentence)) return undefined;
    const isText = /[\p{L}\p{N}]/u.test(text) || text.trim() === '?';
    return isText ? refused(text, 'not-understood') : undefined;
  }
  const { intent, concepts } = weigh(sentence);
  const turns = tokens.flatMap((token) => (token.kind === 'turns' ? [token.turns] : []));
  const slots = { ...refsIn(tokens, sentence, concepts), turns: turns.at(-1), sequences: turns };
  const words = tokens.flatMap((token) =>
    token.kind === 'word' || token.kind === 'number' ? [token.text] : [],
  );
  const onwards =
    /^(?:ok |okay )?(?:and |so )?(?:then|afterwards|after (?:that|this)|next|what then|what next|what comes (?:then|next|after))(?: what)?$/.test(
      sentence,
    );
  const found: Omit<Understood, 'intent'> = {
    text,
    ...slots,
    aspect: aspectOf(concepts),
    flaw: flawIn(wordsWithPieces(tokens, words)),
    term:
      tokens.find((token) => token.kind === 'term')?.name ??
      (concepts.has('sidesmatch') ? 'matching sides' : undefined),
    help: helpWanted(sentence, concepts, memory),
    onwards,
  };
  if (OTHER_MATTERS.some((pattern) => pattern.test(sentence)))
    return refused(text, 'not-understood');
  const unread = turns.some((ref) => !executable(readSequence(ref.text)));
  if (intent !== undefined && !onwards) {
    const refusal = refusalOf(intent, text, turns.length, unread, memory);
    return refusal === undefined
      ? { ...found, intent }
      : { ...found, intent: 'not-understood', refusal };
  }
  return followUp(sentence, found, memory) ?? refused(text, 'not-understood');
}

/** Of "one edge is flipped" the colours, if any, are gone into slots; their kind still tells edges from corners. */
function wordsWithPieces(tokens: readonly Slotted[], words: readonly string[]): string[] {
  const kinds = tokens.flatMap((token) =>
    token.kind === 'piece' || token.kind === 'goal' ? token.text.split(' ') : [],
  );
  return [...words, ...kinds];
}

function refusalOf(
  intent: Understood['intent'],
  text: string,
  turns: number,
  unread: boolean,
  memory: Memory,
): Understood['refusal'] {
  if (intent === 'judge-turns' || intent === 'compare') {
    if (intent === 'judge-turns' && turns === 0 && memory.turns === undefined)
      return unreadSequence(text) ? 'turns-unread' : 'no-turns-named';
  }
  return turns > 0 && unread ? 'turns-unread' : undefined;
}

function refsIn(
  tokens: readonly Slotted[],
  sentence: string,
  concepts: ReadonlySet<string>,
): Pick<Understood, 'pieces' | 'goals' | 'places'> {
  const pieces: PieceRef[] = [];
  const goals: GoalRef[] = [];
  const places: PlaceRef[] = [];
  const asksContent = concepts.has('whatin') || /<slot>.*\b(?:contain|holds?)\b/.test(sentence);
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
  return { pieces, goals, places };
}

/** `is this right: R U Q`: what stands after a colon was meant as turns. */
function unreadSequence(text: string): boolean {
  const after = /:\s*(\S.*)$/.exec(text);
  return after?.[1].split(/\s+/).every((token) => token.length <= 4) ?? false;
}

/** Questions that live from the one before: "and the red one?", "why not R?", "why?", "and then?". */
function followUp(
  sentence: string,
  found: Omit<Understood, 'intent'>,
  memory: Memory,
): Understood | undefined {
  if (
    memory.intent === 'next-step' &&
    /^(?:but |and )?why\b.*\b(?:piece|edge|corner|one|pair|choose|chose|pick|first)\b/.test(
      sentence,
    ) &&
    !sentence.includes('<')
  )
    return { ...found, intent: 'next-step', help: 2 };
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
  if (
    /^(?:but |and |ok )?(?:why|how|how so|how come|why is that|reason|why (?:this|that|it)(?: one| piece)?(?: first)?|why so|but why)$/.test(
      sentence,
    )
  ) {
    if (memory.intent === 'next-step')
      return { ...found, intent: 'next-step', help: memory.level < 2 ? 2 : 'more' };
    if (memory.intent === 'where-piece' && memory.pieces.length > 0)
      return { ...found, intent: 'journey' };
    if (memory.intent === 'which-hold' || memory.intent === 'which-case')
      return { ...found, intent: 'next-step', help: 2 };
    if (memory.intent === 'what-does' && memory.turns !== undefined)
      return { ...found, intent: 'judge-turns' };
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
