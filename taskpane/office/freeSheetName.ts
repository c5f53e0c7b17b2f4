const LONGEST = 31; // of a sheet's name in Excel

/** A name that Excel accepts and no sheet has yet: the wished one, or that with a number. */
export function freeSheetName(wished: string, taken: readonly string[]): string {
  const plain =
    wished
      .replace(/[\\/?*[\]:]/g, " ")
      .replace(/^'+|'+$/g, "")
      .trim() || "Rimeline";
  const used = new Set(taken.map((name) => name.toLowerCase()));
  const withNumber = (count: number): string => {
    const ending = count === 1 ? "" : ` (${count})`;
    return plain.slice(0, LONGEST - ending.length).trim() + ending;
  };
  let count = 1;
  while (used.has(withNumber(count).toLowerCase())) count += 1;
  return withNumber(count);
}
