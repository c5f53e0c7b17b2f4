import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, strip } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { stimme } from "../settled/stimme";
import { table } from "../settled/words";

const OWN = {
  ...{
    Zucker: "Rübenzucker",
    Wasser: "Trinkwasser",
    "Dextrose-Monohydrat": "Dextrose (Monohydrat)",
  },
  ...{ Erdbeeren: "Erdbeeren frisch", Himbeeren: "Himbeeren TK", Eigelb: "Eidotter" },
};

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt °C", states: "freezing point", as: "formula", format: "0.00" },
  { label: "Erniedrigung K", states: "depression", as: "typed", decimals: 2 },
  {
    ...{ label: "Zucker auf 100 g Wasser, g", states: "sugar per 100 g water" },
    ...{ as: "formula", format: "0.0" },
  },
  {
    ...{ label: "Eis in der Masse bei −12 °C, %", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -12, decimals: 0 },
  },
  {
    ...{ label: "Wasser gefroren bei −18 °C, %", states: "ice of water" },
    ...{ as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** One recipe: its answers above, its shares and kilograms below. */
function rezeptur(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  row: number,
  kilos: Spot,
): number {
  put(sheet, row, 0, made.title);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: row + 4, column: 0 },
    {
      heads: ["Anteil", "Rohstoff", "Ansatz kg", "Bezug"],
      cells: (name, grams) => [
        ...[shown(inUnit(grams, "fraction"), "0.0%"), name, undefined],
        kit.random.pick(["Großmarkt", "Lager", "Rest zuerst", undefined]),
      ],
      ...{ name: 1, amount: 0 },
    },
  );
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [kilos] },
    content: (spot) => `=${a1(spot)}*${fixed(kilos)}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts, "0.0%");
  put(sheet, end, 1, "Kontrolle");
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0.000");
  kit.marked.numberColumns.push({ spots: amounts, heading: heads[0]!, total, kind: "fraction" });
  const cells = { names, amounts, alsoAmounts, total, amountLabel: heads[0]! } as const;
  const recipe = markRecipe(kit, made, { ...cells, unit: "fraction" });
  strip(sheet, recipe, { row: row + 1, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row, column: 3, label: "gedacht als" });
  return tellIn(sheet, recipe, { row: end + 1, column: 0 }, stimme("Enthaltene Allergene:")) + 1;
}

/** What was sold last season. */
function absatz(kit: Kit, sheet: CorpusSheet): void {
  const monate = ["Mai", "Juni", "Juli", "August"];
  const rows = monate.map((monat) => [monat, kit.random.whole(40, 160), kit.random.whole(3, 30)]);
  const heads = ["Monat", "Becher verkauft", "Becher zurück"];
  const list = table(sheet, { row: 1, column: 7 }, heads, rows);
  put(sheet, list.end, 7, "Saison");
  [1, 2].forEach((at) =>
    sumOf(kit, sheet, { row: list.end, column: 7 + at }, columnOf(list.rows, at)),
  );
}

/** Two recipes in shares, one below the other. */
function anteile(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Rezepturen");
  put(sheet, 0, 0, "Gefrorenes vom Hof, Rezepturen nach Anteilen");
  const [label, kilos] = putRow(sheet, 1, 0, ["Ansatz (kg)", kit.random.pick([5, 7.5, 12])]);
  kit.marked.inputs.push({ label: label!, value: kilos!, bare: "Ansatz" });
  let row = 3;
  for (const made of kit.make(2).map((each) => called(hundred(each), OWN))) {
    row = rezeptur(kit, sheet, made, row, kilos!) + 1;
  }
  absatz(kit, sheet);
  note(kit, sheet, row, 0, "Anteile gelten für den Mix vor dem Aufschlag.");
}

/** Somebody who thinks in shares only. */
export const anteilsblaetter: readonly Layout[] = [
  {
    ...{ name: "Hofeis nach Anteilen, Kennwerte über jeder Rezeptur", language: "de" },
    build: anteile,
  },
];
