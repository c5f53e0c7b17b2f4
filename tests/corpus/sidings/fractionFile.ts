import { a1, addSheet, put, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { anchored, hundred } from "../layouts/marking";
import { down, given } from "../lodgers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { itemsOf } from "../strollers/words";
import { degrees, inColumn, inEnglish, readings, smallTable, type InGrid } from "./words";

const VOICE = inEnglish("Allergens,");

const FACTS = (temperature: Spot): readonly Fact[] => [
  ["Onset of freezing (°C)", { states: "freezing point", as: "formula", format: "0.00" }],
  ["Depression (K)", { states: "depression", as: "formula", format: "0.00" }],
  [
    "Fraction of water as ice, retail cabinet",
    {
      ...{ states: "ice of water", as: "formula", percent: "format" },
      ...{ temperature, temperatureC: -18 },
    },
  ],
  [
    "Ice in the mix at −10 °C (%)",
    { states: "ice of mix", as: "typed", temperatureC: -10, decimals: 1 },
  ],
];

const CODE = (at: number): string => `F-${31 + at}`;

/** All formulas beside each other, their sums over them. */
function formulas(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): InGrid[] {
  put(sheet, 0, 0, "Formula file, water ices and milk ices");
  const amountLabel = put(sheet, 2, 0, "mass fraction (g per g of mix)");
  down(sheet, [3, 0], ["name", "sum"]);
  const items = down(sheet, [6, 0], itemsOf(mades));
  return mades.map((made, at) => {
    const column = 1 + at;
    down(sheet, [2, column], [CODE(at), made.title]);
    const plan = { items, column, sumRow: 4, unit: "fraction", amountLabel } as const;
    return inColumn(kit, sheet, made, { ...plan, format: "0.0000" });
  });
}

/** What is expected of each, a column for each formula. */
function predictions(kit: Kit, sheet: CorpusSheet, grids: readonly InGrid[]): void {
  put(sheet, 0, 0, "Expected from the formula");
  const temperature = given(kit, sheet, [1, 0], ["Retail cabinet", "°C", -18]);
  const facts = FACTS(temperature);
  down(sheet, [3, 0], ["Formula", "Name", ...facts.map(([words]) => words)]);
  down(sheet, [5 + facts.length, 0], ["Texture brief", "Declaration"]);
  grids.forEach(({ recipe, all }, at) => {
    const column = 1 + at;
    const { sheet: home } = all[0]!;
    put(sheet, 3, column, CODE(at));
    put(sheet, 4, column, `=${home}!${a1({ ...all[0]!, row: 3 })}`);
    const last = { ...all.at(-1)!, column: 0 };
    const names = anchored(span([{ ...all[0]!, column: 0 }, last]));
    const lines = `${home}!${names},${home}!${span(all)}`;
    facts.forEach(([, plan], index) => {
      const label = { sheet: sheet.name, row: 5 + index, column: 0 };
      resultAt(sheet, recipe, label, { row: label.row, column }, plan, () => lines);
    });
    nameTarget(sheet, recipe, { row: 5 + facts.length, column });
    tellIn(sheet, recipe, { row: 6 + facts.length, column }, VOICE);
  });
  note(kit, sheet, 8 + facts.length, 0, "F-33 goes to the sensory panel on the 21st.");
}

/** What the retail cabinet did over a night. */
function cabinet(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Cabinet");
  put(sheet, 0, 0, "Test cabinet, logger on the middle shelf");
  const hours = ["18:00", "20:00", "22:00", "00:00", "02:00", "04:00", "06:00"];
  const { heads, rows } = smallTable(
    sheet,
    { row: 2, column: 0 },
    ["Time", "Air (°C)", "Pack core (°C)"],
    hours.map((hour) => [hour, degrees(kit, -22, -16), degrees(kit, -19, -17)]),
  );
  for (const at of [1, 2]) {
    readings(
      kit,
      heads[at]!,
      rows.map((cells) => cells[at]!),
    );
  }
  put(sheet, 10, 0, "mean");
  put(sheet, 10, 1, shown("=AVERAGE(B4:B10)", "0.0"));
  put(sheet, 10, 2, shown("=AVERAGE(C4:C10)", "0.0"));
}

function build(kit: Kit): void {
  const own = { water: "tap water", "skim milk powder": "skimmed milk powder" };
  const mades = kit.make(4).map((made) => called(hundred(made), own));
  const grids = formulas(kit, addSheet(kit.marked.book, "Formulas"), mades);
  predictions(kit, addSheet(kit.marked.book, "Expected"), grids);
  cabinet(kit);
}

/** A developer who thinks in mass fractions. */
export const fractionFiles: readonly Layout[] = [
  { name: "formula file in mass fractions, expectations on another sheet", language: "en", build },
];
