import type { WorkbookSheet } from "../../workbook/model";
import { isMass, unitFromHeader } from "../recipes/amounts/unit";
import { textAt } from "../recipes/cells";
import { headerRole, type Role } from "../recipes/headings/headerRole";
import type { Place } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import { alcoholLabel, type AlcoholLabel } from "./alcoholLabel";
import { lineAfter, type LabelledLine } from "./labelledLine";

export interface AlcoholLine extends LabelledLine {
  readonly says: AlcoholLabel;
}

/** Lines of a sheet that say something of alcohol, each with those beside it that may hold its amounts. */
export interface AlcoholTable {
  readonly line: AlcoholLine;
  readonly strengths: readonly AlcoholLine[];
  readonly amounts: readonly LabelledLine[];
}

/** Lines of one table have their labels at most so far apart. */
const FAR = 15;
const NO_AMOUNTS = new Set<Role | null>([
  "price",
  "temperature",
  "molar mass",
  "target",
  "other",
  "moles",
]);

/** "A shot each (g)" is an amount, though of one of them. */
function holdsNoAmounts(label: string): boolean {
  const [role, unit] = [headerRole(label), unitFromHeader(label)];
  return NO_AMOUNTS.has(role) && !(role === "other" && unit !== null && isMass(unit));
}

/** A label begins a line each way; which one holds its numbers is seen from how many there are. */
const bothWays = (sheet: WorkbookSheet, label: string, at: Place): LabelledLine[] =>
  [true, false]
    .map((isDown) => lineAfter(sheet, label, at, isDown))
    .filter(({ indexes }) => indexes.length > 0);

const known = new WeakMap<WorkbookSheet, readonly AlcoholLine[]>();

/** The lines of a sheet that say something of alcohol, found once. */
function alcoholLines(sheet: WorkbookSheet): readonly AlcoholLine[] {
  const lines = known.get(sheet) ?? linesOn(sheet);
  known.set(sheet, lines);
  return lines;
}

/** "Strength | 40 | % vol": the cell beside the number says what it is. */
function strengthBeside(sheet: WorkbookSheet, label: string, at: Place): AlcoholLine | null {
  const { row, column } = at;
  const isSaid =
    typeof sheet.cellAt(row, column + 1)?.value === "number" &&
    alcoholLabel(textAt(sheet, row, column + 2)) === "strength";
  return isSaid ? { ...lineAfter(sheet, label, at, false), says: "strength" } : null;
}

function linesOn(sheet: WorkbookSheet): AlcoholLine[] {
  const lines: AlcoholLine[] = [];
  for (const [row, columns] of sheetTexts(sheet).columnsByRow) {
    for (const column of columns) {
      const label = textAt(sheet, row, column);
      const says = alcoholLabel(label);
      const beside = strengthBeside(sheet, label, { row, column });
      if (beside !== null) lines.push(beside);
      else if (says !== null)
        lines.push(...bothWays(sheet, label, { row, column }).map((line) => ({ ...line, says })));
    }
  }
  return lines;
}

/** How far along a table's labels another one stands; null when it is not of the same table. */
function apart(
  one: LabelledLine,
  other: { readonly at: Place; readonly isDown: boolean },
): number | null {
  if (one.isDown !== other.isDown) return null;
  const rows = Math.abs(one.at.row - other.at.row);
  const columns = Math.abs(one.at.column - other.at.column);
  const [across, along] = one.isDown ? [rows, columns] : [columns, rows];
  return across > 1 || along > FAR ? null : along;
}

function amountsBeside(line: AlcoholLine): LabelledLine[] {
  const { sheet, at, isDown } = line;
  const { columnsByRow } = sheetTexts(sheet);
  const [from, to] = isDown ? [at.row - 1, at.row + 1] : [at.row - FAR, at.row + FAR];
  const found: LabelledLine[] = [];
  for (let row = Math.max(0, from); row <= to; row += 1) {
    for (const column of columnsByRow.get(row) ?? []) {
      const label = textAt(sheet, row, column);
      const far = apart(line, { at: { row, column }, isDown });
      const says = alcoholLabel(label);
      if (far === null || (says !== null && !/\d ?%/.test(label)) || holdsNoAmounts(label))
        continue;
      const beside = lineAfter(sheet, label, { row, column }, isDown);
      if (beside.indexes.length > 0) found.push(beside);
    }
  }
  return found.sort((one, other) => (apart(line, one) ?? 0) - (apart(line, other) ?? 0));
}

const isStrength = ({ says }: AlcoholLine) => says === "strength" || says === "weak strength";

/** Strengths by volume in a line of several, each with the amounts that stand beside it. */
export const strengthTables = (sheet: WorkbookSheet): AlcoholTable[] =>
  alcoholLines(sheet)
    .filter(({ says, isDown }) => says === "strength" && isDown)
    .map((line) => ({ line, strengths: [line], amounts: amountsBeside(line) }));

/** What a sheet says of alcohol in grams or as a share of the mass, with the strengths and amounts beside. */
export function alcoholTables(sheet: WorkbookSheet): AlcoholTable[] {
  const lines = alcoholLines(sheet);
  return lines
    .filter((line) => !isStrength(line))
    .map((line) => ({
      line,
      strengths: lines.filter((other) => isStrength(other) && apart(line, other) !== null),
      amounts: amountsBeside(line),
    }));
}
