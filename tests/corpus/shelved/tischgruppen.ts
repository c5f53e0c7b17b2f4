import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, problems, say, sumOf, type Problem, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { cooling, measured, readings, tableAt } from "./words";

const VOICE: Voice = {
  lead: "Enthaltene Allergene:",
  honey: "Mit Honig, deshalb nicht für Kinder unter 12 Monaten.",
  alcohol: "Enthält Alkohol, nicht für Kinder, Schwangere und Fahrer; im Unterricht nur zeigen.",
  nuts: "Ganze Nüsse: unter 5 Jahren Erstickungsgefahr.",
  egg: "Rohes Eigelb: bis 71 °C erhitzen oder pasteurisiert kaufen.",
};

const TABLES = ["Tisch blau", "Tisch gelb", "Tisch grün", "Tisch rot"];

interface Protocol {
  readonly table: string;
  readonly problem: Problem;
}

/** The protocol of a table of pupils, at its corner of the page. */
function protocol(
  kit: Kit,
  sheet: CorpusSheet,
  [row, column]: readonly [number, number],
  { table, problem }: Protocol,
  shared: { readonly constant: Spot; readonly proviso: Spot },
): void {
  const { solute, grams, waterGrams } = problem;
  put(sheet, row, column, table);
  const given = tableAt(sheet, { row: row + 1, column }, [
    ["Stoff", solute.de],
    ["m(Stoff)", grams, "g"],
    ["m(Wasser)", waterGrams, "g"],
    ["M(Stoff)", shown(solute.molarMass, "0.00"), "g/mol"],
    ["Teilchen je Formeleinheit", solute.particles],
  ]);
  const [name, mass, water, molar, particles] = columnOf(given, 1) as [
    Spot,
    Spot,
    Spot,
    Spot,
    Spot,
  ];
  const next = (down: number, label: string, formula: string, unit: string, format = "0.00") =>
    putRow(sheet, row + 6 + down, column, [label, shown(`=${formula}`, format), unit])[1]!;
  const moles = next(0, "n(Stoff)", `${a1(mass)}/${a1(molar)}`, "mol", "0.0000");
  const molality = next(1, "b", `${a1(moles)}/(${a1(water)}/1000)`, "mol/kg", "0.000");
  const law = `${a1(particles)}*${fixed(shared.constant)}*${a1(molality)}`;
  const depression = next(2, "ΔT", law, "K");
  const freezingPoint = next(3, "ϑ(Gefrieren), Rechnung", `-${a1(depression)}`, "°C");
  putRow(sheet, row + 10, column, [
    ...["ϑ(Gefrieren), Thermometer", shown(measured(problem), "0.0"), "°C"],
  ]);
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, depression, freezingPoint, ...shared },
  });
}

/** What each table read every two minutes. */
function curves(kit: Kit, list: readonly Problem[]): void {
  const sheet = addSheet(kit.marked.book, "Abkühlkurven");
  put(sheet, 0, 0, "Messwerte für das Diagramm (Kältemischung außen, Rührstab innen)");
  const steps = 9;
  const columns = list.map((each) => cooling(kit.random.whole(17, 21), measured(each), steps));
  const heads = ["t in min", ...TABLES.map((table) => `${table}, ϑ in °C`)];
  const lines = Array.from({ length: steps }, (_, step) => [
    ...[2 * step, ...columns.map((column) => shown(column[step]!, "0.0"))],
  ]);
  const [top, ...cells] = tableAt(sheet, { row: 2, column: 0 }, [heads, ...lines]);
  TABLES.forEach((_, at) => {
    readings(kit, top![at + 1]!, columnOf(cells, at + 1));
  });
}

const SAID: readonly Said[] = [
  { label: "ΔT dieser Mischung", inCell: "K", states: "depression", as: "formula" },
  {
    ...{ label: "ϑ(Gefrieren)", inCell: "°C" },
    ...{ states: "freezing point", as: "typed", decimals: 1 },
  },
  {
    label: "m(Wasser) aus allen Zutaten",
    inCell: "g",
    states: "water",
    as: "formula",
    format: "0",
  },
  {
    ...{ label: "vom Wasser bei −18 °C gefroren", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** What is eaten after the marks are given. */
function reward(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis zum Schluss");
  const made = called(kit.make(1)[0]!, { Zucker: "Haushaltszucker", Wasser: "Leitungswasser" });
  put(sheet, 0, 1, `${made.title} für den Kurs`);
  const list = listed(
    sheet,
    made,
    { row: 2, column: 1 },
    {
      heads: ["Zutat", "m in g"],
      cells: (item, grams) => [item, grams],
    },
  );
  const { names, amounts, heads, end } = list;
  put(sheet, end, 1, "zusammen");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  const cells = { names, amounts, total, amountLabel: heads[1]!, unit: "g" } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: 3, column: 4 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "gedacht als" });
  tellIn(sheet, recipe, { row: end + 2, column: 1 }, VOICE);
  note(kit, sheet, end + 4, 1, "Löffel bringt jede und jeder selbst mit.");
}

/** Four protocols in the corners of a page, the curves and the ice on pages of their own. */
function tischgruppen(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Protokolle");
  const { list, tolerance } = problems(kit, 4);
  put(sheet, 0, 0, "Chemie Q1: Kryoskopie, Protokolle der Tischgruppen");
  const constant = putRow(sheet, 2, 0, ["Kf(Wasser)", shown(1.86, "0.00"), "K·kg/mol"])[1]!;
  const text = `Rechnung mit idealer Lösung, vom Thermometer um höchstens ${tolerance} K verschieden.`;
  const proviso = put(sheet, 2, 4, text);
  list.forEach((problem, index) => {
    const corner = [4 + 13 * Math.floor(index / 2), 4 * (index % 2)] as const;
    protocol(kit, sheet, corner, { table: TABLES[index]!, problem }, { constant, proviso });
  });
  note(kit, sheet, 30, 0, "Abgabe bis Dienstag, Diagramm von Hand auf Millimeterpapier.");
  curves(kit, list);
  reward(kit);
}

/** A course in chemistry. */
export const tischgruppenSheets: readonly Layout[] = [
  { name: "Chemie Q1, Protokolle von vier Tischgruppen", language: "de", build: tischgruppen },
];
