import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { say, sumOf, type Said } from "../layouts/parts";
import { boozyFirst } from "../lodgers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { lineup, SCHLICHT } from "./words";

const SAID: readonly Said[] = [
  { label: "GP", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "GP-Erniedr.", inCell: "K", states: "depression", as: "formula" },
  { label: "Wasser ges.", inCell: "g", states: "water", as: "formula", format: "0" },
  { label: "Zucker je 100 g Wasser", inCell: "g", states: "sugar per 100 g water", as: "typed" },
  {
    ...{ label: "Eis v. Wasser, −18 °C", inCell: "%", states: "ice of water", as: "typed" },
    ...{ temperatureC: -18, decimals: 0 },
  },
];

/** One ice, its answers over the list, because that is where there was room. */
function ice(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): number {
  put(sheet, row, 0, made.title);
  put(sheet, row + 1, 0, "Ansatz f. Verkostung");
  const { recipe, end } = lineup(kit, sheet, made, {
    ...{ row: row + 2, column: 5, heads: ["Rohstoff", "Einh.", "Soll", "Ist"], name: 0, amount: 2 },
    cells: (name, amount) => [name, "g", amount],
    ...{ unit: "g", unitAt: 1, format: "0", total: { label: "Summe" } },
  });
  const said = [...SAID, ...ofAlcohol(made, "Reinalkohol", "g")];
  const next = say(sheet, recipe, { row: row + 2, column: 0 }, said);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Verw." });
  const last = Math.max(end, next + 1);
  tellIn(sheet, recipe, { row: last, column: 0 }, SCHLICHT);
  return last + 3;
}

const SPIRITS: readonly (readonly [string, number, number])[] = [
  ["Zwetschgenbrand", 410, 430],
  ["Quittenbrand", 400, 420],
  ["Apfelwein trocken", 58, 66],
  ["Schlehengeist", 390, 410],
];

/** What each bottle brings, per cent by volume made grams. */
function bottles(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 1, "Flaschen auf der Theke – wieviel Alkohol steckt drin?");
  const heads = putRow(sheet, 2, 1, ["% vol", "Flasche", "abgewogen g", "Ethanol g"]);
  const rows: readonly Spot[][] = SPIRITS.map(([name, from, to], index) => {
    const strength = shown(random.whole(from, to) / 10, "0.0");
    const [abv, , grams] = putRow(sheet, 3 + index, 1, [strength, name, random.whole(4, 20) * 10]);
    const content = `=RIME.ABVTOMASSFRACTION(${a1(abv!)})*${a1(grams!)}`;
    const alcohol = put(sheet, 3 + index, 4, shown(content, "0.0"));
    marked.alcohols.push({ grams: grams!, abv: abv!, alcohol });
    return [grams!, alcohol];
  });
  marked.formulaColumns.push({ spots: columnOf(rows, 1), heading: heads[3]!, fixed: [] });
  const end = 3 + SPIRITS.length;
  put(sheet, end, 2, "alle zus.");
  sumOf(kit, sheet, { row: end, column: 3 }, columnOf(rows, 0));
  sumOf(kit, sheet, { row: end, column: 4 }, columnOf(rows, 1), "0.0");
  put(
    sheet,
    end + 2,
    1,
    "Alles mit Alkohol: ab 18, nicht für Schwangere, nicht vor dem Autofahren.",
  );
  note(kit, sheet, end + 4, 1, "Etiketten kommen erst im Oktober.");
}

/** A distillery with a tasting room. */
function brennerei(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis Verkostung");
  let row = 0;
  for (const made of boozyFirst(kit, 3)) row = ice(kit, sheet, called(made, WORDS), row);
  bottles(kit, addSheet(kit.marked.book, "Theke"));
}

const WORDS = { Zucker: "Weißzucker", Wasser: "Leitungswasser" };

/** Sheets of a distillery. */
export const brennereien: readonly Layout[] = [
  { name: "Brennerei, Verkostungseis untereinander, Theke", language: "de", build: brennerei },
];
