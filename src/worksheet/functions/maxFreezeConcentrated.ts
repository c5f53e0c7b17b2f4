import { isProblem, outsideValidity } from "../../foundation/problem";
import { ofArgument } from "../../recipe/ofArgument";
import { freezeConcentratedOf } from "../../recipe/solution";
import { defineTable, ownIngredients, recipe } from "../define";

const NOTHING_DISSOLVED =
  "grams: nothing is dissolved in this mix, so there is no Tm′; something that dissolves is expected.";

export const maxFreezeConcentrated = defineTable({
  name: "MAXFREEZECONCENTRATED",
  summary: "Temperature Tm′ at which freezing ends, and the solids of what then is left.",
  args: { mix: recipe(), ownIngredients: ownIngredients() },
  unit: "table",
  sources: ["roos1993"],
  example: {
    formula: '=RIME.MAXFREEZECONCENTRATED({"water";"sucrose"},{200;70})',
    from: "computed here",
  },
  method:
    "Means by mass of the Tm′ and C_g′ of what is dissolved. ± 5 °C for sugars. Declined when more than a fifth of it has no known figure.",
  seeAlso: ["GLASSTRANSITION", "ICEFRACTION"],
  table: ({ mix }) => {
    if (mix.doses.length === 0) return outsideValidity(NOTHING_DISSOLVED);
    const found = freezeConcentratedOf(mix);
    if (isProblem(found)) return ofArgument("grams", found);
    return [
      ["Tm′, °C", "solids fraction"],
      [found.temperatureC, found.solidsFraction],
    ];
  },
});
