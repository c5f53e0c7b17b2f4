import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { allergensOf, cautionsIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { putList } from "./lists";
import { tableAt, thermometers, worked } from "./words";

const VOICE: Voice = {
  lead: "",
  honey: "Honey: not on infant trays (under 12 months).",
  alcohol: "Alcohol: not for children, in pregnancy, or before driving home.",
  nuts: "Whole nuts: choking hazard, not for under-5s.",
  egg: "Raw egg yolk: heat to 71 °C or order pasteurised.",
};

const SAID: readonly Said[] = [
  { label: "Freezing point", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Total water", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "Pure alcohol", inCell: "g", states: "alcohol", as: "typed", decimals: 0 },
  {
    ...{ label: "Water frozen in the tray trolley at −10 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -10, decimals: 0 },
  },
];

const isStrong = ({ names }: MadeRecipe): boolean => names.some((name) => /vodka/.test(name));

/** What the wards have ordered; gives the cell of all portions. */
function orders(kit: Kit, sheet: CorpusSheet): Spot {
  const rows = tableAt(sheet, { row: 3, column: 6 }, [
    ["Ward", "Portions", "of these soft diet"],
    ...["Maternity", "Orthopaedics", "Day surgery", "Rehab"].map((ward) => [
      ...[ward, kit.random.whole(9, 26), kit.random.whole(0, 6)],
    ]),
  ]);
  put(sheet, 8, 6, "All wards");
  const columns = [1, 2].map((at) => rows.slice(1).map((cells) => cells[at]!));
  const [all] = columns.map((parts, at) => sumOf(kit, sheet, { row: 8, column: 7 + at }, parts));
  return all!;
}

/** A production sheet: code, item, kilograms with their unit, and what each tray gets of it. */
function production(kit: Kit, made: MadeRecipe, name: string): void {
  const sheet = addSheet(kit.marked.book, name);
  put(sheet, 0, 0, `Diet kitchen, frozen dessert: ${made.title}`);
  putRow(sheet, 1, 0, ["Recipe no.", `FD-${kit.random.whole(10, 49)}`, "rev. 2"]);
  const portions = orders(kit, sheet);
  const list = putList(sheet, made, {
    ...{ row: 3, column: 0, name: 1, amount: 2 },
    heads: ["Store code", "Item", "Issue", "Unit", "Per portion (g)"],
    cells: (item, grams) => [
      ...[`ST-${kit.random.whole(1000, 3999)}`, item],
      ...[shown(inUnit(grams, "kg"), "0.000"), "kg"],
    ],
  });
  const { names, amounts, heads, end } = list;
  const each = amounts.map((spot) =>
    put(sheet, spot.row, 4, shown(`=${a1(spot)}*1000/${fixed(portions)}`, "0.0")),
  );
  worked(kit, heads[4]!, each, [portions]);
  put(sheet, end + 1, 1, "Batch");
  const total = sumOf(kit, sheet, { row: end + 1, column: 2 }, amounts, "0.000");
  put(sheet, end + 1, 3, "kg");
  sumOf(kit, sheet, { row: end + 1, column: 4 }, each, "0.0");
  const cells = { names, amounts, alsoAmounts: each, unitCells: list.column(3), total } as const;
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heads[2]!, unit: "kg" });
  const facts = isStrong(made) ? SAID : SAID.filter(({ states }) => states !== "alcohol");
  const next = say(sheet, recipe, { row: end + 3, column: 1 }, facts);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Texture agreed with dietitian" });
  const told = [
    ["Allergens on tray card", allergensOf(made)],
    ["Caution on tray card", cautionsIn(made, VOICE)],
  ].filter(([, text]) => text !== "");
  told.forEach((pair, at) => recipe.flags.push(...putRow(sheet, next + 2 + at, 1, pair)));
}

/** Two desserts for the wards, and the temperature checks. */
function wards(kit: Kit): void {
  const own = { sugar: "table sugar", "whole milk": "full-fat milk", banana: "bananas" };
  kit.make(2).forEach((made, at) => {
    production(kit, called(upTo(made, 5000), own), ["Lunch", "Supper"][at]!);
  });
  const sheet = addSheet(kit.marked.book, "Checks");
  put(sheet, 0, 0, "Probe readings");
  thermometers(
    kit,
    sheet,
    { row: 2, column: 0 },
    {
      heads: ["Where", "on leaving kitchen (°C)", "on reaching ward (°C)"],
      lines: ["Trolley 1", "Trolley 2", "Trolley 3", "Spare box"],
      ...{ from: -14, to: -8 },
    },
  );
  note(kit, sheet, 8, 0, "Probe calibrated in ice water on the first of the month.");
}

/** A hospital's diet kitchen. */
export const hospitalWards: readonly Layout[] = [
  { name: "hospital diet kitchen, portions by ward", language: "en", build: wards },
];
