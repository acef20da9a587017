/**
 * Spoken notation: "R prime U two", "right prime, then up twice, left". It is recognised only if
 * every word of the text belongs to it, so that ordinary sentences are left alone.
 */
import type { Span } from '../cube/place.ts';
import { makeTurn, printTurn, type Family, type Turn } from '../cube/turn.ts';
import { isPrime, readTurn } from './letters.ts';

export interface Spoken {
  /** The passage in the text, white space around it left out. */
  readonly span: Span;
  /** The same in canonical spelling; line breaks are kept. */
  readonly newText: string;
  readonly turns: readonly Turn[];
}

const FAMILY_WORDS: ReadonlyMap<string, Family> = new Map<string, Family>([
  ['right', 'R'],
  ['left', 'L'],
  ['up', 'U'],
  ['upper', 'U'],
  ['top', 'U'],
  ['down', 'D'],
  ['bottom', 'D'],
  ['front', 'F'],
  ['back', 'B'],
  ['middle', 'M'],
  ['equator', 'E'],
  ['standing', 'S'],
]);

/** Amounts that the words stand for; 3 is the inverse. */
const AMOUNT_WORDS: ReadonlyMap<string, number> = new Map([
  ['prime', 3],
  ['primed', 3],
  ['inverted', 3],
  ['inverse', 3],
  ['reverse', 3],
  ['reversed', 3],
  ['anticlockwise', 3],
  ['counterclockwise', 3],
  ['ccw', 3],
  ['minus', 3],
  ['dash', 3],
  ['two', 2],
  ['2', 2],
  ['twice', 2],
  ['double', 2],
  ['doubled', 2],
  ['squared', 2],
  ['half', 2],
  ['180', 2],
  ['three', 3],
  ['3', 3],
  ['clockwise', 1],
  ['cw', 1],
  ['once', 1],
]);

const FILLERS = new Set([
  'then',
  'and',
  'turn',
  'turns',
  'the',
  'a',
  'face',
  'side',
  'layer',
  'slice',
  'again',
  'next',
  'finally',
  'first',
  'by',
  'to',
  'it',
  'rotate',
  'rotation',
  'quarter',
]);
const WIDE_WORDS = new Set(['wide', 'w', 'fat']);
const SEPARATORS = new Set([',', ';', '.', 'then', 'and', 'next', 'finally']);

interface Word {
  family: Family;
  amount: number;
  wide: boolean;
  /** A word of amount or `wide` still belongs to this turn: nothing has parted them. */
  open: boolean;
}

/** What the passage says in turns; undefined if it is not spoken notation, or not it alone. */
export function readSpoken(text: string): Spoken | undefined {
  // Letters all in lower case are what dictation makes of the faces.
  const lowerOnly = !/(?<![\p{L}\p{N}])[UDLRFBMES](?![\p{Ll}])/u.test(text);
  const lines: string[] = [];
  const turns: Turn[] = [];
  let evidence = 0;
  for (const line of text.trim().split(/\r?\n/u)) {
    const read = readLine(line, lowerOnly);
    if (read === undefined) return undefined;
    evidence += read.evidence;
    for (const turn of read.turns) turns.push(turn);
    lines.push(read.turns.map(printTurn).join(' '));
  }
  // One word such as "prime" tells; bare names of sides occur in sentences, too.
  if (turns.length === 0 || evidence < 3) return undefined;
  const start = text.length - text.trimStart().length;
  return { span: { start, end: start + text.trim().length }, newText: lines.join('\n'), turns };
}

function readLine(
  line: string,
  lowerOnly: boolean,
): { turns: Turn[]; evidence: number } | undefined {
  const words: Word[] = [];
  let evidence = 0;
  /** Said before the turn it belongs to: `double R`, `wide right`. */
  let amountAhead: number | undefined;
  let wideAhead = false;
  const prepared = line
    .replace(/(counter|anti)[- ](?=clockwise)/giu, '$1')
    .replace(/(?<=\p{L})[-‐‑](?=\p{L})/gu, ' ');
  for (const token of prepared.match(/[\p{L}\p{N}]+[^\s\p{L}\p{N},;.]*|[,;.]|\S+/gu) ?? []) {
    const word = token.toLowerCase();
    const last = words.at(-1);
    const amount = AMOUNT_WORDS.get(word);
    if (SEPARATORS.has(word)) {
      if (last !== undefined) last.open = false;
    } else if (amount !== undefined) {
      if (!/^\d/u.test(word)) evidence += 3;
      if (last?.open !== true) amountAhead = amount;
      else {
        last.amount *= amount;
        // `R two prime` is said, `R prime … double U` is not one turn.
        last.open = amount === 2 && last.amount === 2;
      }
    } else if (WIDE_WORDS.has(word)) {
      evidence += 1;
      if (last?.open === true && !last.wide && last.amount === 1) last.wide = true;
      else wideAhead = true;
    } else {
      const turn = readWord(token, word, lowerOnly);
      if (turn === undefined) {
        if (FILLERS.has(word)) continue;
        return undefined;
      }
      if (FAMILY_WORDS.has(word)) evidence += 1;
      words.push({
        ...turn,
        amount: turn.amount * (amountAhead ?? 1),
        wide: wideAhead,
        open: amountAhead === undefined,
      });
      amountAhead = undefined;
      wideAhead = false;
    }
  }
  if (amountAhead !== undefined || wideAhead) return undefined;
  const turns: Turn[] = [];
  for (const { family, amount, wide } of words) {
    if (amount % 4 === 0 || (wide && !'UDLRFB'.includes(family))) return undefined;
    turns.push(makeTurn(wide ? (`${family}w` as Family) : family, amount));
  }
  return { turns, evidence };
}

/** A side by its name, or a turn as it is written, perhaps among spoken ones. */
function readWord(
  token: string,
  word: string,
  lowerOnly: boolean,
): { family: Family; amount: number } | undefined {
  const named = FAMILY_WORDS.get(word.replace(/s$/u, '')) ?? FAMILY_WORDS.get(word);
  if (named !== undefined) return { family: named, amount: 1 };
  const letter =
    lowerOnly && /^[udlrfbmes]/u.test(token)
      ? token.charAt(0).toUpperCase() + token.slice(1)
      : token;
  const read = readTurn(letter, 0, letter.length);
  if (read?.end !== letter.length) return undefined;
  const printed = printTurn(read.turn);
  const inverse = isPrime(printed.at(-1) ?? '');
  const half = printed.endsWith('2');
  const family = (inverse || half ? printed.slice(0, -1) : printed) as Family;
  return { family, amount: inverse ? 3 : half ? 2 : 1 };
}
