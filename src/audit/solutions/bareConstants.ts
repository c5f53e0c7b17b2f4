import { IDEAL_KF_K_KG_PER_MOL } from "../../foundation/constants";
import { isReadAs } from "../amounts/isReadAs";
import { lastInRow } from "../amounts/rowOfInputs";
import { wordsOfCell } from "../amounts/wordsOfCell";
import type { AuditContext } from "../context";
import { labelledNumbers, type LabelledNumber } from "../labels";
import { textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import { nextColumn } from "../recipes/nextFilled";
import type { Place } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import type { WorkbookSheet } from "../../workbook/model";

/** A unit of Kf has the mole in it, however it is written: "K·kg/mol", "°C kg mol⁻¹". */
const SAYS_MOLE = /mol(?!al)/i;
/** It may stand in the label, before the number or some cells behind it, or behind those that share its label. */
const [REACH_LEFT, REACH_RIGHT] = [3, 2];
const MOST_LOOKED_UP = 10;

type Constant = Pick<LabelledNumber, "sheet" | "row" | "column" | "label" | "value">;

/** As classes print it: 1.86, 1.853, 1.858. */
const isConstant = (value: unknown): value is number =>
  typeof value === "number" && Math.abs(value / IDEAL_KF_K_KG_PER_MOL - 1) < 0.004;

/** What a number tells of a depression, right of it or below its heading. */
const OF_SOLUTION = new Set(["depression", "freezing point"]);

/** Whether words say nothing known of the number that is the first thing right of them, which is as large as the constant. */
function constantBeside(sheet: WorkbookSheet, { row, column }: Place): Constant | null {
  const at = nextColumn(sheet, row, column);
  const value = sheet.cellAt(row, at)?.value;
  const label = textAt(sheet, row, column);
  return isConstant(value) && headerRole(label) === null
    ? { sheet, row, column: at, label, value }
    : null;
}

/** Numbers that are no less than the constant by what is worked out of them, whatever they are called. */
function constantsByUse(context: AuditContext): readonly Constant[] {
  const beside = context.workbook.sheets.flatMap((sheet) =>
    [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
      columns.flatMap((column) => constantBeside(sheet, { row, column }) ?? []),
    ),
  );
  return beside
    .slice(0, MOST_LOOKED_UP)
    .filter((one) =>
      isReadAs(
        context,
        one,
        () => (answer) =>
          Object.values(wordsOfCell(answer)).some((words) =>
            OF_SOLUTION.has(headerRole(words) ?? ""),
          ),
      ),
    );
}

/** The typed cryoscopic constants of a workbook with recipes or solutions that have no unit in their row. */
export function bareConstants(context: AuditContext): readonly Constant[] {
  const { workbook, blocks } = context;
  if (blocks.length === 0) return [];
  const said = labelledNumbers(workbook, ["cryoscopic constant"]);
  return [...said, ...constantsByUse(context)].filter(({ sheet, row, column }) => {
    const { formula, format = "" } = sheet.cellAt(row, column) ?? {};
    const last = lastInRow(sheet, { row, column });
    const from = Math.max(0, column - REACH_LEFT);
    const words = Array.from({ length: last + REACH_RIGHT - from + 1 }, (_, at) =>
      textAt(sheet, row, from + at),
    );
    return formula === undefined && ![format, ...words].some((text) => SAYS_MOLE.test(text));
  });
}
