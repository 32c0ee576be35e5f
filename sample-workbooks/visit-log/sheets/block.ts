import { colours, looks } from '../../writing/palette.ts';
import type { CellRecipe, Content, Look } from '../../writing/recipe.ts';

/** A sheet title with one line below it. */
export function titled(title: string, line: string): readonly CellRecipe[] {
  return [
    { at: 'A1', content: title, look: looks.title },
    { at: 'A2', content: line, look: looks.subtitle },
  ];
}

/** A section heading across columns. */
export function section(title: string, row: number, from: string, to: string): CellRecipe {
  return { at: `${from}${String(row)}`, through: `${to}${String(row)}`, content: title, look: looks.section };
}

/** Text across columns, wrapped. */
export function paragraph(text: Content, row: number, from: string, to: string, look: Look = {}): CellRecipe {
  return {
    at: `${from}${String(row)}`,
    through: `${to}${String(row)}`,
    content: text,
    look: { ...looks.body, ...look },
  };
}

/** Lines that a text needs in a width given in characters; merged cells do not grow by themselves. */
export function linesFor(text: string, width: number): number {
  return Math.max(1, Math.ceil((text.length * 1.04) / width));
}

export const ruled: Look = { line: { colour: colours.faintLine, sides: 'bottom' } };
