import { a1, addSheet, put, putRow, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { beside } from "../newcomers/words";
import type { Said } from "../layouts/parts";
import { plainOf } from "../lodgers/swaps";
import { dissolved, solution } from "../solution";
import { VOICES } from "./voices";
import { iceOn, readings } from "./words";

const sugars = dissolved.filter(({ particles }) => particles === 1);
const saltOrSugar = dissolved.filter(({ en }) => /^sucrose|chloride/.test(en));

/** Ein Blatt mit zwei gelösten Stoffen. */
function solutionSheet(kit: Kit, letter: string): void {
  const sheet = addSheet(kit.marked.book, `Lösung ${letter}`);
  putRow(sheet, 0, 0, [`Lösung ${letter}`, undefined, undefined, "Name:", "Datum:"]);
  solution(kit, sheet, {
    ...{ top: 2, left: 0, count: 2, inputsFirst: letter === "B" },
    from: letter === "A" ? sugars : saltOrSugar,
    headings: ["gelöst", "m (g)", "M (g/mol)", "Teilchenzahl i", "n · i (mol)"],
    words: {
      water: ["Wasser (g)", "Wasser"],
      constant: "kryoskopische Konstante Kf (K·kg/mol)",
      depression: "Gefrierpunktserniedrigung (K)",
      freezingPoint: "Gefrierpunkt (°C)",
      proviso: (gap) => `Ideal gerechnet, der Fehler bleibt unter ${gap} K.`,
    },
  });
  const heads = putRow(sheet, 2, 7, ["t (min)", "T im Reagenzglas (°C)"]);
  [1, 2, 3, 4, 5, 6].forEach((minute, index) => put(sheet, 3 + index, 7, minute));
  readings(kit, sheet, heads[1]!, { count: 6, from: -1.5, to: 4, cools: true });
}

const GLASSES = ["dünn", "mittel", "wie Limonade", "wie Sirup"];

/** Zuckerwasser, auf zwei Arten angegeben. */
function sugarWater(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Zuckerwasser");
  put(sheet, 0, 0, "Nicht verwechseln: auf 100 g Wasser oder in 100 g Lösung");
  const heads = putRow(sheet, 2, 0, [
    ...["Glas", "Wasser (g)", "Saccharose (g)"],
    ...["Zucker auf 100 g Wasser (g)", "Zucker in der Lösung (Massen-%)"],
  ]);
  const rows = GLASSES.map((glass, index) =>
    putRow(sheet, 3 + index, 0, [glass, 150, random.whole(6, 12) + 15 * index]),
  );
  const [water, sugar] = [1, 2].map((at) => columnOf(rows, at));
  const per = (cell: Spot): string => a1({ ...cell, column: 1 });
  const plan = { sheet, format: "0.0" };
  const perWater = beside(kit, heads[3]!, sugar!, {
    ...{ ...plan, content: (cell) => `=100*${a1(cell)}/${per(cell)}` },
  });
  const share = beside(kit, heads[4]!, sugar!, {
    ...{ ...plan, content: (cell) => `=100*${a1(cell)}/(${a1(cell)}+${per(cell)})` },
  });
  rows.forEach((_, index) => {
    const both = { perWater: perWater[index]!, share: share[index]! };
    marked.strengths.push({ sugar: sugar![index]!, water: water![index]!, ...both });
  });
  note(kit, sheet, 8, 0, "Gläser beschriften, nicht kosten!");
}

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt, °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "gelöste Stoffe, g", states: "dissolved", as: "formula", format: "0" },
  { label: "Wasser, g", states: "water", as: "typed", decimals: 0 },
  {
    label: "Wasser gefroren im Tiefkühlfach bei −18 °C, %",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** Das Eis, das am Ende gegessen wird. */
function kitchenIce(kit: Kit, sheet: CorpusSheet): void {
  const made = called(plainOf(kit), { Zucker: "Kristallzucker", Salz: "Kochsalz" });
  put(sheet, 0, 0, `Zum Schluss in der Schulküche: ${made.title}`);
  const factor = putRow(sheet, 2, 0, ["Schüsseln", kit.random.pick([2, 3])])[1]!;
  iceOn(kit, sheet, made, {
    ...{ row: 4, column: 0, columns: ["name", "amount", "scaled"], unit: "g", factor },
    headings: { name: "Was", amount: "eine Schüssel (g)", scaled: "alle Schüsseln (g)" },
    ...{
      total: "zusammen",
      said: SAID,
      right: 4,
      target: "gelungen, wenn",
      voice: VOICES.wahlpflicht,
    },
  });
}

/** Zwei Lösungen, Zuckerwasser und das Eis. */
function solutionSheets(kit: Kit): void {
  for (const letter of ["A", "B"]) solutionSheet(kit, letter);
  sugarWater(kit);
  kitchenIce(kit, addSheet(kit.marked.book, "Eis"));
}

/** Blätter für den Wahlpflichtkurs. */
export const loesungsblaetter: readonly Layout[] = [
  {
    name: "Wahlpflichtkurs, zwei Lösungen und Zuckerwasser",
    language: "de",
    build: solutionSheets,
  },
];
