import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { changed, plainOf } from "../lodgers/swaps";
import { down } from "../lodgers/words";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { degrees, table } from "./words";

const VOICE: Voice = {
  lead: "Allergene lt. Spezifikation:",
  honey: "Honig: nicht für Kinder unter 12 Monaten.",
  alcohol: "Alkoholhaltig: nicht für Kinder, Schwangere, Fahrer.",
  nuts: "Ganze Nüsse: Erstickungsgefahr für Kinder unter 5 Jahren.",
  egg: "Rohes Eigelb: Masse auf 71 °C erhitzen oder pasteurisiert beziehen.",
};

const ROHSTOFFE = { Zucker: "Raffinade", Sahne: "Rahm 35 %", Vollmilch: "Vollmilch 3,5 %" };

const KENNZAHLEN: readonly Fact[] = [
  ["Gefrierpunkt ber. [°C]", { states: "freezing point", as: "formula", format: "0.00" }],
  ["ΔT ber. [K]", { states: "depression", as: "typed", decimals: 2 }],
  ["Wasser [g/100 g]", { states: "water", as: "typed", decimals: 1 }],
  ["Gelöstes [g/100 g]", { states: "dissolved", as: "typed", decimals: 1 }],
  ["Eis in der Masse bei Lagerung [%]", { states: "ice of mix", as: "formula", format: "0.0" }],
];

/** The standard and three trials, each for a hundred. */
function reihe(kit: Kit): readonly (readonly [string, MadeRecipe])[] {
  const made = plainOf(kit);
  const plain = sound(kit, made);
  const versions: readonly (readonly [string, MadeRecipe])[] = [
    ["Standard", made],
    ["Zucker −20 %", changed(plain, 0.8)],
    ["1/4 Zucker gegen Fruktose", changed(plain, 0.75, "fructose")],
    ["2/5 Zucker gegen Dextrose-Monohydrat", changed(plain, 0.6, "dextrose monohydrate")],
  ];
  return versions.map(([what, each]) => [what, called(hundred(each), ROHSTOFFE)]);
}

/** What came out of the freezer. */
function protokoll(kit: Kit, sheet: CorpusSheet, row: number): void {
  const { random, marked } = kit;
  const { heads, rows } = table(
    sheet,
    { row, column: 0 },
    ["Versuch", "Chargengröße [kg]", "Auslauf [°C]", "Aufschlag [%]", "nach 24 h [°C]", "Biss 1–5"],
    ["V0", "V1", "V2", "V3"].map((trial) => [
      ...[trial, shown(2.5, "0.0"), degrees(kit, -7, -5), random.whole(22, 48)],
      ...[degrees(kit, -20, -17), random.whole(1, 5)],
    ]),
  );
  const column = (at: number, kind: "temperature" | "per cent") =>
    marked.numberColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[at]!, total: null, kind },
    });
  column(2, "temperature");
  column(3, "per cent");
  column(4, "temperature");
  note(
    kit,
    sheet,
    row + 6,
    0,
    "V2 am Rand grobkörnig, Messer der Maschine war stumpf. Wiederholen.",
  );
}

const TOP = 6;

/** One trial's column. */
function versuch(
  kit: Kit,
  sheet: CorpusSheet,
  [what, made]: readonly [string, MadeRecipe],
  plan: { readonly index: number; readonly items: readonly Spot[]; readonly amountLabel: Spot },
): MarkedRecipe {
  const { index } = plan;
  const column = 1 + index;
  const heading = put(sheet, TOP - 1, column, `V${index}`);
  put(sheet, TOP - 2, column, what);
  const cells = { ...plan, left: 1, unit: "fraction", format: "0.000" } as const;
  const recipe = downColumn(kit, sheet, made, index, cells);
  const { amounts: spots, total } = recipe;
  kit.marked.numberColumns.push({ spots, heading, total, kind: "fraction" });
  return recipe;
}

/** A factory's trial room: a standard and what was changed in it. */
function versuchsraum(kit: Kit): void {
  const list = reihe(kit);
  const sheet = addSheet(kit.marked.book, "Reihe 07");
  putRow(sheet, 0, 0, ["Versuchsreihe 07", list[0]![1].title]);
  const temperatureC = kit.random.pick([-18, -20]);
  const words = { label: "Lagerung [°C]", bare: "Lagerung", value: temperatureC };
  const temperature = input(kit, sheet, { row: 2, column: 0 }, words);
  const amountLabel = put(sheet, TOP - 1, 0, "Rohstoff, Massenanteil [kg/kg]");
  const items = down(sheet, [TOP, 0], itemsOf(list.map(([, made]) => made)));
  const end = TOP + items.length;
  put(sheet, end, 0, "Kontrollsumme");
  putRow(sheet, end + 7, 0, ["Zielvorgabe"]);
  putRow(sheet, end + 8, 0, ["Kennzeichnung"]);
  const facts = KENNZAHLEN.map(([label, plan]): Fact =>
    plan.states.startsWith("ice") ? [label, { ...plan, temperature, temperatureC }] : [label, plan],
  );
  list.forEach((each, index) => {
    const recipe = versuch(kit, sheet, each, { index, items, amountLabel });
    const column = 1 + index;
    factsDown(sheet, recipe, facts, { row: end + 2, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: end + 7, column });
    tellIn(sheet, recipe, { row: end + 8, column }, VOICE);
  });
  protokoll(kit, sheet, end + 11);
}

/** Sheets of a factory's trial room. */
export const versuchsraeume: readonly Layout[] = [
  { name: "Versuchsraum, Standard und drei Versuche", language: "de", build: versuchsraum },
];
