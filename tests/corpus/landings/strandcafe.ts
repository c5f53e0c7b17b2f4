import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, strip } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { ofAlcohol, upTo } from "../strollers/words";
import { downward, kiloPrice, readings } from "./words";

const VOICE: Voice = {
  lead: "Aushang: enthält",
  honey: "Mit Honig, nicht für Babys unter 12 Monaten.",
  alcohol: "Mit Alkohol, nicht an Kinder, nicht an Schwangere, nicht vor der Heimfahrt.",
  nuts: "Nüsse im Ganzen, Erstickungsgefahr für Kinder unter 5.",
  egg: "Eigelb roh: Masse auf 71 °C bringen oder pasteurisiertes kaufen.",
};

const BESIDE: readonly Said[] = [
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Wasser in allem (g)", states: "water", as: "typed", decimals: 0 },
  { label: "gelöst (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "Eis in der Theke bei −13 °C (% der Masse)", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -13, decimals: 0 },
  },
];

interface Bucket {
  readonly recipe: MarkedRecipe;
  readonly total: Spot;
  readonly cost: Spot;
}

const WORDS = {
  Zucker: "Haushaltszucker",
  Wasser: "Leitungswasser",
  "Sahne 35 %": "Schlagsahne 35 %",
};

/** What goes into the bucket, in kilograms. */
function bucket(kit: Kit, sheet: CorpusSheet): Bucket {
  const made = called(upTo(kit.make(1)[0]!, 5000), WORDS);
  put(sheet, 0, 0, `${made.title}, ein Eimer`);
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Pos.", "Ware", "Menge", undefined, "EK €/kg", "€ netto"],
      cells: (item, grams, at) => [
        ...[at + 1, item, shown(inUnit(grams, "kg"), "0.000"), "kg"],
        shown(kiloPrice(kit, made.lines[at]!.en), "0.00"),
      ],
      ...{ name: 1, amount: 2 },
    },
  );
  const { heads, rows, names, amounts, end } = list;
  const costs = beside(kit, heads[5]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 4 })}`,
  });
  put(sheet, end, 1, "Eimer gesamt");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.000");
  put(sheet, end, 3, "kg");
  const cost = sumOf(kit, sheet, { row: end, column: 5 }, costs, "0.00");
  const cells = { names, amounts, unitCells: columnOf(rows, 3), total } as const;
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heads[2]!, unit: "kg" });
  return { recipe, total, cost };
}

/** What a scoop costs and brings. */
function kugel(kit: Kit, sheet: CorpusSheet, { total, cost }: Bucket, row: number): void {
  const { random } = kit;
  const weight = input(
    kit,
    sheet,
    { row, column: 1 },
    {
      ...{ label: "Kugel (g)", bare: "Kugel", value: random.pick([60, 70, 75]) },
    },
  );
  const line = (step: number, label: string, content: number | string, format: string): Spot =>
    putRow(sheet, row + step, 1, [label, shown(content, format)])[1]!;
  const grams = line(1, "Eimer in g", `=${a1(total)}*1000`, "0");
  const count = line(2, "Kugeln", `=${a1(grams)}/${a1(weight)}`, "0");
  const waffle = line(3, "Waffel und Serviette (€)", random.whole(6, 14) / 100, "0.00");
  const each = line(
    4,
    "Wareneinsatz je Kugel (€)",
    `=${a1(cost)}/${a1(count)}+${a1(waffle)}`,
    "0.00",
  );
  const price = line(5, "Preis an der Tafel (€)", random.pick([1.6, 1.8, 2]), "0.00");
  line(6, "Wareneinsatz vom Preis", `=${a1(each)}/${a1(price)}`, "0%");
}

const TIMES = ["Mo Ruhetag", "Di bis Fr 12 bis 19 Uhr", "Sa 10 bis 20 Uhr", "So 10 bis 20 Uhr"];

/** A bucket of ice and the scoop from it. */
function strandcafe(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eimer");
  const made = bucket(kit, sheet);
  const { recipe, total } = made;
  kugel(kit, sheet, made, total.row + 2);
  say(sheet, recipe, { row: 2, column: 7 }, [
    ...BESIDE,
    ...ofAlcohol(recipe.made, "reiner Alkohol im Eimer (g)"),
  ]);
  nameTarget(sheet, recipe, { row: 8, column: 7, label: "wird verkauft als" });
  const next = tellIn(sheet, recipe, { row: total.row + 10, column: 1 }, VOICE);
  note(kit, sheet, next, 1, "Bei Regen nur den halben Eimer in die Theke stellen.");
  const open = addSheet(kit.marked.book, "Theke und Zeiten");
  put(open, 0, 0, "Saison, offen");
  downward(open, { row: 1, column: 0 }, TIMES);
  putRow(open, 7, 0, ["Theke abgelesen"]);
  downward(open, { row: 8, column: 0 }, ["früh", "mittags", "Ladenschluss"]);
  readings(kit, open, { row: 7, column: 1 }, { heading: "°C", count: 3, from: -15, to: -12 });
  const facts: readonly Said[] = [
    { label: "Zucker in der Masse (%)", states: "sugar share", as: "typed", decimals: 1 },
    {
      ...{ label: "Zucker je 100 g Wasser (g)", states: "sugar per 100 g water" },
      ...{ as: "typed", decimals: 1 },
    },
  ];
  strip(sheet, recipe, { row: 10, column: 7 }, facts);
}

/** A café at a lake. */
export const strandcafes: readonly Layout[] = [
  { name: "Strandcafé, ein Eimer und die Kugel daraus", language: "de", build: strandcafe },
];
