import { put, putRow, shown, span, type CorpusSheet } from "../book";
import type { Kit } from "../kit";
import { absolute } from "../layouts/parts";
import { perKilo } from "../pilgrims/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";

/** What each thing costs; gives the range to look it up in. */
export function priceList(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): string {
  put(sheet, 0, 0, "What we pay at the moment");
  const heads = putRow(sheet, 1, 0, ["Item", "Shop", "€ per kg"]);
  const rows = itemsOf(mades).map((item, index) => {
    const shop = kit.random.pick(["market", "wholesaler", "dairy", "corner shop"]);
    const price = perKilo(kit, item);
    return putRow(sheet, 2 + index, 0, [item, shop, shown(price, "0.00")]);
  });
  return `Prices!${absolute(span([heads[0]!, ...rows.flat()]))}`;
}
