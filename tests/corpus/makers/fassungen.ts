import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn, type Fact } from "../caterers/words";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { sumOf } from "../layouts/parts";
import { changed, plainOf } from "../lodgers/swaps";
import { given } from "../lodgers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { itemsOf } from "../strollers/words";
import { banner, beyond, log, UNSERE } from "./words";

const FIRST = 7;

const facts = (temperature: Spot): readonly Fact[] => [
  ["Gefrierpunkt", { states: "freezing point", as: "formula", format: '0.00" °C"' }],
  [
    "gelöste Stoffe auf 100 g",
    { states: "dissolved", as: "typed", decimals: 1, format: '0.0" g"' },
  ],
  [
    "Zucker auf 100 g Wasser",
    { states: "sugar per 100 g water", as: "formula", format: '0.0" g"' },
  ],
  [
    "Wasser gefroren, Truhe",
    { states: "ice of water", as: "formula", temperature, temperatureC: -20, percent: "format" },
  ],
];

/** The first version and three that came after it. */
function versions(kit: Kit): readonly (readonly [string, MadeRecipe])[] {
  const made = plainOf(kit);
  const plain = sound(kit, made);
  const list: readonly (readonly [string, MadeRecipe])[] = [
    ["F1", made],
    ["F2 weniger süß", changed(plain, 0.85)],
    ["F3 Fruktose statt eines Viertels", changed(plain, 0.75, "fructose")],
    ["F4 halb Dextrose", changed(plain, 0.5, "dextrose monohydrate")],
  ];
  const own = { Wasser: "kaltes Wasser", Magermilchpulver: "MMP", Fruktose: "Fruchtzucker" };
  return list.map(([name, each]) => [name, called(hundred(each), own)]);
}

/** What the chosen version takes in the big pot, under the versions. */
function pot(kit: Kit, sheet: CorpusSheet, shares: readonly Spot[], batch: Spot): void {
  const row = FIRST + 6;
  put(sheet, row - 1, 0, "Großer Topf nach F1");
  put(sheet, row, 0, "abwiegen (g)");
  const spots = shares.map((share) =>
    put(sheet, row, share.column, shown(`=${a1(share)}*${fixed(batch)}/100`, "0;-0;")),
  );
  sumOf(kit, sheet, { row, column: shares.at(-1)!.column + 1 }, spots, "0");
}

/** Versions in rows, what is in them over the columns, units in the cells. */
function fassungen(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Fassungen");
  const list = versions(kit);
  put(sheet, 0, 0, `Entwicklung ${list[0]![1].title}`);
  const cold = given(kit, sheet, [2, 0], ["Versuchstruhe", "°C", -20]);
  const batch = given(
    kit,
    sheet,
    [3, 0],
    ["Großer Topf", "g", kit.random.pick([3000, 4500, 6000])],
  );
  const names = itemsOf(list.map(([, made]) => made));
  const amountLabel = banner(sheet, 5, [1, names.length], "Prozent der Masse");
  put(sheet, 6, 0, "Fassung");
  const items = putRow(sheet, 6, 1, names);
  const asked = facts(cold);
  const words = ["Summe", ...asked.map(([label]) => label), "soll werden", "Etikett"];
  const heads = putRow(sheet, 6, 1 + names.length, words);
  list.forEach(([name, made], index) => {
    const row = FIRST + index;
    put(sheet, row, 0, name);
    const plan = { items, unit: "%", format: '0.0" %"', amountLabel } as const;
    const recipe = alongRow(kit, sheet, made, row, plan);
    asked.forEach(([, each], at) => {
      const heading = heads[1 + at]!;
      resultAt(sheet, recipe, heading, beyond(heading, 1 + index, 0), each, () => recipe.lines);
    });
    nameTarget(sheet, recipe, { row, column: heads.at(-2)!.column });
    tellIn(sheet, recipe, { row, column: heads.at(-1)!.column }, UNSERE);
    if (index === 0) pot(kit, sheet, recipe.all, batch);
  });
  log(
    kit,
    sheet,
    { row: FIRST + 9, column: 0 },
    {
      ...{ heads: ["Truhe, Tag", "oben (°C)", "unten (°C)"], when: ["Mo", "Mi", "Fr"] },
      ranges: [
        [-20, -17],
        [-23, -20],
      ],
    },
  );
  note(kit, sheet, FIRST + 14, 0, "F2 schmeckt nach dem dritten Löffel am besten.");
}

/** Somebody who goes on changing one mix. */
export const fassungsblaetter: readonly Layout[] = [
  { name: "Fassungen einer Sorte untereinander, Prozente quer", language: "de", build: fassungen },
];
