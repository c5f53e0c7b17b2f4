import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { down } from "../lodgers/words";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { itemsOf, upTo } from "../strollers/words";
import {
  degrees,
  formulaColumn,
  inColumn,
  inGerman,
  readings,
  sayDown,
  smallTable,
  sumsAcross,
  type InGrid,
} from "../sidings/words";

const VOICE = inGerman("Karte:");

const OWN = {
  ...{ Zucker: "Rübenzucker", Salz: "Tafelsalz", Vollmilch: "H-Milch 3,5 %" },
  Zitronensaft: "Zitronensaft, frisch",
};

const FACTS: readonly Fact[] = [
  ["Gefrierpunkt, °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Gefrierpunktserniedrigung, K", { states: "depression", as: "typed" }],
  [
    "Wasser gefroren in der Vitrine, −13 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 },
  ],
];

/** Eine Sorte in ihrer Spalte. */
function flavour(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  at: number,
  { items, end }: { readonly items: readonly Spot[]; readonly end: number },
): InGrid {
  const column = 1 + at;
  put(sheet, 3, column, made.title);
  const amountLabel = { sheet: sheet.name, row: 3, column: 0 };
  const plan = { items, column, sumRow: end, unit: "kg", format: "0.000", amountLabel } as const;
  const grid = inColumn(kit, sheet, made, plan);
  sayDown(sheet, grid, FACTS, { row: end + 2, column, labels: 0 });
  nameTarget(sheet, grid.recipe, { row: end + 5, column });
  tellIn(sheet, grid.recipe, { row: end + 6, column }, VOICE);
  return grid;
}

/** Wie viele Kilogramm einer Zutat alle Sorten brauchen. */
const usedIn = (recipes: readonly MarkedRecipe[], row: number): number =>
  recipes.reduce((sum, { names, made }) => {
    const at = names.findIndex((name) => name.row === row);
    return at < 0 ? sum : sum + made.grams[at]! / 1000;
  }, 0);

/** Was verbraucht wird, was da ist, was bleibt. */
function store(kit: Kit, sheet: CorpusSheet, column: number, grids: readonly InGrid[]): void {
  const heads = putRow(sheet, 3, column, ["Verbrauch (kg)", "im Lager (kg)", "bleibt (kg)"]);
  const rows = grids[0]!.all.map((_, at) => grids.map(({ all }) => all[at]!));
  const used = sumsAcross(kit, sheet, heads[0]!, rows, "0.000");
  const recipes = grids.map(({ recipe }) => recipe);
  const pairs = used.map((spot) => {
    const kilos = Math.ceil(2 * usedIn(recipes, spot.row) + kit.random.whole(0, 5)) / 2;
    return [spot, put(sheet, spot.row, column + 1, shown(kilos, "0.0"))];
  });
  formulaColumn(kit, sheet, heads[2]!, pairs, (cell) => `${cell(1)}-${cell(0)}`, "0.000");
}

/** Wer hinter der Theke steht und was die Vitrine zeigt. */
function duty(kit: Kit, sheet: CorpusSheet, row: number): void {
  const { heads, rows } = smallTable(
    sheet,
    { row, column: 0 },
    ["Tag", "früh", "spät", "Vitrine 11 Uhr (°C)"],
    [
      ["Freitag", "Selma", "Jonte", degrees(kit, -14, -12)],
      ["Samstag", "Selma", "Selma, Aaron", degrees(kit, -14, -12)],
      ["Sonntag", "Aaron", "Jonte", degrees(kit, -14, -12)],
    ],
  );
  readings(
    kit,
    heads[3]!,
    rows.map((cells) => cells[3]!),
  );
}

/** Was ein Eiscafé am Wochenende macht und was danach im Lager bleibt. */
function build(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Wochenende");
  put(sheet, 0, 0, "Produktion Wochenende und Lager");
  const counted = "Lager wird donnerstags gezählt; bei Wasser zählen die Kanister vom Filter";
  note(kit, sheet, 1, 0, counted);
  const mades = kit.make(5).map((made) => called(upTo(made, 3000), OWN));
  put(sheet, 3, 0, "Zutat, kg");
  const items = down(sheet, [4, 0], itemsOf(mades));
  const end = items.at(-1)!.row + 1;
  put(sheet, end, 0, "Menge je Sorte");
  down(sheet, [end + 5, 0], ["in der Vitrine", "Allergene, Hinweise"]);
  const grids = mades.map((made, at) => flavour(kit, sheet, made, at, { items, end }));
  store(kit, sheet, 2 + mades.length, grids);
  duty(kit, sheet, end + 9);
}

/** Ein Eiscafé mit kleinem Lager. */
export const lagerlisten: readonly Layout[] = [
  { name: "Eiscafé, fünf Sorten nebeneinander und was im Lager bleibt", language: "de", build },
];
