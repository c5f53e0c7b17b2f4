import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe } from "../layouts/parts";
import { massOf, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { isAlcoholic, itemsOf, madeOf } from "../strollers/words";
import { readings, warnAt } from "./words";

const SAID: readonly (readonly [string, ResultPlan])[] = [
  ["Freezing point (°C)", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Total water (g)", { states: "water", as: "typed", decimals: 0 }],
  ["Total sugars (% by weight)", { states: "sugar share", as: "typed", decimals: 1 }],
  ["Solids in solution (g)", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "Water frozen at −14 °C, as given out (%)",
    { states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
  ],
];

interface Grid {
  readonly names: readonly Spot[];
  readonly heading: Spot;
  readonly top: number;
}

/** One ice down its column: what goes in, its weight, what it is like. */
function ice(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, grid: Grid): void {
  const { names, heading: amountLabel, top } = grid;
  put(sheet, 3, column, made.title);
  const items = names.map(({ row }) => sheet.cells[row]![0]!.content);
  const own = made.names.map((name) => names[items.indexOf(name)]!);
  const amounts = own.map(({ row }, index) => put(sheet, row, column, made.grams[index]));
  put(sheet, top, column, massOf(made));
  const recipe = markRecipe(kit, made, {
    ...{ names: own, amounts, unit: "g", amountLabel, shared: true },
  });
  SAID.forEach(([, plan], index) => {
    const row = top + 2 + index;
    resultAt(sheet, recipe, { sheet: sheet.name, row, column: 0 }, { row, column }, plan);
  });
  const row = top + 2 + SAID.length;
  nameTarget(sheet, recipe, { row, column });
  warnAt(sheet, recipe, { row: row + 1, column }, "Contains:");
}

const WARDS = ["Elm", "Ash", "Hazel", "Rowan", "Willow"];

/** How the ices reached the wards. */
function trolley(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Trolley check");
  put(sheet, 0, 0, "Trolley check, probe between two tubs");
  const heads = putRow(sheet, 1, 0, ["Ward", "Leaving (°C)", "Arriving (°C)", "Tubs", "Left over"]);
  const rows = WARDS.map((ward, index) => {
    const [out, warmer] = [-random.whole(34, 39) / 2, random.whole(2, 7) / 2];
    const tubs = random.whole(8, 22);
    return putRow(sheet, 2 + index, 0, [
      ...[ward, shown(out, "0.0"), shown(out + warmer, "0.0"), tubs, random.whole(0, 4)],
    ]);
  });
  [1, 2].forEach((at) => readings(kit, heads[at]!, rows, at));
}

/** Three ices for the wards, every number typed. */
function dietitian(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Ward ices");
  const mades = madeOf(kit, 3, (made) => !isAlcoholic(made)).map((made) =>
    called(made, { sugar: "white sugar" }),
  );
  put(sheet, 0, 0, "Ices for patients who eat little");
  put(sheet, 1, 0, "Worked out with the kitchen, checked by dietetics");
  const heading = put(sheet, 3, 0, "Grams per batch");
  const items = itemsOf(mades).sort((one, other) => one.localeCompare(other, "en"));
  const names = items.map((item, index) => put(sheet, 4 + index, 0, item));
  const top = 4 + items.length;
  put(sheet, top, 0, "Batch weight (g)");
  SAID.forEach(([label], index) => put(sheet, top + 2 + index, 0, label));
  put(sheet, top + 2 + SAID.length, 0, "Texture asked for");
  put(sheet, top + 3 + SAID.length, 0, "For the tub lid");
  mades.forEach((made, index) => ice(kit, sheet, made, 1 + index, { names, heading, top }));
  note(kit, sheet, top + 6 + SAID.length, 0, "Thickened diets: ask speech therapy first.");
  trolley(kit);
}

/** A hospital's dietitian. */
export const dietitians: readonly Layout[] = [
  { name: "dietitian, ward ices across, typed", language: "en", build: dietitian },
];
