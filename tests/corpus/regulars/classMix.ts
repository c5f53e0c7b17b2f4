import { addSheet, fixed, put, putRow, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { alcoholIn, beside, temperatures } from "../visitors/lines";

const CALLED = { Zucker: "Haushaltszucker", Salz: "Speisesalz", Wasser: "Leitungswasser" };

/** How much a group makes, and how many groups there are. */
function sizes(kit: Kit, sheet: CorpusSheet): [Spot, Spot] {
  const value = kit.random.pick([600, 750, 1200]);
  const words = { label: "Mix für eine Gruppe (g)", bare: "Mix für eine Gruppe", value };
  const group = input(kit, sheet, { row: 1, column: 0 }, words);
  return [group, putRow(sheet, 2, 0, ["Anzahl Gruppen", kit.random.whole(4, 7)])[1]!];
}

const HEADS = ["Rohstoff", "1 kg Mix (g)", "Eine Gruppe (g)", "Ganze Klasse (g)", "abgewogen ✓"];

/** A kilogram of mix with what a group and the whole class weigh in. */
function weighing(kit: Kit, sheet: CorpusSheet): MarkedRecipe {
  const made = called(perKilogram(kit.make(1)[0]!), CALLED);
  put(sheet, 0, 0, `Praxistag Speiseeis: ${made.title}`);
  const [group, groups] = sizes(kit, sheet);
  const heads = putRow(sheet, 4, 0, HEADS);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 5 + index, 0, [name, made.grams[index]]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const one = { column: 2, heading: heads[2]!, fixed: [group], format: "0" };
  const ofGroup = beside(kit, amounts, one, (amount) => `=${amount}*${fixed(group)}/1000`);
  const every = { column: 3, heading: heads[3]!, fixed: [groups], format: "0" };
  const ofClass = beside(kit, ofGroup, every, (amount) => `=${amount}*${fixed(groups)}`);
  const row = 5 + rows.length;
  put(sheet, row, 0, "Gesamt");
  const [total] = [amounts, ofGroup, ofClass].map((parts, index) =>
    sumOf(kit, sheet, { row, column: 1 + index }, parts, "0"),
  );
  const alsoAmounts = [...ofGroup, ...ofClass];
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "g", amountLabel: heads[1]!, total: total! },
  });
}

/** What the class's freezers show, read by two pupils. */
function freezers(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Froster");
  const heads = putRow(sheet, 0, 0, ["Gerät", "vor dem Unterricht (°C)", "danach (°C)", "Wer"]);
  const readers = ["Gruppe 1", "Gruppe 2", "Gruppe 3", "Gruppe 4", "Lehrkraft"];
  readers.forEach((who, index) => {
    put(sheet, 1 + index, 0, `Froster ${index + 1}`);
    put(sheet, 1 + index, 3, who);
  });
  const count = readers.length;
  temperatures(kit, sheet, { heading: heads[1]!, count }, [-22, -19]);
  temperatures(kit, sheet, { heading: heads[2]!, count }, [-18, -14]);
}

/** What the class is to find out of the mix. */
const solutions = (made: MadeRecipe, temperature: Spot, temperatureC: number): Said[] => [
  { label: "Der Mix gefriert ab (°C)", states: "freezing point", as: "formula" },
  { label: "Erniedrigung des Gefrierpunkts (K)", states: "depression", as: "formula" },
  {
    label: "Ausgefrorenes Wasser in der Vitrine (% des Wassers)",
    ...{ states: "ice of water", as: "formula", temperature, temperatureC, format: "0.0" },
  },
  { label: "Wasser in 1 kg Mix (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Gelöste Stoffe in 1 kg Mix (g)", states: "dissolved", as: "typed", decimals: 0 },
  ...alcoholIn(made, {
    ...{ label: "Reiner Alkohol in 1 kg Mix (g)", states: "alcohol", as: "typed", decimals: 1 },
  }),
];

/** The practical day with its solution for the teacher. */
export function classMix(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Praxistag");
  const recipe = weighing(kit, sheet);
  const place = { row: recipe.total!.row + 2, column: 0 };
  const value = kit.random.pick([-12, -14, -16]);
  const words = { label: "Verkaufsvitrine (°C)", bare: "Verkaufsvitrine", value };
  const cabinet = input(kit, sheet, place, words);
  const list = solutions(recipe.made, cabinet, value);
  let next = say(sheet, recipe, { row: place.row + 1, column: 0 }, list);
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "Gewünschte Beschaffenheit" });
  next = tell(kit, sheet, recipe, { row: next + 1, column: 0, as: "pair" });
  note(kit, sheet, next + 1, 0, "Haube und Schürze nicht vergessen, Tische nachher desinfizieren.");
  freezers(kit);
}
