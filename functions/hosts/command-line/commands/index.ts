import type { Command } from '../command.ts';
import { callCommand } from './call.ts';
import { functionsCommand } from './functions.ts';

/** One line per command. */
export const commands: Readonly<Record<string, Command>> = {
  call: callCommand,
  functions: functionsCommand,
};
