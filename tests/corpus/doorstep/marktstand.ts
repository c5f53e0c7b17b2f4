import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { DAHEIM, rowsAt } from "./words";

const SAID: readonly Said[] = [
  { label: "wird fest ab", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "um wieviel tiefer als Wasser", inCell: "K", states: "depression", as: "formula" },
  { label: "Wasser im Kilo", inCell: "g", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "Eis im Ganzen bei −15 °C", inCell: "%", states: "ice of mix", as: "typed" },
    ...{ temperatureC: -15, decimals: 0 },
  },
];

/** A kilogram and what has to be made for the next market, its sums on top. */
function kilo(kit: Kit, made: MadeRecipe, at: number): void {
  const sheet = addSheet(kit.marked.book, at === 0 ? "Sorte A" : "Sorte B");
  put(sheet, 0, 2, made.title);
  const wanted = input(
    kit,
    sheet,
    { row: 1, column: 2 },
    {
      ...{ label: "für Samstag (kg)", bare: "für Samstag", value: kit.random.pick([4, 6, 7.5]) },
    },
  );
  const { heads, names, amounts } = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["1 kg (in g)", "Samstag (in g)", "Sache"],
      cells: (item, grams) => [grams, undefined, item],
      ...{ name: 2, amount: 0 },
    },
  );
  const saturday = beside(kit, heads[1]!, amounts, {
    ...{ sheet, format: "0", fixed: [wanted] },
    content: (spot) => `=${a1(spot)}*${fixed(wanted)}`,
  });
  const total = sumOf(kit, sheet, { row: 3, column: 0 }, amounts);
  sumOf(kit, sheet, { row: 3, column: 1 }, saturday, "0");
  put(sheet, 3, 2, "alles");
  const lines = { names, amounts, alsoAmounts: saturday, amountLabel: heads[0]!, total };
  const recipe = markRecipe(kit, made, { ...lines, unit: "g" });
  const next = say(sheet, recipe, { row: 4, column: 5 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "gedacht als" });
  tellIn(sheet, recipe, { row: next + 2, column: 5 }, DAHEIM);
}

const DAYS = ["Sa 7.", "Mi 11.", "Sa 14.", "Mi 18.", "Sa 21."];

/** Takings and what goes off them, a market day in each column. */
function till(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  putRow(sheet, 0, 0, ["Markttage", ...DAYS, "Monat"]);
  const cents = (from: number, to: number) => shown(random.whole(2 * from, 2 * to) / 2, "0.00");
  const line = (row: number, words: string, from: number, to: number): Spot[] => {
    const cells = putRow(sheet, row, 0, [words, ...DAYS.map(() => cents(from, to))]).slice(1);
    sumOf(kit, sheet, { row, column: 6 }, cells, "0.00");
    return cells;
  };
  const taken = line(1, "Einnahme €", 120, 380);
  const rent = line(2, "Standgeld €", 12, 18);
  const dryIce = line(3, "Trockeneis €", 15, 30);
  put(sheet, 4, 0, "bleibt €");
  const left = taken.map((spot, index) =>
    put(
      sheet,
      4,
      spot.column,
      shown(`=${a1(spot)}-${a1(rent[index]!)}-${a1(dryIce[index]!)}`, "0.00"),
    ),
  );
  sumOf(kit, sheet, { row: 4, column: 6 }, left, "0.00");
  rowsAt(sheet, { row: 7, column: 0 }, [
    ["Wechselgeld mitnehmen", undefined, "Kugel kostet", shown(1.6, "0.00"), "€"],
    ["Rollen 50 ct", 2, "Becher kostet", shown(4.5, "0.00"), "€"],
    ["Rollen 1 €", 2],
    ["Scheine 5 €", 10],
  ]);
  note(kit, sheet, 12, 0, "Schirm und Verlängerungskabel nicht vergessen");
}

/** A market seller: two kinds by the kilo, and the till. */
function marktstand(kit: Kit): void {
  const own = { Zucker: "Feinzucker", Heidelbeeren: "Blaubeeren", Honig: "Blütenhonig" };
  kit.make(2).forEach((made, index) => kilo(kit, called(perKilogram(made), own), index));
  till(kit, addSheet(kit.marked.book, "Kasse"));
}

/** A market stall. */
export const marktstaende: readonly Layout[] = [
  { name: "Marktstand, Sorten je Kilo und Kasse", language: "de", build: marktstand },
];
