import { addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import type { Said } from "../layouts/parts";
import { input } from "../page";
import { grid, type Lines } from "../scholars/grid";
import { molarOf, particlesOf, reading, typed, worked } from "../scholars/words";
import { readings } from "../wanderers/worte";
import { about, markSamples, mix, samples, small, solutes, toleranceOf } from "../benches/words";

const VOICE: Voice = {
  lead: "Ask before anyone eats. In it:",
  honey: "Honey (no babies under 12 months).",
  alcohol: "Alcohol, so for the staff room only: not pregnant, not driving.",
  nuts: "Whole nuts, little brothers and sisters under 5 can choke.",
  egg: "Raw yolk, warm the mix to 71 °C or get pasteurised.",
};

const lines = (constant: Spot): Lines => ({
  given: { head: "Tube", cell: (_, __, index) => `T${index + 1}` },
  name: typed("Contents", ({ solute }) => solute.en),
  mass: typed("g in tube", ({ grams }) => grams),
  water: typed("g of water", ({ waterGrams }) => waterGrams),
  molar: typed("g per mole", molarOf),
  particles: typed("bits per unit", particlesOf),
  molality: worked(
    "mol per kg water",
    (at) => `${at("mass")}/${at("molar")}*1000/${at("water")}`,
    "0.000",
  ),
  depression: worked(
    "goes down by (K)",
    (at) => `${at("molality")}*${fixed(constant)}*${at("particles")}`,
    "0.00",
    { fixed: [constant] },
  ),
  freezingPoint: worked("theory (°C)", (at) => `-${at("depression")}`, "0.00"),
  measured: typed("crystals seen at (°C)", (each) => shown(reading(each), "0.0")),
});

/** The four buckets that the tubes stand in. */
function buckets(kit: Kit, sheet: CorpusSheet, row: number): void {
  put(sheet, row, 0, "Buckets");
  const heads = ["Bucket", "ice (g)", "rock salt (g)", "after 5 min (°C)"];
  const spots = putRow(sheet, row + 1, 0, heads);
  small(sheet, { row: row + 2, column: 0 }, [
    ["red", 900, 300],
    ["blue", 900, 270],
    ["green", 750, 250],
    ["grey", 750, 200],
  ]);
  readings(kit, sheet, spots[3]!, { count: 4, tenths: [-185, -128] });
  note(kit, sheet, row + 7, 0, "Gloves on: the buckets are cold enough to stick to wet skin.");
}

function tubes(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Cold baths day: test tubes, 6 to a rack");
  const label = { label: "freezing constant of water (K·kg/mol)", value: 1.86, format: "0.00" };
  const words = { ...label, bare: "freezing constant of water" };
  const constant = input(kit, sheet, { row: 1, column: 0 }, words);
  const list = samples(
    kit,
    solutes(
      ...["sodium chloride", "sucrose", "potassium chloride", "fructose", "ethanol"],
      "sodium bicarbonate",
    ),
    [40, 50, 80],
  );
  const made = grid(kit, sheet, { row: 3, column: 0 }, lines(constant), list);
  const text = `theory = ideal; up to ${toleranceOf(kit, list)} K off is fine for us`;
  markSamples(kit, made, list, put(sheet, made.end, 6, text), { constant });
  buckets(kit, sheet, made.end + 2);
}

const SAID: readonly Said[] = [
  { label: "slushy from", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "that is below water by", inCell: "K", states: "depression", as: "typed", decimals: 1 },
  {
    label: "water, with what is in the fruit and milk",
    inCell: "g",
    states: "water",
    as: "formula",
  },
  {
    ...{ label: "frozen part of the water at −12 °C", inCell: "%", decimals: 0 },
    ...{ states: "ice of water", as: "typed", temperatureC: -12 },
  },
];

/** What is frozen in bags in the same buckets, the parts above and the answers below. */
function bags(kit: Kit, sheet: CorpusSheet): void {
  const made = called(kit.make(1)[0]!, { salt: "table salt", sugar: "white sugar" });
  put(sheet, 0, 0, `Bag ice: ${made.title.toLowerCase()}`);
  const { recipe, end } = mix(kit, sheet, made, {
    ...{ row: 4, column: 0, heads: ["tick", "put in", "g", "brought by"], name: 1, amount: 2 },
    ...{ total: "whole bowl", above: true },
    cells: (item, grams) => [
      undefined,
      item,
      grams,
      kit.random.pick(["Mr T", "prep room", "food dept"]),
    ],
  });
  about(
    sheet,
    recipe,
    { row: end + 1, column: 1 },
    { said: SAID, target: "so it is a", voice: VOICE },
  );
  small(sheet, { row: 4, column: 5 }, [
    ["Class", "Period", "Bags"],
    ["8A", 2, 14],
    ["8C", 3, 15],
    ["8D", 5, 13],
  ]);
}

/** A teacher's day of cold baths. */
export const coldBaths: readonly Layout[] = [
  {
    ...{ name: "cold baths day, tubes, buckets and bag ice", language: "en" },
    build: (kit) => {
      tubes(kit, addSheet(kit.marked.book, "Tubes"));
      bags(kit, addSheet(kit.marked.book, "Bags"));
    },
  },
];
