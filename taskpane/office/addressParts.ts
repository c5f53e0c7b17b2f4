/** "'My sheet'!A1:B2" as Office writes addresses → the sheet's name and "A1:B2". */
export function addressParts(address: string): { sheet: string; address: string } {
  const at = address.lastIndexOf("!");
  const sheet = address.slice(0, Math.max(at, 0));
  const unquoted = /^'.*'$/.test(sheet) ? sheet.slice(1, -1).replace(/''/g, "'") : sheet;
  return { sheet: unquoted, address: address.slice(at + 1).replace(/\$/g, "") };
}
