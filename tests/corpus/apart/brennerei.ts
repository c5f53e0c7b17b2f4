import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import { boozyFirst } from "../lodgers/words";
import { beside, listed } from "../newcomers/words";
import { ofAlcohol, upTo } from "../strollers/words";
import { readings, tellBeside } from "./words";

const VOICE: Voice = {
  lead: "Tafel, Allergene",
  honey: "Tafel: Honig, nicht für Kinder unter 12 Monaten",
  alcohol: "Tafel: Alkohol, nicht an Kinder, nicht in der Schwangerschaft, nicht vor der Heimfahrt",
  nuts: "Tafel: ganze Nüsse, Erstickungsgefahr unter 5 Jahren",
  egg: "Kessel: rohes Eigelb auf 71 °C bringen, sonst pasteurisiertes kaufen",
};

/** The recipe in kilograms under what is said of it. */
function kettle(kit: Kit, sheet: CorpusSheet): void {
  const made = called(upTo(boozyFirst(kit, 1)[0]!, 6000), {
    ...{ "Spirituose 40 % vol": "Obstler 40 % vol", Wasser: "Leitungswasser" },
    ...{ Zucker: "Rübenzucker", Kokosraspel: "Kokosflocken" },
  });
  put(sheet, 0, 1, `${made.title} fürs Brennereicafé`);
  const top = 13;
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: top, column: 1 },
    {
      heads: ["kg", "Anteil", "Rohstoff", "Partie"],
      cells: (name, grams) => [
        ...[shown(inUnit(grams, "kg"), "0.000"), undefined, name, `P${kit.random.whole(10, 99)}`],
      ],
      ...{ name: 2, amount: 0 },
    },
  );
  put(sheet, top - 1, 3, "Einwaage gesamt");
  const total = sumOf(kit, sheet, { row: top - 1, column: 1 }, amounts, "0.000");
  const whole = fixed(total);
  const alsoAmounts = beside(kit, heads[1]!, amounts, {
    ...{ sheet, format: "0.0%", fixed: [total] },
    content: (spot) => `=${a1(spot)}/${whole}`,
  });
  const lines = { names, amounts, alsoAmounts, amountLabel: heads[0]!, total, unit: "kg" } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: 2, column: 1 }, [
    { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula" },
    { label: "Senkung", inCell: "K", states: "depression", as: "typed" },
    ...ofAlcohol(made, "Alkohol, rein", "g"),
    { label: "Wasser insgesamt", inCell: "g", states: "water", as: "typed", decimals: 0 },
    { label: "Zucker auf 100 g Wasser", inCell: "g", states: "sugar per 100 g water", as: "typed" },
    {
      ...{ label: "Wasseranteil gefroren, −15 °C", inCell: "%", decimals: 1 },
      ...{ states: "ice of water", as: "typed", temperatureC: -15 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Ziel" });
  tellBeside(sheet, recipe, { row: 9, column: 1 }, VOICE);
  note(kit, sheet, end + 1, 1, "Brand erst in die kalte Masse geben, sonst geht das Aroma ab.");
}

const POURED: readonly (readonly [string, number, number, number])[] = [
  ["Zwetschgenwasser", 420, 450, 38],
  ["Quittenlikör", 220, 260, 24],
  ["Kräuterlikör", 280, 340, 26],
  ["Apfelmost", 45, 62, 3.2],
  ["Himbeergeist", 400, 440, 54],
];

/** Glasses poured over ices, with the alcohol that they bring. */
function glasses(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 0, "Schuss übers Eis, je Becher");
  const heads = putRow(sheet, 2, 0, [
    "Was",
    "% vol",
    "g im Becher",
    "davon Alkohol in g",
    "€ je Liter",
  ]);
  const rows = POURED.map(([name, from, to, euros], index) => {
    const [, abv, grams] = putRow(sheet, 3 + index, 0, [
      ...[name, shown(random.whole(from, to) / 10, "0.0"), random.whole(12, 30)],
    ]) as [Spot, Spot, Spot];
    const formula = `=${a1(grams)}*RIME.ABVTOMASSFRACTION(${a1(abv)})`;
    const alcohol = put(sheet, 3 + index, 3, shown(formula, "0.0"));
    put(sheet, 3 + index, 4, shown(euros, "0.00"));
    marked.alcohols.push({ grams, abv, alcohol });
    return [alcohol];
  });
  marked.formulaColumns.push({ spots: columnOf(rows, 0), heading: heads[3]!, fixed: [] });
  put(sheet, 9, 0, "Alle Becher mit Schuss: Alkohol, nicht an Kinder, Schwangere und Fahrer.");
  readings(
    kit,
    sheet,
    { row: 11, column: 0 },
    {
      heads: ["Vitrine", "°C", "Gäste"],
      ...{ when: ["Sa 11 Uhr", "Sa 14 Uhr", "So 11 Uhr", "So 14 Uhr"], tenths: [-162, -139] },
      rest: () => [random.whole(4, 45)],
    },
  );
}

function brennerei(kit: Kit): void {
  kettle(kit, addSheet(kit.marked.book, "Kessel"));
  glasses(kit, addSheet(kit.marked.book, "Becher"));
}

/** A distillery with a café. */
export const brennereien: readonly Layout[] = [
  { name: "Brennereicafé, Angaben über der Einwaage in kg", language: "de", build: brennerei },
];
