import { findingAt } from "../findingAt";
import type { Rule } from "../rule";

const identity = { id: "manual-calculation", severity: "warning" } as const;

export const manualCalculation: Rule = {
  ...identity,
  title: "The workbook does not recalculate by itself",
  find: ({ workbook, blocks }) => {
    const [block] = blocks;
    if (workbook.calculation !== "manual" || block === undefined) return [];
    return [
      findingAt(identity, block.sheet, block.range, {
        message:
          "The workbook is set to manual calculation: what it shows may be older than its amounts.",
        effect: null,
        fix: "Set the calculation to automatic, or press F9 before reading a result.",
      }),
    ];
  },
};
