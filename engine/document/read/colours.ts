/**
 * Colours and holdings as people write them: `white up, green front`, `green in front and white on
 * top`, `yellow top green front`, `white, green`, `w g`.
 */
import { CENTRE_AT, type Holding } from '../../cube/holding.ts';
import type { Span } from '../../cube/place.ts';
import { COLOUR_INITIALS, FACES, colourIndex, faceIndex } from '../../cube/vocabulary.ts';
import type { Words } from './tree.ts';
import { bad, type BadValue } from './values.ts';
import { splitWords } from './words.ts';

export interface HoldingValue {
  readonly kind: 'holding';
  readonly holding: Holding;
  readonly span: Span;
}

export interface BaseValue {
  readonly kind: 'base';
  /** Colour index. */
  readonly base: number;
  readonly span: Span;
}

const PLACES: Readonly<Record<string, string>> = {
  up: 'U',
  top: 'U',
  upper: 'U',
  above: 'U',
  down: 'D',
  bottom: 'D',
  below: 'D',
  under: 'D',
  front: 'F',
  forward: 'F',
  back: 'B',
  behind: 'B',
  left: 'L',
  right: 'R',
};
const FILLERS = new Set(
  'on in at to is and the facing face faces side centre center colour color with of me = - → layer cross first base'.split(
    ' ',
  ),
);
const UP = 0;
const FRONT = 2;

interface Token extends Words {
  readonly colour: number;
  readonly face: number;
  /** A single letter that is both: `r`, `b`. */
  readonly unsure: boolean;
}

/** A colour by its name or initial; -1 if it is none. */
export function readColour(text: string): number {
  const lower = text.toLowerCase();
  const initial = COLOUR_INITIALS.indexOf(lower as (typeof COLOUR_INITIALS)[number]);
  return initial !== -1 ? initial : colourIndex(lower);
}

export function readBase(value: Words): BaseValue | BadValue {
  if (value.text === '') return bad('empty', value);
  const words = splitWords(value, /[\s,]+/g).filter(
    ({ text }) => !FILLERS.has(text.toLowerCase()) && !(text.toLowerCase() in PLACES),
  );
  const base = words.length === 1 ? readColour(words[0].text) : -1;
  return base === -1 ? bad('no-colour', value) : { kind: 'base', base, span: words[0].span };
}

export function readHolding(value: Words): HoldingValue | BadValue {
  if (value.text === '') return bad('empty', value);
  const tokens: Token[] = [];
  for (const word of splitWords(spacedInitials(value), /[\s,;/:=+&-]+/g)) {
    const lower = word.text.toLowerCase();
    if (lower === '' || FILLERS.has(lower)) continue;
    const colour = readColour(lower);
    const face = faceIndex(PLACES[lower] ?? word.text.toUpperCase());
    if (colour === -1 && face === -1) return bad('no-holding', word);
    tokens.push({ ...word, colour, face, unsure: colour !== -1 && face !== -1 });
  }
  const wanted = pairUp(tokens);
  if (wanted === undefined) return bad('no-holding', value);
  const fits = CENTRE_AT.map((_, holding) => holding).filter((holding) =>
    wanted.every(([face, colour]) => CENTRE_AT[holding][face] === colour),
  );
  if (fits.length === 0) return bad('holding-clash', value);
  if (fits.length > 1) return bad('holding-open', value);
  return { kind: 'holding', holding: fits[0], span: value.span };
}

/** `WG` is short for `w g`. */
function spacedInitials(value: Words): Words {
  const short = /^[wogrby]{2}$/i.test(value.text);
  // One blank more than there is room for: spans of a value this short are not looked at.
  return short ? { text: `${value.text[0]} ${value.text[1]}`, span: value.span } : value;
}

/** Pairs of face and colour, in whichever order each is written; two bare colours are up and front. */
function pairUp(tokens: readonly Token[]): (readonly [face: number, colour: number])[] | undefined {
  if (tokens.length === 2 && tokens.every(({ colour }) => colour !== -1)) {
    return [
      [UP, tokens[0].colour],
      [FRONT, tokens[1].colour],
    ];
  }
  if (tokens.length === 0 || tokens.length % 2 === 1 || tokens.length > 2 * FACES.length)
    return undefined;
  const pairs: [number, number][] = [];
  for (let i = 0; i < tokens.length; i += 2) {
    const [first, second] = [tokens[i], tokens[i + 1]];
    const colourFirst = first.colour !== -1 && second.face !== -1;
    const faceFirst = first.face !== -1 && second.colour !== -1;
    if (colourFirst && !(faceFirst && first.unsure && !second.unsure && second.colour !== -1)) {
      pairs.push([second.face, first.colour]);
    } else if (faceFirst) pairs.push([first.face, second.colour]);
    else return undefined;
  }
  return pairs;
}
