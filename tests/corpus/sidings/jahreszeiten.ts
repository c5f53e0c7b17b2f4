import { addSheet, put, type CorpusSheet } from "../book";
import { cautionsIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { allergensBeside, degrees, inGerman, readings, smallTable } from "./words";

const VOICE = inGerman("");

const OWN = {
  ...{ Zucker: "weißer Zucker", Honig: "Blütenhonig", Heidelbeeren: "Blaubeeren" },
  ...{ Vollmilch: "Vollmilch, 3,5 %", Walnüsse: "Walnusskerne" },
};

const SAID: readonly Said[] = [
  {
    ...{ label: "fängt an zu gefrieren bei", inCell: "°C" },
    ...{ states: "freezing point", as: "typed", decimals: 1 },
  },
  { label: "Wasser insgesamt", inCell: "g", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "vom Wasser gefroren in der Truhe (−18 °C)", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** Ein Rezept ohne Summe; gibt die Zeile für das nächste. */
function recipeAt(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  put(sheet, top, 0, made.title);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    {
      heads: ["Zutaten", "Gramm", "Allergen"],
      cells: (name, grams) => [name, grams],
    },
  );
  const cells = { names, amounts, amountLabel: heads[1]!, unit: "g" } as const;
  const recipe = markRecipe(kit, made, cells);
  allergensBeside(sheet, recipe, 2);
  const next = say(sheet, recipe, { row: end + 1, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "am besten" });
  const words = cautionsIn(made, VOICE);
  if (words !== "") recipe.flags.push(put(sheet, next + 1, 0, words));
  return next + 4;
}

interface Season {
  readonly name: string;
  readonly guests: readonly (readonly string[])[];
  readonly remark: string;
}

const SEASONS: readonly Season[] = [
  {
    name: "Frühling",
    guests: [
      ["Ostern", "8 Personen"],
      ["Konfirmation Mia", "14 Personen"],
    ],
    remark: "Zur Konfirmation am Vortag machen, sonst wird es zu knapp.",
  },
  {
    name: "Sommer",
    guests: [
      ["Gartenfest", "20 Personen"],
      ["Enkelwoche", "5 Personen"],
    ],
    remark: "Waffeln beim Bäcker vorbestellen.",
  },
  {
    name: "Herbst",
    guests: [["Erntedank", "10 Personen"]],
    remark: "Zwei Behälter für Frau Seidel nebenan.",
  },
];

/** Zwei Rezepte einer Jahreszeit und für wen sie waren. */
function season(kit: Kit, { name, guests, remark }: Season, mades: readonly MadeRecipe[]): void {
  const sheet = addSheet(kit.marked.book, name);
  let top = 0;
  for (const made of mades) top = recipeAt(kit, sheet, called(made, OWN), top);
  smallTable(sheet, { row: 0, column: 5 }, ["Anlass", "für"], guests);
  note(kit, sheet, 4, 5, remark);
}

/** Die Truhe im Keller, übers Jahr. */
function cellar(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Truhe");
  const { heads, rows } = smallTable(
    sheet,
    { row: 0, column: 0 },
    ["Monat", "Truhe im Keller (°C)", "abgetaut"],
    ["März", "Mai", "Juli", "September", "November"].map((month, at) => [
      ...[month, degrees(kit, -20, -16), at === 2 ? "ja" : undefined],
    ]),
  );
  readings(
    kit,
    heads[1]!,
    rows.map((cells) => cells[1]!),
  );
}

function build(kit: Kit): void {
  const mades = kit.make(2 * SEASONS.length);
  SEASONS.forEach((each, at) => season(kit, each, mades.slice(2 * at, 2 * at + 2)));
  cellar(kit);
}

/** Jemand, der seine Rezepte nach Jahreszeiten ordnet. */
export const jahreszeiten: readonly Layout[] = [
  { name: "Eis nach Jahreszeiten, zwei Rezepte je Blatt", language: "de", build },
];
