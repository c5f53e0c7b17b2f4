import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import type { Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { stillMet } from "../kitchens/hand";
import type { Said } from "../layouts/parts";
import { inUnit } from "../list";
import { input } from "../page";
import { perHundred } from "../recipes";
import { grid, type Lines } from "../scholars/grid";
import { molarOf, particlesOf, typed, worked } from "../scholars/words";
import { choose, dissolved } from "../solution";
import { about, markSamples, mix, samples, small, solutes, toleranceOf } from "./words";

const VOICE: Voice = {
  lead: "Declare:",
  honey: "Honey, hence no infants under 12 months.",
  alcohol: "Alcohol in it: adults who do not drive and are not pregnant.",
  nuts: "Whole nuts (choking, under 5s).",
  egg: "Egg yolk is raw: 71 °C or pasteurised.",
};

const lines = (constant: Spot): Lines => ({
  who: { head: "Seat row", unit: "-", cell: (_, __, index) => "abcdefg"[index] },
  water: typed("m(H2O)", ({ waterGrams }) => waterGrams, "g"),
  given: worked("m(H2O)", (at) => `${at("water")}/1000`, "0.000", { unit: "kg" }),
  name: typed("Solute", ({ solute }) => solute.en, "-"),
  molar: typed("M", molarOf, "g/mol"),
  mass: typed("m(solute)", ({ grams }) => grams, "g"),
  moles: worked("n", (at) => `${at("mass")}/${at("molar")}`, "0.0000", { unit: "mol" }),
  molality: worked("b", (at) => `${at("moles")}/${at("given")}`, "0.000", { unit: "mol/kg" }),
  particles: typed("i", particlesOf, "-"),
  depression: worked(
    "ΔT_f",
    (at) => `${at("particles")}*${fixed(constant)}*${at("molality")}`,
    "0.00",
    { unit: "K", fixed: [constant] },
  ),
  freezingPoint: worked("T_f", (at) => `-${at("depression")}`, "0.00", { unit: "°C" }),
});

/** A solution for each row of seats, two of them of alcohols. */
function class4(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Problem class 4");
  put(sheet, 0, 1, "FS1102 problem class 4: freezing points of dilute solutions");
  const words = { label: "K_f(water) in K kg/mol", bare: "K_f(water)", value: 1.86 };
  const constant = input(kit, sheet, { row: 2, column: 3 }, { ...words, format: "0.00" });
  const chosen = [...choose(kit.random, 5, dissolved), ...solutes("glycerol", "ethanol")];
  const list = samples(kit, chosen, [50, 100, 150, 250]);
  const made = grid(kit, sheet, { row: 4, column: 1 }, lines(constant), list);
  const text = `Errors of the dilute law stay below ${toleranceOf(kit, list)} K over this table.`;
  markSamples(kit, made, list, put(sheet, made.end + 1, 1, text), { constant });
  note(
    kit,
    sheet,
    made.end + 3,
    1,
    "Row g first works out how many particles ethanol gives, and why.",
  );
}

const SAID: readonly Said[] = [
  { label: "T_f of the mix", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "dissolved solids per 100 g", inCell: "g", states: "dissolved", as: "typed" },
  { label: "water per 100 g", inCell: "g", states: "water", as: "typed", decimals: 1 },
  {
    ...{ label: "water turned to ice by −10 °C", inCell: "%", decimals: 0 },
    ...{ states: "ice of water", as: "typed", temperatureC: -10 },
  },
];

/** The demonstration: fractions by mass, and what the machine takes. */
function demonstration(kit: Kit, sheet: CorpusSheet): void {
  const made = stillMet(perHundred(kit.make(1)[0]!));
  put(sheet, 0, 1, `Demonstration after class 4: ${made.title.toLowerCase()}`);
  const batch = input(
    kit,
    sheet,
    { row: 2, column: 1 },
    {
      ...{
        label: "Barrel takes (g)",
        bare: "Barrel takes",
        value: kit.random.pick([600, 800, 1200]),
      },
    },
  );
  const heads = putRow(sheet, 4, 3, ["For the barrel (g)"]);
  const { recipe, end } = mix(
    kit,
    sheet,
    made,
    {
      ...{ row: 4, column: 1, heads: ["Component", "w (fraction)"], name: 0, amount: 1 },
      ...{ unit: "fraction", format: "0.000", total: "Σ" },
      cells: (item, grams) => [item, shown(inUnit(grams, "fraction"), "0.000")],
    },
    (rows, total) => {
      const weighed = rows.map(([, share]) =>
        put(sheet, share!.row, 3, shown(`=${a1(share!)}*${fixed(batch)}`, "0")),
      );
      kit.marked.formulaColumns.push({ spots: weighed, heading: heads[0]!, fixed: [batch] });
      const sum = put(sheet, total!.row, 3, shown(`=SUM(${span(weighed)})`, "0"));
      kit.marked.sums.push({ spot: sum, parts: weighed });
      return weighed;
    },
  );
  const telling = { said: SAID, target: "texture wanted", voice: VOICE };
  const next = about(sheet, recipe, { row: end + 1, column: 1 }, telling);
  small(sheet, { row: next + 1, column: 1 }, [
    ["Demonstrator", "Room"],
    ["Tuesday group", "C2.14"],
    ["Friday group", "C2.09"],
  ]);
}

/** A problem class in food science. */
export const problemClasses: readonly Layout[] = [
  {
    ...{ name: "FS1102 problem class, seven dilute solutions", language: "en" },
    build: (kit) => {
      class4(kit);
      demonstration(kit, addSheet(kit.marked.book, "Demonstration"));
    },
  },
];
