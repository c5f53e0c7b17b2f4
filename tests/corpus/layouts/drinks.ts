import { a1, addSheet, put, putRow, shown, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { freezesAt, sumOf } from "./parts";

/** Drinks beside each other, their alcohol under them; syrups beside each other below. */
function across(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Pops for grown-ups");
  put(sheet, 0, 0, "What goes into the pops");
  ["Drink", "Strength (% vol)", "Poured (g)", "Pure alcohol (g)"].forEach((label, index) =>
    put(sheet, 2 + index, 0, label),
  );
  const drinks = [
    ["rum 40 %", 40],
    ["vodka 37.5 %", 37.5],
    ["liqueur 25 %", 25],
  ] as const;
  const pure = drinks.map(([name, strength], index) => {
    const at = (row: number, content: string | number): Spot => put(sheet, row, 1 + index, content);
    at(2, name);
    const [abv, grams] = [at(3, strength), at(4, random.whole(15, 80))];
    const content = shown(`=RIME.ABVTOMASSFRACTION(${a1(abv)})*${a1(grams)}`, "0.0");
    const alcohol = put(sheet, 5, 1 + index, content);
    marked.alcohols.push({ grams, abv, alcohol });
    return alcohol;
  });
  put(sheet, 2, 4, "All");
  sumOf(kit, sheet, { row: 5, column: 4 }, pure, "0.0");
  note(
    kit,
    sheet,
    7,
    0,
    "Contains alcohol: not for children, not in pregnancy, not before driving.",
  );
  const labels = [
    ...["Syrup", "Sucrose (g)", "Water (g)", "Sugar per 100 g water (g)"],
    ...["Sugar, % of the syrup", "Freezing point (°C)"],
  ];
  labels.forEach((label, index) => put(sheet, 10 + index, 0, label));
  for (let index = 0; index < 4; index += 1) {
    const at = (row: number, content: string | number): Spot => put(sheet, row, 1 + index, content);
    const [sugarGrams, waterGrams] = [random.whole(20, 50) * 5, random.whole(4, 8) * 50];
    at(10, ["thin", "usual", "thick", "for glazing"][index]!);
    const [sugar, water] = [at(11, sugarGrams), at(12, waterGrams)];
    const perWater = at(13, Number(((100 * sugarGrams) / waterGrams).toFixed(1)));
    const share = at(14, Number(((100 * sugarGrams) / (sugarGrams + waterGrams)).toFixed(1)));
    at(15, freezesAt(["sucrose", "water"], [sugarGrams, waterGrams]));
    marked.strengths.push({ sugar, water, perWater, share });
  }
}

const DAYS = ["Donnerstag", "Freitag", "Samstag"];
const POURED = [
  ...([
    ["Rum 40 %", 40],
    ["Wodka 37,5 %", 37.5],
    ["Likör 25 %", 25],
  ] as const),
  ...([["Spirituose 40 % vol", 40]] as const),
];

/** What was poured, day by day, with a sum and a blank row after each; the cabinet's temperature beside. */
function byDay(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Eisbar");
  put(sheet, 0, 0, "Eisbar, Woche 31");
  const heads = putRow(sheet, 2, 0, [
    ...["Tag", "Getränk", "verarbeitet (g)", "% vol", "reiner Alkohol (g)", "Vitrine (°C)"],
  ]);
  let row = 3;
  const [all, cold]: Spot[][] = [[], []];
  for (const day of DAYS) {
    put(sheet, row, 0, day);
    const parts: Spot[] = [];
    const from = random.whole(0, 1);
    for (const [name, strength] of POURED.slice(from, from + 3)) {
      const [, grams, abv] = putRow(sheet, row, 1, [name, random.whole(20, 140), strength]);
      const content = `=${a1(grams!)}*RIME.ABVTOMASSFRACTION(${a1(abv!)})`;
      const alcohol = put(sheet, row, 4, shown(content, "0.0"));
      marked.alcohols.push({ grams: grams!, abv: abv!, alcohol });
      cold!.push(put(sheet, row, 5, -random.whole(24, 36) / 2));
      parts.push(alcohol);
      row += 1;
    }
    put(sheet, row, 1, "Summe");
    sumOf(kit, sheet, { row, column: 4 }, parts, "0.0");
    all!.push(...parts);
    row += 2;
  }
  marked.formulaColumns.push({ spots: all!, heading: heads[4]!, fixed: [] });
  const column = { spots: cold!, heading: heads[5]!, total: null, kind: "temperature" } as const;
  marked.numberColumns.push(column);
  note(kit, sheet, row, 0, "Enthält Alkohol: nicht für Kinder, Schwangere und wer noch fährt.");
  note(kit, sheet, row + 1, 0, "Freitag Lieferung erst am Nachmittag.");
}

/** Sheets with drinks. */
export const drinks: readonly Layout[] = [
  { name: "drinks and syrups across", language: "en", build: across },
  { name: "Eisbar nach Tagen", language: "de", build: byDay },
];
