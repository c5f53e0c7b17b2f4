import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import { input } from "../page";
import { massOf, type MadeRecipe } from "../recipes";
import { ALCOHOL, line } from "../stock";
import { madeOf } from "../strollers/words";
import { heedAt, with1 } from "./worte";

const WINE = { ...ALCOHOL, allergen: { en: "sulphites", de: "Sulfite" } };

const isSorbet = ({ lines }: MadeRecipe): boolean =>
  lines.every(({ allergen, caution }) => allergen?.en !== "milk" && caution !== ALCOHOL.caution);

/** A sorbet with wine or marc spirit of the estate in it. */
function ofTheEstate({ random }: Kit, made: MadeRecipe, index: number): MadeRecipe {
  const mass = massOf(made);
  const wine = line("white wine 13 %", "Weißwein 13 %", Math.round(mass * 0.12), WINE);
  const marc = line("marc 40 %", "Tresterbrand 40 %", Math.round(mass * 0.03), ALCOHOL);
  const poured = [wine, marc][index % 2]!;
  return with1(made, { ...poured, grams: poured.grams + random.whole(0, 5) });
}

/** Per cent by volume, as the name has it; undefined where there is none. */
function volume(name: string): number | undefined {
  const found = /([\d,]+) ?% ?(vol)?$/.exec(name);
  const isDrink = /wein|brand|Spirituose|Wodka|Rum|Gin|Likör/i.test(name);
  return found === null || !isDrink ? undefined : Number(found[1]!.replace(",", "."));
}

/** Pure alcohol of each drink in the list, by its Vol.-%. */
function pure({ marked }: Kit, sheet: CorpusSheet, amounts: readonly Spot[], column: number) {
  const drinks = amounts.filter(({ row }) => sheet.cells[row]![column - 1] !== undefined);
  for (const grams of drinks) {
    const abv = { ...grams, column: column - 1 };
    const content = `=${a1(grams)}*RIME.ABVTOMASSFRACTION(${a1(abv)})`;
    const alcohol = put(sheet, grams.row, column, shown(content, "0.0"));
    marked.alcohols.push({ grams, abv, alcohol });
  }
}

const PURE: Said = { label: "Alkohol gesamt (g)", states: "alcohol", as: "typed", decimals: 1 };

const SUGARS: Said = {
  label: "Zucker je 100 g Wasser (g)",
  ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
};

const saidOf = (made: MadeRecipe, temperature: Spot, temperatureC: number): readonly Said[] => {
  const cold = { as: "formula", temperature, temperatureC, format: "0" } as const;
  const hasDrink = made.names.some((name) => volume(name) !== undefined);
  return [
    { label: "Gefriert ab (°C)", states: "freezing point", as: "formula", format: "0.0" },
    { label: "Wasser gefroren in der Truhe (%)", states: "ice of water", ...cold },
    { label: "Eis vom ganzen Sorbet in der Truhe (%)", states: "ice of mix", ...cold },
    ...(hasDrink ? [PURE] : []),
    { label: "Wasser gesamt (g)", states: "water", as: "formula", format: "0" },
    SUGARS,
  ];
};

const PLAN = {
  heads: ["Zutaten", "Gramm", "Vol.-%", "reiner Alkohol (g)"],
  cells: (name: string, grams: number) => [name, grams, volume(name)],
};

/** One sorbet beside its answers; gives the row for the next. */
function sorbet(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  top: number,
  freezer: Spot,
): number {
  put(sheet, top, 0, made.title);
  const list = listed(sheet, made, { row: top + 1, column: 0 }, PLAN);
  const { heads, names, amounts, end } = list;
  pure(kit, sheet, amounts, 3);
  put(sheet, end, 0, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const plan = { names, amounts, unit: "g", amountLabel: heads[1]!, total } as const;
  const recipe: MarkedRecipe = markRecipe(kit, made, plan);
  const cold = sheet.cells[freezer.row]![freezer.column]!.content as number;
  const said = say(sheet, recipe, { row: top + 1, column: 5 }, saidOf(made, freezer, cold));
  nameTarget(sheet, recipe, { row: said, column: 5, label: "Serviert als" });
  return heedAt(sheet, recipe, { row: Math.max(end, said) + 1, column: 0 }, "Karte: enthält") + 1;
}

const GLASSES_TELL =
  "Alle Gläser: alkoholhaltig, nur für Erwachsene, nicht in der Schwangerschaft; enthalten Sulfite.";

/** The drinks poured over them at the table. */
function poured(kit: Kit, sheet: CorpusSheet, top: number): void {
  const { random, marked } = kit;
  put(sheet, top, 0, "Zum Aufgießen am Tisch");
  const heads = putRow(sheet, top + 1, 0, ["Glas", "Gramm", "Vol.-%", "reiner Alkohol (g)"]);
  const drinks = [12, 11.5, 13, 18].map((abv, index) =>
    putRow(sheet, top + 2 + index, 0, [
      ...[["Winzersekt", "Secco", "Grauburgunder", "Likörwein"][index], random.whole(5, 10) * 10],
      abv,
    ]),
  );
  const grams = columnOf(drinks, 1);
  pure(kit, sheet, grams, 3);
  const spots = grams.map((spot) => ({ ...spot, column: 3 }));
  marked.formulaColumns.push({ spots, heading: heads[3]!, fixed: [] });
  marked.recipes[0]!.flags.push(put(sheet, top + 6, 0, GLASSES_TELL));
}

/** Sorbets of a winery, worked out with the functions of the add-in. */
function winery(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Sorbets");
  put(sheet, 0, 0, "Straußwirtschaft, Sorbets im Sommer");
  const words = { label: "Gefriertruhe (°C)", bare: "Gefriertruhe" };
  const value = -kit.random.whole(16, 20);
  const freezer = input(kit, sheet, { row: 1, column: 0 }, { ...words, value });
  let top = 3;
  madeOf(kit, 3, isSorbet).forEach((each, index) => {
    const made = called(ofTheEstate(kit, each, index), { Zucker: "weißer Zucker" });
    top = sorbet(kit, sheet, made, top, freezer);
  });
  poured(kit, sheet, top);
  note(kit, sheet, top + 8, 0, "Wein erst in die kalte Masse rühren.");
}

/** A winery with a summer tavern. */
export const wineries: readonly Layout[] = [
  { name: "Straußwirtschaft, Sorbets mit Vol.-% und Truhe", language: "de", build: winery },
];
