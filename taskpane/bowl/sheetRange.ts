/** A range with its sheet, as a formula writes it. */
export const sheetRange = (sheet: string, address: string): string =>
  /^[A-Za-z_][A-Za-z0-9_]*$/.test(sheet)
    ? `${sheet}!${address}`
    : `'${sheet.replace(/'/g, "''")}'!${address}`;
