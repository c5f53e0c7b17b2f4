import { put, putRow, shown, type CorpusSheet } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt } from "../layouts/parts";
import { temperatures } from "../strollers/words";

const SYRUPS = [
  ["for the granita", 0.2, 0.32],
  ["for apples", 0.36, 0.5],
  ["for pears", 0.54, 0.7],
  ["thick", 0.78, 1.05],
] as const;

/** The syrups that keep in the press house, both ways of giving their strength. */
export function syrupShelf(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 0, "Syrups on the shelf");
  const heads = putRow(sheet, 1, 0, [
    ...["Syrup", "Sucrose (g)", "Water (g)", "g sucrose to 100 g water", "Sucrose, % by mass"],
    "Freezes at (°C)",
  ]);
  const rows = SYRUPS.map(([word, from, to], index) => {
    const waterGrams = 100 * random.whole(4, 6);
    const sugarGrams = 10 * Math.round((waterGrams * random.between(from, to)) / 10);
    const perWater = shown(Number(((100 * sugarGrams) / waterGrams).toFixed(1)), "0.0");
    const whole = sugarGrams + waterGrams;
    const share = shown(Number(((100 * sugarGrams) / whole).toFixed(1)), "0.0");
    const point = shown(freezesAt(["sucrose", "water"], [sugarGrams, waterGrams]), "0.0");
    const line = [word, sugarGrams, waterGrams, perWater, share, point];
    return putRow(sheet, 2 + index, 0, line);
  });
  rows.forEach(([, sugar, water, perWater, share]) =>
    marked.strengths.push({ sugar: sugar!, water: water!, perWater: perWater!, share: share! }),
  );
  temperatures(kit, heads[5]!, columnOf(rows, 5));
}
