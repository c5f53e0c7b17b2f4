/**
 * Coefficients that minimise the sum of squares of `rows · coefficients − targets`, by orthogonalising the
 * columns one after the other (modified Gram–Schmidt, twice for stability).
 */
export function leastSquares(
  rows: readonly (readonly number[])[],
  targets: readonly number[],
): number[] {
  const count = rows[0]?.length ?? 0;
  const columns = Array.from({ length: count }, (_, j) => rows.map((row) => row[j] ?? 0));
  const triangle = columns.map(() => new Array<number>(count).fill(0));
  const basis: number[][] = [];
  const projected: number[] = [];
  let rest = [...targets];
  columns.forEach((column, j) => {
    let vector = [...column];
    for (let pass = 0; pass < 2; pass++) {
      basis.forEach((unit, i) => {
        const share = dot(unit, vector);
        at(triangle, i)[j] = (at(triangle, i)[j] ?? 0) + share;
        vector = vector.map((value, row) => value - share * (unit[row] ?? 0));
      });
    }
    const length = Math.sqrt(dot(vector, vector));
    at(triangle, j)[j] = length;
    const unit = vector.map((value) => value / length);
    const share = dot(unit, rest);
    rest = rest.map((value, row) => value - share * (unit[row] ?? 0));
    basis.push(unit);
    projected.push(share);
  });
  return backSubstitute(triangle, projected);
}

function backSubstitute(triangle: readonly (readonly number[])[], right: readonly number[]) {
  const solution = new Array<number>(right.length).fill(0);
  for (let i = right.length - 1; i >= 0; i--) {
    let sum = right[i] ?? 0;
    for (let j = i + 1; j < right.length; j++) sum -= (triangle[i]?.[j] ?? 0) * (solution[j] ?? 0);
    solution[i] = sum / (triangle[i]?.[i] ?? 1);
  }
  return solution;
}

function dot(left: readonly number[], right: readonly number[]): number {
  return left.reduce((sum, value, index) => sum + value * (right[index] ?? 0), 0);
}

function at(rows: number[][], index: number): number[] {
  const row = rows[index];
  if (row === undefined) throw new RangeError(`row ${index}`);
  return row;
}
