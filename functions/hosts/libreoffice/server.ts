import { CalcError } from '../../../src/errors.ts';
import { call } from '../../catalogue/call.ts';
import { cellErrorOf } from '../../runtime/cell-errors.ts';
import type { Argument, CellOutput, Outcome } from '../../runtime/cells.ts';
import { faultText } from '../../runtime/program-fault.ts';
import { calcErrorNumber } from './error-codes.ts';
import { RecentMessages } from './recent-messages.ts';
import { spell } from './spell.ts';

/** A value as Calc can hold it, or the number of the error that the cell shows. */
type WireCell = number | string | boolean | { readonly e: number };

interface Answer {
  readonly n: number;
  readonly v: WireCell | readonly (readonly WireCell[])[] | readonly string[];
}

/** Answers the lines the Python component writes: `{"n":1,"f":"SATTEMP","a":["R-22",68.5]}` → `{"n":1,"v":40.01}`. */
export class CalcServer {
  private readonly messages = new RecentMessages();

  answerLine(line: string): string {
    let number = 0;
    try {
      const request = JSON.parse(line) as { n: number; f?: string; a?: readonly Argument[]; messages?: true };
      number = request.n;
      return JSON.stringify(this.answer(request));
    } catch (error) {
      // A fault of ours must not end the process: the cell shows #VALUE! and the menu shows this.
      this.messages.add(faultText(error));
      return JSON.stringify({ n: number, v: { e: calcErrorNumber['#VALUE!'] } });
    }
  }

  private answer({
    n,
    f,
    a,
    messages,
  }: {
    n: number;
    f?: string;
    a?: readonly Argument[];
    messages?: true;
  }): Answer {
    if (messages) return { n, v: this.messages.newestFirst() };
    const id = f ?? '';
    return { n, v: this.wire(id, call(id, a ?? [])) };
  }

  private wire(id: string, outcome: Outcome): WireCell | WireCell[][] {
    if (!Array.isArray(outcome)) return this.wireCell(id, outcome);
    // Calc takes no empty range; a blank cell says the same.
    if (outcome.length === 0) return '';
    return outcome.map((row) => row.map((cell) => this.wireCell(id, cell)));
  }

  private wireCell(id: string, cell: CellOutput): WireCell {
    if (cell instanceof CalcError) {
      this.messages.add(`${spell(id)}: ${cell.message}`);
      return { e: calcErrorNumber[cellErrorOf[cell.code]] };
    }
    if (typeof cell === 'object') return { e: calcErrorNumber['#VALUE!'] };
    return cell;
  }
}
