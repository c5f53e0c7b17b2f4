import { cellName } from "../../workbook/address";
import { eachCell } from "../../workbook/eachCell";
import type { CellRange, Workbook, WorkbookSheet } from "../../workbook/model";
import { contains } from "../../workbook/references";
import type { AuditContext } from "../context";
import { isBlank, looksNumeric, textAt } from "../recipes/cells";
import { headerRole, type Role } from "../recipes/headerRole";
import type { Place } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import { unitFromFormat, unitFromHeader, unitFromWord } from "../recipes/unit";

/** A labelled number that someone typed for formulas, or people, to work with, and that names no unit. */
export interface UnitlessInput extends Place {
  readonly sheet: WorkbookSheet;
  readonly label: string;
  readonly value: number;
  readonly isTemperature: boolean;
}

/** Labels of answers, and of what the rules on constants look after. */
const NO_INPUT: ReadonlySet<Role | null> = new Set<Role | null>([
  ...(["freezing point", "depression", "ice fraction", "molality", "moles"] as const),
  ...(["particles", "molar mass", "cryoscopic constant", "measured", "price"] as const),
  ...(["composition", "abv", "ethanol", "total", "target", "temperature"] as const),
]);

const SAYS_UNIT =
  /[°º%€$£]|[([][^)\]]{1,14}[)\]]\s*$|\b(celsius|fahrenheit|kelvin|degrees?|grad|eur|euro|usd|chf|mol|min(utes?|uten)?|hours?|h|stunden?|days?|tage|cm|mm)\b/i;
/** What is counted or compared has no unit; what is dissolved is looked after by its own rules. */
const HAS_NONE =
  /\b(numbers?|count|no\.?|nr\.?|how many|wie viele|pieces?|portions|portionen|servings?|bars?|moulds?|molds?|formen|trays?|bleche|factor|ratio|version|date|datum|week|kw|year|jahr|times|mal|guests?|gäste|people|personen|id|ph|ice|trial|versuch|discount|rabatt|drift|offset)\b|anzahl|faktor|verhältnis|stück|water|wasser/i;
/** Common practice, no source. */
const QUANTITY =
  /\b(batch|charge|ansatz|mass|weight|amount|quantity|size|portion|loss(es)?|waste|overrun|yield|volume|evaporat\w*|shrink\w*)\b|masse\b|gewicht|menge|größe|schwund|verlust|ausbeute|aufschlag|volumen/i;
const WARMEST_SERVED_C = -3;
const COLDEST_C = -60;
const LONGEST_LABEL = 50;
const MOST_LOOKED_UP = 40;

/** Fewer numbers below each other are inputs that stand below words of their own: "Ice: | Lemon", "Batch | 2000". */
const LEAST_ROWS = 3;

/** Whether a number stands in a table's column rather than beside a label alone. */
function isInTable(
  sheet: WorkbookSheet,
  { row, column }: Place,
  recipes: readonly CellRange[],
): boolean {
  const isRecipe = (at: number) => recipes.some((range) => contains(range, at, column));
  let above = row - 1;
  while (above >= 0 && looksNumeric(sheet, above, column) && !isRecipe(above)) above -= 1;
  // Right below a list it is no line of it.
  if (isRecipe(above)) return false;
  if (looksNumeric(sheet, row, column + 1)) return true;
  const heading = textAt(sheet, above, column);
  let below = row + 1;
  while (below - above <= LEAST_ROWS && looksNumeric(sheet, below, column)) below += 1;
  return heading !== "" && (headerRole(heading) !== null || below - above > LEAST_ROWS);
}

const saysUnit = (label: string): boolean =>
  SAYS_UNIT.test(label) || unitFromHeader(label) !== null;

