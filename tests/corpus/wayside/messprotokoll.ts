import { addSheet, fixed, put, putRow, shown, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { problems, say, type Said } from "../layouts/parts";
import { input } from "../page";
import { grid, type Lines } from "../scholars/grid";
import { markEach, molarOf, particlesOf, reading, typed, worked } from "../scholars/words";
import { lineup, little, mild, SCHLICHT } from "./words";

const TEAMS = ["Aylin + Ben", "Cem + Dana", "Emil + Finja", "Greta + Hakan", "Ida (allein)"];

/** What the teams weighed and read; what follows stands left of it. */
const columns = (constant: Spot): Lines => ({
  who: { head: "Team", cell: (_, __, index) => TEAMS[index] },
  measured: typed("abgelesen °C", (each) => shown(reading(each), "0.0")),
  freezingPoint: worked("müsste °C", (at) => `-${at("depression")}`, "0.00"),
  depression: worked(
    "ΔT (K) aus Formel",
    (at) => `${at("molality")}*${at("particles")}*${fixed(constant)}`,
    "0.00",
    { fixed: [constant] },
  ),
  molality: worked("b (mol/kg)", (at) => `${at("moles")}/(${at("water")}/1000)`, "0.000"),
  moles: worked("n (mol)", (at) => `${at("mass")}/${at("molar")}`, "0.0000"),
  name: typed("Stoff", ({ solute }) => solute.de),
  mass: typed("m Stoff (g)", ({ grams }) => grams),
  water: typed("m Wasser (g)", ({ waterGrams }) => waterGrams),
  molar: typed("M (g/mol)", molarOf),
  particles: typed("Teilchen je Formel", particlesOf),
});

const SAID: readonly Said[] = [
  { label: "unser Eis friert ab", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "ΔT davon", inCell: "K", states: "depression", as: "typed" },
  { label: "Wasser im Kilo", inCell: "g", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "bei −10 °C schon Eis (vom Wasser)", inCell: "%", states: "ice of water" },
    ...{ as: "typed", temperatureC: -10, decimals: 0 },
  },
];

/** What the class eats afterwards. */
function reward(kit: Kit, row: number): void {
  const sheet = kit.marked.book.sheets[0]!;
  const made = called(perKilogram(mild(kit, 1)[0]!), { Zucker: "Haushaltszucker" });
  put(sheet, row - 1, 6, `Zur Belohnung: ${made.title}`);
  const { recipe } = lineup(kit, sheet, made, {
    ...{ row, column: 6, heads: ["man nehme", "Gramm"], name: 0, amount: 1 },
    cells: (name, amount) => [name, amount],
    ...{ unit: "g", format: "0", total: { label: "1 Kilo" } },
  });
  const next = say(sheet, recipe, { row: row + 1, column: 9 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 9, label: "Ziel" });
  tellIn(sheet, recipe, { row: next + 1, column: 9 }, SCHLICHT);
}

/** A class's readings, the results left of what was weighed, the title under it all. */
function messprotokoll(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Kl 10b");
  note(kit, sheet, 0, 0, "Handys aus, Schutzbrille auf!");
  const words = { label: "Kf Wasser (K·kg/mol)", bare: "Kf Wasser", value: 1.86, format: "0.00" };
  const constant = input(kit, sheet, { row: 1, column: 8 }, words);
  const { list, tolerance } = problems(kit, TEAMS.length);
  const made = grid(kit, sheet, { row: 3, column: 0 }, columns(constant), list);
  const text = `Formel gilt nur für ideale Lösungen, bei uns passt sie auf ${tolerance} K.`;
  const proviso = put(sheet, made.end, 2, text);
  markEach(kit, made, proviso, () => ({ constant }));
  put(sheet, made.end + 1, 0, "Messprotokoll Gefrierpunkt, Doppelstunde");
  const duties = ["Eis holen", "abwaschen", "Waage", "Tafel"];
  little(
    sheet,
    { row: made.end + 4, column: 0 },
    ["Dienst", "wer"],
    duties.map((duty, index) => [duty, TEAMS[index]]),
  );
  putRow(sheet, made.end + 10, 0, ["Abgabe", "nächsten Dienstag"]);
  reward(kit, made.end + 4);
}

/** Sheets of a chemistry teacher. */
export const messprotokolle: readonly Layout[] = [
  {
    name: "Messprotokoll 10b, Ergebnisse links vom Abgewogenen",
    language: "de",
    build: messprotokoll,
  },
];
