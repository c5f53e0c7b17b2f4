import type { Words } from "../words";

/** The words of the view that keeps what was measured. */
export const notebook: Words["notebook"] = {
  outside: "Das Heft führt seine Zeilen auf einem Blatt; öffnen Sie den Bereich in einer Tabelle.",
  sheetName: "Heft",
  writeTitle: (title: string) => `Aufschreiben, was aus „${title}“ wurde`,
  noRecipe: "Wählen Sie ein Rezept, um aufzuschreiben, was daraus wurde.",
  measuredC: "Erstes Eis, gemessen",
  brix: "Brix der Mischung, gemessen",
  freezerSetC: "Gefriergerät eingestellt auf",
  freezerC: "Gefriergerät, gemessen",
  firmness: "Wie es nachgab",
  notFelt: "nicht probiert",
  note: "Notiz",
  forecast: (point: string) => `Vorhersage für das erste Eis: ${point}.`,
  noForecast: "Für das erste Eis dieser Mischung gibt es keine Vorhersage.",
  firmnessForecast: (word: string, temperature: string) =>
    `Festigkeit bei ${temperature}\u00a0°C: ${word}.`,
  brixForecast: (brix: string) =>
    `Ein Refraktometer sollte ${brix}\u00a0°Bx zeigen, bei Zuckern ±\u00a00,3, mit Sirupen, Zuckeralkoholen oder Eiweiß ±\u00a01.`,
  write: "Aufschreiben",
  nothingToWrite: "Tragen Sie mindestens eine Messung oder eine Notiz ein.",
  written: (place: string) => `In ${place} geschrieben.`,
  notWritten: (place: string) =>
    `${place} wurde inzwischen geändert: Nichts wurde geschrieben, versuchen Sie es noch einmal.`,
  startsSheet: (name: string) =>
    `In dieser Mappe gibt es noch kein Heft: Die erste Zeile beginnt ein neues Blatt, „${name}“.`,
  kept: (count: number, sheet: string) =>
    `${count} ${count === 1 ? "Zeile" : "Zeilen"} auf dem Blatt „${sheet}“`,
  residuals: "Gemessen minus vorhergesagt, erstes Eis",
  residualAxis: "K",
  forecastAxis: "vorhergesagt, °C",
  recipe: "Rezept",
  measured: "Gemessen, °C",
  forecastColumn: "Vorhergesagt, °C",
  difference: "Unterschied, K",
  learnTitle: "Was sich daraus lernen lässt",
  offset: (offset: string, readings: number) =>
    `Dieses Gefriergerät ist ${offset} wärmer als eingestellt (${readings} ${readings === 1 ? "Ablesung" : "Ablesungen"}).`,
  offsetOnce: "Eine Ablesung sagt nichts über die Streuung: Lesen Sie noch einige Male ab.",
  offsetUse: "Rechnen Sie mit der gemessenen Temperatur, nicht mit der eingestellten.",
  learnAbout: "Nehmen Sie eine Messung und eine Zutat, die nicht gut bekannt ist:",
  line: "Messung",
  ingredient: "Zutat",
  thermometer: "Thermometer genau auf ±",
  factor: (item: string, factor: string) =>
    `Die Messung ist erklärt, wenn das in ${item} Gelöste ${factor}-mal zählt.`,
  factorBasis: "± allein vom Thermometer; die anderen Zutaten gelten, wie der Katalog sie führt.",
  noFactor: (item: string) => `Keine Stärke von ${item} erklärt diese Messung.`,
  noMix: "Das Rezept dieser Zeile lässt sich nicht mehr lesen.",
  apply: "Die berichtigte Zutat auf ein neues Blatt eigener Zutaten setzen",
  applied: (sheet: string) =>
    `Das Blatt „${sheet}“ enthält die berichtigte Zutat; wählen Sie es in der Schüssel, damit sie zählt.`,
  ownSheet: "Eigene Zutaten",
  brixTitle: "Eine Frucht oder ein Sirup nach gemessenem Brix",
  brixAbout: "Zucker und Säuren behalten ihre Anteile, das Wasser macht Platz.",
  brixRead: "Das Refraktometer zeigt",
  brixFactor: (item: string, factor: string) =>
    `Das in ${item} Gelöste zählt ${factor}-mal so viel, wie der Katalog sagt.`,
  noBrix: (item: string) => `${item} kann das nicht zeigen.`,
  learntFrom: (date: string) => `aus einem gemessenen Gefrierpunkt gelernt, ${date}`,
  brixFrom: (brix: string) => `auf gemessene ${brix} °Bx gebracht`,
};
