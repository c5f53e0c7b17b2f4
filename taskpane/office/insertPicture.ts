import { HalfWritten } from "./halfWritten";
import { isSupported } from "./isSupported";

/** How many pictures and drawings lie on the selected cells' sheet. */
async function shapesOnSheet(context: Excel.RequestContext): Promise<number> {
  const { shapes } = context.workbook.getSelectedRange().worksheet;
  shapes.load("items/name");
  await context.sync();
  return shapes.items.length;
}

/** Puts a picture beside the selected cells; it keeps its place when cells are filled. */
export async function insertPicture(
  context: Excel.RequestContext,
  pngBase64: string,
  name: string,
): Promise<boolean> {
  if (!isSupported("1.9")) return false;
  const before = await shapesOnSheet(context);
  const selected = context.workbook.getSelectedRange();
  selected.load("left,top,width");
  await context.sync();
  const picture = selected.worksheet.shapes.addImage(pngBase64);
  picture.name = name;
  picture.left = selected.left + selected.width;
  picture.top = selected.top;
  try {
    await context.sync();
  } catch (fault) {
    const now = await shapesOnSheet(context).catch(() => null);
    if (now === null) throw new HalfWritten({ kind: "unknown", places: [name] }, fault);
    if (now <= before) throw fault;
  }
  return true;
}
