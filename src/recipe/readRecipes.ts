import type { Cell, Matrix } from "../foundation/cell";
import { badInput } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { composeMix } from "./composeMix";
import { single, type Lattice, type Shape } from "./lattice";
import type { Mix } from "./mix";
import type { OwnIngredients } from "./namedItem";
import { placeIn } from "./place";
import { recipeLine } from "./recipeLine";

const shapeOf = (matrix: Matrix): Shape => ({
  rows: matrix.length,
  columns: matrix[0]?.length ?? 0,
});

const shapeText = ({ rows, columns }: Shape): string => `${rows} × ${columns}`;

/** What is wrong with the shapes of items and grams, or null. */
function mismatch(items: Shape, grams: Shape) {
  if (items.rows > 1 && items.columns > 1) {
    return badInput(
      `items is ${shapeText(items)} cells; one row or one column of names is expected.`,
    );
  }
  const fits =
    (items.rows === 1 && items.columns === 1) ||
    (items.rows === 1 ? grams.columns === items.columns : grams.rows === items.rows);
  return fits
    ? null
    : badInput(
        `grams is ${shapeText(grams)} cells (rows × columns) and items is ${shapeText(items)}; grams must lie along items.`,
      );
}

/**
 * The recipes that items and grams describe. Items in a row: one recipe a row of grams, answered as a column.
 * Items in a column: one recipe a column of grams, answered as a row. One item: one recipe a cell of grams.
 * Names are looked up once, however many recipes there are.
 */
export function readRecipes(items: Matrix, grams: Matrix, own: OwnIngredients): Lattice<Mix> {
  const itemShape = shapeOf(items);
  const gramShape = shapeOf(grams);
  const wrong = mismatch(itemShape, gramShape);
  if (wrong !== null) return single<Mix>(wrong);
  const names = items.flat();
  const isRow = itemShape.rows === 1;
  const lines = names.map((name, at) =>
    recipeLine(name, own, placeIn("items", itemShape, isRow ? 0 : at, isRow ? at : 0)),
  );
  const recipeAt = (row: number, column: number, along: Shape): Result<Mix> =>
    composeMix(
      lines,
      (at) => cellAt(grams, row + at * along.rows, column + at * along.columns),
      (at) => placeIn("grams", gramShape, row + at * along.rows, column + at * along.columns),
      recipePlaceIn(gramShape, row, column, along),
    );
  if (names.length === 1) {
    return lattice(gramShape, (row, column) => recipeAt(row, column, { rows: 0, columns: 0 }));
  }
  return isRow
    ? lattice({ rows: gramShape.rows, columns: 1 }, (row) =>
        recipeAt(row, 0, { rows: 0, columns: 1 }),
      )
    : lattice({ rows: 1, columns: gramShape.columns }, (_row, column) =>
        recipeAt(0, column, { rows: 1, columns: 0 }),
      );
}

const cellAt = (matrix: Matrix, row: number, column: number): Cell => matrix[row]?.[column] ?? null;

function lattice(
  { rows, columns }: Shape,
  recipeAt: (row: number, column: number) => Result<Mix>,
): Lattice<Mix> {
  const cells: Result<Mix>[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) cells.push(recipeAt(row, column));
  }
  return { rows, columns, cells };
}

/** How a sentence calls all amounts of one recipe. */
function recipePlaceIn(shape: Shape, row: number, column: number, along: Shape): string {
  if (along.columns === 1) return shape.rows === 1 ? "grams" : `grams, row ${row + 1}`;
  if (along.rows === 1) return shape.columns === 1 ? "grams" : `grams, column ${column + 1}`;
  return placeIn("grams", shape, row, column);
}
