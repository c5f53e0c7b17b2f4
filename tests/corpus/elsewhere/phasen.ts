import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { labelWords, type MadeRecipe } from "../recipes";
import { temperatures, upTo } from "../strollers/words";
import { cautionsBelow, ifAlcoholic } from "./words";

const WET = /water|milk$|cream|juice|honey|syrup|vodka|coffee|yogurt/;

/** Which lines go into the kettle first. */
const phases = ({ lines }: MadeRecipe): readonly (readonly [string, readonly number[]])[] => {
  const all = lines.map((_, index) => index);
  const isWet = (index: number) => WET.test(lines[index]!.en);
  const parts = [all.filter(isWet), all.filter((index) => !isWet(index))] as const;
  return (["Phase A: flüssig vorlegen", "Phase B: einrühren"] as const).flatMap((name, at) =>
    parts[at]!.length > 0 ? [[name, parts[at]!] as const] : [],
  );
};

const saidOf = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "typed" },
  { label: "Wassergehalt der Charge", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "gelöst", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "ausgefroren bei −20 °C, vom Wasser", inCell: "%", states: "ice of water" },
    ...{ as: "typed", temperatureC: -20 },
  },
  ...ifAlcoholic(made, {
    ...{ label: "Ethanol", inCell: "g", states: "alcohol", as: "typed", decimals: 1 },
  }),
];

/** The lines in their phases, each with its own sum, the batch's sum at the end. */
function inPhases(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const heads = putRow(sheet, 4, 0, ["Rohstoff", "Charge Nr.", "Soll [g]", "Anteil [%]"]);
  const [names, amounts]: [Spot[], Spot[]] = [[], []];
  const sums: Spot[] = [];
  let row = 5;
  for (const [phase, indices] of phases(made)) {
    put(sheet, row++, 0, phase);
    const own = indices.map((index) => {
      const lot = `${kit.random.pick(["K", "M", "T"])}${kit.random.whole(100, 999)}`;
      const cells = putRow(sheet, row++, 0, [made.names[index], lot, made.grams[index]]);
      [names[index], amounts[index]] = [cells[0]!, cells[2]!];
      return cells[2]!;
    });
    put(sheet, row, 0, `Summe ${phase.slice(0, 7)}`);
    sums.push(sumOf(kit, sheet, { row: row++, column: 2 }, own));
  }
  put(sheet, row, 0, "Charge gesamt");
  const total = put(sheet, row, 2, `=${sums.map(a1).join("+")}`);
  if (sums.length > 1) kit.marked.sums.push({ spot: total, parts: sums });
  const alsoAmounts = amounts.map((spot) =>
    put(sheet, spot.row, 3, shown(`=100*${a1(spot)}/${fixed(total)}`, "0.0")),
  );
  const amountLabel = heads[2]!;
  return markRecipe(kit, made, { names, amounts, alsoAmounts, total, amountLabel, unit: "g" });
}

const PROCESS: readonly (readonly [string, number, number])[] = [
  ["Pasteurisieren, 30 s", 82, 85],
  ["Rückkühlen", 3, 5],
  ["Ausstoß Gefrierer", -7, -5],
  ["Schockfroster, Kern", -26, -20],
  ["Lager", -24, -21],
];

/** How the batch was led. */
function process(kit: Kit, sheet: CorpusSheet): void {
  const heads = putRow(sheet, 4, 5, ["Prozess", "Temperatur [°C]", "Uhrzeit", "Kürzel"]);
  const rows = PROCESS.map(([step, from, to], index) =>
    putRow(sheet, 5 + index, 5, [
      ...[step, kit.random.whole(from, to), `${7 + index}:${kit.random.whole(10, 55)}`],
      kit.random.pick(["ma", "be", "lu"]),
    ]),
  );
  temperatures(kit, heads[1]!, columnOf(rows.slice(3), 1));
}

/** A batch record. */
function batch(kit: Kit): void {
  const own = { Vollmilch: "Vollmilch 3,5 %", Zucker: "Rübenzucker", Wasser: "Trinkwasser" };
  const made = called(upTo(kit.make(1)[0]!, 12000), own);
  const sheet = addSheet(kit.marked.book, "Protokoll");
  put(sheet, 0, 0, "HERSTELLPROTOKOLL");
  putRow(sheet, 1, 0, ["Produkt", made.title]);
  putRow(sheet, 2, 0, ["Los", `L26-${kit.random.whole(100, 365)}`]);
  const recipe = inPhases(kit, sheet, made);
  process(kit, sheet);
  const next = say(sheet, recipe, { row: 12, column: 5 }, saidOf(made));
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Zielvorgabe" });
  const allergens = made.flagged ? labelWords(made, "allergen").join(", ") : "";
  const below = next + 2;
  if (allergens !== "") recipe.flags.push(...putRow(sheet, below, 5, ["Allergene", allergens]));
  const last = cautionsBelow(sheet, recipe, { row: below + 1, column: 5 });
  note(kit, sheet, last + 1, 5, "Rückstellmuster 2 Becher, Fach 4");
}

/** A small ice factory. */
export const phasen: readonly Layout[] = [
  { name: "Manufaktur, Herstellprotokoll in Phasen", language: "de", build: batch },
];
