import { addSheet, put, putRow, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { degrees, readings, table } from "./words";

const VOICE: Voice = {
  lead: "Es ist darin:",
  honey: "Honig vom eigenen Stand, Kindern unter 12 Monaten nicht geben.",
  alcohol: "Mit Alkohol, daher nicht für Kinder, Schwangere und alle, die noch fahren.",
  nuts: "Ganze Nüsse, Kinder unter 5 Jahren können daran ersticken.",
  egg: "Rohes Eigelb, die Masse auf 71 °C erhitzen oder pasteurisiertes nehmen.",
};

const RECHNUNG: readonly Said[] = [
  { label: "gefriert ab °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Erniedrigung K", states: "depression", as: "typed", decimals: 2 },
  { label: "Wasser im Ganzen, g", states: "water", as: "formula", format: "0" },
  { label: "davon gelöst: Stoffe, g", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Wasser gefroren bei −16 °C, %",
    ...{ states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  },
];

/** A card: the amount before the thing, as it was on the paper ones. */
function karte(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  [top, number]: readonly [number, number],
): number {
  putRow(sheet, top, 0, ["Karte", number, made.title]);
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    {
      heads: ["Man nehme", undefined, "was", "woher"],
      cells: (name, grams) => [
        grams,
        "g",
        name,
        kit.random.pick(["Vorrat", "Keller unten", undefined]),
      ],
      ...{ name: 2, amount: 0 },
    },
  );
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  putRow(sheet, end, 1, ["g", "zusammen"]);
  const cells = { names, amounts, unitCells: columnOf(rows, 1), unit: "g", total } as const;
  const recipe: MarkedRecipe = markRecipe(kit, made, { ...cells, amountLabel: heads[0]! });
  put(sheet, end + 1, 0, "Ausgerechnet:");
  strip(sheet, recipe, { row: end + 2, column: 0 }, RECHNUNG);
  nameTarget(sheet, recipe, { row: end + 4, column: 0, label: "kommt auf den Tisch als" });
  return tellIn(sheet, recipe, { row: end + 5, column: 0 }, VOICE) + 2;
}

/** Feasts at which there is ice, and what is in the cellar. */
function kalender(kit: Kit, sheet: CorpusSheet): void {
  const place = { row: 1, column: 7 };
  table(
    sheet,
    place,
    ["Fest", "Brüder", "Gäste"],
    [
      ["Peter und Paul", 23, 12],
      ["Benedikt", 23, 40],
      ["Mariä Himmelfahrt", 22, 65],
      ["Kirchweih", 23, 110],
    ],
  );
  const rows = ["Gewölbe", "Truhe links", "Truhe rechts"].map((where, index) => [
    ...[where, index === 0 ? degrees(kit, 7, 11) : degrees(kit, -20, -16)],
    ...[index === 0 ? degrees(kit, 8, 12) : degrees(kit, -19, -15)],
  ]);
  const heads = ["Ort", "nach der Laudes °C", "nach der Komplet °C"];
  readings(kit, sheet, { row: 8, column: 7 }, { heads, rows, temperatures: [1, 2] });
}

/** Three cards one below the other, the year's feasts beside them. */
function kloster(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Süßes");
  put(sheet, 0, 0, "Klosterküche, die kalten Süßspeisen");
  kalender(kit, sheet);
  const words = { Zucker: "Haushaltszucker", Honig: "Bienenhonig", Salz: "Kochsalz" };
  const mades = kit.make(3).map((made) => called(made, words));
  let next = 2;
  mades.forEach((made, index) => {
    next = karte(kit, sheet, made, [next, 31 + index]);
  });
  note(kit, sheet, next, 0, "Abgeschrieben von den Karten im Holzkasten.");
}

/** Sheets of a monastery's kitchen. */
export const klosterkuechen: readonly Layout[] = [
  { name: "Klosterküche, drei Karten und die Feste", language: "de", build: kloster },
];
