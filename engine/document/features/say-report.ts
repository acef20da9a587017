/** The report on a sequence as Markdown. */
import type { Holding } from '../../cube/holding.ts';
import { pieceName, slotAt } from '../../cube/piece.ts';
import { faceIndex } from '../../cube/vocabulary.ts';
import { code, escaped } from './markdown.ts';
import { counted, listed } from './text.ts';
import { sayCycle, type GoalFate, type SequenceReport } from './workbench.ts';

const MOST_CYCLES = 8;
const MOST_LOST = 3;

/** Paragraphs; `claimed`: goals that the text says are kept, whose loss is told first. */
export function sayReport(
  report: SequenceReport,
  holding: Holding,
  base: number,
  claimed: readonly string[] = [],
): string[] {
  const { counts, order, effect, symmetry, form } = report;
  const number = counts.obtm === null ? '' : `${counted(counts.obtm, 'turn')}, `;
  const said = [
    `${number}order ${String(order)}, ${effect.parity === 'odd' ? 'an odd' : 'an even'} permutation of the corners`,
    ...sayMotion(report, holding, base),
    ...sayKeeps(report.goals, claimed),
  ];
  if (form !== undefined) {
    const what = form.disguised ? `A ${form.kind} in disguise` : `A ${form.kind}`;
    said.push(`${what}: \`${form.text}\``);
  }
  said.push(`Inverse: ${code(report.inverse)}`);
  if (report.mirror !== undefined) said.push(`Mirror left for right: ${code(report.mirror)}`);
  const symmetries = [
    ...(symmetry.selfInverse ? ['done twice it does nothing'] : []),
    ...(symmetry.same.length > 0 ? [`it does the same after ${listed(symmetry.same)}`] : []),
    ...(symmetry.mirrored.length > 0
      ? [`its mirror image does the same${sayAfter(symmetry.mirrored)}`]
      : []),
    ...(!symmetry.selfInverse && symmetry.inverted.length > 0
      ? [`its inverse does the same after ${listed(symmetry.inverted)}`]
      : []),
  ];
  if (symmetries.length > 0) said.push(`Symmetry: ${symmetries.join('; ')}`);
  return said;
}

function sayAfter(rotations: readonly string[]): string {
  return rotations.includes('') ? '' : ` after ${listed(rotations)}`;
}

function sayMotion({ effect }: SequenceReport, holding: Holding, base: number): string[] {
  const piece = (slot: string): string => {
    const found = slotAt([...slot].map(faceIndex), holding);
    return found === undefined ? slot : `${slot} (${pieceName(found, base)})`;
  };
  const cycles = [...effect.corners, ...effect.edges, ...effect.centres];
  const lines = cycles
    .slice(0, MOST_CYCLES)
    .map((cycle) => escaped(sayCycle(cycle, holding, base)));
  if (cycles.length > MOST_CYCLES)
    lines.push(`and ${counted(cycles.length - MOST_CYCLES, 'more cycle')}`);
  if (effect.twists.length > 0)
    lines.push(
      `Turned in place: ${listed(effect.twists.map(({ slot, turn }) => `${piece(slot)} ${turn}`))}`,
    );
  if (effect.flips.length > 0) lines.push(`Flipped in place: ${listed(effect.flips.map(piece))}`);
  return lines.length === 0 ? ['It leaves every piece where it is'] : lines;
}

function sayKeeps(goals: readonly GoalFate[], claimed: readonly string[]): string[] {
  const said: string[] = [];
  const kept = goals.filter((goal) => goal.kept);
  said.push(
    kept.length === 0
      ? 'Keeps no goal from every state'
      : `Keeps ${escaped(listed(kept.map(({ goal }) => goal)))}, whatever else the state is`,
  );
  for (const { goal, opened, back } of kept.slice(0, 1))
    if (opened && back)
      said.push(
        `On the way ${escaped(goal)} is opened by ${sayTurn(opened)} and restored by ${sayTurn(back)}`,
      );
  const lost = goals.filter((goal) => !goal.kept);
  const order = [
    ...lost.filter(({ goal }) => claimed.includes(goal)),
    ...lost.filter(({ goal }) => !claimed.includes(goal)),
  ];
  for (const { goal, opened, back } of order.slice(0, MOST_LOST))
    if (opened && back === undefined) said.push(`Loses ${escaped(goal)} at ${sayTurn(opened)}`);
    else if (opened === undefined || back)
      said.push(`Loses ${escaped(goal)} from some states, though not on a solved cube`);
  return said;
}

function sayTurn({ turn, text }: { readonly turn: number; readonly text: string }): string {
  return `${text}, turn ${String(turn + 1)}`;
}
