import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { solution } from "../solution";
import { itemsOf, temperatures } from "../strollers/words";

const VOICE: Voice = {
  lead: "Kennzeichnung:",
  honey: "Honig, nicht unter 12 Monaten.",
  alcohol: "Alkohol, nicht für Kinder, Schwangere oder vor dem Fahren.",
  nuts: "Ganze Nüsse, Erstickungsgefahr unter 5 Jahren.",
  egg: "Rohes Eigelb, auf 71 °C erhitzen oder pasteurisiert einsetzen.",
};

const ANSWERS: readonly (readonly [string, ResultPlan])[] = [
  ["Gefrierpunkt, berechnet (°C)", { states: "freezing point", as: "formula" }],
  ["ΔT (K)", { states: "depression", as: "typed" }],
  ["Wasser (g in 100 g)", { states: "water", as: "formula", format: "0.0" }],
  ["Zucker je 100 g Wasser (g)", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  [
    "Wasser gefroren bei −18 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

/** The first ingredient stands right of group, recipe and sum. */
const LEFT = 3;

interface Table {
  readonly items: readonly Spot[];
  readonly answers: readonly Spot[];
  readonly amountLabel: Spot;
}

/** A group's mix along its row, the sum before it, the answers behind; gives what was measured. */
function groupRow(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, table: Table): Spot {
  const { items, answers, amountLabel } = table;
  const listed = items.map((spot) => sheet.cells[spot.row]![spot.column]!.content);
  const names = made.names.map((name) => items[listed.indexOf(name)]!);
  const amounts = names.map(({ column }, at) =>
    put(sheet, row, column, shown(made.grams[at]!, "0.0")),
  );
  const all = items.map((spot) => ({ ...spot, row }));
  const total = sumOf(kit, sheet, { row, column: LEFT - 1 }, all, "0.0");
  const cells = { names, amounts, total, amountLabel, unit: "%", shared: true } as const;
  const recipe = markRecipe(kit, made, cells);
  const lines = `${absolute(span(items))},${span(all)}`;
  ANSWERS.forEach(([, plan], at) => {
    const place = { row, column: answers[at]!.column };
    resultAt(sheet, recipe, answers[at]!, place, plan, () => lines);
  });
  const last = answers.at(-1)!.column;
  nameTarget(sheet, recipe, { row, column: last + 1 });
  tellIn(sheet, recipe, { row, column: last + 3 }, VOICE);
  return put(sheet, row, last + 2, shown(-kit.random.whole(52, 70) / 10, "0.0"));
}

/** The mixes of all groups in per cent, ingredients across. */
function table(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Lernfeld Gefrorenes, Übersicht der Gruppen");
  const words = { Zucker: "Kristallzucker", Fruktose: "Fruchtzucker", Salz: "Kochsalz" };
  const mades = kit.make(4).map((made) => called(largestFirst(made), words));
  putRow(sheet, 3, 0, ["Gruppe", "Masse", "Summe"]);
  const items = putRow(sheet, 3, LEFT, itemsOf(mades));
  const amountLabel = put(sheet, 2, LEFT, "Anteile in %");
  const after = LEFT + items.length;
  const heads = putRow(sheet, 3, after, [
    ...ANSWERS.map(([words]) => words),
    ...["Ziel", "beim Ausfüllen gemessen (°C)", "Etikett"],
  ]);
  const answers = heads.slice(0, ANSWERS.length);
  const read = mades.map((made, at) => {
    putRow(sheet, 4 + at, 0, ["ABCD"[at], made.title]);
    return groupRow(kit, sheet, made, 4 + at, { items, answers, amountLabel });
  });
  temperatures(kit, heads.at(-2)!, read);
  put(sheet, 9, 0, "Putzdienst");
  putRow(sheet, 10, 0, ["KW", "Gruppe"]);
  [37, 38, 39, 40].forEach((week, at) => putRow(sheet, 11 + at, 0, [week, "ABCD"[at]]));
  note(kit, sheet, 16, 0, "Waagen vor dem Unterricht nullen, Schüsseln trocken.");
}

/** What it costs to make the room ready. */
function materials(kit: Kit, sheet: CorpusSheet, row: number): void {
  const heads = putRow(sheet, row, 0, ["Material", "Stück", "€ je Stück", "€"]);
  const list = [
    ["Thermometer", 4, 18.5],
    ["Becher mit Deckel", 60, 0.22],
    ["Teigschaber", 8, 3.4],
  ];
  const costs = list.map(([what, count, price], at) => {
    const [, pieces, each] = putRow(sheet, row + 1 + at, 0, [what, count, shown(price!, "0.00")]);
    return put(sheet, row + 1 + at, 3, shown(`=${a1(pieces!)}*${a1(each!)}`, "0.00"));
  });
  kit.marked.formulaColumns.push({ spots: costs, heading: heads[3]!, fixed: [] });
  put(sheet, row + 4, 0, "zusammen");
  sumOf(kit, sheet, { row: row + 4, column: 3 }, costs, "0.00");
}

/** The groups' table and what is worked out on paper. */
function berufsfachschule(kit: Kit): void {
  table(kit, addSheet(kit.marked.book, "Gruppen"));
  const sheet = addSheet(kit.marked.book, "Rechnung");
  put(sheet, 0, 0, "Zum Nachrechnen: zwei Stoffe in einem Becherglas");
  solution(kit, sheet, {
    ...{ top: 2, left: 0, count: 2 },
    headings: ["Stoff", "m (g)", "M (g/mol)", "Teilchen", "n der Teilchen (mol)"],
    words: {
      water: ["m Wasser (g)", "m Wasser"],
      constant: "Kf Wasser (K·kg/mol)",
      depression: "ΔT (K)",
      freezingPoint: "Gefrierpunkt (°C)",
      proviso: (gap) => `Ideal gerechnet; bei so dünnen Lösungen bis auf ${gap} K richtig.`,
    },
  });
  materials(kit, sheet, 14);
}

/** A vocational school. */
export const berufsfachschulen: readonly Layout[] = [
  {
    name: "Berufsfachschule, Gruppen untereinander in Prozent",
    language: "de",
    build: berufsfachschule,
  },
];
