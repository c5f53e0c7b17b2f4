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
import { tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { withLines, type MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { upTo } from "../strollers/words";
import { beyond, log, UNSERE } from "./words";

const SECTIONS: readonly (readonly [string, RegExp])[] = [
  ["Nass", /water|milk$|cream|coffee|yogurt/],
  ["Süß", /sugar|sucrose|dextrose|syrup|fructose|honey/],
  ["Pulver", /powder|inulin|acid|salt$/],
  ["Geschmack", /./],
];

const sectionOf = ({ en }: MadeRecipe["lines"][number]): number =>
  SECTIONS.findIndex(([, words]) => words.test(en));

/** The same lines, section by section. */
const bySection = (made: MadeRecipe): MadeRecipe =>
  withLines(
    made,
    [...made.lines].sort((one, other) => sectionOf(one) - sectionOf(other)),
  );

/** The lines under their sections, each section with its own sum; gives the row after them. */
function sections(kit: Kit, sheet: CorpusSheet, made: MadeRecipe) {
  const [names, amounts, sums]: [Spot[], Spot[], Spot[]] = [[], [], []];
  let row = 5;
  SECTIONS.forEach(([words], at) => {
    const own = made.lines.flatMap((each, index) => (sectionOf(each) === at ? [index] : []));
    if (own.length === 0) return;
    const spots = own.map((index, line) => {
      names.push(put(sheet, row + line, 1, made.names[index]));
      return put(sheet, row + line, 2, made.grams[index]);
    });
    put(sheet, row, 0, words);
    amounts.push(...spots);
    sums.push(sumOf(kit, sheet, { row, column: 4 }, spots));
    row += own.length;
  });
  return { names, amounts, sums, row };
}

/** A recipe in sections: amounts, shares of the whole, sums at the right. */
function sheetFor(kit: Kit, made: MadeRecipe, name: string): MarkedRecipe {
  const sheet = addSheet(kit.marked.book, name);
  put(sheet, 0, 0, made.title);
  putRow(sheet, 1, 0, ["Fassung", kit.random.pick(["2 a", "3 c", "4 b"])]);
  const heads = putRow(sheet, 4, 0, ["Teil", "Zutat", "Gramm", "Anteil", "Summe Teil (g)"]);
  const { names, amounts, row } = sections(kit, sheet, made);
  put(sheet, row + 1, 1, "Alles zusammen");
  const total = put(sheet, row + 1, 2, `=SUM(${span(amounts)})`);
  kit.marked.sums.push({ spot: total, parts: amounts });
  const shares = amounts.map((spot) =>
    put(sheet, spot.row, 3, shown(`=${a1(spot)}/${fixed(total)}`, "0.0%")),
  );
  kit.marked.formulaColumns.push({ spots: shares, heading: heads[3]!, fixed: [total] });
  const cells = { names, amounts, alsoAmounts: shares, unit: "g", total } as const;
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heads[2]! });
  tellIn(sheet, recipe, { row: row + 3, column: 0 }, UNSERE);
  return recipe;
}

const FACTS: readonly Fact[] = [
  ["Gefrierbeginn (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Wasser im Ansatz (g)", { states: "water", as: "formula", format: "0" }],
  ["Zucker auf 100 g Wasser (g)", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  [
    "Wasser gefroren bei −15 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -15, decimals: 0 },
  ],
];

/** A line for each recipe, asked from its sheet. */
function overview(kit: Kit, sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  put(sheet, 0, 0, "Was die Ansätze tun");
  const heads = putRow(sheet, 2, 0, ["Blatt", "Eis", ...FACTS.map(([words]) => words), "Ziel"]);
  recipes.forEach((recipe, index) => {
    const row = 3 + index;
    const home = recipe.names[0]!.sheet;
    putRow(sheet, row, 0, [home, recipe.made.title]);
    const lines = `'${home}'!${span(recipe.names)},'${home}'!${span(recipe.amounts)}`;
    FACTS.forEach(([, plan], at) => {
      const heading = heads[2 + at]!;
      resultAt(sheet, recipe, heading, beyond(heading, 1 + index, 0), plan, () => lines);
    });
    nameTarget(sheet, recipe, { row, column: 2 + FACTS.length });
  });
  const end = log(
    kit,
    sheet,
    { row: 8, column: 0 },
    {
      ...{ heads: ["Kühlzelle", "früh (°C)", "abends (°C)"], when: ["links", "rechts"] },
      ranges: [
        [-21, -18],
        [-20, -17],
      ],
    },
  );
  note(
    kit,
    sheet,
    end + 1,
    0,
    "Ansatzblätter nicht umbenennen, sonst stimmt die Liste nicht mehr.",
  );
}

/** Three recipes in sections, a sheet each, and what they do on the first. */
function abschnitte(kit: Kit): void {
  const first = addSheet(kit.marked.book, "Überblick");
  const own = { Zucker: "Haushaltszucker", Vollmilch: "Milch 3,5 %", Wasser: "Trinkwasser" };
  const mades = kit.make(3).map((made) => called(bySection(upTo(made, 2500)), own));
  const recipes = mades.map((made, index) => sheetFor(kit, made, `Ansatz ${index + 1}`));
  overview(kit, first, recipes);
}

/** Somebody who thinks in sections. */
export const abschnittsbuecher: readonly Layout[] = [
  { name: "Ansätze in Teilen, Ergebnisse auf dem ersten Blatt", language: "de", build: abschnitte },
];
