import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram, strip } from "../kitchens/hand";
import { problems, type Said } from "../layouts/parts";
import { given } from "../lodgers/words";
import { beside } from "../newcomers/words";
import { grid, type Lines } from "../scholars/grid";
import { markEach, molarOf, particlesOf, reading, typed, worked } from "../scholars/words";
import { temperatures } from "../strollers/words";
import { inGerman, ownList } from "./words";

/** What stands at each station, and what comes out of it. */
const lines = (constant: Spot): Lines => ({
  label: { head: "Station", unit: "Einheit", cell: (_, __, index) => `Tisch ${index + 1}` },
  name: typed("Im Becher gelöst", ({ solute }) => solute.de),
  mass: typed("davon abgewogen", ({ grams }) => grams, "g"),
  water: typed("Wasser dazu", ({ waterGrams }) => waterGrams, "g"),
  molar: typed("molare Masse", molarOf, "g/mol"),
  particles: typed("Teilchen je Formeleinheit", particlesOf),
  moles: worked("Stoffmenge", (at) => `${at("mass")}/${at("molar")}`, "0.0000", { unit: "mol" }),
  molality: worked("Molalität", (at) => `${at("moles")}/(${at("water")}/1000)`, "0.000", {
    unit: "mol/kg",
  }),
  depression: worked(
    "Gefrierpunkt sinkt um",
    (at) => `${at("molality")}*${fixed(constant)}*${at("particles")}`,
    "0.00",
    { unit: "K" },
  ),
  freezingPoint: worked("gefriert also ab", (at) => `-${at("depression")}`, "0.00", { unit: "°C" }),
  measured: typed("Fühler zeigte", (each) => shown(reading(each), "0.0"), "°C"),
});

/** The sums, stations beside each other. */
function sums(kit: Kit, sheet: CorpusSheet): void {
  const { list, tolerance } = problems(kit, 4);
  put(sheet, 0, 0, "LF 9 Speiseeis herstellen – Stationenarbeit Gefrierpunkt");
  const constant = given(kit, sheet, [1, 0], ["Kryoskopische Konstante", "K·kg/mol", 1.86, "0.00"]);
  const made = grid(kit, sheet, { row: 3, column: 0, across: true }, lines(constant), list);
  const text = `Die Formel gilt streng nur für sehr dünne Lösungen. Bei unseren Bechern liegt sie bis zu ${tolerance} K daneben.`;
  markEach(kit, made, put(sheet, made.end + 1, 0, text), () => ({ constant }));
  note(kit, sheet, made.end + 2, 0, "Bitte Becher spülen und Tische nass abwischen!");
}

const SAID: readonly Said[] = [
  { label: "Gefrierbeginn in °C", states: "freezing point", as: "formula" },
  { label: "Wasser in g", states: "water", as: "typed", decimals: 0 },
  { label: "gelöste Trockenmasse in g", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "gefrorener Anteil des Wassers bei −12 °C in %", states: "ice of water" },
    ...{ as: "typed", temperatureC: -12, decimals: 0 },
  },
];

/** How cold the school's freezers were. */
function freezers(kit: Kit, sheet: CorpusSheet, row: number): void {
  const heads = putRow(sheet, row, 0, ["Truhe", "Mo in °C", "Mi in °C"]);
  const rows = ["Flur", "Backstube", "Labor"].map((name, index) =>
    putRow(sheet, row + 1 + index, 0, [
      ...[name, -kit.random.whole(17, 21), -kit.random.whole(17, 21)],
    ]),
  );
  for (const at of [1, 2]) temperatures(kit, heads[at]!, columnOf(rows, at));
}

/** What is frozen afterwards, scaled up for the class. */
function batch(kit: Kit, sheet: CorpusSheet): void {
  const own = { Zucker: "Haushaltszucker", Vollmilch: "Milch 3,5 %", Salz: "Speisesalz" };
  const made = called(perKilogram(kit.make(1)[0]!), own);
  put(sheet, 0, 0, `Praxisteil: ${made.title}`);
  const groups = given(kit, sheet, [1, 0], ["Menge für die Klasse", "kg", 3]);
  const { recipe, end } = ownList(
    kit,
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Rohstoff", "Grundrezept in g", "Klasse in g"],
      cells: (item, grams) => [item, grams],
      ...{ name: 0, amount: 1, unit: "g", total: "Eismix" },
      also: ({ heads, amounts }) =>
        beside(kit, heads[2]!, amounts, {
          ...{ sheet, format: "0", fixed: [groups] },
          content: (spot) => `=${a1(spot)}*${fixed(groups)}`,
        }),
    },
  );
  strip(sheet, recipe, { row: end + 2, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: end + 5, column: 0, label: "Beurteilt wird" });
  tellIn(sheet, recipe, { row: end + 6, column: 0 }, inGerman("Kennzeichnen:"));
  freezers(kit, sheet, end + 8);
}

/** A class of pastry apprentices. */
function stationen(kit: Kit): void {
  sums(kit, addSheet(kit.marked.book, "Stationen"));
  batch(kit, addSheet(kit.marked.book, "Praxis"));
}

/** Lessons at a vocational school. */
export const stationenarbeit: readonly Layout[] = [
  {
    name: "Berufsschule, vier Stationen nebeneinander und Praxisteil",
    language: "de",
    build: stationen,
  },
];
