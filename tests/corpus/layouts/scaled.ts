import { a1, addSheet, fixed, put, putRow, shown, span } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { input } from "../page";
import type { MarkedRecipe } from "../marks";
import { answer, formulas, hundred, kilos, markRecipe, sumAt } from "./marking";
import { ownTable } from "./labels";

/** A kilogram in grams, and the same for a tub and a vat in kilograms. */
function threeBatches(kit: Kit): void {
  const { marked } = kit;
  const made = kilos(kit.make(1)[0]!);
  const sheet = addSheet(marked.book, "Ansätze");
  put(sheet, 0, 0, made.title);
  const [, ...sizes] = putRow(sheet, 2, 0, ["Ansatz (kg)", 1, 5, 20]);
  const heads = putRow(sheet, 3, 0, ["Zutat", "Probe", "Kübel", "Wanne"]);
  putRow(sheet, 4, 1, ["g", "kg", "kg"]);
  const names = made.names.map((name, index) => put(sheet, 5 + index, 0, name));
  const amounts = made.grams.map((grams, index) => put(sheet, 5 + index, 1, grams));
  const scaled = [2, 3].map((column) => {
    const size = sizes[column - 1]!;
    const contents = amounts.map((spot) =>
      shown(`=${a1(spot)}/1000*${fixed(size)}/${fixed(sizes[0]!)}`, "0.00"),
    );
    const place = { sheet, at: [5, column], fixed: [size, sizes[0]!] } as const;
    return formulas(kit, heads[column]!, contents, place);
  });
  const end = 5 + names.length;
  put(sheet, end, 0, "Summe");
  const total = sumAt(kit, sheet, [end, 1], amounts);
  scaled.forEach((spots, index) => sumAt(kit, sheet, [end, index + 2], spots, "0.00"));
  const cells = { names, amounts, alsoAmounts: scaled.flat(), total };
  const recipe = markRecipe(kit, made, cells);
  const freezing = { states: "freezing point", as: "typed" } as const;
  answer(sheet, recipe, ["Gefrierpunkt (°C)", end + 2, 0], [end + 2, 1], freezing);
  const water = { states: "water", as: "formula", format: "0" } as const;
  answer(sheet, recipe, ["Wasser in der Probe (g)", end + 3, 0], [end + 3, 1], water);
  const dissolved = { states: "dissolved", as: "typed", decimals: 0 } as const;
  answer(sheet, recipe, ["Gelöste Stoffe der Probe (g)", end + 4, 0], [end + 4, 1], dissolved);
  nameTarget(sheet, recipe, { row: 0, column: 2, label: "Ziel" });
  tell(kit, sheet, recipe, { row: end + 6, column: 0, as: "sentence" });
  note(kit, sheet, end + 9, 0, "Wanne auf zwei Kessel verteilen.");
}

/** Per cent of the mix at the left, three batch sizes in grams, the names last. */
function perCentBase(kit: Kit): void {
  const { marked } = kit;
  const made = hundred(kit.make(1)[0]!);
  const sheet = addSheet(marked.book, "Scaling");
  put(sheet, 0, 4, made.title);
  const sizes = putRow(sheet, 1, 1, [5, 10, 25, "Batch size (kg)"]).slice(0, 3);
  const heads = putRow(sheet, 2, 0, ["% by mass", "g", "g", "g", "Ingredient"]);
  const amounts = made.grams.map((share, index) => put(sheet, 3 + index, 0, shown(share, "0.0")));
  const names = made.names.map((name, index) => put(sheet, 3 + index, 4, name));
  const scaled = sizes.map((size, index) => {
    const contents = amounts.map((spot) => shown(`=${a1(spot)}/100*${fixed(size)}*1000`, "0"));
    const place = { sheet, at: [3, index + 1], fixed: [size] } as const;
    return formulas(kit, heads[index + 1]!, contents, place);
  });
  const end = 3 + names.length;
  const total = sumAt(kit, sheet, [end, 0], amounts, "0.0");
  scaled.forEach((spots, index) => sumAt(kit, sheet, [end, index + 1], spots, "0"));
  put(sheet, end, 4, "Total");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "%", alsoAmounts: scaled.flat(), total, amountLabel: heads[0]! },
  });
  const column = { spots: amounts, heading: heads[0]!, total, kind: "per cent" } as const;
  marked.numberColumns.push(column);
  const freezing = { states: "freezing point", as: "typed" } as const;
  answer(sheet, recipe, ["Freezing point (°C)", 3, 6], [3, 7], freezing);
  const sugars = { states: "sugar per 100 g water", as: "typed", decimals: 1 } as const;
  answer(sheet, recipe, ["Sugars per 100 g of water (g)", 4, 6], [4, 7], sugars);
  const depression = { states: "depression", as: "formula" } as const;
  answer(sheet, recipe, ["Freezing-point depression (K)", 5, 6], [5, 7], depression);
  nameTarget(sheet, recipe, { row: 6, column: 6, label: "Serving target" });
  tell(kit, sheet, recipe, { row: end + 2, column: 0, as: "sentence" });
}

