import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { FRIENDLY, rowsAt, thermometer } from "./words";

const SAID: readonly Said[] = [
  { label: "Freezing pt (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Dissolved stuff (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "Ice in it all at −18 °C (%)", states: "ice of mix", as: "typed" },
    ...{ temperatureC: -18, decimals: 0 },
  },
];

const TASTERS = ["Mum", "Dad", "Nell", "Arlo"];

/** What each of us gave it. */
function marks(kit: Kit, sheet: CorpusSheet, row: number): void {
  putRow(sheet, row, 0, ["Out of 10", ...TASTERS, "On average"]);
  const given = ["first go", "second go"].map((go, index) => {
    const scores = TASTERS.map(() => kit.random.whole(4, 10));
    const cells = putRow(sheet, row + 1 + index, 0, [go, ...scores]).slice(1);
    return put(sheet, row + 1 + index, 5, shown(`=AVERAGE(${span(cells)})`, "0.0"));
  });
  const heading: Spot = { sheet: sheet.name, row, column: 5 };
  kit.marked.formulaColumns.push({ spots: given, heading, fixed: [] });
}

/** A recipe of ours on its own sheet, the answers along the top. */
function entry(kit: Kit, made: MadeRecipe, at: number): void {
  const sheet = addSheet(kit.marked.book, `Recipe ${at + 1}`);
  put(sheet, 0, 0, made.title);
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads: ["How much", undefined, "of what", "if we do it twice (g)", "got it?"],
      cells: (item, grams) => [
        ...[grams, "g", item, undefined, kit.random.pick(["yes", "buy", undefined])],
      ],
      ...{ name: 2, amount: 0 },
    },
  );
  const twice = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0" },
    content: (spot) => `=${a1(spot)}+${a1(spot)}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  putRow(sheet, end, 1, ["g", "in the bowl"]);
  sumOf(kit, sheet, { row: end, column: 3 }, twice, "0");
  const lines = { names, amounts, alsoAmounts: twice, unitCells: columnOf(rows, 1), total };
  const recipe = markRecipe(kit, made, { ...lines, amountLabel: heads[0]!, unit: "g" });
  strip(sheet, recipe, { row: 2, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: 0, column: 3, label: "we want" });
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, FRIENDLY);
  marks(kit, sheet, end + 5);
}

/** Our freezer: what lies in it, how cold it was, and the pocket money from the street stall. */
function freezer(kit: Kit, sheet: CorpusSheet): void {
  putRow(sheet, 0, 0, ["In the freezer", "how many", "since"]);
  const counts = ["lollies", "small pots", "bread", "peas", "soup"].map((thing, index) => {
    const since = ["June", "July", "May", "March", "July"][index];
    return putRow(sheet, 1 + index, 0, [thing, kit.random.whole(1, 14), since])[1]!;
  });
  put(sheet, 6, 0, "things in all");
  sumOf(kit, sheet, { row: 6, column: 1 }, counts);
  rowsAt(sheet, { row: 1, column: 5 }, [["top"], ["middle"], ["bottom"], ["door"]]);
  put(sheet, 0, 5, "drawer");
  const plan = { heading: "how cold (°C)", count: 4, range: [-21, -15] } as const;
  thermometer(kit, sheet, { row: 0, column: 6 }, plan);
  note(kit, sheet, 9, 0, "Arlo: do NOT leave the door open again");
}

/** A family's book of ices. */
function freezerBook(kit: Kit): void {
  const own = { water: "cold water", sugar: "table sugar", salt: "table salt" };
  kit.make(3).forEach((made, index) => entry(kit, called(made, own), index));
  freezer(kit, addSheet(kit.marked.book, "Freezer"));
}

/** A family that keeps a book. */
export const freezerBooks: readonly Layout[] = [
  { name: "family freezer book, answers along the top", language: "en", build: freezerBook },
];
