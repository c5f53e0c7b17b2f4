import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, fixed, put, putRow, shown, span, type Spot } from "../book";
import { note, tell, type Kit, type Layout } from "../kit";
import { input } from "../page";
import { perHundred, withLines } from "../recipes";
import { markRecipe, say, sumOf } from "./parts";

/** Prices by the pack, waste in peeling, loss in churning. */
function packs(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Costing");
  const made = kit.make(1)[0]!;
  put(sheet, 0, 0, `What a batch of ${made.title.toLowerCase()} costs us`);
  const loss = input(
    kit,
    sheet,
    { row: 1, column: 0 },
    {
      ...{ label: "Left in the machine (%)", bare: "Left in the machine" },
      value: random.whole(2, 5),
    },
  );
  const heads = putRow(sheet, 3, 0, [
    ...["Ingredient", "Pack (g)", "Pack price (EUR)", "EUR per kg", "Goes in (g)", "Waste (%)"],
    ...["To buy (g)", "Cost (EUR)"],
  ]);
  const lines = made.names.map((each, index) => {
    const row = 4 + index;
    const packGrams = random.pick([250, 500, 1000, 2500, 5000]);
    const packPrice = Math.round((packGrams * random.between(0.9, 14)) / 10) / 100;
    const [name, pack, price] = putRow(sheet, row, 0, [
      ...[each, packGrams, shown(packPrice, "0.00")],
    ]) as [Spot, Spot, Spot];
    const perKg = put(sheet, row, 3, shown(`=${a1(price)}/${a1(pack)}*1000`, "0.00"));
    const [goes, waste] = putRow(sheet, row, 4, [
      ...[made.grams[index]!, random.pick([0, 0, 2, 5, 8])],
    ]) as [Spot, Spot];
    const buy = put(sheet, row, 6, shown(`=${a1(goes)}/(1-${a1(waste)}/100)`, "0"));
    const cost = put(sheet, row, 7, shown(`=${a1(buy)}*${a1(perKg)}/1000`, "0.00"));
    return { name, perKg, goes, buy, cost };
  });
  const spotsOf = (key: keyof (typeof lines)[number]) => lines.map((each) => each[key]);
  const row = 4 + lines.length;
  put(sheet, row, 0, "Total");
  const total = sumOf(kit, sheet, { row, column: 4 }, spotsOf("goes"));
  sumOf(kit, sheet, { row, column: 6 }, spotsOf("buy"), "0");
  const cost = sumOf(kit, sheet, { row, column: 7 }, spotsOf("cost"), "0.00");
  (["perKg", "buy", "cost"] as const).forEach((key, index) => {
    const heading = heads[[3, 6, 7][index]!]!;
    marked.formulaColumns.push({ spots: spotsOf(key), heading, fixed: [] });
  });
  const recipe = markRecipe(kit, made, {
    ...{ names: spotsOf("name"), amounts: spotsOf("goes"), alsoAmounts: spotsOf("buy") },
    ...{ unit: "g", amountLabel: heads[4]!, total },
  });
  const out = `=${a1(total)}*(1-${a1(loss)}/100)`;
  const [, yielded] = putRow(sheet, row + 2, 0, ["Comes out (g)", shown(out, "0")]);
  const each = `=${a1(cost)}/${a1(yielded!)}*100`;
  putRow(sheet, row + 3, 0, ["Cost of 100 g (EUR)", shown(each, "0.00")]);
  const next = say(sheet, recipe, { row: row + 5, column: 0 }, [
    { label: "Freezing point (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Water in it (g)", states: "water", as: "typed", decimals: 0 },
    { label: "Of which alcohol (g)", states: "alcohol", as: "typed", decimals: 1 },
    { label: "Dissolved solids (g)", states: "dissolved", as: "typed", decimals: 0 },
  ]);
  tell(kit, sheet, recipe, { row: next + 1, column: 0, as: "sentence" });
}

/** For a kilogram, for a litre, for a batch of some kilograms. */
function perKilo(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Ansätze");
  const hundred = perHundred(kit.make(1)[0]!);
  const tenfold = hundred.lines.map((each) => ({ ...each, grams: Math.round(each.grams * 10) }));
  const made = withLines(hundred, tenfold);
  put(sheet, 0, 0, made.title);
  const [, batch] = putRow(sheet, 2, 0, ["Ansatz (kg)", random.pick([3, 5, 8, 12])]);
  const column = (list: readonly (string | number)[]) => list.map((each) => [each]);
  const density = callFunction("DENSITY", column(made.names), column(made.grams))[0]![0];
  const litre = typeof density === "number";
  const heads = putRow(sheet, 4, 0, [
    ...["Zutat", "je kg Mischung", "Einheit", "Ansatz (g)"],
    litre ? "je Liter (g)" : undefined,
  ]);
  const rows = made.names.map((each, index) =>
    putRow(sheet, 5 + index, 0, [each, made.grams[index]!, "g"]),
  );
  const [names, amounts, unitCells] = [0, 1, 2].map((at) => rows.map((cells) => cells[at]!)) as [
    ...[Spot[], Spot[], Spot[]],
  ];
  const row = 5 + rows.length;
  putRow(sheet, row, 0, ["Summe", undefined, "g"]);
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts);
  const scaled = (at: number, factor: Spot): Spot[] => {
    const spots = amounts.map((spot) =>
      put(sheet, spot.row, at, shown(`=${a1(spot)}*${fixed(factor)}`, "0")),
    );
    marked.formulaColumns.push({ spots, heading: heads[at]!, fixed: [factor] });
    sumOf(kit, sheet, { row, column: at }, spots, "0");
    return spots;
  };
  const alsoAmounts = [...scaled(3, batch!)];
  if (litre) {
    const call = `=RIME.DENSITY(${span(names)},${span(amounts)})`;
    const [, perMl] = putRow(sheet, 2, 3, ["Dichte (g/mL)", shown(call, "0.000")]);
    alsoAmounts.push(...scaled(4, perMl!));
  }
  const recipe = markRecipe(kit, made, {
    names,
    amounts,
    unitCells,
    alsoAmounts,
    unit: "g",
    total,
  });
  const next = say(sheet, recipe, { row: row + 2, column: 0 }, [
    { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula" },
    { label: "Wasser je kg Mischung", inCell: "g", states: "water", as: "formula", format: "0" },
    { label: "Gelöste Stoffe je kg", inCell: "g", states: "dissolved", as: "formula", format: "0" },
  ]);
  const told = tell(kit, sheet, recipe, { row: next + 1, column: 0, as: "pair" });
  note(kit, sheet, told + 1, 0, "Vor dem Abfüllen noch einmal wiegen.");
}

/** Sheets of a kitchen that sells what it makes. */
export const costing: readonly Layout[] = [
  { name: "pack prices, waste and yield", language: "en", build: packs },
  { name: "je Kilo, je Liter, je Ansatz", language: "de", build: perKilo },
];
