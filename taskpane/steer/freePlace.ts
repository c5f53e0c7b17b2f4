import { cellName, parseRangeName, rangeName } from "../../src/workbook/address";
import { latticeOf, turned } from "../bowl/lattice";
import type { RecognisedRecipe } from "../bowl/recognised";
import type { BlockValue, CellBlock, Contents, SpreadsheetHost } from "../host";
import { freeLine } from "./freeLine";
import type { NewAmounts } from "./newAmounts";

/** So far beyond the amounts a free line is looked for. */
const SEARCHED = 40;

export interface FreePlace {
  readonly place: CellBlock;
  readonly contents: Contents;
}

/** Where the recipe's lines stand, seen as rows: the head before them, the first, the last, what lies beyond. */
function extent({ nameRange, amountRange, direction }: RecognisedRecipe) {
  const names = parseRangeName(nameRange);
  const amounts = parseRangeName(amountRange);
  if (names === null || amounts === null) return null;
  return direction === "down"
    ? {
        head: Math.max(names.top - 1, 0),
        first: names.top,
        last: names.bottom,
        beyond: amounts.left + 1,
      }
    : { head: 0, first: names.left, last: names.right, beyond: amounts.top + 1 };
}

type Extent = NonNullable<ReturnType<typeof extent>>;
type Line = (string | number)[];

const text = (value: BlockValue): string | number =>
  typeof value === "boolean" ? String(value) : value;

/** Names and amounts as they are to stand, from the head on. */
function linesOf(
  recipe: RecognisedRecipe,
  { header, amounts, added }: NewAmounts,
  { head, first, last }: Extent,
  cellAt: (row: number) => string,
): { readonly names: Line; readonly numbers: Line } {
  const empty = (): Line => Array.from({ length: last + added.length - head + 1 }, () => "");
  const [names, numbers] = [empty(), empty()];
  if (first > head) numbers[0] = header;
  for (const [at, { cell, name }] of recipe.lines.entries()) {
    const place = parseRangeName(cell);
    if (place === null) continue;
    const row = recipe.direction === "down" ? place.top : place.left;
    const amount = amounts[at] ?? null;
    names[row - head] = text(name);
    if (amount !== null) {
      numbers[row - head] = amount === "sum" ? `=SUM(${cellAt(first)}:${cellAt(row - 1)})` : amount;
    }
  }
  for (const [at, { name, grams }] of added.entries()) {
    names[last - head + 1 + at] = name;
    numbers[last - head + 1 + at] = grams;
  }
  return { names, numbers };
}

/**
 * A free place beside the recipe and what would be written there: a column beside a column, a row below a
 * row; with its own names where it cannot lie at the table itself. Null when there is none near. Only reads.
 */
export async function findFreePlace(
  host: SpreadsheetHost,
  recipe: RecognisedRecipe,
  written: NewAmounts,
): Promise<FreePlace | null> {
  const lies = extent(recipe);
  if (lies === null) return null;
  const isDown = recipe.direction === "down";
  const end = lies.last + written.added.length;
  const read = (from: number, to: number) =>
    host.read(
      recipe.sheet,
      rangeName(
        isDown
          ? { top: lies.head, bottom: end, left: from, right: to }
          : { left: lies.head, right: end, top: from, bottom: to },
      ),
    );
  const band = latticeOf(await read(lies.beyond, lies.beyond + SEARCHED));
  const free = freeLine(isDown ? band : turned(band), written.added.length > 0);
  if (free === null) return null;
  const at = lies.beyond + free.at;
  const { names, numbers } = linesOf(recipe, written, lies, (row) =>
    isDown ? cellName(row, at) : cellName(at, row),
  );
  const lines = free.alone ? [names, numbers] : [numbers];
  return {
    place: await read(free.alone ? at - 1 : at, at),
    contents: isDown ? numbers.map((_, row) => lines.map((line) => line[row] ?? "")) : lines,
  };
}
