import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { costsUnder, labelled, numbersUnder, pricesOf, readings, table } from "./words";

const VOICE: Voice = {
  lead: "Aufs Etikett: enthält",
  honey: "Mit Honig, nicht für Babys unter 12 Monaten.",
  alcohol: "Mit Alkohol, nicht für Kinder, Schwangere und alle, die noch fahren.",
  nuts: "Ganze Nüsse, Kinder unter 5 Jahren können daran ersticken.",
  egg: "Rohes Eigelb: Masse bis 71 °C erhitzen, sonst pasteurisiertes Eigelb kaufen.",
};

const HEADS = ["Was", "Menge g", "EUR je kg", "EUR", "% vom Ganzen"];

const said = (made: MadeRecipe): readonly Said[] => [
  { label: "gefriert ab °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser darin, g", states: "water", as: "formula", format: "0" },
  {
    label: "Zucker auf 100 g Wasser, g",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
  ...ofAlcohol(made, "reiner Alkohol, g"),
  {
    label: "vom Wasser gefroren bei −16 °C, %",
    ...{ states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  },
];

interface Block {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
  readonly end: number;
}

/** A list with prices and each line's share of the cost. */
function block(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, left: number): Block {
  const prices = pricesOf(kit, made);
  put(sheet, 2, left, made.title);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: left },
    { heads: HEADS, cells: (item, grams, at) => [item, grams, shown(prices[at]!, "0.00")] },
  );
  put(sheet, end, left, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: left + 1 }, amounts);
  const plan = { price: left + 2, per: "/1000", totalRow: end };
  const { costs, total: cost } = costsUnder(kit, sheet, heads[3]!, amounts, plan);
  const parts = beside(kit, heads[4]!, costs, {
    ...{ sheet, format: "0.0", fixed: [cost] },
    content: (spot) => `=100*${a1(spot)}/${fixed(cost)}`,
  });
  sumOf(kit, sheet, { row: end, column: left + 4 }, parts, "0.0");
  const cells = { names, amounts, unit: "g", amountLabel: heads[1]!, total } as const;
  return { recipe: markRecipe(kit, made, cells), cost, end };
}

/** From the batch to the cup. */
function becher(sheet: CorpusSheet, { recipe, cost }: Block, row: number, column: number): void {
  const at = (step: number) => ({ row: row + step, column });
  const size = labelled(sheet, at(0), "Becher, g Eis", 120, "0");
  const paper = labelled(sheet, at(1), "Becher und Deckel, EUR", 0.27);
  const formula = `=${a1(cost)}/${a1(recipe.total!)}*${a1(size)}+${a1(paper)}`;
  const each = labelled(sheet, at(2), "Becher kostet uns, EUR", formula);
  const price = labelled(sheet, at(3), "Becher im Laden, EUR", 3.5);
  labelled(sheet, at(4), "bleibt, EUR", `=${a1(price)}-${a1(each)}`);
}

/** What the chest in the shop showed. */
function truhe(kit: Kit, sheet: CorpusSheet): void {
  const rows = ["4.", "11.", "18.", "25."].map((day) => [`${day} Juli`]);
  const [morning, evening] = [readings(kit, 4, [-19, -15]), readings(kit, 4, [-18, -14])];
  const { heads, columns } = table(
    sheet,
    { row: 3, column: 12 },
    ["Truhe", "früh °C", "abends °C"],
    rows.map(([day], index) => [day, morning[index], evening[index]]),
  );
  for (const at of [1, 2]) numbersUnder(kit, heads[at]!, columns[at]!, "temperature");
  const hours = [
    ["Mi bis Fr", "9 bis 18 Uhr"],
    ["Sa", "8 bis 13 Uhr"],
  ];
  table(sheet, { row: 10, column: 12 }, ["Hofladen", "offen"], hours);
}

/** Two flavours side by side, the cup under each. */
function hofladen(kit: Kit): void {
  const words = { Zucker: "Rübenzucker", Wasser: "Leitungswasser", Honig: "Blütenhonig" };
  const mades = kit.make(2).map((made) => called(upTo(made, 3000), words));
  const sheet = addSheet(kit.marked.book, "Eis 2026");
  put(sheet, 0, 0, "Hofladen: unsere zwei Sorten, was sie kosten");
  const blocks = mades.map((made, index) => block(kit, sheet, made, 6 * index));
  const row = Math.max(...blocks.map(({ end }) => end)) + 2;
  blocks.forEach((each, index) => {
    const column = 6 * index;
    becher(sheet, each, row, column);
    const next = say(sheet, each.recipe, { row: row + 6, column }, said(each.recipe.made));
    nameTarget(sheet, each.recipe, { row: next, column, label: "soll sein" });
    tellIn(sheet, each.recipe, { row: row + 13, column }, VOICE);
  });
  truhe(kit, sheet);
  putRow(sheet, row + 15, 0, ["Preise vom", "Frühjahr"]);
  note(kit, sheet, row + 16, 0, "Deckel werden knapp, beim nächsten Mal 500 Stück.");
}

/** A farm shop that sells its own ice. */
export const hoflaeden: readonly Layout[] = [
  { name: "Hofladen, zwei Sorten nebeneinander mit Becherpreis", language: "de", build: hofladen },
];
