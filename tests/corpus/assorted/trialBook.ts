import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { again } from "../layouts/marking";
import type { MarkedRecipe } from "../marks";
import { resultAt, type ResultPlan } from "../results";
import { aside, asTemperatures } from "./words";

const VOICE: Voice = {
  lead: "NB for guests, contains",
  honey: "honey (not for babies below 12 months).",
  alcohol: "Alcohol: not for the children, not when pregnant, not before driving.",
  nuts: "whole nuts (a child under 5 may choke).",
  egg: "raw egg yolk (heat to 71 °C, or pasteurised).",
};

const OWN = {
  sugar: "granulated sugar",
  strawberries: "strawberries, fresh",
  "lemon juice": "fresh lemon juice",
  "cocoa powder": "cocoa",
};

const ANSWERS: readonly (readonly [label: string, plan: ResultPlan])[] = [
  ["fp °C", { states: "freezing point", as: "formula", format: "0.00" }],
  [
    "frozen water @ −18 °C, %",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
  ["sugars g/100 g water", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
];

const THOUGHTS = [
  "icy at the rim",
  "better, still a bit hard",
  "bowl was not cold enough",
  "the one to repeat",
];

const DATES = ["3 May", "10 May", "24 May", "7 June"];

/** The trials of one ice, one a row. */
function trials(kit: Kit, sheet: CorpusSheet): number {
  const first = called(kit.make(1)[0]!, OWN);
  const others = Array.from({ length: 3 }, () => called(again(kit, first), OWN));
  const mades = [first, ...others];
  put(sheet, 0, 0, `${first.title}, all the goes at it`);
  const amountLabel = put(sheet, 2, 2, "grams each time");
  putRow(sheet, 3, 0, ["when", "go"]);
  const items = putRow(sheet, 3, 2, [...new Set(mades.flatMap(({ names }) => names))]);
  const end = 2 + items.length;
  put(sheet, 3, end, "all of it");
  const labels = ANSWERS.map(([words], at) => put(sheet, 3, end + 1 + at, words));
  const [served] = putRow(sheet, 3, end + 4, [
    "served at °C",
    "stars /5",
    "afterthoughts",
    "hoped for",
  ]);
  const recipes: MarkedRecipe[] = [];
  const temps = mades.map((made, index) => {
    const row = 4 + index;
    putRow(sheet, row, 0, [DATES[index], index + 1]);
    const recipe = alongRow(kit, sheet, made, row, { items, unit: "g", format: "0", amountLabel });
    ANSWERS.forEach(([, plan], at) => {
      resultAt(sheet, recipe, labels[at]!, { row, column: end + 1 + at }, plan, () => recipe.lines);
    });
    putRow(sheet, row, end + 5, [kit.random.whole(2, 5), THOUGHTS[index]]);
    nameTarget(sheet, recipe, { row, column: end + 7 });
    recipes.push(recipe);
    return put(sheet, row, end + 4, shown(-kit.random.whole(26, 34) / 2, "0.0"));
  });
  asTemperatures(kit, served!, temps);
  const [one, ...more] = recipes as [MarkedRecipe, ...MarkedRecipe[]];
  tellIn(sheet, one, { row: 9, column: 0 }, VOICE);
  more.forEach(({ flags }) => flags.push(...one.flags));
  return 11;
}

/** The freezer at home over a day, and what the shops had. */
function home(kit: Kit, sheet: CorpusSheet, row: number): void {
  const rows = ["7 am", "noon", "6 pm", "midnight"].map((hour) => [
    ...[hour, shown(-kit.random.whole(170, 205) / 10, "0.0")],
    shown(-kit.random.whole(155, 185) / 10, "0.0"),
  ]);
  const [, top, door] = aside(
    sheet,
    { row, column: 0 },
    ["chest freezer", "lid °C", "floor °C"],
    rows,
  );
  [top!, door!].forEach((heading) => {
    const spots: Spot[] = rows.map((_, index) => ({ ...heading, row: row + 1 + index }));
    asTemperatures(kit, heading, spots);
  });
  const shops = [
    ["spare scraper", "brew shop"],
    ["tubs with lids", "Saturday stall"],
  ];
  aside(sheet, { row, column: 5 }, ["where to get", "it"], shops);
  note(kit, sheet, row + 6, 0, "Thermometer checked in melting ice: reads 0.2 °C too high.");
}

/** A hobby cook's log. */
function book(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "goes");
  home(kit, sheet, trials(kit, sheet));
}

/** Somebody who makes ice at home and writes it all down. */
export const trialBooks: readonly Layout[] = [
  { name: "home log, four goes at one ice", language: "en", build: book },
];
