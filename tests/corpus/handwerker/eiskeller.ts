import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { results } from "../results";
import { temperatures, upTo } from "../strollers/words";
import { VOICE_OF_A_SHOP } from "./words";

const OWN = { "Sahne 35 %": "Rahm 35 %", Himbeeren: "Himbeeren (TK)", Vollmilch: "Milch 3,5 %" };

const DATES = ["1.8.", "2.8.", "3.8.", "4.8.", "5.8.", "6.8.", "7.8."];

/** The week's readings with their mean; the least of them under each. */
function log(kit: Kit, sheet: CorpusSheet): void {
  const heads = putRow(sheet, 2, 0, [
    ...["Datum", "früh °C", "abends °C", "Mittel °C", "abgetaut", "Namenszeichen"],
  ]);
  const rows = DATES.map((date, index) =>
    putRow(sheet, 3 + index, 0, [
      ...[date, ...[0, 1].map(() => shown(-kit.random.whole(176, 223) / 10, "0.0"))],
      ...[undefined, index === 3 ? "ja" : "nein", kit.random.pick(["KM", "SL", "KM/SL"])],
    ]),
  );
  const [early, late] = [1, 2].map((at) => rows.map((cells): Spot => cells[at]!));
  temperatures(kit, heads[1]!, early!);
  temperatures(kit, heads[2]!, late!);
  beside(kit, heads[3]!, early!, {
    ...{ sheet, format: "0.0" },
    content: (spot, index) => `=(${a1(spot)}+${a1(late![index]!)})/2`,
  });
  const span = (spots: readonly Spot[]) => `${a1(spots[0]!)}:${a1(spots.at(-1)!)}`;
  put(sheet, 3 + rows.length, 0, "wärmster Wert");
  [early!, late!].forEach((spots, at) =>
    put(sheet, 3 + rows.length, 1 + at, shown(`=MAX(${span(spots)})`, "0.0")),
  );
}

const LEFT = 8;

/** A batch right of the readings: kilograms, names; what is known of it below. */
function batch(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  putRow(sheet, top, LEFT, ["gemacht:", made.title]);
  const list = listed(
    sheet,
    made,
    { row: top + 1, column: LEFT },
    {
      heads: ["kg", "Zutat", "Los"],
      cells: (name, grams) => [
        ...[
          shown(grams / 1000, "0.000"),
          name,
          `${kit.random.pick(["A", "B", "C"])}${kit.random.whole(11, 98)}`,
        ],
      ],
      ...{ name: 1, amount: 0 },
    },
  );
  const { heads, names, amounts, end } = list;
  const total = sumOf(kit, sheet, { row: end, column: LEFT }, amounts, "0.000");
  put(sheet, end, LEFT + 1, "in die Maschine");
  const lines = { names, amounts, total, amountLabel: heads[0]! } as const;
  const recipe = markRecipe(kit, made, { ...lines, unit: "kg" });
  const next = results(sheet, recipe, {
    ...{ row: end + 2, column: LEFT + 1, language: "de", unitCell: true },
    plans: [
      { states: "freezing point", as: "formula" },
      { states: "depression", as: "typed", wording: 1 },
      { states: "water", as: "typed", wording: 1, decimals: 0 },
      { states: "dissolved", as: "typed", wording: 1, decimals: 0 },
      { states: "ice of water", as: "typed", wording: 1, temperatureC: -18, decimals: 0 },
      { states: "sugar share", as: "typed", wording: 1 },
    ],
  });
  nameTarget(sheet, recipe, { row: next, column: LEFT + 1, label: "bestimmt für" });
  return tellIn(sheet, recipe, { row: next + 1, column: LEFT + 1 }, VOICE_OF_A_SHOP) + 1;
}

/** The cellar's readings at the left, the week's two batches at the right. */
function eiskeller(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "KW 31");
  put(sheet, 0, 0, "Eiskeller Woche 31");
  put(sheet, 0, LEFT, "Chargen der Woche");
  log(kit, sheet);
  const mades = kit.make(2).map((made) => called(upTo(made, 8000), OWN));
  mades.reduce((top, made) => batch(kit, sheet, made, top), 2);
  note(kit, sheet, 12, 0, "Am 4. abgetaut, Ware so lange in der Zelle.");
  note(kit, sheet, 13, 0, "Neue Becher sind bestellt.");
}

/** A farm with a cellar for its ice. */
export const eiskellers: readonly Layout[] = [
  { name: "Eiskeller, Ablesungen links und Chargen rechts", language: "de", build: eiskeller },
];
