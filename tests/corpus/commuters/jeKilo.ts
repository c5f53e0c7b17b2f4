import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { perKilogram } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { answersDown, placesOf, type Answer } from "../regulars/columns";
import { itemsOf } from "../strollers/words";
import { asked, warnAt } from "./words";

const TOP = 5;

const ANSWERS: readonly Answer[] = [
  ["Wasser (g/kg)", { states: "water", as: "formula", format: "0" }],
  ["gelöste Stoffe (g/kg)", { states: "dissolved", as: "typed", decimals: 0 }],
  ["Gefrierpunktserniedrigung (K)", { states: "depression", as: "formula" }],
  ["Gefrierpunkt (°C)", { states: "freezing point", as: "typed" }],
  ["Zuckeranteil (Massen-%)", { states: "sugar share", as: "typed" }],
  ["ausgefroren bei Lagerung, % des Wassers", { states: "ice of water", as: "formula" }],
  ["Eis bei −12 °C, % der Masse", { states: "ice of mix", as: "typed", temperatureC: -12 }],
];

interface Table {
  readonly items: readonly Spot[];
  readonly batch: Spot;
  readonly store: Spot;
  readonly storeC: number;
}

/** The amounts of a recipe per kilogram, and for the machine's filling beside them. */
function amountsOf(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  column: number,
  { items, batch }: Table,
) {
  put(sheet, TOP - 2, column, made.title);
  const [label, filling] = putRow(sheet, TOP - 1, column, ["g/kg", "Füllung (g)"]) as [Spot, Spot];
  const at = placesOf(sheet, items, made.names);
  const amounts = at.map((item, index) => put(sheet, TOP + item, column, made.grams[index]));
  const all = items.map((spot) => ({ ...spot, column }));
  const fillings = all.map((spot) =>
    put(sheet, spot.row, column + 1, shown(`=${a1(spot)}*${fixed(batch)}`, "0")),
  );
  kit.marked.formulaColumns.push({ spots: fillings, heading: filling, fixed: [batch] });
  const end = TOP + items.length;
  const total = sumOf(kit, sheet, { row: end, column }, all);
  sumOf(kit, sheet, { row: end, column: column + 1 }, fillings, "0");
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((item) => items[item]!), amounts, unit: "g", amountLabel: label, total },
    ...{ alsoAmounts: at.map((item) => fillings[item]!), shared: true },
  });
  return { recipe, all, end };
}

/** One mix down its columns, what it is like under it. */
function mix(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, table: Table): void {
  const { recipe, all, end } = amountsOf(kit, sheet, made, column, table);
  const cells = `${absolute(span(table.items))},${span(all)}`;
  const list = ANSWERS.map(([label, plan]): Answer => {
    const isStored = plan.states === "ice of water";
    const { store: temperature, storeC: temperatureC } = table;
    return [label, isStored ? { ...plan, temperature, temperatureC, format: "0.0" } : plan];
  });
  answersDown(sheet, recipe, list, { row: end + 2, column, labels: 0 }, cells);
  const dry = `=${a1(recipe.total!)}-${a1({ ...recipe.total!, row: end + 2 })}`;
  const row = end + 2 + ANSWERS.length;
  put(sheet, row, column, shown(dry, "0"));
  nameTarget(sheet, recipe, { row: row + 1, column });
  warnAt(sheet, recipe, { row: row + 2, column }, "enthält");
}

/** Three mixes in grams for each kilogram. */
function jeKilo(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Rezepturstand");
  put(sheet, 0, 0, "Rezepturstand Speiseeis, Abteilung Entwicklung, Angaben je kg Mischung");
  const batch = asked(kit, sheet, [1, 0], ["Füllung der Maschine", "kg", random.pick([3, 4, 6])]);
  const storeC = -random.whole(18, 22);
  const store = asked(kit, sheet, [2, 0], ["Lagerung", "°C", storeC]);
  const mades = kit.make(3).map(perKilogram);
  put(sheet, TOP - 1, 0, "Rohstoff");
  const items = itemsOf(mades).map((item, index) => put(sheet, TOP + index, 0, item));
  const end = TOP + items.length;
  put(sheet, end, 0, "Kontrolle");
  ANSWERS.forEach(([label], index) => put(sheet, end + 2 + index, 0, label));
  const row = end + 2 + ANSWERS.length;
  ["alles außer Wasser (g/kg)", "Zielsorte", "Kennzeichnung"].forEach((label, index) =>
    put(sheet, row + index, 0, label),
  );
  const table = { items, batch, store, storeC };
  mades.forEach((made, index) => mix(kit, sheet, made, 1 + 2 * index, table));
  note(kit, sheet, row + 4, 0, "Freigabe erst nach Lagertest über vier Wochen.");
}

/** A developer of foods. */
export const jeKilos: readonly Layout[] = [
  { name: "Entwicklung, Gramm je Kilo in Spalten", language: "de", build: jeKilo },
];
