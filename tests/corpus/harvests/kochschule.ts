import { a1, addSheet, fixed, put, putRow, shown, span, type CorpusSheet } from "../book";
import { allergensOf, cautionsIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { solution } from "../solution";
import { numbersUnder, readings, table } from "./words";

const VOICE: Voice = {
  lead: "",
  honey: "Honig: Kindern unter 12 Monaten nicht geben.",
  alcohol: "Alkohol: nicht für Kinder und Schwangere, nicht vor der Heimfahrt.",
  nuts: "Ganze Nüsse: für Kinder unter 5 Jahren Erstickungsgefahr.",
  egg: "Rohes Eigelb: Kerntemperatur 71 °C oder pasteurisierte Ware.",
};

const SAID: readonly Said[] = [
  { label: "Gefrierpunktserniedrigung in K", states: "depression", as: "formula" },
  { label: "Wasser aus allen Zutaten in g", states: "water", as: "formula", format: "0" },
  {
    label: "Zucker je 100 g Wasser in g",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
  {
    label: "Eis in der Masse bei −14 °C in %",
    ...{ states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 },
  },
];

/** Allergens and cautions, each beside its word. */
function hinweise(sheet: CorpusSheet, { made, flags }: MarkedRecipe, row: number): void {
  const allergens = allergensOf(made);
  const cautions = cautionsIn(made, VOICE);
  if (allergens !== "") flags.push(...putRow(sheet, row, 0, ["Kennzeichnung", allergens]));
  if (cautions !== "") flags.push(...putRow(sheet, row + 1, 0, ["Warnung", cautions]));
}

/** A sheet for the class: what a group weighs, what the store hands out for all. */
function uebung(kit: Kit, made: MadeRecipe, index: number): MarkedRecipe {
  const sheet = addSheet(kit.marked.book, `Übung ${index + 1}`);
  putRow(sheet, 0, 0, [`Übung ${index + 1}`, made.title]);
  const groups = putRow(sheet, 1, 0, ["Gruppen", kit.random.pick([4, 5, 6])])[1]!;
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Lebensmittel", "je Gruppe (g)", "Ausgabe (g)", "Platz"],
      cells: (item, grams) => [item, grams],
    },
  );
  const all = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [groups] },
    content: (spot) => `=${a1(spot)}*${fixed(groups)}`,
  });
  const places = ["Waage A", "Waage B", "Waage C"];
  for (const { row } of names) put(sheet, row, 3, kit.random.pick(places));
  put(sheet, end, 0, "Gesamtgewicht");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  sumOf(kit, sheet, { row: end, column: 2 }, all, "0");
  const cells = { names, amounts, unit: "g", amountLabel: heads[1]!, total } as const;
  const recipe = markRecipe(kit, made, { ...cells, alsoAmounts: all });
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Lernziel, die Masse wird" });
  hinweise(sheet, recipe, next + 2);
  return recipe;
}

/** What is made on which day. */
function plan(kit: Kit, recipes: readonly MarkedRecipe[]): void {
  const sheet = addSheet(kit.marked.book, "Kursplan");
  put(sheet, 0, 0, "Grundkurs Gefrorenes, drei Nachmittage");
  const heads = putRow(sheet, 2, 0, ["Blatt", "Rezept", "Tag", "Gefrierpunkt (°C)"]);
  const days = ["Dienstag", "Mittwoch", "Donnerstag"];
  recipes.forEach((recipe, index) => {
    const [name, row] = [`Übung ${index + 1}`, 3 + index];
    putRow(sheet, row, 0, [name, recipe.made.title, days[index]]);
    const call = `'${name}'!${span(recipe.names)},'${name}'!${span(recipe.amounts)}`;
    const plan = { states: "freezing point", as: "formula", format: "0.0" } as const;
    resultAt(sheet, recipe, heads[3]!, { row, column: 3 }, plan, () => call);
  });
  const cold = readings(kit, 3, [-34, -28]);
  const { heads: headings, columns } = table(
    sheet,
    { row: 9, column: 0 },
    ["Schockfroster", "Kerntemperatur nach 90 min (°C)", "Luft (°C)"],
    days.map((day, index) => [day, shown(-18 - index / 2, "0.0"), cold[index]]),
  );
  for (const at of [1, 2]) numbersUnder(kit, headings[at]!, columns[at]!, "temperature");
  note(kit, sheet, 14, 0, "Schürzen und Hauben liegen im Spind 3.");
}

/** What is worked out at the board before. */
function tafel(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Tafel");
  put(sheet, 0, 0, "Warum Gelöstes den Gefrierpunkt senkt, ein Beispiel");
  solution(kit, sheet, {
    ...{ top: 2, left: 0, count: 2 },
    headings: ["Stoff", "Masse (g)", "molare Masse (g/mol)", "Teilchenzahl i", "Teilchen (mol)"],
    words: {
      water: ["Wasser im Topf (g)", "Wasser im Topf"],
      constant: "kryoskopische Konstante (K·kg/mol)",
      depression: "Gefrierpunkt sinkt um (K)",
      freezingPoint: "gefriert bei (°C)",
      proviso: (gap) => `Gilt für verdünnte, ideale Lösungen; hier auf ${gap} K genau.`,
    },
  });
}

function kochschule(kit: Kit): void {
  const words = { Zucker: "Zucker fein", Salz: "Tafelsalz", Eigelb: "Eidotter" };
  const recipes = kit.make(3).map((made, index) => uebung(kit, called(made, words), index));
  plan(kit, recipes);
  tafel(kit);
}

/** A cookery school with its sheets. */
export const kochschulen: readonly Layout[] = [
  { name: "Kochschule, drei Übungsblätter und ein Kursplan", language: "de", build: kochschule },
];
