import { andThen } from "../../foundation/result";
import { freezingPointOfMix } from "../../recipe/freezing";
import { defineFunction, ownIngredients, recipe } from "../define";

export const depression = defineFunction({
  name: "DEPRESSION",
  summary: "How far the freezing point of a mix lies below that of water.",
  args: { mix: recipe(), ownIngredients: ownIngredients() },
  unit: "K",
  sources: ["murphyKoop2005", "stokesRobinson1966"],
  example: { formula: '=RIME.DEPRESSION({"water";"sucrose"},{200;70})', from: "computed here" },
  method: "0 °C minus the freezing point of FREEZINGPOINT: a positive number of kelvin.",
  seeAlso: ["FREEZINGPOINT", "IDEALDEPRESSION"],
  compute: ({ mix }) => andThen(freezingPointOfMix(mix), (pointC) => Math.abs(pointC)),
});