function inputAt(
  sheet: WorkbookSheet,
  row: number,
  labelColumn: number,
  recipes: readonly CellRange[],
): UnitlessInput | null {
  const label = textAt(sheet, row, labelColumn);
  const column = labelColumn + 1;
  const cell = sheet.cellAt(row, column);
  if (typeof cell?.value !== "number" || cell.formula !== undefined) return null;
  const isBare = label.length <= LONGEST_LABEL && !saysUnit(label) && !HAS_NONE.test(label);
  if (!isBare || NO_INPUT.has(headerRole(label))) return null;
  const format = cell.format ?? "";
  const beside = textAt(sheet, row, column + 1);
  if (unitFromFormat(format) !== null || SAYS_UNIT.test(format) || /[dmyh"]/i.test(format))
    return null;
  if (unitFromWord(beside) !== null || SAYS_UNIT.test(beside)) return null;
  if (isInTable(sheet, { row, column }, recipes)) return null;
  const { value } = cell;
  const isTemperature = value <= WARMEST_SERVED_C && value >= COLDEST_C;
  return { sheet, row, column, label, value, isTemperature };
}

/** How formulas write a cell: on its own sheet, on others, or by its name. */
function writtenAs(
  { names }: Workbook,
  { sheet, row, column }: UnitlessInput,
  isOwn: boolean,
): RegExp {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(cellName(row, column)) ?? [];
  const place = `\\$?${letters}\\$?${digits}(?![\\d(:])`;
  const escaped = sheet.name.replaceAll(/[\\^$.*+?()[\]{}|]/g, "\\$&");
  const address = isOwn ? `(?<![\\p{L}\\d_.!$:])${place}` : `${escaped}'?!${place}`;
  const isNamed = new RegExp(`${escaped}'?!${place}`, "iu");
  const own = names.filter(({ refersTo }) => isNamed.test(refersTo)).map(({ name }) => name);
  const alias = own.map(
    (name) => `(?<![\\p{L}\\d_.])${name.replaceAll(/[.\\?]/g, "\\$&")}(?![\\p{L}\\d_.(])`,
  );
  return new RegExp(`(?:${[address, ...alias].join("|")})`, "iu");
}

/** Whether a formula works with the number as with a quantity: by its label, as so much per hundred, or from grams to kilograms. */
function isWorkedWith(workbook: Workbook, input: UnitlessInput): boolean {
  const isQuantity = QUANTITY.test(input.label);
  return workbook.sheets.some((sheet) => {
    const written = writtenAs(workbook, input, sheet === input.sheet);
    const converted = new RegExp(
      `[-+]\\s*${written.source}\\s*(?:/\\s*100|%)|${written.source}\\s*[*/]\\s*1000(?!\\d)|\\b1000\\s*[*/]\\s*${written.source}`,
      "iu",
    );
    let isRead = false;
    eachCell(sheet, (_row, _column, cell) => {
      const formula = cell.sharedFormula ?? cell.formula;
      if (isRead || formula === undefined) return;
      isRead = (isQuantity ? written : converted).test(formula);
    });
    return isRead;
  });
}

/** The labelled inputs of a workbook with recipes that name no unit: serving temperatures, sizes, losses. */
export function unitlessInputs({ workbook, blocks }: AuditContext): UnitlessInput[] {
  if (blocks.length === 0) return [];
  const bare = workbook.sheets.flatMap((sheet) => {
    const ranges = blocks.filter((block) => block.sheet === sheet).map(({ range }) => range);
    return [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
      columns
        .filter((column) => !isBlank(sheet, row, column + 1))
        .filter((column) => !ranges.some((range) => contains(range, row, column + 1)))
        .flatMap((column) => inputAt(sheet, row, column, ranges) ?? []),
    );
  });
  const hasRecipe = ({ sheet }: UnitlessInput) => blocks.some((block) => block.sheet === sheet);
  return bare
    .slice(0, MOST_LOOKED_UP)
    .filter((one) => (one.isTemperature ? hasRecipe(one) : isWorkedWith(workbook, one)));
}
