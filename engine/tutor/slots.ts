/**
 * Pieces, goals and places in a question. Each finder replaces the tokens it understood by a slot
 * token, so that what follows sees `where is <piece>` and not the words once more.
 */
import { CORNERS, COLOUR_INITIALS, EDGES, colourIndex, faceIndex } from '../cube/vocabulary.ts';
import { pieceOf } from '../cube/piece.ts';
import { readStageName } from '../goals/stage-names.ts';
import type { GoalRef, PieceRef, PlaceRef } from './intents.ts';
import { LONGEST_TERM, termNamed } from './terms.ts';
import type { Token } from './tokens.ts';

export type SlotToken =
  | { readonly kind: 'piece'; readonly ref: PieceRef; readonly text: string }
  | { readonly kind: 'slot'; readonly faces: readonly number[]; readonly text: string }
  | { readonly kind: 'goal'; readonly ref: GoalRef; readonly text: string }
  | { readonly kind: 'place'; readonly ref: PlaceRef; readonly text: string }
  | { readonly kind: 'term'; readonly name: string; readonly text: string };
export type Slotted = Token | SlotToken;

const KINDS = /^(?:edge|corner|piece|cubie|one|ones|edges|corners|pieces|sticker)$/;
const SLOT_KINDS = /^(?:edge|corner|piece|cubie|edges|corners|pieces)$/;
const INITIALS: readonly string[] = COLOUR_INITIALS;
const SLOT_NAMES = new Set([...EDGES, ...CORNERS].map((name) => [...name].sort().join('')));

function wordAt(tokens: readonly Slotted[], at: number): string | undefined {
  const token = tokens[at];
  return token?.kind === 'word' || token?.kind === 'mark' ? token.text : undefined;
}

function colourAt(tokens: readonly Slotted[], at: number): number {
  const word = wordAt(tokens, at);
  return word === undefined ? -1 : colourIndex(word);
}

const DIRECTIONS = new Map([
  ['top', 0],
  ['upper', 0],
  ['up', 0],
  ['left', 1],
  ['front', 2],
  ['right', 3],
  ['back', 4],
  ['bottom', 5],
  ['lower', 5],
  ['down', 5],
]);

/** `DF`, `front-right`, `top back left`. */
export function findSlots(tokens: readonly Slotted[]): Slotted[] {
  const result: Slotted[] = [];
  for (let at = 0; at < tokens.length;) {
    const token = tokens[at];
    const raw = token.kind === 'word' ? token.raw : '';
    if (/^[UDLRFB]{2,3}$/.test(raw) && SLOT_NAMES.has([...raw].sort().join(''))) {
      result.push({ kind: 'slot', faces: [...raw].map(faceIndex), text: raw });
      at++;
      continue;
    }
    const faces: number[] = [];
    let end = at;
    for (let i = at; i < tokens.length;) {
      const face = DIRECTIONS.get(wordAt(tokens, i) ?? '');
      if (face === undefined) break;
      faces.push(face);
      end = i + 1;
      i = wordAt(tokens, end) === '-' || wordAt(tokens, end) === '/' ? end + 1 : end;
    }
    if (faces.length >= 2 && faces.length <= 3 && pieceOf(faces) !== undefined) {
      result.push({ kind: 'slot', faces, text: 'slot' });
      at = end;
      continue;
    }
    result.push(token);
    at++;
  }
  return result;
}

/** Colours by their initials: `wr`, `w-r`, `WGO`; only before a word such as "edge", or joined. */
function initialsAt(
  tokens: readonly Slotted[],
  at: number,
): { colours: number[]; end: number } | undefined {
  const letters: string[] = [];
  let end = at;
  let joined = false;
  const token = tokens[at];
  if (token?.kind !== 'word') return undefined;
  if (/^[wyrobg]{2,3}$/i.test(token.raw)) {
    letters.push(...token.raw.toLowerCase());
    end = at + 1;
  } else {
    for (let i = at; i < tokens.length;) {
      const part = tokens[i];
      if (part?.kind !== 'word' || !/^[wyrobg]$/i.test(part.raw)) break;
      letters.push(part.raw.toLowerCase());
      end = i + 1;
      const mark = wordAt(tokens, end);
      if (mark !== '-' && mark !== '/') break;
      joined = true;
      i = end + 1;
    }
  }
  const colours = letters.map((letter) => INITIALS.indexOf(letter));
  if (colours.length < 2 || pieceOf(colours) === undefined) return undefined;
  return joined || KINDS.test(wordAt(tokens, end) ?? '') ? { colours, end } : undefined;
}

