import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { say, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import { beside } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { pricesOf, weighed } from "./words";

const VOICE: Voice = {
  lead: "Karte: enthält",
  honey: "Karte: mit Honig, nicht für Kinder unter 12 Monaten.",
  alcohol: "Karte: mit Alkohol, nicht für Kinder, Schwangere, Autofahrer.",
  nuts: "Karte: ganze Nüsse, Kinder unter 5 Jahren Erstickungsgefahr.",
  egg: "Karte: rohes Eigelb, auf 71 °C erhitzt oder pasteurisiert.",
};

/** Einkaufspreise vom letzten Lieferschein; gibt zu jeder Ware ihre Zelle. */
function prices(kit: Kit, mades: readonly MadeRecipe[]): ReadonlyMap<string, string> {
  const sheet = addSheet(kit.marked.book, "EK");
  put(sheet, 0, 0, "Einkauf netto, letzter Lieferschein");
  putRow(sheet, 2, 0, ["Ware", "EK €/kg", "Lieferung"]);
  const entries = [...pricesOf(kit, mades)].map(([item, paid], index) => {
    const day = item === "Wasser" ? "Hahn" : kit.random.pick(["Di", "Fr"]);
    const [, price] = putRow(sheet, 3 + index, 0, [item, shown(paid, "0.00"), day]);
    return [item, `EK!${fixed(price!)}`] as const;
  });
  return new Map(entries);
}

interface Costed {
  readonly cost: Spot;
  readonly total: Spot;
  readonly made: MadeRecipe;
}

/** Ein Eis mit seinen Kosten, darunter was es kann. */
function costed(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  row: number,
  bought: ReadonlyMap<string, string>,
): Costed & { readonly next: number } {
  put(sheet, row, 0, made.title.toUpperCase());
  const { recipe, heads, amounts, end } = weighed(
    kit,
    sheet,
    made,
    { row: row + 1, column: 0 },
    {
      heads: ["Rohware", "EK €/kg", "kg", "€"],
      cells: (name, grams) => [
        ...[name, shown(`=${bought.get(name)!}`, "0.00"), shown(inUnit(grams, "kg"), "0.000")],
      ],
      ...{ name: 0, amount: 2, unit: "kg", total: "Wanne", format: "0.000" },
    },
  );
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1({ ...spot, column: 1 })}*${a1(spot)}`,
  });
  const cost = sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  const next = say(sheet, recipe, { row: row + 2, column: 5 }, [
    { label: "Gefrierpunkt [°C]", states: "freezing point", as: "typed", decimals: 1 },
    { label: "liegt unter 0 °C um [K]", states: "depression", as: "formula" },
    { label: "Wasser in der Wanne [g]", states: "water", as: "typed", decimals: 0 },
    {
      label: "vom Wasser gefroren bei −14 °C [%]",
      ...{ states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
    },
    ...ofAlcohol(made, "Alkohol in der Wanne [g]"),
  ]);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Konsistenz" });
  tellIn(sheet, recipe, { row: end + 1, column: 0 }, VOICE);
  return { cost, total: recipe.total!, made, next: Math.max(end + 3, next + 2) };
}

/** Was ein Becher kostet und bringt, ein Eis je Zeile. */
function cups(kit: Kit, list: readonly Costed[]): void {
  const sheet = addSheet(kit.marked.book, "Becher");
  put(sheet, 0, 0, "Becher zu zwei Kugeln");
  const at = (row: number) => ({ row, column: 0 });
  const size = { label: "Eis im Becher (g)", bare: "Eis im Becher", value: 130 };
  const paper = {
    label: "Becher und Löffel (€)",
    bare: "Becher und Löffel",
    value: 0.17,
    format: "0.00",
  };
  const [cup, extra] = [input(kit, sheet, at(2), size), input(kit, sheet, at(3), paper)];
  const heads = putRow(sheet, 5, 0, [
    "Eis",
    "Wanne (€)",
    "Wanne (kg)",
    "je Becher (€)",
    "Karte (€)",
    "bleibt (€)",
  ]);
  const rows = list.map(({ made, cost, total }, index) => {
    const row = 6 + index;
    const [, euros, kilos] = putRow(sheet, row, 0, [
      made.title,
      shown(`=Wannen!${a1(cost)}`, "0.00"),
      shown(`=Wannen!${a1(total)}`, "0.000"),
    ]);
    const formula = `=${a1(euros!)}/${a1(kilos!)}/1000*${fixed(cup)}+${fixed(extra)}`;
    const each = put(sheet, row, 3, shown(formula, "0.00"));
    const price = put(sheet, row, 4, shown(kit.random.whole(34, 44) / 10, "0.00"));
    return [each, put(sheet, row, 5, shown(`=${a1(price)}-${a1(each)}`, "0.00"))];
  });
  kit.marked.formulaColumns.push(
    { spots: columnOf(rows, 0), heading: heads[3]!, fixed: [cup, extra] },
    { spots: columnOf(rows, 1), heading: heads[5]!, fixed: [] },
  );
  note(kit, sheet, 7 + list.length, 0, "Miete und Strom rechnet der Steuerberater, hier nur Ware.");
}

/** Drei Wannen untereinander mit Warenkosten, dann der Becher. */
function becherkalkulation(kit: Kit): void {
  const mades = kit.make(3).map((made) => upTo(made, 3000));
  const bought = prices(kit, mades);
  const sheet = addSheet(kit.marked.book, "Wannen");
  put(sheet, 0, 0, "Warenkosten je Wanne");
  let row = 2;
  const list = mades.map((made) => {
    const block = costed(kit, sheet, made, row, bought);
    row = block.next;
    return block;
  });
  cups(kit, list);
}

/** Eine Kalkulation. */
export const becherkalkulationen: readonly Layout[] = [
  { name: "Becherkalkulation, Wannen untereinander", language: "de", build: becherkalkulation },
];
