import { numberOf, ofRecipe } from "../../worksheet/ask";
import { comparisonOf, type Comparison } from "./comparison";

const SUCROSE = { water: 34.54, sucrose: 65.46 };

/** How far sucrose raises the boiling point. */
export const boiling = (): Comparison =>
  comparisonOf(
    {
      id: "boiling",
      title: "Boiling-point elevation of a sucrose solution",
      source: "Tressler, D.K., Zimmerman, W.I. & Willits, C.O., 1941",
      use: "held out",
      quantity: "boiling",
    },
    [
      {
        label: "sucrose, 65.46 %",
        group: "sucrose",
        printed: 3.9,
        computed: ofRecipe("BOILINGPOINT", SUCROSE) - numberOf("BOILINGPOINT", "water", 100),
        ideal: numberOf("IDEALELEVATION", ofRecipe("OSMOLALITY", SUCROSE)),
        band: null,
        printedBand: 0,
      },
    ],
  );
