import {
  a1,
  addSheet,
  calledFrom,
  fixed,
  put,
  putRow,
  shown,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed, type Listed } from "../newcomers/words";
import { perHundred, type MadeRecipe } from "../recipes";
import { isAlcoholic, labelAt, madeOf, temperatures } from "./words";

const DAYS = ["Montag", "Mittwoch", "Freitag", "Sonntag"];
const PLAN = ["Tag", "Eis", "Portionen", "g je Portion", "Bedarf in kg", "Ausgabe in °C"];

/** The week: which ice, how many portions, how many kilograms; gives the needs. */
function plan(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): Spot[] {
  const { random, marked } = kit;
  put(sheet, 0, 0, "Klinikküche, Eis der Woche");
  const heads = putRow(sheet, 2, 0, PLAN);
  const rows = mades.map(({ title }, index) =>
    putRow(sheet, 3 + index, 0, [
      ...[DAYS[index], title, 5 * random.whole(20, 60), 5 * random.whole(10, 16)],
      ...[undefined, shown(-random.whole(22, 27) / 2, "0.0")],
    ]),
  );
  const needs = rows.map(([, , portions, each], index) =>
    put(sheet, 3 + index, 4, shown(`=${a1(portions!)}*${a1(each!)}/1000`, "0.0")),
  );
  marked.formulaColumns.push({ spots: needs, heading: heads[4]!, fixed: [] });
  put(sheet, 7, 0, "Woche");
  sumOf(kit, sheet, { row: 7, column: 2 }, columnOf(rows, 2));
  sumOf(kit, sheet, { row: 7, column: 4 }, needs, "0.0");
  temperatures(kit, heads[5]!, columnOf(rows, 5));
  note(kit, sheet, 9, 0, "Diätküche: Zuckerwerte stehen beim Rezept.");
  return needs;
}

/** What is said under each recipe. */
const ANSWERS: readonly Said[] = [
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Zucker, Anteil der Masse", states: "sugar share", as: "formula", percent: "format" },
  {
    label: "Ausgefroren bei −12 °C, Anteil des Wassers",
    ...{ states: "ice of water", as: "typed", temperatureC: -12, percent: "format" },
  },
];

/** The kilograms of the day by the shares. */
function weighed(kit: Kit, made: MadeRecipe, list: Listed, wanted: Spot): MarkedRecipe {
  const { sheet, heads, names, amounts, end } = list;
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.00", fixed: [wanted] },
    content: (spot) => `=${a1(spot)}*${fixed(wanted)}`,
  });
  put(sheet, end, 0, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0%");
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0.00");
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "fraction", amountLabel: heads[1]!, total },
  });
}

/** A day's recipe in shares, its kilograms by the plan; gives the row for the next. */
function day(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, need: Spot): number {
  put(sheet, top, 0, made.title);
  const whole = calledFrom({ ...need, sheet: sheet.name }, need);
  put(sheet, top, 1, "Bedarf (kg)");
  const wanted = put(sheet, top, 2, shown(`=${whole}`, "0.0"));
  const list = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    {
      heads: ["Zutat", "Massenanteil", "abwiegen in kg"],
      cells: (name, grams) => [name, shown(inUnit(grams, "fraction"), "0.0%")],
    },
  );
  const recipe = weighed(kit, made, list, wanted);
  const next = say(sheet, recipe, { row: list.end + 1, column: 0 }, ANSWERS);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Ausgabe als" });
  return labelAt(sheet, recipe, { row: next + 1, column: 0 }, "Enthält") + 1;
}

/** A week of ices for a hospital, planned on one sheet and weighed on the other. */
function klinik(kit: Kit): void {
  const mades = madeOf(kit, 4, (made) => !isAlcoholic(made)).map((made) =>
    called(stillMet(perHundred(made)), { Zucker: "Haushaltszucker" }),
  );
  const needs = plan(kit, addSheet(kit.marked.book, "Woche"), mades);
  const sheet = addSheet(kit.marked.book, "Rezepte");
  let top = 0;
  mades.forEach((made, index) => {
    top = day(kit, sheet, made, top, needs[index]!);
  });
}

/** A hospital kitchen. */
export const kliniken: readonly Layout[] = [
  { name: "Klinikküche, Woche und Rezepte in Anteilen", language: "de", build: klinik },
];
