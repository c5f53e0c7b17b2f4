import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { resultAt, type ResultPlan } from "../results";
import type { MadeRecipe } from "../recipes";
import { itemsOf, upTo } from "../strollers/words";
import { day } from "../counters/words";

const VOICE: Voice = {
  lead: "Allerg.:",
  honey: "Honig, nichts für unter 12 Monate.",
  alcohol: "Alkohol, nicht an Kinder u. Schwangere, nicht vor der Fahrt.",
  nuts: "ganze Nüsse, unter 5 J. Verschluckungsgefahr.",
  egg: "rohes Eigelb, auf 71 °C oder past. Ware.",
};

const WORDS = {
  ...{ Vollmilch: "frische Vollmilch", Erdbeeren: "Erdbeeren, geputzt", Salz: "Kochsalz" },
  ...{ Pfirsich: "Pfirsiche, geschält", Haselnüsse: "Haselnüsse geröstet" },
};

const AFTER: readonly (readonly [heading: string, plan: ResultPlan])[] = [
  ["Gefrierpkt. °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["ΔT K", { states: "depression", as: "typed", decimals: 1 }],
  [
    "% d. Wassers gefr. bei −18 °C",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

interface Line {
  readonly total: Spot;
  readonly point: Spot;
}

/** One flavour on its row. */
function line(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  row: number,
  plan: {
    readonly items: readonly Spot[];
    readonly amountLabel: Spot;
    readonly heads: readonly Spot[];
  },
): Line {
  const { items, amountLabel, heads } = plan;
  putRow(sheet, row, 0, [day(20 * row + kit.random.whole(0, 15), "dd.mm."), made.title]);
  const recipe = alongRow(kit, sheet, made, row, {
    items,
    unit: "kg",
    format: "0.000",
    amountLabel,
  });
  AFTER.forEach(([, each], index) => {
    const place = { row, column: heads[index]!.column };
    resultAt(sheet, recipe, heads[index]!, place, each, () => recipe.lines);
  });
  const last = heads.at(-1)!.column;
  nameTarget(sheet, recipe, { row, column: last - 1 });
  tellIn(sheet, recipe, { row, column: last }, VOICE);
  return { total: recipe.total!, point: { sheet: sheet.name, row, column: heads[0]!.column } };
}

/** How much of which was sold, in fractions of the takings. */
function sold(kit: Kit, sheet: CorpusSheet, row: number): void {
  const [, heading] = putRow(sheet, row, 1, ["Verkauft über", "Anteil Umsatz"]);
  const market = kit.random.whole(30, 45) / 100;
  const shop = kit.random.whole(25, 40) / 100;
  const rest = Number((1 - market - shop).toFixed(2));
  const spots = [
    ["Wochenmarkt", market],
    ["Hofladen", shop],
    ["Wirte", rest],
  ].map((cells, index) => putRow(sheet, row + 1 + index, 1, cells)[1]!);
  const total = put(sheet, row + 4, 2, `=SUM(${span(spots)})`);
  put(sheet, row + 4, 1, "zus.");
  kit.marked.sums.push({ spot: total, parts: spots });
  kit.marked.numberColumns.push({ spots, heading: heading!, total, kind: "fraction" });
}

/** All flavours of a year, a row for each batch. */
function sortenliste(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Sorten 2025");
  const mades = kit.make(5).map((made) => called(upTo(made, 5000), WORDS));
  put(sheet, 0, 0, "Hofeis, was wir gemacht haben");
  const amountLabel = put(sheet, 1, 0, "Mengen in kg");
  putRow(sheet, 3, 0, ["Datum", "Sorte"]);
  const items = putRow(sheet, 3, 2, itemsOf(mades));
  const after = 2 + items.length;
  put(sheet, 3, after, "Summe kg");
  const words = [...AFTER.map(([heading]) => heading), "Ziel", "Schild"];
  const heads = putRow(sheet, 3, after + 1, words);
  const lines = mades.map((made, index) =>
    line(kit, sheet, made, 4 + index, { items, amountLabel, heads }),
  );
  const points = lines.map(({ point }) => point);
  kit.marked.formulaColumns.push({ spots: points, heading: heads[0]!, fixed: [] });
  const row = 4 + mades.length;
  put(sheet, row, 1, "Jahr bisher");
  const totals = lines.map(({ total }) => total);
  const spot = put(sheet, row, after, shown(`=SUM(${span(totals)})`, "0.000"));
  kit.marked.sums.push({ spot, parts: totals });
  sold(kit, sheet, row + 2);
  note(kit, sheet, row + 8, 0, "Becher und Deckel: zweite Palette ist bestellt.");
}

/** A farm's list of all its batches. */
export const sortenlisten: readonly Layout[] = [
  { name: "Hofeis, Sortenliste mit einer Zeile je Ansatz", language: "de", build: sortenliste },
];
