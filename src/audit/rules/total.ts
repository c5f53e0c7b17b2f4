import { parseCellName, rangeName } from "../../workbook/address";
import { alcoholTotals } from "../alcohol/alcoholTotals";
import { rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { massOutliers } from "../amounts/massOutliers";
import type { RecipeBlock } from "../recipes/recipeBlock";
import type { Rule } from "../rule";
import { toldOnce } from "../toldOnce";
import { misreadShares } from "../amounts/misreadShares";
import { shareLines, type ShareLine } from "../amounts/shareLines";
import { textAt } from "../recipes/cells";
import { filledTotals } from "../amounts/filledTotals";
import { shorterSums } from "../amounts/shorterSums";
import { sumsOfShares } from "../amounts/sumsOfShares";
import { sumsStoppingShort } from "../amounts/sumsStoppingShort";
import { typedBesideSums } from "../amounts/typedBesideSums";
import { typedShareTotals } from "../amounts/typedShareTotals";
import { typedSumsShort } from "../amounts/typedSumsShort";
import { typedTotals } from "../amounts/typedTotals";
import { isFarFromSum } from "../amounts/isFarFromSum";
import { isSumOfPart } from "../amounts/isSumOfPart";
import { isAmongSums } from "../amounts/isAmongSums";
import { isShare, unitFromWord, unitText } from "../recipes/amounts/unit";
import { addsAllTotals, countedTwice, leftOut, rangeOfAll } from "../formulas/sumFormulas";
import {
  agrees,
  sinceLastTotal,
  sumOf,
  totalledLines,
  type Summand,
  type Totalled,
} from "../amounts/totalledLines";
import { wrongTotal } from "../amounts/wrongTotal";

const identity = { id: "total-incomplete", severity: "error" } as const;

/** These leave out what a filter hides, which is what they are for. */
const COUNTS_SHOWN = /\b(SUBTOTAL|AGGREGATE)\s*\(/i;

/** The numbers a total may be meant to count: all, those since the last total, those shown. */
function* meantBy(total: Totalled): Generator<readonly Summand[], undefined> {
  const { summands, sheet, formula } = total;
  const ofSection = sinceLastTotal(total);
  yield summands;
  yield ofSection;
  if (COUNTS_SHOWN.test(formula ?? "")) {
    const isShown = ({ place }: Summand): boolean => !sheet.hiddenRows.has(place.row);
    yield summands.filter(isShown);
    yield ofSection.filter(isShown);
  }
}

/** Whether one of the meanings holds; the rest are not worked out then. */
function isMeant(total: Totalled, holds: (some: readonly Summand[]) => boolean): boolean {
  for (const some of meantBy(total)) if (holds(some)) return true;
  return false;
}

/** A sum and a number that is added to it: "=1000+SUM(B3:B6)" of what is put to a kilogram. */
const WITH_NUMBER =
  /^\s*(?:(\d+(?:\.\d+)?)\s*\+\s*SUM\([^()]*\)|SUM\([^()]*\)\s*\+\s*(\d+(?:\.\d+)?))\s*$/i;

/** What a sum counts besides the lines, as its formula shows. */
function addedTo(formula = ""): number {
  const [, before, behind] = WITH_NUMBER.exec(formula) ?? [];
  return Number(before ?? behind ?? 0);
}

function isRight(total: Totalled): boolean {
  const { formula, textSum, summands } = total;
  if (agrees(total, sumOf(summands) + addedTo(formula))) return true;
  const fits = (sum: number) => agrees(total, sum);
  // Who adds up by hand counts the amounts typed as text, too.
  if (formula === undefined && fits(sumOf(summands) + textSum)) return true;
  return isMeant(total, (some) => fits(sumOf(some)));
}

/** Whether the formula itself shows what is wrong, however little it makes. */
const leavesOut = (total: Totalled): boolean =>
  !isMeant(total, (some) => some.length === 0 || leftOut(total.formula, some).length === 0);

function totalFinding(total: Totalled): Finding | null {
  const { sheet, place, formula, byFormula, summands } = total;
  if (summands.length < 2 || addsAllTotals(total) || (isRight(total) && !leavesOut(total)))
    return null;
  if (isFarFromSum(total)) return null;
  const [missing, twice] = [leftOut(formula, summands), countedTwice(total)];
  const isTold = !byFormula || twice.length > 0 || leavesOut(total) || isAmongSums(total);
  if (!isTold) return null;
  return findingAt(identity, sheet, place, wrongTotal(total, { missing, twice }));
}

/** A column of shares of the mix that does not come to 100 %. */
function shareFinding({ sheet, shares, whole }: ShareLine): Finding | null {
  const percent = (sumOf(shares) / whole) * 100;
  // Far from 100 it is another kind of percentage, for example of the flour or of the water.
  if (shares.length < 3 || Math.abs(percent - 100) <= 0.5 || percent < 80 || percent > 125)
    return null;
  const range = rangeOfAll(shares.map(({ place }) => place));
  return findingAt(identity, sheet, range, {
    message: `The shares in ${rangeName(range)} add up to ${rounded(percent, 2)} %, not 100 %.`,
    effect: { quantity: "sum of the shares", from: rounded(percent, 2), to: 100, unit: "%" },
    fix: "Mend the share that is wrong, or divide each by their sum.",
  });
}

/** A typed total that one amount in another unit explains: that is told of the amount. */
const isExplained = (block: RecipeBlock, { formula, recipe }: Totalled): boolean =>
  formula === undefined &&
  recipe !== null &&
  !isShare(recipe.unit) &&
  massOutliers(block, recipe).length > 0;

/** Amounts in more than one unit are not added up; whether a sum adds them all the same is told elsewhere. */
function hasOneUnit({ sheet, unitColumn, names, recipes }: RecipeBlock): boolean {
  // Below headings with units, others are of the measures that were counted.
  if (unitColumn === null || recipes.every(({ unitAssumed }) => !unitAssumed)) return true;
  const written = names.map(({ row }) => unitFromWord(textAt(sheet, row, unitColumn)));
  const units = new Set(written.map((unit) => (unit === null ? "" : unitText(unit))));
  return units.size <= 1;
}

function* totalsOf(block: RecipeBlock): Generator<Totalled, undefined> {
  if (hasOneUnit(block)) yield* totalledLines(block);
  yield* alcoholTotals(block);
}

function findIn(block: RecipeBlock): Finding[] {
  const wrong: Finding[] = [];
  for (const one of totalsOf(block)) {
    const found = totalFinding(one);
    if (found !== null && !isExplained(block, one) && !isSumOfPart(block, one)) wrong.push(found);
  }
  const across = block.layout === "across";
  const told = new Set(wrong.map(({ cell }) => parseCellName(cell)?.[across ? "row" : "column"]));
  const shares = shareLines(block).filter(
    (line) => !told.has(line.line) && misreadShares(line).length === 0,
  );
  return [...wrong, ...shares.flatMap((one) => shareFinding(one) ?? [])];
}

/** Wrong sums that need not be totals of recipes. */
const SUMS_ELSEWHERE = [
  ...[filledTotals, shorterSums, sumsStoppingShort, typedSumsShort, typedTotals, typedBesideSums],
  ...[typedShareTotals, sumsOfShares],
] as const;

export const total: Rule = {
  ...identity,
  title: "A total leaves rows out, or shares do not add up to 100 %",
  find: (context) =>
    toldOnce([
      ...context.blocks.flatMap(findIn),
      ...SUMS_ELSEWHERE.flatMap((find) => find(context)).map(({ total: one, missing }) =>
        findingAt(identity, one.sheet, one.place, wrongTotal(one, { missing, twice: [] })),
      ),
    ]),
};
