import { cellName } from "../../workbook/address";
import type { FormulaCell } from "../../workbook/formulaIndex";
import type { WorkbookSheet, WorkbookValue } from "../../workbook/model";
import type { AuditContext } from "../context";
import { mixEffect } from "../effect";
import type { Effect, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { changedMix, gramsIn } from "../mix";
import { isUnknownName, notKnownThere } from "../formulas/notKnownThere";
import { amountPlace } from "../recipes/recipeBlock";
import type { Rule } from "../rule";
import { isSameValue, shortValue } from "../sameValue";

const identity = { id: "stale-value", severity: "warning" } as const;

interface Stale {
  readonly cell: FormulaCell;
  readonly sheet: WorkbookSheet;
  readonly stored: WorkbookValue;
  readonly fresh: WorkbookValue;
}

/** An error that only the engine here sees says more about the engine than about the sheet. */
const isNewError = (stored: WorkbookValue, fresh: WorkbookValue): boolean =>
  typeof fresh === "object" && fresh !== null && typeof stored !== "object";

function staleCells({ recalculated, workbook }: AuditContext): Stale[] {
  // Told as what it is, by the rule on errors: F9 does not help there.
  const wasElsewhere = notKnownThere(workbook).size > 0;
  return (recalculated?.calculated ?? []).flatMap((cell) => {
    const sheet = workbook.sheets[cell.sheet];
    const fresh = recalculated?.valueAt(cell.sheet, cell.row, cell.column);
    if (sheet === undefined || fresh === undefined) return [];
    const stored = sheet.cellAt(cell.row, cell.column)?.value ?? null;
    if (wasElsewhere && isUnknownName(stored)) return [];
    return isSameValue(stored, fresh) || isNewError(stored, fresh)
      ? []
      : [{ cell, sheet, stored, fresh }];
  });
}

/** What the stale amount does to its recipe; undefined when the cell is no amount. */
function amountEffect({ blocks, mixOf }: AuditContext, stale: Stale): Effect | null | undefined {
  const { cell, sheet, stored, fresh } = stale;
  for (const block of blocks) {
    if (block.sheet !== sheet) continue;
    for (const recipe of block.recipes) {
      const name = block.names.find((each) => {
        const { row, column } = amountPlace(block, recipe, each);
        return row === cell.row && column === cell.column;
      });
      if (name === undefined) continue;
      if (typeof stored !== "number" || typeof fresh !== "number" || stored === 0) return null;
      const mix = mixOf(block, recipe);
      return mixEffect(
        mix,
        changedMix(mix, name, { grams: (gramsIn(mix, name) * fresh) / stored }),
      );
    }
  }
  return undefined;
}

function effectOf(context: AuditContext, stale: Stale): Effect | null {
  const { cell, sheet, stored, fresh } = stale;
  const ofAmount = amountEffect(context, stale);
  if (ofAmount !== undefined) return ofAmount;
  const result = context.results.find(
    (each) => each.sheet === sheet && each.row === cell.row && each.column === cell.column,
  );
  const quantity = result?.role ?? `value of ${cellName(cell.row, cell.column)}`;
  return { quantity, from: shortValue(stored), to: shortValue(fresh), unit: result?.unit ?? "" };
}

function staleFinding(context: AuditContext, stale: Stale): Finding {
  const { cell, sheet, stored, fresh } = stale;
  const at = cellName(cell.row, cell.column);
  return findingAt(identity, sheet, cell, {
    message: `${at} shows ${shortValue(stored)}, but its formula gives ${shortValue(fresh)}.`,
    effect: effectOf(context, stale),
    fix: "Recalculate the workbook (F9, or Ctrl+Alt+F9 for every formula) and save it.",
  });
}

/** Files written by programs often hold formulas without any result: told once a sheet. */
function neverCalculated(sheet: WorkbookSheet, cells: readonly Stale[]): Finding[] {
  const [first] = cells;
  if (first === undefined) return [];
  const at = cellName(first.cell.row, first.cell.column);
  return [
    findingAt(identity, sheet, first.cell, {
      message: `${cells.length} formulas of this sheet were stored without a result, the first in ${at}: they count as blank here.`,
      effect: {
        quantity: `value of ${at}`,
        from: "nothing",
        to: shortValue(first.fresh),
        unit: "",
      },
      fix: "Open the workbook in a spreadsheet, let it calculate, and save it.",
    }),
  ];
}

export const staleValue: Rule = {
  ...identity,
  title: "A stored value is not what its formula gives",
  find: (context) => {
    const stale = staleCells(context);
    const shown = stale.filter(({ stored }) => stored !== null);
    return [
      ...shown.map((each) => staleFinding(context, each)),
      ...context.workbook.sheets.flatMap((sheet) =>
        neverCalculated(
          sheet,
          stale.filter((each) => each.sheet === sheet && each.stored === null),
        ),
      ),
    ];
  },
};