/** Two or three colours name a piece; a slot before "edge" or "corner" the piece that belongs there. */
export function findPieces(tokens: readonly Slotted[]): Slotted[] {
  const result: Slotted[] = [];
  for (let at = 0; at < tokens.length;) {
    const token = tokens[at];
    if (token.kind === 'slot' && SLOT_KINDS.test(wordAt(tokens, at + 1) ?? '')) {
      result.push({ kind: 'piece', ref: { kind: 'home', faces: token.faces }, text: token.text });
      at += 2;
      continue;
    }
    const short = initialsAt(tokens, at);
    if (short) {
      result.push({ kind: 'piece', ref: { kind: 'colours', colours: short.colours }, text: '' });
      at = short.end + (KINDS.test(wordAt(tokens, short.end) ?? '') ? 1 : 0);
      continue;
    }
    const { groups, end, loose } = colourGroups(tokens, at);
    const flat = groups.flat();
    if (flat.length < 2) {
      result.push(token);
      at++;
      continue;
    }
    const kind = wordAt(tokens, end) ?? '';
    const named = KINDS.test(kind);
    const single = groups.every((group) => group.length === 1);
    if (single && loose && /^(?:edges|corners|pieces|ones)$/.test(kind)) {
      const corner = kind === 'corners' ? true : kind === 'edges' ? false : undefined;
      for (const colour of flat)
        result.push({ kind: 'piece', ref: { kind: 'colour', colour, corner }, text: '' });
    } else {
      for (const colours of single ? [flat] : groups) {
        // `white red corner` names two corners; which one is asked for is settled on the cube.
        result.push({
          kind: 'piece',
          ref: {
            kind: 'colours',
            colours: kind.startsWith('corner') && colours.length === 2 ? [...colours, -1] : colours,
          },
          text: '',
        });
      }
    }
    at = end + (named ? 1 : 0);
  }
  return result;
}

function colourGroups(
  tokens: readonly Slotted[],
  at: number,
): { groups: number[][]; end: number; loose: boolean } {
  const groups: number[][] = [];
  let end = at;
  let loose = false;
  let tight = false;
  for (let i = at; i < tokens.length;) {
    const colour = colourAt(tokens, i);
    if (colour < 0) break;
    if (tight || groups.length === 0) {
      if (groups.length === 0) groups.push([]);
      groups[groups.length - 1].push(colour);
    } else groups.push([colour]);
    end = i + 1;
    const mark = wordAt(tokens, end);
    tight = mark === '-' || mark === '/' || mark === '+' || colourAt(tokens, end) >= 0;
    if (mark === '-' || mark === '/' || mark === '+') i = end + 1;
    else if (mark === 'and' || mark === '&' || mark === ',') {
      loose ||= colourAt(tokens, end + 1) >= 0;
      i = end + 1;
      if (wordAt(tokens, i) === 'and') i++;
    } else i = end;
  }
  return { groups: groups.filter((group) => group.length > 0), end, loose };
}

/** One colour before "one", "edge", "corner". */
export function findColours(tokens: readonly Slotted[]): Slotted[] {
  const result: Slotted[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const colour = colourAt(tokens, at);
    const kind = wordAt(tokens, at + 1) ?? '';
    if (colour < 0) {
      result.push(tokens[at]);
      continue;
    }
    const corner = kind.startsWith('corner') ? true : kind.startsWith('edge') ? false : undefined;
    result.push({ kind: 'piece', ref: { kind: 'colour', colour, corner }, text: kind });
    if (KINDS.test(kind)) at++;
  }
  return result;
}

/** Aliases that are common words, too, and say nothing by themselves in a question. */
const WEAK_ALIASES = new Set([
  'all',
  'end',
  'line',
  'side',
  'slot',
  'layer',
  'lr',
  'co',
  'ep',
  'cp',
  'face',
  'edges',
  'block',
  'finish',
  'finished',
  'ls',
  'll',
  'zb',
  'last turn',
  '4a',
  '4b',
  '4c',
  'auf',
  'middle',
  'solved',
  'fb',
  'sb',
  'corner',
  'edge',
]);
const WEAK_BUT_COLOURED = new Set(['edges', 'face', 'side', 'layer', 'corners']);
const LONGEST_ALIAS = 6;

export function findGoals(tokens: readonly Slotted[]): Slotted[] {
  const result: Slotted[] = [];
  for (let at = 0; at < tokens.length;) {
    const found = goalAt(tokens, at);
    if (found) {
      result.push({ kind: 'goal', ref: found.ref, text: found.ref.text });
      at = found.end;
    } else {
      result.push(tokens[at]);
      at++;
    }
  }
  return result;
}

