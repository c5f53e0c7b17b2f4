import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { page, input } from "../page";
import type { MarkedRecipe } from "../marks";
import { answer, markRecipe, sumAt, tellAll } from "./marking";
import { ownTable } from "./labels";

/** The sum of one phase under its lines; the answers read over it, so it is no sum to be spoiled. */
function phase(sheet: CorpusSheet, top: number, lines: readonly (readonly Spot[])[]): Spot {
  put(sheet, top + lines.length, 0, "Zwischensumme");
  return put(sheet, top + lines.length, 1, `=SUM(${span(lines.map(([, amount]) => amount!))})`);
}

const lineAt = (kit: Kit, sheet: CorpusSheet, row: number, name: string, grams: number) =>
  putRow(sheet, row, 0, [name, grams, "g", kit.random.pick(["wiegen", undefined, "sieben"])]);

/** Answers under a card in two phases; they read over both and their sums. */
function cardAnswers(sheet: CorpusSheet, recipe: MarkedRecipe, row: number, temperature: Spot) {
  const [names, amounts] = [recipe.names, recipe.amounts].map(span);
  const lines = `${names!},${amounts!}`;
  const freezing = { states: "freezing point", as: "formula" } as const;
  if (answer(sheet, recipe, ["Gefrierpunkt", row, 0], [row, 1], freezing, lines)) {
    put(sheet, row, 2, "°C");
  }
  const ice = { states: "ice of water", as: "formula", percent: "format", temperature } as const;
  const plan = { ...ice, temperatureC: -13 };
  const words = "Anteil des Wassers als Eis beim Servieren";
  answer(sheet, recipe, [words, row + 1, 0], [row + 1, 1], plan, lines);
  const alcohol = { states: "alcohol", as: "typed", decimals: 1 } as const;
  answer(sheet, recipe, ["Reiner Alkohol (g)", row + 2, 0], [row + 2, 1], alcohol);
}

/** A card with head data, then a base and what is added to it, each with its sum. */
function twoPhases(kit: Kit): void {
  const [made] = kit.make(1);
  const sheet = addSheet(kit.marked.book, "Mischkarte");
  putRow(sheet, 0, 0, ["Sorte", made!.title]);
  putRow(sheet, 1, 0, ["Charge", `L-${kit.random.whole(100, 999)}`]);
  putRow(sheet, 2, 0, ["Datum", shown(46220, "dd.mm.yyyy")]);
  const serving = { label: "Serviertemperatur (°C)", bare: "Serviertemperatur", value: -13 };
  const temperature = input(kit, sheet, { row: 4, column: 0 }, serving);
  putRow(sheet, 7, 0, ["Rohstoff", "Einwaage", "Einheit", "Tätigkeit"]);
  const middle = Math.min(made!.names.length - 1, 3);
  put(sheet, 8, 0, "A  Grundmasse");
  const lines = made!.names.map((name, index) => {
    const row = index < middle ? 9 + index : 11 + index;
    return lineAt(kit, sheet, row, name, made!.grams[index]!);
  });
  const base = phase(sheet, 9, lines.slice(0, middle));
  put(sheet, 10 + middle, 0, "B  Zugabe nach dem Reifen");
  const added = phase(sheet, 11 + middle, lines.slice(middle));
  const end = added.row + 1;
  put(sheet, end, 0, "Ansatz gesamt");
  const total = put(sheet, end, 1, `=${a1(base)}+${a1(added)}`);
  putRow(sheet, 5, 0, ["Ansatzgröße (g)", `=${a1(total)}`]);
  const [names, amounts, unitCells] = [0, 1, 2].map((at) => lines.map((each) => each[at]!));
  const cells = { names: names!, amounts: amounts!, unitCells: unitCells!, total };
  const recipe = markRecipe(kit, made!, cells);
  nameTarget(sheet, recipe, { row: 3, column: 0, label: "Ziel" });
  cardAnswers(sheet, recipe, end + 2, temperature);
  tell(kit, sheet, recipe, { row: end + 6, column: 0, as: "pair" });
  note(kit, sheet, end + 10, 0, "Geprüft und freigegeben:");
}

