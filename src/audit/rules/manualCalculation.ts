import { eachFormula } from "../../workbook/eachFormula";
import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { findingAt } from "../findingAt";
import type { Place } from "../recipes/recipeBlock";
import type { Rule } from "../rule";

const identity = { id: "manual-calculation", severity: "warning" } as const;

/** A class sheet without a recipe is stale in its formulas, too. */
function firstFormula({ sheets }: Workbook): (Place & { readonly sheet: WorkbookSheet }) | null {
  for (const sheet of sheets) {
    const found: Place[] = [];
    eachFormula(sheet, (row, column, cell) => {
      const isFormula = (cell.sharedFormula ?? cell.formula) !== undefined;
      if (isFormula && found.length === 0) found.push({ row, column });
    });
    const [first] = found;
    if (first !== undefined) return { sheet, ...first };
  }
  return null;
}

export const manualCalculation: Rule = {
  ...identity,
  title: "The workbook does not recalculate by itself",
  find: ({ workbook, blocks }) => {
    if (workbook.calculation !== "manual") return [];
    const [block] = blocks;
    const place = block ?? firstFormula(workbook);
    if (place === null) return [];
    return [
      findingAt(identity, place.sheet, "range" in place ? place.range : place, {
        message:
          "The workbook is set to manual calculation: what it shows may be older than its amounts.",
        effect: null,
        fix: "Set the calculation to automatic, or press F9 before reading a result.",
      }),
    ];
  },
};
