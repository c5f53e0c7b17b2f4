import { a1, addSheet, fixed, put, putRow, span } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";
import { allergenOf, ifAlcoholic, inGerman } from "./words";

const saidOf = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefrierpunkt ber. [°C]", states: "freezing point", as: "typed" },
  { label: "Gefrierpunktserniedrigung ber. [K]", states: "depression", as: "typed" },
  { label: "Wasser [g]", states: "water", as: "typed", decimals: 1 },
  { label: "geloeste Stoffe [g]", states: "dissolved", as: "typed", decimals: 1 },
  { label: "Zucker je 100 g Wasser [g]", states: "sugar per 100 g water", as: "typed" },
  ...ifAlcoholic(made, { label: "Ethanol [g]", states: "alcohol", as: "typed", decimals: 1 }),
  {
    ...{ label: "Wasser gefroren bei -18 °C [%]", states: "ice of water", as: "typed" },
    ...{ temperatureC: -18, decimals: 1 },
  },
];

const HEADS = ["POS", "KOMPONENTE", "EINWAAGE", "EH", "ANTEIL [%]", "ALLERGEN"];

/** The head of the file: what is known of the trial before it is weighed. */
function keys(kit: Kit, made: MadeRecipe): number {
  const { random, marked } = kit;
  const sheet = marked.book.sheets[0]!;
  const rows = [
    ["VERSUCH", `SE-${random.whole(110, 980)}`],
    ["BEZEICHNUNG", made.title],
    ["ANLAGE", random.pick(["Technikum klein", "Technikum gross"])],
    ["CHARGIERT VON", random.pick(["hm", "ow", "kt"])],
  ];
  rows.forEach((cells, row) => putRow(sheet, row, 0, cells));
  return rows.length + 1;
}

/** What the probe in the hardening tunnel recorded. */
function probe(kit: Kit, row: number): void {
  const sheet = kit.marked.book.sheets[0]!;
  const heads = putRow(sheet, row, 0, ["MINUTE", "KERN [°C]", "LUFT [°C]"]);
  const rows = [0, 15, 30, 45, 60, 90].map((minute, index) =>
    putRow(sheet, row + 1 + index, 0, [
      ...[minute, -(58 + 26 * index + kit.random.whole(0, 9)) / 10],
      -kit.random.whole(300, 330) / 10,
    ]),
  );
  for (const at of [1, 2]) temperatures(kit, heads[at]!, columnOf(rows, at));
}

/** One trial as the laboratory's program writes it out. */
function trial(kit: Kit): void {
  const own = { Saccharose: "Raffinade", Zucker: "Raffinade", Magermilchpulver: "MMP" };
  const made = called(perKilogram(kit.make(1)[0]!), own);
  const sheet = addSheet(kit.marked.book, "export");
  const top = keys(kit, made);
  const list = listed(
    sheet,
    made,
    { row: top, column: 0 },
    {
      heads: HEADS,
      cells: (item, grams, index) => [
        ...[10 * (index + 1), item, grams, "g", undefined, allergenOf(made, index)],
      ],
      ...{ name: 1, amount: 2 },
    },
  );
  const { heads, rows, names, amounts, end } = list;
  put(sheet, end, 1, "SUMME");
  const total = put(sheet, end, 2, `=SUM(${span(amounts)})`);
  const alsoAmounts = amounts.map((spot) =>
    put(sheet, spot.row, 4, `=ROUND(100*${a1(spot)}/${fixed(total)},1)`),
  );
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, total, unit: "g", amountLabel: heads[2]! },
    unitCells: columnOf(rows, 3),
  });
  if (made.flagged) recipe.flags.push(...columnOf(rows, 5));
  const next = say(sheet, recipe, { row: end + 2, column: 1 }, saidOf(made));
  nameTarget(sheet, recipe, { row: next, column: 1, label: "ZIELTEXTUR" });
  const last = tellIn(sheet, recipe, { row: next + 1, column: 1 }, inGerman("ENTHAELT"));
  probe(kit, last + 1);
  note(kit, sheet, last + 9, 0, "Ende der Ausgabe");
}

/** A laboratory's file of a trial. */
export const versuchsdatei: readonly Layout[] = [
  {
    ...{ name: "Technikum, ein Versuch als Ausgabedatei", language: "de" },
    ...{ isCsv: true, build: trial },
  },
];
