/** Whether the spreadsheet offers a set of Excel's interface, such as "1.9"; false where nothing tells. */
export const isSupported = (version: string): boolean =>
  typeof Office !== "undefined" && Office.context.requirements.isSetSupported("ExcelApi", version);
