import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { markRecipe, problems, say, sumOf, type Problem, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { madeOf, isAlcoholic } from "../strollers/words";
import { declare, readings, sampleFreezesAt, table } from "./words";

const TOP = 5;
const HIGH = 6;

/** One group's card: what it had and what it worked out, two pairs a row. */
function card(kit: Kit, sheet: CorpusSheet, problem: Problem, at: number, shared: Shared): void {
  const { solute, grams, waterGrams } = problem;
  const row = TOP + HIGH * at;
  put(sheet, row, 0, `Gruppe ${at + 1}`);
  const pairs = (down: number, ...cells: (string | number | ReturnType<typeof shown>)[]) => {
    const spots = putRow(sheet, row + down, 0, cells);
    return [spots[1]!, spots[3]!] as const;
  };
  const [name, mass] = pairs(1, "unser Stoff", solute.de, "davon in g", grams);
  const molarMass = shown(solute.molarMass, "0.00");
  const [molar, water] = pairs(2, "M in g/mol", molarMass, "Wasser in g", waterGrams);
  const content = shown(`=${a1(mass)}/${a1(molar)}`, "0.0000");
  const [particles, moles] = pairs(
    3,
    "zerfällt in … Teilchen",
    solute.particles,
    "n in mol",
    content,
  );
  const ideal = `=${a1(particles)}*${fixed(shared.constant)}*${a1(moles)}/${a1(water)}*1000`;
  const lowered = shown(ideal, "0.00");
  const real = shown(sampleFreezesAt(problem), "0.0");
  const [depression] = pairs(4, "ΔT berechnet in K", lowered, "abgelesen in °C", real);
  kit.marked.inputs.push({ label: { ...water, column: 2 }, value: water, bare: "Wasser" });
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, depression, freezingPoint: null, ...shared },
  });
}

interface Shared {
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** The cards of four groups, and at their right who had to do what. */
function cards(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Gruppenkarten");
  const { list, tolerance } = problems(kit, 4);
  put(sheet, 0, 0, "Projektwoche Eis, Tag 2: Stoffe in Wasser drücken den Gefrierpunkt");
  const constant = putRow(sheet, 2, 0, [
    "für alle: Kf(Wasser)",
    shown(1.86, "0.00"),
    "K·kg/mol",
  ])[1]!;
  const text = `Bei so dünnen Lösungen darf man ideal rechnen (höchstens ${tolerance} K daneben).`;
  const proviso = put(sheet, 3, 0, text);
  list.forEach((each, at) => card(kit, sheet, each, at, { constant, proviso }));
  table(sheet, { row: TOP, column: 6 }, [
    ["Dienst", "Dienstag", "Mittwoch"],
    ["Abwaschen", "Gruppe 1", "Gruppe 3"],
    ["Waage putzen", "Gruppe 2", "Gruppe 4"],
    ["Eiswürfel holen", "Gruppe 4", "Gruppe 2"],
  ]);
  const [, heading] = putRow(sheet, TOP + 6, 6, ["Gefrierschrank Küche", "°C"]);
  table(
    sheet,
    { row: TOP + 7, column: 6 },
    ["Mo 8 Uhr", "Di 8 Uhr", "Di 13 Uhr", "Mi 8 Uhr"].map((when) => [when]),
  );
  readings(kit, sheet, heading!, 4, [-21, -17]);
  note(
    kit,
    sheet,
    TOP + 4 * HIGH,
    0,
    "Karten bitte bis Mittwoch abgeben, Handschrift zählt nicht.",
  );
  tasting(kit);
}

const SAID: readonly Said[] = [
  {
    ...{ label: "fängt an zu gefrieren bei", inCell: "°C" },
    ...{ states: "freezing point", as: "formula", format: "0.0" },
  },
  { label: "das sind unter Wasser", inCell: "K", states: "depression", as: "typed", decimals: 1 },
  {
    ...{ label: "Eis in der Mischung bei −16 °C", inCell: "%" },
    ...{ states: "ice of mix", as: "typed", temperatureC: -16, decimals: 0 },
  },
  {
    ...{ label: "Zucker auf 100 g Wasser", inCell: "g" },
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
];

/** What is eaten at the end of the week, in per cent, the largest part first. */
function tasting(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Freitag");
  const [plain] = madeOf(kit, 1, (each) => !isAlcoholic(each));
  const made = called(largestFirst(plain!), {
    Wasser: "Leitungswasser",
    Zucker: "Haushaltszucker",
  });
  put(sheet, 0, 0, `Am Freitag gibt es: ${made.title}`);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["%", "Was", "holt"],
      cells: (item, share, index) => [share, item, `Gruppe ${1 + (index % 4)}`],
      ...{ name: 1, amount: 0 },
    },
  );
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  put(sheet, end, 1, "zusammen");
  const column = { spots: amounts, heading: heads[0]!, total, kind: "per cent" } as const;
  kit.marked.numberColumns.push(column);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "%", amountLabel: heads[0]!, total },
  });
  const next = say(sheet, recipe, { row: 3, column: 4 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "soll sein" });
  declare(sheet, recipe, { row: next + 1, column: 4 }, "Wer etwas nicht verträgt: enthält");
}

/** A week of projects about ice. */
export const projektwochen: readonly Layout[] = [
  { name: "Projektwoche, eine Karte je Gruppe und Eis am Freitag", language: "de", build: cards },
];
