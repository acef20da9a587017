/**
 * What of a line is executed. Scrambles are not, and of unknown keys only a stage that was misspelt
 * and one that merely turns the cube as a whole: `Inspection: x2 y` is common in forums.
 */
import { isRotation } from '../../cube/turn.ts';
import type { Body, LineContent, TurnsBody } from './tree.ts';

export function executedBody(content: LineContent): Body | undefined {
  switch (content.kind) {
    case 'turns':
    case 'prose':
    case 'spoken':
      return content;
    case 'stage':
      return content.body;
    case 'key':
      return content.key === 'scramble' ? undefined : content.body;
    case 'unknown-key':
      return content.suggestion?.kind === 'stage' || rotatesOnly(content.body)
        ? content.body
        : undefined;
    default:
      return undefined;
  }
}

/** Whether a body is nothing but rotations of the whole cube, and pauses. */
export function rotatesOnly(body: TurnsBody | undefined): boolean {
  const items = body?.turns.items ?? [];
  return (
    items.length > 0 &&
    items.every((node) => (node.kind === 'turn' ? isRotation(node.turn) : node.kind === 'pause'))
  );
}

/** Whether anything on the line is executed: turns, names, gaps or pauses. */
export function hasTurns(content: LineContent): boolean {
  const body = executedBody(content);
  return body?.kind === 'turns' && body.turns.items.length > 0;
}
