import { checkTarget } from "../../recipe/checkTarget";
import { defineFunction, ownIngredients, recipe, target } from "../define";

export const check = defineFunction({
  name: "CHECK",
  summary: "Whether a mix meets a serving target, else how far off and which way.",
  args: {
    mix: recipe(),
    target: target(
      "Name of a target, or a range with the headers name, temperature, ice from, ice to, basis",
    ),
    ownIngredients: ownIngredients(),
  },
  unit: "text",
  sources: ["commonPractice", "stokesRobinson1966"],
  example: {
    formula: '=RIME.CHECK({"water";"sucrose"},{200;70},"scooped at −13")',
    from: "computed here",
  },
  method:
    "Compares ICEFRACTION at the target's temperature with its band: more ice is too hard, less is too soft. Refused for what is no food.",
  seeAlso: ["TARGET", "ICEFRACTION", "AMOUNTFOR"],
  compute: ({ mix, target: wanted }) => checkTarget(mix, wanted),
});
