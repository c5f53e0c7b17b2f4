import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { sugarsIn } from "./packet";

const DATES = ["14 Feb", "2 March", "Easter"];
const VERDICTS = ["icy on day three", "lovely, make again", "too sweet for me", "hard as a brick"];

interface Try {
  readonly top: number;
  readonly date: string;
}

/** One evening's try: what went in and how much sugar that brought. */
function attempt(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, { top, date }: Try) {
  putRow(sheet, top, 0, [date, made.title]);
  const heads = putRow(sheet, top + 1, 1, [
    ...["Ingredients", "Weighed (g)", "Packet: sugars per 100 g (g)", "Sugars from it (g)"],
  ]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + 2 + index, 1, [name, made.grams[index], shown(sugarsIn(name), "0.0")]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const sugars = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 3 })}/100`,
  });
  const row = top + 2 + rows.length;
  put(sheet, row, 1, "Tub");
  const total = sumOf(kit, sheet, { row, column: 2 }, amounts);
  const sugar = sumOf(kit, sheet, { row, column: 4 }, sugars, "0.0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", amountLabel: heads[1]!, total },
  });
  return { recipe, total, sugar, row };
}

/** Helpings, verdict and what I worked out, under the try; gives the next free row. */
function outcome(kit: Kit, sheet: CorpusSheet, tried: ReturnType<typeof attempt>): number {
  const { recipe, sugar, row } = tried;
  const [, helpings] = putRow(sheet, row + 1, 1, ["Helpings", kit.random.whole(6, 12)]);
  const each = shown(`=${a1(sugar)}/${a1(helpings as Spot)}`, "0.0");
  putRow(sheet, row + 2, 1, ["Sugars in a helping (g)", each]);
  let next = say(sheet, recipe, { row: row + 3, column: 1 }, [
    { label: "Starts freezing at (°C)", states: "freezing point", as: "typed", decimals: 1 },
    {
      ...{ label: "Sugars for every 100 g of water in it (g)", states: "sugar per 100 g water" },
      ...{ as: "typed", decimals: 0 },
    },
    {
      label: "Water in it, counting milk and fruit (g)",
      states: "water",
      as: "typed",
      decimals: 0,
    },
  ]);
  nameTarget(sheet, recipe, { row: next++, column: 1, label: "Hoped for" });
  putRow(sheet, next, 1, ["Came out", kit.random.pick(VERDICTS)]);
  return tell(kit, sheet, recipe, { row: next + 1, column: 1, as: "sentence" });
}

/** Tries one below the other, then the freezer that they stood in. */
export function tries(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Tries");
  put(sheet, 0, 0, "Ice cream tries, with the sugars counted");
  note(kit, sheet, 1, 0, "Everything on the digital scales, packets kept in the blue folder.");
  let top = 3;
  kit.make(3).forEach((made, index) => {
    const own = called(made, { sugar: "white sugar", "skim milk powder": "skimmed milk powder" });
    top = outcome(kit, sheet, attempt(kit, sheet, own, { top, date: DATES[index]! })) + 2;
  });
  const heads = putRow(sheet, top, 1, ["Freezer, where", "Thermometer (°C)"]);
  const spots = ["top drawer", "middle drawer", "bottom drawer", "door"].map((where, index) => {
    const cold = shown(-kit.random.whole(32, 42) / 2, "0.0");
    return putRow(sheet, top + 1 + index, 1, [where, cold])[1]!;
  });
  kit.marked.numberColumns.push({
    ...{ spots, heading: heads[1]!, total: null, kind: "temperature" },
  });
}
