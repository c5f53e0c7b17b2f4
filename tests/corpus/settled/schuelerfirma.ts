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
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { answer } from "../layouts/marking";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import type { ResultPlan } from "../results";
import { isAlcoholic, madeOf, temperatures, upTo } from "../strollers/words";
import { stimme } from "./stimme";
import { halfDegrees, pricesOf, table } from "./words";

const OWN = {
  ...{ Zucker: "Haushaltszucker", Wasser: "Leitungswasser", Banane: "Banane ohne Schale" },
  Süßkirschen: "Süßkirschen, entsteint",
};

interface Einkauf {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
}

/** The shopping list: what, how much, at what price, and who brings it. */
function einkauf(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): Einkauf {
  const prices = pricesOf(kit, made);
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["bringt mit", "Was?", "Wie viel? (g)", "Preis für 1 kg (€)", "macht (€)"],
      cells: (name, grams, index) => [
        ...[kit.random.pick(["7a", "7b", "Lehrkraft"]), name, grams],
        shown(prices[index]!, "0.00"),
      ],
      ...{ name: 1, amount: 2 },
    },
  );
  const { heads, names, amounts, end } = list;
  const costs = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 3 })}/1000`,
  });
  put(sheet, end, 1, "Alles zusammen");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const cells = { names, amounts, total, amountLabel: heads[2]!, unit: "g" } as const;
  return { recipe: markRecipe(kit, made, cells), cost };
}

/** What a pop costs and what is left over. */
function kasse(kit: Kit, sheet: CorpusSheet, { recipe, cost }: Einkauf): void {
  const row = recipe.total!.row + 2;
  const form = input(
    kit,
    sheet,
    { row, column: 1 },
    {
      ...{ label: "In eine Form passen (g)", bare: "In eine Form passen", value: 65 },
    },
  );
  const money = (step: number, label: string, value: number): Spot =>
    putRow(sheet, row + step, 1, [label, shown(value, "0.00")])[1]!;
  const stiel = money(1, "Stiel und Tüte je Eis (€)", 0.06);
  const preis = money(2, "Verkauf je Eis (€)", 0.8);
  const line = (step: number, label: string, formula: string, format: string): Spot =>
    putRow(sheet, row + step, 1, [label, shown(formula, format)])[1]!;
  const stueck = line(3, "Stieleis aus dem Topf", `=${a1(recipe.total!)}/${fixed(form)}`, "0.0");
  const jedes = `=${a1(cost)}/${a1(stueck)}+${fixed(stiel)}`;
  const kosten = line(4, "Kosten je Eis (€)", jedes, "0.00");
  line(5, "bleibt in der Kasse (€)", `=(${fixed(preis)}-${a1(kosten)})*${a1(stueck)}`, "0.00");
}

/** What was asked, and how it is answered. */
const FRAGEN: readonly (readonly [string, ResultPlan])[] = [
  [
    "Bei wie viel °C fängt es an zu gefrieren? Gefrierpunkt (°C)",
    { states: "freezing point", as: "typed", decimals: 1 },
  ],
  ["Um wie viel liegt das unter Wasser? Erniedrigung (K)", { states: "depression", as: "formula" }],
  ["Wie viel Wasser ist darin? (g)", { states: "water", as: "formula", format: "0" }],
  [
    "Wie viel Zucker kommt auf 100 g Wasser? (g)",
    { states: "sugar per 100 g water", as: "typed", decimals: 1 },
  ],
  [
    "Wie viel vom Wasser ist bei −18 °C gefroren? (%)",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

/** The answers on a sheet of their own. */
function antworten(kit: Kit, recipe: MarkedRecipe): void {
  const sheet = addSheet(kit.marked.book, "Physik-AG");
  put(sheet, 0, 0, "Was die Physik-AG dazu ausgerechnet hat");
  const lines = `Einkauf!${span(recipe.names)},Einkauf!${span(recipe.amounts)}`;
  let row = 2;
  for (const [words, plan] of FRAGEN) {
    if (answer(sheet, recipe, [words, row, 0], [row, 1], plan, lines)) row += 1;
  }
  nameTarget(sheet, recipe, { row, column: 0, label: "Was soll es werden?" });
  const tage = ["Di 1. Pause", "Di 2. Pause", "Do 1. Pause", "Do 2. Pause"];
  const rows = tage.map((tag) => [tag, kit.random.whole(6, 25), halfDegrees(kit, -19, -15)]);
  const heads = ["Pause", "verkauft (Stück)", "Gefrierfach (°C)"];
  const list = table(sheet, { row: row + 2, column: 0 }, heads, rows);
  put(sheet, list.end, 0, "Woche");
  sumOf(kit, sheet, { row: list.end, column: 1 }, columnOf(list.rows, 1));
  temperatures(kit, list.heads[2]!, columnOf(list.rows, 2));
  note(kit, sheet, list.end + 2, 0, "Bei Regen wird nur in der Aula verkauft.");
}

/** One ice, its shopping, the till and the physics. */
function firma(kit: Kit): void {
  const made = called(upTo(madeOf(kit, 1, (each) => !isAlcoholic(each))[0]!, 2500), OWN);
  const sheet = addSheet(kit.marked.book, "Einkauf");
  put(sheet, 0, 0, `Schülerfirma Pausenfrost: ${made.title}`);
  const liste = einkauf(kit, sheet, made);
  kasse(kit, sheet, liste);
  const next = liste.recipe.total!.row + 9;
  tellIn(sheet, liste.recipe, { row: next, column: 1 }, stimme("Auf das Plakat: enthält"));
  antworten(kit, liste.recipe);
}

/** A pupils' company that sells ice pops. */
export const schuelerfirmen: readonly Layout[] = [
  { name: "Schülerfirma, Einkauf und Antworten der Physik-AG", language: "de", build: firma },
];
