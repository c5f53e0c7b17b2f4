import { addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import type { Said } from "../layouts/parts";
import { grid, type Lines } from "../scholars/grid";
import { molarOf, particlesOf, reading, typed, worked } from "../scholars/words";
import { about, markSamples, mix, series, small, solutes, toleranceOf } from "../benches/words";

const VOICE: Voice = {
  lead: "Zettel an der Schüssel: enthält",
  honey: "Honig (Babys unter 12 Monaten dürfen nicht)",
  alcohol: "Alkohol (nur Eltern, nicht in der Schwangerschaft, nicht vor dem Fahren)",
  nuts: "ganze Nüsse (unter 5 Jahren: Erstickungsgefahr)",
  egg: "rohes Eigelb (auf 71 °C erhitzen oder pasteurisiert)",
};

/** Only what the children can follow; the teacher fills in the rest. */
const lines = (constant: Spot): Lines => ({
  who: {
    head: "Team",
    cell: (_, __, at) => ["Pinguine", "Eisbären", "Robben", "Füchse", "Eulen", "Wale"][at],
  },
  water: typed("Wasser (g)", ({ waterGrams }) => waterGrams),
  mass: typed("eingerührt (g)", ({ grams }) => grams),
  name: typed("Was?", ({ solute }) => solute.de),
  measured: typed("Thermometer, erstes Eis (°C)", (each) => shown(reading(each), "0.0")),
  molar: typed("M (g/mol)", molarOf),
  particles: typed("i", particlesOf),
  molality: worked(
    "b (mol/kg)",
    (at) => `${at("mass")}/${at("molar")}/(${at("water")}/1000)`,
    "0.000",
  ),
  depression: worked(
    "Kf·b·i (K)",
    (at) => `${fixed(constant)}*${at("molality")}*${at("particles")}`,
    "0.00",
    { fixed: [constant] },
  ),
  freezingPoint: worked("Gefrierpunkt (°C)", (at) => `0-${at("depression")}`, "0.0"),
});

function teams(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Forscher-Nachmittag Klasse 6: Salzwasser und Zuckerwasser");
  put(sheet, 1, 5, "ab hier für die Lehrkraft");
  const [, constant] = putRow(sheet, 2, 5, ["Kf (K·kg/mol)", shown(1.86, "0.00")]) as [Spot, Spot];
  const [salt, sugar] = solutes("sodium chloride", "sucrose");
  const list = [...series(salt!, 500, [6, 10, 14]), ...series(sugar!, 500, [40, 80, 120])];
  const made = grid(kit, sheet, { row: 4, column: 0 }, lines(constant), list);
  const text = `Formel für ideale Lösungen, bei unseren Schüsseln auf ${toleranceOf(kit, list)} K richtig.`;
  markSamples(kit, made, list, put(sheet, made.end, 5, text), { constant });
  small(sheet, { row: made.end + 2, column: 0 }, [
    ["Ablauf", "Uhr"],
    ["Schürzen, Hände waschen", "13:30"],
    ["Schüsseln in die Kältemischung", "13:45"],
    ["Eis rühren", "14:30"],
    ["Aufräumen", "15:15"],
  ]);
  note(kit, sheet, made.end + 8, 0, "Die Salzschüsseln werden weggekippt, nicht probiert.");
}

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "unter dem von Wasser (K)", states: "depression", as: "formula" },
  { label: "Wasser darin (g)", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "Eis in der Masse bei −9 °C (%)", decimals: 0 },
    ...{ states: "ice of mix", as: "typed", temperatureC: -9 },
  },
];

/** Two ices beside each other, for half of the teams each. */
function ices(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Unser Eis: zwei Sorten, jedes Team hilft bei einer");
  const mades = kit.make(2).map((made) => called(made, { Zucker: "Kristallzucker" }));
  mades.forEach((made, index) => {
    const column = 5 * index;
    put(sheet, 2, column, made.title);
    put(sheet, 3, column, index === 0 ? "Pinguine, Robben, Eulen" : "Eisbären, Füchse, Wale");
    const { recipe, end } = mix(kit, sheet, made, {
      ...{ row: 5, column, heads: ["Das brauchen wir", "Menge", undefined], name: 0, amount: 1 },
      ...{ unitColumn: 2, total: "in der Schüssel" },
      cells: (item, grams) => [item, grams, "g"],
    });
    put(sheet, end - 1, column + 2, "g");
    about(sheet, recipe, { row: 16, column }, { said: SAID, target: "wird", voice: VOICE });
  });
  note(kit, sheet, 25, 0, "Bitte von zu Hause: ein Schraubglas, ein Handtuch, Handschuhe.");
}

/** An afternoon with eleven-year-olds. */
export const sechsteKlassen: readonly Layout[] = [
  {
    ...{ name: "Forscher-Nachmittag Klasse 6, sechs Teams, zwei Sorten", language: "de" },
    build: (kit) => {
      teams(kit, addSheet(kit.marked.book, "Teams"));
      ices(kit, addSheet(kit.marked.book, "Eis"));
    },
  },
];
