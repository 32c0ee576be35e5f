import type { Command } from '../command.ts';
import { answersCommand } from './answers.ts';
import { bundleCommand } from './bundle.ts';
import { callCommand } from './call.ts';
import { checkCommand } from './check.ts';
import { functionsCommand } from './functions.ts';
import { quoteCommand } from './quote.ts';
import { gatherCommand } from './gather.ts';
import { ledgerCommand } from './ledger.ts';
import { recalcCommand } from './recalc.ts';
import { startCommand } from './start.ts';
import { visitsCommand } from './visits.ts';

/** One line per command. */
export const commands: Readonly<Record<string, Command>> = {
  answers: answersCommand,
  bundle: bundleCommand,
  call: callCommand,
  check: checkCommand,
  functions: functionsCommand,
  quote: quoteCommand,
  gather: gatherCommand,
  ledger: ledgerCommand,
  recalc: recalcCommand,
  start: startCommand,
  visits: visitsCommand,
};
