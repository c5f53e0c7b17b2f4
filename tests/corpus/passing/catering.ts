import { a1, addSheet, fixed, put, putRow, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { hasSpirit } from "../guests/words";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { massOf, withLines, type MadeRecipe } from "../recipes";
import { ALCOHOL, line } from "../stock";
import { declare, sorbet } from "./words";

/** With a shot of spirit in it; what already has one, or a mistake, stays as it is. */
function withShot(kit: Kit, made: MadeRecipe): MadeRecipe {
  if (made.seeded !== undefined || hasSpirit(made)) return made;
  const grams = Math.round(massOf(made) * kit.random.between(0.025, 0.04));
  const shot = kit.random.pick([
    ["gin 40 %", "Gin 40 %"],
    ["rum 40 %", "Rum 40 %"],
  ] as const);
  return stillMet(withLines(made, [...made.lines, line(shot[0], shot[1], grams, ALCOHOL)]));
}

const DRINKS = [
  ["Gin 40 %", 40],
  ["Rum 40 %", 40],
  ["Wodka 37,5 %", 37.5],
  ["Likör 25 %", 25],
] as const;

/** What is poured over it at the table. */
function drinks(kit: Kit, sheet: CorpusSheet, top: number, { flags }: MarkedRecipe): void {
  const heads = putRow(sheet, top, 0, [
    ...["Zum Übergießen", "Vol.-%", "Schuss je Glas (g)", "davon reiner Alkohol (g)"],
  ]);
  const rows = DRINKS.map(([name, abv], index) =>
    putRow(sheet, top + 1 + index, 0, [name, abv, kit.random.whole(8, 20)]),
  );
  const pure = beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=${a1(spot)}*RIME.ABVTOMASSFRACTION(${a1({ ...spot, column: 1 })})`,
  });
  rows.forEach(([, abv, grams], index) =>
    kit.marked.alcohols.push({ grams: grams!, abv: abv!, alcohol: pure[index]! }),
  );
  const words = "Gläser mit Alkohol: nicht für Kinder, Schwangere und wer noch fährt.";
  flags.push(put(sheet, top + 5, 0, words));
}

interface Event {
  readonly guests: Spot;
  readonly glass: Spot;
}

/** The trial left, for all guests right; gives the next free row. */
function forGuests(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, { guests, glass }: Event) {
  const list = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Zutat", "Probe (g)", "Empfang (g)"],
      cells: (name, grams) => [name, grams],
    },
  );
  const { heads, names, amounts, end } = list;
  put(sheet, end, 0, "Menge gesamt");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const scaled = `*${fixed(guests)}*${fixed(glass)}/${fixed(total)}`;
  const event = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [guests, glass, total] },
    content: (spot) => `=${a1(spot)}${scaled}`,
  });
  sumOf(kit, sheet, { row: end, column: 2 }, event, "0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: event, unit: "g", amountLabel: heads[1]!, total },
  });
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, [
    { label: "friert ab (°C)", states: "freezing point", as: "formula", format: "0.0" },
    { label: "Alkohol in der Probe (g)", states: "alcohol", as: "typed", decimals: 1 },
    { label: "Zucker auf 100 g Wasser (g)", states: "sugar per 100 g water", as: "typed" },
    {
      label: "Eis bei −14 °C, Anteil an der Gesamtmasse (%)",
      ...{ states: "ice of mix", as: "typed", temperatureC: -14 },
    },
    { label: "Wasser in der Probe (g)", states: "water", as: "formula", format: "0" },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "gewünscht" });
  return { recipe, next: declare(sheet, recipe, { row: next + 1, column: 0 }, "Deklaration:") };
}

/** A sorbet for a reception, worked out by the guests. */
function catering(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Empfang");
  const made = called(withShot(kit, sorbet(kit)), { Zucker: "Haushaltszucker" });
  put(sheet, 0, 0, `Empfang am Samstag: ${made.title} im Glas`);
  const guests = putRow(sheet, 1, 0, ["Gäste", 5 * random.whole(8, 30)])[1]!;
  const glass = input(
    kit,
    sheet,
    { row: 2, column: 0 },
    {
      ...{ label: "je Glas (g)", bare: "je Glas", value: random.pick([35, 40, 50]) },
    },
  );
  const { recipe, next } = forGuests(kit, sheet, made, { guests, glass });
  drinks(kit, sheet, next + 2, recipe);
  note(kit, sheet, next + 9, 0, "Gläser am Vortag in die Truhe; Löffel nicht vergessen.");
}

/** A caterer. */
export const caterings: readonly Layout[] = [
  { name: "Catering, Sorbet mit Schuss zum Empfang", language: "de", build: catering },
];
