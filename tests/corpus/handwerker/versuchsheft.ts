import { addSheet, put, putRow, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn } from "../caterers/words";
import { sound } from "../guests/words";
import { note, nameTarget, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { changed, plainOf } from "../lodgers/swaps";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf, temperatures } from "../strollers/words";
import { VOICE_OF_A_SHOP } from "./words";

const OWN = { Zucker: "Haushaltszucker", "Dextrose-Monohydrat": "Traubenzucker-Monohydrat" };

const SAID: readonly (readonly [string, ResultPlan])[] = [
  ["GP (°C)", { states: "freezing point", as: "formula", format: "0.00" }],
  ["Wasser (g)", { states: "water", as: "typed", decimals: 0 }],
  ["gelöst (g)", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "Eis bei −18 °C (% vom Wasser)",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

const MARKS = ["etwas hart", "gut, bleibt so", "zu süß", "cremig, taut schnell"];

/** What was tried, a version each. */
function versions(kit: Kit): readonly (readonly [string, MadeRecipe])[] {
  const first = plainOf(kit);
  const plain = sound(kit, first);
  return (
    [
      ["3.5.", first],
      ["10.5.", changed(plain, 0.85)],
      ["17.5.", changed(plain, 0.7, "dextrose monohydrate")],
      ["24.5.", changed(plain, 0.8, "fructose")],
    ] as const
  ).map(([day, made]) => [day, called(made, OWN)] as const);
}

/** A version in its row, and what came of it. */
function trial(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, items: Spot[]): Spot {
  const amountLabel = { sheet: sheet.name, row: 2, column: 2 };
  const plan = { items, unit: "g", format: "0", amountLabel } as const;
  const { lines, ...recipe } = alongRow(kit, sheet, made, row, plan);
  const next = items.at(-1)!.column + 2;
  SAID.forEach(([words, each], index) => {
    const label = put(sheet, 3, next + index, words);
    resultAt(sheet, recipe, label, { row, column: next + index }, each, () => lines);
  });
  const after = next + SAID.length;
  nameTarget(sheet, recipe, { row, column: after });
  const freezer = put(sheet, row, after + 1, -kit.random.whole(34, 39) / 2);
  put(sheet, row, after + 2, kit.random.pick(MARKS));
  tellIn(sheet, recipe, { row, column: after + 3 }, VOICE_OF_A_SHOP);
  return freezer;
}

/** Versions of one ice, a row each, ingredients across. */
function heft(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Versuche");
  const list = versions(kit);
  put(sheet, 0, 0, `${list[0]![1].title}: was ich schon probiert habe`);
  const names = itemsOf(list.map(([, made]) => made));
  put(sheet, 2, 2, "Einwaage in g");
  putRow(sheet, 3, 0, ["Nr.", "am"]);
  const items = putRow(sheet, 3, 2, names);
  const after = 2 + names.length;
  put(sheet, 3, after, "Summe");
  const rest = after + 1 + SAID.length;
  const heads = putRow(sheet, 3, rest, ["Ziel", "Truhe (°C)", "Urteil", "Für die Gäste"]);
  const cold = list.map(([day, made], index) => {
    putRow(sheet, 4 + index, 0, [index + 1, day]);
    return trial(kit, sheet, made, 4 + index, items);
  });
  temperatures(kit, heads[1]!, cold);
  note(kit, sheet, 9, 0, "Nächstes Mal die Dose vorher kalt stellen!");
}

/** Somebody's trials at home. */
export const versuchshefte: readonly Layout[] = [
  { name: "Versuchsheft, jede Fassung eine Zeile", language: "de", build: heft },
];
