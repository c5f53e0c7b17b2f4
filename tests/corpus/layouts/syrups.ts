import { put, putRow, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";

/** Syrups in columns, their strength given both ways. */
export function syrups({ random, marked }: Kit, sheet: CorpusSheet, top: number): void {
  putRow(sheet, top, 0, ["Syrup", "I", "II", "III", "IV", "V"]);
  const labels = ["Water (g)", "Sucrose (g)", "Sucrose (g per 100 g water)", "Sucrose (% by mass)"];
  labels.forEach((label, index) => put(sheet, top + 1 + index, 0, label));
  for (let column = 1; column <= 5; column += 1) {
    const waterGrams = random.whole(4, 8) * 50;
    const sugarGrams = Math.round((waterGrams * random.between(0.2, 1.2)) / 5) * 5;
    const strength = Number(((100 * sugarGrams) / waterGrams).toFixed(1));
    const perCent = Number(((100 * sugarGrams) / (sugarGrams + waterGrams)).toFixed(1));
    const down = [waterGrams, sugarGrams, strength, perCent];
    const spots = down.map((content, index) => put(sheet, top + 1 + index, column, content));
    const [water, sugar, perWater, share] = spots as [Spot, Spot, Spot, Spot];
    marked.strengths.push({ sugar, water, perWater, share });
  }
}
