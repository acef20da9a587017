/** An effect as a person reads it. */
import type { EffectJson } from '../json.ts';
import type { Page } from './page.ts';
import { harmless, listed, plural, wrap } from './words.ts';

const LABEL = 12;

export function effectText(effect: EffectJson, page: Page): string {
  const { obtm, etm, stm, qtm } = effect.counts;
  const cycled = (cycles: readonly (readonly string[])[]): string =>
    cycles.map((cycle) => cycle.join(' → ')).join('   ');
  const twists = effect.twists.map(({ slot, turn }) => `${slot} ${turn}`);
  const kept = effect.keeps.filter(({ holds }) => holds).map(({ goal }) => goal);
  const lost = effect.keeps.filter(({ holds }) => !holds).map(({ goal }) => goal);
  const still = effect.does === '' ? 'nothing: every piece is where it was' : '';
  const atRest =
    effect.orderWithoutRotations === effect.order
      ? ''
      : `; ${effect.orderWithoutRotations} for the turns without the rotations`;
  const rows: [string, string][] = [
    ['turns', shortened(effect.turns)],
    ['does', still],
    ['corners', cycled(effect.cycles.corners)],
    ['edges', cycled(effect.cycles.edges)],
    ['centres', cycled(effect.cycles.centres)],
    ['twisted', listed(twists)],
    ['flipped', listed(effect.flips)],
    ['order', `${effect.order} (done so often, the cube is as before)${atRest}`],
    ['parity', effect.parity],
    ['length', `${many(obtm)} OBTM, ${many(etm)} ETM, ${many(stm)} STM, ${many(qtm)} QTM`],
    [
      'keeps',
      `${kept.length === 0 ? 'no goal' : listed(kept)} of ${effect.method}, base ${effect.base}`,
    ],
    ['disturbs', listed(lost)],
    ['inverse', shortened(effect.inverse)],
    ['mirror', shortened(effect.mirror)],
    ['symmetry', symmetryText(effect.symmetry)],
    ['shorter', shorterText(effect)],
  ];
  const room = page.width - LABEL;
  return rows
    .filter(([, text]) => text !== '')
    .flatMap(([label, text]) =>
      wrap(harmless(text), room).map(
        (line, i) => page.tone('quiet', (i === 0 ? label : '').padEnd(LABEL)) + line,
      ),
    )
    .map((line) => `${line.trimEnd()}\n`)
    .join('');
}

function many(count: number | null): string {
  return count === null ? 'too many to count' : String(count);
}

/** `--json` has all of it. */
function shortened(text: string): string {
  return text.length > 600 ? `${text.slice(0, 599)}…` : text;
}

/** Of many rotations three are enough to see what is meant. */
const MOST_NAMED = 3;

function symmetryText(symmetry: EffectJson['symmetry']): string {
  const { rotations, mirrors, selfInverse, inverseRotations, inverseMirrors } = symmetry;
  const named = (names: readonly string[]): string => {
    const shown = names.slice(0, MOST_NAMED).map((name) => (name === '' ? 'itself' : name));
    const rest = names.length - shown.length;
    return rest > 0 ? `${shown.join(', ')} and ${rest} more` : listed(shown);
  };
  const parts: string[] = [];
  if (rotations.length > 0) parts.push(`does the same after ${named(rotations)}`);
  if (mirrors.includes('')) parts.push('is its own mirror image');
  else if (mirrors.length > 0) parts.push(`is its own mirror image after ${named(mirrors)}`);
  if (selfInverse) parts.push('is its own inverse');
  else if (inverseRotations.length > 0)
    parts.push(`does its inverse after ${named(inverseRotations)}`);
  else if (inverseMirrors.includes('')) parts.push('has its mirror image as its inverse');
  else if (inverseMirrors.length > 0)
    parts.push(`has its mirror image after ${named(inverseMirrors)} as its inverse`);
  return parts.join('; ');
}

function shorterText({ shorter }: EffectJson): string {
  const { turns, provenTo } = shorter;
  if (turns === null) {
    return provenTo > 0 ? `none of at most ${plural(provenTo, 'face turn')} (proven)` : '';
  }
  return turns === ''
    ? 'no turn at all does the same'
    : `${turns} (none of at most ${provenTo}, proven)`;
}
