/**
 * A person's solve written out as a `.moves` text: one line per step, with what it is about and why.
 */
import { colourFacelets } from '../../cube/facelets.ts';
import { colourAt } from '../../cube/holding.ts';
import { printNet } from '../../cube/net.ts';
import { pieceTitle, piecesIn } from '../../cube/piece.ts';
import type { Turn } from '../../cube/turn.ts';
import { COLOURS, OPPOSITE } from '../../cube/vocabulary.ts';
import { printTurns } from '../../notation/print.ts';
import type { PersonSolve } from './solve.ts';
import type { PersonStep } from './step.ts';

export interface TextOptions {
  readonly title?: string;
  /** Turns that lead from the solved cube, held as at the start, to the start; else a net is written. */
  readonly scramble?: readonly Turn[];
}

export function writePersonSolve(solve: PersonSolve, options: TextOptions = {}): string {
  const { start, base, steps } = solve;
  const lines: string[] = [`title: ${options.title ?? 'Layer by layer'}`];
  if (options.scramble) lines.push(`scramble: ${printTurns(options.scramble)}`);
  lines.push(`holding: ${colourAt(start.holding, 0)} up, ${colourAt(start.holding, 2)} front`);
  if (!options.scramble) {
    lines.push('start:', ...printNet(colourFacelets(start)).map((row) => `  ${row}`));
  }
  lines.push(`base: ${COLOURS[base]}`, 'method: layers');
  let stage: string | undefined;
  for (const step of steps) {
    if (step.stage !== stage) {
      stage = step.stage;
      lines.push('', `${stage}:`);
    }
    lines.push(`  ${printTurns(step.turns)} // ${sayStep(step, base)}`);
  }
  return `${lines.join('\n')}\n`;
}

/** What a step is about, in one clause or two. */
export function sayStep(step: PersonStep, base: number): string {
  const parts = [sayReason(step, base)];
  if (step.disturbs) {
    const count = piecesIn(step.disturbs.pieces).length;
    const what = count === 1 ? pieceTitle(piecesIn(step.disturbs.pieces)[0], base) : undefined;
    const last = printTurns([step.turns[step.disturbs.restoredBy]]);
    parts.push(
      what === undefined
        ? `what was made before leaves for a moment, ${last} brings the last of it back`
        : `the ${what} leaves for a moment, ${last} brings it back`,
    );
  }
  return parts.join('; ');
}

function sayReason(step: PersonStep, base: number): string {
  const baseColour = COLOURS[base];
  const top = COLOURS[OPPOSITE[base]];
  const piece = step.piece === undefined ? '' : pieceTitle(step.piece, base);
  const turned = step.setup.length > 0;
  const times = ['', 'once', 'twice', 'three times', 'four times'][step.times];
  switch (step.reason) {
    case 'base-up-above-home':
      return `${piece}: ${turned ? 'turned above' : 'above'} its slot, ${baseColour} up; half a turn takes it down`;
    case 'base-aside-above-home':
      return `${piece}: on top with ${baseColour} to the side, so it goes in by way of the middle layer`;
    case 'beside-home':
      return `${piece}: beside its slot, a quarter turn takes it in`;
    case 'edge-stuck-in-middle':
      return `${piece}: stuck in the middle layer; up to the top with ${baseColour} up`;
    case 'edge-in-wrong-base-slot':
      return `${piece}: in the base layer, but in a wrong slot; up to the top first`;
    case 'edge-turned-in-base':
      return `${piece}: in the base layer, but turned wrong; up to the top first`;
    case 'base-to-the-side':
      return `${piece}: ${turned ? 'turned above' : 'above'} its slot, ${baseColour} to the side; one insert`;
    case 'base-up':
      return `${piece}: ${turned ? 'turned above' : 'above'} its slot, ${baseColour} up; the insert ${times}`;
    case 'corner-turned-in-slot':
      return `${piece}: in its slot, but turned wrong; the insert ${times}`;
    case 'corner-in-wrong-slot':
      return `${piece}: in a wrong slot; one insert takes it out to the top`;
    case 'edge-goes-right':
      return `${piece}: its side matches the front, it goes to the right`;
    case 'edge-goes-left':
      return `${piece}: its side matches the front, it goes to the left`;
    case 'edge-in-wrong-middle-slot':
      return `${piece}: in a wrong slot of the middle layer; any insert takes it out`;
    case 'edge-turned-in-middle':
      return `${piece}: in its slot, but turned wrong; any insert takes it out`;
    case 'dot':
      return `no top edge shows ${top} up: the sequence makes two`;
    case 'line':
      return `two ${top} edges in a line, held left to right`;
    case 'angle':
      return `two ${top} edges in an angle, held in front and right`;
    case 'no-corner-right':
      return `no corner shows ${top} up; front-left shows it to the left`;
    case 'one-corner-right':
      return `one corner shows ${top} up, held at front-left`;
    case 'two-corners-right':
      return `two corners show ${top} up; front-left shows it to the front`;
    case 'headlights':
      return 'two corners agree, held at the back; the other three change places';
    case 'no-headlights':
      return 'no two corners of a side agree; the sequence makes two agree';
    case 'no-finished-side':
      return 'no side is finished; the sequence finishes one';
    case 'three-edges-clockwise':
      return 'finished side at the back; the other three edges go round clockwise';
    case 'three-edges-counter-clockwise':
      return 'finished side at the back; the other three edges go round counter-clockwise';
    case 'last-turn':
      return 'the top turned to match the sides';
  }
}
