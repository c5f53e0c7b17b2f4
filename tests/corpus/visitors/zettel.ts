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
import { nameTarget, note, tell, type Kit } from "../kit";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { columnOf } from "../kitchens/hand";
import { beside } from "./lines";
import { listed } from "./listed";

const SLIP: readonly (readonly [from: number, to: number, unit: string, name: string])[] = [
  [2, 3, "Liter", "Vollmilch"],
  [12, 20, "EL", "Zucker"],
  [2, 5, "EL", "Honig"],
  [2, 6, "EL", "Kakaopulver"],
  [1, 2, "TL", "Salz"],
];

/** Grandmother's slip with its measures, the grams of each worked out. */
function slip(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Zettel");
  put(sheet, 0, 0, "Kakaoeis nach Großmutters Zettel");
  const heads = putRow(sheet, 1, 0, ["Wie viel", "Maß", "Wovon", "sind in Gramm"]);
  const rows = SLIP.map(([from, to, unit, name], index) => {
    const size = unit === "EL" ? 1 : 4;
    const count = random.whole(from, to) / size;
    const cells = putRow(sheet, 2 + index, 0, [count, unit, name]) as [Spot, Spot, Spot];
    const [quantity, measure, item] = cells;
    const grams = `=RIME.GRAMS(${[item, quantity, measure].map(a1).join(",")})`;
    return [item, put(sheet, 2 + index, 3, shown(grams, "0.0"))];
  });
  const [names, grams] = [columnOf(rows, 0), columnOf(rows, 1)];
  marked.formulaColumns.push({ spots: grams, heading: heads[3]!, fixed: [] });
  put(sheet, 7, 2, "in der Schüssel");
  sumOf(kit, sheet, { row: 7, column: 3 }, grams, "0.0");
  const call = shown(`=RIME.FREEZINGPOINT(${span(names)},${span(grams)})`, "0.00");
  putRow(sheet, 8, 2, ["Gefrierpunkt (°C)", call]);
  put(sheet, 10, 0, "Enthält Milch. Honig: nicht für Kinder unter 12 Monaten.");
  note(kit, sheet, 11, 0, "Löffel gestrichen voll, wie sie es immer sagte.");
}

const BOTTLES = [
  ["Eierlikör 20 %", 20],
  ["Rum 40 %", 40],
  ["Kirschwasser 42 %", 42],
  ["Kräuterlikör 32 %", 32],
] as const;

/** What is poured over the scoops; gives the warning under it. */
function bottles(kit: Kit, sheet: CorpusSheet): Spot {
  const headings = ["Alkohol darin (g)", "Flasche", "Stärke (% vol)", "über eine Kugel (g)"];
  const heads = putRow(sheet, 0, 0, headings);
  const spots = BOTTLES.map(([bottle, strength], index) => {
    const contents = [bottle, strength, kit.random.whole(8, 25)];
    const [, abv, grams] = putRow(sheet, 1 + index, 1, contents) as [Spot, Spot, Spot];
    const pure = `=${a1(grams)}*RIME.ABVTOMASSFRACTION(${a1(abv)})`;
    const alcohol = put(sheet, 1 + index, 0, shown(pure, "0.0"));
    kit.marked.alcohols.push({ grams, abv, alcohol });
    return alcohol;
  });
  kit.marked.formulaColumns.push({ spots, heading: heads[0]!, fixed: [] });
  const egg = "Eierlikör enthält Ei und Milch.";
  const warning = "Enthält Alkohol: nicht für Kinder, Schwangere und wer noch fährt.";
  return put(sheet, 6, 0, `${warning} ${egg}`);
}

/** What the grandchildren's ice is like, above the list. */
function above(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe): void {
  const next = say(sheet, recipe, { row: 4, column: 0 }, [
    { label: "Gefrierpunkt, °C", states: "freezing point", as: "formula" },
    { label: "alles Gelöste zusammen, g", states: "dissolved", as: "typed", decimals: 0 },
    { label: "Zucker in Prozent der Masse", states: "sugar share", as: "typed" },
    {
      label: "gefrorenes Wasser bei −15 °C, % des Wassers",
      ...{ states: "ice of water", as: "typed", temperatureC: -15 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "soll sein" });
}

/** An ice for the family's party, the amounts for more of it beside. */
function party(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Familienfest");
  const made = kit.make(1)[0]!;
  put(sheet, 0, 0, `Zum Familienfest: ${made.title}`);
  const words = { label: "Gewünschte Menge (g)", bare: "Gewünschte Menge" };
  const value = 250 * random.whole(5, 10);
  const wanted = input(kit, sheet, { row: 2, column: 0 }, { ...words, value });
  const { heads, names, amounts, total, row } = listed(kit, sheet, made, {
    ...{ top: 11, left: 0, headings: ["Zutaten", "Für das Fest (g)", "Grundrezept (g)"] },
    line: (at) => [made.names[at], undefined, made.grams[at]],
    ...{ name: 0, amount: 2, sum: "Gewicht" },
  });
  const plan = { column: 1, heading: heads[1]!, fixed: [total, wanted], format: "0" };
  const factor = `${fixed(total)}*${fixed(wanted)}`;
  const alsoAmounts = beside(kit, amounts, plan, (amount) => `=${amount}/${factor}`);
  sumOf(kit, sheet, { row, column: 1 }, alsoAmounts, "0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "g", amountLabel: heads[2]!, total },
  });
  above(kit, sheet, recipe);
  tell(kit, sheet, recipe, { row: row + 2, column: 0, as: "sentence" });
  recipe.flags.push(bottles(kit, addSheet(marked.book, "Darüber")));
}

/** The slip, and the ice for the party with what is poured over it. */
export function zettel(kit: Kit): void {
  slip(kit);
  party(kit);
}
