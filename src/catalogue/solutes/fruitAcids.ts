import { defineSolute } from "../solute";
import { particles } from "../particles";

export const fruitAcids = defineSolute({
  name: "fruit acids",
  aliases: { en: ["organic acids", "acids", "fruit acid"], de: ["Fruchtsäuren", "Fruchtsäure"] },
  formula: "mixture",
  cas: null,
  kind: "lumped",
  food: true,
  molarMass: {
    value: 170,
    unit: "g/mol",
    source: "commonPractice",
    obtained: "common practice",
    uncertainty: 20,
    basis: "between malic (134) and citric acid (192), as they mix in fruit",
  },
  vantHoff: particles(1),
  curve: { form: "norrish", constant: 4 },
  curveRecord: {
    source: ["chirife1980"],
    obtained: "from memory",
    rmsK: 0,
    largestK: 0,
    points: 0,
    checkedToC: 0,
    relativeUncertainty: 0.12,
    basis:
      "Norrish constant between malic (1.8) and citric acid (6.2); the molar mass is the larger doubt",
  },
  note: "Malic, citric and tartaric acid of fruit taken as one substance.",
});
