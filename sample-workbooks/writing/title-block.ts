import { colours, looks } from './palette.ts';
import type { CellRecipe, Look } from './recipe.ts';

/** A sheet title with one line below it. */
export function titled(title: string, line: string): readonly CellRecipe[] {
  return [
    { at: 'A1', content: title, look: looks.title },
    { at: 'A2', content: line, look: looks.subtitle },
  ];
}

export const titleHeights = { 1: 26, 2: 16, 3: 8 } as const;

export const ruled: Look = { line: { colour: colours.faintLine, sides: 'bottom' } };
