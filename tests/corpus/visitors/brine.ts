import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { freezesAt } from "../layouts/parts";
import { temperatures } from "./lines";

/** How cold the brine was at each run. */
function readings(kit: Kit, sheet: CorpusSheet): void {
  const heads = putRow(sheet, 8, 0, ["Run", "Brine at the start (°C)", "Brine at the end (°C)"]);
  [1, 2, 3, 4, 5].forEach((run, index) => put(sheet, 9 + index, 0, run));
  temperatures(kit, sheet, { heading: heads[1]!, count: 5 }, [-12, -10]);
  temperatures(kit, sheet, { heading: heads[2]!, count: 5 }, [-9, -7]);
}

/** The tank that the moulds hang in: what was weighed, how strong it is, how cold it ran. */
export function brine(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Brine");
  put(sheet, 0, 0, "Brine tank, made up fresh each month");
  putRow(sheet, 1, 0, [
    ...["Month", "Water (kg)", "Salt (kg)", "Salt in the brine (%)"],
    ...["Salt on 100 g of water (g)", "Brine would freeze at (°C)"],
  ]);
  ["May", "June", "July", "August"].forEach((month, index) => {
    const [wet, salt] = [random.pick([60, 64]), random.whole(13, 17)];
    const share = shown(`=100*C${index + 3}/(B${index + 3}+C${index + 3})`, "0.0");
    const ratio = shown(`=100*C${index + 3}/B${index + 3}`, "0.0");
    const point = shown(freezesAt(["salt", "water"], [salt, wet]), "0.0");
    const cells = putRow(sheet, 2 + index, 0, [month, wet, salt, share, ratio, point]);
    const [, water, sugar, inBrine, perWater] = cells as [Spot, Spot, Spot, Spot, Spot];
    marked.strengths.push({ sugar, water, perWater, share: inBrine });
  });
  readings(kit, sheet);
}
