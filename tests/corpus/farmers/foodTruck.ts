import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { namesOf } from "../layouts/marking";
import { absolute, sumOf } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { readings, table } from "./words";

const VOICE: Voice = {
  lead: "Contains:",
  honey: "Honey - not for bubs under 12 months.",
  alcohol: "Alcohol - not for kids, not if pregnant, not if driving.",
  nuts: "Whole nuts - choking hazard for kids under 5.",
  egg: "Raw yolk - take to 71 °C or buy pasteurised.",
};

const OWN = {
  ...{ "whole milk": "full cream milk", "lemon juice": "lemon juice, fresh", mango: "mangoes" },
  ...{ sugar: "caster sugar", "glucose syrup DE 42": "glucose syrup DE42" },
};

const FACTS: readonly Fact[] = [
  ["Freezes (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Frozen at −14 °C (% of its water)", { states: "ice of water", as: "typed", temperatureC: -14 }],
  ["Sugars (g per 100 g water)", { states: "sugar per 100 g water", as: "typed", decimals: 0 }],
  ["Dissolved (g in the kilo)", { states: "dissolved", as: "formula", format: "0" }],
];

const TOP = 5;

interface Order {
  readonly items: readonly Spot[];
  readonly heads: readonly Spot[];
  readonly kilos: readonly Spot[];
}

/** What the week's tubs take, what the van holds and what has to be bought. */
function order(kit: Kit, sheet: CorpusSheet, { items, heads, kilos }: Order): void {
  const [needs, , buys] = heads as [Spot, Spot, Spot];
  const tubs = absolute(span(kilos));
  const lines = items.map(({ row }) => {
    const own = span(kilos.map(({ column }) => ({ sheet: sheet.name, row, column })));
    const need = put(sheet, row, needs.column, shown(`=SUMPRODUCT(${own},${tubs})/1000`, "0.00"));
    const held = put(sheet, row, needs.column + 1, shown(kit.random.whole(0, 16) / 4, "0.00"));
    const buy = shown(`=MAX(0,${a1(need)}-${a1(held)})`, "0.00");
    return [need, held, put(sheet, row, buys.column, buy)];
  });
  kit.marked.formulaColumns.push({ spots: columnOf(lines, 0), heading: needs, fixed: kilos });
  kit.marked.formulaColumns.push({ spots: columnOf(lines, 2), heading: buys, fixed: [] });
}

/** A flavour's column: what is said of it stands under the lines. */
function flavour(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  index: number,
  place: { readonly items: readonly Spot[]; readonly amountLabel: Spot },
): Spot {
  const { items, amountLabel } = place;
  const column = 1 + index;
  put(sheet, TOP - 2, column, made.title);
  const kilos = put(sheet, TOP - 1, column, kit.random.pick([5, 5, 10, 15, 20]));
  const recipe = downColumn(kit, sheet, made, index, {
    ...{ items, left: 1, unit: "g", format: "0", amountLabel },
  });
  const row = TOP + items.length + 2;
  factsDown(sheet, recipe, FACTS, { row, column, labels: 0, items });
  nameTarget(sheet, recipe, { row: row + 4, column });
  tellIn(sheet, recipe, { row: row + 5, column }, VOICE);
  return kilos;
}

const ROUTE = [
  ["Thu", "Noosa, river car park", "3 pm"],
  ["Fri", "Eumundi, behind the hall", "4 pm"],
  ["Sat", "Coolum, surf club", "10 am"],
];

/** Flavours across, per kilogram; order list right, route below. */
function foodTruck(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Truck");
  put(sheet, 0, 0, "Week's churn and what to buy");
  const mades = kit.make(4).map((made) => called(perKilogram(made), OWN));
  const amountLabel = put(sheet, 2, 0, "Grams of each for 1 kg of mix");
  put(sheet, TOP - 1, 0, "Kilos to churn this week");
  const items = namesOf(mades).map((name, index) => put(sheet, TOP + index, 0, name));
  const end = TOP + items.length;
  put(sheet, end, 0, "1 kg?");
  const kilos = mades.map((made, index) =>
    flavour(kit, sheet, made, index, { items, amountLabel }),
  );
  put(sheet, end + 6, 0, "Scoop it as");
  put(sheet, end + 7, 0, "Sticker");
  const heads = putRow(sheet, TOP - 2, 6, ["Need (kg)", "In the van (kg)", "Buy (kg)"]);
  order(kit, sheet, { items, heads, kilos });
  const whole = put(sheet, TOP - 1, 5, `=SUM(${span(kilos)})`);
  put(sheet, TOP - 2, 5, "Kilos, all");
  kit.marked.sums.push({ spot: whole, parts: kilos });
  const needed = items.map((spot) => ({ ...spot, column: 6 }));
  sumOf(kit, sheet, { row: end, column: 6 }, needed, "0.00");
  table(sheet, { row: end + 10, column: 0 }, ROUTE);
  readings(
    kit,
    sheet,
    { row: end + 9, column: 6 },
    {
      heads: ["Van check", "Dipping (°C)", "Store (°C)"],
      labels: ROUTE.map(([day]) => day),
      ranges: [
        [-15, -12],
        [-24, -20],
      ],
    },
  );
  note(kit, sheet, end + 14, 0, "Gas bottle due in June, ring ahead.");
}

/** A truck on the coast. */
export const foodTrucks: readonly Layout[] = [
  { name: "truck on the Sunshine Coast, week's churn and order", language: "en", build: foodTruck },
];
