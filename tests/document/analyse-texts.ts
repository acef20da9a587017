/** Solves written down at random: real inserts and sequences, stages labelled in any of the styles. */
import fc from 'fast-check';
import { KNOWN_SEQUENCES } from './analyse-sequences.ts';

export interface WrittenSolve {
  readonly text: string;
  /** All turns in order, scramble left out. */
  readonly turns: readonly string[];
  readonly scramble: readonly string[];
  readonly method: 'layers' | 'CFOP';
  /** Stages in the order of the text: index of the goal, first turn, place after the last. */
  readonly stages: readonly {
    readonly goal: number;
    readonly first: number;
    readonly end: number;
    readonly stepEnds: readonly number[];
  }[];
}

type Style = 'heading' | 'heading with turns' | 'label behind' | 'label above';

const NAMES = {
  layers: ['cross', 'corners', 'middle', 'top cross', 'top face', 'top corners', 'solved'],
  CFOP: ['cross', '1st pair', '2nd pair', '3rd pair', '4th pair', 'OLL', 'PLL'],
} as const;

const FACES = ['U', 'D', 'L', 'R', 'F', 'B'];
const AMOUNTS = ['', "'", '2'];
const layerTurn = fc
  .tuple(fc.constantFrom(...FACES, 'M', 'Rw', 'Fw'), fc.constantFrom(...AMOUNTS))
  .map((parts) => parts.join(''));

const line: fc.Arbitrary<string[]> = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...KNOWN_SEQUENCES).map((text) => text.split(' ')) },
  { weight: 2, arbitrary: fc.array(layerTurn, { minLength: 1, maxLength: 3 }) },
  { weight: 1, arbitrary: fc.constantFrom('D', "D'", 'U', 'U2').map((turn) => [turn]) },
);

export function inverseOf(turns: readonly string[]): string[] {
  return turns
    .toReversed()
    .map((turn) =>
      turn.endsWith('2') ? turn : turn.endsWith("'") ? turn.slice(0, -1) : `${turn}'`,
    );
}

/** Eight stages at most of one to three lines each, some 60 turns together. */
export const writtenSolve: fc.Arbitrary<WrittenSolve> = fc
  .record({
    method: fc.constantFrom<'layers' | 'CFOP'>('layers', 'CFOP'),
    style: fc.constantFrom<Style>('heading', 'heading with turns', 'label behind', 'label above'),
    stages: fc.array(
      fc.record({
        lines: fc.array(line, { minLength: 1, maxLength: 3 }),
        isSkipped: fc.boolean(),
      }),
      { minLength: 4, maxLength: 7 },
    ),
    /** The cube is solved after the lines of so many stages, but for a few turns. */
    solvedAfter: fc.nat({ max: 6 }),
    slip: fc.oneof(fc.constant([]), fc.array(layerTurn, { maxLength: 1 })),
    inverted: fc.boolean(),
  })
  .map(({ method, style, stages, solvedAfter, slip, inverted }) => {
    // An insert and, stages later, its inverse: breaks that are carried.
    const lines = stages.map((stage) => stage.lines.map((turns) => [...turns]));
    if (inverted && lines.length > 4) lines[3].push(inverseOf(lines[1][0]));
    const scramble = [...slip, ...inverseOf(lines.slice(0, solvedAfter).flat(2))];
    const names = NAMES[method];
    const out = [`scramble: ${scramble.length > 0 ? scramble.join(' ') : "U U'"}`];
    out.push(`method: ${method}`, 'base: yellow');
    const turns: string[] = [];
    const spans: WrittenSolve['stages'][number][] = [];
    let goal = 0;
    lines.forEach((own, index) => {
      if (stages[index].isSkipped && goal < names.length - 2) goal++;
      if (goal >= names.length) return;
      const name = names[goal];
      const first = turns.length;
      const stepEnds: number[] = [];
      for (const part of own) {
        turns.push(...part);
        stepEnds.push(turns.length);
      }
      const written = own.map((part) => `  ${part.join(' ')}`);
      if (style === 'heading') out.push(`${name}:`, ...written);
      else if (style === 'heading with turns')
        out.push(`${name}: ${written[0].trim()}`, ...written.slice(1));
      else if (style === 'label behind')
        out.push(...written.slice(0, -1), `${written[written.length - 1]} // ${name}`);
      else out.push(`// ${name}`, ...written);
      spans.push({ goal, first, end: turns.length, stepEnds });
      goal++;
    });
    return { text: out.join('\n'), turns, scramble, method, stages: spans };
  });
