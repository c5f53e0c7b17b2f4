import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { upTo } from "../strollers/words";
import { perKilo, rowsAt, thermometer, WIRT } from "./words";

const BOOK = "Nachtisch";
const OWN = { Zucker: "Kristallzucker", "Sahne 35 %": "Rahm 35 %", Eigelb: "Eidotter" };

interface Dish {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
}

/** A dish under its name, its sums at the end; gives it and the next free row. */
function dish(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): Dish {
  put(sheet, row, 0, made.title);
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: row + 1, column: 0 },
    {
      heads: ["Menge", "EH", "Ware", "EK €/kg", "Einsatz €"],
      cells: (item, grams) => [grams, "g", item, shown(perKilo(kit, item), "0.00")],
      ...{ name: 2, amount: 0 },
    },
  );
  const costs = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/1000*${a1({ ...spot, column: 3 })}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  putRow(sheet, end, 1, ["g", "Masse fertig"]);
  const cost = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const lines = { names, amounts, unitCells: columnOf(rows, 1), amountLabel: heads[0]!, total };
  return { recipe: markRecipe(kit, made, { ...lines, unit: "g" }), cost };
}

const SLIP = [
  ...["Gericht", "€ gesamt", "friert ab °C", "Wasser g", "vom Wasser fest bei −14 °C in %"],
  ...["soll werden", "Karte / Aushang"],
];

const PLANS: readonly ResultPlan[] = [
  { states: "freezing point", as: "formula", format: "0.0" },
  { states: "water", as: "typed", decimals: 0 },
  { states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
];

/** What the kitchen and the waiters need, a line for each dish. */
function slip(kit: Kit, sheet: CorpusSheet, dishes: readonly Dish[]): void {
  put(sheet, 0, 0, "Zettel für die Wand");
  const heads = putRow(sheet, 2, 0, SLIP);
  const costs = dishes.map(({ recipe, cost }, index) => {
    const row = 3 + index;
    put(sheet, row, 0, recipe.made.title);
    const lines = `${BOOK}!${span(recipe.names)},${BOOK}!${span(recipe.amounts)}`;
    PLANS.forEach((plan, at) =>
      resultAt(sheet, recipe, heads[2 + at]!, { row, column: 2 + at }, plan, () => lines),
    );
    nameTarget(sheet, recipe, { row, column: 5 });
    tellIn(sheet, recipe, { row, column: 6 }, WIRT);
    return put(sheet, row, 1, shown(`=${BOOK}!${a1(cost)}`, "0.00"));
  });
  const end = 3 + dishes.length;
  put(sheet, end, 0, "zusammen");
  sumOf(kit, sheet, { row: end, column: 1 }, costs, "0.00");
  rowsAt(sheet, { row: end + 3, column: 0 }, [
    ...[["Truhen"], ["Keller links"], ["Keller rechts"], ["Schank"], ["Garten"]],
  ]);
  const at = { row: end + 3, column: 1 };
  thermometer(kit, sheet, at, { heading: "früh (°C)", count: 4, range: [-21, -17] });
  const late = { heading: "spät (°C)", count: 4, range: [-20, -16] } as const;
  thermometer(kit, sheet, { ...at, column: 2 }, late);
  note(kit, sheet, end + 9, 0, "Montag Ruhetag, Truhe Garten abtauen.");
}

/** An inn's sweets below each other, and the slip for the wall. */
function gasthaus(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, BOOK);
  const mades = kit.make(3).map((made) => called(upTo(made, 2000), OWN));
  let row = 0;
  const dishes = mades.map((made) => {
    const each = dish(kit, sheet, made, row);
    row = each.cost.row + 2;
    return each;
  });
  slip(kit, addSheet(kit.marked.book, "Wand"), dishes);
}

/** An inn. */
export const gasthaeuser: readonly Layout[] = [
  { name: "Gasthaus, Nachtische untereinander und Wandzettel", language: "de", build: gasthaus },
];
