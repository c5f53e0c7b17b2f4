import {
  a1,
  addSheet,
  fixed,
  over,
  put,
  putRow,
  shown,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit } from "../kit";
import { markRecipe, sumOf } from "../layouts/parts";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../visitors/lines";
import { answersDown, placesOf, tellIn, type Answer } from "./columns";

const ANSWERS: readonly Answer[] = [
  ["Begins to freeze at (°C)", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Water in one batch (g)", { states: "water", as: "typed", decimals: 0 }],
  ["Dissolved in one batch (g)", { states: "dissolved", as: "typed", decimals: 0 }],
  ["Sugar in the mix (%)", { states: "sugar share", as: "typed" }],
  ["Water frozen at −18 °C (%)", { states: "ice of water", as: "typed", temperatureC: -18 }],
];

const FIRST = 6;

interface Shelf {
  readonly names: readonly Spot[];
  readonly pop: Spot;
}

/** The amounts of a flavour: a batch of it, and beside it the batches of today. */
function amountsOf(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, left: number, shelf: Shelf) {
  const { names, pop } = shelf;
  const batches = put(sheet, 4, left + 1, kit.random.whole(1, 6));
  const heads = putRow(sheet, 5, left, ["One batch (g)", "Today (g)"]);
  const at = placesOf(sheet, names, made.names);
  const amounts = at.map((item, index) => put(sheet, FIRST + item, left, made.grams[index]));
  const all = names.map((spot) => ({ ...spot, column: left }));
  const today = all.map((spot) =>
    put(sheet, spot.row, left + 1, shown(`=${a1(spot)}*${fixed(batches)}`, "0;;")),
  );
  kit.marked.formulaColumns.push({ spots: today, heading: heads[1]!, fixed: [batches] });
  const row = FIRST + names.length;
  const total = sumOf(kit, sheet, { row, column: left }, all);
  const mix = sumOf(kit, sheet, { row, column: left + 1 }, today);
  put(sheet, row + 1, left + 1, shown(`=${a1(mix)}/${fixed(pop)}`, "0"));
  return markRecipe(kit, made, {
    ...{ names: at.map((item) => names[item]!), amounts, unit: "g", total, shared: true },
    ...{ alsoAmounts: at.map((item) => today[item]!), amountLabel: heads[0]! },
  });
}

/** One flavour, two columns wide, with what is said of it. */
function flavour(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, left: number, shelf: Shelf): void {
  const title = put(sheet, 3, left, made.title);
  sheet.merged.push(over([title, { ...title, column: left + 1 }]));
  const recipe = amountsOf(kit, sheet, made, left, shelf);
  const answers = FIRST + shelf.names.length + 3;
  answersDown(sheet, recipe, ANSWERS, { row: answers, column: left, labels: 0 });
  const row = answers + ANSWERS.length;
  nameTarget(sheet, recipe, { row, column: left });
  tellIn(sheet, recipe, { row: row + 1, column: left }, "Allergens");
}

/** What the chest at the kiosk shows over the week. */
function chest(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Chest freezer");
  const heads = putRow(sheet, 0, 0, ["Day", "Opening (°C)", "Closing (°C)", "Pops left"]);
  const days = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];
  days.forEach((day, index) => put(sheet, 1 + index, 0, day));
  const count = days.length;
  temperatures(kit, sheet, { heading: heads[1]!, count }, [-21, -18]);
  temperatures(kit, sheet, { heading: heads[2]!, count }, [-18, -15]);
  days.forEach((_, index) => put(sheet, 1 + index, 3, kit.random.whole(3, 40)));
}

/** Pops by the batch, a flavour two columns wide. */
export function popBatches(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Pops");
  put(sheet, 0, 0, "What we freeze today");
  const words = { label: "Mix in a pop (g)", bare: "Mix in a pop" };
  const value = kit.random.pick([60, 75, 85]);
  const pop = input(kit, sheet, { row: 1, column: 0 }, { ...words, value });
  const mades = kit.make(3);
  const items = [...new Set(mades.flatMap(({ names }) => names))];
  put(sheet, 3, 0, "Flavour");
  put(sheet, 4, 0, "Batches today");
  put(sheet, 5, 0, "What goes in");
  const names = items.map((item, index) => put(sheet, FIRST + index, 0, item));
  const end = FIRST + items.length;
  ["Altogether", "Pops"].forEach((label, index) => put(sheet, end + index, 0, label));
  const below = [...ANSWERS.map(([label]) => label), "Eats like", "On the sign"];
  below.forEach((label, index) => put(sheet, end + 3 + index, 0, label));
  mades.forEach((made, index) => flavour(kit, sheet, made, 1 + 2 * index, { names, pop }));
  note(kit, sheet, end + 11, 0, "Sticks in after forty minutes, when they stand by themselves.");
  chest(kit);
}
