import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { given } from "../lodgers/words";
import { perHundred, withLines, type MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";
import { VOICE_OF_A_SHOP } from "./words";

const DRY = /sugar|sucrose|dextrose|fructose|powder|salt|acid|inulin|nuts|pistachios|desiccated/;

const isDry = (name: string): boolean => DRY.test(name);

/** Wet lines before dry ones, as shares of one. */
function inPhases(from: MadeRecipe): MadeRecipe {
  const wet = from.lines.filter(({ en }) => !isDry(en));
  const dry = from.lines.filter(({ en }) => isDry(en));
  return stillMet(perHundred(withLines(from, [...wet, ...dry])));
}

interface Phase {
  readonly names: readonly Spot[];
  readonly amounts: readonly Spot[];
  readonly grams: readonly Spot[];
  readonly sums: readonly Spot[];
  readonly end: number;
}

interface Part {
  readonly title: string;
  readonly made: MadeRecipe;
  readonly from: number;
  readonly to: number;
}

/** The lines of a phase under its title, its sums below. */
function phase(kit: Kit, sheet: CorpusSheet, part: Part, row: number, batch: Spot): Phase {
  const { title, made, from, to } = part;
  put(sheet, row, 0, title);
  const rows = made.names.slice(from, to).map((name, index) => {
    const share = shown(inUnit(made.grams[from + index]!, "fraction"), "0.000");
    return putRow(sheet, row + 1 + index, 1, [name, share]);
  });
  const [names, amounts] = [0, 1].map((at) => rows.map((cells) => cells[at]!));
  const grams = amounts!.map((spot) =>
    put(sheet, spot.row, 3, shown(`=${a1(spot)}*${fixed(batch)}`, "0.0")),
  );
  const end = row + 1 + rows.length;
  put(sheet, end, 1, "Phase gesamt");
  const sums = [
    sumOf(kit, sheet, { row: end, column: 2 }, amounts!, "0.000"),
    sumOf(kit, sheet, { row: end, column: 3 }, grams, "0.0"),
  ];
  return { names: names!, amounts: amounts!, grams, sums, end: end + 1 };
}

const ANSWERS: readonly Said[] = [
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "typed" },
  { label: "Erniedrigung (K)", states: "depression", as: "typed" },
  { label: "w(Zucker), Massenanteil der Mischung (%)", states: "sugar share", as: "typed" },
  {
    label: "gefrorener Anteil des Wassers bei −18 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18 },
  },
  {
    label: "gefrorener Anteil der Mischung bei −18 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18 },
  },
];

/** One mix in shares of one, in two phases. */
function formulation(kit: Kit, from: MadeRecipe, at: number): void {
  const made = inPhases(from);
  const sheet = addSheet(kit.marked.book, `Muster ${"ABC"[at]}`);
  putRow(sheet, 0, 0, ["Muster", made.title]);
  const batch = given(kit, sheet, [1, 0], ["Laboransatz", "g", kit.random.pick([400, 500, 750])]);
  const heads = putRow(sheet, 3, 1, ["Rohstoff", "Massenanteil w", "Einwaage Labor (g)"]);
  const wet = made.lines.filter(({ en }) => !isDry(en)).length;
  const first = { title: "Phase 1, flüssig", made, from: 0, to: wet };
  const second = { title: "Phase 2, trocken", made, from: wet, to: made.names.length };
  const one = phase(kit, sheet, first, 4, batch);
  const other = phase(kit, sheet, second, one.end, batch);
  const phases = [one, other];
  put(sheet, other.end + 1, 1, "Mischung");
  const [total] = [0, 1].map((index) => {
    const parts = phases.map(({ sums }) => sums[index]!);
    const content = shown(`=${parts.map(a1).join("+")}`, index === 0 ? "0.000" : "0.0");
    const spot = put(sheet, other.end + 1, 2 + index, content);
    kit.marked.sums.push({ spot, parts });
    return spot;
  });
  const alsoAmounts = phases.flatMap(({ grams }) => grams);
  kit.marked.formulaColumns.push({ spots: alsoAmounts, heading: heads[2]!, fixed: [batch] });
  const names = phases.flatMap((each) => each.names);
  const amounts = phases.flatMap((each) => each.amounts);
  const lines = { names, amounts, alsoAmounts, total: total!, amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, { ...lines, unit: "fraction" });
  const next = say(sheet, recipe, { row: 3, column: 5 }, ANSWERS);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Vorgabe" });
  tellIn(sheet, recipe, { row: next + 2, column: 5 }, VOICE_OF_A_SHOP);
}

/** Samples of a development bench, and how they were stored. */
function muster(kit: Kit): void {
  kit.make(2).forEach((made, index) => formulation(kit, made, index));
  const sheet = addSheet(kit.marked.book, "Lagerung");
  put(sheet, 0, 0, "Lagertest der Muster");
  const heads = putRow(sheet, 2, 0, ["Tag", "Schrank 1 (°C)", "Schrank 2 (°C)", "Bemerkung"]);
  const rows = [0, 3, 7, 14, 28].map((day, index) =>
    putRow(sheet, 3 + index, 0, [
      ...[day, ...[0, 1].map(() => shown(-kit.random.whole(171, 192) / 10, "0.0"))],
      day === 7 ? "Raureif am Deckel" : undefined,
    ]),
  );
  [1, 2].forEach((column) =>
    temperatures(
      kit,
      heads[column]!,
      rows.map((cells) => cells[column]!),
    ),
  );
  note(kit, sheet, 9, 0, "Verkostung blind, immer zu dritt.");
}

/** A developer of recipes. */
export const phasenblaetter: readonly Layout[] = [
  { name: "Entwicklung, Massenanteile in zwei Phasen", language: "de", build: muster },
];
