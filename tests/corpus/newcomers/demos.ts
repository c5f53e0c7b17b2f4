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
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { freezesAt, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { called, columnOf } from "../kitchens/hand";
import { beside, listed, warn } from "./words";

const SEEN = ["all liquid", undefined, "first needles", undefined, "slush", undefined, "firm"];

/** Probe and air while the mix stands still in the freezer. */
function readings(kit: Kit, sheet: CorpusSheet, point: number) {
  const { random, marked } = kit;
  const heads = putRow(sheet, 1, 0, [
    ...["Time (min)", "Air (°C)", "Probe (°C)", "Fall since the last reading (K)", "Seen"],
  ]);
  const below = [-5.5, -3, -0.5, 0, 0.2, 0.5, 1.4, 3.6, 7];
  const rows = below.map((depth, index) =>
    putRow(sheet, 2 + index, 0, [
      ...[20 * index, shown(-random.whole(35, 38) / 2, "0.0")],
      shown(Number((point - depth).toFixed(1)), "0.0"),
    ]),
  );
  const [air, probe] = [columnOf(rows, 1), columnOf(rows, 2)];
  beside(kit, heads[3]!, probe.slice(1), {
    ...{ sheet, format: "0.0" },
    content: (spot, index) => `=${a1(probe[index]!)}-${a1(spot)}`,
  });
  const column = { total: null, kind: "temperature" } as const;
  marked.numberColumns.push(
    { ...column, spots: air, heading: heads[1]! },
    { ...column, spots: probe, heading: heads[2]! },
  );
  return { air, probe };
}

/** The cooling curve in figures, the probe's level stretch under them. */
function curve(kit: Kit, { names, grams }: MadeRecipe): void {
  const sheet = addSheet(kit.marked.book, "Curve");
  const point = freezesAt(names, grams);
  put(sheet, 0, 0, "Probe in the middle of a 500 g tub, lid on");
  const { air, probe } = readings(kit, sheet, point);
  SEEN.forEach((each, index) => put(sheet, 2 + index, 4, each));
  putRow(sheet, 12, 0, ["Air, on average (°C)", shown(`=AVERAGE(${span(air)})`, "0.0")]);
  putRow(sheet, 13, 0, ["Coldest the probe got (°C)", shown(`=MIN(${span(probe)})`, "0.0")]);
  putRow(sheet, 14, 0, ["Level stretch of the curve (°C)", shown(point, "0.0")]);
  note(kit, sheet, 15, 0, "Do not open the door between readings.");
}

const SHOWN: readonly Said[] = [
  { label: "It will begin to freeze at (°C)", states: "freezing point", as: "formula" },
  {
    label: "Everything counted, the water comes to (g)",
    states: "water",
    as: "formula",
    format: "0",
  },
  { label: "Sugars in it, by weight (%)", states: "sugar share", as: "formula" },
  {
    label: "By −18 °C, this much of the water is ice (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  {
    label: "and ice makes up this much of the mix (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** The run of a demonstration: what goes in when, then what the class is told. */
function demonstration(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Demo");
  const made = called(kit.make(1)[0]!, { sugar: "caster sugar", "lemon juice": "juice of lemon" });
  putRow(sheet, 0, 0, ["Demonstration", made.title, "Thursday, kitchen 2"]);
  const { heads, names, amounts, end } = listed(
    ...([sheet, made, { row: 2, column: 0 }] as const),
    {
      heads: ["Order", "Into the pan", "Weight, g", "Running weight, g"],
      cells: (name, grams, index) => [`${index + 1}.`, name, grams],
      ...{ name: 1, amount: 2 },
    },
  );
  const content = (spot: Spot) => `=SUM(${fixed(amounts[0]!)}:${a1(spot)})`;
  beside(kit, heads[3]!, amounts, { sheet, format: "0", content });
  put(sheet, end, 1, "Weight of the lot");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  const lines = { names, amounts, unit: "g", amountLabel: heads[2]!, total } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: end + 2, column: 1 }, SHOWN);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "We are after" });
  const free = warn(sheet, recipe, { row: next + 2, column: 1 }, "Tell the class, it contains");
  note(kit, sheet, free, 1, "Spoons for everyone, second freezer switched on at eight.");
  curve(kit, made);
}

/** Demonstrations before a class. */
export const demos: readonly Layout[] = [
  { name: "demonstration and its cooling curve", language: "en", build: demonstration },
];
