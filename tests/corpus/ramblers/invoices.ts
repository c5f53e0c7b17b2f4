import { a1, put, putRow, shown, span, type CorpusSheet } from "../book";
import { note, type Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { absolute } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { temperatures } from "../strollers/words";
import { usualPrice } from "../unseen/shared";

/** What was bought, by the sack; gives the block that is looked up. */
export function sacks(kit: Kit, sheet: CorpusSheet, names: readonly string[]): string {
  const { random } = kit;
  put(sheet, 0, 0, "What the wholesaler charges");
  const heads = putRow(sheet, 2, 0, ["Goods", "Sack or case (kg)", "Invoice (£)", "£ per kg"]);
  const rows = names.map((name, index) => {
    const size = random.pick(/sug|sucr|dextr|syrup|salt/.test(name) ? [10, 25] : [1, 2.5, 5]);
    const paid = name.includes("water") ? 0 : usualPrice(random, name) * size;
    return putRow(sheet, 3 + index, 0, [name, size, shown(Number(paid.toFixed(2)), "0.00")]);
  });
  const perKilo = beside(kit, heads[3]!, columnOf(rows, 1), {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1({ ...spot, column: 2 })}/${a1(spot)}`,
  });
  note(kit, sheet, 4 + rows.length, 0, "Invoices of this month, delivery included.");
  return `${sheet.name}!${absolute(span([rows[0]![0]!, perKilo.at(-1)!]))}`;
}

/** The case's thermometer at opening and at closing. */
export function caseLog(kit: Kit, sheet: CorpusSheet): void {
  const heads = putRow(sheet, 2, 6, ["Freezer case", "At opening (°C)", "At closing (°C)"]);
  const half = (from: number, to: number) => shown(-kit.random.whole(from, to) / 2, "0.0");
  const days = ["Tue", "Wed", "Thu", "Fri", "Sat"];
  const rows = days.map((day, index) =>
    putRow(sheet, 3 + index, 6, [day, half(36, 42), half(31, 37)]),
  );
  [1, 2].forEach((at) => temperatures(kit, heads[at]!, columnOf(rows, at)));
}