/** Answers right of the Swiss card. */
function swissAnswers(kit: Kit, recipe: MarkedRecipe): void {
  const sheet = kit.marked.book.sheets[0]!;
  const words = { label: "Serviertemperatur (°C)", bare: "Serviertemperatur", value: -12 };
  const temperature = input(kit, sheet, { row: 2, column: 7 }, words);
  const freezing = { states: "freezing point", as: "formula" } as const;
  answer(sheet, recipe, ["Gefrierpunkt (°C)", 3, 7], [3, 8], freezing);
  const ice = { states: "ice of mix", as: "formula", percent: "format", temperature } as const;
  const label = "Eis in der Masse bei Serviertemperatur";
  answer(sheet, recipe, [label, 4, 7], [4, 8], { ...ice, temperatureC: -12 });
  nameTarget(sheet, recipe, { row: 5, column: 7, label: "Vorgabe" });
}

/** Mixes of the house, g per 100 g, and a tub made from one. */
function houseMixes(kit: Kit): void {
  const { random } = kit;
  const own = addSheet(kit.marked.book, "Hausmassen");
  put(own, 0, 0, "Hausmassen, Angaben je 100 g");
  const table = ownTable(kit, own, [2, 0], ["Kräutergrund", "Apfelgrund", "Beerengrund"]);
  const first = putRow(own, 8, 0, ["Kübel", "g"])[0]!;
  const lines = [
    putRow(own, 9, 0, ["Kräutergrund", 10 * random.whole(40, 70)]),
    putRow(own, 10, 0, ["Wasser", 10 * random.whole(20, 40)]),
    putRow(own, 11, 0, ["Zucker", 10 * random.whole(8, 14)]),
  ];
  const [what, grams] = [0, 1].map((at) => span(lines.map((each) => each[at]!)));
  const call = `=RIME.FREEZINGPOINT(${what},${grams},${table})`;
  putRow(own, first.row + 5, 0, ["Gefrierpunkt (°C)", shown(call, "0.00")]);
}

/** Shares, kilograms and francs of a glace, with house mixes on the next sheet. */
function swissCard(kit: Kit): void {
  const { random } = kit;
  const made = hundred(kit.make(1)[0]!);
  const sheet = addSheet(kit.marked.book, "Glacekarte");
  put(sheet, 0, 0, `Glace des Monats: ${made.title.replaceAll("ß", "ss")}`);
  const words = { label: "Ansatz (kg)", bare: "Ansatz", value: random.whole(6, 18) };
  const batch = input(kit, sheet, { row: 2, column: 0 }, words);
  const heads = putRow(sheet, 4, 0, ["Zutat", "Anteil", "kg", "CHF/kg", "CHF", "Herkunft"]);
  const names = made.names.map((name, index) => put(sheet, 5 + index, 0, name));
  const amounts = made.grams.map((share, index) =>
    put(sheet, 5 + index, 1, shown(Number((share / 100).toFixed(4)), "0.0%")),
  );
  const weights = amounts.map((spot) => shown(`=${a1(spot)}*${fixed(batch)}`, "#,##0.000"));
  const masses = formulas(kit, heads[2]!, weights, { sheet, at: [5, 2], fixed: [batch] });
  const costs = masses.map((spot, index) => {
    const price = put(sheet, 5 + index, 3, shown(random.whole(20, 400) / 20, "0.00"));
    put(sheet, 5 + index, 5, random.pick(["Region", "Import", undefined]));
    return shown(`=${a1(spot)}*${a1(price)}`, '"CHF "#,##0.00');
  });
  const francs = formulas(kit, heads[4]!, costs, { sheet, at: [5, 4] });
  const end = 5 + names.length;
  put(sheet, end, 0, "Total");
  const total = sumAt(kit, sheet, [end, 1], amounts, "0.0%");
  sumAt(kit, sheet, [end, 2], masses, "#,##0.000");
  sumAt(kit, sheet, [end, 4], francs, '"CHF "#,##0.00');
  const cells = { names, amounts, unit: "fraction", alsoAmounts: masses, total } as const;
  const recipe = markRecipe(kit, made, cells);
  swissAnswers(kit, recipe);
  tell(kit, sheet, recipe, { row: end + 2, column: 0, as: "pair" });
  houseMixes(kit);
}

/** One recipe for several batch sizes. */
export const scaled: readonly Layout[] = [
  { name: "Ansätze zu 1, 5 und 20 kg", language: "de", build: threeBatches },
  { name: "per cent base, three batch sizes", language: "en", build: perCentBase },
  { name: "Glacekarte in Franken", language: "de", build: swissCard },
];
