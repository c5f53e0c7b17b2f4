import { badInput, isProblem, type Problem } from "../foundation/problem";
import type { Cell } from "../foundation/cell";
import type { Result } from "../foundation/result";
import type { Item } from "./item";
import type { Dose, Mix, MixPart } from "./mix";
import { shownCell } from "./shownCell";
import { passedOn } from "./passedOn";
import type { RecipeLine } from "./recipeLine";
import type { Substance } from "./substance";
import { sameSum } from "./totalRow";

/** Amounts between these, in grams; only ratios matter, but no number may run over. */
const MOST_GRAMS = 1e9;
const LEAST_GRAMS = 1e-6;

/** Reads an amount; null when the line is to be skipped. */
function gramsOf(cell: Cell, line: RecipeLine, place: string): Result<number> | null {
  if (cell === null) return null;
  if (isProblem(cell)) return passedOn(cell, place);
  const of = wordOf(line);
  if (typeof cell !== "number") {
    const shown = shownCell(cell);
    return badInput(
      `${place}: the amount${of} is ${shown}; a number of grams from 0 up is expected.`,
    );
  }
  if (!(cell >= 0 && cell <= MOST_GRAMS)) {
    return badInput(
      `${place}: the amount${of} is ${cell} g; it must be a number from 0 to ${MOST_GRAMS}.`,
    );
  }
  return cell;
}

function wordOf(line: RecipeLine): string {
  if (line.kind === "item") return ` of "${line.item.name}"`;
  return line.kind === "blank" || line.word === "" ? "" : ` of "${line.word}"`;
}

/** Keeps the sums by which a total or subtotal of the sheet is recognised. */
class Sums {
  private all = 0;
  private sinceTotal = 0;
  private net = 0;

  add(grams: number, isLoss: boolean): void {
    this.all += grams;
    this.sinceTotal += grams;
    this.net += isLoss ? -grams : grams;
  }

  /** Null when the stated total is one of the sums, else what is wrong. */
  check(stated: number, word: string, place: string): Problem | null {
    const fits = [this.all, this.sinceTotal, this.net].some((sum) => sameSum(stated, sum));
    this.sinceTotal = 0;
    if (fits) return null;
    const sum = Number(this.all.toPrecision(9));
    return badInput(
      `${place}: "${word}" is ${stated}, but the amounts above it add up to ${sum}; a total must equal that sum.`,
    );
  }
}

/**
 * Adds up one recipe.
 * @param amountAt the amount of each line as the cell holds it, g
 * @param placeAt how a sentence calls that cell
 * @param recipePlace how a sentence calls all of them together
 */
export function composeMix(
  lines: readonly RecipeLine[],
  amountAt: (line: number) => Cell,
  placeAt: (line: number) => string,
  recipePlace: string,
): Result<Mix> {
  const parts: MixPart[] = [];
  const sums = new Sums();
  for (const [at, line] of lines.entries()) {
    const cell = amountAt(at);
    if (cell === null) continue;
    if (typeof cell === "number" && cell === 0 && line.kind === "blank") continue;
    if (line.kind === "problem" && !isProblem(cell)) return line.problem;
    const grams = gramsOf(cell, line, placeAt(at));
    if (isProblem(grams)) return grams;
    if (grams === null) continue;
    if (line.kind === "blank") {
      return badInput(
        `${placeAt(at)}: the amount ${grams} has no name beside it in items; one is expected.`,
      );
    }
    if (line.kind === "total") {
      const wrong = sums.check(grams, line.word, placeAt(at));
      if (wrong !== null) return wrong;
    } else if (line.kind === "item") {
      parts.push({ item: line.item, grams });
      sums.add(grams, line.item.origin.kind === "water lost");
    }
  }
  return mixOf(parts, recipePlace);
}

/** The mix of weighed items; a problem when it is nothing, or when more water was lost than there was. */
export function mixOf(parts: readonly MixPart[], place = "grams"): Result<Mix> {
  let weighed = 0;
  let lost = 0;
  const sums = { water: 0, fat: 0, protein: 0, ash: 0, inert: 0, pieceWater: 0 };
  const dissolved = new Map<Substance, number>();
  for (const { item, grams } of parts) {
    const { content } = item;
    if (item.origin.kind === "water lost") lost += grams;
    else weighed += grams;
    sums.water += grams * content.water;
    sums.fat += grams * content.fat;
    sums.protein += grams * content.protein;
    sums.ash += grams * content.ash;
    sums.inert += grams * content.inert;
    sums.pieceWater += grams * content.pieceWater;
    for (const [substance, share] of content.substances) {
      dissolved.set(substance, (dissolved.get(substance) ?? 0) + grams * share);
    }
  }
  const problem = impossible(weighed, lost, sums.water, place);
  if (problem !== null) return problem;
  const doses: Dose[] = [];
  for (const [substance, grams] of dissolved) {
    if (grams > 0) doses.push({ substance, grams, moles: grams / substance.molarMassGPerMol });
  }
  return {
    totalGrams: weighed - lost,
    waterGrams: sums.water <= 1e-12 * weighed ? 0 : sums.water,
    doses,
    fatGrams: sums.fat,
    proteinGrams: sums.protein,
    ashGrams: sums.ash,
    inertGrams: sums.inert,
    pieceWaterGrams: sums.pieceWater,
    parts,
  };
}

function impossible(weighed: number, lost: number, water: number, place: string): Problem | null {
  if (!(weighed >= LEAST_GRAMS)) {
    return badInput(
      `${place}: the amounts add up to ${weighed} g; a recipe needs at least ${LEAST_GRAMS} g.`,
    );
  }
  if (water < -1e-12 * weighed) {
    return badInput(
      `${place}: "water lost" is ${lost} g, more than the ${Number((water + lost).toPrecision(6))} g of water in the mix.`,
    );
  }
  return null;
}

/** How one item alone would be: for the amounts per 100 g of an ingredient. */
export const mixOfItem = (item: Item, grams: number): Result<Mix> => mixOf([{ item, grams }]);
