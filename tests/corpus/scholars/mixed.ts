import { a1, addSheet, put, shown, type CorpusSheet } from "../book";
import type { Kit, Layout } from "../kit";
import type { Place, Said } from "../layouts/parts";
import { grid, type Lines } from "./grid";
import { markMix, mixFor, under } from "./mixture";
import * as words from "./words";

const { typed, worked } = words;

const ENGLISH: Lines = {
  mass: typed("Grams used", ({ grams }) => grams),
  name: typed("Solute", ({ solute }) => solute.en),
  molar: typed("Molar mass, g/mol", words.molarOf),
  counted: worked("Moles", (at) => `${at("mass")}/${at("molar")}`, "0.0000"),
  particles: typed("Splits into", words.particlesOf),
  moles: worked("Moles of particles", (at) => `${at("counted")}*${at("particles")}`, "0.0000"),
};

const SYRUP: readonly Said[] = [
  { label: "Ices up from, °C", states: "freezing point", as: "formula" },
  { label: "Sugars, g to 100 g water", states: "sugar per 100 g water", as: "typed" },
  { label: "Sugars, % of the whole", states: "sugar share", as: "typed" },
];

/** Sugar water of the tutor's table, its strength both ways. */
function strengths({ marked, random }: Kit, sheet: CorpusSheet, { row, column }: Place): void {
  ["Sugar, g", "Water, g", "g sugar / 100 g water", "% sugar by mass"].forEach((head, at) =>
    put(sheet, row, column + at, head),
  );
  for (let at = row + 1; at < row + 4; at += 1) {
    const [sweet, wet] = [5 * random.whole(10, 30), random.pick([250, 300, 400])];
    const sugar = put(sheet, at, column, sweet);
    const water = put(sheet, at, column + 1, wet);
    const per = (whole: number) => shown(Number(((100 * sweet) / whole).toFixed(1)), "0.0");
    const perWater = put(sheet, at, column + 2, per(wet));
    const share = put(sheet, at, column + 3, per(sweet + wet));
    marked.strengths.push({ sugar, water, perWater, share });
  }
}

/** Four solutes in one water, summed up, and the sorbet base that follows. */
function tutor(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Tutorial 4");
  const { list, waterGrams, tolerance } = mixFor(kit, 4);
  put(sheet, 0, 0, "Tutorial 4: everything in one pan");
  const made = grid(kit, sheet, { row: 2, column: 0 }, ENGLISH, list);
  put(sheet, made.end, 1, "together");
  under(kit, sheet, made.spots("mass"));
  const moles = under(kit, sheet, made.spots("moles"), "0.0000");
  const { water, constant } = words.block(
    sheet,
    { row: made.end + 2, column: 1 },
    {
      water: ["Water in the pan, g", waterGrams],
      constant: ["Kf, K kg/mol", shown(1.86, "0.00")],
    },
  );
  const law = `=${a1(constant)}*${a1(moles)}*1000/${a1(water)}`;
  const { depression } = words.block(
    sheet,
    { row: made.end + 4, column: 1 },
    {
      depression: ["Freezing point goes down by, K", shown(law, "0.00")],
    },
  );
  const { freezingPoint } = words.block(
    sheet,
    { row: made.end + 5, column: 1 },
    {
      freezingPoint: ["Freezing point of the pan, °C", shown(`=-${a1(depression)}`, "0.00")],
    },
  );
  const text = `Worked as an ideal solution: trust the answer to ${tolerance} K.`;
  const proviso = put(sheet, made.end + 6, 1, text);
  markMix(kit, made, { water, constant, depression, freezingPoint, proviso });
  strengths(kit, sheet, { row: 2, column: 7 });
  const mix = words.shortMix(kit, "water", ["Sorbet base", "Sorbetansatz"]);
  words.ice(kit, sheet, mix, {
    ...{ row: made.end + 9, column: 1, heads: ["Sorbet base", "Grams"], total: "Base" },
    ...{ said: SYRUP, target: "Should come out as", lead: "Contains" },
  });
}

/** Sheets of a tutor. */
export const tutorSheets: readonly Layout[] = [
  { name: "tutorial, all solutes in one pan", language: "en", build: tutor },
];
