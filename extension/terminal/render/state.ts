/** A state as a person reads it: the net, how the cube is held, the goals. */
import type { StateJson } from '../json.ts';
import { netLines } from './net.ts';
import type { Page } from './page.ts';
import { harmless, listed } from './words.ts';

export function stateText(state: StateJson, where: string, page: Page): string {
  const { up, front } = state.holding;
  const holds = state.goals.filter((goal) => goal.holds).map(({ goal }) => harmless(goal));
  const open = state.goals.filter((goal) => !goal.holds).map(({ goal }) => harmless(goal));
  const goals = [
    ...(holds.length > 0 ? [`${page.tone('good', '✓ holds')}    ${listed(holds)}`] : []),
    ...(open.length > 0 ? [`${page.tone('quiet', '· not yet')}  ${listed(open)}`] : []),
  ];
  return `${[
    page.strong(harmless(where)),
    '',
    ...netLines(state.faces, page).map((line) => `  ${line}`),
    '',
    `${up} up, ${front} in front; ${state.solved ? page.tone('good', 'solved') : 'not solved'}`,
    `goals of ${harmless(state.method)} with base ${state.base}:`,
    ...goals.map((line) => `  ${line}`),
    ...lastLayerLines(state),
  ].join('\n')}\n`;
}

function lastLayerLines({ lastLayer, solved }: StateJson): string[] {
  if (lastLayer === undefined || solved) return [];
  const { edges, corners, permutation } = lastLayer;
  const chance = (of: number): string => `1 in ${Math.round(1 / of)}`;
  if (permutation !== undefined && permutation.letter !== '') {
    return [`last layer: case ${permutation.letter} (${chance(permutation.chance)})`];
  }
  if (permutation !== undefined) return ['last layer: nothing but a turn of the top is left'];
  return [`last layer: ${edges} of edges, corners ${corners} (${chance(lastLayer.chance)})`];
}
