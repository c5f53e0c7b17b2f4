import { bibliography } from "../../../src/foundation/bibliography";
import { leftOutFifths, sugarsOfPrint } from "../../catalogue/leftOutFifths";
import { numberOf } from "../../worksheet/ask";
import { idealDepressionK } from "./cellFigures";
import { comparisonOf, type Comparison } from "./comparison";

/** Sugars above −5 °C, each row by a fit that has not read it: no cell can show these, so they are refitted here. */
export const sugarsLeftOut = (): Comparison =>
  comparisonOf(
    {
      id: "left-out-fifths",
      title: "Sugars above −5 °C, every fifth row foretold from the other four",
      source: bibliography.crc102,
      use: "held out",
      quantity: "freezing",
      note: "The curves of the cells have read all rows; for this picture they are fitted five times, each time without a fifth of them.",
    },
    sugarsOfPrint.flatMap((name) =>
      leftOutFifths(name).map(({ molalityMolPerKg, printedC, missK }) => {
        const grams = molalityMolPerKg * numberOf("SOLUTE", name, "molar mass");
        return {
          label: `${name}, ${((100 * grams) / (1000 + grams)).toFixed(1)} %`,
          group: name,
          printed: printedC,
          computed: printedC + missK,
          ideal: -idealDepressionK({ water: 1000, [name]: grams })!,
          band: null,
          printedBand: 0,
        };
      }),
    ),
  );
