import { a1, addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { say, type Problem, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { block, reading } from "../scholars/words";
import { readings } from "../wanderers/worte";
import { mix, samples, small, solutes, toleranceOf } from "../benches/words";

const VOICE: Voice = {
  lead: "Hinweis für Gäste, enthalten ist:",
  honey: "Wegen des Honigs nichts für Kinder unter 12 Monaten.",
  alcohol: "Mit Alkohol, also nicht für Kinder, Schwangere und alle, die fahren.",
  nuts: "Ganze Nüsse: für Kinder unter 5 Jahren Erstickungsgefahr.",
  egg: "Das Eigelb ist roh: auf 71 °C erhitzen oder pasteurisiertes nehmen.",
};

/** One experiment on a page of its own: weighed, worked out, read. */
function experiment(kit: Kit, problem: Problem, number: number, tolerance: string): void {
  const { solute, grams, waterGrams } = problem;
  const sheet = addSheet(kit.marked.book, `V${number}`);
  put(sheet, 0, 0, `Versuch ${number}`);
  const known = block(
    sheet,
    { row: 2, column: 0 },
    {
      name: ["gelöst wurde", solute.de],
      mass: ["davon eingewogen (g)", grams],
      water: ["in Wasser (g)", waterGrams],
      molar: ["molare Masse (g/mol)", shown(solute.molarMass, "0.00")],
      particles: ["van-'t-Hoff-Faktor", solute.particles],
      constant: ["kryoskopische Konstante des Wassers (K·kg/mol)", shown(1.86, "0.00")],
    },
  );
  const { name, mass, molar, water, particles, constant } = known;
  put(sheet, 9, 0, "Rechnung");
  const line = (row: number, label: string, formula: string, format = "0.00") =>
    putRow(sheet, row, 0, [label, shown(`=${formula}`, format)])[1]!;
  const kilos = line(10, "Wasser (kg)", `${a1(water)}/1000`, "0.000");
  const moles = line(11, "Stoffmenge (mol)", `${a1(mass)}/${a1(molar)}`, "0.0000");
  const molality = line(12, "Molalität (mol/kg)", `${a1(moles)}/${a1(kilos)}`, "0.000");
  const law = `${a1(constant)}*${a1(molality)}*${a1(particles)}`;
  const depression = line(13, "Gefrierpunktserniedrigung (K)", law);
  const freezingPoint = line(14, "Gefrierpunkt nach der Rechnung (°C)", `-${a1(depression)}`);
  const mean = shown(reading(problem), "0.0");
  putRow(sheet, 15, 0, ["Gefrierpunkt im Versuch, Mittel aus drei (°C)", mean]);
  const text = `Gerechnet ist ideal; zwischen Rechnung und Wirklichkeit liegen höchstens ${tolerance} K.`;
  const proviso = put(sheet, 17, 0, text);
  kit.marked.inputs.push({
    ...{ label: { ...water, column: 0 }, value: water, bare: "in Wasser" },
  });
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
  });
}

/** Ice and salt in a bucket, read every two minutes. */
function bath(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Kältemischung für die Eismaschine von Oma (Holzeimer)");
  small(sheet, { row: 2, column: 0 }, [
    ["zerstoßenes Eis", 2400, "g"],
    ["Streusalz", 700, "g"],
  ]);
  const heads = putRow(sheet, 5, 0, ["Minute", "Eimer (°C)", "Kessel innen (°C)"]);
  small(
    sheet,
    { row: 6, column: 0 },
    [2, 4, 6, 8, 10, 12, 14].map((minute) => [minute]),
  );
  readings(kit, sheet, heads[1]!, { count: 7, tenths: [-188, -91], falling: true });
  readings(kit, sheet, heads[2]!, { count: 7, tenths: [-74, -12], falling: true });
  note(kit, sheet, 14, 0, "Ab Minute 10 dreht die Kurbel schwer, siehe Kapitel 4.");
}

const SAID: readonly Said[] = [
  { label: "fängt an zu gefrieren bei", inCell: "°C", states: "freezing point", as: "typed" },
  {
    label: "Wasser mit dem aus den Zutaten",
    inCell: "g",
    states: "water",
    as: "typed",
    decimals: 0,
  },
  {
    ...{ label: "davon gefroren bei −8 °C", inCell: "%", decimals: 0 },
    ...{ states: "ice of water", as: "typed", temperatureC: -8 },
  },
  {
    label: "auf 100 g Wasser kommt Zucker",
    inCell: "g",
    states: "sugar per 100 g water",
    as: "typed",
  },
];

/** The ice for the presentation; the kilograms as the scale shows them. */
function presentation(kit: Kit, sheet: CorpusSheet): void {
  const made = called(kit.make(1)[0]!, { Wasser: "Leitungswasser" });
  put(sheet, 0, 0, `Eis zur Präsentation am 6. Mai: ${made.title}`);
  const { recipe, end } = mix(kit, sheet, made, {
    ...{ row: 3, column: 0, heads: ["kg", "Zutat", "eingekauft bei"], name: 1, amount: 0 },
    ...{ unit: "kg", format: "0.000", total: "zusammen" },
    cells: (item, grams) => [
      ...[shown(inUnit(grams, "kg"), "0.000"), item],
      kit.random.pick(["Markt", "Supermarkt", "zu Hause"]),
    ],
  });
  const next = say(sheet, recipe, { row: end + 1, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "gedacht als" });
  const after = tellIn(sheet, recipe, { row: next + 1, column: 1 }, VOICE);
  note(kit, sheet, after + 1, 1, "Becher und Löffel bezahlt der Förderverein.");
}

/** A pupil's long paper. */
export const facharbeiten: readonly Layout[] = [
  {
    ...{ name: "Facharbeit, drei Versuche, Kältemischung, Eis", language: "de" },
    build: (kit) => {
      const list = samples(
        kit,
        solutes("sodium chloride", "sucrose", "glucose monohydrate"),
        [200, 250, 500],
      );
      const tolerance = toleranceOf(kit, list);
      list.forEach((each, index) => experiment(kit, each, index + 1, tolerance));
      bath(kit, addSheet(kit.marked.book, "Kältemischung"));
      presentation(kit, addSheet(kit.marked.book, "Präsentation"));
    },
  },
];
