import { a1, addSheet, fixed, put, putRow, shown, span, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { given } from "../lodgers/words";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { log, UNSERE } from "./words";

const PASTES = ["Quittenmus, Ansatz 7", "Sauerampferpaste", "Hagebuttenmark", "Holunderreduktion"];

/** What the cooks' own pastes hold, and the mix in which one is tried. */
function pastes(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 0, "Selbst gekochte Rohstoffe, Gehalte in g auf 100 g");
  const heads = putRow(sheet, 2, 0, [
    ...["Name", "Zucker (g)", "Wasser (g)", "Eiweiß (g)", "Fett (g)", "inert (g)", "Allergene"],
  ]);
  const rows = PASTES.map((paste, index) => {
    const [sugars, inert] = [random.whole(12, 42), random.whole(2, 5)];
    return putRow(sheet, 3 + index, 0, [
      ...[paste, sugars, 99 - sugars - inert, 1, 0, inert, "keine"],
    ]);
  });
  for (const [name, sugars, water, , , , allergens] of rows) {
    marked.ownLines.push({ name: name!, sugars: sugars!, water: water!, allergens: allergens! });
  }
  const own = absolute(span([heads[0]!, ...rows.flat()]));
  putRow(sheet, 8, 0, ["Versuch 1", "Gramm"]);
  const mixed = [PASTES[2]!, "Wasser", "Saccharose"].map((name, index) =>
    putRow(sheet, 9 + index, 0, [name, [320, 480, 110][index]! + 5 * random.whole(0, 8)]),
  );
  put(sheet, 12, 0, "Summe");
  sumOf(kit, sheet, { row: 12, column: 1 }, columnOf(mixed, 1));
  const call = `${span(columnOf(mixed, 0))},${span(columnOf(mixed, 1))},${own}`;
  putRow(sheet, 13, 0, ["Gefrierpunkt (°C)", shown(`=RIME.FREEZINGPOINT(${call})`, "0.0")]);
}

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt, gerechnet (°C)", states: "freezing point", as: "typed", decimals: 2 },
  { label: "Gefrierpunktserniedrigung (K)", states: "depression", as: "formula" },
  {
    label: "Zuckeranteil der Masse",
    ...{ states: "sugar share", as: "formula", percent: "format" },
  },
  {
    label: "Wasseranteil, der bei −17 °C gefroren ist",
    ...{ states: "ice of water", as: "typed", temperatureC: -17, percent: "format" },
  },
];

/** A recipe in fractions of one, the batch in grams beside it. */
function fractions(kit: Kit, made: MadeRecipe, at: number): void {
  const sheet = addSheet(kit.marked.book, `Mix ${at + 1}`);
  put(sheet, 0, 0, made.title);
  const batch = given(kit, sheet, [1, 0], ["Charge", "g", kit.random.pick([2000, 5000, 7500])]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Rohstoff", "Massenanteil (1 = alles)", "Charge in g"],
      cells: (name, grams) => [name, shown(inUnit(grams, "fraction"), "0.000")],
    },
  );
  const grams = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [batch] },
    content: (spot) => `=${a1(spot)}*${fixed(batch)}`,
  });
  put(sheet, end, 0, "Probe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.000");
  sumOf(kit, sheet, { row: end, column: 2 }, grams, "0");
  kit.marked.numberColumns.push({ spots: amounts, heading: heads[1]!, total, kind: "fraction" });
  const cells = { names, amounts, alsoAmounts: grams, unit: "fraction", total } as const;
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heads[1]! });
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Konsistenz" });
  const last = tellIn(sheet, recipe, { row: next + 2, column: 0 }, UNSERE);
  if (at > 0) return;
  log(
    kit,
    sheet,
    { row: 3, column: 5 },
    {
      ...{
        heads: ["Schockraum", "Luft (°C)"],
        when: ["7 Uhr", "11 Uhr", "15 Uhr"],
        ranges: [[-38, -33]],
      },
    },
  );
  note(kit, sheet, last + 1, 0, "Anteile auf drei Stellen, der Rest steckt im ersten Rohstoff.");
}

/** The pastes, then the mixes in fractions. */
function eigeneRohstoffe(kit: Kit): void {
  const own = { Zucker: "Rübenzucker", "Sahne 35 %": "Rahm 35 %", Heidelbeeren: "Blaubeeren" };
  const mades = kit.make(2).map((made) => called(largestFirst(made), own));
  const sheet = addSheet(kit.marked.book, "Pasten");
  mades.forEach((made, at) => fractions(kit, made, at));
  pastes(kit, sheet);
}

/** Somebody who cooks pastes and reckons in fractions. */
export const eigeneRohstoffbuecher: readonly Layout[] = [
  {
    name: "eigene Pasten und Mischungen als Massenanteile",
    language: "de",
    build: eigeneRohstoffe,
  },
];
