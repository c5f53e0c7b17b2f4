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
import type { Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { columnOf, perKilogram } from "../kitchens/hand";
import type { Said } from "../layouts/parts";
import { dissolved } from "../solution";
import { about, mix, samples, small, toleranceOf } from "./words";

const VOICE: Voice = {
  lead: "Deklaration (Allergene):",
  honey: "Enthält Honig; nicht für Säuglinge unter 12 Monaten.",
  alcohol: "Enthält Ethanol; nicht für Kinder, Schwangere, Fahrzeugführende.",
  nuts: "Ganze Nüsse; Erstickungsgefahr für Kinder unter 5 Jahren.",
  egg: "Rohes Eigelb; auf 71 °C erhitzen oder pasteurisiertes einsetzen.",
};

interface Data {
  readonly molarMasses: readonly Spot[];
  readonly particles: readonly Spot[];
  readonly constant: Spot;
}

/** The data sheet that all exercises of the term read. */
function dataSheet(kit: Kit): Data {
  const sheet = addSheet(kit.marked.book, "Stoffdaten");
  put(sheet, 0, 0, "Stoffdaten zum Praktikum Lebensmittelphysik");
  putRow(sheet, 2, 0, ["Stoff", "Formel", "M / (g/mol)", "ν"]);
  const formulas = ["C12H22O11", "NaCl", "C6H12O6", "C6H12O6 · H2O", "KCl", "NaHCO3"];
  const rows = dissolved.map(({ de, molarMass, particles }, index) =>
    putRow(sheet, 3 + index, 0, [de, formulas[index], shown(molarMass, "0.00"), particles]),
  );
  const words = ["K_f(H2O) / (K·kg/mol)", undefined, shown(1.86, "0.00")];
  const [label, , constant] = putRow(sheet, 10, 0, words) as [Spot, Spot, Spot];
  kit.marked.inputs.push({ label, value: constant, bare: "K_f(H2O)" });
  note(kit, sheet, 12, 0, "Molare Massen nach den Standardatomgewichten, gerundet auf 0,01.");
  return { molarMasses: columnOf(rows, 2), particles: columnOf(rows, 3), constant };
}

const HEADS = [
  ...["Platz", "m(Wasser) / kg", "m(Wasser) / g", "m(Stoff) / g", "Stoff"],
  ...["ν·b / (mol/kg)", "ΔT / K", "T_f / °C"],
];

const from = (spot: Spot): string => `Stoffdaten!${fixed(spot)}`;

/** A row for each bench; molality of particles in one step, data from the other sheet. */
function exercise(kit: Kit, data: Data): void {
  const { marked } = kit;
  const { molarMasses, particles, constant } = data;
  const sheet = addSheet(marked.book, "Übung 2");
  put(sheet, 0, 0, "Übung 2: Gefrierpunkte verdünnter Lösungen");
  const heads = putRow(sheet, 2, 0, HEADS);
  const list = samples(kit, dissolved, [100, 200, 400, 500]);
  const text = `Ideal gerechnet, größte Abweichung in der Tabelle ${toleranceOf(kit, list)} K.`;
  const proviso = put(sheet, 4 + list.length, 0, text);
  const rows = list.map(({ solute, waterGrams, grams }, index) => {
    const row = 3 + index;
    const cells = putRow(sheet, row, 2, [waterGrams, grams, solute.de]);
    const [water, mass, name] = cells as [Spot, Spot, Spot];
    put(sheet, row, 0, index + 1);
    const formula = (column: number, content: string, format: string): Spot =>
      put(sheet, row, column, shown(`=${content}`, format));
    const kilos = formula(1, `${a1(water)}/1000`, "0.000");
    const [molar, count] = [molarMasses[index]!, particles[index]!];
    const osmolal = `${a1(mass)}/${from(molar)}/${a1(kilos)}*${from(count)}`;
    const molality = formula(5, osmolal, "0.000");
    const depression = formula(6, `${from(constant)}*${a1(molality)}`, "0.00");
    const freezingPoint = formula(7, `-${a1(depression)}`, "0.00");
    marked.solutions.push({
      ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [count] },
      ...{ moles: [molality], water, constant, depression, freezingPoint, proviso },
    });
    return [kilos, depression, freezingPoint];
  });
  [heads[1]!, heads[6]!, heads[7]!].forEach((heading, at) => {
    const fixedCells = at === 1 ? [constant] : [];
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading, fixed: fixedCells });
  });
  small(sheet, { row: 6 + list.length, column: 0 }, [
    ["Platz", "Betreuung", "Raum"],
    ["1 bis 3", "vormittags", "N 105"],
    ["4 bis 6", "nachmittags", "N 107"],
  ]);
}

const SAID: readonly Said[] = [
  { label: "T_f der Mischung / °C", states: "freezing point", as: "formula" },
  { label: "ΔT / K", states: "depression", as: "formula" },
  { label: "Wasser / g", states: "water", as: "typed", decimals: 0 },
  { label: "gelöst / g", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "gefrorener Teil des Wassers bei −16 °C / %", decimals: 0 },
    ...{ states: "ice of water", as: "typed", temperatureC: -16 },
  },
];

/** The mix of the last practical, a kilogram of it. */
function practical(kit: Kit, sheet: CorpusSheet): void {
  const made = perKilogram(kit.make(1)[0]!);
  put(sheet, 0, 0, `Praktikum, letzter Termin: ${made.title}, Ansatz 1 kg`);
  const heads = ["Komponente", "m / g", "w / %"];
  const { recipe, end } = mix(
    kit,
    sheet,
    made,
    {
      ...{ row: 11, column: 0, heads, name: 0, amount: 1, total: "Summe" },
      cells: (item, grams) => [item, grams],
    },
    (rows, total) => {
      const shares = columnOf(rows, 1).map((spot) =>
        put(sheet, spot.row, 2, shown(`=${a1(spot)}/${fixed(total!)}*100`, "0.0")),
      );
      const heading = { sheet: sheet.name, row: 11, column: 2 };
      kit.marked.formulaColumns.push({ spots: shares, heading, fixed: [total!] });
      const sum = put(sheet, total!.row, 2, shown(`=SUM(${span(shares)})`, "0.0"));
      kit.marked.sums.push({ spot: sum, parts: shares });
      return shares;
    },
  );
  about(sheet, recipe, { row: 2, column: 0 }, { said: SAID, target: "Zielgröße", voice: VOICE });
  note(kit, sheet, end + 1, 0, "Messwerte der Eismaschine bitte als eigene Datei abgeben.");
}

/** A lecturer's file for a whole term. */
export const stoffdateien: readonly Layout[] = [
  {
    ...{ name: "Praktikum Lebensmittelphysik, Stoffdaten auf eigenem Blatt", language: "de" },
    build: (kit) => {
      exercise(kit, dataSheet(kit));
      practical(kit, addSheet(kit.marked.book, "Letzter Termin"));
    },
  },
];
