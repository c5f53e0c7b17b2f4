import { a1, addSheet, fixed, put, putRow, shown, type Content, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { solution } from "../solution";
import { freezesAt, problems } from "./parts";

/** Tasks one below the other: what is given at the left, the key at the right, units in cells. */
function givenAndKey(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Aufgaben");
  put(sheet, 0, 0, "Übungsblatt 4 mit Musterlösung");
  const { list, tolerance } = problems(kit, 3);
  list.forEach(({ solute, grams, waterGrams }, index) => {
    const top = 2 + 10 * index;
    put(sheet, top, 0, `Aufgabe ${index + 1}`);
    put(sheet, top, 5, "Lösung");
    const given = (step: number, line: readonly Content[]): Spot =>
      putRow(sheet, top + 1 + step, 0, line)[2]!;
    const key = (step: number, label: string, formula: string, unit: string): Spot =>
      putRow(sheet, top + 1 + step, 5, [label, shown(formula, "0.000"), unit])[1]!;
    const name = given(0, ["Stoff", undefined, solute.de]);
    const mass = given(1, ["Einwaage", "m", grams, "g"]);
    const water = given(2, ["Wasser", "m(W)", waterGrams, "g"]);
    const molar = given(3, ["Molare Masse", "M", shown(solute.molarMass, "0.00"), "g/mol"]);
    const particles = given(4, ["Teilchen je Formeleinheit", "i", solute.particles]);
    const constant = given(5, ["Kryoskopische Konstante", "Kf", shown(1.86, "0.00"), "K·kg/mol"]);
    const amount = key(0, "Stoffmenge n", `=${a1(mass)}/${a1(molar)}`, "mol");
    const molality = key(1, "Molalität b", `=${a1(amount)}/(${a1(water)}/1000)`, "mol/kg");
    const law = `=${a1(particles)}*${fixed(constant)}*${a1(molality)}`;
    const depression = key(2, "Gefrierpunktserniedrigung", law, "K");
    const freezingPoint = key(3, "Gefrierpunkt", `=-${a1(depression)}`, "°C");
    const proviso = put(sheet, top + 6, 5, `Ideal gerechnet, auf ±${tolerance} K genau.`);
    marked.solutions.push({
      ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
      ...{ moles: [molality], water, constant, depression, freezingPoint, proviso },
    });
  });
  const answers = addSheet(marked.book, "Ergebnisse");
  putRow(answers, 0, 0, ["Aufgabe", "Gefrierpunkt", "Einheit"]);
  marked.solutions.forEach(({ freezingPoint }, index) => {
    const link = shown(`=Aufgaben!${a1(freezingPoint!)}`, "0.00");
    putRow(answers, 1 + index, 0, [index + 1, link, "°C"]);
  });
  note(kit, sheet, 32, 0, "Rechenweg angeben, Einheiten nicht vergessen.");
}

/** A ladder of syrups in threes, both strengths beside each other; a task at the right. */
function ladder(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Zuckerstufen");
  put(sheet, 0, 0, "Läuterzucker von dünn bis dick");
  putRow(sheet, 2, 0, [
    ...["Stufe", "Zucker", "Wasser", "Zucker je 100 g Wasser", "Massenanteil Zucker"],
    "Gefrierpunkt",
  ]);
  putRow(sheet, 3, 1, ["g", "g", "g", "%", "°C"]);
  for (let step = 0; step < 6; step += 1) {
    const sugarGrams = 20 + 25 * step + random.whole(0, 20);
    const waterGrams = random.whole(4, 8) * 25;
    const row = 4 + step + Math.floor(step / 3);
    const [, sugar, water, perWater, share] = putRow(sheet, row, 0, [
      ...[step + 1, sugarGrams, waterGrams],
      shown(Number(((100 * sugarGrams) / waterGrams).toFixed(1)), "0.0"),
      shown(Number(((100 * sugarGrams) / (sugarGrams + waterGrams)).toFixed(1)), "0.0"),
      shown(freezesAt(["sucrose", "water"], [sugarGrams, waterGrams]), "0.0"),
    ]) as [Spot, Spot, Spot, Spot, Spot];
    marked.strengths.push({ sugar, water, perWater, share });
  }
  solution(kit, sheet, {
    ...{ top: 2, left: 8, count: 3 },
    headings: ["Zugabe", "Gramm", "g/mol", "Teilchen", "Teilchenmenge (mol)"],
    words: {
      water: ["Wassermenge (g)", "Wassermenge"],
      constant: "Kf Wasser (K·kg/mol)",
      depression: "Erniedrigung (K)",
      freezingPoint: "Gefrierbeginn (°C)",
      proviso: (tolerance) => `Nur ideal gerechnet: ±${tolerance} K.`,
    },
  });
}

/** Sheets of a lesson in German. */
export const lessonsInGerman: readonly Layout[] = [
  { name: "Aufgaben mit Musterlösung rechts", language: "de", build: givenAndKey },
  { name: "Zuckerstufen mit Aufgabe daneben", language: "de", build: ladder },
];
