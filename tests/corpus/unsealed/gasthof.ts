import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { fact, shopping } from "../counters/words";

const VOICE: Voice = {
  lead: "Allergenmappe:",
  honey: "Mit Honig, unter 12 Monaten tabu.",
  alcohol: "Alkoholhaltig, nicht für Kinder, Schwangere und Kraftfahrer.",
  nuts: "Ganze Nüsse, unter 5 Jahren Gefahr des Verschluckens.",
  egg: "Rohes Eigelb: auf 71 °C abziehen oder das pasteurisierte aus dem Tetrapak.",
};

const WORDS = {
  ...{ Eigelb: "Eidotter", Zitronensaft: "Zitronensaft, frisch", Salz: "Speisesalz" },
  ...{ Honig: "Blütenhonig", Walnüsse: "Walnusskerne", Pistazien: "Pistazien, gehackt" },
};

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Erniedrigung", inCell: "K", states: "depression", as: "formula", format: "0.0" },
  { label: "Wasser in 1 kg", inCell: "g", states: "water", as: "formula", format: "0" },
  { label: "davon gelöst in 1 kg", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "gefrorenes Wasser bei −16 °C",
    ...{ inCell: "%", states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  },
];

const SIZES = [1, 2, 2.5, 5, 10];

interface Prices {
  readonly names: string;
  readonly perKg: string;
}

/** What was bought in which pack, and what a kilogram comes to. */
function market(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): Prices {
  put(sheet, 0, 0, "Einkauf, Stand letzte Lieferung");
  const heads = putRow(sheet, 1, 0, ["Artikel", "Gebinde kg", "Gebinde €", "€ je kg"]);
  const rows = shopping(kit, mades).map(({ name, en, price }, index) => {
    const size = /^water|^vodka|salt/.test(en) ? 1 : kit.random.pick(SIZES);
    const pack = shown(Number((price * size).toFixed(2)), "0.00");
    return putRow(sheet, 2 + index, 0, [name, size, pack]);
  });
  const perKg = beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/${a1({ ...spot, column: 1 })}`,
  });
  const range = (spots: readonly Spot[]) => `Einkauf!${absolute(span(spots))}`;
  note(kit, sheet, 3 + rows.length, 0, "Leitungswasser rechnen wir nicht.");
  return { names: range(columnOf(rows, 0)), perKg: range(perKg) };
}

/** What the ice on a plate costs. */
function plate(kit: Kit, sheet: CorpusSheet, row: number, total: Spot, cost: Spot): void {
  const words = { label: "Nocken je Teller (g)", bare: "Nocken je Teller" };
  const value = kit.random.pick([75, 90, 100]);
  const grams = input(kit, sheet, { row, column: 1 }, { ...words, value });
  const share = `=${a1(cost)}/${a1(total)}*${a1(grams)}`;
  fact(sheet, { row: row + 1, column: 1 }, "Ware je Teller (€)", share, "0.00");
}

/** A leaf for a kilogram, the price fetched from the list. */
function leaf(kit: Kit, made: MadeRecipe, index: number, prices: Prices): void {
  const sheet = addSheet(kit.marked.book, `Blatt ${index + 1}`);
  putRow(sheet, 0, 0, ["Rezeptur", made.title]);
  putRow(sheet, 1, 0, ["Küche", kit.random.pick(["Patisserie", "kalte Küche"])]);
  const list = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Pos.", "Zutat", "g auf 1 kg", "€/kg", "€"],
      cells: (name, grams, at) => [at + 1, name, grams],
      ...{ name: 1, amount: 2 },
    },
  );
  const { names, amounts, heads, end } = list;
  beside(kit, heads[3]!, names, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=INDEX(${prices.perKg},MATCH(${a1(spot)},${prices.names},0))`,
  });
  const costs = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 3 })}/1000`,
  });
  put(sheet, end, 1, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, total, unit: "g", amountLabel: heads[2]! },
  });
  plate(kit, sheet, end + 2, total, cost);
  const said = [...SAID, ...ofAlcohol(made, "Alkohol in 1 kg", "g")];
  const next = say(sheet, recipe, { row: end + 5, column: 1 }, said);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Konsistenz" });
  tellIn(sheet, recipe, { row: next + 2, column: 0 }, VOICE);
}

/** Three leaves of an inn, and what it pays its suppliers. */
function gasthof(kit: Kit): void {
  const mades = kit.make(3).map((made) => called(perKilogram(made), WORDS));
  const sheet = addSheet(kit.marked.book, "Einkauf");
  const prices = market(kit, sheet, mades);
  mades.forEach((made, index) => leaf(kit, made, index, prices));
}

/** An inn's kitchen. */
export const gasthoefe: readonly Layout[] = [
  { name: "Gasthof, Rezepturblätter mit Gebindepreisen", language: "de", build: gasthof },
];
