import { IDEAL_KB_K_KG_PER_MOL } from "../../foundation/constants";
import { defineFunction, notNegative, positive } from "../define";

export const idealElevation = defineFunction({
  name: "IDEALELEVATION",
  summary: "Boiling-point elevation by the ideal law, for teaching.",
  args: {
    molality: notNegative("Moles of solute per kg of water", "mol/kg"),
    vantHoff: positive("Particles per formula unit (i)", "", { default: 1 }),
    kb: positive("Ebullioscopic constant in K·kg/mol", "K·kg/mol", {
      default: IDEAL_KB_K_KG_PER_MOL,
    }),
  },
  unit: "K",
  sources: ["openstaxChemistry2e"],
  example: { formula: "=RIME.IDEALELEVATION(1)", from: "computed here" },
  method: "ΔT = i·Kb·m, for dilute solutions at 101.325 kPa.",
  seeAlso: ["BOILINGPOINT", "IDEALDEPRESSION"],
  compute: ({ molality, vantHoff, kb }) => vantHoff * kb * molality,
});
