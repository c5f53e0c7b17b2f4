import { isopiestic } from "./figures/isopiestic";
import { osmotic25 } from "./figures/osmotic25";
import { freezingTables } from "./points";

const KINDS = [
  ["freezing points", freezingTables],
  ["osmotic coefficients", osmotic25],
  ["isopiestic pairs", isopiestic],
] as const;

/** One line a table of a solute: its use, source and rows, and why it was held out or rejected. */
export function tablesOf(solute: string): string[] {
  return KINDS.flatMap(([kind, tables]) =>
    tables
      .filter((table) => table.solute === solute)
      .map((table) => {
        const rows = ("massPercent" in table ? table.massPercent : table.molalityMolPerKg).length;
        const reason = table.reason === undefined ? "" : `: ${table.reason}`;
        return `${table.use}: ${table.source}, ${rows} ${kind}${reason}`;
      }),
  );
}
