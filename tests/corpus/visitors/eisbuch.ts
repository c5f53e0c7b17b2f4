import { callFunction } from "../../../src/worksheet/callFunction";
import { addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { massOf, type MadeRecipe } from "../recipes";
import { called } from "../kitchens/hand";
import { alcoholIn, temperatures } from "./lines";
import { listed } from "./listed";
import { zettel } from "./zettel";

/** About how many spoons that is, in halves; a weight where spoons would not do. */
function spoons(name: string, grams: number): string {
  if (name === "Eigelb") return `etwa ${Math.round(grams / 17)} Stück`;
  const one = callFunction("GRAMS", name, 1, "EL")[0]![0];
  if (typeof one !== "number") return "gewogen";
  const count = Math.round((2 * grams) / one) / 2;
  if (count < 0.5 || count > 12) return "gewogen";
  return `etwa ${String(count).replace(".", ",")} EL`;
}

const VERDICTS = [
  "Sehr cremig, beim nächsten Mal etwas weniger süß.",
  "Zu Weihnachten noch einmal machen, kam gut an.",
  "Eine Stunde länger frieren lassen.",
];

/** What came out: weighed after churning, a little stays in the bowl. */
function outcome(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): void {
  const { random } = kit;
  const out = Math.round(massOf(made) * random.between(0.94, 0.98));
  putRow(sheet, row, 3, ["Herausgekommen sind (g)", out]);
  putRow(sheet, row + 1, 3, ["Stunden bis es fest war", random.whole(4, 9)]);
  putRow(sheet, row + 2, 3, ["Kugeln daraus", Math.round(out / 60)]);
}

/** What the ice is like, right of its list; gives the row after that. */
function answers(sheet: CorpusSheet, recipe: MarkedRecipe, row: number): number {
  const next = say(sheet, recipe, { row, column: 3 }, [
    { label: "Friert ab (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Wasser darin (g)", states: "water", as: "typed", decimals: 0 },
    ...alcoholIn(recipe.made, {
      ...{ label: "Reiner Alkohol darin (g)", states: "alcohol" },
      ...{ as: "typed", decimals: 1 },
    }),
    {
      label: "Eis in der Masse bei −18 °C (%)",
      ...{ states: "ice of mix", as: "typed", temperatureC: -18 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 3, label: "So wollte ich es" });
  return next;
}

const OWN = { Zucker: "Haushaltszucker", Wasser: "Leitungswasser" };

/** One evening's ice: spoons, name, grams; what it gave at the right. */
function entry(kit: Kit, given: MadeRecipe, top: number): number {
  const sheet = kit.marked.book.sheets[0]!;
  const made = called(given, OWN);
  putRow(sheet, top, 0, [`${1 + Math.round(top / 2)}. Juli`, made.title]);
  const { heads, names, amounts, total, row } = listed(kit, sheet, made, {
    ...{ top: top + 1, left: 0, name: 1, amount: 2, sum: "macht zusammen" },
    headings: ["Löffelmaß", "Was hinein kam", "Gramm"],
    line: (at) => [spoons(made.names[at]!, made.grams[at]!), made.names[at], made.grams[at]],
  });
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", amountLabel: heads[2]!, total },
  });
  outcome(kit, sheet, made, top + 1);
  const next = answers(sheet, recipe, top + 4);
  const below = Math.max(row, next) + 2;
  const free = tell(kit, sheet, recipe, { row: below, column: 0, as: "sentence" });
  note(kit, sheet, free, 0, kit.random.pick(VERDICTS));
  return free + 2;
}

/** The freezer in the cellar, read each morning. */
function chest(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Truhe");
  const heads = putRow(sheet, 0, 0, ["Juli", "unten in der Truhe (°C)", "oben im Korb (°C)"]);
  for (let day = 1; day <= 10; day += 1) put(sheet, day, 0, shown(day, '0"."'));
  temperatures(kit, sheet, { heading: heads[1]!, count: 10 }, [-22, -19]);
  temperatures(kit, sheet, { heading: heads[2]!, count: 10 }, [-19, -15]);
}

/** A diary of ices one below the other. */
function diary(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eisbuch");
  put(sheet, 0, 0, "Mein Eisbuch, Sommer");
  let top = 2;
  for (const made of kit.make(3)) top = entry(kit, made, top);
  chest(kit);
}

/** Sheets of a retired keen cook. */
export const eisbuch: readonly Layout[] = [
  { name: "Eisbuch, Löffel und Gramm", language: "de", build: diary },
  { name: "Zettel der Großmutter, nachgewogen", language: "de", build: zettel },
];
