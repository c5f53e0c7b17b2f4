import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { declare } from "./own";
import { LADEN } from "./stimmen";

const answers = (made: MadeRecipe, temperature: Spot, temperatureC: number): readonly Said[] => [
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Wasser je kg Eis", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "gelöst je kg Eis", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  { label: "Zucker in der Masse", inCell: "%", states: "sugar share", as: "typed" },
  {
    ...{ label: "in der Vitrine: Eis in der Masse", inCell: "%", states: "ice of mix" },
    ...{ as: "formula", format: "0", temperature, temperatureC },
  },
  ...ofAlcohol(made, "Alkohol je kg Eis", "g"),
];

/** The recipe for a kilogram, its cost and today's weights. */
function jeKilo(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, batch: Spot) {
  const list = listed(
    sheet,
    made,
    { row: 5, column: 1 },
    {
      heads: ["g je kg Eis", "Zutat", "EK netto (€/kg)", "€ je kg Eis", "heute wiegen (g)"],
      cells: (name, grams, index) => [
        ...[grams, name, shown(usualPrice(kit.random, made.lines[index]!.en), "0.00")],
      ],
      ...{ name: 1, amount: 0 },
    },
  );
  const { heads, rows, names, amounts, end } = list;
  const costs = beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.000" },
    content: (spot) => `=${a1({ ...spot, column: 1 })}/1000*${a1(spot)}`,
  });
  const alsoAmounts = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0", fixed: [batch] },
    content: (spot) => `=${a1(spot)}*${fixed(batch)}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  put(sheet, end, 2, "zusammen");
  const cost = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  sumOf(kit, sheet, { row: end, column: 5 }, alsoAmounts, "0");
  const amountLabel = heads[0]!;
  const lines = { names, amounts, total, amountLabel, alsoAmounts, unit: "g" } as const;
  return { recipe: markRecipe(kit, made, lines), cost };
}

/** From the kilogram to the bowl in the window; gives the next free row. */
function schale(kit: Kit, sheet: CorpusSheet, top: number, cost: Spot): number {
  const { random } = kit;
  const at = (step: number, bare: string, unit: string, value: number, format: string) => {
    const words = { label: `${bare} (${unit})`, bare, value, format };
    return input(kit, sheet, { row: top + step, column: 1 }, words);
  };
  const size = at(0, "Schale Füllmenge", "g", random.pick([350, 400, 500]), "0");
  const pack = at(1, "Schale mit Deckel", "€", random.whole(35, 60) / 100, "0.00");
  const work = at(2, "Arbeit je Schale", "€", random.whole(90, 160) / 100, "0.00");
  const price = at(3, "Ladenpreis netto", "€", random.whole(13, 18) / 2, "0.00");
  const line = (step: number, label: string, formula: string): Spot =>
    putRow(sheet, top + step, 1, [label, shown(formula, "0.00")])[1]!;
  const goods = line(4, "Ware je Schale (€)", `=${a1(cost)}*${a1(size)}/1000`);
  const all = line(5, "Selbstkosten je Schale (€)", `=${a1(goods)}+${a1(pack)}+${a1(work)}`);
  line(6, "Rohgewinn je Schale (€)", `=${a1(price)}-${a1(all)}`);
  return top + 8;
}

/** A delicatessen: everything for a kilogram, then today's batch and the bowl. */
function feinkost(kit: Kit): void {
  const { random } = kit;
  const made = called(perKilogram(kit.make(1)[0]!), { Zucker: "Kristallzucker" });
  const sheet = addSheet(kit.marked.book, "Kilorezept");
  put(sheet, 0, 1, made.title);
  put(sheet, 1, 1, "Alles auf 1 kg Eis");
  const bare = "Heute angesetzt";
  const words = { label: `${bare} (kg)`, bare, value: random.pick([4, 6, 7.5]) };
  const batch = input(kit, sheet, { row: 3, column: 1 }, words);
  const cold = -random.whole(12, 15);
  const vitrine = { label: "Vitrine (°C)", bare: "Vitrine", value: cold };
  const temperature = input(kit, sheet, { row: 3, column: 4 }, vitrine);
  const { recipe, cost } = jeKilo(kit, sheet, made, batch);
  const row = recipe.total!.row + 2;
  const next = say(sheet, recipe, { row, column: 4 }, answers(made, temperature, cold));
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Einstufung" });
  const last = Math.max(schale(kit, sheet, row, cost), next + 2);
  const end = declare(sheet, recipe, { row: last, column: 1 }, LADEN);
  note(kit, sheet, end + 1, 1, "Einkaufspreise vom Monatsanfang.");
}

export const feinkostlaeden: readonly Layout[] = [
  { name: "Feinkostladen, Kilorezept bis zur Schale", language: "de", build: feinkost },
];
