import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import {
  freezesAt,
  markRecipe,
  problems,
  say,
  sumOf,
  type Problem,
  type Said,
} from "../layouts/parts";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf, temperatures } from "../strollers/words";
import { heedAt, readings } from "./worte";

const HEADS = [
  ...["Gruppe", "Stoff", "m in g", "M in g/mol", "i", "m(Wasser) in g", "n · i in mol"],
  ...["ΔT = Kf · n · i / m(Wasser), in K", "ϑ berechnet in °C", "ϑ am Haltepunkt in °C"],
];

/** A group's row: weighed, worked out, read. */
function group(
  kit: Kit,
  { solute, waterGrams, grams }: Problem,
  row: number,
  { constant, proviso }: { readonly constant: Spot; readonly proviso: Spot },
): Spot[] {
  const sheet = kit.marked.book.sheets[0]!;
  const { de, en, molarMass, particles: count } = solute;
  const contents = [`G${row - 6}`, de, grams, shown(molarMass, "0.00"), count, waterGrams];
  const [, name, mass, molar, particles, water] = putRow(sheet, row, 0, contents) as [
    ...[Spot, Spot, Spot, Spot, Spot, Spot],
  ];
  const dissolved = `=${a1(mass)}/${a1(molar)}*${a1(particles)}`;
  const moles = put(sheet, row, 6, shown(dissolved, "0.0000"));
  const law = `=${fixed(constant)}*${a1(moles)}/(${a1(water)}/1000)`;
  const depression = put(sheet, row, 7, shown(law, "0.00"));
  const freezingPoint = put(sheet, row, 8, shown(`=-${a1(depression)}`, "0.00"));
  const halt = freezesAt(["water", en], [waterGrams, grams]);
  const read = put(sheet, row, 9, shown(halt, "0.0"));
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
  });
  return [moles, depression, freezingPoint, read];
}

/** What the thermometer in the cooling mix showed minute by minute. */
function cooling(kit: Kit, sheet: CorpusSheet, top: number): void {
  putRow(sheet, top, 0, ["Kältemischung: 3 Teile Eis, 1 Teil Kochsalz (nach Masse)"]);
  const heads = putRow(sheet, top + 1, 0, ["t in min", "ϑ in °C"]);
  for (let step = 0; step < 7; step += 1) put(sheet, top + 2 + step, 0, 2 * step);
  readings(kit, sheet, heads[1]!, { count: 7, tenths: [-198, -21], falling: true });
  note(kit, sheet, top + 10, 0, "Thermometer nicht zum Rühren nehmen! Handschuhe tragen.");
}

/** What is known of the ice. */
const ICE: readonly Said[] = [
  { label: "Gefrierpunkt der Eismasse (°C)", states: "freezing point", as: "formula" },
  { label: "Wassermenge (g)", states: "water", as: "typed", decimals: 0 },
  { label: "gelöste Stoffe (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Wasser, das bei −15 °C zu Eis geworden ist (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -15, decimals: 0 },
  },
];

/** The ice that is stirred in the cooling mix. */
function stirred(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis aus dem Becherglas");
  const [made] = madeOf(kit, 1, (each) => !isAlcoholic(each)) as [MadeRecipe];
  put(sheet, 0, 0, `${made.title}, in der Küche zubereitet und nicht im Physikraum`);
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    { heads: ["Zutat", "m in g", "w in %"], cells: (name, grams) => [name, grams] },
  );
  const { heads, names, amounts, end } = list;
  put(sheet, end, 0, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const shares = amounts.map((spot) =>
    put(sheet, spot.row, 2, shown(`=${a1(spot)}/${fixed(total)}*100`, "0.0")),
  );
  sumOf(kit, sheet, { row: end, column: 2 }, shares, "0.0");
  kit.marked.formulaColumns.push({ spots: shares, heading: heads[2]!, fixed: [total] });
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: shares, unit: "g", amountLabel: heads[1]!, total },
  });
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, ICE);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Es soll werden" });
  heedAt(sheet, recipe, { row: next + 1, column: 0 }, "Vorher fragen, wer das nicht verträgt:");
}

/** Freezing-point depression by groups, then a cooling mix and an ice. */
function coolingMix(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Messung");
  put(sheet, 0, 0, "Physik 10c: Gefrierpunkterniedrigung und Kältemischung");
  put(sheet, 2, 0, "Jede Gruppe löst ihren Stoff, kühlt und liest den Haltepunkt ab.");
  const constant = putRow(sheet, 4, 0, ["Kf(Wasser) in K·kg/mol", shown(1.86, "0.00")])[1]!;
  const heads = putRow(sheet, 6, 0, HEADS);
  const { list, tolerance } = problems(kit, 6);
  const text = `Näherung für verdünnte Lösungen, auf ${tolerance} K genau.`;
  const proviso = put(sheet, 14, 0, text);
  const cells = { constant, proviso };
  const rows = list.map((each, index) => group(kit, each, 7 + index, cells));
  [[], [constant], []].forEach((held, at) =>
    kit.marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[6 + at]!, fixed: held },
    }),
  );
  temperatures(kit, heads[9]!, columnOf(rows, 3));
  cooling(kit, sheet, 16);
  stirred(kit);
}

/** Sheets of a physics teacher. */
export const coolingMixes: readonly Layout[] = [
  { name: "Physik, Haltepunkte der Gruppen und Kältemischung", language: "de", build: coolingMix },
];
