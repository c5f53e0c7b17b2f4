import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import { resultAt } from "../results";
import { grid, type Lines } from "../scholars/grid";
import { molarOf, particlesOf, typed, worked } from "../scholars/words";
import { itemsOf } from "../strollers/words";
import { markSamples, samples, small, solutes, toleranceOf } from "../benches/words";

const VOICE: Voice = {
  lead: "contains",
  honey: "honey, none for under 12 months",
  alcohol: "has alcohol: over 18s, not pregnant, not driving home",
  nuts: "whole nuts, choking risk under 5",
  egg: "raw yolk, take to 71 °C or use pasteurised",
};

/** How much ethanol the bottles on the table bring. */
function bottles(kit: Kit, sheet: CorpusSheet, row: number): Spot {
  const heads = putRow(sheet, row, 0, ["On the table", "% vol", "poured (g)", "ethanol in it (g)"]);
  const list = [
    ["dry gin", 400],
    ["orange liqueur", 300],
    ["ruby port", 195],
  ] as const;
  const rows = list.map(([bottle, tenths], index) => {
    const at = row + 1 + index;
    const [, abv, grams] = putRow(sheet, at, 0, [
      ...[bottle, shown(tenths / 10, "0.0"), 10 * kit.random.whole(4, 12)],
    ]) as [Spot, Spot, Spot];
    const content = `=${a1(grams)}*RIME.ABVTOMASSFRACTION(${a1(abv)})`;
    const alcohol = put(sheet, at, 3, shown(content, "0.0"));
    kit.marked.alcohols.push({ grams, abv, alcohol });
    return [grams, alcohol];
  });
  const place = (column: number) => ({ row: row + 4, column });
  kit.marked.formulaColumns.push({ spots: columnOf(rows, 1), heading: heads[3]!, fixed: [] });
  put(sheet, row + 4, 0, "both columns added up");
  sumOf(kit, sheet, place(2), columnOf(rows, 0));
  sumOf(kit, sheet, place(3), columnOf(rows, 1), "0.0");
  return put(
    sheet,
    row + 5,
    0,
    "Tastings with alcohol: over 18s, not when pregnant, not before driving.",
  );
}

const lines = (constant: Spot): Lines => ({
  name: typed("Stirred in", ({ solute }) => solute.en),
  particles: typed("Particles", particlesOf),
  molar: typed("g/mol", molarOf),
  mass: typed("Spooned in (g)", ({ grams }) => grams),
  water: typed("Water in the glass (g)", ({ waterGrams }) => waterGrams),
  moles: worked("Moles", (at) => `${at("mass")}/${at("molar")}`, "0.000"),
  depression: worked(
    "Drop in K",
    (at) => `${fixed(constant)}*(${at("moles")}/${at("water")}*1000)*${at("particles")}`,
    "0.00",
    { fixed: [constant] },
  ),
  freezingPoint: worked("Freezes, °C", (at) => `0-${at("depression")}`, "0.00"),
});

function hour(kit: Kit, sheet: CorpusSheet): Spot {
  put(sheet, 0, 0, "First hour: glasses of water with something in it");
  const list = samples(
    kit,
    solutes("ethanol", "sucrose", "glycerol", "glucose monohydrate", "sodium chloride"),
    [150, 250],
  );
  put(sheet, 2, 6, "K of water (K·kg/mol)");
  const constant = put(sheet, 2, 7, shown(1.86, "0.00"));
  const made = grid(kit, sheet, { row: 4, column: 0 }, lines(constant), list);
  const text = `All by the ideal law (thin solutions); the glasses keep to it within ${toleranceOf(kit, list)} K.`;
  markSamples(kit, made, list, put(sheet, made.end + 1, 0, text), { constant });
  return bottles(kit, sheet, made.end + 3);
}

const WORDS = ["freezes from (°C)", "drop (K)", "ice of all at −14 °C (%)"] as const;

/** Three ices, one a row, the ingredients over the columns. */
function tasting(kit: Kit, sheet: CorpusSheet): void {
  const mades = kit.make(3);
  put(sheet, 0, 0, "Second hour: three to churn and taste (grams)");
  const amountLabel = put(sheet, 2, 1, "g each");
  const items = putRow(sheet, 3, 1, itemsOf(mades));
  const right = 1 + items.length;
  putRow(sheet, 3, 0, ["Ice"]);
  const heads = putRow(sheet, 3, right, ["bowl", ...WORDS, "meant as", "say aloud"]);
  mades.forEach((made, index) => {
    const row = 4 + index;
    put(sheet, row, 0, made.title);
    const plan = { items, unit: "g", format: "0", amountLabel } as const;
    const recipe = alongRow(kit, sheet, made, row, plan);
    const at = (step: number) => ({ row, column: right + step });
    const here = () => recipe.lines;
    const point = { states: "freezing point", as: "typed", decimals: 1 } as const;
    resultAt(sheet, recipe, heads[1]!, at(1), point);
    resultAt(sheet, recipe, heads[2]!, at(2), { states: "depression", as: "formula" }, here);
    const ice = { states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 } as const;
    resultAt(sheet, recipe, heads[3]!, at(3), ice);
    nameTarget(sheet, recipe, at(4));
    tellIn(sheet, recipe, at(5), VOICE);
  });
  note(kit, sheet, 8, 0, "Churn the one with the lowest freezing point last.");
  small(sheet, { row: 10, column: 0 }, [
    ["Evening", "Booked", "Paid"],
    ["12 March", 14, 12],
    ["19 March", 11, 11],
    ["26 March", 9, 7],
  ]);
}

/** An evening course for grown-ups. */
export const spiritEvenings: readonly Layout[] = [
  {
    ...{ name: "evening course, glasses, bottles and three ices", language: "en" },
    build: (kit) => {
      const warning = hour(kit, addSheet(kit.marked.book, "Hour 1"));
      tasting(kit, addSheet(kit.marked.book, "Hour 2"));
      for (const { made, flags } of kit.marked.recipes) if (made.flagged) flags.push(warning);
    },
  },
];
