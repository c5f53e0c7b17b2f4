/** Puts a picture beside the selected cells; it keeps its place when cells are filled. */
export async function insertPicture(
  context: Excel.RequestContext,
  pngBase64: string,
  name: string,
): Promise<boolean> {
  if (!Office.context.requirements.isSetSupported("ExcelApi", "1.9")) return false;
  const selected = context.workbook.getSelectedRange();
  selected.load("left,top,width");
  await context.sync();
  const picture = selected.worksheet.shapes.addImage(pngBase64);
  picture.name = name;
  picture.left = selected.left + selected.width;
  picture.top = selected.top;
  await context.sync();
  return true;
}
