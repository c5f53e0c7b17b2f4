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
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { problems, type Problem } from "../layouts/parts";

/** Given and sought for one experiment, in a block that begins at a column. */
function block(
  kit: Kit,
  sheet: CorpusSheet,
  column: number,
  problem: Problem,
  proviso: Spot,
): void {
  const { solute, grams, waterGrams } = problem;
  let row = 4;
  const line = (label: string, content: Content, unit?: string): Spot =>
    putRow(sheet, row++, column, [label, content, unit])[1]!;
  const name = line("gelöster Stoff", solute.de);
  const mass = line("Masse des Stoffes", grams, "g");
  const water = line("Masse des Wassers", waterGrams, "g");
  const molar = line("molare Masse", shown(solute.molarMass, "0.00"), "g/mol");
  const particles = line("Teilchen je Formeleinheit", solute.particles);
  const constant = line("kryoskopische Konstante", shown(1.86, "0.00"), "K·kg/mol");
  put(sheet, row++, column, "gesucht");
  const moles = line("Stoffmenge", shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"), "mol");
  const perKilo = shown(`=${a1(moles)}/(${a1(water)}/1000)`, "0.000");
  const molality = line("Molalität", perKilo, "mol/kg");
  const law = shown(`=${a1(constant)}*${a1(molality)}*${a1(particles)}`, "0.00");
  const depression = line("Gefrierpunktserniedrigung", law, "K");
  const freezingPoint = line("Gefrierpunkt", shown(`=-${a1(depression)}`, "0.00"), "°C");
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
  });
}

/** Syrups that the groups cooked before. */
function sirups(kit: Kit, sheet: CorpusSheet, top: number): void {
  const { random, marked } = kit;
  const heads = putRow(sheet, top, 0, [
    "Läuterzucker",
    ...[
      "Wasser (g)",
      "Saccharose (g)",
      "Saccharose in g je 100 g Wasser",
      "Saccharose in Massen-%",
    ],
  ]);
  const rows = ["dünn", "leicht", "mittel", "dick"].map((kind, index) => {
    const row = top + 1 + index;
    const cells = [kind, 50 * random.whole(4, 8), 20 * random.whole(3 + 3 * index, 5 + 3 * index)];
    const [, water, sugar] = putRow(sheet, row, 0, cells) as [Spot, Spot, Spot];
    const perWater = put(sheet, row, 3, shown(`=100*${a1(sugar)}/${a1(water)}`, "0.0"));
    const mix = `(${a1(sugar)}+${a1(water)})`;
    const share = put(sheet, row, 4, shown(`=100*${a1(sugar)}/${mix}`, "0.0"));
    marked.strengths.push({ sugar, water, perWater, share });
    return [perWater, share];
  });
  [0, 1].forEach((at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[3 + at]!, fixed: [] }),
  );
}

/** Two experiments beside each other, given above, sought below. */
function projekt(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Tag 2");
  put(sheet, 0, 0, "Projektwoche „Eis ohne Maschine“, Tag 2: Rechnen vor dem Rühren");
  const { list, tolerance } = problems(kit, 2);
  const text = `Für verdünnte Lösungen gerechnet; erlaubte Abweichung der Messung: ${tolerance} K.`;
  const proviso = put(sheet, 16, 0, text);
  list.forEach((problem, index) => {
    const column = 4 * index;
    put(sheet, 2, column, `Versuch ${index + 1}`);
    put(sheet, 3, column, "gegeben");
    block(kit, sheet, column, problem, proviso);
  });
  sirups(kit, sheet, 18);
  note(kit, sheet, 24, 0, "Morgen mitbringen: Schürze, Thermometer, altes Handtuch.");
}

/** A school's project week. */
export const projektwoche: readonly Layout[] = [
  { name: "Projektwoche, gegeben und gesucht", language: "de", build: projekt },
];
