import { a1, addSheet, fixed, put, putRow, shown, span, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems } from "../layouts/parts";
import { input } from "../page";
import { choose, gramsOf, idealGap, tolerated } from "../solution";
import { columnOf } from "./hand";

/** Several solutes in one solution, their particles added up; water, constant and answer at the right. */
function together(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Vorlesung 4");
  put(sheet, 0, 1, "Kolligative Eigenschaften: alles in einem Topf");
  const heads = putRow(sheet, 2, 1, [
    ...["Gelöst wird", "M in g/mol", "i", "m in g", "n in mol", "i·n in mol"],
  ]);
  const solutes = choose(random, 3);
  const waterGrams = random.pick([500, 800, 1000]);
  const grams = solutes.map((each) => gramsOf(random, each, waterGrams));
  const rows = solutes.map(({ de, molarMass, particles }, index) => {
    const row = 3 + index;
    const cells = putRow(sheet, row, 1, [de, shown(molarMass, "0.00"), particles, grams[index]]);
    const [, molar, count, mass] = cells as [Spot, Spot, Spot, Spot];
    const amount = put(sheet, row, 5, shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"));
    const all = put(sheet, row, 6, shown(`=${a1(amount)}*${a1(count)}`, "0.0000"));
    return [...cells, amount, all];
  });
  put(sheet, 6, 1, "Summe");
  const moles = columnOf(rows, 5);
  const sum = put(sheet, 6, 6, shown(`=SUM(${span(moles)})`, "0.0000"));
  marked.sums.push({ spot: sum, parts: moles });
  [4, 5].forEach((at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[at]!, fixed: [] }),
  );
  const place = { row: 2, column: 8 };
  const words = { label: "Wasser im Topf (g)", bare: "Wasser im Topf", value: waterGrams };
  const water = input(kit, sheet, place, words);
  const constant = putRow(sheet, 3, 8, ["Kf (K·kg/mol)", shown(1.86, "0.00")])[1]!;
  const law = `=${a1(sum)}/(${a1(water)}/1000)*${fixed(constant)}`;
  const depression = putRow(sheet, 4, 8, ["Erniedrigung (K)", shown(law, "0.00")])[1]!;
  const point = shown(`=-${a1(depression)}`, "0.00");
  const freezingPoint = putRow(sheet, 5, 8, ["Gefrierpunkt (°C)", point])[1]!;
  const gap = tolerated(idealGap(solutes, grams, waterGrams)).replace(".", ",");
  const proviso = put(sheet, 8, 1, `Verdünnte Lösung, ideal gerechnet: Toleranz ±${gap} K.`);
  marked.solutions.push({
    ...{ names: columnOf(rows, 0), grams: columnOf(rows, 3), molarMasses: columnOf(rows, 1) },
    ...{ particles: columnOf(rows, 2), moles, water, constant, depression, freezingPoint, proviso },
  });
  note(kit, sheet, 9, 1, "Bitte erst schätzen, dann rechnen.");
}

const BATHS = ["Bad", "Salz oder Zucker", "Einwaage", "Wasser", "Molare Masse", "Teilchenzahl i"];

/** Cooling baths one a row in one formula each, the units in brackets under the headings. */
function baths(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Kältebäder");
  put(sheet, 0, 0, "Übung 7: Kältebäder");
  const heads = putRow(sheet, 2, 0, [...BATHS, "Gefrierpunktserniedrigung", "Gefrierpunkt"]);
  putRow(sheet, 3, 2, ["[g]", "[g]", "[g/mol]", undefined, "[K]", "[°C]"]);
  const { list, tolerance } = problems(kit, 5);
  const below = 5 + list.length;
  const kf = ["Kryoskopische Konstante Kf", undefined, shown(1.86, "0.00"), "K·kg/mol"];
  const constant = putRow(sheet, below, 0, kf)[2]!;
  const text = `Ideales Gesetz ohne Korrektur, zulässige Abweichung ${tolerance} K.`;
  const proviso = put(sheet, below + 1, 0, text);
  const rows = list.map(({ solute, grams, waterGrams }, index) => {
    const row = 4 + index;
    const cells = putRow(sheet, row, 0, [
      ...[String.fromCharCode(65 + index), solute.de, grams, waterGrams],
      ...[shown(solute.molarMass, "0.00"), solute.particles],
    ]);
    const [, name, mass, water, molar, particles] = cells as [...Spot[], Spot, Spot, Spot, Spot];
    const molal = `${a1(mass)}/${a1(molar!)}/${a1(water)}*1000`;
    const law = `=${a1(particles!)}*${fixed(constant)}*${molal}`;
    const depression = put(sheet, row, 6, shown(law, "0.00"));
    const freezingPoint = put(sheet, row, 7, shown(`=-${a1(depression)}`, "0.00"));
    marked.solutions.push({
      ...{ names: [name], grams: [mass], molarMasses: [molar!], particles: [particles!] },
      ...{ moles: [depression], water: water, constant, depression, freezingPoint, proviso },
    });
    return [...cells, depression, freezingPoint];
  });
  marked.formulaColumns.push(
    { spots: columnOf(rows, 6), heading: heads[6]!, fixed: [constant] },
    { spots: columnOf(rows, 7), heading: heads[7]!, fixed: [] },
  );
  note(kit, sheet, below + 2, 0, "Abgabe bis Freitag, Rechenweg auf die Rückseite.");
}

/** Exercises in German by the ideal law. */
export const exercises: readonly Layout[] = [
  { name: "Vorlesung, alles in einem Topf", language: "de", build: together },
  { name: "Kältebäder in einer Formel", language: "de", build: baths },
];
