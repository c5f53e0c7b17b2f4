import { addSheet, put, putRow, shown, span, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, stillMet } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { solutionRows } from "../solutionRows";

const VOICE: Voice = {
  lead: "Heads up, contains",
  honey: "Honey inside: not for babies under 12 months.",
  alcohol: "Boozy: not for kids, not if you're pregnant or driving home.",
  nuts: "Whole nuts: choking hazard for kids under 5.",
  egg: "Raw yolks: cook the base to 71 °C or buy pasteurized yolks.",
};

const OWN = {
  ...{ "skim milk powder": "nonfat dry milk", hazelnuts: "filberts", sugar: "granulated sugar" },
  ...{ "apple puree": "unsweetened applesauce", water: "filtered water" },
};

const SAID: readonly Said[] = [
  { label: "Freezes at, °C", states: "freezing point", as: "typed", decimals: 2 },
  { label: "Depression, K", states: "depression", as: "formula" },
  { label: "Water, g in 100 g of base", states: "water", as: "formula", format: "0.0" },
  {
    ...{ label: "% of water frozen at −18 °C", states: "ice of water", as: "typed" },
    ...{ temperatureC: -18, decimals: 1 },
  },
  {
    ...{ label: "% of water frozen at −12 °C", states: "ice of water", as: "typed" },
    ...{ temperatureC: -12, decimals: 1 },
  },
];

const TASTERS = ["Deb", "Marcus", "Priya", "Walt"];

/** What the club thought of it, out of ten. */
function votes(kit: Kit, sheet: CorpusSheet, row: number): void {
  putRow(sheet, row, 7, ["Taster", "Texture /10", "Flavor /10"]);
  const rows = TASTERS.map((name, index) =>
    putRow(sheet, row + 1 + index, 7, [name, kit.random.whole(4, 10), kit.random.whole(5, 10)]),
  );
  const average = (at: number) => {
    const spots = rows.map((cells) => cells[at]!);
    return shown(`=AVERAGE(${span(spots)})`, "0.0");
  };
  putRow(sheet, row + 1 + TASTERS.length, 7, ["club average", average(1), average(2)]);
}

/** One entry: numbers at the left, the base in per cent beside them, the votes at the right. */
function entry(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): void {
  put(sheet, row, 0, `Entry: ${made.title}`);
  const [, label] = putRow(sheet, row + 1, 3, ["Base", "Pct of base", "Notes"]);
  const names = made.names.map((name, index) => put(sheet, row + 2 + index, 3, name));
  const amounts = made.grams.map((grams, index) =>
    put(sheet, row + 2 + index, 4, shown(grams, "0.0")),
  );
  put(sheet, row + 2, 5, kit.random.pick(["weighed twice", "store brand", "from the co-op"]));
  const end = row + 2 + names.length;
  put(sheet, end, 3, "Checks to 100?");
  const total = sumOf(kit, sheet, { row: end, column: 4 }, amounts, "0.0");
  const lines = { names, amounts, total, unit: "%", amountLabel: label! } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: row + 2, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Shooting for" });
  tellIn(sheet, recipe, { row: end + 1, column: 3 }, VOICE);
  votes(kit, sheet, row + 1);
}

/** How cold solutions get, worked by the law before the contest. */
function warmUp(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Warm-up for new members: five jars, one law");
  solutionRows(kit, sheet, {
    ...{ top: 2, left: 0, constant: "Kf, water (K*kg/mol)" },
    headings: [
      ...(["In the jar", "Grams in", "Water, g", "Molar mass, g/mol", "i"] as const),
      ...(["Molality, mol/kg", "Depression, K", "Should freeze at, °C"] as const),
    ],
    proviso: (gap) => `Good enough for jars this weak: the ideal law is off by ${gap} K at most.`,
  });
}

/** A contest of a club, and what it teaches newcomers. */
function austin(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Contest");
  put(sheet, 0, 0, "Backyard churners, July contest");
  const mades = kit.make(3).map((made) => stillMet(called(hundred(made), OWN)));
  mades.forEach((made, index) => entry(kit, sheet, made, 2 + 12 * index));
  note(kit, sheet, 40, 0, "Winner keeps the brass dasher until next July.");
  warmUp(kit, addSheet(kit.marked.book, "Jars"));
}

/** A club that churns in the backyard. */
export const churnClubs: readonly Layout[] = [
  { name: "backyard churners, three contest entries", language: "en", build: austin },
];
