import { a1, addSheet, put, putRow, shown, span, type CorpusSheet } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import type { MadeRecipe } from "../recipes";
import { ownTable } from "./labels";
import { answer, formulas, markRecipe, sumAt, tellAll } from "./marking";

/** No wine among them: its sulphites would have to be told, too, and the sheet tells only of alcohol. */
interface Pour {
  readonly sold: string;
  readonly drink: string;
  readonly abv: number;
}

const GERMAN: readonly Pour[] = [
  { sold: "Granita Limette", drink: "Wodka 37,5 %", abv: 37.5 },
  { sold: "Eis am Stiel Kirsche", drink: "Rum 40 %", abv: 40 },
  { sold: "Granita Kaffee", drink: "Likör 25 %", abv: 25 },
  { sold: "Becher Pfirsich", drink: "Minzlikör", abv: 36 },
  { sold: "Eis am Stiel Birne", drink: "Spirituose 40 % vol", abv: 40 },
];

/** Cups with a spirit in them, the alcohol of a batch and of a cup. */
function pours(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Bar");
  put(sheet, 0, 0, "Marktstand Samstag: Becher mit Schuss");
  const heads = putRow(sheet, 2, 0, [
    ...["Verkauft als", "Preis (€)", "Becher je Ansatz", "Getränk", "% vol"],
    ...["Einsatz (g)", "Alkohol (g)", "Alkohol je Becher (g)"],
  ]);
  const rows = GERMAN.map(({ sold, drink, abv }, index) => {
    const [price, cups] = [shown(random.whole(6, 11) / 2, "0.00"), random.whole(10, 24)];
    const grams = random.whole(8, 40) * 10;
    return putRow(sheet, 3 + index, 0, [sold, price, cups, drink, abv, grams]);
  });
  const pure = rows.map(([, , , , abv, grams]) =>
    shown(`=${a1(grams!)}*RIME.ABVTOMASSFRACTION(${a1(abv!)})`, "0.0"),
  );
  const alcohols = formulas(kit, heads[6]!, pure, { sheet, at: [3, 6] });
  const each = alcohols.map((alcohol, index) =>
    shown(`=${a1(alcohol)}/${a1(rows[index]![2]!)}`, "0.0"),
  );
  formulas(kit, heads[7]!, each, { sheet, at: [3, 7] });
  rows.forEach(([, , , , abv, grams], index) =>
    marked.alcohols.push({ grams: grams!, abv: abv!, alcohol: alcohols[index]! }),
  );
  put(sheet, 8, 0, "Alkohol im Ganzen");
  sumAt(kit, sheet, [8, 6], alcohols, "0.0");
  const caution = "Alles mit Alkohol: ab 18, nicht für Schwangere und wer noch fährt.";
  note(kit, sheet, 10, 0, caution);
}

/** The batch that the stall brings, its amounts before its names, its answers above. */
function stallBatch(kit: Kit): void {
  const [made] = kit.make(1);
  const sheet = addSheet(kit.marked.book, "Ansatz Stand");
  put(sheet, 0, 1, made!.title);
  const heads = putRow(sheet, 6, 1, ["Gramm", undefined, "Zutat", "Bemerkung"]);
  const amounts = made!.grams.map((grams, index) => put(sheet, 7 + index, 1, grams));
  const names = made!.names.map((name, index) => put(sheet, 7 + index, 3, name));
  const total = sumAt(kit, sheet, [7 + names.length, 1], amounts);
  put(sheet, total.row, 3, "Summe");
  const recipe = markRecipe(kit, made!, { names, amounts, total, amountLabel: heads[0]! });
  const typed = { as: "typed", decimals: 1 } as const;
  const answers = [
    ["Gefrierpunkt (°C)", { ...typed, states: "freezing point" }],
    ["Reiner Alkohol (g)", { ...typed, states: "alcohol" }],
    ["Eis in der Masse bei −12 °C (%)", { ...typed, states: "ice of mix", temperatureC: -12 }],
  ] as const;
  answers.forEach(([label, plan], index) =>
    answer(sheet, recipe, [label, 2 + index, 3], [2 + index, 1], plan),
  );
  tellAll(sheet, [recipe], [total.row + 2, 1]);
  put(sheet, 7, 4, "gut gekühlt");
}

/** One thing the stall sells: answers and price at the left, its lines at the right. */
function section(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  put(sheet, top, 0, made.title);
  const heads = putRow(sheet, top, 3, ["g", "goes in", "allergens"]);
  const amounts = made.grams.map((grams, index) => put(sheet, top + 1 + index, 3, grams));
  const names = made.names.map((name, index) => put(sheet, top + 1 + index, 4, name));
  const end = top + 1 + names.length;
  const total = sumAt(kit, sheet, [end, 3], amounts);
  put(sheet, end, 4, "total");
  const recipe = markRecipe(kit, made, { names, amounts, total, amountLabel: heads[0]! });
  if (made.flagged) {
    const cells = made.lines.map(({ allergen }, index) =>
      put(sheet, top + 1 + index, 5, allergen?.en),
    );
    recipe.flags.push(...cells);
  }
  const freezing = { states: "freezing point", as: "formula", format: "0.0" } as const;
  answer(sheet, recipe, ["Freezing point (°C)", top + 1, 0], [top + 1, 1], freezing);
  const frozen = { states: "ice of water", as: "typed", temperatureC: -15 } as const;
  answer(sheet, recipe, ["Water frozen at −15 °C (%)", top + 2, 0], [top + 2, 1], frozen);
  putRow(sheet, top + 3, 0, ["Sells at (EUR)", shown(kit.random.whole(4, 9) / 2, "0.00")]);
  const alcohol = { states: "alcohol", as: "typed", decimals: 1 } as const;
  answer(sheet, recipe, ["Alcohol in the batch (g)", top + 4, 0], [top + 4, 1], alcohol);
  nameTarget(sheet, recipe, { row: top + 5, column: 0, label: "Kept as" });
  tellAll(sheet, [recipe], [Math.max(end, top + 6) + 1, 0]);
  return Math.max(end, top + 6) + 4;
}

/** What a stall sells, and what it buys in. */
function stall(kit: Kit): void {
  const { book } = kit.marked;
  const sheet = addSheet(book, "Stall");
  let top = 0;
  for (const made of kit.make(3)) top = section(kit, sheet, made, top);
  const bought = addSheet(book, "Bought in");
  const table = ownTable(kit, bought, [0, 3], ["elder cordial", "rose syrup base"]);
  putRow(bought, 0, 0, ["Pop filling", "g"]);
  const lines = (["elder cordial", "water", "lemon juice"] as const).map((name, index) =>
    putRow(bought, 1 + index, 0, [name, kit.random.whole(2, 9) * 20]),
  );
  const [names, grams] = [0, 1].map((at) => span(lines.map((each) => each[at]!)));
  const call = shown(`=RIME.DEPRESSION(${names},${grams},${table})`, "0.00");
  putRow(bought, 5, 0, ["Freezing-point depression (K)", call]);
  note(kit, bought, 7, 0, "Ask for the data sheet of every new lot.");
}

/** Market stalls. */
export const stalls: readonly Layout[] = [
  {
    ...{ name: "Barliste vom Marktstand", language: "de" },
    build: (kit) => {
      pours(kit);
      stallBatch(kit);
    },
  },
  { name: "market stall, answers left of the lines", language: "en", build: stall },
];
