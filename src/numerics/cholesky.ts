/**
 * Lower triangular factor of a symmetric, positive definite matrix, written over its lower half: A = L Lᵗ.
 *
 * @param matrix - rows one after another, order × order; only the lower half is read
 * @returns the natural logarithm of the determinant of A; NaN when A is not positive definite
 * @source Cholesky's method
 */
export function factorInPlace(matrix: Float64Array, order: number): number {
  let logDeterminant = 0;
  for (let row = 0; row < order; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let sum = matrix[row * order + column]!;
      for (let k = 0; k < column; k += 1) sum -= matrix[row * order + k]! * matrix[column * order + k]!;
      if (row === column) {
        if (!(sum > 0)) return NaN;
        const diagonal = Math.sqrt(sum);
        matrix[row * order + row] = diagonal;
        logDeterminant += 2 * Math.log(diagonal);
      } else matrix[row * order + column] = sum / matrix[column * order + column]!;
    }
  }
  return logDeterminant;
}

/** L y = b, written over b. @param factor - from factorInPlace */
export function forwardInPlace(factor: Float64Array, order: number, right: Float64Array): void {
  for (let row = 0; row < order; row += 1) {
    let sum = right[row]!;
    for (let k = 0; k < row; k += 1) sum -= factor[row * order + k]! * right[k]!;
    right[row] = sum / factor[row * order + row]!;
  }
}

/** Lᵗ x = y, written over y; after forwardInPlace it solves A x = b. @param factor - from factorInPlace */
export function backwardInPlace(factor: Float64Array, order: number, right: Float64Array): void {
  for (let row = order - 1; row >= 0; row -= 1) {
    let sum = right[row]!;
    for (let k = row + 1; k < order; k += 1) sum -= factor[k * order + row]! * right[k]!;
    right[row] = sum / factor[row * order + row]!;
  }
}
