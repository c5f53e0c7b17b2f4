import { eachFormula } from "../../workbook/eachFormula";
import type { CellRange, Workbook, WorkbookSheet } from "../../workbook/model";
import { contains, referencesOf } from "../../workbook/references";
import { worksheetFunctions } from "../../worksheet/functions";
import type { Place } from "./recipeBlock";

/** Names and amounts of a mix, as a recipe function is given them, on one sheet. */
export interface MixCall {
  readonly names: CellRange;
  readonly amounts: CellRange;
}

/** The functions whose first two arguments are the names and the amounts of a mix. */
const OF_A_MIX = worksheetFunctions
  .filter(({ parameters: [first, second] }) => first?.name === "items" && second?.name === "grams")
  .map(({ name }) => name);
const RANGE = String.raw`(?:(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?\$?[A-Z]{1,3}\$?\d{1,7}:\$?[A-Z]{1,3}\$?\d{1,7}`;
const CALL = new RegExp(
  String.raw`RIME\.(?:${OF_A_MIX.join("|")})\(\s*(${RANGE})\s*,\s*(${RANGE})\s*[,)]`,
  "giu",
);

/** A ledger calls once a row; its rows are found without. */
const MOST_CALLS = 300;

/** The mixes that one sheet's formulas ask for, with the sheet where each stands; null for their own. */
function askedOn(sheet: WorkbookSheet): { on: string | null; call: MixCall }[] {
  const asked = new Map<string, { on: string | null; call: MixCall }>();
  eachFormula(sheet, (_row, _column, cell) => {
    const text = cell.sharedFormula ?? cell.formula;
    if (text === undefined || asked.size >= MOST_CALLS || !/RIME\./i.test(text)) return;
    for (const [, one = "", other = ""] of (cell.formula ?? "").matchAll(CALL)) {
      const [names, amounts] = referencesOf(`${one},${other}`);
      if (names === undefined || amounts?.sheet !== names.sheet) continue;
      const call = { names: names.range, amounts: amounts.range };
      asked.set(`${one},${other}`.replaceAll("$", ""), { on: names.sheet, call });
    }
  });
  return [...asked.values()];
}

/** What the recipe functions of a workbook are given, by the sheet where it stands, each mix once. */
export function mixCalls({ sheets }: Workbook): ReadonlyMap<WorkbookSheet, readonly MixCall[]> {
  const named = new Map(sheets.map((sheet) => [sheet.name.toLowerCase(), sheet]));
  const calls = new Map<WorkbookSheet, MixCall[]>();
  for (const home of sheets) {
    for (const { on, call } of askedOn(home)) {
      const sheet = on === null ? home : named.get(on.toLowerCase());
      if (sheet !== undefined) calls.set(sheet, [...(calls.get(sheet) ?? []), call]);
    }
  }
  return calls;
}

/** Whether a recipe function takes some cells for the names of a mix: then they are, known or not. */
export const areNamesOfCall = (calls: readonly MixCall[], places: readonly Place[]): boolean =>
  places.length > 1 &&
  calls.some(({ names }) => places.every(({ row, column }) => contains(names, row, column)));

/** How far right of its label an answer may stand, of recipes in columns. */
const REACH_RIGHT = 12;

/** Whether a row says what recipe functions answer, right of its label, of a mix in which that is none of the names. */
export const answersMix = (sheet: WorkbookSheet, { row, column }: Place): boolean =>
  Array.from({ length: REACH_RIGHT }, (_, at) => column + 1 + at).some((at) => {
    const calls = [...(sheet.cellAt(row, at)?.formula ?? "").matchAll(CALL)];
    const isNameIn = ([, names = ""]: RegExpMatchArray) =>
      referencesOf(names).some(({ range }) => contains(range, row, column));
    return calls.length > 0 && !calls.some(isNameIn);
  });
