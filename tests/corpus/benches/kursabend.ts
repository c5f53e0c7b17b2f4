import { addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { down } from "../lodgers/words";
import { grid, type Lines } from "../scholars/grid";
import { molarOf, particlesOf, typed, worked } from "../scholars/words";
import { itemsOf } from "../strollers/words";
import { sugarWaters } from "../wanderers/worte";
import { markSamples, samples, small, solutes, toleranceOf } from "./words";

const VOICE: Voice = {
  lead: "Enthält:",
  honey: "Honig, nicht für Kinder unter 12 Monaten.",
  alcohol: "Alkohol: ab 18, nicht für Schwangere, nicht für Autofahrer.",
  nuts: "Ganze Nüsse, für Kinder unter 5 Jahren zu gefährlich (Verschlucken).",
  egg: "Rohes Eigelb, auf 71 °C erhitzen oder pasteurisiertes nehmen.",
};

/** A sugar a column, so that it fits the projector. */
const lines = (constant: Spot): Lines => ({
  name: typed("Süßes oder Salz", ({ solute }) => solute.de),
  mass: typed("Löffel gewogen (g)", ({ grams }) => grams),
  molar: typed("molare Masse (g/mol)", molarOf),
  particles: typed("Faktor i", particlesOf),
  water: typed("Wasser im Glas (g)", ({ waterGrams }) => waterGrams),
  moles: worked(
    "mol Teilchen",
    (at) => `${at("particles")}*${at("mass")}/${at("molar")}`,
    "0.0000",
  ),
  depression: worked(
    "tiefer um (K)",
    (at) => `${fixed(constant)}*${at("moles")}*1000/${at("water")}`,
    "0.00",
  ),
  freezingPoint: worked("Gefrierpunkt (°C)", (at) => `-${at("depression")}`, "0.00"),
});

/** The first evening: sugar waters two ways, then the law. */
function first(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Eis verstehen, Abend 1 (Mo, 19 Uhr)");
  put(sheet, 2, 0, "Wie süß ist das Glas? Zwei Arten, es zu sagen");
  sugarWaters(kit, sheet, { row: 3, column: 0 }, [
    ...["Krug", "Zucker (g)", "Wasser (g)", "g Zucker auf 100 g Wasser", "% Zucker in der Lösung"],
  ]);
  put(sheet, 9, 0, "Was macht es mit dem Gefrierpunkt?");
  const [, constant] = putRow(sheet, 10, 0, ["K von Wasser (K·kg/mol)", shown(1.86, "0.00")]) as [
    Spot,
    Spot,
  ];
  const list = samples(
    kit,
    solutes("sucrose", "glucose monohydrate", "fructose", "erythritol", "sodium chloride"),
    [200, 250],
  );
  const made = grid(kit, sheet, { row: 12, column: 0, across: true }, lines(constant), list);
  const text = `So rechnet man ideale Lösungen; die Gläser weichen höchstens ${toleranceOf(kit, list)} K ab.`;
  markSamples(kit, made, list, put(sheet, made.end, 0, text), { constant });
  note(kit, sheet, made.end + 2, 0, "Pause nach dem zweiten Krug, Kaffee steht im Foyer.");
}

const facts = (temperature: Spot): readonly Fact[] => [
  ["Gefrierpunkt (°C)", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Erniedrigung (K)", { states: "depression", as: "formula" }],
  ["Wasser im Kilo (g)", { states: "water", as: "typed", decimals: 0 }],
  [
    "vom Wasser gefroren, Truhe (%)",
    { states: "ice of water", as: "formula", format: "0", temperature, temperatureC: -18 },
  ],
];

const TOP = 4;

/** The second evening: three ices in columns, the answers under them. */
function second(kit: Kit, sheet: CorpusSheet): void {
  const mades = kit.make(3).map((made) => called(perKilogram(made), { Vollmilch: "Milch 3,5 %" }));
  put(sheet, 0, 0, "Eis verstehen, Abend 2: drei Sorten, je ein Kilo");
  const [label, temperature] = putRow(sheet, 1, 0, ["Truhe im Kursraum (°C)", -18]) as [Spot, Spot];
  kit.marked.inputs.push({ label, value: temperature, bare: "Truhe im Kursraum" });
  const amountLabel = put(sheet, TOP - 1, 0, "Gramm");
  const items = down(sheet, [TOP, 0], itemsOf(mades));
  const end = TOP + items.length;
  put(sheet, end, 0, "Kilo voll?");
  put(sheet, end + 7, 0, "wofür");
  put(sheet, end + 8, 0, "zu beachten");
  mades.forEach((made, index) => {
    put(sheet, TOP - 1, 1 + index, made.title);
    const plan = { items, left: 1, unit: "g", format: "0", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, index, plan);
    const column = 1 + index;
    factsDown(sheet, recipe, facts(temperature), { row: end + 2, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: end + 7, column });
    tellIn(sheet, recipe, { row: end + 8, column }, VOICE);
  });
  small(sheet, { row: end + 11, column: 0 }, [
    ["angemeldet", "bezahlt"],
    [15, 13],
  ]);
}

/** An evening school's course. */
export const kursabende: readonly Layout[] = [
  {
    ...{ name: "Kurs Eis verstehen, zwei Abende", language: "de" },
    build: (kit) => {
      first(kit, addSheet(kit.marked.book, "Abend 1"));
      second(kit, addSheet(kit.marked.book, "Abend 2"));
    },
  },
];
