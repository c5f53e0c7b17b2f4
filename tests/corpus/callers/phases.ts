import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { freezesAt, markRecipe, say, type Said } from "../layouts/parts";
import { input } from "../page";
import { columnOf, stillMet } from "../kitchens/hand";
import { perHundred, withLines, type MadeRecipe } from "../recipes";
import { desk, down, linesOn, tellBehind } from "./desk";

const WET = /water|milk$|cream|juice|yogurt|puree|coffee|peach|mango|berries|cherries|banana|vodka/;

/** Liquids and fruit are phase A, the rest is phase B. */
const phaseOf = (en: string): string => (WET.test(en) ? "A" : "B");

/** The recipe for 100 g, phase A before phase B. */
function inPhases(given: MadeRecipe): MadeRecipe {
  const of = (phase: string) => given.lines.filter(({ en }) => phaseOf(en) === phase);
  return stillMet(perHundred(withLines(given, [...of("A"), ...of("B")])));
}

const PROPERTIES: readonly Said[] = [
  {
    ...{ label: "Initial freezing point", inCell: "°C" },
    ...{ states: "freezing point", as: "typed", decimals: 2 },
  },
  { label: "Total water", inCell: "% w/w", states: "water", as: "formula", format: "0.0" },
  {
    ...{ label: "Solids in solution", inCell: "% w/w" },
    ...{ states: "dissolved", as: "typed", decimals: 1 },
  },
  { label: "Total sugars", inCell: "% w/w", states: "sugar share", as: "typed" },
  {
    ...{ label: "Ice at −18 °C, share of total water", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -18 },
  },
  {
    ...{ label: "Ice at −18 °C, share of total mix", inCell: "%" },
    ...{ states: "ice of mix", as: "typed", temperatureC: -18 },
  },
];

/** Shares and the pilot batch; gives the next free row. */
function formula(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, pilot: Spot): number {
  const list = desk(kit, sheet, made, {
    ...{ row: 5, column: 0 },
    heads: ["Phase", "Raw material", "% w/w", "Pilot batch (kg)", "Weighed by"],
    cells: (index) => [
      ...[phaseOf(made.lines[index]!.en), made.names[index], shown(made.grams[index]!, "0.0")],
    ],
    ...{ name: 1, amount: 2, sum: "Sum", format: "0.0" },
  });
  const { heads, amounts, end, total } = list;
  const alsoAmounts = down(kit, sheet, amounts, {
    ...{ heading: heads[3]!, end, format: "0.000", fixed: [pilot] },
    formula: (cell) => `=${fixed(pilot)}*${cell}/100`,
  });
  put(sheet, end + 1, 1, "Still missing to 100 %");
  put(sheet, end + 1, 2, shown(`=ROUND(100-${a1(total)},1)`, "0.0"));
  const recipe = markRecipe(kit, made, { ...linesOn(list), alsoAmounts, unit: "%" });
  const next = say(sheet, recipe, { row: end + 4, column: 1 }, PROPERTIES);
  put(sheet, end + 3, 1, "Calculated properties");
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Texture brief" });
  return tellBehind(sheet, recipe, { row: next + 2, column: 1 }, "Allergens to declare:");
}

const FALL = [-8, -2, 0.1, 0.6, 2.1, 5, 9] as const;

/** Core and tunnel while a block hardens. */
function hardening(kit: Kit, made: MadeRecipe): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Hardening run");
  const point = freezesAt(made.names, made.grams);
  put(sheet, 0, 0, "Block of 1 kg, probe in the core");
  const heads = putRow(sheet, 2, 0, ["Tunnel (°C)", "Core (°C)", "After (min)", "Operator"]);
  const rows = FALL.map((depth, index) =>
    putRow(sheet, 3 + index, 0, [
      ...[
        shown(-random.whole(58, 64) / 2, "0.0"),
        shown(Number((point - depth).toFixed(1)), "0.0"),
      ],
      ...[15 * index, index === 0 ? "night shift" : undefined],
    ]),
  );
  [0, 1].forEach((at) =>
    marked.numberColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[at]!, total: null, kind: "temperature" },
    }),
  );
}

/** A formula sheet in two phases, and how a block of it hardened. */
function phases(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Formula");
  const made = inPhases(kit.make(1)[0]!);
  putRow(sheet, 0, 0, ["Project", "Autumn range"]);
  putRow(sheet, 1, 0, ["Product", made.title]);
  putRow(sheet, 2, 0, ["Version", `V${random.whole(2, 9)}`]);
  const words = { label: "Pilot batch size (kg)", bare: "Pilot batch size" };
  const value = random.pick([2.5, 8, 12, 25]);
  const pilot = input(kit, sheet, { row: 3, column: 0 }, { ...words, value });
  const next = formula(kit, sheet, made, pilot);
  note(kit, sheet, next + 1, 1, "Phase B goes into phase A at 45 °C, high shear.");
  hardening(kit, made);
}

/** Sheets of a food technologist. */
export const phased: readonly Layout[] = [
  { name: "formula in two phases and its hardening run", language: "en", build: phases },
];
