import { a1, addSheet, fixed, put, putRow, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { isAlcoholic, madeOf, upTo } from "../strollers/words";
import { aside, readings } from "./words";

const VOICE: Voice = {
  lead: "Aushang Speisesaal, Allergene:",
  honey: "Mit Honig, Besuchskinder unter 12 Monaten bekommen nichts davon.",
  alcohol: "Mit Alkohol, nicht für Kinder, Schwangere und wer Auto fährt.",
  nuts: "Ganze Nüsse, Erstickungsgefahr für Kinder unter 5 Jahren.",
  egg: "Rohes Eigelb, Masse auf 71 °C bringen oder pasteurisiertes bestellen.",
};

const OWN = {
  Zucker: "Haushaltszucker",
  Vollmilch: "H-Milch 3,5 %",
  Banane: "Bananen",
  Pfirsich: "Pfirsiche",
  Wasser: "Leitungswasser",
};

const SAID: readonly Said[] = [
  { label: "Wasser insgesamt, Gramm", states: "water", as: "formula", format: "0" },
  { label: "Beginnt zu gefrieren, °C", states: "freezing point", as: "typed", decimals: 1 },
  {
    ...{ label: "Zucker je 100 g Wasser, Gramm" },
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 0 },
  },
  {
    label: "Gefrorener Teil des Wassers im Ausgabewagen, −13 °C, in %",
    ...{ states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 },
  },
];

/** Left the amounts, right what one resident gets of each. */
function list(kit: Kit, sheet: CorpusSheet, portions: Spot): MarkedRecipe {
  const [one] = madeOf(kit, 1, (each) => !isAlcoholic(each));
  const made = called(upTo(one!, 4000), OWN);
  put(sheet, 1, 1, made.title);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads: ["Menge", "Einh.", "Lebensmittel", "auf eine Portion (g)", "geholt"],
      cells: (item, grams) => [
        ...[grams, "g", item, undefined, kit.random.pick(["x", "x", undefined])],
      ],
      ...{ name: 2, amount: 0 },
    },
  );
  const each = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [portions] },
    content: (spot) => `=${a1(spot)}/${fixed(portions)}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  putRow(sheet, end, 1, ["g", "Gesamtmenge"]);
  sumOf(kit, sheet, { row: end, column: 3 }, each, "0.0");
  const unitCells = amounts.map((spot) => ({ ...spot, column: 1 }));
  const cells = { names, amounts, unitCells, total, alsoAmounts: each, amountLabel: heads[0]! };
  return markRecipe(kit, made, { ...cells, unit: "g" });
}

/** A recipe sheet of the kitchen of a home for old people. */
function blatt(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Nachtisch 22");
  putRow(sheet, 0, 0, ["Küche Haus Lindenhof", undefined, "Rezeptblatt Nachtisch Nr. 22"]);
  put(sheet, 1, 0, "Eis:");
  const portions = putRow(sheet, 3, 0, [kit.random.pick([45, 54, 60]), "Portionen"])[0]!;
  const recipe = list(kit, sheet, portions);
  const next = say(sheet, recipe, { row: 5, column: 6 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Gewünscht" });
  const row = recipe.total!.row + 2;
  const end = tellIn(sheet, recipe, { row, column: 0 }, VOICE) + 1;
  const shifts = ["Montag", "Dienstag", "Mittwoch", "Donnerstag"].map((day) => [
    ...[day, kit.random.pick(["Fr. Adler", "Hr. Bo"]), kit.random.pick(["Azubi", "Aushilfe"])],
  ]);
  const heads = aside(
    sheet,
    { row: end, column: 0 },
    ["Dienst", "früh", "spät", "TK-Zelle (°C)"],
    shifts,
  );
  readings(kit, sheet, heads[3]!, { count: shifts.length, from: -22, to: -18 });
  const diets = [
    ["püriert", 8],
    ["ohne Milch", 5],
    ["Vollkost", kit.random.whole(30, 40)],
  ];
  aside(sheet, { row: end, column: 6 }, ["Kostform", "Bewohner"], diets);
  note(kit, sheet, end + 6, 0, "Wohnbereich 3 isst zuerst, dort um 11:40 Uhr abfüllen.");
}

/** The kitchen of a home. */
export const seniorenheime: readonly Layout[] = [
  { name: "Seniorenheim, Rezeptblatt mit Portionen", language: "de", build: blatt },
];
