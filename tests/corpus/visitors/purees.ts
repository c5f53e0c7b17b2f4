import { addSheet, put, putRow, shown, span } from "../book";
import type { Kit } from "../kit";
import { sumOf } from "../layouts/parts";
import { columnOf } from "../kitchens/hand";
import { jars } from "../kitchens/jars";
import { block } from "./lines";

const CARTONS = ["sweetened guava puree, carton", "sweetened passion fruit puree, carton"];

/** Cartons by their labels, and a first pop made with them. */
export function purees(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Cartons");
  put(sheet, 0, 0, "From the cartons, g per 100 g");
  const headings = ["name", "sugars", "water", "fat", "protein", "inert", "allergens", "source"];
  const words = { headings, items: CARTONS, none: "none", source: "carton" };
  const own = jars(kit, sheet, { row: 1, column: 0 }, words);
  put(sheet, 5, 0, "First try for a pop with both");
  putRow(sheet, 6, 0, ["What goes in", "g"]);
  const rows = block(sheet, { row: 7, column: 0 }, [
    [CARTONS[0], 10 * kit.random.whole(20, 30)],
    [CARTONS[1], 10 * kit.random.whole(10, 20)],
    ["water", 10 * kit.random.whole(20, 30)],
    ["sugar", 5 * kit.random.whole(4, 9)],
  ]);
  put(sheet, 11, 0, "Sum");
  sumOf(kit, sheet, { row: 11, column: 1 }, columnOf(rows, 1));
  const lines = [0, 1].map((at) => span(columnOf(rows, at))).join(",");
  const call = shown(`=RIME.FREEZINGPOINT(${lines},${own})`, "0.00");
  putRow(sheet, 12, 0, ["Freezing point (°C)", call]);
}
