import type { Solute } from "../../catalogue/solute";
import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { holdsNumber, isBlank, textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import type { LabelledPlace, Place } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import { pureSolute } from "./pureSolute";

/** A molar mass or a number of particles that a table of substances gives. */
export interface TabledConstant extends LabelledPlace {
  readonly sheet: WorkbookSheet;
  readonly role: "molar mass" | "particles";
  readonly solute: Solute;
}

/** Names stand at most this far left of their constants; a row of units may stand between. */
const [REACH, FIRST] = [6, 2];
const LONGEST = 300;

const soluteAt = (sheet: WorkbookSheet, row: number, column: number): Solute | null => {
  const text = textAt(sheet, row, column);
  return text === "" ? null : pureSolute(text);
};

/** The column left of a heading in which a substance stands beside the first numbers. */
function nameColumn(sheet: WorkbookSheet, { row, column }: Place): number | null {
  const rows = Array.from({ length: FIRST }, (_, at) => row + 1 + at);
  const columns = Array.from({ length: REACH }, (_, at) => column - 1 - at);
  const isNamed = (at: number) =>
    rows.some((each) => holdsNumber(sheet, each, column) && soluteAt(sheet, each, at) !== null);
  return columns.find(isNamed) ?? null;
}

function below(sheet: WorkbookSheet, heading: Place): TabledConstant[] {
  const label = textAt(sheet, heading.row, heading.column);
  const role = headerRole(label);
  if (role !== "molar mass" && role !== "particles") return [];
  const names = nameColumn(sheet, heading);
  const found: TabledConstant[] = [];
  const { column } = heading;
  for (let row = heading.row + 1; names !== null && row <= heading.row + LONGEST; row += 1) {
    if (row > heading.row + 1 && isBlank(sheet, row, names)) break;
    const solute = soluteAt(sheet, row, names);
    const isGiven = solute !== null && holdsNumber(sheet, row, column);
    if (isGiven) found.push({ sheet, row, column, label, role, solute });
  }
  return found;
}

/** The substance that the nearest words above a number name, a few rows up at most. */
function soluteAbove(sheet: WorkbookSheet, row: number, column: number): Solute | null {
  const rows = Array.from({ length: REACH }, (_, at) => row - 1 - at);
  const named = rows.find((at) => at >= 0 && textAt(sheet, at, column) !== "");
  return named === undefined ? null : soluteAt(sheet, named, column);
}

/** The same laid on its side: a row of constants below a row of two substances and more. */
function rightOf(sheet: WorkbookSheet, { row, column: first }: Place): TabledConstant[] {
  const label = textAt(sheet, row, first);
  const role = headerRole(label);
  if (role !== "molar mass" && role !== "particles") return [];
  const found: TabledConstant[] = [];
  for (let column = first + 1; holdsNumber(sheet, row, column); column += 1) {
    const solute = soluteAbove(sheet, row, column);
    if (solute !== null) found.push({ sheet, row, column, label, role, solute });
  }
  return found.length > 1 ? found : [];
}

/** What tables of substances say of them, wherever they stand: "Substance | Particles | Molar mass (g/mol)". */
export const tabledConstants = ({ sheets }: Workbook): readonly TabledConstant[] =>
  sheets.flatMap((sheet) =>
    [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
      columns.flatMap((column) => [below, rightOf].flatMap((find) => find(sheet, { row, column }))),
    ),
  );
