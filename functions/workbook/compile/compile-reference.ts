import { parseA1Ref, parseStructRef } from '@borgar/fx/xlsx';
import type { ReferenceIdentifier } from '@borgar/fx/xlsx';
import { columnLimit, rowLimit } from '../model/address.ts';
import { nameError, referenceError, valueError } from '../model/values.ts';
import type { Compiler } from './compilation.ts';
import type { Evaluate, ReferencePattern } from '../formula/compiled-formula.ts';
import { FormulaProblem } from '../formula/problem.ts';
import { resolvePattern } from '../formula/read-reference.ts';
import { tablePattern } from './table-reference.ts';
import { Reference } from '../model/reference.ts';

const nameStepLimit = 10_000;

/** A cell, range, table part or name as an operand; what it reads is noted in the compilation. */
export function compileReference(compiler: Compiler, node: ReferenceIdentifier): Evaluate {
  if (node.kind === 'table') return compileTablePart(compiler, node.value);
  if (node.kind === 'name') return compileName(compiler, node.value);
  return compileRange(compiler, node.value);
}

function compileRange(compiler: Compiler, text: string): Evaluate {
  const parsed = parseA1Ref(text);
  if (parsed === undefined || !('range' in parsed)) {
    throw new FormulaProblem('unreadable', `${text} cannot be read as a reference`);
  }
  refuseOtherWorkbook(parsed.workbookName);
  const { compilation } = compiler;
  const { range, sheetName } = parsed;
  if (range.trim !== undefined && range.trim !== null) {
    throw new FormulaProblem('unsupported', `${text}: trimmed ranges are not supported`);
  }
  const sheet = sheetName ? compilation.workbook.findSheet(sheetName) : undefined;
  if (sheetName && sheet === undefined) {
    if (sheetName.includes(':')) {
      throw new FormulaProblem('unsupported', `${text}: references across several sheets are not supported`);
    }
    return () => referenceError;
  }
  const rowOf = (fixed: unknown): number => (fixed === true ? 0 : compilation.row);
  const columnOf = (fixed: unknown): number => (fixed === true ? 0 : compilation.column);
  const { top, left } = range;
  const pattern: ReferencePattern = {
    sheet,
    top: top === null ? 0 : top - rowOf(range.$top),
    bottom: top === null ? rowLimit - 1 : (range.bottom ?? top) - rowOf(range.$bottom),
    left: left === null ? 0 : left - columnOf(range.$left),
    right: left === null ? columnLimit - 1 : (range.right ?? left) - columnOf(range.$right),
    topFixed: top === null || range.$top === true,
    bottomFixed: top === null || range.$bottom === true,
    leftFixed: left === null || range.$left === true,
    rightFixed: left === null || range.$right === true,
  };
  return referenceTo(compiler, pattern);
}

/** Operand for a pattern. One that is the same in every cell is made only once. */
function referenceTo(compiler: Compiler, pattern: ReferencePattern): Evaluate {
  compiler.compilation.reads.push(pattern);
  const { sheet, top, left, bottom, right } = pattern;
  if (
    sheet !== undefined &&
    pattern.topFixed &&
    pattern.bottomFixed &&
    pattern.leftFixed &&
    pattern.rightFixed
  ) {
    const reference = new Reference(
      sheet,
      Math.min(top, bottom),
      Math.min(left, right),
      Math.max(top, bottom),
      Math.max(left, right),
    );
    return () => reference;
  }
  return (place) => resolvePattern(pattern, place);
}

function compileTablePart(compiler: Compiler, text: string): Evaluate {
  const parsed = parseStructRef(text);
  if (parsed === undefined)
    throw new FormulaProblem('unreadable', `${text} cannot be read as a table reference`);
  refuseOtherWorkbook(parsed.workbookName);
  const { compilation } = compiler;
  const { workbook } = compilation;
  const table = parsed.table
    ? workbook.findTable(parsed.table)
    : workbook.tableAt(compilation.sheet, compilation.row, compilation.column);
  if (table === undefined) return () => (parsed.table ? nameError : valueError);
  const part = tablePattern(table, parsed.sections ?? [], parsed.columns ?? []);
  if (!('onlyOwnRow' in part)) return () => part;
  const operand = referenceTo(compiler, part.pattern);
  if (!part.onlyOwnRow) return operand;
  return (place) => (place.row >= table.firstRow && place.row <= table.lastRow ? operand(place) : valueError);
}

function compileName(compiler: Compiler, text: string): Evaluate {
  const { compilation } = compiler;
  const slot = compilation.names.get(text.toLowerCase());
  if (slot !== undefined) return (place) => place.variables[slot];
  const bang = text.lastIndexOf('!');
  const name = text.slice(bang + 1);
  const prefix = bang < 0 ? '' : text.slice(0, bang).replace(/^'|'$/g, '').replaceAll("''", "'");
  if (prefix.includes('[')) refuseOtherWorkbook(prefix);
  const { workbook } = compilation;
  const scope = prefix === '' ? compilation.sheet : workbook.findSheet(prefix);
  const table = workbook.findTable(name);
  const defined = scope === undefined ? undefined : workbook.compiledName(name, scope);
  if (defined === undefined) {
    if (table === undefined) return () => nameError;
    const part = tablePattern(table, [], []);
    return 'onlyOwnRow' in part ? referenceTo(compiler, part.pattern) : () => part;
  }
  if (defined.problem !== undefined) throw new FormulaProblem(defined.problem.kind, defined.problem.message);
  // Thirty names that each stand for the next one twice would be worked out a billion times.
  compilation.nameSteps += 1 + (defined.nameSteps ?? 0);
  if (compilation.nameSteps > nameStepLimit) {
    throw new FormulaProblem(
      'unsupported',
      `the names in the formula lead to more than ${nameStepLimit} others`,
    );
  }
  compilation.reads.push(...defined.reads);
  compilation.isVolatile ||= defined.isVolatile;
  return (place) => {
    const before = place.variables;
    place.variables = [];
    const result = defined.evaluate(place);
    place.variables = before;
    return result;
  };
}

function refuseOtherWorkbook(workbookName: string | undefined): void {
  if (workbookName) {
    throw new FormulaProblem('other-workbook', 'the formula reads another workbook, which is not opened');
  }
}
