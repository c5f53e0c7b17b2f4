import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { DEUTSCH, thermometer } from "./words";

const THEKE: Voice = {
  ...DEUTSCH,
  lead: "Thekenschild: enthält",
  egg: "Rohes Eigelb, Masse deshalb auf 71 °C erhitzen oder pasteurisiertes Eigelb nehmen.",
};

/** The counter's temperature. */
const COUNTER = -12;

const said = (temperature: Spot): readonly Said[] => [
  { label: "GP in °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Gefrierpunkt gesenkt um (K)", states: "depression", as: "formula", format: "0.0" },
  {
    label: "Eis in der Masse, Theke bei -12 °C",
    ...{ states: "ice of mix", as: "typed", temperatureC: COUNTER, percent: "format" },
  },
  {
    label: "gefrorener Teil des Wassers bei dieser Temperatur",
    ...{ states: "ice of water", as: "formula", temperatureC: COUNTER, percent: "format" },
    temperature,
  },
  { label: "Zuckeranteil der Masse", states: "sugar share", as: "formula", percent: "format" },
];

/** A mix as parts of one, and what of it goes into the kettle. */
function mix(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  put(sheet, top, 0, made.title);
  const words = {
    label: "Kessel in g",
    bare: "Kessel",
    value: kit.random.pick([3000, 4500, 6000]),
  };
  const kettle = input(kit, sheet, { row: top, column: 4 }, words);
  const cold = { label: "Eistheke in °C", bare: "Eistheke", value: COUNTER };
  const counter = input(kit, sheet, { row: top + 1, column: 4 }, cold);
  const list = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    {
      heads: ["Anteil", "Rohstoff", "Einwaage (g)"],
      cells: (item, share) => [shown(inUnit(share, "fraction"), "0.0%"), item],
      ...{ name: 1, amount: 0 },
    },
  );
  const { heads, names, amounts, end } = list;
  const weighed = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [kettle] },
    content: (spot) => `=${a1(spot)}*${fixed(kettle)}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts, "0.0%");
  put(sheet, end, 1, "Gesamtmasse");
  sumOf(kit, sheet, { row: end, column: 2 }, weighed, "0");
  const cells = { names, amounts, total, alsoAmounts: weighed, amountLabel: heads[0]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "fraction" });
  const below = say(sheet, recipe, { row: top + 2, column: 4 }, said(counter));
  nameTarget(sheet, recipe, { row: below, column: 4, label: "Verkauf als" });
  return tellIn(sheet, recipe, { row: Math.max(end, below) + 1, column: 0 }, THEKE) + 1;
}

const BAKED: readonly (readonly [string, number, number])[] = [
  ["Waffeltüten", 120, 150],
  ["Biskuitböden", 6, 10],
  ["Baiser", 40, 60],
  ["Hippen", 80, 120],
];

/** What the bakehouse makes on the side. */
function baked(kit: Kit, sheet: CorpusSheet): void {
  putRow(sheet, 0, 0, ["Backzettel für die Eistheke"]);
  putRow(sheet, 2, 0, ["Ware", "Freitag Stk.", "Samstag Stk.", "beide Tage"]);
  const rows = BAKED.map(([ware, friday, saturday], index) => {
    const row = 3 + index;
    return putRow(sheet, row, 0, [ware, friday, saturday, `=SUM(B${row + 1}:C${row + 1})`]);
  });
  put(sheet, 7, 0, "Stück");
  [1, 2, 3].forEach((at) => sumOf(kit, sheet, { row: 7, column: at }, columnOf(rows, at)));
  thermometer(
    kit,
    sheet,
    { row: 10, column: 0 },
    {
      heads: ["Ofen/Kühlung um 5 Uhr", "Etagenofen °C", "Gärraum °C", "Schockfroster °C"],
      lines: ["Do", "Fr", "Sa"],
      from: [
        [215, 235],
        [28, 32],
        [-36, -32],
      ],
    },
  );
  note(kit, sheet, 15, 0, "Hippen bei Regenwetter erst kurz vor Verkauf auspacken.");
}

/** Two mixes under each other, what is baked for them elsewhere. */
function backstube(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eismassen");
  const own = { Zucker: "Raffinade", Zitronensaft: "Saft von Zitronen", Salz: "Tafelsalz" };
  let top = 0;
  for (const made of kit.make(2)) top = mix(kit, sheet, called(hundred(made), own), top);
  note(kit, sheet, top, 0, "Massen am Vorabend ansetzen, über Nacht reifen lassen.");
  baked(kit, addSheet(kit.marked.book, "Backzettel"));
}

/** A confectioner's mixes. */
export const backstuben: readonly Layout[] = [
  { name: "Konditorei, Eismassen in Anteilen und Backzettel", language: "de", build: backstube },
];
