import type { BlockValue, CellBlock, Contents } from "../host";
import { HalfWritten } from "./halfWritten";

const sameCells = (one: readonly (readonly unknown[])[], other: readonly (readonly unknown[])[]) =>
  JSON.stringify(one) === JSON.stringify(other);

async function formulasAt(
  context: Excel.RequestContext,
  place: CellBlock,
): Promise<readonly (readonly BlockValue[])[]> {
  const range = context.workbook.worksheets.getItem(place.sheet).getRange(place.address);
  range.load("formulas");
  await context.sync();
  return (range.formulas as BlockValue[][] | null) ?? [];
}

/** One block is written whole or not at all: after a fault it is as it was, or it was written all the same. */
async function isWrittenInSpite(read: () => Promise<boolean>, place: CellBlock, fault: unknown) {
  try {
    return await read();
  } catch {
    throw new HalfWritten({ kind: "unknown", places: [`${place.sheet}!${place.address}`] }, fault);
  }
}

/** Reads the cells again just before it writes: what the user was shown is what is replaced, or nothing is. */
export async function insertInto(
  context: Excel.RequestContext,
  place: CellBlock,
  contents: Contents,
  overwrite: boolean,
): Promise<"written" | "changed meanwhile" | "filled"> {
  const now = await formulasAt(context, place);
  if (!sameCells(now, place.formulas)) return "changed meanwhile";
  const isFilled = now.some((row) => row.some((cell) => cell !== ""));
  if (isFilled && !overwrite) return "filled";
  const range = context.workbook.worksheets.getItem(place.sheet).getRange(place.address);
  range.formulas = contents.map((row) => [...row]);
  try {
    await context.sync();
  } catch (fault) {
    const isChanged = async () => !sameCells(await formulasAt(context, place), now);
    if (!(await isWrittenInSpite(isChanged, place, fault))) throw fault;
  }
  return "written";
}
