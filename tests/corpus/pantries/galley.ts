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
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed, type Listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { degrees, readings } from "./words";

const ROOMS = ["Lido grill", "Main dining room", "Upper deck bar"] as const;

const VOICE: Voice = {
  lead: "ALLERGENS:",
  honey: "HONEY - not for infants under 12 months.",
  alcohol: "CONTAINS ALCOHOL - no children, no pregnant guests, no crew going on watch or driving.",
  nuts: "WHOLE NUTS - choking hazard, not for children under 5.",
  egg: "RAW EGG YOLK - heat the mix to 71 °C or draw pasteurised yolk.",
};

const FACTS: readonly Said[] = [
  { label: "Starts to freeze (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Below plain water by (K)", states: "depression", as: "typed", decimals: 2 },
  {
    label: "Ice in the pan at −14 °C, % of the mix",
    ...{ states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 },
  },
  { label: "Sugars to 100 g water (g)", states: "sugar per 100 g water", as: "typed", decimals: 1 },
];

/** Who eats where tonight, and how often each room needs the card. */
function covers(kit: Kit, sheet: CorpusSheet, portion: Spot, base: Spot): Spot[] {
  const { random } = kit;
  putRow(sheet, 4, 2, ROOMS);
  putRow(sheet, 5, 0, ["Covers tonight"]);
  putRow(sheet, 6, 0, ["Mix wanted", "kg"]);
  putRow(sheet, 7, 0, ["Times the card"]);
  return ROOMS.map((_, index) => {
    const guests = put(sheet, 5, 2 + index, 12 * random.whole(6, 40));
    const wanted = put(sheet, 6, 2 + index, shown(`=${a1(guests)}*${fixed(portion)}/1000`, "0.00"));
    return put(sheet, 7, 2 + index, shown(`=${a1(wanted)}/${fixed(base)}`, "0.00"));
  });
}

/** The same lines for each room, and for all of them. */
function rooms(kit: Kit, sheet: CorpusSheet, list: Listed, times: readonly Spot[]): Spot[] {
  const each = times.map((factor, index) =>
    beside(kit, list.heads[2 + index]!, list.amounts, {
      ...{ sheet, format: "0.000", fixed: [factor] },
      content: (spot) => `=${a1(spot)}*${fixed(factor)}`,
    }),
  );
  const all = beside(kit, list.heads[5]!, list.amounts, {
    ...{ sheet, format: "0.000" },
    content: (_, index) => `=SUM(${span(each.map((spots) => spots[index]!))})`,
  });
  const columns = [...each, all];
  columns.forEach((spots, index) =>
    sumOf(kit, sheet, { row: list.end, column: 2 + index }, spots, "0.000"),
  );
  return columns.flat();
}

/** The card: what is in a kilogram, and in what the rooms order. */
function card(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, portion: Spot): MarkedRecipe {
  const list = listed(
    sheet,
    made,
    { row: 9, column: 0 },
    {
      heads: ["Item", "Card (kg)", ...ROOMS.map((room) => `${room} (kg)`), "Draw from stores (kg)"],
      cells: (name, grams) => [name, shown(inUnit(grams, "kg"), "0.000")],
    },
  );
  const { names, amounts, end } = list;
  put(sheet, end, 0, "Yield");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.000");
  const alsoAmounts = rooms(kit, sheet, list, covers(kit, sheet, portion, total));
  const amountLabel = list.heads[1]!;
  return markRecipe(kit, made, { names, amounts, alsoAmounts, unit: "kg", amountLabel, total });
}

/** A ship's cold kitchen: one card, scaled to three dining rooms. */
function galley(kit: Kit): void {
  const [first] = kit.make(1);
  const made = called(perKilogram(first!), {
    ...{ sugar: "granulated sugar", "skim milk powder": "skimmed milk powder", salt: "sea salt" },
  });
  const sheet = addSheet(kit.marked.book, "Cold section 14");
  put(sheet, 0, 0, `COLD SECTION / CARD 14 / ${made.title.toUpperCase()}`);
  const words = { label: "Scoop on the plate (g)", bare: "Scoop on the plate" };
  const portion = input(kit, sheet, { row: 2, column: 0 }, { ...words, value: 55 });
  const recipe = card(kit, sheet, made, portion);
  const { row } = recipe.total!;
  const next = tellIn(sheet, recipe, { row: row + 2, column: 0 }, VOICE);
  note(kit, sheet, next, 0, "Requisition to be signed by the provision master before 1500.");
  const below = say(sheet, recipe, { row: 9, column: 8 }, FACTS);
  nameTarget(sheet, recipe, { row: below, column: 8, label: "Leaves the pass" });
  const hours = ["0600", "1200", "1800", "2400"].map((hour) => [
    ...[hour, degrees(kit, -21, -17), degrees(kit, -15, -12)],
  ]);
  readings(
    kit,
    sheet,
    { row: row + 5, column: 0 },
    {
      heads: ["Watch", "Locker 3 (°C)", "Dipping well (°C)"],
      ...{ rows: hours, temperatures: [1, 2] },
    },
  );
}

/** Sheets of a ship's galley. */
export const galleys: readonly Layout[] = [
  { name: "ship's galley, one card for three dining rooms", language: "en", build: galley },
];
