import { IDEAL_KF_K_KG_PER_MOL } from "../../foundation/constants";
import { defineFunction, positive } from "../define";

export const molarMassFrom = defineFunction({
  name: "MOLARMASSFROM",
  summary: "Molar mass of a solute from a measured freezing-point depression.",
  args: {
    depression: positive("Measured depression in K", "K"),
    soluteGrams: positive("Mass of the solute in g", "g"),
    waterGrams: positive("Mass of the solvent in g", "g"),
    vantHoff: positive("Particles per formula unit (i)", "", { default: 1 }),
    kf: positive("Cryoscopic constant in K·kg/mol", "K·kg/mol", { default: IDEAL_KF_K_KG_PER_MOL }),
  },
  unit: "g/mol",
  sources: ["openstaxChemistry2e"],
  example: { formula: "=RIME.MOLARMASSFROM(0.54,10,100)", from: "computed here" },
  method: "M = i·Kf·grams / (ΔT·kg of solvent), by the ideal law: for dilute solutions.",
  seeAlso: ["IDEALDEPRESSION", "MOLALITY"],
  compute: ({ depression, soluteGrams, waterGrams, vantHoff, kf }) =>
    (vantHoff * kf * soluteGrams) / (depression * (waterGrams / 1000)),
});
