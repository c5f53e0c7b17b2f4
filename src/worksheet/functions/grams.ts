import { gramsInOne } from "../../catalogue/gramsInOne";
import { isProblem } from "../../foundation/problem";
import { andThen } from "../../foundation/result";
import { amount, deferred, defineFunction, item, measure, ownIngredients } from "../define";

export const grams = defineFunction({
  name: "GRAMS",
  summary: "Grams in a household measure of an item.",
  args: {
    item: deferred(item("Name of the ingredient")),
    amount: amount("How many; a number or a fraction as text such as 1 1/2; blank is 0"),
    unit: deferred(measure("Unit: g, kg, oz, lb, mL, L, tsp, tbsp, cup, fl oz, piece, …")),
    ownIngredients: ownIngredients(),
  },
  unit: "g",
  sources: ["nistHandbook44", "usdaSr26"],
  example: { formula: '=RIME.GRAMS("refined sugar","1 1/2","cup")', from: "computed here" },
  method:
    "amount × mL of the unit × bulk density of the item, or × grams of a piece. Unmarked cups and spoons are US customary. A spoon of a powder is good to ± 10 % and more: weigh where it matters.",
  seeAlso: ["INGREDIENT"],
  compute: ({ item: { value: found }, amount: count, unit: { value: unit } }) => {
    if (count === null) return 0;
    if (isProblem(found)) return found;
    if (isProblem(unit)) return unit;
    return andThen(gramsInOne(unit, found.name, found.facts), (one) => count * one);
  },
});
