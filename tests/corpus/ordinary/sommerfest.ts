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
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { DAHEIM } from "./voices";
import { readings, table } from "./words";

/** A recipe on its own sheet, once and as often as it is cooked. */
function pot(kit: Kit, made: MadeRecipe): MarkedRecipe {
  const sheet = addSheet(kit.marked.book, made.title);
  putRow(sheet, 0, 0, ["Rezept von", kit.random.pick(["Anne", "Metin", "Gerd", "Lore"])]);
  const [, factor] = putRow(sheet, 1, 0, ["wie oft kochen", kit.random.whole(3, 8)]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: [undefined, "Zutat", "einmal [g]", "fürs Fest [g]"],
      cells: (item, grams) => ["○", item, grams],
      ...{ name: 1, amount: 2 },
    },
  );
  const alsoAmounts = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0", fixed: [factor!] },
    content: (spot) => `=${fixed(factor!)}*${a1(spot)}`,
  });
  put(sheet, end, 1, "macht");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  sumOf(kit, sheet, { row: end, column: 3 }, alsoAmounts, "0");
  const cells = { names, amounts, alsoAmounts, total, amountLabel: heads[2]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "g" });
  nameTarget(sheet, recipe, { row: end + 2, column: 1, label: "am Stand" });
  tellIn(sheet, recipe, { row: end + 3, column: 1 }, DAHEIM);
  return recipe;
}

/** What each of the ices does, a line each, on the first sheet. */
function overview(sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  const heads = putRow(sheet, 2, 0, [
    ...["Eis", "Gefrierpunkt [°C]", "gefroren bei −18 °C [% vom Wasser]"],
    "gelöst in einem Topf [g]",
  ]);
  recipes.forEach((recipe, index) => {
    const row = 3 + index;
    const { title } = recipe.made;
    put(sheet, row, 0, title);
    const lines = `'${title}'!${span(recipe.names)},'${title}'!${span(recipe.amounts)}`;
    const under = (at: number): [Spot, { row: number; column: number }] => [
      heads[at]!,
      { row, column: at },
    ];
    const point = { states: "freezing point", as: "formula", format: "0.0" } as const;
    resultAt(sheet, recipe, ...under(1), point, () => lines);
    const ice = { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 } as const;
    resultAt(sheet, recipe, ...under(2), ice);
    resultAt(sheet, recipe, ...under(3), { states: "dissolved", as: "typed", decimals: 0 });
  });
}

/** Till and helpers. */
function stand(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  putRow(sheet, 8, 0, ["Kasse", "€"]);
  const rows = ["Wechselgeld", "Kugeln", "Stieleis", "Spenden"].map((word, index) =>
    putRow(sheet, 9 + index, 0, [word, shown(random.whole(40, 260), "0.00")]),
  );
  put(sheet, 13, 0, "abends in der Kasse");
  sumOf(
    kit,
    sheet,
    { row: 13, column: 1 },
    rows.map(([, euros]) => euros!),
    "0.00",
  );
  table(sheet, { row: 8, column: 3 }, [
    ["Schicht", "am Stand", "in der Küche"],
    ["12 bis 14", "Anne, Tom", "Gerd"],
    ["14 bis 16", "Metin, Lore", "Gerd"],
    ["16 bis 18", "Jan, Ute", "Anne"],
  ]);
  readings(
    kit,
    sheet,
    { row: 15, column: 0 },
    {
      heads: ["Truhe", "mittags [°C]", "abends [°C]"],
      labels: ["Vereinsheim", "geliehen", "Anhänger"],
      ranges: [
        [-21, -18],
        [-18, -14],
      ],
    },
  );
  note(kit, sheet, 20, 0, "Truhen schon am Donnerstag einschalten!");
}

/** A club's summer party. */
function sommerfest(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Übersicht");
  put(sheet, 0, 0, "Eisstand beim Sommerfest");
  const words = { Zucker: "Weißzucker", Zitronensaft: "Zitronensaft frisch" };
  overview(
    sheet,
    kit.make(3).map((made) => pot(kit, called(made, words))),
  );
  stand(kit, sheet);
}

/** A club. */
export const sommerfeste: readonly Layout[] = [
  { name: "Verein, Eisstand beim Sommerfest mit Kasse", language: "de", build: sommerfest },
];
