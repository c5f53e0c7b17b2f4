import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import { input } from "../page";
import { choose, gramsOf, idealGap, tolerated } from "../solution";
import { markFormulas } from "./columns";

const LABELS = [
  ...["Stoff", "Einwaage (g)", "Molare Masse M (g/mol)", "Teilchen je Formeleinheit i"],
  "Teilchen (mol)",
];

/** The three substances of the pot beside each other, their particles in the last row. */
function pot(kit: Kit, sheet: CorpusSheet, waterGrams: number) {
  const solutes = choose(kit.random, 3);
  const grams = solutes.map((each) => gramsOf(kit.random, each, waterGrams * 0.4));
  LABELS.forEach((label, index) => put(sheet, 7 + index, 0, label));
  const columns = solutes.map(({ de, molarMass, particles }, index) => {
    const at = (row: number, content: number | string, format?: string): Spot =>
      put(sheet, row, 1 + index, format === undefined ? content : shown(content, format));
    const [name, mass] = [at(7, de), at(8, grams[index]!)];
    const [molar, count] = [at(9, molarMass, "0.00"), at(10, particles)];
    return [name, mass, molar, count, at(11, `=${a1(mass)}/${a1(molar)}*${a1(count)}`, "0.0000")];
  });
  put(sheet, 7, 4, "zusammen");
  sumOf(kit, sheet, { row: 8, column: 4 }, columnOf(columns, 1));
  const all = sumOf(kit, sheet, { row: 11, column: 4 }, columnOf(columns, 4), "0.0000");
  return { columns, all, gap: idealGap(solutes, grams, waterGrams) };
}

const STRENGTHS = ["zum Tränken", "für Früchte", "für Sorbet", "zum Kandieren", "zum Abglänzen"];

/** The syrups of the workshop, their strength given both ways. */
function syrups(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Läuterzucker");
  put(sheet, 0, 0, "Läuterzucker in unserer Lehrbackstube");
  const heads = putRow(sheet, 2, 0, [
    ...["Verwendung", "Wasser (g)", "Saccharose (g)", "Saccharose (Massen-%)"],
    "Saccharose auf 100 g Wasser (g)",
  ]);
  const rows = STRENGTHS.map((use, index) => {
    const row = 3 + index;
    const contents = [use, 500, 25 * random.whole(10 + 4 * index, 13 + 4 * index)];
    const [, water, sugar] = putRow(sheet, row, 0, contents) as [Spot, Spot, Spot];
    const mass = `=100*${a1(sugar)}/(${a1(water)}+${a1(sugar)})`;
    const share = put(sheet, row, 3, shown(mass, "0.0"));
    const perWater = put(sheet, row, 4, shown(`=100*${a1(sugar)}/${a1(water)}`, "0.0"));
    marked.strengths.push({ sugar, water, perWater, share });
    return [share, perWater];
  });
  markFormulas(kit, rows, heads.slice(3));
}

/** What is given: the water, marked as such, and the constant. */
function given(kit: Kit, sheet: CorpusSheet, waterGrams: number): [Spot, Spot] {
  put(sheet, 2, 0, "Gegeben");
  const place = { row: 3, column: 0 };
  const words = { label: "Wasser im Topf (g)", bare: "Wasser im Topf", value: waterGrams };
  const water = input(kit, sheet, place, words);
  const kf = ["Kryoskopische Konstante Kf (K·kg/mol)", shown(1.86, "0.00")];
  return [water, putRow(sheet, 4, 0, kf)[1]!];
}

/** Given, wanted, worked out: three substances in one pot. */
export function theory(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Lernfeld 11");
  put(sheet, 0, 0, "Fachtheorie Konditoren: Ab wann gefriert die Lösung?");
  const waterGrams = kit.random.pick([2000, 3000, 4000]);
  const [water, constant] = given(kit, sheet, waterGrams);
  put(sheet, 6, 0, "Im Topf gelöst");
  const { columns, all, gap } = pot(kit, sheet, waterGrams);
  put(sheet, 13, 0, "Gesucht");
  const law = shown(`=${fixed(constant)}*${a1(all)}/(${a1(water)}/1000)`, "0.00");
  const depression = putRow(sheet, 14, 0, ["Gefrierpunktserniedrigung ΔT (K)", law])[1]!;
  const point = shown(`=-${a1(depression)}`, "0.00");
  const freezingPoint = putRow(sheet, 15, 0, ["Gefrierpunkt der Lösung (°C)", point])[1]!;
  const allowed = tolerated(gap).replace(".", ",");
  const text = `Wir rechnen ideal und liegen damit um höchstens ${allowed} K daneben.`;
  kit.marked.solutions.push({
    ...{ names: columnOf(columns, 0), grams: columnOf(columns, 1), water, constant },
    ...{ molarMasses: columnOf(columns, 2), particles: columnOf(columns, 3) },
    ...{ moles: columnOf(columns, 4), depression, freezingPoint },
    proviso: put(sheet, 16, 0, text),
  });
  note(kit, sheet, 18, 0, "Hausaufgabe: Was ändert sich, wenn ein Stoff vergessen wird?");
  syrups(kit);
}
