/** What a person sees in the situation before a step, and why it decides the step. */
import { COLOURS, OPPOSITE } from '../cube/vocabulary.ts';
import type { CueFact } from './facts.ts';

export function sayCue({ cue, base }: CueFact): string {
  const top = COLOURS[OPPOSITE[COLOURS.indexOf(base)]];
  switch (cue) {
    case 'base-up-above-home':
      return `It shows ${base} on the ${top} side: from above its home half a turn takes it down.`;
    case 'base-aside-above-home':
      return `It shows ${base} at the side: taken straight down it would be in flipped, so it goes by way of the middle layer.`;
    case 'beside-home':
      return 'One quarter turn takes it home.';
    case 'edge-stuck-in-middle':
      return `It is in the middle layer: it has to come up into the ${top} layer first.`;
    case 'edge-in-wrong-base-slot':
      return `It is in the ${base} layer, but in another slot: it has to come up into the ${top} layer first.`;
    case 'edge-turned-in-base':
      return `It is in the ${base} layer, but turned: it has to come up into the ${top} layer first.`;
    case 'base-to-the-side':
      return `It is in the ${top} layer and shows ${base} at the side: one insert does it.`;
    case 'base-up':
      return `It is in the ${top} layer and shows ${base} on the ${top} side: the insert has to be repeated.`;
    case 'corner-turned-in-slot':
      return 'It is in its own slot, but turned: the insert takes it out and in again.';
    case 'corner-in-wrong-slot':
      return `It is in another corner’s slot of the ${base} layer: it has to come out first.`;
    case 'edge-goes-right':
      return 'With its side colour held in front at its centre, it goes to the right.';
    case 'edge-goes-left':
      return 'With its side colour held in front at its centre, it goes to the left.';
    case 'edge-in-wrong-middle-slot':
      return 'It is in another edge’s slot of the middle layer: it has to come out first.';
    case 'edge-turned-in-middle':
      return 'It is in its own slot, but turned: it has to come out first.';
    case 'dot':
    case 'line':
    case 'angle':
    case 'no-corner-right':
    case 'one-corner-right':
    case 'two-corners-right':
      return 'That decides how the cube is held for the sequence.';
    case 'headlights':
      return `On one side of the ${top} layer both corners show the same colour: hold that side at the back.`;
    case 'no-headlights':
      return `On no side of the ${top} layer do both corners show the same colour: the first time of the sequence makes such a side.`;
    case 'no-finished-side':
      return `No side of the ${top} layer shows one colour all along: the first time of the sequence finishes one.`;
    case 'three-edges-clockwise':
      return `One side of the ${top} layer shows one colour all along, and the other three edges go round, clockwise as seen from above with ${base} down.`;
    case 'three-edges-counter-clockwise':
      return `One side of the ${top} layer shows one colour all along, and the other three edges go round, anticlockwise as seen from above with ${base} down.`;
    case 'last-turn':
      return `Only the ${top} layer has to be turned to match the sides.`;
  }
}
