import type { Words } from "../words";

/** The words of the view that explains a cell. */
export const why: Words["why"] = {
  outside: "Um eine Zelle zu erklären, den Bereich in einer Tabellenkalkulation öffnen.",
  none: (cell: string) =>
    `${cell} enthält keine unserer Funktionen. Wählen Sie eine Zelle, in deren Formel RIME. steht.`,
  which: "Welcher Aufruf",
  recipe: "Welches Rezept",
  recipeNumber: (number: number) => `Rezept ${number}`,
  answers: "Antwort",
  moreCells: (rows: number, columns: number) => `ein Block von ${rows} × ${columns} Zellen`,
  refused: "Keine Antwort, denn:",
  stale: (shown: string) =>
    `Die Zelle zeigt ${shown}, ihre Formel ergibt jetzt etwas anderes: Lassen Sie die Mappe neu berechnen.`,
  ideal: (ideal: string, real: string) =>
    `Nach dem idealen Gesetz der Schule wären es ${ideal}, wirklich sind es ${real}.`,
  arguments: "Was übergeben wurde",
  blank: "weggelassen",
  cells: (count: number) => `${count} Zellen`,
  unread: (part: string) =>
    `„${part}“ ist eine Rechnung in der Formel: In einer eigenen Zelle ließe sich der Rechenweg zeigen.`,
  method: "Wie gerechnet wird",
  board: "Der Rechenweg",
  boardMark: "Jede Zeile lässt sich mit dem Taschenrechner prüfen.",
  sources: "Quellen",
  help: "Hilfeseite dazu",
  unknown: (name: string) => `RIME.${name} ist keine unserer Funktionen.`,
};
