/**
 * The catalogue: one place where findings become sentences. Sentences name pieces by colour and turns
 * by their notation, number and line, and say nothing that is not among the arguments.
 */
import { pieceTitle, type Piece } from '../cube/piece.ts';
import { goalTitle } from '../goals/titles.ts';
import type { Change, FindingArgs, RelatedNote, StrayPiece, TurnRef } from './raw-finding.ts';

/** Pieces named before a sentence goes over to a count. */
const PIECES_NAMED = 4;

/** `one`, `one and two`, `one, two and three`. */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}

/** `firstLine`: zero-based line of the block in the text; people count lines from 1. */
export function sayTurn(turn: TurnRef, firstLine: number): string {
  const line = `line ${String(turn.line + firstLine + 1)}`;
  if (!/^[xyz]/.test(turn.text)) return `${turn.text} (turn ${String(turn.number)}, ${line})`;
  // Rotations have no number of their own.
  const after = turn.number > 0 ? `after turn ${String(turn.number)}, ` : '';
  return `${turn.text} (${after}${line})`;
}

function sayStray(stray: StrayPiece, base: number): string {
  const title = `the ${pieceTitle(stray.piece, base)}`;
  return stray.turned
    ? `${title} is in its slot ${stray.home} but turned`
    : `${title} is at ${stray.slot} instead of ${stray.home}`;
}

function sayStrays(pieces: readonly StrayPiece[], base: number): string {
  const named = pieces.slice(0, PIECES_NAMED).map((stray) => sayStray(stray, base));
  const rest = pieces.length - named.length;
  if (rest > 0)
    named.push(`${String(rest)} more ${rest === 1 ? 'piece is' : 'pieces are'} not home`);
  return listed(named);
}

function sayNames(pieces: readonly Piece[], base: number): string {
  const named = pieces.slice(0, PIECES_NAMED).map((piece) => `the ${pieceTitle(piece, base)}`);
  const rest = pieces.length - named.length;
  if (rest > 0) named.push(`${String(rest)} more ${rest === 1 ? 'piece' : 'pieces'}`);
  return listed(named);
}

function sayChange(change: Change, firstLine: number, does: 'restores' | 'reaches'): string {
  switch (change.kind) {
    case 'insert':
      return change.after
        ? `${change.text} after ${sayTurn(change.after, firstLine)} ${does} it`
        : `${change.text} at the beginning ${does} it`;
    case 'replace':
      return `${change.text} in place of ${sayTurn(change.turn, firstLine)} ${does} it`;
    case 'remove':
      return `leaving out ${sayTurn(change.turn, firstLine)} ${does} it`;
  }
}

