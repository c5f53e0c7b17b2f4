import type { CellBlock } from "../host";

const sameCells = (one: readonly (readonly unknown[])[], other: readonly (readonly unknown[])[]) =>
  JSON.stringify(one) === JSON.stringify(other);

/** Reads the cells again just before it writes: what the user was shown is what is replaced, or nothing is. */
export async function insertInto(
  context: Excel.RequestContext,
  place: CellBlock,
  contents: readonly (readonly (string | number)[])[],
  overwrite: boolean,
): Promise<"written" | "changed meanwhile" | "filled"> {
  const range = context.workbook.worksheets.getItem(place.sheet).getRange(place.address);
  range.load("formulas");
  await context.sync();
  if (!sameCells(range.formulas, place.formulas)) return "changed meanwhile";
  const isFilled = range.formulas.some((row: readonly unknown[]) =>
    row.some((cell) => cell !== ""),
  );
  if (isFilled && !overwrite) return "filled";
  range.formulas = contents.map((row) => [...row]);
  await context.sync();
  return "written";
}
