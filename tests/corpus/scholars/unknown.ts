import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems, type Place, type Said } from "../layouts/parts";
import { trueValue } from "../marks";
import { dissolved } from "../solution";
import { shares } from "./columns";
import { grid, type Lines } from "./grid";
import * as words from "./words";

const { typed, worked } = words;

/** A sugar whose name the class does not know. */
export function mystery({ random }: Kit) {
  const secret = random.pick([dissolved[0]!, dissolved[2]!]);
  const waterGrams = random.pick([100, 200, 400]);
  const perKg = secret.en === "sucrose" ? 80 : 45;
  const grams = Math.round((perKg * waterGrams * random.between(0.9, 1.1)) / 1000);
  const made = { names: ["water", secret.en], grams: [waterGrams, grams] };
  return { waterGrams, grams, drop: Number(trueValue(made, "depression", null)!.toFixed(2)) };
}

const controls = (kf: Spot): Lines => ({
  name: typed("Control", ({ solute }) => solute.en),
  molar: typed("M (g/mol)", words.molarOf),
  particles: typed("Particles", words.particlesOf),
  mass: typed("Solute (g)", ({ grams }) => grams),
  water: typed("Water (g)", ({ waterGrams }) => waterGrams),
  molality: worked(
    "m (mol/kg)",
    (at) => `${at("mass")}/${at("molar")}/${at("water")}*1000`,
    "0.000",
  ),
  depression: worked(
    "ΔTf predicted (K)",
    (at) => `${fixed(kf)}*${at("particles")}*${at("molality")}`,
    "0.00",
    { fixed: [kf] },
  ),
  freezingPoint: worked("Tf predicted (°C)", (at) => `-${at("depression")}`, "0.00"),
  measured: typed("Tf recorded (°C)", (each) => shown(words.reading(each), "0.0")),
});

/** The unknown: from its depression to its molar mass, then what it may be. */
function unknown(kit: Kit, sheet: CorpusSheet, { row, column }: Place, kf: Spot): void {
  const { waterGrams, grams, drop } = mystery(kit);
  put(sheet, row, column, "Sample X, a sugar");
  const known = words.block(
    sheet,
    { row: row + 1, column },
    {
      mass: ["X weighed out", grams, "g"],
      water: ["Water", waterGrams, "g"],
      drop: ["ΔTf recorded", shown(drop, "0.00"), "K"],
    },
  );
  const { molality } = words.block(
    sheet,
    { row: row + 4, column },
    {
      molality: ["Molality of X", shown(`=${a1(known.drop)}/${a1(kf)}`, "0.000"), "mol/kg"],
    },
  );
  const mol = `=${a1(molality)}*${a1(known.water)}/1000`;
  const { moles } = words.block(
    sheet,
    { row: row + 5, column },
    {
      moles: ["Moles of X", shown(mol, "0.0000"), "mol"],
    },
  );
  const { molar } = words.block(
    sheet,
    { row: row + 6, column },
    {
      molar: ["Molar mass of X", shown(`=${a1(known.mass)}/${a1(moles)}`, "0"), "g/mol"],
    },
  );
  putRow(sheet, row + 8, column, ["Could X be …", "Molar mass (g/mol)", "Ours is off by (%)"]);
  [dissolved[0]!, dissolved[2]!].forEach(({ en, molarMass }, at) => {
    const [, book] = putRow(sheet, row + 9 + at, column, [en, shown(molarMass, "0.00")]);
    const off = `=100*(${fixed(molar)}-${a1(book!)})/${a1(book!)}`;
    put(sheet, row + 9 + at, column + 2, shown(off, "0"));
  });
}

const TREAT: readonly Said[] = [
  { label: "Tf of the mix (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Water, everything counted (g)", states: "water", as: "typed", decimals: 0 },
  {
    label: "Water frozen at −16 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  },
];

/** A lab report: three controls, then the unknown. */
function report(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Lab report");
  const { list, tolerance } = problems(kit, 4);
  put(sheet, 0, 0, "Lab 7: finding a molar mass from a freezing point");
  const kf = putRow(sheet, 2, 0, ["Kf of water (K kg/mol)", shown(1.86, "0.00")])[1]!;
  const made = grid(kit, sheet, { row: 4, column: 0 }, controls(kf), list);
  const text = `Controls: ideal-solution prediction and real value differ by at most ${tolerance} K.`;
  const proviso = put(sheet, made.end, 0, text);
  words.markEach(kit, made, proviso, () => ({ constant: kf }));
  unknown(kit, sheet, { row: made.end + 2, column: 0 }, kf);
  note(kit, sheet, 1, 0, "Group of three, bench by the window");
  const next = addSheet(kit.marked.book, "End of term treat");
  const recipe = kit.make(1)[0]!;
  put(next, 0, 0, recipe.title);
  words.ice(kit, next, recipe, {
    ...{ row: 2, column: 0, heads: ["Component", "Mass (g)"], total: "Batch" },
    extra: shares(kit, next, 2, "Mass %"),
    ...{ said: TREAT, target: "Style", lead: "Allergen notice:" },
  });
}

/** Reports of students. */
export const reports: readonly Layout[] = [
  { name: "lab report, controls and an unknown sugar", language: "en", build: report },
];
