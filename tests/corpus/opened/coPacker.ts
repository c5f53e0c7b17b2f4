import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { cautionsOf, down, readings, type Voice } from "./own";

const VOICE: Voice = {
  lead: "",
  honey: "Contains honey: unsuitable for infants under 12 months.",
  alcohol: "Contains alcohol: not for children, pregnant women or drivers.",
  nuts: "Contains whole nuts: choking hazard, not suitable for children under 5.",
  egg: "Raw egg yolk: mix to be pasteurised, min. 71 °C, or bought pasteurised.",
};

const TYPICAL: readonly Said[] = [
  { label: "Initial freezing point (°C)", states: "freezing point", as: "typed" },
  { label: "Freezing point lowered by (K)", states: "depression", as: "typed" },
  { label: "Water (g per 100 g)", states: "water", as: "typed", decimals: 1 },
  { label: "Solids in solution (g per 100 g)", states: "dissolved", as: "typed", decimals: 1 },
  { label: "Sugars (% m/m)", states: "sugar share", as: "typed" },
  {
    ...{ label: "Ice at −18 °C (% of the mix)", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -18 },
  },
];

interface Ticket {
  readonly recipe: MarkedRecipe;
  readonly kilos: readonly Spot[];
}

/** Raw materials in per cent, and the kilograms of one batch. */
function formula(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, size: Spot): Ticket {
  const list = listed(
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads: ["Line", "RM code", "Raw material", "% m/m", "Batch (kg)", "Allergen"],
      cells: (name, grams, index) => [
        ...[10 * (index + 1), `RM-${kit.random.whole(1100, 1990)}`, name, shown(grams, "0.0")],
        undefined,
        made.flagged ? made.lines[index]!.allergen?.en : undefined,
      ],
      ...{ name: 2, amount: 3 },
    },
  );
  const { heads, rows, names, amounts, end } = list;
  const kilos = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00", fixed: [size] },
    content: (spot) => `=${a1(spot)}/100*${fixed(size)}`,
  });
  put(sheet, end, 2, "Sum");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 4 }, kilos, "0.00");
  const amountLabel = heads[3]!;
  const lines = { names, amounts, total, amountLabel, alsoAmounts: kilos, unit: "%" } as const;
  const recipe = markRecipe(kit, made, lines);
  if (made.flagged) recipe.flags.push(...rows.map((cells) => cells[5]!));
  return { recipe, kilos };
}

/** What the line weighed against the ticket. */
function weighedIn(kit: Kit, sheet: CorpusSheet, { recipe, kilos }: Ticket): void {
  const heads = putRow(sheet, 2, 0, ["Raw material", "To weigh (kg)", "Lot"]);
  const rows = recipe.names.map((name, index) =>
    putRow(sheet, 3 + index, 0, [
      `='Formula'!${a1(name)}`,
      shown(`='Formula'!${a1(kilos[index]!)}`, "0.00"),
      `L${kit.random.whole(20100, 20990)}`,
    ]),
  );
  const spots = rows.map(([, weight]) => weight!);
  kit.marked.formulaColumns.push({ spots, heading: heads[1]!, fixed: [] });
  put(sheet, 3 + rows.length, 0, "On the ticket");
  sumOf(kit, sheet, { row: 3 + rows.length, column: 1 }, spots, "0.00");
  const checks = putRow(sheet, 2, 4, ["Check", "Ageing tank (°C)", "Hardening tunnel (°C)"]);
  down(sheet, { row: 3, column: 4 }, ["start", "+1 h", "+2 h", "+3 h", "end"]);
  readings(kit, sheet, checks[1]!, [5, 2, 4]);
  readings(kit, sheet, checks[2]!, [5, -36, -31]);
}

/** A maker of other people's ices: the formula in per cent, the ticket for the floor. */
function coPacker(kit: Kit): void {
  const { marked, random } = kit;
  const made = largestFirst(kit.make(1)[0]!);
  const sheet = addSheet(marked.book, "Formula");
  putRow(sheet, 0, 0, ["Product", undefined, made.title]);
  putRow(sheet, 1, 0, ["Issue", undefined, `v${random.whole(2, 6)}`]);
  const bare = "Batch size";
  const value = random.pick([120, 150, 240]);
  const words = { label: `${bare} (kg)`, bare, value, format: "0" };
  const size = input(kit, sheet, { row: 3, column: 2 }, words);
  const ticket = formula(kit, sheet, made, size);
  const { recipe } = ticket;
  put(sheet, 5, 7, "Typical values");
  const next = say(sheet, recipe, { row: 6, column: 7 }, TYPICAL);
  nameTarget(sheet, recipe, { row: next, column: 7, label: "Texture class" });
  const row = Math.max(recipe.total!.row, next) + 2;
  const told = cautionsOf(made, VOICE);
  recipe.flags.push(...down(sheet, { row, column: 0 }, told));
  note(kit, sheet, row + told.length + 1, 0, "Supersedes all earlier issues.");
  const floor = addSheet(marked.book, "Ticket");
  put(floor, 0, 0, "Batch ticket for the mixing floor");
  weighedIn(kit, floor, ticket);
}

export const coPackers: readonly Layout[] = [
  { name: "contract maker, formula in % and the floor's ticket", language: "en", build: coPacker },
];
