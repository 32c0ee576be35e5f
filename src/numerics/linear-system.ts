/**
 * Solves A x = b by Gaussian elimination with partial pivoting. `matrix` (rows) and `right` are overwritten.
 * Returns undefined when the matrix is singular to working precision.
 */
export function solveLinearSystem(matrix: number[][], right: number[]): number[] | undefined {
  const size = right.length;
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let row = column + 1; row < size; row++) {
      if (Math.abs(matrix[row]![column]!) > Math.abs(matrix[pivot]![column]!)) pivot = row;
    }
    const pivotRow = matrix[pivot]!;
    if (!(Math.abs(pivotRow[column]!) > 1e-300)) return undefined;
    [matrix[pivot], matrix[column]] = [matrix[column]!, pivotRow];
    [right[pivot], right[column]] = [right[column]!, right[pivot]!];
    for (let row = column + 1; row < size; row++) {
      const current = matrix[row]!;
      const factor = current[column]! / pivotRow[column]!;
      if (factor === 0) continue;
      for (let k = column; k < size; k++) current[k]! -= factor * pivotRow[k]!;
      right[row]! -= factor * right[column]!;
    }
  }
  const solution = new Array<number>(size).fill(0);
  for (let row = size - 1; row >= 0; row--) {
    let sum = right[row]!;
    for (let k = row + 1; k < size; k++) sum -= matrix[row]![k]! * solution[k]!;
    solution[row] = sum / matrix[row]![row]!;
  }
  return solution;
}