/** The first letter large; turns stay as they are, for Y would not be y. */
function capital(text: string): string {
  if (/^[xyz](?:2|')? /.test(text)) return text;
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The sentence of a finding, for a block whose first line is `firstLine` (zero-based). */
export function sayFinding(args: FindingArgs, firstLine: number): string {
  switch (args.code) {
    case 'goal-broken': {
      const lost = args.moved
        ? `it takes ${sayNames(args.moved, args.base)} away`
        : `${sayStrays(args.pieces, args.base)} after it`;
      const change = args.change
        ? ` ${capital(sayChange(args.change, firstLine, 'restores'))}.`
        : '';
      return `${sayTurn(args.turn, firstLine)} breaks ${goalTitle(args.goal)} and it never comes back: ${lost}.${change}`;
    }
    case 'goal-carried':
      return `${sayTurn(args.turn, firstLine)} breaks ${goalTitle(args.goal)} (${sayNames(args.moved, args.base)}); it comes back only in a later stage, with ${sayTurn(args.restored, firstLine)}.`;
    case 'goal-passing':
      return `${sayTurn(args.turn, firstLine)} lends ${sayNames(args.moved, args.base)} out of ${goalTitle(args.goal)}; ${sayTurn(args.restored, firstLine)} brings it back.`;
    case 'goal-not-reached': {
      const where = args.last ? ` after ${sayTurn(args.last, firstLine)}` : '';
      const change = args.change
        ? ` ${capital(sayChange(args.change, firstLine, 'reaches'))}.`
        : '';
      return `${capital(goalTitle(args.goal))} is not reached${where}: ${sayStrays(args.pieces, args.base)}.${change}`;
    }
    case 'cross-not-aligned':
      return args.kind === 'offset'
        ? `The cross is made, but its sides do not match the centres: ${args.turn} brings all four edges home at once.`
        : `The cross has its colour, but its edges are in the wrong order, so no turn of the layer mends it: ${sayStrays(args.pieces, args.base)}.`;
    case 'last-turn-missing':
      return args.goal === 'solved'
        ? `One turn is missing at the end: ${args.turn} solves the cube.`
        : `One turn of the top layer is missing: ${args.turn} completes ${goalTitle(args.goal)}.`;
    case 'not-solved':
      return `The solve does not end solved: ${sayStrays(args.pieces, args.base)}.`;
    case 'claim-false':
      return sayFalseClaim(args, firstLine);
    case 'holding-differs':
      return `Here ${args.up} is up and ${args.front} is in front${args.rotation ? `; ${args.rotation} leads to the holding that is written` : ''}.`;
    case 'turns-cancel':
      return args.result === ''
        ? `${args.turns} cancel each other.`
        : `${args.turns} are together ${args.result}.`;
    case 'unknown-turn':
      return `“${shortened(args.text)}” is no turn; nothing of it is executed.`;
    case 'unclosed':
      return args.kind === 'bracket'
        ? `The bracket ${args.bracket} has no partner; it is read as if ${args.insert} stood in its place.`
        : `A conjugate without its brackets: nothing of this line is executed. Meant is perhaps ${shortened(args.newText)}.`;
    case 'spelling':
      return `“${shortened(args.text)}” is read as ${shortened(args.newText)}.`;
    case 'repeat-or-rotation':
      return `“${args.text.trim()}” after a bracket is read as a rotation; ${args.newText} written close to the bracket repeats it${args.repeatFits ? ', and only that fits what the text claims' : ''}.`;
    case 'spoken-notation':
      return args.newText === undefined
        ? 'These are turns in words; nothing of the line is executed.'
        : `These are turns in words; written as notation they are ${shortened(args.newText)}.`;
    case 'prose':
      return 'This line is read as words, not as turns; nothing of it is executed. // at its beginning makes it a comment.';
    case 'unknown-key':
      return `“${shortened(args.key)}:” is not a key or a stage of this method${args.suggestion === undefined ? '' : `; perhaps ${args.suggestion}: is meant`}.`;
    case 'bad-value':
      return `The value of ${args.key}: can't be used: ${args.reason}.`;
    case 'state-impossible':
      return `No turns lead to this cube: ${args.reason}.${args.remedy === undefined ? '' : ` ${capital(args.remedy)}.`}`;
    case 'name-unknown': {
      const known =
        args.known.length === 0 ? '' : ` Known here: ${args.known.slice(0, 8).join(', ')}.`;
      return `There is no ${args.what} named “${shortened(args.name)}”.${known}`;
    }
    case 'name-twice':
      return `The name “${shortened(args.name)}” is already given in line ${String(args.line + firstLine + 1)}; that one is used.`;
    case 'name-cycle':
      return `These names define each other: ${args.names.map((name) => `@${name}`).join(' → ')}.`;
    case 'use-not-found':
      return `The file “${shortened(args.file)}” can't be found.`;
    case 'too-long':
      return `More than ${args.limit.toLocaleString('en-GB')} turns: what lies beyond is done as one step, and goals are judged after it.`;
    case 'start-assumed':
      return 'There is no scramble and no start, so the solve is taken to end solved, and its start is worked out from its turns.';
    case 'base-assumed':
      return `The base is taken to be ${args.colour}; base: ${args.colour} says so.`;
    case 'count-differs':
      return `${String(args.claimed)} turns are written here, but it is ${String(args.obtm)} in OBTM, ${String(args.stm)} in STM and ${String(args.etm)} in ETM.`;
    case 'wide-or-face':
      return `Lower-case letters are wide turns; written as faces this is ${shortened(args.newText)}${args.facesFit ? ', and only that fits what the text claims' : ''}.`;
  }
}

function sayFalseClaim(
  args: Extract<FindingArgs, { code: 'claim-false' }>,
  firstLine: number,
): string {
  switch (args.kind) {
    case 'check':
      return `${capital(goalTitle(args.goal))} does not hold here${args.at ? `, after ${sayTurn(args.at, firstLine)}` : ''}: ${sayStrays(args.pieces, args.base)}.`;
    case 'keeps': {
      const lost =
        args.pieces.length === 0
          ? ''
          : `: ${sayNames(
              args.pieces.map((stray) => stray.piece),
              args.base,
            )} ${args.pieces.length === 1 ? 'is' : 'are'} not where ${args.pieces.length === 1 ? 'it was' : 'they were'}`;
      return `${capital(goalTitle(args.goal))} is not kept${args.turn ? `; it is lost with ${sayTurn(args.turn, firstLine)}` : ''}${lost}.`;
    }
    case 'does':
      return `The sequence does not do ${args.claimed}: it does ${args.computed}.`;
    case 'order':
      return `The sequence returns to its start after ${String(args.computed)} times, not ${String(args.claimed)}.`;
    case 'start':
      return `The cube does not look like this here: ${sayStrays(args.pieces, args.base)}.`;
  }
}

/** The sentence of a place that belongs to a finding. */
export function sayRelated(note: RelatedNote, firstLine: number): string {
  switch (note.kind) {
    case 'opened':
      return `Opened by ${sayTurn(note.turn, firstLine)}.`;
    case 'restored':
      return `Restored by ${sayTurn(note.turn, firstLine)}.`;
    case 'change':
      return `${capital(sayChange(note.change, firstLine, 'restores'))}.`;
    case 'stage-end':
      return `${capital(goalTitle(note.goal))} was reached here.`;
    case 'follows':
      return `From here on ${listed(note.goals.map(goalTitle))} ${note.goals.length === 1 ? 'is' : 'are'} not reached either.`;
    case 'first':
      return `“${note.name}” is given here first.`;
  }
}

/** Long pieces of a text are cut in sentences. */
function shortened(text: string): string {
  return text.length <= 60 ? text : `${text.slice(0, 57)}…`;
}
