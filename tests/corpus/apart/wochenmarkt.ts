import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { onSheet } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { itemsOf, ofAlcohol, upTo } from "../strollers/words";
import { hundredth, readings } from "./words";

const VOICE: Voice = {
  lead: "Schild am Wagen: enthält",
  honey: "Mit Honig, nicht für Säuglinge unter 12 Monaten.",
  alcohol: "Mit Alkohol, nicht für Kinder und Schwangere, nicht vor dem Fahren.",
  nuts: "Mit ganzen Nüssen, Erstickungsgefahr bei Kindern unter 5 Jahren.",
  egg: "Mit rohem Eigelb, Masse auf 71 °C erhitzen oder pasteurisiert kaufen.",
};

interface Leaf {
  readonly recipe: MarkedRecipe;
  readonly sheet: string;
  readonly total: Spot;
}

/** A flavour's own sheet, named like it. */
function leaf(kit: Kit, made: MadeRecipe): Leaf {
  const sheet = addSheet(kit.marked.book, made.title);
  put(sheet, 0, 0, `Sorte ${made.title}, ein Kübel`);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Zutat", "Menge in g", "Woher"],
      cells: (name, grams) => [
        name,
        grams,
        name === "Leitungswasser" ? "Hahn" : kit.random.pick(["Großmarkt", "Hof", "Lager"]),
      ],
    },
  );
  put(sheet, end, 0, "Kübel voll");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const lines = { names, amounts, amountLabel: heads[1]!, total, unit: "g" } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, [
    { label: "Erniedrigung des Gefrierpunkts in K", states: "depression", as: "formula" },
    { label: "Wasser im Kübel in g", states: "water", as: "formula", format: "0" },
    ...ofAlcohol(made, "Reiner Alkohol im Kübel in g"),
    {
      label: "Zucker je 100 g Wasser in g",
      states: "sugar per 100 g water",
      as: "typed",
      decimals: 1,
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "So soll es sein" });
  tellIn(sheet, recipe, { row: next + 1, column: 0 }, VOICE);
  return { recipe, sheet: sheet.name, total };
}

const FRONT = [
  "Sorte",
  "Kübel in g",
  "Gefrierpunkt in °C",
  "Gefrorenes Wasser im Wagen bei −13 °C in %",
  "Kugel in €",
];

/** All flavours on the first sheet. */
function front(kit: Kit, sheet: CorpusSheet, leaves: readonly Leaf[]): void {
  const heads = putRow(sheet, 2, 0, FRONT);
  const tubs = leaves.map(({ recipe, sheet: name, total }, index) => {
    const row = 3 + index;
    put(sheet, row, 0, name);
    const lines = onSheet(name, span);
    const point = { states: "freezing point", as: "formula", format: "0.0" } as const;
    resultAt(sheet, recipe, heads[2]!, { row, column: 2 }, point, lines);
    const ice = { states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 } as const;
    resultAt(sheet, recipe, heads[3]!, { row, column: 3 }, ice);
    put(sheet, row, 4, shown(kit.random.pick([1.6, 1.7, 1.8]), "0.00"));
    return put(sheet, row, 1, `='${name}'!${a1(total)}`);
  });
  const end = 3 + leaves.length;
  put(sheet, end, 0, "Wagen");
  sumOf(kit, sheet, { row: end, column: 1 }, tubs);
  hundredth(
    kit,
    sheet,
    { row: 2, column: 6 },
    {
      heads: ["Umsatz nach Markt", "Anteil in %"],
      ...{ items: ["Dienstag", "Donnerstag", "Samstag"], total: "Woche" },
    },
  );
  readings(
    kit,
    sheet,
    { row: end + 2, column: 0 },
    {
      heads: ["Abfahrt", "Wagen in °C", "Strom am Platz"],
      when: ["Di 6.30", "Do 6.30", "Sa 5.45"],
      tenths: [-149, -121],
      rest: () => [kit.random.pick(["ja", "Aggregat"])],
    },
  );
  note(kit, sheet, end + 7, 0, "Marktgebühr hängt am Brett, Standplan kommt vom Amt.");
}

/** What has to be bought for a tub of each, added up over the sheets. */
function shopping(kit: Kit, sheet: CorpusSheet, leaves: readonly Leaf[]): void {
  put(sheet, 0, 0, "Einkauf für je einen Kübel");
  const items = itemsOf(leaves.map(({ recipe }) => recipe.made)).filter(
    (item) => item !== "Leitungswasser",
  );
  const heads = putRow(sheet, 2, 0, ["Was", "Gramm zusammen", "im Lager in g", "kaufen in g"]);
  const rows = items.map((item, index) => {
    const row = 3 + index;
    const parts = leaves.flatMap(({ recipe, sheet: name }) => {
      const at = recipe.made.names.indexOf(item);
      return at < 0 ? [] : [`'${name}'!${a1(recipe.amounts[at]!)}`];
    });
    const [, need, there] = putRow(sheet, row, 0, [
      ...[item, `=${parts.join("+")}`, 50 * kit.random.whole(0, 2)],
    ]) as [Spot, Spot, Spot];
    return [need, put(sheet, row, 3, `=MAX(0,${a1(need)}-${a1(there)})`)];
  });
  const missing = columnOf(rows, 1);
  kit.marked.formulaColumns.push({ spots: missing, heading: heads[3]!, fixed: [] });
  const end = 3 + items.length;
  put(sheet, end, 0, "alles ohne Wasser");
  sumOf(kit, sheet, { row: end, column: 1 }, columnOf(rows, 0));
  sumOf(kit, sheet, { row: end, column: 3 }, missing);
}

function wochenmarkt(kit: Kit): void {
  const first = addSheet(kit.marked.book, "Wagen");
  const day = shown(kit.random.whole(46170, 46240), "dd.mm.yyyy");
  putRow(first, 0, 0, ["Eiswagen auf dem Wochenmarkt", undefined, undefined, "Stand", day]);
  const leaves = kit.make(4).map((made) => {
    const own = { Zucker: "Kristallzucker", Wasser: "Leitungswasser", Eigelb: "Eidotter" };
    return leaf(kit, called(upTo(made, 5000), own));
  });
  front(kit, first, leaves);
  shopping(kit, addSheet(kit.marked.book, "Einkauf"), leaves);
}

/** A van on weekly markets. */
export const wochenmaerkte: readonly Layout[] = [
  {
    name: "Eiswagen auf dem Wochenmarkt, Sortenblätter und Einkauf",
    language: "de",
    build: wochenmarkt,
  },
];
