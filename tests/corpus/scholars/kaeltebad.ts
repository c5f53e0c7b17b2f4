import { addSheet, fixed, put, shown, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems, type Said } from "../layouts/parts";
import { input } from "../page";
import { grid, type Lines } from "./grid";
import * as words from "./words";

const { typed, worked } = words;

/** Four bags in a bath of ice and salt. */
const bags = (kf: Spot, bath: readonly number[]): Lines => ({
  label: { head: "Beutel", cell: (_, __, index) => index + 1 },
  water: typed("Wasser (g)", ({ waterGrams }) => waterGrams),
  name: typed("darin gelöst", ({ solute }) => solute.de),
  mass: typed("Gramm davon", ({ grams }) => grams),
  molar: typed("g je mol", words.molarOf),
  particles: typed("wird zu … Teilchen", words.particlesOf),
  moles: worked(
    "mol Teilchen",
    (at) => `${at("mass")}/${at("molar")}*${at("particles")}`,
    "0.0000",
  ),
  depression: worked(
    "Gefrierpunkt sinkt um (K)",
    (at) => `${at("moles")}*${fixed(kf)}*1000/${at("water")}`,
    "0.00",
    { fixed: [kf] },
  ),
  freezingPoint: worked("gefriert ab (°C)", (at) => `0-${at("depression")}`, "0.00"),
  bath: { head: "Kältebad (°C)", cell: (_, __, index) => shown(bath[index]!, "0.0") },
  liquid: worked(
    "Wasser, das flüssig bleibt (g)",
    (at) => `${at("depression")}/-${at("bath")}*${at("water")}`,
    "0",
  ),
  ice: worked("Eis, überschlagen (g)", (at) => `${at("water")}-${at("liquid")}`, "0"),
});

/** How much ice a salt-ice bath makes of thin solutions. */
function bath(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Kältebad");
  const { list: all, tolerance } = problems(kit, 5);
  // Sodium bicarbonate freezes out as a whole at −2.3 °C.
  const list = all.filter(({ solute }) => solute.en !== "sodium bicarbonate").slice(0, 4);
  put(sheet, 0, 0, "Kältebad aus Eis und Salz: Wie viel Eis entsteht im Beutel?");
  const label = { label: "Kf Wasser (K·kg/mol)", bare: "Kf Wasser", value: 1.86 };
  const constant = input(kit, sheet, { row: 1, column: 0 }, { ...label, format: "0.00" });
  const colds = list.map(() => -kit.random.whole(4, 7) / 2);
  const made = grid(kit, sheet, { row: 3, column: 0 }, bags(constant, colds), list);
  const text = `Ideales Gesetz; der Gefrierpunkt stimmt damit auf ${tolerance} K.`;
  const proviso = put(sheet, made.end + 1, 0, text);
  words.markEach(kit, made, proviso, () => ({ constant }));
  note(
    kit,
    sheet,
    made.end + 2,
    0,
    "Bad: viel Eis, wenig Streusalz, gut rühren. Mehr Salz macht es kälter.",
  );
  const row = made.end + 5;
  const mix = words.shortMix(kit, "water", ["Ice pops", "Wassereis"]);
  put(sheet, row - 1, 0, "Zum Schluss mit mehr Salz im Bad: Wassereis am Stiel");
  words.ice(kit, sheet, mix, {
    ...{ row, column: 0, heads: ["Zutaten", "Menge"], total: "alles", unitCells: true },
    ...{ said: POPS, target: "wird serviert als", lead: "Enthält" },
  });
}

const POPS: readonly Said[] = [
  { label: "beginnt zu gefrieren (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Gefrierpunkt sinkt um (K)", states: "depression", as: "typed", decimals: 1 },
  { label: "Zucker, Anteil an allem (%)", states: "sugar share", as: "typed" },
];

/** Sheets of a physics teacher. */
export const kaeltebaeder: readonly Layout[] = [
  { name: "Kältebad, Eis im Beutel", language: "de", build: bath },
];
