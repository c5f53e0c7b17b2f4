import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { readings } from "./words";

const VOICE: Voice = {
  lead: "Tell them:",
  honey: "Honey in it, so none for babies under 12 months.",
  alcohol: "There's drink in it: no children, no drivers, nobody expecting.",
  nuts: "Whole nuts, choking danger for the under-fives.",
  egg: "Yolks: take the custard to 71 °C, or use pasteurised yolk.",
};

const OWN = { water: "cold water", sugar: "caster sugar", "lemon juice": "juice of lemons" };

const answers = (temperature: Spot, temperatureC: number): readonly Said[] => [
  { label: "Starts freezing/°C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "All the water/g", states: "water", as: "typed", decimals: 0 },
  { label: "Gone into solution/g", states: "dissolved", as: "formula", format: "0" },
  {
    ...{ label: "Ice in the van/% of the mix", states: "ice of mix", as: "formula", format: "0" },
    ...{ temperature, temperatureC },
  },
];

const TOP = 5;

/** A card: the sum first, then what is in it, then what comes of it. */
function card(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  column: number,
  said: readonly Said[],
) {
  put(sheet, TOP - 1, column, made.title);
  const { heads, names, amounts } = listed(
    sheet,
    made,
    { row: TOP + 1, column },
    { heads: ["In the bowl", "Weight/g"], cells: (name, grams) => [name, grams] },
  );
  put(sheet, TOP, column, "Bowl in all");
  const total = sumOf(kit, sheet, { row: TOP, column: column + 1 }, amounts);
  const lines = { names, amounts, total, unit: "g", amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: TOP + 9, column }, said);
  nameTarget(sheet, recipe, { row: next, column, label: "To come out" });
  tellIn(sheet, recipe, { row: TOP + 15, column }, VOICE);
}

const FAIRS = ["Skibbereen", "Bantry", "Kinsale", "Cobh"];

/** What the fairs brought, with the weather of the day. */
function fairs(kit: Kit, sheet: CorpusSheet): void {
  const rows = FAIRS.map((fair, index) => {
    const taken = shown(10 * kit.random.whole(18, 64), "€#,##0");
    return putRow(sheet, 25 + index, 0, [fair, taken, kit.random.pick(["dry", "soft", "grand"])]);
  });
  putRow(sheet, 24, 0, ["Fair day", "Took in", "Weather"]);
  put(sheet, 25 + FAIRS.length, 0, "So far");
  sumOf(kit, sheet, { row: 25 + FAIRS.length, column: 1 }, columnOf(rows, 1), "€#,##0");
  readings(
    kit,
    sheet,
    { row: 24, column: 4 },
    {
      heads: ["Checked", "Van freezer/°C", "Cool box/°C"],
      labels: ["leaving", "noon", "three", "home"],
      ranges: [
        [-17, -13],
        [1, 5],
      ],
    },
  );
}

/** Three cards beside each other for a van at the fairs. */
function corkCards(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "The van");
  put(sheet, 0, 0, "Ices for the bank holiday fairs");
  const value = -kit.random.whole(12, 16);
  const words = { label: "Van freezer set to/°C", bare: "Van freezer set to", value };
  const van = input(kit, sheet, { row: 2, column: 0 }, words);
  kit
    .make(3)
    .forEach((made, index) => card(kit, sheet, called(made, OWN), 4 * index, answers(van, value)));
  fairs(kit, sheet);
  note(kit, sheet, 31, 0, "Mind the spare key is with Nuala, not under the pot any more.");
}

/** A van that goes to the fairs. */
export const corkVans: readonly Layout[] = [
  { name: "ice van in West Cork, three cards abreast", language: "en", build: corkCards },
];
