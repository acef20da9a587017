/** Why a value can't be read, in words. */
import type { NetProblem } from '../cube/net.ts';
import type { BadReason, BadValue } from './read/index.ts';

const REASONS: Readonly<Record<BadReason, (text: string) => string>> = {
  empty: () => 'nothing stands after the colon',
  'empty-item': (text) => `a name is missing in “${text}”`,
  'no-colour': (text) => `“${text}” is no colour (white, yellow, green, blue, red, orange)`,
  'no-holding': (text) => `“${text}” does not say which colour is up and which is in front`,
  'holding-open': (text) =>
    `“${text}” leaves open how the cube is held; two neighbouring faces are needed`,
  'holding-clash': (text) => `no cube can be held so: “${text}”`,
  'no-time': (text) => `“${text}” is no time`,
  'no-number': (text) => `“${text}” is no whole number above zero`,
  'no-slot': (text) => `“${text}” is no slot`,
  'no-sticker': (text) => `“${text}” is no sticker`,
  'sticker-twice': (text) => `“${text}” stands twice`,
  'sticker-kinds': (text) => `“${text}” is of another kind of piece than the sticker before it`,
  'no-cycle': (text) => `“${text}” is no cycle`,
};

export function sayBadValue(value: BadValue): string {
  const text = value.text.length > 40 ? `${value.text.slice(0, 39)}…` : value.text;
  return REASONS[value.reason](text);
}

export function sayNetProblem(problem: NetProblem): string {
  switch (problem.kind) {
    case 'unknown-colour':
      return `“${problem.text}” is no colour; the initials are w y g b r o`;
    case 'row-length':
      return `this row has ${String(problem.found)} stickers where ${String(problem.wanted)} are needed`;
    case 'row-count':
      return `the net has ${String(problem.found)} rows where nine are needed (three of the top, three of the sides, three of the bottom)`;
  }
}
