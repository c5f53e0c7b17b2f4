import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { tellIn } from "../caterers/words";
import { onSheet } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { problems, type Problem } from "../layouts/parts";
import { input } from "../page";
import { resultAt, type ResultPlan } from "../results";
import { reading } from "../scholars/words";
import { temperatures } from "../strollers/words";
import { block, markWorked, table, voice, type Worked } from "./words";

/** A station's card: label, number and unit under each other, beside the next one's. */
function station(sheet: CorpusSheet, problem: Problem, index: number, constant: Spot): Worked {
  const { solute, grams, waterGrams } = problem;
  const column = 4 * index;
  put(sheet, 4, column, `STATION ${"ABC"[index]}`);
  const [name, water, mass, molar, particles] = table(sheet, { row: 5, column }, [
    ["Inhalt", solute.de],
    ["Wasser im Glas", waterGrams, "g"],
    ["zugegeben", grams, "g"],
    ["Molmasse", shown(solute.molarMass, "0.00"), "g/mol"],
    ["Teilchenfaktor", solute.particles],
  ]).map((cells) => cells[1]!) as [Spot, Spot, Spot, Spot, Spot];
  const line = (row: number, label: string, formula: string, unit: string, format: string) =>
    putRow(sheet, row, column, [label, shown(`=${formula}`, format), unit])[1]!;
  const share = `${a1(mass)}/${a1(molar)}*${a1(particles)}`;
  const moles = line(10, "gelöste Teilchen", share, "mol", "0.0000");
  const law = `${fixed(constant)}*${a1(moles)}/(${a1(water)}/1000)`;
  const depression = line(11, "tiefer als 0 °C um", law, "K", "0.00");
  const point = line(12, "erwartet", `-${a1(depression)}`, "°C", "0.00");
  putRow(sheet, 13, column, ["am Fühler", shown(reading(problem), "0.0"), "°C"]);
  return { name, water, mass, molar, particles, constant, moles, depression, point };
}

/** Three cards on one sheet, the timetable under them. */
function stations(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Fortbildung „Kälte begreifen“, Stationenarbeit vor der Pause");
  const words = { label: "für alle: kryoskopische Konstante, K·kg/mol", value: 1.86 };
  const bare = "für alle: kryoskopische Konstante";
  const constant = input(kit, sheet, { row: 2, column: 0 }, { ...words, bare, format: "0.00" });
  const { list, tolerance } = problems(kit, 3);
  const cards = list.map((each, index) => station(sheet, each, index, constant));
  const text = `Rechnung ohne Wechselwirkungen (ideal); am Fühler höchstens ${tolerance} K anders.`;
  const proviso = put(sheet, 15, 0, text);
  cards.forEach((each) => markWorked(kit, each, proviso));
  table(sheet, { row: 17, column: 0 }, [
    ["Uhrzeit", "Was", "Raum"],
    ["9:15", "Begrüßung", "Aula"],
    ["9:40", "Stationen A bis C", "Physik 1"],
    ["11:00", "Imbiss", "Lehrküche"],
  ]);
  note(kit, sheet, 22, 0, "Teilnahmebescheinigungen liegen am Ausgang.");
}

const VOICE = voice(
  "Allergenkennzeichnung:",
  "Mit Honig, nicht für Kinder unter 12 Monaten.",
  "Mit Alkohol, nicht für Kinder und Schwangere, nicht für Fahrer.",
  "Mit ganzen Nüssen, Kinder unter 5 Jahren könnten daran ersticken.",
  "Mit rohem Eigelb, deshalb auf 71 °C erhitzen oder pasteurisiert kaufen.",
);

const ROWS: readonly (readonly [string, string, ResultPlan])[] = [
  ["Gefrierpunkt", "°C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Gefrierpunktserniedrigung", "K", { states: "depression", as: "typed", decimals: 1 }],
  ["Wasser insgesamt", "g", { states: "water", as: "formula", format: "0" }],
  ["Gelöstes insgesamt", "g", { states: "dissolved", as: "formula", format: "0" }],
  ["Zucker je 100 g Wasser", "g", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  [
    ...(["Wasser, das bei −18 °C zu Eis wurde", "%"] as const),
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

/** The snack's list on one sheet and what it comes to on another. */
function snack(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Imbiss");
  const own = { Wasser: "Leitungswasser", Salz: "Speisesalz" };
  const made = called(kit.make(1)[0]!, own);
  put(sheet, 0, 0, `Zum Probieren: ${made.title}`);
  const { recipe, end } = block(
    kit,
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Zutat", "Menge", "Einheit", "steht bei"],
      cells: (item, grams, index) => [item, grams, "g", ["Kühlfach", "Schrank 4"][index % 2]],
      ...{ name: 0, amount: 1, unitAt: 2, unit: "g", word: "Schüssel voll" },
    },
  );
  put(sheet, end, 2, "g");
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, VOICE);
  const values = addSheet(kit.marked.book, "Kennwerte");
  put(values, 0, 0, `Kennwerte zu ${made.title} (Blatt Imbiss)`);
  const lines = onSheet("Imbiss", span);
  let row = 2;
  for (const [label, unit, plan] of ROWS) {
    const spot = { sheet: values.name, row, column: 0 };
    if (!resultAt(values, recipe, spot, { row, column: 1 }, plan, lines)) continue;
    put(values, row, 0, label);
    put(values, row++, 2, unit);
  }
  nameTarget(values, recipe, { row: row + 1, column: 0, label: "Vorgabe der Lehrküche" });
  const probes = table(values, { row: 2, column: 4 }, [
    ["nach (min)", "Kern der Masse (°C)"],
    ...[
      [30, 3.5],
      [60, -1],
      [120, -5.5],
    ].map(([after, core]) => [after, shown(core!, "0.0")]),
  ]);
  temperatures(kit, probes[0]![1]!, columnOf(probes.slice(1), 1));
}

/** Stations beside each other, the snack, and its values on a sheet of their own. */
function fortbildung(kit: Kit): void {
  stations(kit, addSheet(kit.marked.book, "Stationen"));
  snack(kit);
}

/** Further training for teachers. */
export const fortbildungen: readonly Layout[] = [
  {
    name: "Lehrerfortbildung, drei Stationskarten und Kennwerte zum Imbiss",
    ...{ language: "de", build: fortbildung },
  },
];
