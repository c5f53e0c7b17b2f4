import { badInput, isProblem } from "../foundation/problem";
import type { Cell } from "../foundation/cell";
import type { Result } from "../foundation/result";
import type { Mix, MixPart } from "./mix";
import { mixOf } from "./mixOf";
import { shownCell } from "./shownCell";
import { passedOn } from "./passedOn";
import type { RecipeLine } from "./recipeLine";
import { Sums } from "./totalRow";

/** Only ratios matter, but no number may run over: as large, and as a sentence writes it. */
const MOST_GRAMS = 1e9;
const MOST_GRAMS_TEXT = "1e9";

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
      `${place}: the amount${of} is ${cell} g; it must be from 0 to ${MOST_GRAMS_TEXT} g.`,
    );
  }
  return cell;
}

function wordOf(line: RecipeLine): string {
  if (line.kind === "item") return ` of "${line.item.name}"`;
  return line.kind === "blank" || line.word === "" ? "" : ` of "${line.word}"`;
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
