import { addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { LADEN } from "./voices";
import { readings, shares, table } from "./words";

const TIMES = [
  ["Offen", "von", "bis"],
  ["Mo", "Ruhetag"],
  ["Di bis Fr", "11:00", "20:00"],
  ["Sa, So", "10:30", "21:00"],
];

/** Where a line is kept: what is dry on the shelf, water nowhere. */
function shelfOf({ lines }: MadeRecipe, index: number): string | undefined {
  const name = lines[index]!.en;
  if (name === "water") return undefined;
  return /milk$|cream|yogurt|yolk|juice|berr|cherr|peach|mango|coffee/.test(name)
    ? "Kühlhaus"
    : "Regal";
}

/** The list with its shares; gives the recipe and the first free row. */
function recipeSheet(kit: Kit, sheet: CorpusSheet, made: MadeRecipe) {
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Was rein kommt", "Menge", "Einheit", "Anteil", "Steht wo"],
      cells: (item, grams, index) => [item, grams, "g", undefined, shelfOf(made, index)],
    },
  );
  put(sheet, end, 0, "gesamt");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  put(sheet, end, 2, "g");
  const alsoAmounts = shares(kit, sheet, heads[3]!, amounts, { total, percent: "format" });
  const cells = { names, amounts, alsoAmounts, unitCells: columnOf(rows, 2), total };
  const recipe = markRecipe(kit, made, { ...cells, unit: "g", amountLabel: heads[1]! });
  return { recipe, end };
}

/** What the thermometers in the display said in the course of a day. */
const display = (kit: Kit, sheet: CorpusSheet, row: number): number =>
  readings(
    kit,
    sheet,
    { row, column: 0 },
    {
      heads: ["Vitrine abgelesen", "links (°C)", "rechts (°C)"],
      labels: ["11 Uhr", "14 Uhr", "17 Uhr", "20 Uhr"],
      ranges: [
        [-16, -13],
        [-15, -12],
      ],
    },
  );

/** A flavour of the ice cream parlour, what it does at the right, the display's readings below. */
function eisdiele(kit: Kit): void {
  const words = {
    Zucker: "Kristallzucker",
    Vollmilch: "Vollmilch 3,5 %",
    Wasser: "Leitungswasser",
  };
  const made = called(upTo(kit.make(1)[0]!, 4000), words);
  const sheet = addSheet(kit.marked.book, "Tabelle1");
  putRow(sheet, 0, 0, ["Sorte", made.title]);
  putRow(sheet, 1, 0, ["Stand", shown(45785, "dd.mm.yyyy")]);
  const set = { label: "Vitrine eingestellt auf (°C)", bare: "Vitrine eingestellt auf" };
  const temperatureC = kit.random.pick([-15, -14, -13]);
  const at = input(kit, sheet, { row: 2, column: 0 }, { ...set, value: temperatureC });
  const { recipe, end } = recipeSheet(kit, sheet, made);
  const answers: readonly Said[] = [
    { label: "gefriert ab", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
    {
      ...{ label: "Wasser gefroren in der Vitrine", inCell: "% vom Wasser", format: "0" },
      ...{ states: "ice of water", as: "formula", temperature: at, temperatureC },
    },
    { label: "Wasser insgesamt", inCell: "g", states: "water", as: "formula", format: "0" },
    ...ofAlcohol(made, "reiner Alkohol", "g"),
  ];
  const next = say(sheet, recipe, { row: 4, column: 6 }, answers);
  nameTarget(sheet, recipe, { row: next, column: 6, label: "soll sein" });
  const below = tellIn(sheet, recipe, { row: end + 1, column: 0 }, LADEN);
  const last = display(kit, sheet, below + 1);
  table(sheet, { row: below + 1, column: 6 }, TIMES);
  note(kit, sheet, last + 1, 0, "Abends Vitrine leer räumen, Wannen ins Lager, Scheibe putzen.");
}

/** An ice cream parlour. */
export const eisdielen: readonly Layout[] = [
  { name: "Eisdiele, eine Sorte und die Vitrine", language: "de", build: eisdiele },
];
