import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { input } from "../page";
import { perHundred, withLines, type MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { readings } from "../counters/words";

const VOICE: Voice = {
  lead: "Etikett: enthält",
  honey: "Honig, nicht für Kinder unter 12 Monaten geeignet.",
  alcohol: "Enthält Alkohol, Abgabe nur an Erwachsene, nicht für Schwangere, nicht vor der Fahrt.",
  nuts: "Ganze Nüsse, Kinder unter 5 Jahren könnten daran ersticken.",
  egg: "Rohes Eigelb, im Pasteur auf 71 °C halten oder pasteurisiert beziehen.",
};

const WORDS = {
  ...{ Zucker: "Rübenzucker", Magermilchpulver: "Magermilchpulver, sprühgetrocknet" },
  ...{ "Glukosesirup DE 42": "Glukosesirup (DE 42)", Mango: "Mango, püriert" },
};

const SAID: readonly Said[] = [
  { label: "Beginn Gefrieren (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser in 100 g (g)", states: "water", as: "typed", decimals: 1 },
  { label: "Gelöstes in 100 g (g)", states: "dissolved", as: "typed", decimals: 1 },
  {
    label: "Zucker je 100 g Wasser (g)",
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
  {
    label: "Eisanteil der Masse bei −18 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** What comes out of a sack. */
const DRY =
  /^(sugar|sucrose|fructose|salt|citric|inulin|skim milk powder|cocoa|dextrose|desiccated)|nuts|pistachios/;

/** Per cent, the wet lines before the dry ones. */
function wetFirst(made: MadeRecipe): { readonly made: MadeRecipe; readonly wet: number } {
  const { lines, ...rest } = perHundred(made);
  const wet = lines.filter(({ en }) => !DRY.test(en));
  const dry = lines.filter(({ en }) => DRY.test(en));
  const sorted = withLines({ ...rest, lines }, [...wet, ...dry]);
  // neither section is ever empty
  const split = Math.min(Math.max(wet.length, 1), lines.length - 1);
  return { made: called(stillMet(sorted), WORDS), wet: split };
}

interface Part {
  readonly names: readonly Spot[];
  readonly shares: readonly Spot[];
  readonly kilos: readonly Spot[];
  readonly sums: readonly Spot[];
}

interface Lot {
  readonly made: MadeRecipe;
  readonly heads: readonly Spot[];
  readonly batch: Spot;
}

/** One section with its subtotal; the first `from` lines of the recipe are not in it. */
function section(
  kit: Kit,
  sheet: CorpusSheet,
  { made, heads, batch }: Lot,
  place: {
    readonly row: number;
    readonly title: string;
    readonly from: number;
    readonly to: number;
  },
): Part {
  const { row, title, from, to } = place;
  put(sheet, row, 0, title);
  const rows = made.names
    .slice(from, to)
    .map((name, index) =>
      putRow(sheet, row + 1 + index, 0, [name, shown(made.grams[from + index]!, "0.0")]),
    );
  const [names, shares] = [columnOf(rows, 0), columnOf(rows, 1)];
  const kilos = beside(kit, heads[2]!, shares, {
    ...{ sheet, format: "0.00", fixed: [batch] },
    content: (spot) => `=${a1(spot)}/100*${fixed(batch)}`,
  });
  const end = row + 1 + rows.length;
  put(sheet, end, 0, "zusammen");
  const sums = [shares, kilos].map((parts, at) =>
    sumOf(kit, sheet, { row: end, column: 1 + at }, parts, at === 0 ? "0.0" : "0.00"),
  );
  return { names, shares, kilos, sums };
}

/** One batch in two sections, wet and dry. */
function charge(kit: Kit, original: MadeRecipe, index: number): void {
  const { made, wet } = wetFirst(original);
  const sheet = addSheet(kit.marked.book, `Sorte ${index + 1}`);
  putRow(sheet, 0, 0, ["Sorte", made.title]);
  const words = { label: "Charge (kg)", bare: "Charge", value: kit.random.pick([30, 45, 60]) };
  const batch = input(kit, sheet, { row: 1, column: 0 }, words);
  const heads = putRow(sheet, 3, 0, ["Rohstoff", "Massen-%", "kg in die Charge"]);
  const lot = { made, heads, batch };
  const last = made.names.length;
  const vat = section(kit, sheet, lot, { row: 4, title: "Flüssig und Frucht", from: 0, to: wet });
  const row = 6 + wet;
  const sacks = section(kit, sheet, lot, { row, title: "Trocken dazu", from: wet, to: last });
  const end = row + 3 + last - wet;
  put(sheet, end, 0, "Charge gesamt");
  const [total] = [0, 1].map((at) => {
    const parts = [vat.sums[at]!, sacks.sums[at]!];
    const format = at === 0 ? "0.0" : "0.00";
    const spot = put(sheet, end, 1 + at, shown(`=${parts.map(a1).join("+")}`, format));
    kit.marked.sums.push({ spot, parts });
    return spot;
  });
  const recipe = markRecipe(kit, made, {
    ...{ names: [...vat.names, ...sacks.names], amounts: [...vat.shares, ...sacks.shares] },
    ...{ alsoAmounts: [...vat.kilos, ...sacks.kilos], total: total!, unit: "%" },
    amountLabel: heads[1]!,
  });
  const said = [...SAID, ...ofAlcohol(made, "Alkohol in 100 g (g)")];
  const next = say(sheet, recipe, { row: 3, column: 4 }, said);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Ziel" });
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, VOICE);
}

/** Two kinds of a farm dairy, and its cold store. */
function hofmolkerei(kit: Kit): void {
  kit.make(2).forEach((made, index) => charge(kit, made, index));
  const sheet = addSheet(kit.marked.book, "Kühllager");
  const heads: [string, ...string[]] = ["KW", "Lager 1 (°C)", "Lager 2 (°C)", "Wagen (°C)"];
  const when = [18, 19, 20, 21, 22];
  const ranges = [[-24, -20] as const, [-25, -21] as const, [-19, -15] as const];
  const end = readings(kit, sheet, { row: 0, column: 0 }, { heads, when, ranges });
  note(kit, sheet, end + 1, 0, "Messung immer donnerstags vor der Tour.");
}

/** A farm dairy that sells by the tub. */
export const hofmolkereien: readonly Layout[] = [
  { name: "Hofmolkerei, Massenprozent in zwei Abschnitten", language: "de", build: hofmolkerei },
];
