import { bibliography, type SourceKey } from "../../src/foundation/bibliography";
import type { HowObtained } from "../../src/foundation/figure";
import type { Composition, Ingredient } from "../../src/catalogue/ingredient";
import type { Words } from "../words/words";
import { cellFormula } from "./cellFormula";
import type { FigureLine } from "./figureLine";

interface Part {
  readonly component: string;
  readonly label: string;
  readonly grams: number;
}

function partsOf(composition: Composition, words: Words): Part[] {
  const { water, fat, protein, ash, inert, solutes = {}, higherSaccharides } = composition;
  const own = (component: keyof Words["components"], grams: number | undefined): Part[] =>
    grams === undefined ? [] : [{ component, label: words.components[component], grams }];
  return [
    ...own("water", water),
    ...Object.entries(solutes).map(([name, grams]) => ({ component: name, label: name, grams })),
    ...own("higher saccharides", higherSaccharides?.grams),
    ...own("fat", fat),
    ...own("protein", protein),
    ...own("ash", ash),
    ...own("inert", inert),
  ].filter(({ grams }) => grams > 0);
}

/** What 100 g of an ingredient is made of, largest part first. */
export function ingredientLines(ingredient: Ingredient, words: Words): readonly FigureLine[] {
  return partsOf(ingredient.composition, words)
    .sort((one, other) => other.grams - one.grams)
    .map(({ component, label, grams }) => ({
      label,
      value: grams,
      unit: words.gramsPer100,
      uncertainty: ingredient.spread[component] ?? null,
      source: bibliography[ingredient.source],
      obtained: ingredient.obtained,
      basis: ingredient.spread[component] === undefined ? "" : ingredient.spreadBasis,
      cell: cellFormula("INGREDIENT", ingredient.name, component),
    }));
}

/** How a spoon or a cup of it weighs, and the alcohol by volume: what is known of that. */
export function measureLines(ingredient: Ingredient, words: Words): readonly FigureLine[] {
  const { name, gramsPerMl, gramsPerPiece, abvPercent, measuresSource, source } = ingredient;
  const measured = measuresSource ?? source;
  const of = (from: SourceKey, obtained: HowObtained) => ({
    source: bibliography[from],
    obtained: from === "commonPractice" ? ("common practice" as const) : obtained,
    uncertainty: null,
    basis: "",
    cell: null,
  });
  const lines: FigureLine[] = [];
  if (gramsPerMl !== undefined) {
    lines.push({
      ...of(measured, "computed here"), // print gives the weight of a cup
      label: words.bulkDensity,
      value: gramsPerMl.value,
      unit: "g/mL",
      uncertainty: gramsPerMl.value * gramsPerMl.relativeSpread,
      basis: words.bulkDensityBasis,
      cell: cellFormula("INGREDIENT", name, "g per mL"),
    });
  }
  if (gramsPerPiece !== undefined) {
    const { value, piece } = gramsPerPiece;
    const cell = cellFormula("INGREDIENT", name, "g per piece");
    lines.push({ ...of(measured, "from the source"), label: piece, value, unit: "g", cell });
  }
  if (abvPercent !== undefined) {
    const shared = of(source, ingredient.obtained);
    lines.push({ ...shared, label: words.alcoholByVolume, value: abvPercent, unit: "% vol" });
  }
  return lines;
}
