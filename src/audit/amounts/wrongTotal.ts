import { cellName, rangeName } from "../../workbook/address";
import { formulaEdit, writtenFormula } from "../cellEdit";
import { rounded } from "../effect";
import type { Evidence } from "../findingAt";
import { rangeOfAll, wholeSum } from "../formulas/sumFormulas";
import type { Place } from "../recipes/recipeBlock";
import { sumOf, type Summand, type Totalled } from "./totalledLines";

/** What a sum leaves out, and the other totals that it counts. */
interface Wrong {
  readonly missing: readonly Summand[];
  readonly twice: readonly Place[];
}

const namesOf = (places: readonly Place[]): string =>
  places.map(({ row, column }) => cellName(row, column)).join(", ");

function why({ missing, twice }: Wrong): string {
  if (twice.length > 0) return `it counts ${namesOf(twice)}, a total already, once more`;
  return missing.length > 0
    ? `it leaves out ${namesOf(missing.map(({ place }) => place)).slice(0, 80)}`
    : "it does not fit the amounts";
}

/** Says of a total what its numbers add up to, and why it is another number. */
export function wrongTotal(total: Totalled, wrong: Wrong): Evidence {
  const { sheet, place, stored, formula, recipe, unit, summands } = total;
  const [right, range] = [sumOf(summands), rangeName(rangeOfAll(summands.map((one) => one.place)))];
  const whole = wholeSum(total);
  const cell = cellName(place.row, place.column);
  const [from, to] = [rounded(stored, 2), rounded(right, 2)];
  // What is left out may be nothing yet.
  const isRightNow = from === to;
  return {
    message: isRightNow
      ? `The total in ${cell} is ${from} as it should be, but ${why(wrong)}.`
      : `The total in ${cell} is ${rounded(stored, 3)} where the ${recipe === null ? "numbers" : "amounts"} add up to ${rounded(right, 3)}: ${why(wrong)}.`,
    effect: isRightNow
      ? null
      : { quantity: recipe === null ? "total" : "total of the recipe", from, to, unit },
    fix:
      formula === undefined
        ? `Enter =SUM(${range}), or mend the amount that is wrong.`
        : `Enter ${writtenFormula(sheet, place, whole ?? `SUM(${range})`)}.`,
    edits: whole === null ? [] : formulaEdit(sheet, place, whole),
  };
}
