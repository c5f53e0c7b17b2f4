import { IDEAL_KF_K_KG_PER_MOL } from "../../foundation/constants";
import { defineFunction, notNegative, positive } from "../define";

export const idealDepression = defineFunction({
  name: "IDEALDEPRESSION",
  summary: "Freezing-point depression by the ideal law, for teaching.",
  args: {
    molality: notNegative("Moles of solute per kg of water", "mol/kg"),
    vantHoff: positive("Particles per formula unit (i)", "", { default: 1 }),
    kf: positive("Cryoscopic constant in K·kg/mol", "K·kg/mol", { default: IDEAL_KF_K_KG_PER_MOL }),
  },
  unit: "K",
  sources: ["openstaxChemistry2e"],
  example: { formula: "=RIME.IDEALDEPRESSION(0.5,2)", from: "computed here" },
  method:
    "ΔT = i·Kf·m. It holds for dilute solutions: at 42 % sucrose it gives 3.9 K where 4.9 K is measured.",
  seeAlso: ["MOLALITY", "DEPRESSION", "IDEALELEVATION"],
  compute: ({ molality, vantHoff, kf }) => vantHoff * kf * molality,
});
