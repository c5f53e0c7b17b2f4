import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { Chance } from "../random";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { line, readings, WARNT } from "./words";

const KOPF = [...["Rohware", "Gebinde (kg)", "Gebinde (€)", "€/kg", "Einsatz (kg)", "Kosten (€)"]];

const WERTE: readonly Said[] = [
  { label: "Gefrierpunkt [°C]", states: "freezing point", as: "formula" },
  { label: "Gefrierpunktserniedrigung [K]", states: "depression", as: "typed", decimals: 2 },
  {
    ...{ label: "Zuckeranteil der Masse [%]", format: "0.0" },
    ...{ states: "sugar share", as: "formula" },
  },
  {
    label: "Eis vom Wasser bei −18 °C [%]",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 1 },
  },
];

/** From the mix to the tub; gives what is left of each tub. */
function becher(kit: Kit, sheet: CorpusSheet, top: number, mass: Spot, cost: Spot): Spot {
  const { random } = kit;
  const at = (step: number) => ({ row: top + step, column: 0 });
  const fill = input(kit, sheet, at(0), {
    ...{
      label: "Füllmenge Becher (g)",
      bare: "Füllmenge Becher",
      value: random.pick([120, 350, 400]),
    },
  });
  const price = (step: number, words: string, euros: number) =>
    putRow(sheet, top + step, 0, [words, shown(euros, "0.00")])[1]!;
  const pack = price(1, "Becher mit Deckel und Etikett (€)", random.whole(18, 46) / 100);
  const hour = price(2, "Lohn und Strom je Becher (€)", random.whole(30, 70) / 100);
  const shop = price(3, "Verkaufspreis netto (€)", random.whole(30, 62) / 10);
  const count = line(sheet, at(4), [
    "Becher aus dem Ansatz",
    `=${a1(mass)}*1000/${a1(fill)}`,
    "0.0",
  ]);
  const raw = line(sheet, at(5), ["Rohware je Becher (€)", `=${a1(cost)}/${a1(count)}`, "0.00"]);
  const whole = `=${a1(raw)}+${a1(pack)}+${a1(hour)}`;
  const spent = line(sheet, at(6), ["Kosten je Becher (€)", whole, "0.00"]);
  return line(sheet, at(7), ["Deckungsbeitrag (€)", `=${a1(shop)}-${a1(spent)}`, "0.00"]);
}

/** What is bought in which size and for how much, the same for every flavour. */
class Packs {
  private readonly known = new Map<string, readonly [size: number, paid: number]>();

  constructor(private readonly random: Chance) {}

  of(item: string, en: string): readonly [size: number, paid: number] {
    const size = en === "water" ? 1000 : this.random.pick([1, 2.5, 5, 10]);
    const pack = [size, Number((usualPrice(this.random, en) * size).toFixed(2))] as const;
    const known = this.known.get(item) ?? pack;
    this.known.set(item, known);
    return known;
  }
}

/** One flavour's costing; gives what is left of a tub. */
function blatt(kit: Kit, made: MadeRecipe, name: string, packs: Packs): Spot {
  const sheet = addSheet(kit.marked.book, name);
  put(sheet, 0, 0, `Kalkulation ${made.title}, Ansatz laut Rezeptbuch`);
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: KOPF,
      cells: (item, grams, index) => {
        const [size, paid] = packs.of(item, made.lines[index]!.en);
        return [item, size, shown(paid, "0.00"), undefined, shown(inUnit(grams, "kg"), "0.000")];
      },
      ...{ name: 0, amount: 4 },
    },
  );
  beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/${a1({ ...spot, column: 1 })}`,
  });
  const costs = beside(kit, heads[5]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 3 })}`,
  });
  put(sheet, end, 0, "Ansatz");
  const total = sumOf(kit, sheet, { row: end, column: 4 }, amounts, "0.000");
  const cost = sumOf(kit, sheet, { row: end, column: 5 }, costs, "0.00");
  const cells = { names, amounts, unit: "kg", total, amountLabel: heads[4]! } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: end + 2, column: 4 }, WERTE);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "verkauft als" });
  const left = becher(kit, sheet, end + 2, total, cost);
  tellIn(sheet, recipe, { row: left.row + 2, column: 0 }, WARNT);
  return left;
}

/** A farm that compares what its flavours leave. */
function hofeis(kit: Kit): void {
  const own = { Zucker: "Rübenzucker", Honig: "Blütenhonig", "Sahne 35 %": "Schlagrahm 35 %" };
  const mades = kit.make(3).map((made) => called(upTo(made, 6000), own));
  const packs = new Packs(kit.random);
  const lefts = mades.map((made, at) => blatt(kit, made, `Sorte ${"ABC"[at]}`, packs));
  const sheet = addSheet(kit.marked.book, "Vergleich");
  put(sheet, 0, 0, "Was bringt welche Sorte?");
  const heads = putRow(sheet, 2, 0, ["Sorte", "DB je Becher (€)", "Becher im Juli", "DB Juli (€)"]);
  const rows = mades.map((made, at) => {
    const from = `='${lefts[at]!.sheet}'!${a1(lefts[at]!)}`;
    const sold = kit.random.whole(60, 420);
    return putRow(sheet, 3 + at, 0, [made.title, shown(from, "0.00"), sold]);
  });
  const july = beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 1 })}`,
  });
  put(sheet, 6, 0, "alle Sorten");
  sumOf(kit, sheet, { row: 6, column: 2 }, columnOf(rows, 2));
  sumOf(kit, sheet, { row: 6, column: 3 }, july, "0.00");
  readings(
    kit,
    sheet,
    { row: 2, column: 5 },
    {
      heads: ["Verkaufstruhe", "mittags (°C)"],
      when: ["1. Juli", "8. Juli", "15. Juli", "22. Juli"],
      tenths: [-196, -158],
    },
  );
  note(kit, sheet, 8, 0, "Eigene Milch ist zum Auszahlungspreis der Molkerei gerechnet.");
}

/** A farm's own ice. */
export const hofeisKalkulationen: readonly Layout[] = [
  { name: "Hofeis, Kalkulation nach Gebinden und Vergleich", language: "de", build: hofeis },
];
