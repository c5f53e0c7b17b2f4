import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { VOICE_OF_A_SHOP, readings, table } from "./words";

const OWN = {
  "Sahne 35 %": "Schlagsahne 35 %",
  Erdbeeren: "Erdbeeren (TK)",
  Vollmilch: "Milch 3,5 %",
};

const HEADS = ["Sorte", "Formen", "Zutat", "1 Form (g)", "alle Formen (g)"];

interface Entry {
  readonly recipe: MarkedRecipe;
  readonly worked: readonly Spot[];
  readonly total: Spot;
  readonly all: Spot;
}

/** The lines of an ice, its name and number of moulds beside the first of them. */
function entry(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): Entry {
  const [, moulds] = putRow(sheet, top, 0, [made.title, kit.random.whole(2, 6)]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + index, 2, [name, made.grams[index]!]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const worked = amounts.map((spot) =>
    put(sheet, spot.row, 4, shown(`=${a1(spot)}*${fixed(moulds!)}`, "0")),
  );
  kit.marked.formulaColumns.push({ spots: worked, heading: HEADING, fixed: [moulds!] });
  const end = top + rows.length;
  put(sheet, end, 2, "Zwischensumme");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts);
  const all = sumOf(kit, sheet, { row: end, column: 4 }, worked, "0");
  const lines = { names, amounts, alsoAmounts: worked, total, amountLabel: LABEL } as const;
  return { recipe: markRecipe(kit, made, { ...lines, unit: "g" }), worked, total, all };
}

const LIST = "Mengenliste";
const LABEL: Spot = { sheet: LIST, row: 2, column: 3 };
const HEADING: Spot = { sheet: LIST, row: 2, column: 4 };

/** All ices in one long list; gives each, and writes the sum of all moulds. */
function mengen(kit: Kit): readonly Entry[] {
  const sheet = addSheet(kit.marked.book, LIST);
  put(sheet, 0, 0, "Sommerfest am Dorfplatz, Eis in Kastenformen");
  putRow(sheet, 2, 0, HEADS);
  let top = 3;
  const entries = kit.make(3).map((made) => {
    const each = entry(kit, sheet, called(made, OWN), top);
    top = each.total.row + 1;
    return each;
  });
  const parts = entries.map(({ all }) => all);
  put(sheet, top + 1, 2, "Eis insgesamt");
  const spot = put(sheet, top + 1, 4, shown(`=${parts.map(a1).join("+")}`, "0"));
  kit.marked.sums.push({ spot, parts });
  return entries;
}

const FACTS: readonly (readonly [string, ResultPlan])[] = [
  ["gefriert ab (°C)", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Wasser je Form (g)", { states: "water", as: "typed", decimals: 0 }],
  ["gelöst je Form (g)", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "Wasser gefroren bei −16 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  ],
  ["Schnaps: Alkohol je Form (g)", { states: "alcohol", as: "typed", decimals: 1 }],
];

/** What the women at the counter need to know. */
function counter(kit: Kit, entries: readonly Entry[]): void {
  const sheet = addSheet(kit.marked.book, "Ausgabe");
  put(sheet, 0, 0, "Zettel für die Ausgabe");
  putRow(sheet, 2, 0, ["Sorte", "Scheibe (€)"]);
  const heads = putRow(sheet, 2, 2, [...FACTS.map(([words]) => words), "Zustand", "Aushang"]);
  entries.forEach(({ recipe }, index) => {
    const row = 3 + index;
    putRow(sheet, row, 0, [recipe.made.title, shown(kit.random.pick([1.5, 2, 2.5]), "0.00")]);
    FACTS.forEach(([, plan], at) => {
      const isTold = plan.states !== "alcohol" || isBoozy(recipe.made);
      if (isTold) resultAt(sheet, recipe, heads[at]!, { row, column: 2 + at }, plan);
    });
    nameTarget(sheet, recipe, { row, column: 2 + FACTS.length });
    tellIn(sheet, recipe, { row, column: 3 + FACTS.length }, VOICE_OF_A_SHOP);
  });
  const shifts = [
    ["11–13", "Hilde, Rosi"],
    ["13–15", "Marlies, Traudl"],
    ["15–17", "Hilde, Anni"],
    ["17–19", "wer noch kann"],
  ];
  const [titles] = table(sheet, { row: 8, column: 0 }, ["Schicht", "Wer", "Truhe (°C)"], shifts);
  readings(kit, sheet, titles![2]!, shifts.length, [-18, -14]);
  note(kit, sheet, 14, 0, "Teller nur gegen 1,50 € Pfand, Messer vorher in heißes Wasser.");
}

const isBoozy = ({ lines }: MadeRecipe): boolean =>
  lines.some(({ caution }) => /Alkohol/.test(caution?.de ?? ""));

/** A village fête: one long list of what goes in, and a slip for the counter. */
function festform(kit: Kit): void {
  counter(kit, mengen(kit));
}

/** Women of a village who make ice in loaf tins. */
export const festformen: readonly Layout[] = [
  { name: "Dorffest, Kastenformen in einer langen Liste", language: "de", build: festform },
];
