import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf, upTo } from "../strollers/words";
import { rowsAt, thermometer, WIRT } from "./words";

const ANSWERS: readonly (readonly [string, ResultPlan])[] = [
  ["Gefrierpkt. °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["gelöst g", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "Eis vom Wasser bei −18 °C in %",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

/** A kind of ice in each row, the ingredients over all of them. */
function kinds(kit: Kit, sheet: CorpusSheet): void {
  const mades = kit
    .make(4)
    .map((made) =>
      called(upTo(made, 3000), { Zucker: "Haushaltszucker", Vollmilch: "Milch 3,5 %" }),
    );
  const names = itemsOf(mades);
  const amountLabel = put(sheet, 2, 1, "Einwaage in g");
  const [, ...items] = putRow(sheet, 3, 0, ["Sorte", ...names]);
  const after = names.length + 1;
  putRow(sheet, 3, after, ["Kessel g"]);
  const heads = putRow(
    sheet,
    3,
    after + 2,
    ANSWERS.map(([words]) => words),
  );
  putRow(sheet, 3, after + 5, ["wofür", "Schild"]);
  mades.forEach((made, index) => {
    const row = 4 + index;
    put(sheet, row, 0, made.title);
    const recipe = alongRow(kit, sheet, made, row, { items, unit: "g", format: "0", amountLabel });
    ANSWERS.forEach(([, plan], at) => {
      const place = { row, column: after + 2 + at };
      resultAt(sheet, recipe, heads[at]!, place, plan, () => recipe.lines);
    });
    nameTarget(sheet, recipe, { row, column: after + 5 });
    tellIn(sheet, recipe, { row, column: after + 6 }, WIRT);
  });
}

const SOLD = ["Becher klein", "Becher groß", "Eistorte", "Riegel"];

/** How many of each were sold on Saturday and Sunday. */
function sales(kit: Kit, sheet: CorpusSheet): void {
  putRow(sheet, 12, 3, ["verkauft (Stück)", "Sa", "So", "beide"]);
  const rows = SOLD.map((words, index) => {
    const counts = [kit.random.whole(12, 60), kit.random.whole(20, 80)];
    const cells = putRow(sheet, 13 + index, 3, [words, ...counts]);
    const place = { row: 13 + index, column: 6 };
    return [...cells.slice(1), sumOf(kit, sheet, place, cells.slice(1))];
  });
  put(sheet, 17, 3, "Stück ges.");
  [0, 1, 2].forEach((at) => {
    const parts: Spot[] = rows.map((cells) => cells[at]!);
    sumOf(kit, sheet, { row: 17, column: 4 + at }, parts);
  });
}

/** The bakery's ices across, its deep freezers and what was sold below. */
function backstube(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis");
  putRow(sheet, 0, 0, [
    "Backstube, Eis zum Wochenende",
    undefined,
    undefined,
    "gemischt wird Do ab 11",
  ]);
  kinds(kit, sheet);
  put(sheet, 10, 0, "Froster");
  rowsAt(sheet, { row: 12, column: 0 }, [
    ["Uhr"],
    ...["4:00", "8:00", "12:00", "16:00"].map((it) => [it]),
  ]);
  const plan = { heading: "Froster 1 in °C", count: 4, range: [-22, -17] } as const;
  thermometer(kit, sheet, { row: 12, column: 1 }, plan);
  sales(kit, sheet);
  rowsAt(sheet, { row: 19, column: 0 }, [
    ["Brötchen ab", "5:30", undefined, "Butter Block", shown(2.5, "0.0"), "kg"],
    ["Teilchen ab", "6:15", undefined, "Blech", 18, "Stück"],
  ]);
  note(kit, sheet, 22, 0, "Lehrling putzt Maschine nach jeder Sorte!");
}

/** A bakery. */
export const backstuben: readonly Layout[] = [
  { name: "Backstube, Eissorten quer und Froster", language: "de", build: backstube },
];
