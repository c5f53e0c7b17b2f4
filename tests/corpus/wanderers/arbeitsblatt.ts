import { a1, addSheet, fixed, put, putRow, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { heedAt, sugarWaters } from "./worte";

/** What the apprentices should know of a raw material. */
const USES: readonly (readonly [RegExp, string])[] = [
  [/^Wasser$/, "Lösungsmittel"],
  [/Dextrose/, "senkt den Gefrierpunkt"],
  [/sirup/, "hält geschmeidig"],
  [/ucker|Saccharose|Honig|Fruktose/, "süßt"],
  [/Sahne|Kokosmilch|Eigelb/, "bringt Fett"],
  [/Milch|milch|joghurt/, "bringt Milchtrockenmasse"],
  [/Salz|saft|säure/, "rundet den Geschmack ab"],
];

const useOf = (name: string): string =>
  USES.find(([of]) => of.test(name))?.[1] ?? "gibt den Geschmack";

const HEADS = [...["Lfd. Nr.", "Rohstoff", "Massenanteil in %", "Einwaage in g", "Wirkung im Eis"]];

/** The recipe in per cent and the weights that the class works out. */
function weights(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, wanted: Spot): MarkedRecipe {
  const list = listed(
    sheet,
    made,
    { row: 8, column: 0 },
    {
      heads: HEADS,
      cells: (name, share, index) => [index + 1, name, share, undefined, useOf(name)],
      ...{ name: 1, amount: 2 },
    },
  );
  const { heads, names, amounts, end } = list;
  const alsoAmounts = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0", fixed: [wanted] },
    content: (spot) => `=${fixed(wanted)}*${a1(spot)}/100`,
  });
  put(sheet, end, 1, "zusammen");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 3 }, alsoAmounts, "0");
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "%", amountLabel: heads[2]!, total },
  });
}

/** Numbers by which the apprentices check themselves. */
const CHECKS: readonly Said[] = [
  { label: "Gefrierpunkt in °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser in 100 g Mischung (g)", states: "water", as: "typed", decimals: 1 },
  { label: "Zucker in 100 g Mischung (%)", states: "sugar share", as: "typed" },
  {
    label: "vom Wasser ausgefroren bei −12 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 },
  },
  {
    label: "gelöste Stoffe in 100 g Mischung (g)",
    ...{ states: "dissolved", as: "typed", decimals: 1 },
  },
];

const OPEN = [
  "2. Begründe in zwei Sätzen, warum nicht das ganze Wasser gefriert:",
  "3. Welcher Rohstoff macht das Eis weicher, ohne dass es viel süßer wird?",
];

/** Where the pupils write. */
function questions(kit: Kit, sheet: CorpusSheet, row: number): number {
  OPEN.forEach((text, index) => note(kit, sheet, row + 3 * index, 0, text));
  put(sheet, row + 6, 0, "4. Läuterzucker: Gehalt auf zwei Arten");
  sugarWaters(kit, sheet, { row: row + 7, column: 0 }, [
    ...["Ansatz", "Zucker (g)", "Wasser (g)", "g Zucker auf 100 g Wasser", "Zuckergehalt in %"],
  ]);
  return row + 13;
}

/** A worksheet for apprentice confectioners. */
function worksheet(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "AB Speiseeis");
  const made = called(stillMet(perHundred(kit.make(1)[0]!)), { Zucker: "Raffinade" });
  putRow(sheet, 0, 0, ["Arbeitsblatt Speiseeis", undefined, "Klasse KO 2b"]);
  putRow(sheet, 1, 0, ["Name:", undefined, "Datum:"]);
  put(sheet, 3, 0, "1. Rechne die Einwaagen für die verlangte Mischung aus.");
  put(sheet, 4, 0, `Sorte: ${made.title}`);
  const words = { label: "Verlangte Mischung (g)", bare: "Verlangte Mischung" };
  const value = 100 * kit.random.whole(12, 28);
  const wanted = input(kit, sheet, { row: 6, column: 0 }, { ...words, value });
  const recipe = weights(kit, sheet, made, wanted);
  const { row } = recipe.total!;
  put(sheet, row + 2, 1, "Zur Selbstkontrolle");
  let next = say(sheet, recipe, { row: row + 3, column: 1 }, CHECKS);
  nameTarget(sheet, recipe, { row: next++, column: 1, label: "verlangte Beschaffenheit" });
  next = heedAt(sheet, recipe, { row: next, column: 1 }, "Kennzeichnung, enthält:");
  questions(kit, sheet, next + 1);
}

/** Worksheets of a teacher of confectioners. */
export const worksheets: readonly Layout[] = [
  { name: "Konditorenklasse, Arbeitsblatt zum Einwiegen", language: "de", build: worksheet },
];
