import { addSheet, put } from "../book";
import type { Layout } from "../kit";
import { solution, dissolved, type SolutionPlan } from "../solution";
import { solutionRows } from "../solutionRows";

const english: SolutionPlan["words"] = {
  water: ["Water (g)", "Water"],
  constant: "Kf of water (K·kg/mol)",
  depression: "Freezing-point depression (K)",
  freezingPoint: "Freezing point (°C)",
  proviso: (tolerance) => `Ideal law for teaching, good to ±${tolerance} K at this strength.`,
};

const german: SolutionPlan["words"] = {
  water: ["Wasser (g)", "Wasser"],
  constant: "Kryoskopische Konstante Kf (K·kg/mol)",
  depression: "Gefrierpunktserniedrigung (K)",
  freezingPoint: "Gefrierpunkt (°C)",
  proviso: (tolerance) => `Ideales Gesetz, hier auf ±${tolerance} K genau.`,
};

const headings = {
  en: ["Solute", "Grams", "Molar mass (g/mol)", "Particles i", "Moles of particles (mol)"],
  de: ["Stoff", "Masse (g)", "Molare Masse (g/mol)", "Teilchen i", "Teilchen (mol)"],
} as const;

/** Class sheets with hand-made formulas of the ideal law, which say how near it comes. */
export const classes: readonly Layout[] = [
  {
    ...{ name: "class sheet, two solutes", language: "en" },
    build: (kit) => {
      const sheet = addSheet(kit.marked.book, "Lesson 3");
      put(sheet, 0, 0, "How salt and sugar lower the freezing point");
      const plan = { top: 2, left: 0, count: 2, headings: headings.en, words: english };
      solution(kit, sheet, plan);
    },
  },
  {
    ...{ name: "class sheet, inputs first", language: "en" },
    build: (kit) => {
      const sheet = addSheet(kit.marked.book, "Class");
      const plan = { top: 0, left: 1, count: 3, headings: headings.en };
      solution(kit, sheet, {
        ...plan,
        headings: ["Substance", "Mass (g)", "M (g/mol)", "van 't Hoff factor i", "i·n (mol)"],
        words: {
          ...english,
          water: ["Mass of water (g)", "Mass of water"],
          constant: "Cryoscopic constant (K kg/mol)",
          depression: "Depression ΔT (K)",
          freezingPoint: null,
          proviso: (tolerance) => `The ideal law is within ${tolerance} K here.`,
        },
        inputsFirst: true,
      });
    },
  },
  {
    ...{ name: "Kursblatt", language: "de" },
    build: (kit) => {
      const sheet = addSheet(kit.marked.book, "Kursblatt");
      solution(kit, sheet, { top: 0, left: 0, count: 2, headings: headings.de, words: german });
    },
  },
  {
    ...{ name: "Kursblatt, Vorgaben oben", language: "de" },
    build: (kit) => {
      const sheet = addSheet(kit.marked.book, "Übung 2");
      put(sheet, 0, 0, "Übung: Wie weit sinkt der Gefrierpunkt?");
      solution(kit, sheet, {
        ...{ top: 2, left: 0, count: 3, headings: headings.de, inputsFirst: true },
        words: { ...german, proviso: (tolerance) => `Gilt ideal; Toleranz ${tolerance} K.` },
      });
    },
  },
  {
    ...{ name: "one solution a row", language: "en" },
    build: (kit) =>
      solutionRows(kit, addSheet(kit.marked.book, "Solutions"), {
        ...{ top: 0, left: 0, constant: "Kf (K·kg/mol)" },
        headings: [
          ...(["Solute", "Solute (g)", "Water (g)", "Molar mass (g/mol)", "i"] as const),
          ...(["Molality (mol/kg)", "Depression (K)", "Freezing point (°C)"] as const),
        ],
        proviso: (tolerance) => `Ideal law; tolerance ${tolerance} K.`,
      }),
  },
  {
    ...{ name: "eine Lösung je Zeile", language: "de" },
    build: (kit) =>
      solutionRows(kit, addSheet(kit.marked.book, "Lösungen"), {
        ...{ top: 1, left: 0, constant: "Kryoskopische Konstante (K·kg/mol)" },
        headings: [
          ...(["Stoff", "Menge (g)", "Wasser (g)", "M (g/mol)", "Teilchen i"] as const),
          ...(["Molalität (mol/kg)", "Erniedrigung ΔT (K)", "Gefrierpunkt (°C)"] as const),
        ],
        proviso: (tolerance) => `Ideales Gesetz, Toleranz ±${tolerance} K.`,
      }),
  },
  {
    ...{ name: "salt only, small sheet", language: "en" },
    build: (kit) => {
      const sheet = addSheet(kit.marked.book, "Brine");
      const salts = dissolved.filter(({ particles }) => particles > 1);
      const plan = {
        top: 1,
        left: 0,
        count: 1,
        from: salts,
        headings: headings.en,
        words: english,
      };
      solution(kit, sheet, plan);
    },
  },
];
