/** Most cells that a formula may have in hand at once. A range over whole columns counts as far as the workbook reaches. */
const areaLimit = 2 ** 24;

/** A formula asks for more cells at once than memory should be spent on. */
export class TooLarge extends Error {
  override readonly name = 'TooLarge';
}

/** @throws TooLarge; a run leaves such a formula with the value it was saved with and lists it */
export function requireArea(rows: number, columns: number): void {
  const cells = rows * columns;
  if (cells <= areaLimit) return;
  throw new TooLarge(`it takes ${cells} cells at once, more than the ${areaLimit} this program holds`);
}
