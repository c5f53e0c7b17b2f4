import {
  a1,
  addSheet,
  calledFrom,
  fixed,
  put,
  putRow,
  shown,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { ofAlcohol } from "../pilgrims/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { tellIn, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Aushang: enthält",
  honey: "Honig: kein Eis für Kinder unter 12 Monaten.",
  alcohol: "Alkohol: nur für Erwachsene, nicht für Schwangere, nicht vor dem Fahren.",
  nuts: "Ganze Nüsse: unter 5 Jahren Gefahr des Verschluckens und Erstickens.",
  egg: "Rohes Eigelb: Masse auf 71 °C bringen oder pasteurisiertes Eigelb.",
};

const REMARKS = ["aus dem Garten", "vorher sieben", "neue Tüte", "fehlt noch", "im Keller"];

const saidOf = (made: MadeRecipe): readonly Said[] => [
  {
    label: "Fängt an zu gefrieren bei",
    inCell: "°C",
    states: "freezing point",
    as: "typed",
    decimals: 1,
  },
  { label: "Wasser zusammen", inCell: "g", states: "water", as: "formula", format: "0" },
  { label: "Gelöst zusammen", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "Eis im Becher bei −15 °C", inCell: "% vom Ganzen", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -15, decimals: 0 },
  },
  ...ofAlcohol(made, { label: "Alkohol", inCell: "g" }),
];

interface Entry {
  readonly recipe: MarkedRecipe;
  readonly batches: Spot;
  readonly next: number;
}

/** How often it is made, its list, the same for all batches, and what it does at the right. */
function entry(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): Entry {
  const { random } = kit;
  put(sheet, top, 0, made.title);
  put(sheet, top, 5, "Für einen Ansatz");
  const batches = putRow(sheet, top, 1, ["Ansätze", random.whole(2, 4)])[1]!;
  const list = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    {
      heads: ["Zutat", "1 Ansatz (g)", "alle Ansätze (g)", "Bemerkung"],
      cells: (name, grams) => [
        ...[name, grams, undefined],
        random.next() < 0.3 ? random.pick(REMARKS) : undefined,
      ],
    },
  );
  const { heads, names, amounts, end } = list;
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [batches] },
    content: (spot) => `=${a1(spot)}*${fixed(batches)}`,
  });
  put(sheet, end, 0, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0");
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0");
  const cells = { names, amounts, alsoAmounts, unit: "g", amountLabel: heads[1]!, total } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: top + 1, column: 5 }, saidOf(made));
  nameTarget(sheet, recipe, { row: next, column: 5, label: "So soll es sein" });
  const last = tellIn(sheet, recipe, { row: end + 1, column: 0 }, VOICE);
  return { recipe, batches, next: Math.max(last, next + 1) + 1 };
}

/** Adds up what all of them need, cell by cell. */
function shopping(kit: Kit, sheet: CorpusSheet, entries: readonly Entry[]): void {
  put(sheet, 0, 0, "Einkaufszettel");
  putRow(sheet, 2, 0, ["Was", "Wie viel (g)", "erledigt"]);
  const names = itemsOf(entries.map(({ recipe }) => recipe.made));
  const rows = names.map((name, index) => {
    const home = { sheet: sheet.name, row: 3 + index, column: 1 };
    const cells = entries.flatMap(({ recipe: { made, alsoAmounts } }) =>
      made.names.flatMap((each, at) => (each === name ? [alsoAmounts[at]!] : [])),
    );
    const formula = `=${cells.map((spot) => calledFrom(home, spot)).join("+")}`;
    return putRow(sheet, home.row, 0, [name, shown(formula, "0")]);
  });
  put(sheet, 3 + rows.length, 0, "zu tragen");
  sumOf(kit, sheet, { row: 3 + rows.length, column: 1 }, columnOf(rows, 1), "0");
}

/** Four recipes under one another, and the list for the shop. */
function strassenfest(kit: Kit): void {
  const { book } = kit.marked;
  const sheet = addSheet(book, "Rezepte");
  put(sheet, 0, 0, "Eis fürs Straßenfest");
  let top = 2;
  const entries = kit.make(4).map((made) => {
    const next = entry(kit, sheet, made, top);
    top = next.next;
    return next;
  });
  note(kit, sheet, top, 0, "Die Maschine fasst höchstens einen Ansatz auf einmal.");
  shopping(kit, addSheet(book, "Einkauf"), entries);
}

/** Neighbours who make ice for their street. */
export const strassenfeste: readonly Layout[] = [
  {
    name: "Straßenfest, Rezepte untereinander und Einkaufszettel",
    language: "de",
    build: strassenfest,
  },
];
