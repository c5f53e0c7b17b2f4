import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { cautionsIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { DEUTSCH, thermometer } from "./words";

const STATIONS = ["Innere 1", "Innere 2", "Chirurgie", "Geriatrie", "Reha", "Cafeteria"];

const said = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefrierpunkt der Masse (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Wasser im Ansatz (g)", states: "water", as: "formula", format: "0" },
  { label: "in Lösung (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Eis in der Masse bei Ausgabe, -10 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -10, decimals: 0 },
  },
  ...ofAlcohol(made, "Alkohol (g), Rücksprache Diätassistenz"),
];

/** How many portions go where; gives what has to be made in grams. */
function orders(kit: Kit, sheet: CorpusSheet): Spot {
  put(sheet, 0, 0, "Bestellung Eis, Sonntagsmenü");
  const words = { label: "Portion (g)", bare: "Portion", value: kit.random.pick([50, 60, 75]) };
  const portion = input(kit, sheet, { row: 1, column: 0 }, words);
  const heads = putRow(sheet, 3, 0, [
    "Station",
    "Vollkost",
    "Leichte Kost",
    "Port. gesamt",
    "Gramm",
  ]);
  const rows = STATIONS.map((station, index) =>
    putRow(sheet, 4 + index, 0, [station, kit.random.whole(6, 28), kit.random.whole(0, 12)]),
  );
  const plain = { sheet, format: "0" } as const;
  const both = beside(kit, heads[3]!, columnOf(rows, 1), {
    ...plain,
    content: (spot) => `=${a1(spot)}+${a1({ ...spot, column: 2 })}`,
  });
  const grams = beside(kit, heads[4]!, both, {
    ...{ ...plain, fixed: [portion] },
    content: (spot) => `=${a1(spot)}*${fixed(portion)}`,
  });
  const end = 4 + STATIONS.length;
  put(sheet, end, 0, "Haus");
  [columnOf(rows, 1), columnOf(rows, 2), both, grams].forEach((parts, at) =>
    sumOf(kit, sheet, { row: end, column: 1 + at }, parts),
  );
  note(kit, sheet, end + 2, 0, "Kinderstation bestellt direkt bei der Küchenleitung.");
  return { sheet: sheet.name, row: end, column: 4 };
}

/** A card with the allergens line by line. */
function card(kit: Kit, made: MadeRecipe, name: string, needed: Spot): void {
  const sheet = addSheet(kit.marked.book, name);
  putRow(sheet, 0, 0, ["Rezepturkarte", made.title, undefined, "Menüart: Dessert"]);
  const list = listed(
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads: ["Pos.", "Lebensmittel", "Ansatz (g)", "Sonntag (g)", "Allergen"],
      cells: (item, grams, index) => [index + 1, item, grams],
      ...{ name: 1, amount: 2 },
    },
  );
  const { heads, names, amounts, end } = list;
  put(sheet, end, 1, "Ansatz gesamt");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  const ratio = `=Bestellung!${a1(needed)}/${a1(total)}`;
  const factor = putRow(sheet, 2, 1, ["Ansätze für Sonntag", shown(ratio, "0.00")])[1]!;
  const alsoAmounts = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0", fixed: [factor] },
    content: (spot) => `=${a1(spot)}*${fixed(factor)}`,
  });
  sumOf(kit, sheet, { row: end, column: 3 }, alsoAmounts, "0");
  const cells = { names, amounts, alsoAmounts, total, amountLabel: heads[2]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "g" });
  if (made.flagged) {
    const told = made.lines.map(({ allergen }, index) =>
      put(sheet, 6 + index, 4, allergen?.de ?? "keins"),
    );
    recipe.flags.push(...told);
    const caution = cautionsIn(made, DEUTSCH);
    if (caution !== "") recipe.flags.push(put(sheet, 3, 1, caution));
  }
  const next = say(sheet, recipe, { row: end + 2, column: 1 }, said(made));
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Konsistenz" });
  note(kit, sheet, next + 2, 1, "Schluckstörung: Eis nur nach Freigabe der Logopädie.");
}

/** What the stations order, two cards, and the checks. */
function stationen(kit: Kit): void {
  const { book } = kit.marked;
  const needed = orders(kit, addSheet(book, "Bestellung"));
  const own = { Wasser: "Leitungswasser", Zucker: "Weißzucker", Apfelmus: "Apfelmark" };
  kit.make(2).forEach((made, index) => {
    card(kit, called(made, own), `Karte ${index + 1}`, needed);
  });
  const sheet = addSheet(book, "Eigenkontrolle");
  putRow(sheet, 0, 0, ["Eigenkontrolle", "Küche Haus B"]);
  thermometer(
    kit,
    sheet,
    { row: 2, column: 0 },
    {
      heads: [
        "Schicht",
        "Tiefkühllager, °C",
        "Eiswagen bei Abfahrt, °C",
        "Eiswagen bei Ankunft, °C",
      ],
      lines: ["Fr früh", "Fr spät", "Sa früh", "Sa spät", "So früh"],
      from: [
        [-24, -20],
        [-17, -14],
        [-14, -11],
      ],
    },
  );
  note(kit, sheet, 9, 0, "Unterschrift auf dem Papierbogen, nicht hier.");
}

/** A clinic's kitchen. */
export const stationenListen: readonly Layout[] = [
  {
    name: "Klinikküche, Bestellung der Stationen und Rezepturkarten",
    language: "de",
    build: stationen,
  },
];
