/** How facts' arguments are said: pieces by colours, slots in words, turns with what they do. */
import type { Colour, Face } from '../cube/vocabulary.ts';
import { goalTitle } from '../goals/titles.ts';
import type { GoalName, PieceName, TurnName } from './facts.ts';

export function listed(words: readonly string[], last = 'and'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${last} ${words[words.length - 1]}`;
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export function sayPiece(piece: PieceName): string {
  return `the ${piece.join('-')} ${piece.length === 3 ? 'corner' : 'edge'}`;
}

/** Pieces named before a sentence goes over to a count. */
const NAMED = 4;

export function sayPieces(pieces: readonly PieceName[]): string {
  const named = pieces.slice(0, pieces.length === NAMED + 1 ? NAMED + 1 : NAMED).map(sayPiece);
  const rest = pieces.length - named.length;
  return listed(rest > 0 ? [...named, `${rest} more`] : named);
}

const SIDES: Readonly<Record<string, string>> = {
  U: 'top',
  D: 'bottom',
  F: 'front',
  B: 'back',
  L: 'left',
  R: 'right',
};

/** `top front`: without letters, for first hints. */
export function slotWords(slot: string): string {
  return [...slot].map((face) => SIDES[face]).join(' ');
}

export function saySlot(slot: string): string {
  return `${slotWords(slot)} (${slot})`;
}

const ON: Readonly<Record<Face, string>> = {
  U: 'on top',
  D: 'at the bottom',
  F: 'in front',
  B: 'at the back',
  L: 'on the left',
  R: 'on the right',
};

export function sayShows(
  shows: readonly { readonly colour: Colour; readonly face: Face }[],
): string {
  return listed(shows.map(({ colour, face }) => `${colour} ${ON[face]}`));
}

const SEEN: Readonly<Record<string, readonly [layer: string, from: string]>> = {
  U: ['top layer', 'above'],
  D: ['bottom layer', 'below'],
  F: ['front layer', 'the front'],
  B: ['back layer', 'the back'],
  L: ['left layer', 'the left'],
  R: ['right layer', 'the right'],
};

/** `U' (the top layer a quarter anticlockwise as seen from above)`, for face turns. */
export function explainTurn(turn: string): string {
  const [layer, from] = SEEN[turn.charAt(0)];
  if (turn.endsWith('2')) return `${turn} (the ${layer} by half a turn)`;
  const way = turn.endsWith("'") ? 'anticlockwise' : 'clockwise';
  return `${turn} (the ${layer} a quarter ${way} as seen from ${from})`;
}

export function sayTurn({ text, number, line }: TurnName): string {
  return `${text} (turn ${number}, line ${line})`;
}

/** `the white cross`, `the middle layer`. */
export function sayGoal({ goal, base }: GoalName): string {
  return goal === 'cross' ? `the ${base} cross` : goalTitle(goal);
}

const WHOLE = new Set(['solved', 'corners turned', 'PLL', 'LSE']);

export function isWhole(goal: string): boolean {
  return WHOLE.has(goal);
}

/** `the white cross is done`; of the last goal `the cube is solved`. */
export function sayState(goal: GoalName, holds: boolean): string {
  if (WHOLE.has(goal.goal)) return holds ? 'the cube is solved' : 'the cube isn’t solved';
  return holds ? `${sayGoal(goal)} is done` : `${sayGoal(goal)} isn’t done`;
}

/** For "…: makes the cross", "solves the cube". */
export function sayReaching(goal: GoalName): string {
  return WHOLE.has(goal.goal) ? 'solves the cube' : `completes ${sayGoal(goal)}`;
}

export function wordsIn(text: string): number {
  return text.split(/\s+/).filter((word) => word !== '').length;
}

/** As many sentences, from the first on, as fit; the first always. */
export function within(sentences: readonly string[], most: number): string {
  const kept: string[] = [];
  let count = 0;
  for (const sentence of sentences) {
    count += wordsIn(sentence);
    if (kept.length > 0 && count > most) break;
    kept.push(sentence);
  }
  return kept.join(' ');
}
