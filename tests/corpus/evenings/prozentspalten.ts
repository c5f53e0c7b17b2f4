import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { downColumn, factsDown, tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { sumOf } from "../layouts/parts";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { VOICES } from "./voices";
import { below, readings } from "./words";

const FACTS: readonly Fact[] = [
  ["Gefrierpunkt °C", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Gefrierpunktserniedrigung K", { states: "depression", as: "formula" }],
  ["Wasser g/100 g", { states: "water", as: "typed", decimals: 1 }],
  ["Zucker g je 100 g Wasser", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  [
    "Eis vom Mix bei −12 °C in %",
    { states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  ],
];

interface Table {
  readonly sheet: CorpusSheet;
  readonly items: readonly Spot[];
  readonly batch: Spot;
  readonly top: number;
}

/** Eine Sorte: Prozent und daneben die Gramm des Ansatzes. */
function column(kit: Kit, made: MadeRecipe, index: number, table: Table): void {
  const { sheet, items, batch, top } = table;
  const left = 1 + 2 * index;
  put(sheet, top, left, made.title);
  const [amountLabel, gramsHead] = putRow(sheet, top + 1, left, ["%", "g"]) as [Spot, Spot];
  const plan = {
    items,
    left: 1,
    step: 2,
    again: 1,
    unit: "%",
    format: "0.0",
    amountLabel,
  } as const;
  const recipe = downColumn(kit, sheet, made, index, plan);
  const grams = recipe.amounts.map((spot) => {
    const formula = shown(`=${a1(spot)}/100*${fixed(batch)}`, "0");
    return put(sheet, spot.row, left + 1, formula);
  });
  kit.marked.formulaColumns.push({ spots: grams, heading: gramsHead, fixed: [batch] });
  const end = items.at(-1)!.row + 1;
  const all = items.map((spot) => ({ ...spot, column: left + 1 }));
  sumOf(kit, sheet, { row: end, column: left + 1 }, all, "0");
  factsDown(sheet, recipe, FACTS, { row: end + 2, column: left, labels: 0, items });
  nameTarget(sheet, recipe, { row: end + 7, column: left });
  tellIn(sheet, recipe, { row: end + 8, column: left }, VOICES.werkstatt);
}

/** Alle Sorten einer Art auf einem Blatt. */
function family(kit: Kit, name: string, mades: readonly MadeRecipe[]): void {
  const sheet = addSheet(kit.marked.book, name);
  put(sheet, 0, 0, `${name}, Stand nach dem letzten Probieren`);
  const grams = kit.random.pick([1000, 2500, 3000]);
  const words = { label: "Ansatz in g", bare: "Ansatz", value: grams };
  const batch = input(kit, sheet, { row: 1, column: 0 }, words);
  put(sheet, 4, 0, "Zutat");
  const items = below(sheet, { row: 5, column: 0 }, itemsOf(mades));
  const end = 5 + items.length;
  put(sheet, end, 0, "Gesamt");
  put(sheet, end + 7, 0, "Ziel");
  put(sheet, end + 8, 0, "Hinweis");
  const table = { sheet, items, batch, top: 3 };
  mades.forEach((made, index) => column(kit, made, index, table));
  note(kit, sheet, end + 10, 0, "Alte Fassungen liegen im grünen Ordner.");
}

/** Was im Lager liegt, und der Froster. */
function store(kit: Kit, mades: readonly MadeRecipe[]): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Lager");
  const heads = putRow(sheet, 0, 0, ["Ware", "Vorrat kg", "Mindestbestand kg", "fehlt kg"]);
  const goods = itemsOf(mades).filter((item) => item !== "Wasser");
  const rows = goods.map((item, index) => {
    const line = [item, shown(random.whole(2, 60) / 10, "0.0"), shown(2, "0.0")];
    const [, has, needs] = putRow(sheet, 1 + index, 0, line);
    return put(sheet, 1 + index, 3, shown(`=MAX(0,${a1(needs!)}-${a1(has!)})`, "0.0"));
  });
  marked.formulaColumns.push({ spots: rows, heading: heads[3]!, fixed: [] });
  putRow(sheet, rows.length + 1, 2, ["einkaufen", shown(`=SUM(${span(rows)})`, "0.0")]);
  marked.sums.push({ spot: { ...rows[0]!, row: rows.length + 1 }, parts: rows });
  const log = putRow(sheet, 0, 6, ["Froster", "°C früh", "°C abends"]);
  below(sheet, { row: 1, column: 6 }, ["Mo", "Di", "Mi", "Do", "Fr"]);
  readings(kit, sheet, log[1]!, { count: 5, from: -22, to: -19 });
  readings(kit, sheet, log[2]!, { count: 5, from: -19, to: -15 });
}

/** Rezepte in Spaltenpaaren, zwei Blätter, dazu das Lager. */
function pairs(kit: Kit): void {
  const words = { Zucker: "Saccharose", "Sahne 35 %": "Schlagsahne 35 %" };
  const rank = ({ seeded }: MadeRecipe): number => (seeded === undefined ? 1 : 0);
  const mades = kit
    .make(6)
    .map((made) => called(hundred(made), words))
    .sort((one, other) => rank(one) - rank(other));
  const isMilky = ({ lines }: MadeRecipe): boolean =>
    lines.some(({ allergen }) => allergen?.en === "milk");
  const milky = mades.filter(isMilky).slice(0, 3);
  const others = mades.filter((made) => !isMilky(made)).slice(0, 3);
  if (milky.length > 0) family(kit, "Milcheis", milky);
  if (others.length > 0) family(kit, "Sorbet und andere", others);
  store(kit, [...milky, ...others]);
}

/** Prozentrezepte einer Eiswerkstatt. */
export const prozentspalten: readonly Layout[] = [
  { name: "Eiswerkstatt, Prozent und Gramm in Spaltenpaaren", language: "de", build: pairs },
];
