import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { fact, paid, readings } from "../counters/words";

const VOICE: Voice = {
  lead: "Aushang Theke:",
  honey: "Honig drin, nicht für Babys unter 12 Monaten.",
  alcohol: "Alkohol drin, nicht an Kinder, Schwangere oder Fahrer ausgeben.",
  nuts: "Ganze Nüsse, Erstickungsgefahr für Kinder unter 5 Jahren.",
  egg: "Rohes Eigelb, auf 71 °C bringen oder pasteurisiert kaufen.",
};

const WORDS = {
  ...{ Zucker: "Kristallzucker", Wasser: "Leitungswasser", Vollmilch: "Vollmilch 3,5 %" },
  ...{ "Sahne 35 %": "Schlagsahne 35 %", Himbeeren: "Himbeeren TK", Mango: "Mangopüree" },
};

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt °C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Gesamtwasser g", states: "water", as: "formula", format: "0" },
  {
    label: "Wasser gefroren bei −13 °C in %",
    ...{ states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 },
  },
  {
    label: "Eis in der Masse bei −13 °C in %",
    ...{ states: "ice of mix", as: "typed", temperatureC: -13, decimals: 0 },
  },
];

/** What a scoop costs and what is asked for it. */
function scoop(kit: Kit, sheet: CorpusSheet, row: number, total: Spot, cost: Spot): void {
  const { random } = kit;
  const at = (step: number) => ({ row: row + step, column: 1 });
  const weight = input(kit, sheet, at(0), {
    ...{ label: "Kugel (g)", bare: "Kugel", value: random.pick([55, 60, 70]) },
  });
  const count = fact(sheet, at(1), "Kugeln je Ansatz", `=${a1(total)}/${a1(weight)}`, "0");
  const goods = fact(sheet, at(2), "Ware je Kugel (€)", `=${a1(cost)}/${a1(count)}`, "0.00");
  const cone = fact(sheet, at(3), "Waffel, Serviette (€)", random.whole(6, 11) / 100, "0.00");
  const price = fact(sheet, at(4), "VK Kugel (€)", random.pick([1.6, 1.8, 2]), "0.00");
  const share = `=(${a1(goods)}+${a1(cone)})/${a1(price)}`;
  fact(sheet, at(5), "Wareneinsatz vom VK", share, "0.0%");
}

/** A flavour's sheet, the first column free for ticks. */
function flavour(kit: Kit, made: MadeRecipe): CorpusSheet {
  const sheet = addSheet(kit.marked.book, made.title);
  put(sheet, 0, 1, `Kalkulation ${made.title}`);
  const list = listed(
    sheet,
    made,
    { row: 2, column: 1 },
    {
      heads: ["Zutat", "EK €/kg", "Einwaage (g)", "Kosten (€)"],
      cells: (name, grams, index) => [
        ...[name, shown(paid(kit, made.lines[index]!.en), "0.00"), grams],
      ],
      ...{ name: 0, amount: 2 },
    },
  );
  const { names, amounts, heads, end } = list;
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1({ ...spot, column: 2 })}*${a1(spot)}/1000`,
  });
  put(sheet, end, 1, "Ansatz gesamt");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const lines = { names, amounts, total, unit: "g", amountLabel: heads[2]! } as const;
  const recipe = markRecipe(kit, made, lines);
  scoop(kit, sheet, end + 2, total, cost);
  const said = [...SAID, ...ofAlcohol(made, "Alkohol rein g")];
  const next = say(sheet, recipe, { row: end + 2, column: 4 }, said);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Soll" });
  tellIn(sheet, recipe, { row: end + 9, column: 1 }, VOICE);
  return sheet;
}

const DAYS = [
  ["Mo", "Ruhetag"],
  ["Di bis Fr", "11 bis 19 Uhr"],
  ["Sa, So", "10 bis 21 Uhr"],
] as const;

/** Two flavours and the counter's page. */
function eiscafe(kit: Kit): void {
  const sheets = kit.make(2).map((made) => flavour(kit, called(upTo(made, 4000), WORDS)));
  note(kit, sheets[0]!, 0, 6, "EK laut Großmarkt, Stand April");
  const sheet = addSheet(kit.marked.book, "Theke");
  put(sheet, 0, 0, "Vitrine, zweimal am Tag ablesen");
  const heads: [string, ...string[]] = ["Tag", "morgens °C", "abends °C"];
  const when = ["Di", "Mi", "Do", "Fr", "Sa", "So"];
  const ranges = [[-15, -13] as const, [-14, -11] as const];
  const end = readings(kit, sheet, { row: 2, column: 0 }, { heads, when, ranges });
  DAYS.forEach((cells, index) => putRow(sheet, end + 1 + index, 0, cells));
}

/** An ice-cream café on a market square. */
export const eiscafes: readonly Layout[] = [
  { name: "Eiscafé am Platz, Kalkulation bis zur Kugel", language: "de", build: eiscafe },
];
