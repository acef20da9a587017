/** What is understood of a question, on a bank of phrasings of which a third is set aside. */
import { describe, expect, it } from 'vitest';
import {
  NO_MEMORY,
  type PieceRef,
  type PlaceRef,
  type Understood,
} from '../../engine/tutor/intents.ts';
import { understand } from '../../engine/tutor/understand.ts';
import { COLOURS, FACES } from '../../engine/cube/vocabulary.ts';
import { ASIDE } from './bank-aside.ts';
import { OTHER_QUESTIONS, QUESTIONS } from './bank.ts';
import { PHRASINGS, type Phrasing } from './phrasings.ts';
import { misread as misreadLine, phrasingsOf } from './understanding.ts';

const colours = (indices: readonly number[]): string =>
  indices
    .map((i) => COLOURS[i])
    .sort()
    .join('-');
const faces = (indices: readonly number[]): string =>
  indices
    .map((i) => FACES[i])
    .sort()
    .join('');

function sayRef(ref: PieceRef): string {
  switch (ref.kind) {
    case 'colours':
      return colours(ref.colours);
    case 'colour':
      return `?${COLOURS[ref.colour]}`;
    case 'home':
      return `home ${faces(ref.faces)}`;
    case 'slot':
      return `@${faces(ref.faces)}`;
  }
}

const sorted = (code: string): string =>
  code.replace(/[UDLRFB]{2,3}$/, (letters) => [...letters].sort().join(''));

function sayPlace(ref: PlaceRef): string {
  return ref.kind === 'turn'
    ? `turn ${ref.number}`
    : ref.kind === 'line'
      ? `line ${ref.line}`
      : ref.kind;
}

function misread(phrasing: Phrasing): string | undefined {
  const [first]: Understood[] = understand(phrasing.text, NO_MEMORY);
  const got = {
    intent: first.intent,
    ...(phrasing.pieces && { pieces: first.pieces.map(sayRef) }),
    ...(phrasing.goals && { goals: first.goals.map(({ text }) => text) }),
    ...(phrasing.turns && { turns: first.turns?.text }),
    ...(phrasing.places && { places: first.places.map(sayPlace) }),
  };
  const wanted = {
    intent: phrasing.intent,
    ...(phrasing.pieces && {
      pieces: phrasing.pieces.map((code) => sorted(code.replace(/\?$/, ''))),
    }),
    ...(phrasing.goals && { goals: phrasing.goals }),
    ...(phrasing.turns && { turns: phrasing.turns }),
    ...(phrasing.places && { places: phrasing.places }),
  };
  return JSON.stringify(got) === JSON.stringify(wanted)
    ? undefined
    : `${phrasing.text} → ${JSON.stringify(got)}`;
}

const setAside = PHRASINGS.filter((_, i) => i % 3 === 2);
const tuned = PHRASINGS.filter((_, i) => i % 3 !== 2);

describe('phrasings', () => {
  it(`understands the ${tuned.length} phrasings that were used for tuning`, () => {
    expect(tuned.flatMap((one) => misread(one) ?? [])).toEqual([]);
  });

  it(`understands at least 95 % of the ${setAside.length} that were set aside`, () => {
    const wrong = setAside.filter((one) => misread(one) !== undefined).length;
    expect(1 - wrong / setAside.length).toBeGreaterThanOrEqual(0.95);
  });
});

describe('a second bank, by another hand, with every intent', () => {
  const own = [...phrasingsOf(QUESTIONS), ...phrasingsOf(OTHER_QUESTIONS)];
  const aside = phrasingsOf(ASIDE);

  it(`understands the ${own.length} phrasings that were used for tuning`, () => {
    expect(own.flatMap((one) => misreadLine(one) ?? [])).toEqual([]);
  });

  it(`understands at least 95 % of the ${aside.length} that were set aside`, () => {
    const wrong = aside.filter((one) => misreadLine(one) !== undefined).length;
    expect(1 - wrong / aside.length).toBeGreaterThanOrEqual(0.95);
  });
});
