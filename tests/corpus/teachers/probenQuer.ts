import { a1, addSheet, put, shown, type Content, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { plainOf } from "../lodgers/swaps";
import { markRecipe, problems, say, sumOf, type Problem, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { reading } from "../scholars/words";
import { ofAlcohol, temperatures } from "../strollers/words";
import { markSample, sideTable, under } from "./words";

/** A quantity and its unit, which stands at the far right. */
const ROWS: readonly (readonly [string, string?])[] = [
  ["Reagenzglas"],
  ["eingewogener Stoff"],
  ["Masse des Stoffs", "g"],
  ["Masse Wasser", "g"],
  ["kryoskopische Konstante Wasser", "K·kg/mol"],
  ["molare Masse", "g/mol"],
  ["Teilchen je Formeleinheit"],
  ["Stoffmenge", "mol"],
  ["Molalität", "mol/kg"],
  ["Gefrierpunktserniedrigung", "K"],
  ["Gefrierpunkt", "°C"],
  ["Messwert im Kältebad", "°C"],
];

const TOP = 2;

/** A test tube in its column; gives the cell of its reading. */
function glas(kit: Kit, sheet: CorpusSheet, problem: Problem, index: number, proviso: Spot): Spot {
  const { solute, grams, waterGrams } = problem;
  const column = 1 + index;
  const at = (row: number, content: Content): Spot => put(sheet, TOP + row, column, content);
  at(0, ["I", "II", "III", "IV"][index]);
  const name = at(1, solute.de);
  const mass = at(2, grams);
  const water = at(3, waterGrams);
  const constant = at(4, shown(1.86, "0.00"));
  const molar = at(5, shown(solute.molarMass, "0.00"));
  const particles = at(6, solute.particles);
  const moles = at(7, shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"));
  const molality = at(8, shown(`=${a1(moles)}/(${a1(water)}/1000)`, "0.000"));
  const law = `=${a1(constant)}*${a1(molality)}*${a1(particles)}`;
  const depression = at(9, shown(law, "0.00"));
  const freezingPoint = at(10, shown(`=0-${a1(depression)}`, "0.00"));
  const given = { name, grams: mass, molar, particles, water, constant };
  markSample(kit, { ...given, moles, depression, freezingPoint, proviso });
  return at(11, shown(reading(problem), "0.0"));
}

/** How cold the school's freezer was. */
function truhe(kit: Kit, sheet: CorpusSheet): void {
  const days = ["Mo", "Di", "Mi", "Do", "Fr"];
  const lines = days.map((day) => [day, kit.random.pick([-17, -18, -18, -19, -20])]);
  const heads = sideTable(sheet, [TOP, 7], ["Tag", "Truhe, 8 Uhr (°C)"], lines);
  temperatures(kit, heads[1]!, under(heads[1]!, days.length));
}

const VOICE: Voice = {
  lead: "Achtung, enthält:",
  honey: "Honig ist drin: nichts für Kinder unter 12 Monaten.",
  alcohol: "Alkohol ist drin: nichts für Kinder und Schwangere und nichts vor dem Fahren.",
  nuts: "Ganze Nüsse sind drin: Erstickungsgefahr für Kinder unter 5 Jahren.",
  egg: "Rohes Eigelb ist drin: auf 71 °C erhitzen oder pasteurisiertes verwenden.",
};

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt der Eismasse (°C)", states: "freezing point", as: "formula" },
  { label: "also gesunken um (K)", states: "depression", as: "typed" },
  {
    label: "Wasser darin, auch aus Obst und Milch (g)",
    ...{ states: "water", as: "typed", decimals: 0 },
  },
  {
    label: "Zucker je 100 g Wasser (g)",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
  {
    label: "vom Wasser gefroren bei −18 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** The ice that goes with the lesson, for a kilogram. */
function eis(kit: Kit): void {
  const words = { Wasser: "Leitungswasser", Zucker: "Haushaltszucker", Salz: "Kochsalz" };
  const made = called(perKilogram(plainOf(kit)), words);
  const sheet = addSheet(kit.marked.book, "Eis danach");
  put(sheet, 0, 1, `${made.title}: gilt das Gesetz hier noch?`);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Menge (g)", "davon", "erledigt"],
      cells: (item, grams) => [grams, item],
      ...{ name: 1, amount: 0 },
    },
  );
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  put(sheet, end, 1, "zusammen");
  const cells = { names, amounts, amountLabel: heads[0]!, total, unit: "g" } as const;
  const recipe = markRecipe(kit, made, cells);
  const said = [...SAID, ...ofAlcohol(made, "reiner Alkohol darin (g)")];
  const next = say(sheet, recipe, { row: 3, column: 4 }, said);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Ziel" });
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, VOICE);
}

/** Four test tubes beside each other, the units at the far right. */
function probenQuer(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Reagenzgläser");
  put(sheet, 0, 0, "Schülerversuch 12: vier Lösungen im Kältebad");
  ROWS.forEach(([label, unit], index) => {
    put(sheet, TOP + index, 0, label);
    if (unit !== undefined) put(sheet, TOP + index, 5, unit);
  });
  const { list, tolerance } = problems(kit, 4);
  const text = `Als ideal verdünnt gerechnet, Fehler unter ${tolerance} K.`;
  const proviso = put(sheet, TOP + 13, 0, text);
  const read = list.map((problem, index) => glas(kit, sheet, problem, index, proviso));
  temperatures(kit, { ...read[0]!, column: 0 }, read);
  truhe(kit, sheet);
  note(kit, sheet, TOP + 14, 0, "Kältebad: Eis und Salz im Verhältnis 3 zu 1, gut rühren.");
  eis(kit);
}

/** An experiment of the pupils. */
export const probenQuerSheets: readonly Layout[] = [
  { name: "Schülerversuch, vier Reagenzgläser quer", language: "de", build: probenQuer },
];
