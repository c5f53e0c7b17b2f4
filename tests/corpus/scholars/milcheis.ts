import { a1, addSheet, put, shown } from "../book";
import { note, type Kit, type Layout } from "../kit";
import type { Said } from "../layouts/parts";
import { forGroups } from "./columns";
import { grid, type Lines } from "./grid";
import { markMix, mixFor, under } from "./mixture";
import * as words from "./words";

const { typed, worked } = words;

const GERMAN: Lines = {
  name: typed("Gelöster Stoff", ({ solute }) => solute.de),
  molar: typed("M [g/mol]", words.molarOf),
  particles: typed("Teilchen", words.particlesOf),
  mass: typed("Einwaage [g]", ({ grams }) => grams),
  moles: worked(
    "Teilchenmenge [mol]",
    (at) => `${at("particles")}*${at("mass")}/${at("molar")}`,
    "0.0000",
  ),
};

const MILCH: readonly Said[] = [
  { label: "Gefrierpunkt [°C]", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser darin [g]", states: "water", as: "typed", decimals: 0 },
  { label: "Gelöstes [g]", states: "dissolved", as: "formula", format: "0" },
];

/** Three solutes in one water, then the same in milk. */
function sweetMilk(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Versuch Milcheis");
  const { list, waterGrams, tolerance } = mixFor(kit, 3);
  put(sheet, 0, 0, "Vom Salzwasser zum Milcheis");
  const { water, constant } = words.block(
    sheet,
    { row: 2, column: 0 },
    {
      water: ["Wasser [g]", waterGrams],
      constant: ["kryoskopische Konstante [K·kg/mol]", shown(1.86, "0.00")],
    },
  );
  const made = grid(kit, sheet, { row: 5, column: 0 }, GERMAN, list);
  put(sheet, made.end, 0, "alles zusammen");
  under(kit, sheet, made.spots("mass"));
  const moles = under(kit, sheet, made.spots("moles"), "0.0000");
  const answer = (row: number, label: string, formula: string) =>
    words.block(sheet, { row, column: 0 }, { it: [label, shown(formula, "0.00")] }).it;
  const molality = answer(made.end + 2, "b [mol/kg]", `=${a1(moles)}/(${a1(water)}/1000)`);
  const law = `=${a1(constant)}*${a1(molality)}`;
  const depression = answer(made.end + 3, "Gefrierpunkt sinkt um [K]", law);
  const freezingPoint = answer(made.end + 4, "Gefrierpunkt [°C]", `=0-${a1(depression)}`);
  const text = `Ideal gerechnet; die wirkliche Lösung weicht höchstens ${tolerance} K davon ab.`;
  const proviso = put(sheet, made.end + 5, 0, text);
  markMix(kit, made, { water, constant, depression, freezingPoint, proviso });
  const row = made.end + 9;
  const mix = words.shortMix(kit, "milk", ["Milk ice", "Milcheis, Grundmasse"]);
  put(sheet, row - 2, 0, mix.title);
  words.ice(kit, sheet, mix, {
    ...{ row, column: 0, heads: ["Zutat", "je Gruppe [g]"], total: "Masse" },
    ...{ said: MILCH, target: "gewünscht", lead: "Enthält:" },
    extra: forGroups(kit, sheet, 2, { label: "Gruppen", head: "für alle [g]" }),
  });
  note(kit, sheet, 0, 6, "Milch erst am Morgen kaufen.");
}

/** Sheets of a school kitchen. */
export const milcheisBlaetter: readonly Layout[] = [
  { name: "Schulküche, vom Salzwasser zum Milcheis", language: "de", build: sweetMilk },
];
