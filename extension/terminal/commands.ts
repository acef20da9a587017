/** All commands of the terminal, in the order in which help lists them. A new one is a file and a line here. */
import { ask } from './ask.ts';
import { check } from './check.ts';
import type { Command } from './command.ts';
import { effect } from './effect.ts';
import { state } from './state.ts';

export const COMMANDS: readonly Command[] = [check, state, ask, effect];