/** The same kind of card as a file of values. */
function exportedCard(kit: Kit): void {
  const [made] = kit.make(1);
  const sheet = addSheet(kit.marked.book, "Karte");
  putRow(sheet, 0, 0, ["Mischkarte", made!.title]);
  putRow(sheet, 1, 0, ["Stand", "Juli"]);
  putRow(sheet, 4, 0, ["Pos", "Menge", "Einheit", "Rohstoff", "Allergene"]);
  const amounts = made!.grams.map((grams, index) => put(sheet, 5 + index, 1, grams));
  const names = made!.names.map((name, index) => put(sheet, 5 + index, 3, name));
  const unitCells = names.map(({ row }, index) => {
    put(sheet, row, 0, `P${index + 1}`);
    return put(sheet, row, 2, "g");
  });
  const end = 5 + names.length;
  const total = sumAt(kit, sheet, [end, 1], amounts);
  putRow(sheet, end, 2, ["g", "Summe"]);
  const recipe = markRecipe(kit, made!, { names, amounts, unitCells, total });
  if (made!.flagged) {
    made!.lines.forEach(({ allergen }, index) => {
      if (allergen !== undefined) recipe.flags.push(put(sheet, 5 + index, 4, allergen.de));
    });
  }
  const row = end + 1;
  const typed = { as: "typed", states: "freezing point" } as const;
  if (answer(sheet, recipe, ["Gefrierpunkt", row, 3], [row, 1], typed)) put(sheet, row, 2, "°C");
  const water = { as: "typed", states: "water", decimals: 0 } as const;
  answer(sheet, recipe, ["Wasser insgesamt", row + 1, 3], [row + 1, 1], water);
  put(sheet, row + 1, 2, "g");
  nameTarget(sheet, recipe, { row: 2, column: 0, label: "Ziel" });
  tellAll(sheet, [recipe], [row + 3, 0]);
}

/** Finishes in columns, on bases of the house that stand on a sheet of their own. */
function finishes(kit: Kit): void {
  const { random, marked } = kit;
  const cooked = addSheet(marked.book, "Fresh mixes");
  kit.make(2).reduce(
    (top, made) =>
      page(kit, cooked, made, {
        ...{ top, left: 1, titleGap: 0, tell: "pair", target: "Serving target" },
        list: {
          columns: ["unit", "amount", "name"],
          headings: { unit: "unit", amount: "how much", name: "of what" },
          ...{ unit: "g", total: "all in all" },
        },
        results: { place: "right", plans: [{ states: "dissolved", as: "typed", decimals: 0 }] },
      }),
    0,
  );
  const bases = addSheet(marked.book, "House bases");
  const table = ownTable(kit, bases, [0, 0], ["plain base", "fruit base", "herb base"]);
  const sheet = addSheet(marked.book, "Finishes");
  const items = ["plain base", "fruit base", "water", "lemon juice"];
  const heads = putRow(sheet, 0, 0, ["Finish (g)", "No. 1", "No. 2", "No. 3"]);
  const names = items.map((item, index) => put(sheet, 1 + index, 0, item));
  put(sheet, 6, 0, "Batch (g)");
  put(sheet, 7, 0, "Freezing point (°C)");
  heads.slice(1).forEach(({ column }) => {
    const grams = items.map((_, index) => put(sheet, 1 + index, column, random.whole(5, 40) * 5));
    sumAt(kit, sheet, [6, column], grams);
    const lines = `$${span(names).replace(":", ":$")},${span(grams)}`;
    put(sheet, 7, column, shown(`=RIME.FREEZINGPOINT(${lines},'House bases'!${table})`, "0.00"));
  });
  note(kit, sheet, 9, 0, "Numbers on the tubs are those of the columns.");
}

/** Cards of one batch and of what is made from it. */
export const cards: readonly Layout[] = [
  { name: "Grundmasse und Zugabe", language: "de", build: twoPhases },
  { name: "Mischkarte als Werte", language: "de", isCsv: true, build: exportedCard },
  { name: "finishes on bases of the house", language: "en", build: finishes },
];
