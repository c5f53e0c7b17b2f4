import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { withLines, type MadeRecipe } from "../recipes";
import { ENGLISH, isWet, thermometer } from "./words";

const SAID: readonly Said[] = [
  { label: "FP °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Depression K", states: "depression", as: "typed", decimals: 1 },
  {
    label: "Frozen water at −18 °C, %",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  { label: "Dissolved, g", states: "dissolved", as: "typed", decimals: 0 },
  { label: "Sugars, % w/w", states: "sugar share", as: "typed", decimals: 1 },
];

/** What is poured first, then what is weighed out dry. */
function sorted(made: MadeRecipe): { readonly made: MadeRecipe; readonly wet: number } {
  const wet = made.lines.filter(isWet);
  const dry = made.lines.filter((each) => !isWet(each));
  return { made: withLines(made, [...wet, ...dry]), wet: wet.length };
}

interface Section {
  readonly names: Spot[];
  readonly amounts: Spot[];
  readonly sum: Spot;
  readonly end: number;
}

/** One heading with its lines and their sum. */
function section(
  kit: Kit,
  sheet: CorpusSheet,
  [row, title]: readonly [number, string],
  lines: readonly (readonly [string, number])[],
): Section {
  put(sheet, row, 0, title);
  const rows = lines.map(([name, grams], index) =>
    putRow(sheet, row + 1 + index, 1, [name, grams, "g"]),
  );
  const names = rows.map((cells) => cells[0]!);
  const amounts = rows.map((cells) => cells[1]!);
  const end = row + 1 + lines.length;
  put(sheet, end, 1, "subtotal");
  return { names, amounts, sum: sumOf(kit, sheet, { row: end, column: 2 }, amounts), end: end + 1 };
}

/** A sheet for one mix. */
function prep(kit: Kit, given: MadeRecipe, name: string): void {
  const sheet = addSheet(kit.marked.book, name);
  const { made: bare, wet } = sorted(given);
  const made = called(bare, { sugar: "caster sugar", "skim milk powder": "skimmed milk powder" });
  putRow(sheet, 0, 0, ["PREP", made.title, undefined, undefined, "Shelf life 5 days"]);
  const label = put(sheet, 1, 2, "Weight");
  const lines = made.names.map((item, index) => [item, made.grams[index]!] as const);
  const jug = section(kit, sheet, [2, "Jug"], lines.slice(0, wet));
  const scales = section(kit, sheet, [jug.end, "Scales"], lines.slice(wet));
  put(sheet, scales.end + 1, 1, "everything");
  const all = shown(`=${a1(jug.sum)}+${a1(scales.sum)}`, "0");
  const total = put(sheet, scales.end + 1, 2, all);
  kit.marked.sums.push({ spot: total, parts: [jug.sum, scales.sum] });
  const unitCells = [...jug.amounts, ...scales.amounts].map((spot) => ({ ...spot, column: 3 }));
  const recipe = markRecipe(kit, made, {
    ...{ names: [...jug.names, ...scales.names], amounts: [...jug.amounts, ...scales.amounts] },
    ...{ total, unitCells, unit: "g", amountLabel: label },
  });
  strip(sheet, recipe, { row: scales.end + 3, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: scales.end + 6, column: 1, label: "goes out" });
  tellIn(sheet, recipe, { row: scales.end + 7, column: 1 }, ENGLISH);
  note(kit, sheet, scales.end + 9, 1, "Label, date, initial. No label, no service.");
}

/** A bistro's prep, each mix poured and weighed in two sections. */
function prepList(kit: Kit): void {
  const fits = (made: MadeRecipe) => {
    const wet = made.lines.filter(isWet).length;
    return wet > 0 && wet < made.lines.length;
  };
  const mades = kit.make(3).filter(fits);
  mades.forEach((made, index) => prep(kit, made, `Ice ${index + 1}`));
  const sheet = addSheet(kit.marked.book, "Open & close");
  put(sheet, 0, 0, "Opening and closing checks, week 31");
  const next = thermometer(
    kit,
    sheet,
    { row: 2, column: 0 },
    {
      heads: ["Day", "Undercounter fridge °C", "Upright freezer °C"],
      lines: ["Tue", "Wed", "Thu", "Fri", "Sat"],
      from: [
        [1, 5],
        [-22, -18],
      ],
    },
  );
  ["Gas off", "Back door locked", "Bins out Thursday"].forEach((each, index) =>
    put(sheet, next + 1 + index, 0, each),
  );
}

/** A bistro. */
export const prepLists: readonly Layout[] = [
  { name: "bistro prep, jug and scales with subtotals", language: "en", build: prepList },
];
