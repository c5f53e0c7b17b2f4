import {
  a1,
  addSheet,
  put,
  putRow,
  shown,
  type Content,
  type CorpusSheet,
  type Spot,
} from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { markRecipe, problems, say, sumOf, type Problem, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { aside } from "./words";

const VOICE: Voice = {
  lead: "Kennzeichnung:",
  honey: "Honig: nicht für Kinder unter 12 Monaten.",
  alcohol: "Alkohol: nicht für Kinder, Schwangere und Fahrer.",
  nuts: "Ganze Nüsse: Erstickungsgefahr bei Kindern unter 5 Jahren.",
  egg: "Rohes Eigelb: auf 71 °C zur Rose abziehen oder pasteurisiertes nehmen.",
};

/** One line of a sum: its letter, the number, the unit, in words. */
function step(sheet: CorpusSheet, row: number, cells: readonly [string, Content, Content, string]) {
  return putRow(sheet, row, 0, cells)[1]!;
}

/** What is given of one solution, and what is asked for. */
function task(kit: Kit, sheet: CorpusSheet, given: Problem, top: number, index: number) {
  const { solute, waterGrams, grams } = given;
  put(sheet, top, 0, `Ansatz ${"ABC"[index]}`);
  const at = (down: number, ...cells: [string, Content, Content, string]): Spot =>
    step(sheet, top + down, cells);
  const name = put(sheet, top, 1, solute.de);
  const mass = at(1, "m", grams, "g", "Einwaage");
  const water = at(2, "m(W)", waterGrams, "g", "Wasser im Becherglas");
  const molar = at(3, "M", shown(solute.molarMass, "0.00"), "g/mol", "molare Masse");
  const particles = at(4, "z", solute.particles, undefined, "Teilchen aus einer Formeleinheit");
  const constant = at(5, "Kf", shown(1.86, "0.00"), "K·kg/mol", "kryoskopische Konstante, Wasser");
  const moles = at(6, "n", shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"), "mol", "Stoffmenge");
  const molal = `=1000*${a1(moles)}/${a1(water)}`;
  const molality = at(7, "b", shown(molal, "0.000"), "mol/kg", "Molalität");
  const law = `=${a1(constant)}*${a1(particles)}*${a1(molality)}`;
  const depression = at(8, "ΔT", shown(law, "0.00"), "K", "Gefrierpunkt sinkt um");
  const below = shown(`=-${a1(depression)}`, "0.00");
  const freezingPoint = at(9, "T", below, "°C", "Gefrierpunkt der Lösung");
  return (proviso: Spot) =>
    kit.marked.solutions.push({
      ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
      ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
    });
}

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt der Masse", inCell: "°C", states: "freezing point", as: "formula" },
  {
    ...{ label: "liegt unter 0 °C um", inCell: "K" },
    ...{ states: "depression", as: "typed", decimals: 1 },
  },
  {
    ...{ label: "Wasser in 100 g Masse", inCell: "g" },
    ...{ states: "water", as: "typed", decimals: 1 },
  },
  {
    label: "Zucker auf 100 g Wasser",
    ...{ inCell: "g", states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
  {
    label: "vom Wasser gefroren, Froster −18 °C",
    ...{ inCell: "%", states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** The ice that is frozen in the afternoon, in per cent, right of the sums. */
function practice(kit: Kit, sheet: CorpusSheet): void {
  const own = { Zucker: "Kristallzucker", Wasser: "Leitungswasser", Himbeeren: "Himbeeren TK" };
  const made = called(largestFirst(kit.make(1)[0]!), own);
  put(sheet, 2, 5, `Fachpraxis am Nachmittag: ${made.title}`);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 5 },
    { heads: ["Zutat", "M.-% der Masse"], cells: (item, share) => [item, shown(share, "0.0")] },
  );
  const total = sumOf(kit, sheet, { row: end, column: 6 }, amounts, "0.0");
  put(sheet, end, 5, "Kontrolle");
  const recipe = markRecipe(kit, made, {
    names,
    amounts,
    unit: "%",
    amountLabel: heads[1]!,
    total,
  });
  kit.marked.numberColumns.push({ spots: amounts, heading: heads[1]!, total, kind: "per cent" });
  const next = say(sheet, recipe, { row: end + 2, column: 5 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Soll werden" });
  tellIn(sheet, recipe, { row: next + 1, column: 5 }, VOICE);
}

/** Three sums below each other, the practice beside them. */
function schule(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "LF 7 Frosten");
  putRow(sheet, 0, 0, ["KO 11b", "Lernfeld 7: Warum gefriert Fruchteismasse erst unter null?"]);
  const { list, tolerance } = problems(kit, 3);
  const marks = list.map((each, index) => task(kit, sheet, each, 2 + 11 * index, index));
  const words = `Formel für ideale Lösungen; hier auf ${tolerance} K genau.`;
  const proviso = put(sheet, 35, 0, words);
  marks.forEach((markIt) => markIt(proviso));
  practice(kit, sheet);
  note(kit, sheet, 36, 0, "Taschenrechner erlaubt, Handy bleibt im Spind.");
  aside(
    sheet,
    { row: 24, column: 5 },
    ["Spüldienst", "Gruppe"],
    [
      ...[
        ["KW 12", "Blech 1"],
        ["KW 13", "Blech 2"],
        ["KW 14", "Blech 3"],
      ],
    ],
  );
}

/** A vocational school for confectioners. */
export const konditorschulen: readonly Layout[] = [
  { name: "Konditorschule, drei Ansätze untereinander", language: "de", build: schule },
];
