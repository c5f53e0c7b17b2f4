import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { DEUTSCH, pricesOf, shares, thermometer } from "./words";

const VOICE: Voice = {
  ...DEUTSCH,
  lead: "Deklarieren:",
  nuts: "Ganze Nüsse: erst ab 5 Jahren, Erstickungsgefahr.",
};

const said = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefrierpunkt °C", states: "freezing point", as: "typed" },
  { label: "Erniedrigung K", states: "depression", as: "typed" },
  { label: "Wasser g je 100 g", states: "water", as: "typed", decimals: 1 },
  {
    label: "gefrorenes Wasser bei -18 °C in % des Wassers",
    ...{ states: "ice of water", as: "typed", temperatureC: -18 },
  },
  {
    label: "Eis bei -18 °C in % der Masse",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18 },
  },
  { label: "Zucker in % der Masse", states: "sugar share", as: "typed" },
  ...ofAlcohol(made, "Alkohol g je 100 g"),
];

/** A flavour with its list and its answers; gives the next free row and its cost. */
function lolly(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  top: number,
  prices: ReadonlyMap<string, number>,
) {
  putRow(sheet, top, 0, ["Lolli", made.title, "Form", kit.random.pick(["Rakete", "Herz", "Stab"])]);
  const list = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    {
      heads: ["Zutat", "Anteil %", "Preis EUR/kg", "EUR je 100 kg"],
      cells: (item, share) => [item, share, shown(prices.get(item)!, "0.00")],
    },
  );
  const { heads, names, amounts, end } = list;
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 2 })}`,
  });
  put(sheet, end, 0, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  const cells = { names, amounts, total, amountLabel: heads[1]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "%" });
  let next = say(sheet, recipe, { row: end + 1, column: 0 }, said(made));
  if (made.target !== null)
    nameTarget(sheet, recipe, { row: next++, column: 0, label: "Sollbiss" });
  next = tellIn(sheet, recipe, { row: next, column: 0 }, VOICE);
  return { next: next + 1, cost };
}

/** What each kind costs, side by side once more. */
function compared(
  kit: Kit,
  sheet: CorpusSheet,
  row: number,
  list: readonly { readonly title: string; readonly cost: Spot }[],
): void {
  const heads = putRow(sheet, row, 0, ["Vergleich", "EUR je 100 kg", "EUR je Lolli zu 65 g"]);
  const taken = list.map(
    ({ title, cost }, index) =>
      putRow(sheet, row + 1 + index, 0, [title, shown(`=${a1(cost)}`, "0.00")])[1]!,
  );
  beside(kit, heads[2]!, taken, {
    ...{ sheet, format: "0.000" },
    content: (spot) => `=${a1(spot)}/100000*65`,
  });
}

/** A file with decimal commas, flavour under flavour. */
function nachkalkulation(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Nachkalkulation");
  putRow(sheet, 0, 0, ["Lolliwerkstatt", "Nachkalkulation", "2. Quartal"]);
  let top = 2;
  const own = { Kakaopulver: "Kakao", "Sahne 35 %": "Rahm 35 %", Naturjoghurt: "Vollmilchjoghurt" };
  const mades = kit.make(3).map((made) => called(hundred(made), own));
  const prices = pricesOf(kit, mades);
  const list = mades.map((made) => {
    const { next, cost } = lolly(kit, sheet, made, top, prices);
    top = next;
    return { title: made.title, cost };
  });
  compared(kit, sheet, top, list);
  top = thermometer(
    kit,
    sheet,
    { row: top + 5, column: 0 },
    {
      heads: ["Solebad am", "Bad °C", "Lolli im Kern °C"],
      lines: ["12.06.", "13.06.", "14.06.", "17.06."],
      from: [
        [-34, -30],
        [-24, -19],
      ],
    },
  );
  top = shares(
    kit,
    sheet,
    { row: top + 1, column: 0 },
    {
      heads: ["Ausschuss wegen", "% des Ausschusses"],
      parts: ["Stiel schief", "Bruch", "Luftblase", "Sonstiges"],
      total: "gesamt",
    },
  );
  note(kit, sheet, top + 1, 0, "Strom fürs Solebad ist hier nicht drin");
}

/** A lolly maker's file. */
export const nachkalkulationen: readonly Layout[] = [
  {
    ...{ name: "Nachkalkulation der Lolliwerkstatt als Datei", language: "de" },
    isCsv: true,
    build: nachkalkulation,
  },
];
