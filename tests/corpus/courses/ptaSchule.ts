import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { hundred } from "../layouts/marking";
import { listed } from "../newcomers/words";
import { choose, dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { asFormulas, rowsAt, tellAt, told, withComma } from "./words";

const HEADS = ["gelöst", "Gramm", "Molmasse", "zerfällt in", "mol", "mol Teilchen"];
const UNITS = [undefined, "g", "g/mol", "Teilchen", "mol", "mol"];

interface Batch {
  readonly solutes: readonly Dissolved[];
  readonly grams: readonly number[];
  readonly waterGrams: number;
}

/** Something to dissolve: two or three things in one beaker. */
function batch({ random }: Kit, count: number): Batch {
  const solutes = choose(random, count, dissolved);
  const waterGrams = random.pick([300, 500, 800]);
  return { solutes, waterGrams, grams: solutes.map((each) => gramsOf(random, each, waterGrams)) };
}

/** The lines of one batch: what is dissolved, how much, and how many particles that makes. */
function lines(kit: Kit, sheet: CorpusSheet, { solutes, grams }: Batch, top: number) {
  const heads = putRow(sheet, top, 0, HEADS);
  putRow(sheet, top + 1, 0, UNITS);
  const rows = solutes.map((each, index) => {
    const row = top + 2 + index;
    const known = putRow(sheet, row, 0, [
      ...[each.de, grams[index], shown(each.molarMass, "0.00"), each.particles],
    ]);
    const [, mass, molar, particles] = known as [Spot, Spot, Spot, Spot];
    const counted = put(sheet, row, 4, shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"));
    const moles = shown(`=${a1(counted)}*${a1(particles)}`, "0.0000");
    return [...known, counted, put(sheet, row, 5, moles)];
  });
  asFormulas(kit, heads[4]!, columnOf(rows, 4));
  asFormulas(kit, heads[5]!, columnOf(rows, 5));
  return rows;
}

/** One batch, its answer in a row under the lines; gives the next free row. */
function block(kit: Kit, sheet: CorpusSheet, made: Batch, top: number, on: Spot): number {
  const { solutes, grams, waterGrams } = made;
  const rows = lines(kit, sheet, made, top);
  const end = top + 2 + rows.length;
  const moles = columnOf(rows, 5);
  const all = sumOf(kit, sheet, { row: end, column: 5 }, moles, "0.0000");
  const water = putRow(sheet, end, 0, ["in Wasser", waterGrams, "g"])[1]!;
  const law = `=${fixed(on)}*${a1(all)}/${a1(water)}*1000`;
  const depression = putRow(sheet, end + 1, 0, ["senkt um", shown(law, "0.00"), "K"])[1]!;
  const point = shown(`=-${a1(depression)}`, "0.00");
  const freezingPoint = putRow(sheet, end + 2, 0, ["gefriert ab", point, "°C"])[1]!;
  const gap = withComma(tolerated(idealGap(solutes, grams, waterGrams)));
  const text = `Gilt für verdünnte Lösungen; diese weicht weniger als ${gap} K davon ab.`;
  kit.marked.solutions.push({
    ...{ names: columnOf(rows, 0), grams: columnOf(rows, 1), molarMasses: columnOf(rows, 2) },
    ...{ particles: columnOf(rows, 3), counted: columnOf(rows, 4), moles, water },
    ...{ constant: on, depression, freezingPoint, proviso: put(sheet, end + 3, 0, text) },
  });
  return end + 6;
}

/** What is cooked up on the last day, in parts of a hundred. */
function lastDay(kit: Kit): void {
  const names = { Wasser: "Leitungswasser", Zucker: "Haushaltszucker" };
  const made = called(hundred(kit.make(1)[0]!), names);
  const sheet = addSheet(kit.marked.book, "letzter Tag");
  put(sheet, 0, 1, `Zum Abschluss: ${made.title}`);
  const at = { row: 2, column: 1 };
  const heads = ["Was", "Massenanteil in %"];
  const cells = (name: string, grams: number) => [name, shown(grams, "0.0")];
  const { names: items, amounts, end, heads: headed } = listed(sheet, made, at, { heads, cells });
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.0");
  put(sheet, end, 1, "gibt");
  const own = { names: items, amounts, unit: "%", amountLabel: headed[1]!, total } as const;
  const recipe = markRecipe(kit, made, own);
  const shares = { heading: headed[1]!, spots: amounts, total, kind: "per cent" } as const;
  kit.marked.numberColumns.push(shares);
  const next = say(sheet, recipe, { row: 3, column: 4 }, [
    { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula" },
    { label: "Wasser in 100 g", inCell: "g", states: "water", as: "typed", decimals: 1 },
    { label: "gelöst in 100 g", inCell: "g", states: "dissolved", as: "typed", decimals: 1 },
    {
      label: "Zucker auf 100 g Wasser",
      inCell: "g",
      states: "sugar per 100 g water",
      as: "formula",
    },
    {
      ...{ label: "vom Wasser bei −18 °C gefroren", inCell: "%", states: "ice of water" },
      ...{ as: "typed", temperatureC: -18, decimals: 0 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "soll werden" });
  tellAt(sheet, recipe, { row: end + 2, column: 1 }, told(made, "Darin:"));
  note(kit, sheet, end + 4, 1, "Becher und Löffel bringt die Parallelklasse.");
}

/** Three beakers one below the other, and something sweet at the end. */
function pta(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Bechergläser");
  put(sheet, 0, 0, "PTA-Schule, Galenik-Labor: kryoskopisch gerechnet, drei Bechergläser");
  const kf = ["Kf (Wasser) in K·kg/mol", shown(1.86, "0.00")];
  const [label, value] = putRow(sheet, 2, 0, kf) as [Spot, Spot];
  kit.marked.inputs.push({ label, value, bare: "Kf (Wasser)" });
  const made = [batch(kit, 2), batch(kit, 3), batch(kit, 2)];
  made.reduce((top, each) => block(kit, sheet, each, top, value), 4);
  putRow(sheet, 4, 8, ["Waagendienst", "Woche"]);
  rowsAt(sheet, { row: 5, column: 8 }, [
    ["Bank 1", 11],
    ["Bank 2", 12],
    ["Bank 3", 13],
  ]);
  note(kit, sheet, 1, 0, "Rundung erst am Ende, so wie es im Laborbuch steht.");
  lastDay(kit);
}

/** A school for pharmacy assistants. */
export const ptaSchulen: readonly Layout[] = [
  { name: "PTA-Schule, drei Bechergläser und ein letzter Tag", language: "de", build: pta },
];
