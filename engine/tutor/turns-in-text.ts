/**
 * Turns anywhere in a sentence. The trade-off: single capital letters count as turns, small ones only
 * in company, so that "can u help" stays English and "why not R" does not.
 */
import { executable, looksLikeTurns, readSequence } from '../notation/read.ts';
import { EDGES, CORNERS } from '../cube/vocabulary.ts';
import type { TurnsRef } from './intents.ts';

export interface TurnsFound {
  readonly start: number;
  readonly end: number;
  readonly turns: TurnsRef;
}

interface Piece {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  readonly strength: 'strong' | 'capital' | 'small' | 'slot' | 'structure';
}

const PRIME = "['’‘′´`ʹ]";
const SLOT_LETTERS = new Set([...EDGES, ...CORNERS].map((name) => [...name].sort().join('')));
/** Bracket structure, with what may stand between and after: `(R U)3`, `[R: U]`. */
const STRUCTURE = new RegExp(`^[([]|[)\\]]${PRIME}?\\d*${PRIME}?[,:]?$|^[,:]$`);
/** After these a capital letter is a word: "can U", "thank U". */
const NOT_BEFORE_TURN =
  /\b(?:can|could|would|will|are|if|as|thank|thx|when|should|for|plan|vitamin|slot|at|in|piece)$/i;
/** Words of which every letter could be a turn. */
const ENGLISH = new Set([
  'full',
  'dull',
  'bull',
  'fur',
  'fuel',
  'rub',
  'bud',
  'blur',
  'dub',
  'fluff',
  'bulb',
  'urd',
  'us',
  'MD',
  'F2L',
  'f2l',
  'BLD',
  'DLS',
  'SOS',
  'LSE',
  'FB',
  'SB',
  'LL',
  'LS',
  'UF',
  'ELL',
  'flu',
  'fb',
  'lr',
  'ff',
  'rl',
  'by',
  'fly',
  'buy',
  'dry',
]);

/** Where a token of the text could be part of a run of turns. */
function pieceOf(text: string, start: number): Piece | undefined {
  const bare = text.replace(/[.;!?"“”]+$/, '').replace(/^["“”]+/, '');
  const from = start + text.indexOf(bare);
  const trimmed = bare.replace(/,$/, '');
  const inside = trimmed.replace(/^[([]+|[)\]:,]+$/g, '');
  const structure = STRUCTURE.test(bare);
  const piece = { start: from, end: from + bare.length, text: bare };
  if (bare === '') return undefined;
  if (structure && /^[()[\],:]+$/.test(bare)) return { ...piece, strength: 'structure' };
  const core = inside.replace(new RegExp(`[)\\]]${PRIME}?\\d*${PRIME}?$`), '');
  const turns = core.startsWith('@')
    ? looksLikeTurns(core)
    : /^[A-Za-z0-9'’‘′´`ʹ()[\],:-]+$/.test(core) && looksLikeTurns(core.replace(/[()[\],:]/g, ' '));
  if (!turns || ENGLISH.has(core) || /^\d/.test(core)) return undefined;
  const end = structure || /[([]/.test(bare) ? piece.end : from + trimmed.length;
  const kept = { start: from, end, text: text.slice(from - start, end - start) };
  if (core.startsWith('@')) return { ...kept, strength: 'strong' };
  const letters = core.replace(/[^A-Za-z]/g, '');
  const marked = /['’‘′´`ʹ2]/.test(core);
  const upper = /[UDLRFBMES]/.test(core);
  if (!upper) {
    if (letters.length > 2 && !marked) return undefined;
    return { ...kept, strength: 'small' };
  }
  if (marked) return { ...kept, strength: 'strong' };
  if (
    /[a-z]/.test(core.replace(/w/g, '')) &&
    letters.length > 1 &&
    /^[UDLRFBMES][a-z]/.test(core) &&
    !core.includes('w')
  )
    return undefined;
  if (letters.length > 1 && SLOT_LETTERS.has([...letters].sort().join('')))
    return { ...kept, strength: 'slot' };
  return { ...kept, strength: letters.length > 1 ? 'strong' : 'capital' };
}

function accepted(run: readonly Piece[], before: string, after: string): boolean {
  const solid = run.filter((piece) => piece.strength !== 'structure');
  if (solid.some((piece) => piece.strength === 'strong')) return true;
  const count = (strength: Piece['strength']): number =>
    solid.filter((piece) => piece.strength === strength).length;
  if (count('capital') >= 2) return true;
  if (count('slot') > 0 && solid.length === 1) return false;
  if (count('slot') > 0) return true;
  if (count('capital') === 1 && solid.length === 1) {
    if (
      /^\s*(?:edge|corner|piece|slot|face|side|layer|centre|center)/i.test(after) &&
      !/turn/i.test(after)
    )
      return false;
    return !NOT_BEFORE_TURN.test(before.trimEnd());
  }
  if (count('capital') === 1) return true;
  return solid.some((piece) => /['’‘′´`ʹ2]/.test(piece.text))
    ? solid.length > 1 || /['’‘′´`ʹ2]$/.test(run[0].text)
    : solid.length > 2;
}

/** Letters all in lower case are meant as faces by those who type so; wide turns are written in mixed company. */
function readTurns(asked: string): string {
  const text = asked.trim();
  if (/[UDLRFBMESw@]/.test(text)) return text;
  return text.replace(/[udlrfbmes]/g, (letter) => letter.toUpperCase());
}

/** All runs of turns in the text, in order. */
export function findTurns(text: string): TurnsFound[] {
  const result: TurnsFound[] = [];
  let run: Piece[] = [];
  const finish = (): void => {
    let pieces = run;
    run = [];
    // A comma or colon of the sentence is none of the turns'.
    while (pieces.length > 0 && /^[,:]$/.test(pieces[pieces.length - 1].text))
      pieces = pieces.slice(0, -1);
    while (pieces.length > 0 && /^[,:)\]]$/.test(pieces[0].text)) pieces = pieces.slice(1);
    if (pieces.every((piece) => piece.strength === 'structure')) return;
    const start = pieces[0].start;
    const last = pieces[pieces.length - 1];
    let { end } = last;
    let asked = text.slice(start, end);
    if (!accepted(pieces, text.slice(0, start), text.slice(end))) return;
    if (!executable(readSequence(asked)) && /[,:)\]]$/.test(asked)) {
      asked = asked.replace(/[,:)\]]+$/, '');
      end = start + asked.length;
    }
    if (!executable(readSequence(asked)) && /^[([]/.test(asked))
      asked = asked.replace(/^[([]+/, '');
    result.push({ start, end, turns: { asked, text: readTurns(asked) } });
  };
  const gap = /(?:^|\s)(?:\.\.\.|…|\?\?\?)(?=\s|$)/;
  for (const match of text.matchAll(/\S+/g)) {
    const piece = gap.test(match[0]) ? undefined : pieceOf(match[0], match.index);
    if (piece) {
      run.push(piece);
      if (/[.;!?]$/.test(match[0])) finish();
    } else finish();
  }
  finish();
  return result;
}
