import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { say, type Said } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { input } from "../page";
import { choose, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { block, markFormulas, markWorked, table, voice } from "./words";

const HEADS = [
  ...["Team", "Wassermasse (g)", "Stoff", "Einwaage (g)", "M (g/mol)", "z", "Teilchen-Molalität"],
  ...["ΔTm (K)", "Tm (°C)"],
];

/** A team's row; gives its cells and how far the law is off. */
function team(kit: Kit, sheet: CorpusSheet, solute: Dissolved, index: number, constant: Spot) {
  const { random } = kit;
  const row = 5 + index;
  const waterGrams = random.pick([80, 125, 160, 240]);
  const grams = gramsOf(random, solute, waterGrams);
  const [, water, name, mass, molar, particles] = putRow(sheet, row, 0, [
    ...[`T${index + 1}`, waterGrams, solute.de, grams],
    ...[shown(solute.molarMass, "0.00"), solute.particles],
  ]) as [Spot, Spot, Spot, Spot, Spot, Spot];
  const molal = `=${a1(mass)}*${a1(particles)}/${a1(molar)}/(${a1(water)}/1000)`;
  const moles = put(sheet, row, 6, shown(molal, "0.000"));
  const depression = put(sheet, row, 7, shown(`=${a1(moles)}*${fixed(constant)}`, "0.00"));
  const point = put(sheet, row, 8, shown(`=0-${a1(depression)}`, "0.00"));
  const gap = idealGap([solute], [grams], waterGrams);
  return { name, mass, molar, particles, water, constant, moles, depression, point, gap };
}

/** What the teams calculate before they measure. */
function teams(kit: Kit, sheet: CorpusSheet): void {
  const words = { label: "k (Wasser, K·kg/mol)", bare: "k (Wasser)", value: 1.86 };
  const constant = input(kit, sheet, { row: 2, column: 0 }, { ...words, format: "0.00" });
  const heads = putRow(sheet, 4, 0, HEADS);
  put(sheet, 3, 6, "in mol/kg");
  const rows = choose(kit.random, 4).map((each, index) => team(kit, sheet, each, index, constant));
  markFormulas(
    kit,
    heads[6]!,
    rows.map((each) => each.moles),
  );
  markFormulas(
    kit,
    heads[7]!,
    rows.map((each) => each.depression),
    [constant],
  );
  markFormulas(
    kit,
    heads[8]!,
    rows.map((each) => each.point),
  );
  const gap = tolerated(Math.max(...rows.map((each) => each.gap))).replace(".", ",");
  const proviso = put(sheet, 10, 0, `Vorhersage nach dem Grenzgesetz, ideal, auf ${gap} K sicher.`);
  rows.forEach((each) => markWorked(kit, each, proviso));
}

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt der Masse", inCell: "°C", states: "freezing point", as: "formula" },
  {
    ...{ label: "gefrorener Wasseranteil bei −10 °C", inCell: "%", states: "ice of water" },
    ...{ as: "typed", temperatureC: -10, decimals: 0 },
  },
  {
    ...{ label: "Zuckeranteil der Masse", inCell: "%", states: "sugar share" },
    ...{ as: "typed", decimals: 1 },
  },
];

const VOICE = voice(
  "Achtung Allergiker, enthält:",
  "Honig ist drin, nichts für Geschwister unter 12 Monaten.",
  "Alkohol ist drin: nur für Begleitpersonen, nicht für Kinder, Schwangere oder Fahrer.",
  "Ganze Nüsse sind drin: Erstickungsgefahr für Kinder unter 5 Jahren.",
  "Rohes Eigelb ist drin: auf 71 °C bringen oder pasteurisiertes verwenden.",
);

/** The ice from the machine, in per cent and for the bowl of the day. */
function machine(kit: Kit, sheet: CorpusSheet): void {
  const made = called(largestFirst(kit.make(1)[0]!), { Zucker: "weißer Zucker" });
  put(sheet, 12, 0, `Aus der Eismaschine: ${made.title}`);
  const value = kit.random.pick([600, 750, 900]);
  const words = { label: "Füllmenge der Maschine (g)", bare: "Füllmenge der Maschine", value };
  const bowl = input(kit, sheet, { row: 13, column: 0 }, words);
  const { recipe, end } = block(
    kit,
    sheet,
    made,
    { row: 15, column: 0 },
    {
      heads: ["Bestandteile", "Masse-%", "heute (g)"],
      cells: (item, grams) => [item, shown(grams, "0.0")],
      ...{ name: 0, amount: 1, unit: "%", format: "0.0", word: "100-%-Probe" },
      also: ({ heads, amounts }) =>
        beside(kit, heads[2]!, amounts, {
          ...{ sheet, format: "0", fixed: [bowl] },
          content: (spot) => `=${a1(spot)}/100*${fixed(bowl)}`,
        }),
    },
  );
  const next = say(sheet, recipe, { row: 16, column: 4 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Wunsch" });
  tellIn(sheet, recipe, { row: end + 1, column: 0 }, VOICE);
  table(sheet, { row: end + 3, column: 0 }, [
    ["Dienst", "vormittags", "nachmittags"],
    ["Labor öffnen", "Fr. Adler", "Hr. Brandt"],
    ["Spülmaschine", "T1", "T3"],
  ]);
  note(kit, sheet, end + 7, 0, "Besuchsklasse bringt Schutzbrillen selbst mit; Schals ablegen.");
}

/** A morning in a laboratory for school classes. */
function schuelerlabor(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Vormittag");
  put(sheet, 0, 0, "Schülerlabor, Thema Frost: erst rechnen, dann messen, dann essen");
  teams(kit, sheet);
  machine(kit, sheet);
}

/** A laboratory that school classes visit. */
export const schuelerlabore: readonly Layout[] = [
  {
    name: "Schülerlabor, Teams in Zeilen und die Füllmenge der Maschine",
    ...{ language: "de", build: schuelerlabor },
  },
];