function goalAt(tokens: readonly Slotted[], at: number): { ref: GoalRef; end: number } | undefined {
  for (let end = Math.min(tokens.length, at + LONGEST_ALIAS); end > at; end--) {
    const words = tokens
      .slice(at, end)
      .map((token) =>
        token.kind === 'word' ||
        token.kind === 'number' ||
        (token.kind === 'mark' && '-#'.includes(token.text))
          ? token.text
          : undefined,
      );
    if (words.includes(undefined) || words[0] === '-' || words[words.length - 1] === '-') continue;
    const text = words.join(' ').replace(/ - /g, '-').replace(/# /g, '#');
    // A count is none here: "the cross after 7 turns".
    if (/\b(?:moves?|turns?)\b/.test(text)) continue;
    const plain = text.replace(/^(?:white|yellow|red|orange|green|blue) /, '');
    if (WEAK_ALIASES.has(text) || (WEAK_ALIASES.has(plain) && !WEAK_BUT_COLOURED.has(plain)))
      continue;
    // `the first` and bare ordinals belong to a pair only.
    if (/^(?:first|second|third|fourth|\d\w\w)$/.test(text)) continue;
    const name = readStageName(text);
    if (name !== undefined) return { ref: { text, name }, end };
  }
  return undefined;
}

const NUMBER_WORDS = new Map(
  'one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'
    .split(' ')
    .map((word, i) => [word, i + 1]),
);

function numberAt(tokens: readonly Slotted[], at: number): number | undefined {
  const token = tokens[at];
  if (token?.kind === 'number') return token.value;
  return token?.kind === 'word' ? NUMBER_WORDS.get(token.text) : undefined;
}

const TURN_WORD = /^(?:turn|move|step)$/;
const ORDINAL = /^(\d+)(?:st|nd|rd|th)$/;

/** `at move 14`, `the 5th turn`, `line 6`, `here`, `at the start`. */
export function findPlaces(tokens: readonly Slotted[]): Slotted[] {
  const result: Slotted[] = [];
  for (let at = 0; at < tokens.length;) {
    const found = placeAt(tokens, at);
    if (found) {
      const before = result
        .slice(-2)
        .some((token) => token.kind === 'word' && token.text === 'before');
      const ref =
        found.ref.kind === 'turn' || found.ref.kind === 'line'
          ? { ...found.ref, before }
          : found.ref;
      result.push({ kind: 'place', ref, text: '' });
      at = found.end;
    } else {
      result.push(tokens[at]);
      at++;
    }
  }
  return result;
}

function placeAt(
  tokens: readonly Slotted[],
  at: number,
): { ref: PlaceRef; end: number } | undefined {
  const word = wordAt(tokens, at) ?? '';
  const ordinal = ORDINAL.exec(word);
  if (ordinal && TURN_WORD.test(wordAt(tokens, at + 1) ?? ''))
    return { ref: { kind: 'turn', number: Number(ordinal[1]), before: false }, end: at + 2 };
  if (ordinal && wordAt(tokens, at + 1) === 'line')
    return { ref: { kind: 'line', line: Number(ordinal[1]), before: false }, end: at + 2 };
  if (TURN_WORD.test(word) || word === 'line') {
    let next = at + 1;
    while (/^(?:number|no|nr|#|\.)$/.test(wordAt(tokens, next) ?? '')) next++;
    const number = numberAt(tokens, next);
    if (number === undefined) return undefined;
    const ref: PlaceRef =
      word === 'line'
        ? { kind: 'line', line: number, before: false }
        : { kind: 'turn', number, before: false };
    return { ref, end: next + 1 };
  }
  if (word === 'here') return { ref: { kind: 'here' }, end: at + 1 };
  if (/^(?:at|in|from|before)$/.test(word)) {
    const article = wordAt(tokens, at + 1) === 'the' ? 2 : 1;
    const noun = wordAt(tokens, at + article) ?? '';
    if (/^(?:start|beginning|begin)$/.test(noun))
      return { ref: { kind: 'start' }, end: at + article + 1 };
    if (noun === 'end') return { ref: { kind: 'end' }, end: at + article + 1 };
  }
  return undefined;
}

/** Terms of the catalogue, in a question that asks what a word means. */
export function findTerms(tokens: readonly Slotted[]): Slotted[] {
  const result: Slotted[] = [];
  for (let at = 0; at < tokens.length;) {
    const found = termAt(tokens, at);
    result.push(found ? { kind: 'term', name: found.name, text: '' } : tokens[at]);
    at = found ? found.end : at + 1;
  }
  return result;
}

function termAt(tokens: readonly Slotted[], at: number): { name: string; end: number } | undefined {
  for (let end = Math.min(tokens.length, at + LONGEST_TERM); end > at; end--) {
    const words = tokens.slice(at, end).map((_, i) => wordAt(tokens, at + i));
    if (words.includes(undefined)) continue;
    const term = termNamed(words.join(' ').replace(/ - /g, '-'));
    if (term) return { name: term.name, end };
  }
  return undefined;
}
