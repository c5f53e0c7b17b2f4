import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { perHundred } from "../recipes";
import { declare } from "./words";

interface Container {
  /** How many grams go into it. */
  readonly mass: Spot;
  readonly counter: Spot;
}

/** What the container holds, and what has to be mixed for it. */
function container(kit: Kit, sheet: CorpusSheet): Container {
  const { random } = kit;
  const at = (row: number, label: string, bare: string, value: number) =>
    input(kit, sheet, { row, column: 4 }, { label, bare, value });
  const litres = at(2, "Behälter fasst (l)", "Behälter fasst", random.pick([2.5, 4, 5.5]));
  const density = at(3, "1 l Masse wiegt (kg)", "1 l Masse wiegt", random.pick([1.05, 1.08, 1.1]));
  const full = at(4, "voll gemacht zu (%)", "voll gemacht zu", random.pick([85, 90]));
  const counter = at(5, "Theke (°C)", "Theke", -random.whole(10, 14));
  const filled = `=${a1(litres)}*${a1(density)}*1000*${a1(full)}/100`;
  const mass = putRow(sheet, 6, 4, ["Füllung (g)", shown(filled, "0")])[1]!;
  return { mass, counter };
}

/** Answers under the container. */
function answers(sheet: CorpusSheet, recipe: MarkedRecipe, counter: Spot): number {
  const temperatureC = sheet.cells[counter.row]![counter.column]!.content as number;
  const next = say(sheet, recipe, { row: 8, column: 4 }, [
    { label: "Gefrierbeginn (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Erniedrigung (K)", states: "depression", as: "formula" },
    {
      label: "Wasser gefroren bei Thekentemperatur",
      ...{ states: "ice of water", as: "formula", percent: "format" },
      ...{ temperatureC, temperature: counter },
    },
    {
      label: "Eis in der Masse bei Thekentemperatur",
      ...{ states: "ice of mix", as: "formula", percent: "format" },
      ...{ temperatureC, temperature: counter },
    },
    { label: "Gelöst in 100 g Masse (g)", states: "dissolved", as: "typed", decimals: 1 },
    { label: "Zucker in der Masse (%)", states: "sugar share", as: "typed" },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Soll werden" });
  return next + 1;
}

/** A recipe in per cent, worked out for one container. */
function kantine(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Nachtisch");
  const made = called(stillMet(perHundred(kit.make(1)[0]!)), {
    Eigelb: "Eidotter",
    Zucker: "Kristallzucker",
  });
  put(sheet, 0, 0, `Betriebskantine, ${made.title}: ein Behälter für die Theke`);
  const { mass, counter } = container(kit, sheet);
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Anteil in %", "Was", "Für den Behälter (g)"],
      cells: (name, share) => [shown(share, "0.0"), name],
      ...{ name: 1, amount: 0 },
    },
  );
  const { heads, names, amounts, end } = list;
  const row = end + 1;
  const total = sumOf(kit, sheet, { row, column: 0 }, amounts);
  put(sheet, row, 1, "Summe der Anteile");
  const weighed = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [mass, total] },
    content: (spot) => `=${a1(spot)}*${fixed(mass)}/${fixed(total)}`,
  });
  sumOf(kit, sheet, { row, column: 2 }, weighed, "0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: weighed, unit: "%", amountLabel: heads[0]!, total },
  });
  const next = Math.max(row, answers(sheet, recipe, counter)) + 2;
  declare(sheet, recipe, { row: next, column: 0 }, "Aushang: enthält");
  note(kit, sheet, next + 2, 0, "Behälter vor dem Füllen eine Stunde in die Kälte stellen.");
}

/** A works canteen. */
export const kantinen: readonly Layout[] = [
  { name: "Betriebskantine, Prozentrezept für einen Behälter", language: "de", build: kantine },
];
