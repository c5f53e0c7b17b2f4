import { bibliography } from "../../../src/foundation/bibliography";
import { iceCreamMixes, leightonFreezingPointC } from "../../published/iceCreamMixes";
import { DAIRY_TABLE_BAND_K } from "../../published/dairySucrose";
import { mixtures } from "../../published/mixtures";
import { freezingFigure } from "./cellFigures";
import { comparisonOf, printedWithin, type Comparison } from "./comparison";

/** "alcohol with salt (Author year)" in its two parts. */
function partsOf(name: string): readonly [mixture: string, source: string] {
  const [, mixture = name, source = ""] = /^(.*) \((.*)\)$/.exec(name) ?? [];
  return [mixture, source];
}

const SOURCES: Readonly<Record<string, string>> = {
  "Weng, Li & Zuo 2011": bibliography.weng2011,
  "TEOS-10": bibliography.teos10,
  "Toner & Catling 2017": bibliography.tonerCatling2017,
};

const NOTES: Readonly<Record<string, string>> = {
  "Weng, Li & Zuo 2011":
    "By calorimetry, whose figures scatter by 0.3 to 0.5 K: taken as ± 0.4 K. Its weakest solutions lie up to a third below the ideal law, which so dilute they cannot.",
};

const PRINTED_BAND_K: Readonly<Record<string, number>> = { "Weng, Li & Zuo 2011": 0.4 };

const iceCream = (): Comparison =>
  comparisonOf(
    {
      id: "ice-cream",
      title: "Ice-cream mixes by the dairy textbooks’ method",
      source: `${bibliography.leighton1927}; from memory`,
      use: "held out",
      quantity: "freezing",
      note: "Printed is the method: sugars by the sucrose table (± 0.06 K, see there), salts by 2.37 K per g of milk solids-not-fat per g of water.",
    },
    iceCreamMixes.map((mix) => {
      const grams = {
        water: mix.water,
        sucrose: mix.sucrose,
        lactose: 0.545 * mix.milkSolidsNotFat,
        "milk salts": 0.078 * mix.milkSolidsNotFat,
      };
      const printed = leightonFreezingPointC(mix);
      const row = freezingFigure({ label: mix.name, group: "ice-cream mixes", grams, printed });
      return printedWithin(row, DAIRY_TABLE_BAND_K);
    }),
  );

const recipeText = (grams: Readonly<Record<string, number>>): string =>
  Object.entries(grams)
    .map(([name, amount]) => `${Number(amount.toPrecision(3))} g ${name}`)
    .join(", ");

/** Every mixture in print by source, and ice-cream mixes. */
export function mixed(): Comparison[] {
  const sources = [...new Set(mixtures.map(([name]) => partsOf(name)[1]))];
  const bySource = sources.map((source, at) =>
    comparisonOf(
      {
        id: `mixture-${at + 1}`,
        title: source === "TEOS-10" ? "Seawater and its brine" : "Mixtures of two solutes",
        source: SOURCES[source]!,
        use: "held out",
        quantity: "freezing",
        ...(NOTES[source] !== undefined && { note: NOTES[source] }),
      },
      mixtures
        .map(([name, rows]) => ({ parts: partsOf(name), rows }))
        .filter(({ parts }) => parts[1] === source)
        .flatMap(({ parts: [mixture], rows }) =>
          rows.map(({ grams, printedC: printed }) =>
            printedWithin(
              freezingFigure({ label: recipeText(grams), group: mixture, grams, printed }),
              PRINTED_BAND_K[source] ?? 0,
            ),
          ),
        ),
    ),
  );
  return [iceCream(), ...bySource];
}
