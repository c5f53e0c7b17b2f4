import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact } from "../caterers/words";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { again } from "../layouts/marking";
import { down } from "../lodgers/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf, temperatures } from "../strollers/words";
import { inEnglish } from "./words";

const FACTS: readonly Fact[] = [
  ["Predicted freezing point [°C]", { states: "freezing point", as: "formula" }],
  ["Predicted depression [K]", { states: "depression", as: "typed" }],
  ["Water phase [g]", { states: "water", as: "formula", format: "0.0" }],
  ["Sugars in 100 g of water [g]", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  [
    "Ice in the product at −20 °C [%]",
    { states: "ice of mix", as: "typed", temperatureC: -20, decimals: 1 },
  ],
];

/** What the trial should change, line by line. */
function shift(kit: Kit, sheet: CorpusSheet, items: readonly Spot[], heading: Spot): void {
  const spots = items.map((spot) => {
    const [control, trial] = [1, 2].map((column) => a1({ ...spot, column }));
    return put(sheet, spot.row, heading.column, shown(`=${trial}-${control}`, "+0;-0;0"));
  });
  kit.marked.formulaColumns.push({ spots, heading, fixed: [] });
}

const TASTERS = ["P1", "P2", "P3", "P4", "P5", "P6"];

/** The panel's marks, which only the developer reads. */
function panel(kit: Kit, sheet: CorpusSheet, row: number): void {
  putRow(sheet, row, 0, ["Panel (1 = icy, 9 = smooth)", "Control", "Trial"]);
  TASTERS.forEach((taster, index) =>
    putRow(sheet, row + 1 + index, 0, [taster, kit.random.whole(3, 7), kit.random.whole(4, 9)]),
  );
}

/** How warm the abuse test made the freezer. */
function abuse(kit: Kit, sheet: CorpusSheet, row: number): void {
  const [, heading] = putRow(sheet, row, 5, ["Heat-shock day", "Cabinet peak [°C]"]);
  const spots = down(
    sheet,
    [row + 1, 6],
    [1, 2, 3, 4, 5].map(() => -kit.random.whole(18, 26) / 2),
  );
  down(sheet, [row + 1, 5], [1, 2, 3, 4, 5]);
  temperatures(kit, heading!, spots);
}

/** Both versions, named alike and weighed for a kilogram. */
function pair(kit: Kit): MadeRecipe[] {
  const made = kit.make(1)[0]!;
  const other = again(kit, sound(kit, made));
  const own = { sugar: "granulated sugar", "skim milk powder": "skimmed milk powder" };
  return [made, other].map((each) => called(perKilogram(each), own));
}

/** A control beside the trial that should beat it. */
function trials(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Trial 07");
  const list = pair(kit);
  put(sheet, 0, 0, `Project: ${list[0]!.title}, shelf life`);
  note(kit, sheet, 1, 0, "Bench samples only. Ask before you use the pilot line.");
  const items = down(sheet, [4, 0], itemsOf(list));
  const amountLabel = put(sheet, 3, 0, "Formula, g per kg");
  const end = 4 + items.length;
  put(sheet, end, 0, "Check sum");
  list.forEach((made, index) => {
    const column = 1 + index;
    put(sheet, 3, column, ["Control", "Trial"][index]);
    const plan = { items, left: 1, unit: "g", format: "0", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, index, plan);
    factsDown(sheet, recipe, FACTS, { row: end + 2, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: end + 8, column });
    tellIn(sheet, recipe, { row: end + 9, column }, inEnglish("Contains:"));
  });
  put(sheet, end + 8, 0, "Brief");
  put(sheet, end + 9, 0, "On pack");
  shift(kit, sheet, items, put(sheet, 3, 3, "Trial minus control"));
  panel(kit, sheet, end + 11);
  abuse(kit, sheet, 3);
}

/** A developer of frozen desserts. */
export const twoTrials: readonly Layout[] = [
  { name: "development bench, control and trial", language: "en", build: trials },
];
