import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { given } from "../lodgers/words";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { readings, rowsOf, WARNS } from "./words";

const KNOWN: readonly Said[] = [
  { label: "fp of the mix, °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "all water, g", states: "water", as: "formula", format: "0" },
  { label: "solids dissolved, g", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "water frozen at −11 °C, %",
    ...{ states: "ice of water", as: "typed", temperatureC: -11, decimals: 0 },
  },
];

const STEP = 4;

interface Event {
  readonly sheet: CorpusSheet;
  /** Grams of each ice that the party eats. */
  readonly wanted: Spot;
}

/** One ice with what it takes for the party. */
function block(kit: Kit, { sheet, wanted }: Event, made: MadeRecipe, at: number) {
  const left = STEP * at;
  put(sheet, 6, left, `${at + 1}. ${made.title}`);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 8, column: left },
    {
      heads: ["Item", "Card (g)", "Party (kg)"],
      cells: (name, grams) => [name, grams],
    },
  );
  put(sheet, end, left, "all");
  const total = sumOf(kit, sheet, { row: end, column: left + 1 }, amounts);
  putRow(sheet, 7, left, ["times the card", shown(`=${fixed(wanted)}/${a1(total)}`, "0.00")]);
  const factor = { sheet: sheet.name, row: 7, column: left + 1 };
  const scaled = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [factor] },
    content: (spot) => `=${a1(spot)}*${fixed(factor)}/1000`,
  });
  sumOf(kit, sheet, { row: end, column: left + 2 }, scaled, "0.000");
  const cells = { names, amounts, alsoAmounts: scaled, unit: "g", total } as const;
  return markRecipe(kit, made, { ...cells, amountLabel: heads[1]! });
}

/** All that has to be bought, added up over the three ices. */
function shopping(kit: Kit, recipes: readonly MarkedRecipe[]): void {
  const sheet = addSheet(kit.marked.book, "Cash & carry");
  const heads = putRow(sheet, 0, 0, ["Buy", "kg in all", "£ a kg, last time", "£"]);
  const items = itemsOf(recipes.map(({ made }) => made));
  const rows = items.map((item, index) => {
    const found = recipes.flatMap(({ names, alsoAmounts, made }) =>
      made.names.flatMap((name, at) =>
        name === item && names[at] !== undefined ? [`'Three ices'!${a1(alsoAmounts[at]!)}`] : [],
      ),
    );
    const from = recipes.flatMap(({ made }) =>
      made.lines.filter((_, at) => made.names[at] === item),
    );
    const price = shown(usualPrice(kit.random, from[0]!.en), "0.00");
    return putRow(sheet, 1 + index, 0, [item, shown(`=${found.join("+")}`, "0.000"), price]);
  });
  const kilos = rows.map((cells) => cells[1]!);
  const costs = beside(kit, heads[3]!, kilos, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 2 })}`,
  });
  const end = 1 + items.length;
  put(sheet, end, 0, "At the till");
  sumOf(kit, sheet, { row: end, column: 1 }, kilos, "0.000");
  sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  note(kit, sheet, end + 2, 0, "Round up at the shelf; what is left goes to the staff freezer.");
}

/** A party with three ices, each guest having some of each. */
function party(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Three ices");
  put(sheet, 0, 0, "Garden party at the mill, trio of ices");
  const guests = putRow(sheet, 2, 0, ["Guests", random.whole(45, 140)])[1]!;
  const quenelle = given(kit, sheet, [3, 0], ["One quenelle", "g", random.pick([35, 40, 45])]);
  const need = `=${a1(guests)}*${a1(quenelle)}`;
  const wanted = putRow(sheet, 4, 0, ["Of each ice (g)", need])[1]!;
  rowsOf(sheet, { row: 2, column: 4 }, [
    ["16:30", "van loaded", "Two boxes of dry ice"],
    ["18:00", "drinks on the lawn"],
    ["20:15", "ices out", "Four waiters"],
  ]);
  const own = { sugar: "white sugar", "lemon juice": "fresh lemon juice" };
  const mades = kit.make(3).map((made) => called(made, own));
  const recipes = mades.map((made, at) => block(kit, { sheet, wanted }, made, at));
  const row = 10 + Math.max(...mades.map(({ names }) => names.length));
  recipes.forEach((recipe, at) => {
    const column = STEP * at;
    const next = say(sheet, recipe, { row, column }, KNOWN);
    nameTarget(sheet, recipe, { row: next, column, label: "plated as" });
    tellIn(sheet, recipe, { row: row + 6, column }, WARNS);
  });
  readings(
    kit,
    sheet,
    { row: row + 8, column: 0 },
    {
      heads: ["Cool box", "Lid probe on arrival (°C)"],
      when: ["blue", "grey", "long one"],
      tenths: [-192, -148],
    },
  );
  shopping(kit, recipes);
}

/** A caterer with an event to serve. */
export const summerParties: readonly Layout[] = [
  { name: "event caterer, trio of ices and what to buy", language: "en", build: party },
];
