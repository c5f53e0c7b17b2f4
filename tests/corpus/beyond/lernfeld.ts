import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { choose, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { readings, table } from "./words";

interface Task {
  readonly solutes: readonly Dissolved[];
  readonly grams: readonly number[];
  readonly waterGrams: number;
}

function given({ random }: Kit): Task {
  const solutes = choose(random, 2);
  const waterGrams = random.pick([300, 600, 750]);
  return { solutes, waterGrams, grams: solutes.map((each) => gramsOf(random, each, waterGrams)) };
}

/** What is known of both substances, one a column; gives the rows' cells. */
function substances(sheet: CorpusSheet, { solutes, grams }: Task): Spot[][] {
  const of = <T>(content: (solute: Dissolved, index: number) => T) => solutes.map(content);
  putRow(sheet, 3, 0, ["Größe", "Zeichen", "Stoff A", "Stoff B", "Einheit"]);
  const rows = table(sheet, { row: 4, column: 0 }, [
    ["Name", undefined, ...of(({ de }) => de)],
    ["abgewogen", "m", ...of((_, index) => grams[index]), "g"],
    ["molare Masse", "M", ...of(({ molarMass }) => shown(molarMass, "0.00")), "g/mol"],
    ["Teilchen je Formeleinheit", "i", ...of(({ particles }) => particles), "–"],
  ]);
  return rows.map((cells) => cells.slice(2, 4));
}

/** Moles, then moles of particles, each in a row under its substance. */
function workedRows(kit: Kit, sheet: CorpusSheet, known: readonly Spot[][]): Spot[][] {
  const [, masses, molars, counts] = known;
  const rowOf = (row: number, words: readonly string[], formula: (at: number) => string) => {
    const [heading] = putRow(sheet, row, 0, words);
    const spots = [0, 1].map((at) => put(sheet, row, 2 + at, shown(`=${formula(at)}`, "0.0000")));
    put(sheet, row, 4, "mol");
    kit.marked.formulaColumns.push({ spots, heading: heading!, fixed: [] });
    return spots;
  };
  const counted = rowOf(
    ...([8, ["Stoffmenge", "n = m : M"]] as const),
    (at) => `${a1(masses![at]!)}/${a1(molars![at]!)}`,
  );
  const particles = rowOf(
    ...([9, ["Teilchenmenge", "n · i"]] as const),
    (at) => `${a1(counted[at]!)}*${a1(counts![at]!)}`,
  );
  return [counted, particles];
}

/** The page to be filled in, here with the teacher's numbers. */
function worksheet(kit: Kit, sheet: CorpusSheet): void {
  const task = given(kit);
  const known = substances(sheet, task);
  const [counted, moles] = workedRows(kit, sheet, known) as [Spot[], Spot[]];
  const step = (row: number, label: string, sign: string, content: number | string, unit: string) =>
    putRow(sheet, row, 0, [
      label,
      sign,
      shown(content, row === 11 ? "0" : "0.00"),
      undefined,
      unit,
    ])[2]!;
  const water = step(11, "Wasser im Topf", "m(W)", task.waterGrams, "g");
  const constant = step(12, "Kryoskopische Konstante von Wasser", "Kf", 1.86, "K·kg/mol");
  const all = step(13, "beide Teilchenmengen zusammen", "Σ", `=SUM(${span(moles)})`, "mol");
  kit.marked.sums.push({ spot: all, parts: moles });
  const law = `=${a1(constant)}*${a1(all)}/(${a1(water)}/1000)`;
  const depression = step(14, "Gefrierpunktserniedrigung", "ΔT", law, "K");
  const freezingPoint = step(15, "neuer Gefrierpunkt", "T", `=-${a1(depression)}`, "°C");
  const gap = tolerated(idealGap(task.solutes, task.grams, task.waterGrams)).replace(".", ",");
  const text = `Formel für ideale Lösungen; hier auf ${gap} K genau, für Sirup taugt sie nicht.`;
  const proviso = put(sheet, 17, 0, text);
  const [names, grams, molarMasses, particles] = known as [Spot[], Spot[], Spot[], Spot[]];
  kit.marked.solutions.push({
    ...{ names, grams, molarMasses, particles, moles, counted },
    ...{ water, constant, depression, freezingPoint, proviso },
  });
}

/** Sugar syrups of the pastry class, their strength given both ways. */
function syrups({ marked, random }: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Läuterzucker für Sorbets, gekocht am Dienstag");
  putRow(sheet, 2, 0, [
    ...[
      "Topf",
      "g Zucker je 100 g Wasser",
      "Wasser (g)",
      "Zucker (g)",
      "Zuckeranteil im Sirup (%)",
    ],
  ]);
  for (let pot = 1; pot <= 4; pot += 1) {
    const wet = random.pick([400, 500, 800, 1000]);
    const sweet = 20 * random.whole(10, Math.floor(wet / 20));
    const [, perWater, water, sugar, share] = putRow(sheet, 2 + pot, 0, [
      ...[pot, shown(Number(((100 * sweet) / wet).toFixed(1)), "0.0"), wet, sweet],
      shown(Number(((100 * sweet) / (sweet + wet)).toFixed(1)), "0.0"),
    ]) as [Spot, Spot, Spot, Spot, Spot];
    marked.strengths.push({ sugar, water, perWater, share });
  }
}

/** A worksheet for apprentices, the cold room's log at its right. */
function lernfeld(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "AB 3");
  put(sheet, 0, 0, "Lernfeld 3.4, Arbeitsblatt 3: Warum gefriert Sorbet nicht bei null Grad?");
  note(kit, sheet, 1, 0, "Lösung für die Lehrkraft, graue Felder auf dem Ausdruck leeren");
  worksheet(kit, sheet);
  const heads = putRow(sheet, 3, 6, ["TK-Zelle", "Uhrzeit", "Anzeige in °C"]);
  const days = ["Mo", "Di", "Mi", "Do", "Fr"].map((day) => [day, "7:40"]);
  table(sheet, { row: 4, column: 6 }, days);
  readings(kit, sheet, heads[2]!, days.length, [-22, -17]);
  syrups(kit, addSheet(kit.marked.book, "Läuterzucker"));
}

/** A vocational school for pastry cooks. */
export const lernfelder: readonly Layout[] = [
  {
    name: "Berufsschule, Arbeitsblatt mit zwei Stoffen nebeneinander",
    language: "de",
    build: lernfeld,
  },
];
