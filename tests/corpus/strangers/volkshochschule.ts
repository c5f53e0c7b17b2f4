import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, type Place, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { choose, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { hasAlcohol } from "./etikett";
import { beside, lines, under } from "./zeilen";

const LABELS = [
  ...["Wir lösen", "Menge (g)", "in Wasser (g)", "Molmasse (g/mol)", "Teilchen (i)"],
  ...["Kf von Wasser (K·kg/mol)", "Molalität (mol/kg)", "sinkt um (K)", "gefriert bei (°C)"],
];

interface Example {
  readonly solute: Dissolved;
  readonly grams: number;
  readonly waterGrams: number;
}

/** One example down its column. */
function example(kit: Kit, place: Place, { solute, grams, waterGrams }: Example, proviso: Spot) {
  const sheet = kit.marked.book.sheets[0]!;
  const at = (step: number, content: number | string, format?: string): Spot => {
    const typed = format === undefined ? content : shown(content, format);
    return put(sheet, place.row + step, place.column, typed);
  };
  const [name, mass, water] = [at(1, solute.de), at(2, grams), at(3, waterGrams)];
  const [molar, particles] = [at(4, solute.molarMass, "0.00"), at(5, solute.particles)];
  const constant = at(6, 1.86, "0.00");
  const b = at(7, `=${a1(mass)}/${a1(molar)}*1000/${a1(water)}`, "0.000");
  const depression = at(8, `=${a1(b)}*${a1(constant)}*${a1(particles)}`, "0.00");
  const freezingPoint = at(9, `=-1*${a1(depression)}`, "0.00");
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [b], water, constant, depression, freezingPoint, proviso },
  });
}

/** The calculation beside the recipe, two examples beside each other. */
function examples(kit: Kit, { row, column }: Place): void {
  const { marked, random } = kit;
  const sheet = marked.book.sheets[0]!;
  put(sheet, row, column, "Zum Nachrechnen");
  LABELS.forEach((label, index) => put(sheet, row + 1 + index, column, label));
  const waterGrams = random.pick([500, 1000]);
  const list = choose(random, 2).map((solute) => {
    return { solute, waterGrams, grams: gramsOf(random, solute, waterGrams) };
  });
  const gaps = list.map(({ solute, grams }) => idealGap([solute], [grams], waterGrams));
  const gap = tolerated(Math.max(...gaps)).replace(".", ",");
  const text = `Faustrechnung, stimmt nur auf ${gap} K genau.`;
  const proviso = put(sheet, row + 11, column, text);
  list.forEach((each, index) => example(kit, { row, column: column + 1 + index }, each, proviso));
}

const ALCOHOL_IN_IT: Said = {
  ...{ label: "reiner Alkohol je Tisch (g)", states: "alcohol", as: "typed", decimals: 1 },
};

const said = (made: MadeRecipe): Said[] => [
  { label: "Gefrierpunkt unserer Masse (°C)", states: "freezing point", as: "formula" },
  { label: "Wasser je Tisch (g)", states: "water", as: "formula", format: "0" },
  ...(hasAlcohol(made) ? [ALCOHOL_IN_IT] : []),
  { label: "gelöste Stoffe je Tisch (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "Gramm Zucker auf 100 g Wasser", states: "sugar per 100 g water" },
    ...{ as: "typed", decimals: 1 },
  },
  {
    label: "gefrorener Anteil des Wassers bei −18 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** The evening's recipe for one table and for all of them. */
function forTables(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const [, tables] = putRow(sheet, 2, 0, ["Zahl der Tische", kit.random.whole(3, 6)]);
  const heads = putRow(sheet, 4, 0, ["Wir brauchen", "je Tisch (g)", "Einkauf für alle (g)"]);
  const cells = lines(sheet, { row: 5, column: 0 }, made, (name, grams) => [name, grams]);
  const [names, amounts] = cells as [Spot[], Spot[]];
  const formula = (cell: string) => `=${cell}*${fixed(tables!)}`;
  const alsoAmounts = beside(kit, amounts, { heading: heads[2]!, formula, fixed: [tables!] });
  const total = under(kit, amounts);
  put(sheet, total.row, 0, "Summe");
  under(kit, alsoAmounts);
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "g", amountLabel: heads[1]!, total },
  });
}

/** The recipe at the left, an example to calculate at the right. */
function evening(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Kurs Speiseeis");
  const made = kit.make(1)[0]!;
  put(sheet, 0, 0, `Eis selber machen, heute: ${made.title}`);
  const recipe = forTables(kit, sheet, made);
  examples(kit, { row: 4, column: 4 });
  const below = { row: Math.max(recipe.total!.row, 15) + 2, column: 0 };
  let next = say(sheet, recipe, below, said(made));
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "So soll es werden" });
  next = tell(kit, sheet, recipe, { row: next + 1, column: 0, as: "sentence" });
  note(kit, sheet, next + 1, 0, "Bitte Dosen mit Deckel zum Mitnehmen dabeihaben.");
}

/** Sheets of an evening class. */
export const volkshochschule: readonly Layout[] = [
  { name: "Volkshochschule, Rezept und Rechnung", language: "de", build: evening },
];
