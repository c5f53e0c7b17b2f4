import { a1, addSheet, calledFrom, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { asAnswerOnly } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import { byHand, perKilo, readings } from "../pilgrims/words";
import { labelWords, type MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { cautionsIn, type Voice } from "./words";

const VOICE: Voice = {
  lead: "",
  honey: "Mit Honig, deshalb nicht für Säuglinge unter 12 Monaten.",
  alcohol: "Mit Alkohol: nicht für Kinder, Schwangere und Autofahrer.",
  nuts: "Ganze Nüsse: Kinder unter 5 Jahren können daran ersticken.",
  egg: "Rohes Eigelb: nur auf 71 °C erhitzt oder pasteurisiert verwenden.",
};

const SAID: readonly Said[] = [
  { label: "Gefrierpunktserniedrigung in K", states: "depression", as: "formula" },
  { label: "Gefrierpunkt in °C", states: "freezing point", as: "formula" },
  {
    label: "bei −16 °C gefrorenes Wasser in % des Wassers",
    ...{ states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  },
  { label: "Wasser in g", states: "water", as: "typed", decimals: 0 },
];

interface Sort {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
  readonly point: Spot;
}

/** One kind on a sheet of its own: numbers left of the names, kilograms, prices, costs. */
function sort(kit: Kit, made: MadeRecipe): Sort {
  const sheet = addSheet(kit.marked.book, made.title);
  put(sheet, 0, 1, made.title);
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Art.-Nr.", "Rohware", "Einsatz", "Einheit", "Preis je kg (€)", "Betrag (€)"],
      cells: (name, grams, index) => [
        ...[4100 + 13 * index + kit.random.whole(0, 9), name, shown(inUnit(grams, "kg"), "0.000")],
        ...["kg", shown(perKilo(kit, made.lines[index]!.en), "0.00")],
      ],
      ...{ name: 1, amount: 2 },
    },
  );
  const costs = rows.map(([, , kilos, , price]) =>
    put(sheet, kilos!.row, 5, shown(`=${a1(kilos!)}*${a1(price!)}`, "0.00")),
  );
  kit.marked.formulaColumns.push({ spots: costs, heading: heads[5]!, fixed: [] });
  put(sheet, end, 1, "Charge");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.000");
  const cost = sumOf(kit, sheet, { row: end, column: 5 }, costs, "0.00");
  const unitCells = columnOf(rows, 3);
  const cells = { names, amounts, unitCells, unit: "kg", amountLabel: heads[2]!, total } as const;
  const recipe = markRecipe(kit, made, cells);
  const row = end + 2;
  const next = say(sheet, recipe, { row, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Ziel" });
  return { recipe, cost, point: { sheet: sheet.name, row: row + 1, column: 2 } };
}

const HEADS = [
  "Sorte",
  "Charge (kg)",
  "Wareneinsatz (€)",
  "€ je kg",
  "Gefrierpunkt (°C)",
  "Vitrine um 10 Uhr (°C)",
];

/** Reads from the sheets what is wanted in front. */
function front(kit: Kit, sheet: CorpusSheet, sorts: readonly Sort[]): void {
  put(sheet, 0, 0, "Hofmolkerei, Eis der Saison auf einen Blick");
  const heads = putRow(sheet, 2, 0, HEADS);
  const rows = sorts.map(({ recipe, cost, point }, index) => {
    const home = { sheet: sheet.name, row: 3 + index, column: 0 };
    const read = (spot: Spot, format: string) => shown(`=${calledFrom(home, spot)}`, format);
    const row = home.row;
    const [, kilos, paid] = putRow(sheet, row, 0, [
      ...[recipe.made.title, read(recipe.total!, "0.000"), read(cost, "0.00")],
    ]) as [Spot, Spot, Spot];
    const each = put(sheet, row, 3, shown(`=${a1(paid)}/${a1(kilos)}`, "0.00"));
    const freezes = put(sheet, row, 4, read(point, "0.0"));
    byHand(recipe, "freezing point", heads[4]!, freezes);
    asAnswerOnly(recipe);
    return [kilos, paid, each, put(sheet, row, 5, shown(-kit.random.whole(24, 31) / 2, "0.0"))];
  });
  kit.marked.formulaColumns.push({ spots: columnOf(rows, 2), heading: heads[3]!, fixed: [] });
  readings(kit, heads[5]!, rows, 3);
  const end = 3 + rows.length;
  put(sheet, end, 0, "Saison");
  sumOf(kit, sheet, { row: end, column: 1 }, columnOf(rows, 0), "0.000");
  sumOf(kit, sheet, { row: end, column: 2 }, columnOf(rows, 1), "0.00");
  note(kit, sheet, end + 2, 0, "Preise vom Großhandel, ohne Pfand.");
}

/** A grid of what is in which kind, and a word of caution beside it. */
function grid(sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  put(sheet, 0, 0, "Allergene in unseren Sorten, x = enthalten");
  const mades = recipes.map(({ made }) => made);
  const all = [...new Set(mades.flatMap((made) => labelWords(made, "allergen")))];
  putRow(sheet, 2, 0, ["Sorte", ...all, "Hinweis"]);
  recipes.forEach(({ made, flags }, index) => {
    const row = 3 + index;
    put(sheet, row, 0, made.title);
    if (!made.flagged) return;
    for (const word of labelWords(made, "allergen")) {
      flags.push(put(sheet, row, 1 + all.indexOf(word), "x"));
    }
    const words = cautionsIn(made, VOICE);
    if (words !== "") flags.push(put(sheet, row, 1 + all.length, words));
  });
}

/** An overview in front, the allergens, and a sheet for each kind. */
function molkerei(kit: Kit): void {
  const { book } = kit.marked;
  const [first, second] = [addSheet(book, "Übersicht"), addSheet(book, "Allergene")];
  const words = { Zucker: "Haushaltszucker" };
  const sorts = kit.make(5).map((made) => sort(kit, called(upTo(made, 3000), words)));
  front(kit, first, sorts);
  grid(
    second,
    sorts.map(({ recipe }) => recipe),
  );
}

/** A dairy on a farm. */
export const molkereien: readonly Layout[] = [
  { name: "Hofmolkerei, Übersicht vorn und Allergene im Raster", language: "de", build: molkerei },
];
