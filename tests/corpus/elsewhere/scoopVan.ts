import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import { down } from "../lodgers/words";
import { itemsOf, temperatures, upTo } from "../strollers/words";
import { inEnglish } from "./words";

const FACTS: readonly Fact[] = [
  ["freezes at, °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["water, g", { states: "water", as: "typed", decimals: 0 }],
  [
    "of which frozen at −13 °C, %",
    { states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 },
  ],
  ["sugars in the mix, % of weight", { states: "sugar share", as: "typed", decimals: 1 }],
];

const DAYS = ["Thu", "Fri", "Sat", "Sun"];

/** What the van's freezer showed and who drove. */
function logbook(kit: Kit, row: number): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "van");
  const heads = putRow(sheet, row, 0, ["day", "driver", "leaving °C", "back °C", "scoops sold"]);
  const rows = DAYS.map((day, index) =>
    putRow(sheet, row + 1 + index, 0, [
      ...[day, random.pick(["Mo", "Bea", "Tim"]), -random.whole(17, 20), -random.whole(11, 14)],
      random.whole(120, 410),
    ]),
  );
  temperatures(kit, heads[2]!, columnOf(rows, 2));
  temperatures(kit, heads[3]!, columnOf(rows, 3));
  put(sheet, row + 5, 0, "weekend");
  sumOf(kit, sheet, { row: row + 5, column: 4 }, columnOf(rows, 4));
  note(kit, sheet, 0, 0, "Back above −10? Ring me and sell nothing.");
}

/** What to buy for all flavours together. */
function shopping(kit: Kit, sheet: CorpusSheet, items: readonly Spot[], heading: Spot): void {
  const spots = items.map((spot) => {
    const along = [1, 2, 3].map((column) => ({ ...spot, column }));
    return put(sheet, spot.row, heading.column, shown(`=SUM(${span(along)})`, "0.000"));
  });
  kit.marked.formulaColumns.push({ spots, heading, fixed: [] });
  const { row } = items.at(-1)!;
  sumOf(kit, sheet, { row: row + 1, column: heading.column }, spots, "0.000");
}

/** Three flavours that go out in the van, answers over the list. */
function van(kit: Kit): void {
  const own = { sugar: "caster sugar", honey: "clear honey" };
  const mades = kit.make(3).map((made) => called(upTo(made, 5000), own));
  const sheet = addSheet(kit.marked.book, "this weekend");
  put(sheet, 0, 0, "Flavours in the van");
  const items = down(sheet, [11, 0], itemsOf(mades));
  const amountLabel = put(sheet, 10, 0, "kg to weigh out");
  put(sheet, 7, 0, "scooping");
  put(sheet, 8, 0, "hatch sign");
  put(sheet, 11 + items.length, 0, "kg of mix");
  mades.forEach((made, index) => {
    const column = 1 + index;
    put(sheet, 2, column, made.title);
    put(sheet, 10, column, `tub ${"ABC"[index]!}`);
    const plan = { items, left: 1, unit: "kg", format: "0.000", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, index, plan);
    factsDown(sheet, recipe, FACTS, { row: 3, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: 7, column });
    tellIn(sheet, recipe, { row: 8, column }, inEnglish("Contains"));
  });
  shopping(kit, sheet, items, put(sheet, 10, 4, "buy in all, kg"));
  note(kit, sheet, 13 + items.length, 0, "Fourth tub stays empty for swaps.");
  logbook(kit, 2);
}

/** A van with three flavours. */
export const scoopVan: readonly Layout[] = [
  { name: "ice cream van, three flavours in columns", language: "en", build: van },
];
