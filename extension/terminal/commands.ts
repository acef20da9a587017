/**
 * All commands of the terminal, in the order in which help lists them; a new one is a file and a line
 * here. Each is loaded only when it is called, so that none pays for the tables of another.
 */
import type { Command } from './command.ts';

export const COMMANDS: ReadonlyMap<string, () => Promise<Command>> = new Map([
  ['check', async () => (await import('./check.ts')).check],
  ['state', async () => (await import('./state.ts')).state],
  ['ask', async () => (await import('./ask.ts')).ask],
  ['solve', async () => (await import('./solve.ts')).solve],
  ['slips', async () => (await import('./slips.ts')).slips],
  ['effect', async () => (await import('./effect.ts')).effect],
  ['practice', async () => (await import('./practice.ts')).practice],
]);
