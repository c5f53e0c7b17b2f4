import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { type Kit, type Layout } from "../kit";
import { stillMet } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { isBoozy, sayAll, suited } from "./words";

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt der Eismasse (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Absenkung gegenüber Wasser (K)", states: "depression", as: "typed", decimals: 1 },
  {
    label: "Vom Wasser gefroren bei −16 °C",
    ...{ states: "ice of water", as: "typed", percent: "format", temperatureC: -16 },
  },
  {
    label: "Zucker auf 100 g Wasser (g)",
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
  { label: "Zuckeranteil an der Eismasse", states: "sugar share", as: "typed", percent: "format" },
];

interface Course {
  readonly portion: Spot;
  readonly groups: readonly Spot[];
}

/** Who eats how much; the groups stand over their columns. */
function course(kit: Kit, sheet: CorpusSheet): Course {
  const words = { label: "Portion (g)", bare: "Portion", value: kit.random.pick([80, 100, 120]) };
  const portion = input(kit, sheet, { row: 1, column: 0 }, words);
  put(sheet, 2, 1, "Esser");
  const sizes = [4, kit.random.whole(10, 14), kit.random.whole(22, 28)];
  return { portion, groups: putRow(sheet, 2, 2, sizes) };
}

/** The lines in shares, and weighed out for the three groups. */
function lines(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const { portion, groups } = course(kit, sheet);
  const plan = {
    heads: ["Lebensmittel", "Anteil", "Familie (g)", "Kochgruppe (g)", "ganze Klasse (g)"],
    cells: (name: string, grams: number) => [name, shown(inUnit(grams, "fraction"), "0.0%")],
  };
  const { heads, names, amounts, end } = listed(sheet, made, { row: 3, column: 0 }, plan);
  const alsoAmounts = groups.flatMap((group, index) => {
    const weighed = beside(kit, heads[2 + index]!, amounts, {
      ...{ sheet, format: "0", fixed: [portion, group] },
      content: (spot) => `=${a1(spot)}*${fixed(portion)}*${fixed(group)}`,
    });
    sumOf(kit, sheet, { row: end, column: 2 + index }, weighed, "0");
    return weighed;
  });
  put(sheet, end, 0, "Eismasse");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0%");
  const amountLabel = heads[1]!;
  const unit = "fraction";
  return markRecipe(kit, made, { names, amounts, alsoAmounts, unit, amountLabel, total });
}

/** One ice for the three groups. */
function shares(kit: Kit, sheet: CorpusSheet, given: MadeRecipe): void {
  const made = stillMet(perHundred(given));
  put(sheet, 0, 0, `Kochgruppe 8b: ${made.title}`);
  const recipe = lines(kit, sheet, made);
  const place = { row: recipe.total!.row + 2, column: 0 };
  sayAll(kit, sheet, recipe, place, {
    ...{ said: SAID, target: "So soll es sein" },
    lead: "Vorher fragen, wer das nicht essen darf:",
    note: "Haare zusammenbinden, Hände waschen, dann erst abwiegen.",
  });
}

/** Two ices for a school kitchen. */
function schoolKitchen(kit: Kit): void {
  const mades = suited(kit, 2, (made) => !isBoozy(made));
  mades.forEach((made, index) =>
    shares(kit, addSheet(kit.marked.book, `Doppelstunde ${index + 1}`), made),
  );
}

/** Lessons in cooking. */
export const hauswirtschaft: readonly Layout[] = [
  { name: "Hauswirtschaft, Anteile für drei Gruppen", language: "de", build: schoolKitchen },
];
