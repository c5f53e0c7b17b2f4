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
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf, stillMet } from "../kitchens/hand";
import { freezesAt, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { perHundred, type MadeRecipe } from "../recipes";
import { listed } from "../newcomers/words";
import { dissolved, idealGap, tolerated } from "../solution";
import { cooling, measured, readings, tableAt, worked } from "./words";

const VOICE: Voice = {
  lead: "Allergy list:",
  honey: "Honey inside, so not for infants under 12 months.",
  alcohol: "Alcohol inside: adults only, not in pregnancy, not before driving.",
  nuts: "Whole nuts, a choking risk under 5 years.",
  egg: "Raw egg yolk: bring to 71 °C or use pasteurised yolk.",
};

const HEADS = [
  ...["Tube", "Solute", "Salt added / g", "Water / g", "M / g mol⁻¹", "ions per unit", "moles"],
  ...["ΔT / K", "Tf theory / °C", "Tf probe / °C", "probe − theory / K"],
];

const SALT = dissolved[1]!;

interface Bench {
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** One tube of brine; gives its worked cells and the probe's. */
function tube(kit: Kit, sheet: CorpusSheet, row: number, grams: number, bench: Bench): Spot[] {
  const { constant, proviso } = bench;
  const waterGrams = 50;
  const [, name, mass, water, molar, particles] = putRow(sheet, row, 0, [
    ...[`T${row - 4}`, SALT.en, shown(grams, "0.00"), waterGrams],
    ...[shown(SALT.molarMass, "0.00"), SALT.particles],
  ]) as [Spot, Spot, Spot, Spot, Spot, Spot];
  const moles = put(sheet, row, 6, shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"));
  const law = `=${fixed(constant)}*${a1(particles)}*${a1(moles)}/${a1(water)}*1000`;
  const depression = put(sheet, row, 7, shown(law, "0.00"));
  const freezingPoint = put(sheet, row, 8, shown(`=-${a1(depression)}`, "0.00"));
  const real = measured({ solute: SALT, waterGrams, grams });
  const probe = put(sheet, row, 9, shown(real, "0.0"));
  const gap = put(sheet, row, 10, shown(`=${a1(probe)}-${a1(freezingPoint)}`, "0.00"));
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
  });
  return [moles, depression, freezingPoint, gap, probe];
}

/** Salt in steps, one tube a row. */
function tubes(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Y12 physics, practical 7: does the drop double when the salt doubles?");
  const first = kit.random.pick([0.2, 0.22, 0.25]);
  const weighed = [1, 1.5, 2, 3].map((factor) => Number((first * factor).toFixed(2)));
  const gaps = weighed.map((grams) => idealGap([SALT], [grams], 50));
  const constant = putRow(sheet, 2, 0, [
    "Kf, water / K kg mol⁻¹",
    undefined,
    shown(1.86, "0.00"),
  ])[2]!;
  const gap = tolerated(Math.max(...gaps));
  const proviso = put(sheet, 10, 0, `Theory = ideal solution; the probe is within ${gap} K of it.`);
  const heads = putRow(sheet, 4, 0, HEADS);
  const rows = weighed.map((grams, at) => tube(kit, sheet, 5 + at, grams, { constant, proviso }));
  [[], [constant], [], []].forEach((cells, at) => {
    worked(kit, heads[[6, 7, 8, 10][at]!]!, columnOf(rows, at), cells);
  });
  readings(kit, heads[9]!, columnOf(rows, 4));
}

/** The lolly's core and shell against the clock, and how fast the core falls. */
function logger(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): void {
  const core = cooling(19, freezesAt(made.names, made.grams), 10);
  const shell = core.map((each) => Number((each - kit.random.whole(11, 24) / 10).toFixed(1)));
  const [heads, ...cells] = tableAt(sheet, { row: 2, column: 6 }, [
    ["time / min", "core / °C", "shell / °C", "core falls / K per min"],
    ...core.map((each, at) => [5 * at, shown(each, "0.0"), shown(shell[at]!, "0.0")]),
  ]);
  const [time, inside, outside] = [0, 1, 2].map((at) => columnOf(cells, at)) as [
    ...[Spot[], Spot[], Spot[]],
  ];
  const rates = inside.slice(1).map((spot, at) => {
    const [before, from, to] = [inside[at]!, time[at]!, time[at + 1]!].map(a1);
    return put(sheet, spot.row, 9, shown(`=(${before}-${a1(spot)})/(${to!}-${from!})`, "0.00"));
  });
  worked(kit, heads![3]!, rates);
  readings(kit, heads![1]!, inside);
  readings(kit, heads![2]!, outside);
  const last = inside.at(-1)!.row + 1;
  put(sheet, last, 6, "coldest");
  put(sheet, last, 7, shown(`=MIN(${span(inside)})`, "0.0"));
}

const SAID: readonly Said[] = [
  { label: "Tf of the mix / °C", states: "freezing point", as: "formula" },
  { label: "ΔT against water / K", states: "depression", as: "typed" },
  { label: "water in 100 g / g", states: "water", as: "typed", decimals: 1 },
  {
    ...{ label: "% of that water solid at −18 °C", states: "ice of water" },
    ...{ as: "formula", format: "0", temperatureC: -18 },
  },
];

/** The mix in the mould, per hundred grams, its answers over it. */
function mould(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): void {
  put(sheet, 0, 0, `Demo mould: ${made.title}`);
  const list = listed(
    sheet,
    made,
    { row: 10, column: 0 },
    {
      heads: ["what", "% by mass", "supplied by"],
      cells: (item, grams) => [item, grams, kit.random.pick(["prep room", "canteen", "me"])],
    },
  );
  const { names, amounts, heads, end } = list;
  put(sheet, end, 0, "all");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const amountLabel = heads[1]!;
  const recipe = markRecipe(kit, made, { names, amounts, total, amountLabel, unit: "%" });
  const freezer = putRow(sheet, 2, 0, ["School freezer / °C", -18]) as [Spot, Spot];
  kit.marked.inputs.push({ label: freezer[0], value: freezer[1], bare: "School freezer" });
  const facts = SAID.map((each) =>
    each.states === "ice of water"
      ? { ...each, label: "% of that water solid in the freezer", temperature: freezer[1] }
      : each,
  );
  say(sheet, recipe, { row: 3, column: 0 }, facts);
  nameTarget(sheet, recipe, { row: 7, column: 0, label: "meant to be" });
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, VOICE);
  note(kit, sheet, end + 4, 0, "Logger 3 needs a new battery before Thursday.");
}

/** Brine in tubes, then a lolly with two thermocouples. */
function practical(kit: Kit): void {
  tubes(kit, addSheet(kit.marked.book, "Brine"));
  const sheet = addSheet(kit.marked.book, "Lolly log");
  const made = stillMet(perHundred(kit.make(1)[0]!));
  mould(kit, sheet, made);
  logger(kit, sheet, made);
}

/** A physics practical. */
export const brineTubes: readonly Layout[] = [
  { name: "physics practical, brine tubes and a logged lolly", language: "en", build: practical },
];
