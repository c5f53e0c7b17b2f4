import { isProblem } from "../../foundation/problem";
import { solutionOf } from "../../recipe/solution";
import { defineFunction, ownIngredients, recipe } from "../define";

export const osmolality = defineFunction({
  name: "OSMOLALITY",
  summary: "Moles of particles per kilogram of water, by the ideal count.",
  args: { mix: recipe(), ownIngredients: ownIngredients() },
  unit: "mol/kg",
  sources: ["openstaxChemistry2e", "ciaaw2021"],
  example: {
    formula: '=RIME.OSMOLALITY({"water";"sucrose";"sodium chloride"},{1000;34.2;5.84})',
    from: "computed here",
  },
  method:
    "Σ i·moles / kg of water, i as if fully dissociated: what ΔT = Kf × this needs for a mix. Real solutions differ; FREEZINGPOINT knows how.",
  seeAlso: ["IDEALDEPRESSION", "MOLALITY"],
  compute: ({ mix }) => {
    const solution = solutionOf(mix);
    if (isProblem(solution)) return solution;
    const particles = mix.doses.reduce(
      (sum, { moles, substance }) => sum + moles * substance.particles,
      0,
    );
    return particles / solution.waterKg;
  },
});
