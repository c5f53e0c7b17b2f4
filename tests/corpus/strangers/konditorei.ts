import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { perHundred, type MadeRecipe } from "../recipes";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { jars } from "../kitchens/jars";
import { hasAlcohol } from "./etikett";
import { beside, lines, under } from "./zeilen";

const FORMS = ["Kastenform", "Halbkugeln", "Stieleis"];

/** How many of each form are filled, and with how much; gives the grams that each form takes. */
function forms({ marked, random }: Kit, sheet: CorpusSheet): Spot[] {
  const rows = [
    ["Form", ...FORMS],
    ["Stück", random.whole(2, 4), 12 * random.whole(1, 3), random.whole(15, 40)],
    ["Füllung je Stück (g)", random.pick([750, 850, 900]), random.pick([45, 60]), 75],
    ["Bedarf (g)"],
  ].map((contents, index) => putRow(sheet, 2 + index, 1, contents));
  marked.inputs.push(
    ...[1, 2, 3].map((at) => ({
      label: rows[2]![0]!,
      value: rows[2]![at]!,
      bare: "Füllung je Stück",
    })),
  );
  return [1, 2, 3].map((at) => put(sheet, 5, 1 + at, `=${a1(rows[1]![at]!)}*${a1(rows[2]![at]!)}`));
}

const ALCOHOL_IN_IT: Said = {
  ...{ label: "Alkohol in 100 g Masse (g)", states: "alcohol", as: "typed", decimals: 1 },
};

const said = (made: MadeRecipe): Said[] => [
  { label: "Gefrierbeginn (°C)", states: "freezing point", as: "formula" },
  { label: "Gefrierpunktserniedrigung (K)", states: "depression", as: "typed" },
  { label: "Gelöstes in 100 g Masse (g)", states: "dissolved", as: "typed", decimals: 1 },
  ...(hasAlcohol(made) ? [ALCOHOL_IN_IT] : []),
  { label: "Zucker in der Masse", states: "sugar share", as: "typed", percent: "format" },
  {
    label: "Eis in der Masse bei −18 °C",
    ...{ states: "ice of mix", as: "typed", percent: "format", temperatureC: -18 },
  },
];

/** Shares shown as per cent, each form's grams at their right. */
function shares(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const needs = forms(kit, sheet);
  const gramHeads = FORMS.map((each) => `${each} (g)`);
  const heads = putRow(sheet, 7, 0, ["Anteil", "Rohstoff", ...gramHeads]);
  const cells = lines(sheet, { row: 8, column: 0 }, made, (name, grams) => [
    ...[shown(inUnit(grams, "fraction"), "0.0%"), name],
  ]);
  const [amounts, names] = cells as [Spot[], Spot[]];
  const total = under(kit, amounts, "0.0%");
  put(sheet, total.row, 1, "Summe");
  const alsoAmounts = needs.flatMap((need, at) => {
    const formula = (cell: string) => `=${cell}*${fixed(need)}`;
    const plan = { heading: heads[2 + at]!, formula, fixed: [need], format: "0" };
    const spots = beside(kit, amounts, plan);
    under(kit, spots, "0");
    return spots;
  });
  const column = { spots: amounts, heading: heads[0]!, total, kind: "fraction" } as const;
  kit.marked.numberColumns.push(column);
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "fraction", amountLabel: heads[0]!, total },
  });
}

/** A mix in shares, for the forms of the week; the filling on a sheet of its own. */
function moulds(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eistorten");
  const made = called(stillMet(perHundred(kit.make(1)[0]!)), { Zucker: "Kristallzucker" });
  putRow(sheet, 0, 1, ["Masse:", made.title]);
  const recipe = shares(kit, sheet, made);
  let next = say(sheet, recipe, { row: recipe.total!.row + 2, column: 1 }, said(made));
  nameTarget(sheet, recipe, { row: next++, column: 1, label: "Gewünscht" });
  next = tell(kit, sheet, recipe, { row: next + 1, column: 1, as: "pair" });
  note(kit, sheet, next + 1, 1, "Formen vor dem Füllen eine Stunde vorkühlen.");
  filling(kit);
}

const HEADS = [
  ...["Name", "Zucker (g)", "Wasser (g)", "Fett (g)", "Eiweiß (g)", "inert (g)"],
  ...["Allergene", "Quelle"],
];

/** A fruit filling with what the orchard cooks for us; its labels copied below. */
function filling(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Fruchteinlage");
  const items = ["Marillenröster vom Obstbauern", "Zwetschkenmus Hausmarke"];
  put(sheet, 8, 0, "Gekauftes, Angaben je 100 g laut Etikett");
  const words = { headings: HEADS, items, none: "keine", source: "Etikett" };
  const own = jars(kit, sheet, { row: 9, column: 0 }, words);
  put(sheet, 0, 0, "Fruchteinlage für eine Torte");
  putRow(sheet, 2, 0, ["Menge (g)", "Bestandteil"]);
  const list = [
    [random.whole(12, 20) * 10, items[0]!],
    [random.whole(6, 10) * 10, items[1]!],
    [random.whole(3, 6) * 10, "Wasser"],
  ] as const;
  const rows = list.map((each, index) => putRow(sheet, 3 + index, 0, each));
  const [grams, names] = [span(columnOf(rows, 0)), span(columnOf(rows, 1))];
  const call = shown(`=RIME.FREEZINGPOINT(${names},${grams},${own})`, "0.0");
  putRow(sheet, 6, 0, [`=SUM(${grams})`, "Summe", undefined, "Gefrierpunkt (°C)", call]);
}

/** Sheets of a pastry shop. */
export const konditorei: readonly Layout[] = [
  { name: "Konditorei, Eistorten nach Form", language: "de", build: moulds },
];
