import { a1, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { trueValue } from "../marks";
import { dissolved, idealGap, tolerated } from "../solution";
import { temperatures } from "../strollers/words";

const SALT = dissolved[1]!;

const HEADS = [
  ...["Substanz", "Einwaage (g)", "M (g/mol)", "Ionen je Formel", "Wasser (g)"],
  ...["Ionen (mol)", "ΔT ber. (K)", "Gefrierpunkt ber. (°C)", "Anzeige (°C)"],
];

interface Bench {
  readonly sheet: CorpusSheet;
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** One salt water: weighed, worked out, read. */
function saltWater(kit: Kit, row: number, grams: number, bench: Bench): Spot[] {
  const { sheet, constant, proviso } = bench;
  const { de, en, molarMass, particles: count } = SALT;
  const cells = putRow(sheet, row, 0, [de, grams, shown(molarMass, "0.00"), count, 1000]);
  const [name, mass, molar, particles, water] = cells as [Spot, Spot, Spot, Spot, Spot];
  const ions = `=${a1(mass)}/${a1(molar)}*${a1(particles)}`;
  const moles = put(sheet, row, 5, shown(ions, "0.0000"));
  const law = `=${a1(moles)}/${a1(water)}*1000*${fixed(constant)}`;
  const depression = put(sheet, row, 6, shown(law, "0.000"));
  const freezingPoint = put(sheet, row, 7, shown(`=-${a1(depression)}`, "0.000"));
  const mix = { names: ["water", en], grams: [1000, grams] };
  const real = Number(trueValue(mix, "freezing point", null)!.toFixed(2));
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
  });
  return [moles, depression, freezingPoint, put(sheet, row, 8, shown(real, "0.00"))];
}

/** Salt waters of known strength, by which the cryoscope is checked. */
export function calibration(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 0, "Prüfung des Kryoskops mit Kochsalzlösungen");
  const constant = putRow(sheet, 1, 0, ["Kf Wasser (K·kg/mol)", shown(1.86, "0.00")])[1]!;
  const heads = putRow(sheet, 3, 0, HEADS);
  const weighed = [0, 2, 4, 6, 8].map((more) => random.whole(6, 7) + more);
  const gap = tolerated(Math.max(...weighed.map((each) => idealGap([SALT], [each], 1000))));
  const most = `${gap.replace(".", ",")} K`;
  const text = `Berechnet als ideal verdünnt, die Anzeige darf bis ${most} abweichen.`;
  const bench = { sheet, constant, proviso: put(sheet, 10, 0, text) };
  const rows = weighed.map((grams, index) => saltWater(kit, 4 + index, grams, bench));
  [[], [constant], []].forEach((cells, at) =>
    marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[5 + at]!, fixed: cells },
    }),
  );
  temperatures(kit, heads[8]!, columnOf(rows, 3));
}
