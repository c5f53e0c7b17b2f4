import { a1, addSheet, fixed, put, putRow, shown, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { largestFirst } from "../kitchens/hand";
import { say } from "../layouts/parts";
import { input } from "../page";
import { grid, type Lines } from "../scholars/grid";
import { molarOf, particlesOf, reading, typed, worked } from "../scholars/words";
import { markUsual, others, problemsOf, usual, weighed } from "./words";

const VOICE: Voice = {
  lead: "Kennzeichnung:",
  honey: "Honig enthalten, ungeeignet für Kinder unter 12 Monaten.",
  alcohol: "Alkohol enthalten, ungeeignet für Kinder, Schwangere, Autofahrende.",
  nuts: "Ganze Nüsse enthalten, Erstickungsgefahr unter 5 Jahren.",
  egg: "Rohes Eigelb: Mix auf 71 °C erhitzen oder pasteurisiert verwenden.",
};

const lines = (constant: Spot): Lines => ({
  label: { head: "Probe", unit: "Nr.", cell: (_, __, index) => `P${index + 1}` },
  name: typed("gelöster Stoff", ({ solute }) => solute.de, "–"),
  particles: typed("i", particlesOf, "–"),
  molar: typed("M", molarOf, "g/mol"),
  water: typed("Wasser", ({ waterGrams }) => waterGrams, "g"),
  mass: typed("Einwaage", ({ grams }) => grams, "g"),
  molality: worked(
    "Molalität",
    (at) => `1000*${at("mass")}/(${at("molar")}*${at("water")})`,
    "0.000",
    { unit: "mol/kg" },
  ),
  depression: worked(
    "ΔT theor.",
    (at) => `${at("particles")}*${fixed(constant)}*${at("molality")}`,
    "0.00",
    { unit: "K", fixed: [constant] },
  ),
  freezingPoint: worked("T theor.", (at) => `-${at("depression")}`, "0.00", { unit: "°C" }),
  first: typed("1. Messung", (each) => shown(reading(each), "0.0"), "°C"),
  second: typed(
    "2. Messung",
    (each) => shown(Number((reading(each) - 0.1).toFixed(1)), "0.0"),
    "°C",
  ),
  difference: worked(
    "Mittel minus Theorie",
    (at) => `(${at("first")}+${at("second")})/2-${at("freezingPoint")}`,
    "0.00",
    { unit: "K" },
  ),
});

/** Das Eis nach dem Praktikum, in Prozent. */
function afterwards(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eisversuch");
  const made = largestFirst(kit.make(1)[0]!);
  putRow(sheet, 0, 0, ["Eisversuch", undefined, made.title]);
  const { recipe, end, amounts } = weighed(
    kit,
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Komponente", "Massen-%", "Einwaage [g]"],
      cells: (name, grams) => [name, shown(grams, "0.0")],
      ...{ name: 0, amount: 1, unit: "%", total: "gesamt", format: "0.0", also: 2 },
    },
  );
  const words = { label: "Ansatz [g]", bare: "Ansatz", value: kit.random.pick([600, 800, 1200]) };
  const batch = input(kit, sheet, { row: 0, column: 4 }, words);
  const spots = amounts.map((spot) =>
    put(sheet, spot.row, 2, shown(`=${a1(spot)}*${fixed(batch)}/100`, "0.0")),
  );
  const heading = { sheet: sheet.name, row: 2, column: 2 };
  kit.marked.formulaColumns.push({ spots, heading, fixed: [batch] });
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, [
    { label: "T Gefrierbeginn [°C]", states: "freezing point", as: "formula" },
    { label: "Gefrierpunktserniedrigung [K]", states: "depression", as: "typed" },
    { label: "Wasser in 100 g Mix [g]", states: "water", as: "typed", decimals: 1 },
    {
      ...{ label: "ausgefrorenes Wasser bei −18 °C [% des Wassers]", states: "ice of water" },
      ...{ as: "typed", temperatureC: -18 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Zielvorgabe" });
  tellIn(sheet, recipe, { row: next + 2, column: 0 }, VOICE);
}

/** Messreihe eines Praktikums, jede Probe doppelt gemessen. */
function kryoskopie(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "V7 Kryoskopie");
  put(sheet, 0, 0, "Versuch 7: Kryoskopie von Zuckern, Zuckeralkoholen und Salzen");
  putRow(sheet, 1, 0, ["Betreuung", "Labor 2.14", undefined, "Abgabe", "in zwei Wochen"]);
  const solutes = [
    ...["sucrose", "fructose"].map(usual),
    ...[others.sorbitol, others.xylitol, others.glycerol, others.ethanol],
    ...[usual("potassium chloride"), usual("sodium chloride")],
  ];
  const { list, tolerance } = problemsOf(kit, solutes, [50, 100, 200]);
  const [, constant] = putRow(sheet, 3, 0, ["Kf (H₂O)", shown(1.86, "0.00"), "K·kg/mol"]);
  const table = grid(kit, sheet, { row: 5, column: 0 }, lines(constant!), list);
  const text = `Annahme: ideal verdünnte Lösung, im Messbereich auf ${tolerance} K zutreffend.`;
  const proviso = put(sheet, table.end + 1, 0, text);
  markUsual(kit, table, list, proviso, { constant: constant! });
  note(kit, sheet, table.end + 2, 0, "Unterkühlung abwarten, erst danach ablesen!");
  afterwards(kit);
}

/** Ein Praktikum der Lebensmittelchemie. */
export const kryoskopien: readonly Layout[] = [
  { name: "Praktikum Kryoskopie, Doppelmessung", language: "de", build: kryoskopie },
];
