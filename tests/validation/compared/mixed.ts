import { bibliography } from "../../../src/foundation/bibliography";
import { iceCreamMixes, leightonFreezingPointC } from "../../published/iceCreamMixes";
import { mixtures } from "../../published/mixtures";
import { freezingFigure } from "./cellFigures";
import { comparisonOf, type Comparison } from "./comparison";

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
  "Weng, Li & Zuo 2011": "By calorimetry, whose figures scatter by 0.3 to 0.5 K.",
};

const iceCream = (): Comparison =>
  comparisonOf(
    {
      id: "ice-cream",
      title: "Ice-cream mixes by the dairy textbooks’ method",
      source: `${bibliography.leighton1927}; from memory`,
      use: "held out",
      quantity: "freezing",
      note: "Printed is the method: sugars by the sucrose table, salts by 2.37 K per g of milk solids-not-fat per g of water.",
    },
    iceCreamMixes.map((mix) =>
      freezingFigure({
        label: mix.name,
        group: "ice-cream mixes",
        grams: {
          water: mix.water,
          sucrose: mix.sucrose,
          lactose: 0.545 * mix.milkSolidsNotFat,
          "milk salts": 0.078 * mix.milkSolidsNotFat,
        },
        printed: leightonFreezingPointC(mix),
      }),
    ),
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
          rows.map(({ grams, printedC }) =>
            freezingFigure({ label: recipeText(grams), group: mixture, grams, printed: printedC }),
          ),
        ),
    ),
  );
  return [iceCream(), ...bySource];
}
