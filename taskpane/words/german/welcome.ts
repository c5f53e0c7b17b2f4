import type { Words } from "../words";

/** Was liest, wer neu ist. */
export const welcome: Words["welcome"] = {
  title: "Für den Anfang",
  sheet:
    "Schreiben Sie Zutaten in eine Spalte und ihre Gramm in die nächste, dann klicken Sie eine an: Die Schüssel sagt, wann das gefriert.",
  cells:
    "Auch Zellen sagen es, mit Funktionen, die mit =RIME. beginnen. Die Schüssel schreibt sie Ihnen.",
  begin: "Ein Beispiel auf ein neues Blatt",
  dismiss: "Nicht nötig",
  added: (sheet) =>
    `Auf dem Blatt „${sheet}“ steht nun ein Beispiel; klicken Sie seine Zutaten an.`,
  example: {
    sheet: "Zitroneneis",
    title: "Zitroneneis, ein Beispiel zum Ändern",
    ingredient: "Zutat",
    grams: "Menge (g)",
    servedAs: "Serviert als",
    freezingPoint: "Erstes Eis, °C",
    ice: "Eis v. Wasser",
    check: "Vergleich",
    working: "Wie der Gefrierpunkt zustande kommt",
  },
};

/** Hilfe an Ort und Stelle. */
export const help: Words["help"] = {
  label: "Hilfe zu dieser Ansicht",
  functions: "Alle Funktionen, mit Beispielen (neues Fenster, englisch)",
  views: {
    bowl: "Klicken Sie in ein Rezept: Namen in einer Spalte oder Zeile, Mengen in einer anderen. Sagen Sie, wie es serviert sein soll; die Schüssel sagt, ob es das wird, schreibt Formeln ins Blatt und nennt, was Essende wissen müssen.",
    steer:
      "Klicken Sie in ein Rezept, wählen Sie, wie es sein soll, und haken Sie an, was sich ändern darf: Sie bekommen die kleinste Änderung, in einer neuen Spalte neben der alten.",
    batch:
      "Klicken Sie in ein Rezept: auf eine Form umrechnen, Stunden und Kosten sehen, retten, was schon in der Schüssel ist, Fassungen vergleichen, Etikett oder Karte drucken.",
    curves:
      "Klicken Sie in ein Rezept und sehen Sie, wie es gefriert: als Kurve, als Zustandsbild, nach dem, was Wasser hält, und nach dem, was am meisten zählt. Jedes Bild hat seine Tabelle und lässt sich sichern.",
    aims: "Ziele sagen, wie viel Eis eine Masse beim Servieren haben soll. Legen Sie eigene an, heben Sie sie auf einem Blatt auf, geben Sie sie als Datei weiter.",
    larder:
      "Suchen Sie Stoffe und Zutaten, deutsch oder englisch. Jede Zahl sagt, woher sie kommt; setzen Sie sie als Wert oder Formel dorthin, wo die Auswahl ist.",
    notebook:
      "Schreiben Sie auf, was Thermometer oder Brix-Messer sagten. Gemessen neben vorhergesagt zeigt, was zu berichtigen ist und um wie viel.",
    why: "Klicken Sie eine Zelle mit einer unserer Formeln an: ihre Argumente, ihr Rechenweg Zeile für Zeile, und was das ideale Gesetz sagen würde.",
    readThrough:
      "Liest alle Blätter und nennt, was falsch sein kann, die größte Wirkung zuerst. Geändert wird nur, was Sie sagen.",
  },
};
