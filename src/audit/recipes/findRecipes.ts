import type { CellRange, Workbook, WorkbookSheet } from "../../workbook/model";
import { blocksAcross } from "./blocksAcross";
import { blocksDown } from "./blocksDown";
import { withCalledRecipes } from "./calledRecipes";
import { followCorrections } from "./corrections/followCorrections";
import type { RecipeCorrection } from "./corrections/recipeCorrection";
import type { FinderContext } from "./finderContext";
import { foldedName } from "./names/foldedName";
import { solutionForms } from "./forms/solutionForms";
import { withUnitsOfMultiples } from "./amounts/unitsOfMultiples";
import { withWorkings, type SheetToRead } from "./forms/workedElsewhere";
import { withForms } from "./forms/withForms";
import { knownItems, type ItemCheck } from "./names/knownItems";
import { withTitledNames } from "./names/titledNames";
import { ownIngredientsIn, type OwnIngredients } from "./names/ownIngredients";
import { mixCalls } from "./mixCalls";
import type { RecipeBlock } from "./recipeBlock";
import { withoutContents } from "./contents/withoutContents";
import { withTotalsApart } from "./totals/totalsApart";
import { labelsOfSums } from "./totals/labelsOfSums";
import { sheetTexts, type SheetTexts } from "./sheetTexts";

/** All recipes of a workbook, and the ranges of own ingredients that they draw on. */
export interface FoundRecipes {
  readonly blocks: readonly RecipeBlock[];
  readonly ownIngredients: readonly OwnIngredients[];
  /** Which of the user's corrections could not be followed, and what they leave out, in sentences. */
  readonly notes: readonly string[];
}

/** A sheet's own range first, else the first of the workbook that the functions accept. */
function ownFor(sheet: WorkbookSheet, all: readonly OwnIngredients[]): OwnIngredients | null {
  const usable = all.filter(({ problem }) => problem === null);
  return usable.find((own) => own.sheet === sheet) ?? usable[0] ?? null;
}

const forgivingChecks = new WeakMap<ItemCheck, ItemCheck>();

/** A list of ingredients is one, too, when a name has a letter that only looks right. */
function forgiving(check: ItemCheck): ItemCheck {
  const known = forgivingChecks.get(check);
  if (known !== undefined) return known;
  const forgives: ItemCheck = (name) => {
    const knowledge = check(name);
    return knowledge.kind === "unknown" ? check(foldedName(name)) : knowledge;
  };
  forgivingChecks.set(check, forgives);
  return forgives;
}

/** The headings of tables whose rows are blocks each: they head no recipes that stand across. */
function headingsOf(lists: readonly RecipeBlock[]): readonly CellRange[] {
  const headings = lists.flatMap(({ range, headerRow }) =>
    headerRow === null || headerRow >= range.top
      ? []
      : [[`${headerRow} ${range.left}`, { ...range, top: headerRow, bottom: headerRow }] as const],
  );
  return [...new Map(headings).values()];
}

function blocksOf(
  context: FinderContext,
  texts: SheetTexts,
  own: readonly OwnIngredients[],
): RecipeBlock[] {
  const ownHere = own.filter(({ sheet }) => sheet === context.sheet);
  const inOwn = (row: number, column: number) =>
    ownHere.some(
      ({ range: r }) => row >= r.top && row <= r.bottom && column >= r.left && column <= r.right,
    );
  const down = blocksDown(context, texts).filter(
    ({ names }) => !names.some(({ row, column }) => inOwn(row, column)),
  );
  const taken = [...[...down, ...ownHere].map(({ range }) => range), ...headingsOf(down)];
  const found = [...down, ...blocksAcross(context, texts, taken, down)].flatMap(withoutContents);
  const lists = withCalledRecipes(context, found);
  const all = withForms(lists, solutionForms(context, texts, lists));
  const named = all.map((block) => withTitledNames(context, block));
  return withTotalsApart(context, named.map(withUnitsOfMultiples));
}

const isSameName = (one: string, other: string): boolean =>
  one.toLowerCase() === other.toLowerCase();

const withoutSheet = ({ sheets }: Workbook, corrections: readonly RecipeCorrection[]): string[] =>
  corrections
    .filter(({ sheet }) => !sheets.some(({ name }) => isSameName(name, sheet)))
    .map(
      ({ sheet, range }) =>
        `What was said of ${sheet}!${range} is not followed: there is no such sheet.`,
    );

/**
 * Finds the recipes of a workbook: lists with one header for names and one or more for amounts, lists with
 * a title only, rows of amounts below a row of names, and worked examples of a class. Half the names must be known. What the user said of
 * a range goes before what is found there.
 */
export function findRecipes(
  workbook: Workbook,
  corrections: readonly RecipeCorrection[] = [],
): FoundRecipes {
  const all = workbook.sheets.map((sheet) => ({ sheet, texts: sheetTexts(sheet) }));
  const ownIngredients = workbook.sheets.flatMap(ownIngredientsIn);
  const calls = mixCalls(workbook);
  const sumLabels = labelsOfSums(workbook);
  const checks = new Map<OwnIngredients | null, ItemCheck>();
  const checkFor = (own: OwnIngredients | null): ItemCheck => {
    const check = checks.get(own) ?? knownItems(own?.matrix ?? null);
    checks.set(own, check);
    return check;
  };
  const toRead: SheetToRead[] = [];
  const followed = all.map(({ sheet, texts }) => {
    const own = ownFor(sheet, ownIngredients);
    const check = forgiving(checkFor(own));
    const context = {
      workbook,
      sheet,
      ownIngredients: own?.matrix ?? null,
      check,
      calls: calls.get(sheet) ?? [],
      sumLabels,
    };
    toRead.push({ context, texts });
    const here = corrections.filter((each) => isSameName(each.sheet, sheet.name));
    return followCorrections(context, blocksOf(context, texts, ownIngredients), here);
  });
  return {
    blocks: withWorkings(
      workbook,
      followed.flatMap(({ blocks }) => blocks),
      toRead,
    ),
    ownIngredients,
    notes: [...withoutSheet(workbook, corrections), ...followed.flatMap(({ notes }) => notes)],
  };
}
