import { bibliography } from "../../../src/foundation/bibliography";
import { fruitFreezingPoints } from "../../published/fruitFreezingPoints";
import { honeyWaterActivity, meanHoney } from "../../published/honeyActivity";
import { milkRange, milks } from "../../published/milks";
import { otherFreezingPoints } from "../../published/otherFreezingPoints";
import { activityFigure, freezingFigure } from "./cellFigures";
import { comparisonOf, type Comparison } from "./comparison";

const ASHRAE = "ASHRAE Handbook, Refrigeration, thermal properties of foods; from memory";

const fruitOf = (
  id: string,
  title: string,
  foods: readonly (readonly [name: string, freezingPointC: number])[],
  note?: string,
): Comparison =>
  comparisonOf(
    {
      id,
      title,
      source: ASHRAE,
      use: "held out",
      quantity: "freezing",
      ...(note !== undefined && { note }),
    },
    foods.map(([name, printed]) =>
      freezingFigure({ label: name, group: name, grams: { [name]: 100 }, printed }),
    ),
  );

const middleC = (milkRange.coldestC + milkRange.warmestC) / 2;

const milk = (): Comparison =>
  comparisonOf(
    {
      id: "milk",
      title: "Milk from its composition, and powder made up to milk",
      source: `${bibliography.foxMcSweeney1998}; ${bibliography.aoac961}`,
      use: "held out",
      quantity: "freezing",
      note: `Printed is a range, ${milkRange.warmestC} to ${milkRange.coldestC} °C; its middle stands for it here.`.replaceAll(
        "-",
        "−",
      ),
    },
    milks.map(([label, grams]) => freezingFigure({ label, group: label, grams, printed: middleC })),
  );

const HONEY_MOISTURES = [15, 16, 17, 17.2, 18, 19, 20, 21];

/** Mean honey at another moisture; its higher saccharides as the trisaccharide of the same molar mass. */
function honeyGrams(moisture: number): Record<string, number> {
  const drier = (100 - moisture) / (100 - 17.2);
  const dry = Object.entries(meanHoney).map(([name, grams]) => [
    name === "higherSaccharides504" ? "maltotriose" : name,
    grams * drier,
  ]);
  return { water: moisture, ...(Object.fromEntries(dry) as Record<string, number>) };
}

const honey = (): Comparison =>
  comparisonOf(
    {
      id: "honey",
      title: "Water activity of honey at 25 °C by its moisture",
      source:
        "Chirife, Zamora & Motto, J. Food Eng. 72 (2006) 287 and Perez et al., Food Bioprocess Technol. 2 (2009); from memory",
      use: "held out",
      quantity: "activity",
      note: "The mean of two regressions over hundreds of honeys.",
    },
    HONEY_MOISTURES.map((moisture) =>
      activityFigure({
        label: `honey, ${moisture} % water`,
        group: "honey",
        grams: honeyGrams(moisture),
        printed: honeyWaterActivity(moisture),
      }),
    ),
  );

/** Foods by their composition. */
export const foods = (): Comparison[] => [
  milk(),
  fruitOf("fruit", "Six kinds of fruit from their composition", fruitFreezingPoints),
  fruitOf(
    "other-foods",
    "Other foods from their composition",
    otherFreezingPoints,
    "Composition and freezing point are printed for different lots. Freezing points of fruit are collected for storage, and the warmest of a kind is printed (Whiteman, USDA Marketing Research Report 196, 1957; from memory): the fruit here all come out colder, some by more than the natural spread.",
  ),
  honey(),
];
