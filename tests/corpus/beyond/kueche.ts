import { a1, addSheet, fixed, put, putRow, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf, upTo } from "../strollers/words";
import { declare, priceOf, readings, table } from "./words";

const SAID: readonly Said[] = [
  { label: "gefriert ab (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser aus allen Zutaten (g)", states: "water", as: "formula", format: "0" },
  { label: "Gelöstes (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "Wasser als Eis bei −18 °C (%)", states: "ice of water", as: "typed" },
    ...{ temperatureC: -18, decimals: 0 },
  },
];

/** The class's amounts, what each stove gets, and what has to be paid. */
function amountsOf(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, stoves: Spot): MarkedRecipe {
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 8, column: 0 },
    {
      heads: ["Pos.", "Lebensmittel", "pro Koje (g)", "Klasse (g)", "€/kg", "Betrag (€)"],
      cells: (item, grams, index) => [...[index + 1, item, undefined, grams, priceOf(made, index)]],
      ...{ name: 1, amount: 3 },
    },
  );
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [stoves] },
    content: (spot) => `=${a1(spot)}/${fixed(stoves)}`,
  });
  const paid = beside(kit, heads[5]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot, index) => `=${a1(spot)}*${a1(rows[index]![4]!)}/1000`,
  });
  put(sheet, end, 1, "Summe");
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0.0");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts);
  sumOf(kit, sheet, { row: end, column: 5 }, paid, "0.00");
  const lines = { names, amounts, alsoAmounts, amountLabel: heads[3]!, total };
  return markRecipe(kit, made, { ...lines, unit: "g" });
}

/** The lesson's hours and the fridges of the kitchen. */
function besides(kit: Kit, sheet: CorpusSheet): void {
  table(sheet, { row: 1, column: 7 }, [
    ["Ablauf", "wer"],
    ["7:45 Hygiene, Abwiegen", "alle"],
    ["8:20 Masse erhitzen, kühlen", "Koje 1–2"],
    ["9:00 Theorie Gefrierpunkt", "alle"],
    ["9:45 Gefrieren", "Koje 3–4"],
  ]);
  const [, celsius] = putRow(sheet, 8, 7, ["Gefrierfach", "Dienstag früh (°C)", "abgetaut am"]);
  table(
    sheet,
    { row: 9, column: 7 },
    ["Koje 1", "Koje 2", "Koje 3", "Koje 4"].map((stove, at) => [
      ...[stove, undefined, ["12.01.", "12.01.", "19.01.", "26.01."][at]],
    ]),
  );
  readings(kit, sheet, celsius!, 4, [-20, -16]);
}

/** A home-economics lesson on one sheet, its answers in a strip above. */
function kueche(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "8b Eis");
  const [given] = madeOf(kit, 1, (each) => !isAlcoholic(each));
  const names = { Zucker: "Kristallzucker", Wasser: "Leitungswasser", Eigelb: "Eidotter" };
  const made = called(upTo(given!, 2400), names);
  put(sheet, 0, 0, `Hauswirtschaft 8b, Praxistag: ${made.title}`);
  const stoves = putRow(sheet, 2, 1, ["Kojen besetzt", 4])[1]!;
  const recipe = amountsOf(kit, sheet, made, stoves);
  strip(sheet, recipe, { row: 4, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: 2, column: 3, label: "Lernziel:" });
  declare(sheet, recipe, { row: 6, column: 1 }, "Kennzeichnung: enthält");
  besides(kit, sheet);
  note(kit, sheet, 18, 0, "Beleg bis Freitag im Sekretariat abgeben. Geschirrtücher mitnehmen!");
}

/** A lesson in a school's kitchen. */
export const schulkuechen: readonly Layout[] = [
  { name: "Hauswirtschaft 8b, Praxistag mit vier Kojen", language: "de", build: kueche },
];
