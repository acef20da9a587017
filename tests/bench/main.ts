/**
 * Measures what the engine's searches must hold and prints each figure with its bound and the size of
 * the machine: `npx node tests/bench/main.ts`. With `--strict` the exit status is 1 if a bound is
 * missed by far; with words, only the parts whose names contain one of them are run.
 */
import { isMissedByFar, printFigure, printMachine, type Figure } from './measure.ts';
import { measureCross, measureSlot } from './stages.ts';
import { measureWholeCube } from './whole-cube.ts';
import { measureSameEffect, measureSlips } from './slips.ts';
import { measurePerson } from './person.ts';
import { measureCancel } from './cancel.ts';

const PARTS: readonly (readonly [name: string, measure: () => Iterable<Figure>])[] = [
  ['cross', measureCross],
  ['slot', measureSlot],
  ['whole cube', measureWholeCube],
  ['same effect', measureSameEffect],
  ['slips', measureSlips],
  ['person', measurePerson],
  ['cancel', measureCancel],
];

const words = process.argv.slice(2).filter((argument) => !argument.startsWith('--'));
const strict = process.argv.includes('--strict');

printMachine();
let far = 0;
for (const [name, measure] of PARTS) {
  if (words.length > 0 && !words.some((word) => name.includes(word))) continue;
  for (const figure of measure()) {
    printFigure(figure);
    if (isMissedByFar(figure)) far++;
  }
}
if (strict && far > 0) process.exitCode = 1;
