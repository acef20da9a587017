/**
 * A general-purpose algebra system (GAP, Debian's `gap-core`) as a second opinion on the group.
 *
 * One GAP process is given the quarter turns as permutations of 54 stickers, numbered by geometry
 * in `stickers.ts`, and says of each of many random sequences the product and its order, and the
 * sizes of some groups. Where GAP is not installed, output recorded by `record-gap.ts` is used.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { TURNS, printTurn, type Turn } from '../../engine/cube/turn.ts';
import { seeded } from '../support/random.ts';
import { FAMILY_NAMES, STICKERS, quarterTurn } from './stickers.ts';

export const RECORDED = fileURLToPath(new URL('recorded/gap.txt', import.meta.url));

const SEED = 12;
const SEQUENCES = 1200;
const LONGEST = 60;

/** The same sequences each time: 1 to 60 turns of all kinds. */
export const SEQUENCES_ASKED: readonly (readonly Turn[])[] = (() => {
  const random = seeded(SEED);
  return Array.from({ length: SEQUENCES }, () =>
    Array.from({ length: 1 + random(LONGEST) }, () => random(TURNS)),
  );
})();

/** Groups by generators; the sizes are compared with the values of the reference page. */
export const GROUPS_ASKED: readonly string[] = [
  'U L F R B D',
  'R U',
  'U D L2 R2 F2 B2',
  'U2 L2 F2 R2 B2 D2',
  'R2 U2',
];

export interface GapAnswer {
  /** Of each sequence: its order, and where the sticker at each place goes. */
  readonly sequences: readonly { readonly order: number; readonly goesTo: readonly number[] }[];
  readonly groupSizes: readonly string[];
}

/** Turns as GAP writes them: `R^2*U^3`. */
function inGap(names: readonly string[]): string {
  return names
    .map((name) => {
      const family = name.replace(/[2']$/, '');
      return `t${family}^${name.endsWith('2') ? 2 : name.endsWith("'") ? 3 : 1}`;
    })
    .join('*');
}

/** Images are printed as one character each, so that a line is short. */
const FIRST_CHARACTER = 40;

export function gapProgram(): string {
  const turns = FAMILY_NAMES.map(
    (name) =>
      `t${name} := PermList([${quarterTurn(name)
        .map((place) => place + 1)
        .join(',')}]);;`,
  );
  const sequences = SEQUENCES_ASKED.map((turns) => `say(${inGap(turns.map(printTurn))});`);
  const groups = GROUPS_ASKED.map(
    (names) =>
      `size(Group(${names
        .split(' ')
        .map((name) => inGap([name]))
        .join(',')}));`,
  );
  return [
    'out := OutputTextUser();; SetPrintFormattingStatus(out, false);;',
    ...turns,
    'say := function(p) PrintTo(out, Order(p), " ",' +
      ` List(ListPerm(p, ${STICKERS}), i -> CharInt(${FIRST_CHARACTER - 1} + i)), "\\n"); end;;`,
    'size := function(g) PrintTo(out, Size(g), "\\n"); end;;',
    ...sequences,
    ...groups,
    'QUIT;',
    '',
  ].join('\n');
}

/** Runs GAP; undefined if it is not installed. An error of GAP itself is a bug and throws. */
export function askGap(): string | undefined {
  const { error, status, stdout, stderr } = spawnSync('gap', ['-q', '-A', '-r', '-n'], {
    input: gapProgram(),
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  });
  if (error !== undefined) return undefined;
  if (status !== 0 || stderr !== '') throw new Error(`gap: ${stderr}, status ${String(status)}`);
  return stdout;
}

export function readRecorded(): string {
  return readFileSync(RECORDED, 'utf8');
}

export function readAnswer(output: string): GapAnswer {
  const lines = output.split('\n').filter((line) => line !== '');
  if (lines.length !== SEQUENCES + GROUPS_ASKED.length) {
    throw new Error(`GAP answered ${lines.length} lines`);
  }
  return {
    sequences: lines.slice(0, SEQUENCES).map((line) => {
      const space = line.indexOf(' ');
      const images = line.slice(space + 1);
      return {
        order: Number(line.slice(0, space)),
        goesTo: Array.from(images, (image) => image.charCodeAt(0) - FIRST_CHARACTER),
      };
    }),
    groupSizes: lines.slice(SEQUENCES),
  };
}
