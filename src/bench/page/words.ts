import type { Language } from "./createGrid";

const WORDS: Readonly<Record<Language, Readonly<Record<string, string>>>> = {
  en: {
    open: "Open…",
    save: "Save a copy",
    demo: "Demo book",
    language: "Language",
    pane: "Pane",
    comma: "Decimal comma",
    point: "Decimal point",
    leave: "Do not open",
    drop: "Drop an .xlsx or .csv file to open it",
  },
  de: {
    open: "Öffnen…",
    save: "Kopie speichern",
    demo: "Beispielbuch",
    language: "Sprache",
    pane: "Bereich",
    comma: "Dezimalkomma",
    point: "Dezimalpunkt",
    leave: "Nicht öffnen",
    drop: "Eine .xlsx- oder .csv-Datei zum Öffnen hier ablegen",
  },
};

/** Puts the header's words into a language. */
export function showWords(language: Language): void {
  for (const place of document.querySelectorAll<HTMLElement>("[data-word]")) {
    const word = WORDS[language][place.dataset["word"] ?? ""];
    if (word !== undefined) place.textContent = word;
  }
}
