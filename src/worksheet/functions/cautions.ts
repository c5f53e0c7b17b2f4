import { cautionRows } from "../../recipe/cautionRows";
import { notFood } from "../../recipe/notFood";
import { defineTable, ownIngredients, recipe } from "../define";

export const cautions = defineTable({
  name: "CAUTIONS",
  summary:
    "Table of what to tell the eater of a mix: allergens, infants, alcohol, sandiness and more.",
  args: { mix: recipe(), ownIngredients: ownIngredients() },
  unit: "table",
  sources: ["usc343w", "eu1169_2011", "cdcInfantBotulism", "fsaGlycerol"],
  example: {
    formula: '=RIME.CAUTIONS({"water";"honey";"pistachios"},{500;120;60})',
    from: "computed here",
  },
  method:
    "From the nature of the ingredients. Own ingredients without a statement print unknown. Cross-contact cannot be computed, and local law and licensed advice go before. Refused for what is no food.",
  seeAlso: ["CHECK", "INGREDIENT"],
  table: ({ mix }) =>
    notFood(mix) ?? [
      ["caution", "because of", "source"],
      ...cautionRows(mix).map(({ text, because, source }) => [text, because, source]),
    ],
});
