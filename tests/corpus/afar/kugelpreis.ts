import { a1, addSheet, calledFrom, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { usualPrice } from "../unseen/shared";

const VOICE: Voice = {
  lead: "Aushang an der Theke: mit",
  honey: "Honig drin, nicht für Kinder unter 12 Monaten.",
  alcohol: "Alkohol drin, nicht für Kinder, Schwangere und Autofahrer.",
  nuts: "Ganze Nüsse drin, Erstickungsgefahr bei Kindern unter 5 Jahren.",
  egg: "Rohes Eigelb drin, auf 71 °C erhitzt oder pasteurisiert gekauft.",
};

const SAID: readonly Said[] = [
  { label: "Gefriert ab", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Liegt unter Wasser um", inCell: "K", states: "depression", as: "typed" },
  { label: "Wasser im Ansatz", inCell: "g", states: "water", as: "formula", format: "0" },
  {
    ...{ label: "Zucker auf 100 g Wasser", inCell: "g" },
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
  {
    ...{ label: "Vom Wasser gefroren bei −13 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 },
  },
];

/** What was bought and what a kilogram of it costs; gives the cells of these prices. */
function einkauf(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): Spot[] {
  const { random } = kit;
  put(sheet, 0, 0, "Letzte Rechnungen, netto");
  const words = ["Artikel", "Gebinde (kg)", "Gebinde (€)", "Kilopreis (€)", "Lieferung am"];
  const heads = putRow(sheet, 2, 0, words);
  const rows = made.names.map((name, index) => {
    const isTap = made.lines[index]!.en === "water";
    const size = isTap ? 1000 : random.pick([1, 2.5, 5, 10, 25]);
    const paid = Number(
      ((isTap ? 0.004 : usualPrice(random, made.lines[index]!.en)) * size).toFixed(2),
    );
    const day = isTap ? "Hahn" : random.pick(["Mo", "Di", "Do"]);
    return putRow(sheet, 3 + index, 0, [name, size, shown(paid, "0.00"), undefined, day]);
  });
  return beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.00" },
    content: (paid) => `=${a1(paid)}/${a1({ ...paid, column: 1 })}`,
  });
}

/** The batch with what it costs. */
function ansatz(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, prices: readonly Spot[]) {
  const list = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Einwaage g", "Rohstoff", "€/kg", "Wareneinsatz €"],
      cells: (item, grams, index) => [
        ...[grams, item],
        shown(`=${calledFrom({ sheet: sheet.name, row: 0, column: 0 }, prices[index]!)}`, "0.00"),
      ],
      ...{ name: 1, amount: 0 },
    },
  );
  const { heads, names, amounts, end } = list;
  kit.marked.formulaColumns.push({ spots: columnOf(list.rows, 2), heading: heads[2]!, fixed: [] });
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 2 })}/1000`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  put(sheet, end, 1, "Ansatz");
  const cost = sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  const cells = { names, amounts, total, amountLabel: heads[0]!, unit: "g" } as const;
  return { recipe: markRecipe(kit, made, cells), cost, end };
}

/** From the batch to the scoop. */
function kugel(
  kit: Kit,
  sheet: CorpusSheet,
  { total }: MarkedRecipe,
  { cost, end }: { readonly cost: Spot; readonly end: number },
): void {
  const { random } = kit;
  const at = (step: number) => ({ row: end + 2 + step, column: 1 });
  const weight = input(kit, sheet, at(0), {
    ...{ label: "Kugel wiegt (g)", bare: "Kugel wiegt", value: random.pick([55, 60, 65, 70]) },
  });
  const loss = input(kit, sheet, at(1), {
    ...{ label: "Schwund (%)", bare: "Schwund", value: random.pick([4, 5, 8]) },
  });
  const line = (step: number, label: string, content: string | number, format = "0.00"): Spot =>
    putRow(sheet, at(step).row, 1, [label, shown(content, format)])[1]!;
  const kept = `=${a1(total!)}*(1-${a1(loss)}/100)/${a1(weight)}`;
  const count = line(2, "Kugeln aus dem Ansatz", kept, "0.0");
  const cone = line(3, "Waffel und Serviette (€)", random.whole(6, 12) / 100);
  const rent = line(4, "Strom und Miete je Kugel (€)", random.whole(18, 35) / 100);
  const each = line(5, "Kugel kostet (€)", `=${a1(cost)}/${a1(count)}+${a1(cone)}+${a1(rent)}`);
  const price = line(6, "Tafelpreis (€)", random.pick([1.6, 1.7, 1.8, 2]));
  line(7, "Bleibt vor Lohn und Steuer (€)", `=${a1(price)}-${a1(each)}`);
}

const OPEN = [
  ["Di–Do", "12–19"],
  ["Fr, Sa", "12–21"],
  ["So", "11–20"],
] as const;

/** What a scoop costs, from the invoices to the board. */
function kugelpreis(kit: Kit): void {
  const own = { Zucker: "Kristallzucker", "Sahne 35 %": "Schlagsahne 35 %", Salz: "Speisesalz" };
  const made = called(upTo(kit.make(1)[0]!, 2500), own);
  const sheet = addSheet(kit.marked.book, "Kugel");
  const prices = einkauf(kit, addSheet(kit.marked.book, "Rechnungen"), made);
  put(sheet, 0, 0, `Was kostet uns eine Kugel? Sorte: ${made.title}`);
  const { recipe, cost, end } = ansatz(kit, sheet, made, prices);
  kugel(kit, sheet, recipe, { cost, end });
  const said = [...SAID, ...ofAlcohol(made, "Reiner Alkohol", "g")];
  const next = say(sheet, recipe, { row: 3, column: 6 }, said);
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Soll sein" });
  putRow(sheet, next + 2, 6, ["Geöffnet", "Uhr"]);
  OPEN.forEach((cells, index) => putRow(sheet, next + 3 + index, 6, cells));
  tellIn(sheet, recipe, { row: 1, column: 0 }, VOICE);
  note(kit, sheet, end + 11, 1, "Beim nächsten Einkauf nach Palettenpreis fragen.");
}

/** An ice-cream parlour does its sums. */
export const kugelpreise: readonly Layout[] = [
  { name: "Kugelpreis aus den letzten Rechnungen", language: "de", build: kugelpreis },
];
