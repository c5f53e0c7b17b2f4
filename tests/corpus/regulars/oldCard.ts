import { a1, addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { nameTarget, note, tell, type Kit } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { alcoholIn } from "../visitors/lines";
import { priceOf } from "./prices";

const CALLED = { Zucker: "Feinzucker", Vollmilch: "Milch 3,5 %", Salz: "Kochsalz" };
const REMARKS = ["kalt", "zuletzt", "gut rühren", "a. d. Keller"];

/** The lines of a card: weight first, then what, then what it costs. */
function card(kit: Kit, sheet: CorpusSheet): MarkedRecipe {
  const { random, marked } = kit;
  const made = called(kit.make(1)[0]!, CALLED);
  putRow(sheet, 0, 0, [`Nr. ${random.whole(3, 60)}`, made.title, "abgeschr. aus Opas Heft"]);
  const heads = putRow(sheet, 2, 0, ["Gew. (g)", "Rohst.", "Anm.", "EK (€/kg)", "Kosten (€)"]);
  const rows = made.names.map((name, index) => {
    const remark = random.next() < 0.4 ? random.pick(REMARKS) : undefined;
    const price = shown(priceOf(random, name), "0.00");
    return putRow(sheet, 3 + index, 0, [made.grams[index], name, remark, price]);
  });
  const [amounts, names] = [columnOf(rows, 0), columnOf(rows, 1)];
  const costs = rows.map(([amount, , , price]) =>
    put(sheet, amount!.row, 4, shown(`=${a1(amount!)}/1000*${a1(price!)}`, "0.00")),
  );
  marked.formulaColumns.push({ spots: costs, heading: heads[4]!, fixed: [] });
  const row = 3 + rows.length;
  const total = sumOf(kit, sheet, { row, column: 0 }, amounts);
  put(sheet, row, 1, "Sa.");
  put(sheet, row, 4, shown(`=${costs.map(a1).join("+")}`, "0.00"));
  return markRecipe(kit, made, { names, amounts, unit: "g", amountLabel: heads[0]!, total });
}

/** What is known of the mix. */
const values = (made: MadeRecipe): Said[] => [
  { label: "Gefr.-Punkt (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Gefr.-Punkt-Erniedrigung (K)", states: "depression", as: "typed", decimals: 1 },
  { label: "Wasser ges. (g)", states: "water", as: "typed", decimals: 0 },
  { label: "gelöst (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Zucker auf 100 g Wasser (g)",
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
  {
    label: "gefr. Wasser b. −18 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  {
    label: "Eis b. −10 °C (% d. Masse)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -10, decimals: 0 },
  },
  ...alcoholIn(made, { label: "Alk. (g)", states: "alcohol", as: "typed", decimals: 0 }),
];

/** A card of the old book, what is known of it in a block at its right. */
export function oldCard(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Opa Eis");
  const recipe = card(kit, sheet);
  put(sheet, 2, 6, "Werte");
  const next = say(sheet, recipe, { row: 3, column: 6 }, values(recipe.made));
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Soll" });
  const row = recipe.total!.row + 2;
  const free = tell(kit, sheet, recipe, { row, column: 1, as: "pair" });
  note(kit, sheet, free + 1, 1, "Opa nahm Schneeeis u. Viehsalz, heute Froster.");
}
