import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { grouped, inGroups, type Group } from "../layouts/grouped";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { ofAlcohol } from "../pilgrims/words";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { ownPurees } from "./purees";
import { comparison, type Run } from "./trials";
import { tellIn, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Allergen statement: contains",
  honey: "Honey: not suitable for infants under 12 months.",
  alcohol: "Contains alcohol: not for children, in pregnancy or before driving.",
  nuts: "Whole nuts: choking hazard for children under 5.",
  egg: "Raw egg yolk: pasteurise the mix or heat it to 71 °C.",
};

const saidOf = (made: MadeRecipe): readonly Said[] => [
  { label: "Initial freezing point (°C)", states: "freezing point", as: "typed" },
  {
    ...{ label: "Ice at −18 °C (% of total water)", states: "ice of water", as: "typed" },
    ...{ temperatureC: -18, decimals: 1 },
  },
  { label: "Sugars (% of mix)", states: "sugar share", as: "typed", decimals: 1 },
  { label: "Total water (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Dissolved solids (g)", states: "dissolved", as: "typed", decimals: 0 },
  ...ofAlcohol(made, { label: "Ethanol (g)" }),
];

interface Section {
  readonly cells: readonly (readonly Spot[])[];
  readonly subtotal: Spot;
}

/** A section: its heading, its lines, their subtotal. */
function section(kit: Kit, sheet: CorpusSheet, { title, lines }: Group, top: number): Section {
  put(sheet, top, 1, title.toUpperCase());
  const { language } = kit;
  const cells = lines.map((each, index) => {
    const code = `RM-${100 + 7 * (top + index)}`;
    return putRow(sheet, top + 1 + index, 0, [code, each[language], each.grams]);
  });
  const row = top + 1 + lines.length;
  put(sheet, row, 1, `Subtotal ${title.toLowerCase()}`);
  return { cells, subtotal: sumOf(kit, sheet, { row, column: 2 }, columnOf(cells, 2), "0") };
}

/** Each line's part of the whole in per cent, and each section's. */
function shares(kit: Kit, sheet: CorpusSheet, sections: readonly Section[], total: Spot): Spot[] {
  const heading = put(sheet, 2, 3, "% of mix");
  const share = (spot: Spot): Spot =>
    put(sheet, spot.row, 3, shown(`=${a1(spot)}/${fixed(total)}*100`, "0.0"));
  const spots = sections.flatMap(({ cells }) => columnOf(cells, 2).map(share));
  sections.forEach(({ subtotal }) => share(subtotal));
  kit.marked.formulaColumns.push({ spots, heading, fixed: [total] });
  return spots;
}

/** A formulation on its own sheet, by sections. */
function formulation(kit: Kit, first: MadeRecipe, name: string): Run {
  const sheet = addSheet(kit.marked.book, name);
  const groups = grouped(first);
  const made = inGroups(first, groups);
  put(sheet, 0, 0, `${name}: ${made.title}`);
  const heads = putRow(sheet, 2, 0, ["Code", "Raw material", "Batch (g)"]);
  let row = 3;
  const sections = groups.map((group) => {
    const next = section(kit, sheet, group, row);
    row = next.subtotal.row + 1;
    return next;
  });
  put(sheet, row, 1, "MIX");
  const whole = `=${sections.map(({ subtotal }) => a1(subtotal)).join("+")}`;
  const total = put(sheet, row, 2, shown(whole, "0"));
  const alsoAmounts = shares(kit, sheet, sections, total);
  const cells = sections.flatMap((each) => each.cells);
  const recipe = markRecipe(kit, made, {
    ...{ names: columnOf(cells, 1), amounts: columnOf(cells, 2), alsoAmounts, unit: "g" },
    ...{ amountLabel: heads[2]!, total },
  });
  const next = say(sheet, recipe, { row: 3, column: 5 }, saidOf(made));
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Texture wanted" });
  tellIn(sheet, recipe, { row: row + 2, column: 1 }, VOICE);
  return { recipe, point: { sheet: name, row: 3, column: 6 } };
}

/** Three trials by sections, compared in front, and purées with their contents at the back. */
function technologist(kit: Kit): void {
  const first = addSheet(kit.marked.book, "Comparison");
  const mades = kit.make(3).map((made) => upTo(made, 2500));
  comparison(
    kit,
    first,
    mades.map((made, index) => formulation(kit, made, `Trial ${index + 1}`)),
  );
  ownPurees(kit);
}

/** A food technologist's trials. */
export const technologists: readonly Layout[] = [
  {
    name: "food technologist, sections with subtotals, trials compared",
    language: "en",
    build: technologist,
  },
];
