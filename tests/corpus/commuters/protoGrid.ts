import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { stillMet } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { trueValue, type MarkedRecipe } from "../marks";
import { perHundred, type MadeRecipe } from "../recipes";
import { answersDown, placesOf, type Answer } from "../regulars/columns";
import { itemsOf } from "../strollers/words";
import { readings, warnAt } from "./words";

const ANSWERS: readonly Answer[] = [
  ["Freezing point, predicted (°C)", { states: "freezing point", as: "formula" }],
  ["Total water (%)", { states: "water", as: "formula", format: "0.0" }],
  ["Total sugars (% of mix)", { states: "sugar share", as: "typed" }],
  ["Sugars per 100 g of water (g)", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  ["Solids dissolved (g/100 g mix)", { states: "dissolved", as: "typed", decimals: 1 }],
  ["Ice at −16 °C (% of mix)", { states: "ice of mix", as: "typed", temperatureC: -16 }],
  ["Ice at −16 °C (% of water)", { states: "ice of water", as: "typed", temperatureC: -16 }],
];

/** The first row of the answers; the probe, its difference, the target and the lines follow. */
const TOP = 3;
const PROBE = TOP + ANSWERS.length;
const FIRST = PROBE + 6;

interface Column {
  readonly recipe: MarkedRecipe;
  readonly probe: Spot;
  readonly off: Spot;
}

type Place = readonly [sheet: CorpusSheet, column: number];

/** The per cent of a prototype. */
function shares(kit: Kit, [sheet, column]: Place, made: MadeRecipe, items: readonly Spot[]) {
  const share = put(sheet, FIRST - 1, column, "% w/w");
  const at = placesOf(sheet, items, made.names);
  const amounts = at.map((item, index) =>
    put(sheet, FIRST + item, column, shown(made.grams[index]!, "0.0")),
  );
  const all = items.map((spot) => ({ ...spot, column }));
  const total = sumOf(kit, sheet, { row: FIRST + items.length, column }, all, "0.0");
  const names = at.map((item) => items[item]!);
  const lines = { names, amounts, unit: "%", amountLabel: share, total, shared: true } as const;
  kit.marked.numberColumns.push({ spots: amounts, heading: share, total, kind: "per cent" });
  const cells = `${absolute(span(items))},${span(all)}`;
  return { recipe: markRecipe(kit, made, lines), cells };
}

/** One prototype down its column. */
function prototype(kit: Kit, place: Place, made: MadeRecipe, items: readonly Spot[]): Column {
  const [sheet, column] = place;
  put(sheet, 1, column, `P${column + 20}`);
  put(sheet, 2, column, made.title);
  const { recipe, cells } = shares(kit, place, made, items);
  answersDown(sheet, recipe, ANSWERS, { row: TOP, column, labels: 0 }, cells);
  nameTarget(sheet, recipe, { row: PROBE + 2, column });
  warnAt(sheet, recipe, { row: PROBE + 3, column }, "Contains");
  return { recipe, ...probed(kit, sheet, made, column) };
}

/** What the probe showed, and how far the prediction is from it. */
function probed({ random }: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number) {
  const real = trueValue(made, "freezing point", null) ?? -2;
  const seen = Math.min(-0.1, Math.round(10 * (real + random.between(-0.1, 0.1))) / 10);
  const probe = put(sheet, PROBE, column, shown(seen, "0.0"));
  const formula = `=${a1({ ...probe, row: TOP })}-${a1(probe)}`;
  return { probe, off: put(sheet, PROBE + 1, column, shown(formula, "0.0")) };
}

/** Four prototypes beside each other, what they are like over what is in them. */
function grid(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Prototypes");
  const mades = kit.make(4).map((made) => stillMet(perHundred(made)));
  putRow(sheet, 0, 0, ["Frozen dessert prototypes, bench scale, sprint 3"]);
  putRow(sheet, 1, 0, ["Prototype"]);
  ANSWERS.forEach(([label], index) => put(sheet, TOP + index, 0, label));
  const probe = put(sheet, PROBE, 0, "Freezing point, by probe (°C)");
  const off = put(sheet, PROBE + 1, 0, "Prediction minus probe (K)");
  put(sheet, PROBE + 2, 0, "Eating style aimed at");
  put(sheet, PROBE + 3, 0, "Allergens and cautions");
  put(sheet, FIRST - 1, 0, "Raw material");
  const items = itemsOf(mades).map((item, index) => put(sheet, FIRST + index, 0, item));
  put(sheet, FIRST + items.length, 0, "Sum");
  const columns = mades.map((made, index) => prototype(kit, [sheet, 1 + index], made, items));
  readings(
    kit,
    probe,
    columns.map((each) => each.probe),
  );
  const spots = columns.map((each) => each.off);
  kit.marked.formulaColumns.push({ spots, heading: off, fixed: [] });
  note(kit, sheet, FIRST + items.length + 2, 0, "Probe dipped 40 mm, stirred, second reading.");
}

/** A young company's bench. */
export const protoGrids: readonly Layout[] = [
  { name: "start-up bench, prototypes across with the probe", language: "en", build: grid },
];
