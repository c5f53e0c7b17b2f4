import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { trueValue, type MarkedRecipe } from "../marks";
import { input } from "../page";
import { makeRecipe, type MadeRecipe } from "../recipes";
import { columnOf } from "../kitchens/hand";
import { ALCOHOL, line, water, type StockRecipe } from "../stock";
import { pantry, type Shelf } from "./pantry";
import { beside, listed, warn } from "./words";

const drink = (en: string, grams: number) => line(en, en, grams, ALCOHOL);
const plain = (en: string, grams: number) => line(en, en, grams);

const SORBETS: readonly StockRecipe[] = [
  {
    ...{ en: "Blackberry and gin sorbet", de: "" },
    lines: [
      ...[plain("blackberries", 420), water(170), plain("caster sugar", 160)],
      ...[drink("gin 40 %", 35), drink("liqueur 25 %", 30), plain("lemon juice", 20)],
    ],
  },
  {
    ...{ en: "Orange and rum sorbet", de: "" },
    lines: [
      ...[plain("orange juice", 520), water(90), plain("caster sugar", 120)],
      ...[drink("rum 40 %", 30), drink("fruit liqueur 25 % vol", 35), plain("lime juice", 15)],
    ],
  },
];

/** Strength in per cent by volume, and what a millilitre weighs. */
const DRINKS: Readonly<Record<string, readonly [abv: number, gramsPerMl: number]>> = {
  ...{ "gin 40 %": [40, 0.95], "rum 40 %": [40, 0.95] },
  ...{ "liqueur 25 %": [25, 1.07], "fruit liqueur 25 % vol": [25, 1.07] },
};

interface Mixed {
  readonly made: MadeRecipe;
  readonly amounts: readonly Spot[];
  readonly total: Spot;
  /** The first free row. */
  readonly next: number;
}

const BOTTLES = ["Bottle", "on the scale (g)", "label (% vol)", "that is (ml)", "alcohol (g)"];

/** A row for each bottle, its grams read from the recipe. */
const poured = (sheet: CorpusSheet, top: number, { names }: MadeRecipe, amounts: readonly Spot[]) =>
  names
    .filter((name) => name in DRINKS)
    .map((name, index) => {
      const at = names.indexOf(name);
      const [abv, gramsPerMl] = DRINKS[name]!;
      const ml = Number(sheet.cells[amounts[at]!.row]![1]!.content) / gramsPerMl;
      return putRow(sheet, top + index, 0, [name, `=${a1(amounts[at]!)}`, abv, Math.round(ml)]);
    });

/** The bottles used, what alcohol they bring by their volume, and how much that is in the whole. */
function bottles(kit: Kit, sheet: CorpusSheet, row: number, { made, amounts, total }: Mixed) {
  const words = { label: "a ml of pure alcohol weighs (g)", bare: "a ml of pure alcohol weighs" };
  const weighs = { ...words, value: 0.789, format: "0.000" };
  const density = input(kit, sheet, { row, column: 0 }, weighs);
  const heads = putRow(sheet, row + 1, 0, BOTTLES);
  const rows = poured(sheet, row + 2, made, amounts);
  const [grams, strengths, volumes] = [1, 2, 3].map((at) => columnOf(rows, at));
  const pure = beside(kit, heads[4]!, volumes!, {
    ...{ sheet, format: "0.0", fixed: [density] },
    content: (ml, at) => `=${a1(ml)}*${a1(strengths![at]!)}/100*${fixed(density)}`,
  });
  pure.forEach((alcohol, at) =>
    kit.marked.alcohols.push({ grams: grams![at]!, abv: strengths![at]!, alcohol }),
  );
  const end = row + 2 + rows.length;
  put(sheet, end, 0, "both together");
  const both = sumOf(kit, sheet, { row: end, column: 4 }, pure, "0.0");
  const share = shown(`=${a1(both)}/${fixed(total)}*100`, "0.0");
  put(sheet, end + 1, 0, "Alcohol, % of the sorbet's weight");
  put(sheet, end + 1, 4, share);
}

const COMES: readonly Said[] = [
  { label: "starts freezing at, °C", states: "freezing point", as: "formula" },
  { label: "pure alcohol, g", states: "alcohol", as: "typed", decimals: 1 },
  { label: "water in everything, g", states: "water", as: "typed", decimals: 0 },
];

/** Lines with a remark and their total. */
function bowl(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const { heads, names, amounts, end } = listed(
    ...([sheet, made, { row: 3, column: 0 }] as const),
    { heads: ["What", "How much (g)", "Remarks"], cells: (name, grams) => [name, grams] },
  );
  note(kit, sheet, 5, 2, "weigh it, do not guess");
  put(sheet, end, 0, "in the bowl");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const lines = { names, amounts, unit: "g", amountLabel: heads[1]!, total } as const;
  return markRecipe(kit, made, lines);
}

/** A mix, how cold the freezer is, and what comes of it there. */
function mix(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): Mixed {
  put(sheet, 0, 0, made.title);
  const temperatureC = kit.random.pick([-16, -17, -19]);
  const words = { label: "my freezer really has (°C)", bare: "my freezer really has" };
  const place = { row: 1, column: 0 };
  const temperature = input(kit, sheet, place, { ...words, value: temperatureC });
  const recipe = bowl(kit, sheet, made);
  const isStrong = (trueValue(made, "alcohol", null) ?? 0) > 0;
  const ice = { temperature, temperatureC, as: "formula", format: "0" } as const;
  let next = say(sheet, recipe, { row: recipe.total!.row + 2, column: 0 }, [
    ...COMES.filter(({ states }) => states !== "alcohol" || isStrong),
    { label: "of the water, this much is ice in my freezer, %", states: "ice of water", ...ice },
    { label: "of the whole mix, this much is ice in there, %", states: "ice of mix", ...ice },
  ]);
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "comes out" });
  next = warn(sheet, recipe, { row: next, column: 0 }, "For guests: contains");
  return { made, amounts: recipe.amounts, total: recipe.total!, next };
}

const JARS: Shelf = {
  ...{ sheet: "Jars", title: "From the labels, g per 100 g", source: "jar label" },
  heads: ["Name", "Water", "Sugars", "Fat", "Protein", "Inert", "Allergens", "Source"],
  items: ["aunt's damson spread", "quince paste"],
  words: ["Ripple", "g", "in the pan", "ripple starts freezing at, °C"],
};

/** A sorbet with two bottles in it, another mix of the same weekend, jars for a ripple. */
function weekend(kit: Kit): void {
  const { marked, random } = kit;
  const sorbet = addSheet(marked.book, "Sorbet");
  const made = makeRecipe(random, "en", random.pick(SORBETS));
  const mixed = mix(kit, sorbet, made);
  bottles(kit, sorbet, mixed.next + 1, mixed);
  mix(kit, addSheet(marked.book, "Sunday"), kit.make(1)[0]!);
  pantry(kit, JARS);
}

/** Weekends of a keen cook. */
export const evenings: readonly Layout[] = [
  { name: "sorbet with two bottles in it", language: "en", build: weekend },
];
