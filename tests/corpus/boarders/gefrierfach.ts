import { addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { down } from "../callers/desk";
import { note, nameTarget, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { trueValue } from "../marks";
import { input } from "../page";
import { forChildren } from "../passing/words";
import type { MadeRecipe } from "../recipes";
import { columnsOf, labelAt, sized, type Phrases } from "./worte";
import { fromLabels } from "./etiketten";

const PHRASES: Phrases = [
  [/^Honig/, "Achtung Honig: erst ab 12 Monaten"],
  [/^Enthält Alkohol/, "Achtung Alkohol: nur für Erwachsene, nicht in der Schwangerschaft"],
  [/^Ganze Nüsse/, "Achtung ganze Nüsse: erst ab 5 Jahren, Erstickungsgefahr"],
  [/^Rohes Eigelb/, "Achtung rohes Eigelb: auf 71 °C erhitzen"],
];

const SAID: readonly Said[] = [
  {
    ...{ label: "Gefrierpunkt, berechnet", inCell: "°C" },
    ...{ states: "freezing point", as: "typed", decimals: 1 },
  },
  {
    ...{ label: "Wasser in der ganzen Probe", inCell: "g" },
    ...{ states: "water", as: "typed", decimals: 0 },
  },
  {
    ...{ label: "gelöste Stoffe in der ganzen Probe", inCell: "g" },
    ...{ states: "dissolved", as: "typed", decimals: 0 },
  },
  {
    ...{ label: "Zucker je 100 g Wasser", inCell: "g" },
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
];

/** What the compartment makes of it, by the temperature that was read in it. */
const frozen = (temperature: Spot, temperatureC: number): Said[] => [
  {
    ...{ label: "im Gefrierfach gefroren, vom Wasser", inCell: "%" },
    ...{ states: "ice of water", as: "formula", format: "0", temperature, temperatureC },
  },
  {
    ...{ label: "im Gefrierfach Eis, von der ganzen Probe", inCell: "%" },
    ...{ states: "ice of mix", as: "formula", format: "0", temperature, temperatureC },
  },
];

interface Sample {
  readonly made: MadeRecipe;
  readonly letter: string;
  readonly top: number;
  readonly said: readonly Said[];
}

/** What went into a sample, and what it should do; gives the next free row. */
function sample(kit: Kit, sheet: CorpusSheet, { made, letter, top, said }: Sample): number {
  put(sheet, top, 0, `Probe ${letter}: ${made.title}`);
  const heads = putRow(sheet, top + 1, 0, ["Zutat", "abgewogen", "Einheit", "Anteil"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + 2 + index, 0, [name, made.grams[index], "g"]),
  );
  const [names, amounts, unitCells] = columnsOf(rows, 0, 1, 2) as [Spot[], Spot[], Spot[]];
  const end = top + 2 + rows.length;
  putRow(sheet, end, 0, ["zusammen", undefined, "g"]);
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const alsoAmounts = down(kit, sheet, amounts, {
    ...{ heading: heads[3]!, format: "0.0%", fixed: [total], end },
    formula: (cell) => `=${cell}/${fixed(total)}`,
  });
  const marks = { names, amounts, unitCells, alsoAmounts, total, amountLabel: heads[1]! };
  const recipe = markRecipe(kit, made, { ...marks, unit: "g" });
  const next = say(sheet, recipe, { row: end + 1, column: 0 }, said);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Ziel" });
  const told = { lead: "Allergene:", phrases: PHRASES };
  return labelAt(sheet, recipe, { row: next + 1, column: 0 }, told) + 1;
}

/** Readings in the middle of a sample: fast down to where it freezes, then slowly. */
function falling({ random }: Kit, made: MadeRecipe): number[] {
  const freezes = trueValue(made, "freezing point", null) ?? -3;
  let now = 8;
  return Array.from({ length: 8 }, (_, step) => {
    const fast = (8 - freezes) / 3;
    now -= step < 3 ? fast : random.whole(step, 4 * step) / 10;
    return Number(now.toFixed(1));
  });
}

/** The temperature inside the samples as they froze. */
function curve(kit: Kit, mades: readonly MadeRecipe[]): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Abkühlung");
  put(sheet, 0, 0, "Temperatur in der Mitte der Becher, alle 20 Minuten abgelesen");
  putRow(sheet, 2, 0, ["Zeit in min", "Probe A in °C", "Probe B in °C"]);
  const [a, b] = mades.map((made) => falling(kit, made)) as [number[], number[]];
  const rows = a.map((read, index) =>
    putRow(sheet, 3 + index, 0, [
      ...[20 * (index + 1), shown(read, "0.0"), shown(b[index]!, "0.0")],
    ]),
  );
  for (const column of [1, 2]) {
    const heading = { sheet: sheet.name, row: 2, column };
    const spots = columnOf(rows, column);
    marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
  }
  putRow(sheet, 12, 0, ["tiefster Wert", ...["B4:B11", "C4:C11"].map((at) => `=MIN(${at})`)]);
  note(kit, sheet, 14, 0, "Ab 100 Minuten Tür zugelassen, vorher kurz auf und zu.");
}

/** Two samples from the freezer compartment, how they froze, and one from the shop's labels. */
function compartment(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Proben");
  const words = { label: "Gefrierfach, abgelesen (°C)", bare: "Gefrierfach, abgelesen" };
  const value = -kit.random.whole(15, 21);
  const read = input(kit, sheet, { row: 0, column: 0 }, { ...words, value });
  const said = [...SAID, ...frozen(read, value)];
  const grams = 10 * kit.random.whole(25, 45);
  const mades = forChildren(kit, 2).map((made) => sized(made, grams));
  let top = 2;
  mades.forEach((made, index) => {
    top = sample(kit, sheet, { made, letter: "AB"[index]!, top, said }) + 1;
  });
  curve(kit, mades);
  fromLabels(kit);
}

/** A pupil's freezer compartment. */
export const gefrierfaecher: readonly Layout[] = [
  { name: "Schülerin, Eisproben im Gefrierfach", language: "de", build: compartment },
];
