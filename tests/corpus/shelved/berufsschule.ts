import { a1, addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { allergensOf, cautionsIn, type Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { listed } from "../newcomers/words";
import { solution } from "../solution";
import { tableAt, worked } from "./words";

const VOICE: Voice = {
  lead: "Allergene",
  honey: "Honig – Säuglinge unter 12 Monaten dürfen das nicht essen.",
  alcohol: "Alkohol – nichts für Kinder, Schwangere und Autofahrende.",
  nuts: "Ganze Nüsse – Verschlucken möglich, nicht unter 5 Jahren.",
  egg: "Eigelb roh – Masse auf 71 °C bringen oder pasteurisierte Ware.",
};

/** Five syrups of the store room, their strength said in both ways. */
function syrups(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Aufgabe 1: Läuterzucker. Ergänzen Sie beide Spalten!");
  const water = kit.random.pick([500, 1000]);
  const [heads, ...rows] = tableAt(sheet, { row: 2, column: 0 }, [
    ["Topf", "Wasser (g)", "Zucker (g)", "g Zucker auf 100 g Wasser", "Massenanteil Zucker (%)"],
    ...[0.4, 0.6, 0.8, 1, 1.3].map((part, at) => [at + 1, water, Math.round(water * part)]),
  ]);
  const cells = rows.map(([, wet, sugar]) => {
    const [w, s] = [a1(wet!), a1(sugar!)];
    const perWater = put(sheet, wet!.row, 3, shown(`=${s}/${w}*100`, "0.0"));
    const share = put(sheet, wet!.row, 4, shown(`=${s}/(${s}+${w})*100`, "0.0"));
    kit.marked.strengths.push({ water: wet!, sugar: sugar!, perWater, share });
    return [perWater, share];
  });
  worked(kit, heads![3]!, columnOf(cells, 0));
  worked(kit, heads![4]!, columnOf(cells, 1));
}

/** The freezing point of a syrup, by hand. */
function byHand(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 10, 0, "Aufgabe 2: Eine Zuckerlösung für Wassereis gefriert. Rechnen Sie vor.");
  solution(kit, sheet, {
    ...{ top: 12, left: 0, count: 2 },
    headings: [
      "Zutat",
      "Einwaage (g)",
      "molare Masse (g/mol)",
      "Teilchen",
      "Teilchen, Stoffmenge (mol)",
    ],
    words: {
      water: ["Wasser im Topf (g)", "Wasser im Topf"],
      constant: "kryoskopische Konstante (K·kg/mol)",
      depression: "Gefrierpunkt sinkt um (K)",
      freezingPoint: "gefriert ab (°C)",
      proviso: (gap) => `Gilt für ideale Lösungen, hier auf ${gap} K genau.`,
    },
  });
}

const SAID: readonly Said[] = [
  { label: "Gefrierbeginn (°C)", states: "freezing point", as: "typed", decimals: 1 },
  {
    label: "Zuckerarten auf 100 g Wasser (g)",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
  { label: "Wasser je 100 g Mix (g)", states: "water", as: "formula", format: "0.0" },
  { label: "gelöst je 100 g Mix (g)", states: "dissolved", as: "typed", decimals: 1 },
  {
    label: "Eisanteil im Mix bei −12 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  },
];

/** The order of the day: per cent at the left, what the groups weigh at the right. */
function order(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, group: string): void {
  const top = 4;
  put(sheet, 0, 0, `Lernsituation ${group}: Der Kunde bestellt ${made.title}`);
  const [label, size] = putRow(sheet, 2, 0, ["Bestellte Masse (kg)", kit.random.pick([3, 4.5, 6])]);
  kit.marked.inputs.push({ label: label!, value: size!, bare: "Bestellte Masse" });
  const list = listed(
    sheet,
    made,
    { row: top, column: 0 },
    {
      heads: ["Rohstoff", "Rezept in %", "Einwaage (g)", "gewogen von"],
      cells: (item, grams) => [item, shown(grams, "0.0")],
    },
  );
  const { names, amounts, heads, end } = list;
  const home = `$B$${size!.row + 1}`;
  const weigh = amounts.map((spot) =>
    put(sheet, spot.row, 2, shown(`=${a1(spot)}*${home}*10`, "0")),
  );
  worked(kit, heads[2]!, weigh, [size!]);
  put(sheet, end, 0, "Kontrolle");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 2 }, weigh, "0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: weigh, total, amountLabel: heads[1]!, unit: "%" },
  });
  const next = say(sheet, recipe, { row: top + 1, column: 5 }, SAID);
  const { target } = made;
  if (target !== null) {
    put(sheet, next, 5, "Kundenwunsch");
    recipe.targets.push(put(sheet, next, 6, target));
  }
  [
    [VOICE.lead, allergensOf(made)],
    ["Hinweis", cautionsIn(made, VOICE)],
  ].forEach(([lead, text], at) => {
    if (text === "") return;
    recipe.flags.push(...putRow(sheet, end + 2 + at, 0, [lead!, text!]));
  });
}

/** Two orders and the sums that belong to them. */
function berufsschule(kit: Kit): void {
  const own = { Zucker: "Kristallzucker", Wasser: "Trinkwasser", Eigelb: "Eidotter" };
  const [first, second] = kit.make(2).map((made) => called(largestFirst(made), own));
  order(kit, addSheet(kit.marked.book, "LS 3.1"), first!, "3.1");
  order(kit, addSheet(kit.marked.book, "LS 3.2"), second!, "3.2");
  const sheet = addSheet(kit.marked.book, "Fachrechnen");
  syrups(kit, sheet);
  byHand(kit, sheet);
  note(kit, sheet, 8, 6, "Lösungen erst nach der Besprechung ausgeben.");
}

/** A vocational school for confectioners. */
export const berufsschulen: readonly Layout[] = [
  { name: "Berufsschule, Lernsituationen und Fachrechnen", language: "de", build: berufsschule },
];
