import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf, perKilogram, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { changed, plainOf } from "../lodgers/swaps";
import { beside, listed } from "../newcomers/words";
import { formulaColumn } from "../pilgrims/words";
import { input } from "../page";
import { massOf, withLines, type MadeRecipe } from "../recipes";
import { stock } from "../stock";
import { spirits } from "./spirituosen";
import { tellIn, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Schild: enthält",
  honey: "Honig: nicht für Kinder unter 12 Monaten.",
  alcohol: "Alkohol: nicht für Kinder, nicht für Schwangere, nicht vor dem Fahren.",
  nuts: "Ganze Nüsse: für Kinder unter 5 Jahren Erstickungsgefahr.",
  egg: "Rohes Eigelb: Masse zur Rose bis mindestens 71 °C abziehen oder pasteurisiert.",
};

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt, °C", states: "freezing point", as: "formula", format: "0.0" },
  {
    label: "Eis in der Masse bei −13 °C, %",
    ...{ states: "ice of mix", as: "typed", temperatureC: -13, decimals: 0 },
  },
  { label: "Wasser in 1 kg, g", states: "water", as: "typed", decimals: 0 },
  { label: "gelöst in 1 kg, g", states: "dissolved", as: "typed", decimals: 0 },
];

const NUTS = stock.flatMap(({ lines }) => lines).find(({ en }) => en === "hazelnuts")!;

/** The same with chopped hazelnuts stirred in. */
function withHazelnuts(made: MadeRecipe): MadeRecipe {
  const others = made.lines.filter(({ en }) => en !== NUTS.en);
  const grams = Math.round(0.09 * massOf(made));
  return stillMet(withLines(made, [...others, { ...NUTS, grams }]));
}

/** What is made of one base. */
function derived(kit: Kit): readonly (readonly [string, MadeRecipe])[] {
  const made = plainOf(kit);
  const plain = sound(kit, made);
  const { title } = made;
  return [
    [`Grundmasse ${title}`, perKilogram(made)],
    ["Ableitung mit Haselnüssen", perKilogram(withHazelnuts(plain))],
    ["Ableitung, weniger süß", perKilogram(changed(plain, 0.78))],
  ];
}

/** A list for one kilogram and for what is made today; gives the row under all of it. */
function mass(
  kit: Kit,
  sheet: CorpusSheet,
  index: number,
  today: Spot,
  each: readonly [string, MadeRecipe],
) {
  const [title, made] = each;
  const column = 4 * index;
  put(sheet, 3, column, title);
  const list = listed(
    sheet,
    made,
    { row: 4, column },
    {
      heads: ["Rohstoff", "g je kg Masse", "heute (g)"],
      cells: (name, grams) => [name, grams],
    },
  );
  const { heads, names, amounts, end } = list;
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [today] },
    content: (spot) => `=${a1(spot)}*${fixed(today)}`,
  });
  put(sheet, end, column, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: column + 1 }, amounts, "0");
  sumOf(kit, sheet, { row: end, column: column + 2 }, alsoAmounts, "0");
  const cells = { names, amounts, alsoAmounts, unit: "g", amountLabel: heads[1]!, total } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: end + 2, column }, SAID);
  nameTarget(sheet, recipe, { row: next, column, label: "gewünscht" });
  return tellIn(sheet, recipe, { row: next + 1, column }, VOICE);
}

const SYRUPS = [
  ["zum Tränken", 400, 600],
  ["für Sorbet", 550, 450],
  ["zum Aufkochen, dick", 650, 350],
] as const;

/** Sugar syrups in the cold room, both ways of giving their strength. */
function syrups(kit: Kit, sheet: CorpusSheet): void {
  const { marked, random } = kit;
  put(sheet, 0, 0, "Läuterzucker im Kühlhaus");
  const heads = putRow(sheet, 2, 0, [
    ...["Wofür", "Zucker (g)", "Wasser (g)", "g Zucker auf 100 g Wasser", "Zucker im Sirup (%)"],
  ]);
  const own = ["für Früchte", 10 * random.whole(20, 34), 10 * random.whole(45, 60)] as const;
  const rows = [...SYRUPS, own].map((each, index) => {
    const [, sugar, water] = putRow(sheet, 3 + index, 0, each) as [Spot, Spot, Spot];
    const formula = `=${a1(sugar)}/${a1(water)}*100`;
    const perWater = put(sheet, 3 + index, 3, shown(formula, "0.0"));
    const part = `=${a1(sugar)}/(${a1(sugar)}+${a1(water)})*100`;
    const share = put(sheet, 3 + index, 4, shown(part, "0.0"));
    marked.strengths.push({ sugar, water, perWater, share });
    return [sugar, water, perWater, share];
  });
  formulaColumn(kit, heads[3]!, rows, 2);
  formulaColumn(kit, heads[4]!, rows, 3);
  put(sheet, 8, 0, "zusammen gekocht");
  sumOf(kit, sheet, { row: 8, column: 1 }, columnOf(rows, 0), "0");
  sumOf(kit, sheet, { row: 8, column: 2 }, columnOf(rows, 1), "0");
}

/** A base and what is made of it side by side, syrups on the next sheet. */
function konditorei(kit: Kit): void {
  const { book } = kit.marked;
  const sheet = addSheet(book, "Eismassen");
  put(sheet, 0, 0, "Eismassen, auf 1 kg und für heute");
  const words = { label: "Heute je Masse (kg)", bare: "Heute je Masse" };
  const value = kit.random.pick([1.5, 2, 2.5, 3]);
  const today = input(kit, sheet, { row: 1, column: 0 }, { ...words, value, format: "0.0" });
  const ends = derived(kit).map((each, index) => mass(kit, sheet, index, today, each));
  note(kit, sheet, Math.max(...ends) + 1, 0, "Massen über Nacht im Kühlhaus reifen lassen.");
  syrups(kit, addSheet(book, "Läuterzucker"));
  spirits(kit);
}

/** A confectioner's. */
export const konditoreien: readonly Layout[] = [
  {
    name: "Konditorei, Grundmasse und Ableitungen je Kilogramm",
    language: "de",
    build: konditorei,
  },
];
