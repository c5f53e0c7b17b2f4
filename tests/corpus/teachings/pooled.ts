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
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, strip } from "../kitchens/hand";
import { freezesAt } from "../layouts/parts";
import { inUnit } from "../list";
import { choose, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { upTo, temperatures } from "../strollers/words";
import { block, markFormulas, markWorked, table, voice } from "./words";

const GROUPS = ["Mon AM 1", "Mon AM 2", "Mon PM 1", "Mon PM 2", "Tue AM 1", "Tue AM 2"];

const HEADS = [
  ...["Group", "m(solute)/g", "m(water)/g", "run 1/°C", "run 2/°C", "mean/°C"],
  ...["n/mol", "b/mol kg⁻¹", "ΔTf calc./K", "Tf calc./°C", "mean − calc./K"],
];

interface Bench {
  readonly solute: Dissolved;
  readonly name: Spot;
  readonly molar: Spot;
  readonly particles: Spot;
  readonly constant: Spot;
}

/** What holds for all groups. */
function header(kit: Kit, sheet: CorpusSheet): Bench {
  const solute = choose(kit.random, 1)[0]!;
  put(sheet, 0, 0, "Expt 4 Cryoscopy: pooled class data");
  const [name, molar, particles, constant] = table(sheet, { row: 2, column: 0 }, [
    ["Solute", solute.en],
    ["Molar mass, g/mol", shown(solute.molarMass, "0.00")],
    ["van ’t Hoff factor i", solute.particles],
    ["Kf(H2O), K kg/mol", shown(1.86, "0.00")],
  ]).map(([, value]) => value!);
  return { solute, name: name!, molar: molar!, particles: particles!, constant: constant! };
}

/** One group's runs and what they should have read; gives the cells and how far the law is off. */
function groupRow(kit: Kit, sheet: CorpusSheet, index: number, bench: Bench) {
  const { random } = kit;
  const { solute, molar, particles, constant } = bench;
  const row = 8 + index;
  const waterGrams = random.pick([75, 100, 150]);
  const grams = gramsOf(random, solute, waterGrams);
  const real = freezesAt(["water", solute.en], [waterGrams, grams]);
  const second = Number((real + random.pick([-0.1, 0, 0])).toFixed(1));
  const runs = [shown(real, "0.0"), shown(second, "0.0")];
  const cells = putRow(sheet, row, 0, [GROUPS[index], grams, waterGrams, ...runs]);
  const [, mass, water, one, two] = cells as [Spot, Spot, Spot, Spot, Spot];
  const formula = (column: number, content: string, format: string) =>
    put(sheet, row, column, shown(`=${content}`, format));
  const mean = formula(5, `AVERAGE(${span([one, two])})`, "0.00");
  const moles = formula(6, `${a1(mass)}/${fixed(molar)}`, "0.0000");
  const molal = formula(7, `${a1(moles)}/${a1(water)}*1000`, "0.000");
  const law = `${fixed(particles)}*${fixed(constant)}*${a1(molal)}`;
  const depression = formula(8, law, "0.00");
  const point = formula(9, `-${a1(depression)}`, "0.00");
  const rest = formula(10, `${a1(mean)}-${a1(point)}`, "0.00");
  const worked = { ...bench, mass, water, moles, depression, point };
  const gap = idealGap([solute], [grams], waterGrams);
  return { worked, gap, cells: [...cells, mean, moles, molal, depression, point, rest] };
}

/** All groups' runs on one page. */
function pool(kit: Kit, sheet: CorpusSheet): void {
  const bench = header(kit, sheet);
  const heads = putRow(sheet, 7, 0, HEADS);
  const list = GROUPS.map((_, index) => groupRow(kit, sheet, index, bench));
  const column = (at: number) => list.map(({ cells }) => cells[at]!);
  const { molar, particles, constant } = bench;
  [3, 4].forEach((at) => temperatures(kit, heads[at]!, column(at)));
  const reads = [[], [molar], [], [particles, constant], [], []];
  reads.forEach((cells, at) => markFormulas(kit, heads[5 + at]!, column(5 + at), cells));
  const end = 8 + list.length;
  put(sheet, end, 0, "class mean of the last column");
  put(sheet, end, 10, shown(`=AVERAGE(${span(column(10))})`, "0.00"));
  const gap = tolerated(Math.max(...list.map((each) => each.gap)));
  const text = `Calculated for an ideal solution, good to ${gap} K at these molalities.`;
  const proviso = put(sheet, end + 2, 0, text);
  list.forEach(({ worked }) => markWorked(kit, worked, proviso));
  note(
    kit,
    sheet,
    end + 4,
    0,
    "Tue AM 2 restarted once after supercooling; first attempt left out.",
  );
}

const VOICE = voice(
  "Allergens present:",
  "Contains honey, unsuitable below 12 months.",
  "Contains alcohol: not for children, in pregnancy or before driving.",
  "Whole nuts: choking hazard for the under-fives.",
  "Raw yolk: must reach 71 °C unless pasteurised.",
);

/** What the demonstrator freezes at the end. */
function demonstration(kit: Kit, sheet: CorpusSheet): void {
  const made = called(upTo(kit.make(1)[0]!, 3000), { water: "tap water", salt: "table salt" });
  put(sheet, 0, 0, `Demonstration mix: ${made.title}`);
  const { recipe, end } = block(
    kit,
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads: ["Component", "m/kg", "lot"],
      cells: (item, grams, index) => [item, shown(inUnit(grams, "kg"), "0.000"), `F${index + 31}`],
      ...{ name: 0, amount: 1, unit: "kg", format: "0.000", word: "total charge", isOver: true },
    },
  );
  strip(sheet, recipe, { row: 2, column: 4 }, [
    { label: "onset of freezing, °C", states: "freezing point", as: "formula", format: "0.00" },
    { label: "dissolved solids, g", states: "dissolved", as: "typed", decimals: 0 },
    {
      label: "ice at −10 °C, % of mix",
      ...{ states: "ice of mix", as: "typed", temperatureC: -10, decimals: 0 },
    },
  ]);
  nameTarget(sheet, recipe, { row: 5, column: 4, label: "served" });
  tellIn(sheet, recipe, { row: end + 1, column: 0 }, VOICE);
  const rows = table(sheet, { row: 7, column: 4 }, [
    ["min in freezer", "probe/°C"],
    ...[10, 20, 40, 80].map((minutes, index) => [minutes, [11, 4, -1, -6][index]]),
  ]);
  temperatures(kit, rows[0]![1]!, columnOf(rows.slice(1), 1));
}

/** The pooled results of a practical and the ice after it. */
function pooled(kit: Kit): void {
  pool(kit, addSheet(kit.marked.book, "Pool"));
  demonstration(kit, addSheet(kit.marked.book, "Demo"));
}

/** A university's first-year practical. */
export const pooledResults: readonly Layout[] = [
  { name: "first-year practical, six groups pooled and a demo mix", language: "en", build: pooled },
];
