import { a1, addSheet, put, putRow, shown, span, type Spot } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { jars } from "../kitchens/jars";
import { sumOf } from "../layouts/parts";
import { markFormulas } from "./columns";

const HEADINGS = ["name", "sugars", "water", "fat", "protein", "inert", "allergens"];
const ITEMS = ["rhubarb preparation 40", "plum preparation 30", "quince preparation 35"];

/** Sugar stocks of the pilot plant, their strength given both ways. */
function stocks(kit: Kit, top: number): void {
  const { marked, random } = kit;
  const sheet = marked.book.sheets.at(-1)!;
  put(sheet, top, 0, "Sucrose stock solutions of the pilot plant");
  const heads = putRow(sheet, top + 1, 0, [
    ...["Stock", "Sucrose, % by mass", "Sucrose, g per 100 g water", "Sucrose (g)", "Water (g)"],
  ]);
  const rows = ["S1", "S2", "S3", "S4"].map((stock, index) => {
    const row = top + 2 + index;
    put(sheet, row, 0, stock);
    const contents = [50 * random.whole(10 + 6 * index, 14 + 6 * index), 1500];
    const [sugar, water] = putRow(sheet, row, 3, contents) as [Spot, Spot];
    const mass = `=${a1(sugar)}/(${a1(sugar)}+${a1(water)})*100`;
    const share = put(sheet, row, 1, shown(mass, "0.0"));
    const perWater = put(sheet, row, 2, shown(`=${a1(sugar)}/${a1(water)}*100`, "0.0"));
    marked.strengths.push({ sugar, water, perWater, share });
    return [share, perWater];
  });
  markFormulas(kit, rows, heads.slice(1, 3));
}

/** Preparations as their data sheets give them, a first trial with two, and the stocks. */
export function specs(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Data sheets");
  put(sheet, 0, 0, "Fruit preparations from their data sheets, g per 100 g");
  const words = { headings: HEADINGS, items: ITEMS, none: "none" };
  const own = jars(kit, sheet, { row: 1, column: 0 }, words);
  putRow(sheet, 7, 0, ["Bench trial", "Weighed (g)"]);
  const rows = [
    [ITEMS[0], 10 * random.whole(25, 40)],
    [ITEMS[2], 10 * random.whole(10, 20)],
    ["water", 10 * random.whole(20, 30)],
    ["sucrose", 10 * random.whole(4, 8)],
  ].map((contents, index) => putRow(sheet, 8 + index, 0, contents));
  const [names, grams] = [columnOf(rows, 0), columnOf(rows, 1)];
  put(sheet, 12, 0, "Sum");
  sumOf(kit, sheet, { row: 12, column: 1 }, grams);
  const call = shown(`=RIME.FREEZINGPOINT(${span(names)},${span(grams)},${own})`, "0.00");
  putRow(sheet, 13, 0, ["Freezing point (°C)", call]);
  stocks(kit, 16);
}
