import { defineSolute } from "../solute";
import { particles } from "../particles";

/**
 * Salts and urea of milk, lumped: combined as neutral salts they would give 0.03 K too little. 0.078 g of
 * them per g of milk solids-not-fat make 7.61 g per kg of milk water; that water holds 126 mmol/kg of ions
 * and ion pairs (121.4 mmol per litre of diffusate, 0.965 kg of water) and 5 mmol/kg of urea.
 * So one mole of particles weighs 7.61 / 0.131 = 58 g.
 */
export const milkSalts = defineSolute({
  name: "milk salts",
  aliases: { en: ["milk minerals"], de: ["Milchsalze", "Milchmineralien"] },
  formula: "mixture",
  cas: null,
  kind: "lumped",
  food: true,
  molarMass: {
    value: 58,
    unit: "g per mol of particles",
    source: "foxMcSweeney1998",
    obtained: "computed here",
    uncertainty: 2,
    basis: "table 5.7 (species balance of Holt and others 1981) and the natural spread of milk",
  },
  vantHoff: particles(1),
  // Debye–Hückel for the mean charge of milk's ions (Σ n·z²/Σ n = 1.33); the rest as half of NaCl
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0.41,
    a: [0.8, 5, 0, 0],
    e: 2.9,
    e2: 0,
    k: [0, 0],
  },
  curveRecord: {
    source: ["foxMcSweeney1998"],
    obtained: "computed here",
    rmsK: 0,
    largestK: 0,
    points: 0,
    checkedToC: -2,
    relativeUncertainty: 0.05,
    basis: "freezing points of milk (−0.512 to −0.550 °C) and of evaporated milk",
  },
  note: "All dissolved salts and the urea of milk taken as one substance; scaled by milk solids-not-fat.",
});
