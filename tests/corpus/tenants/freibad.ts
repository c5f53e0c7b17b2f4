import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofSpirit, tellInRows } from "./words";

const said = (made: MadeRecipe, at: Pick<Said, "temperature" | "temperatureC">): Said[] => [
  { label: "gefriert ab (°C)", states: "freezing point", as: "formula" },
  { label: "Wasser im Grundrezept (g)", states: "water", as: "formula", format: "0" },
  { label: "Zucker auf 100 g Wasser (g)", states: "sugar per 100 g water", as: "typed" },
  {
    ...{ label: "vom Wasser in der Truhe gefroren (%)", states: "ice of water" },
    ...{ as: "formula", format: "0.0", ...at },
  },
  {
    ...{ label: "von der ganzen Masse in der Truhe Eis (%)", states: "ice of mix" },
    ...{ as: "formula", format: "0.0", ...at },
  },
  ...ofSpirit(made, { label: "Alkohol im Grundrezept (g)" }),
];

const HEADS = ["Zutaten", "Grundrezept (g)", "für die Schale (g)"];

/** The basic recipe and what the tray takes of it. */
function scaled(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, tray: Spot) {
  const list = listed(
    sheet,
    made,
    { row: 7, column: 0 },
    {
      heads: HEADS,
      cells: (name, grams) => [name, grams],
    },
  );
  const { heads, names, amounts, end } = list;
  put(sheet, end, 0, "zusammen");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const factor = shown(`=${a1(tray)}/${a1(total)}`, "0.000");
  const times = putRow(sheet, 4, 0, ["also mal", factor])[1]!;
  const filled = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [times] },
    content: (amount) => `=${a1(amount)}*${fixed(times)}`,
  });
  sumOf(kit, sheet, { row: end, column: 2 }, filled, "0");
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: filled, total, amountLabel: heads[1]!, unit: "g" },
  });
}

/** What is filled in above, and in which row. */
const GIVEN = [
  [2, "In die Schale passen (g)", "In die Schale passen"],
  [3, "Verkaufstruhe (°C)", "Verkaufstruhe"],
  [5, "Eine Kugel wiegt (g)", "Eine Kugel wiegt"],
] as const;

/** The basic recipe for the tray in the freezer of a lido's kiosk. */
function freibad(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Schale");
  const made = called(kit.make(1)[0]!, { Zucker: "Haushaltszucker", Wasser: "Leitungswasser" });
  put(sheet, 0, 0, `Kiosk am Freibad: ${made.title}`);
  const celsius = -random.whole(12, 17);
  const values = [random.pick([2400, 3200, 4500]), celsius, random.pick([55, 60])];
  const [tray, temperature, ball] = GIVEN.map(([row, label, bare], index) =>
    input(kit, sheet, { row, column: 0 }, { label, bare, value: values[index]! }),
  ) as [Spot, Spot, Spot];
  const recipe = scaled(kit, sheet, made, tray);
  const at = { temperature, temperatureC: celsius };
  const next = say(sheet, recipe, { row: 2, column: 4 }, said(made, at));
  nameTarget(sheet, recipe, { row: next, column: 4, label: "soll sein" });
  const row = recipe.total!.row + 2;
  const balls = shown(`=${a1(tray)}/${a1(ball)}`, "0");
  putRow(sheet, row, 0, ["Kugeln aus der Schale", balls]);
  const last = tellInRows(sheet, recipe, { row: row + 2, column: 0 }, "Aushang, enthält");
  note(kit, sheet, last + 1, 0, "Bei Gewitter bleibt die Luke zu.");
}

/** A kiosk at a lido. */
export const freibaeder: readonly Layout[] = [
  { name: "Freibadkiosk, Grundrezept auf die Schale", language: "de", build: freibad },
];
