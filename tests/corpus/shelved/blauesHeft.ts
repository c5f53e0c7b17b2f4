import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { putList } from "./lists";
import { tableAt, worked } from "./words";

const VOICE: Voice = {
  lead: "Von mir ergänzt, Allergene:",
  honey: "Honig, heute weiß man: nicht unter 12 Monaten.",
  alcohol: "Alkohol, nicht für Kinder, in der Schwangerschaft oder vor dem Fahren.",
  nuts: "Ganze Nüsse, Erstickungsgefahr für Kinder unter 5 Jahren.",
  egg: "Rohes Eigelb, auf 71 °C erhitzen oder pasteurisiert.",
};

const REMARKS = [
  "Am Rand, mit Bleistift: »doppelt so viel machen, reicht sonst nicht«.",
  "Seite hat einen Fleck, die Zahlen sind trotzdem gut zu lesen.",
  "Darunter eingeklebt: ein Zeitungsausschnitt über Eisschränke.",
  "Mit Tinte: »zu Pfingsten«.",
];

const RECKONED: readonly (readonly [label: string, plan: ResultPlan])[] = [
  ["Gefrierpunkt (°C)", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Wasser darin (g)", { states: "water", as: "formula", format: "0" }],
  ["gelöste Stoffe (g)", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "gefrorener Teil des Wassers bei −18 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

interface Page {
  readonly recipe: MarkedRecipe;
  readonly number: number;
}

/** A page of the old book: no headings but over the doubled amounts; the unit between. */
function copied(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, at: number) {
  const number = 8 + 5 * at;
  putRow(sheet, row, 0, [`Seite ${number}`, undefined, made.title]);
  const heading = put(sheet, row, 4, "doppelt (g)");
  const list = putList(sheet, made, {
    ...{ row: row + 1, column: 0, name: 2, amount: 0 },
    cells: (item, grams) => [grams, "g", item],
  });
  const { names, amounts, end } = list;
  const doubled = amounts.map((spot) => put(sheet, spot.row, 4, `=2*${a1(spot)}`));
  worked(kit, heading, doubled);
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  putRow(sheet, end, 1, ["g", "alles zusammen"]);
  sumOf(kit, sheet, { row: end, column: 4 }, doubled);
  const cells = { names, amounts, alsoAmounts: doubled, unitCells: list.column(1), total } as const;
  const recipe = markRecipe(kit, made, { ...cells, unit: "g" });
  const next = tellIn(sheet, recipe, { row: end + 1, column: 2 }, VOICE);
  note(kit, sheet, next, 2, REMARKS[at]!);
  return { page: { recipe, number }, next: next + 2 };
}

/** What the heir has reckoned for each page: labels down, pages across. */
function reckoned(sheet: CorpusSheet, pages: readonly Page[]): void {
  put(sheet, 0, 0, "Nachgerechnet");
  const labels: Spot[] = RECKONED.map(([label], at) => put(sheet, 3 + at, 0, label));
  put(sheet, 3 + labels.length, 0, "gut als");
  pages.forEach(({ recipe, number }, at) => {
    const column = 1 + at;
    put(sheet, 1, column, `Seite ${number}`);
    put(sheet, 2, column, recipe.made.title);
    const range = (spots: readonly Spot[]) => `Heft!${a1(spots[0]!)}:${a1(spots.at(-1)!)}`;
    RECKONED.forEach(([, plan], line) => {
      const lines = () => `${range(recipe.names)},${range(recipe.amounts)}`;
      resultAt(sheet, recipe, labels[line]!, { row: 3 + line, column }, plan, lines);
    });
    const { target } = recipe.made;
    if (target !== null) recipe.targets.push(put(sheet, 3 + labels.length, column, target));
  });
}

/** A book of recipes copied into a sheet, and what an heir makes of it. */
function blauesHeft(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Heft");
  put(sheet, 0, 0, "Das blaue Heft, abgeschrieben");
  let row = 2;
  const pages = kit.make(4).map((made, at) => {
    const names = { Honig: "Blütenhonig", Eigelb: "Dotter", Zucker: "Kristallzucker" };
    const { page, next } = copied(kit, sheet, called(made, names), row, at);
    row = next;
    return page;
  });
  const own = addSheet(kit.marked.book, "Nachgerechnet");
  reckoned(own, pages);
  tableAt(own, { row: 10, column: 0 }, [
    ["Altes Maß", "heute"],
    ["1 Lot", shown(16.7, '0.0 "g"')],
    ["1 Pfund", shown(500, '0 "g"')],
  ]);
  note(kit, own, 14, 0, "Seiten 30 bis 34 fehlen.");
}

/** A recipe book that somebody inherited. */
export const blaueHefte: readonly Layout[] = [
  {
    name: "Geerbtes blaues Heft, abgeschrieben und nachgerechnet",
    language: "de",
    build: blauesHeft,
  },
];
