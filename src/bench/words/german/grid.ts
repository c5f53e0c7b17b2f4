/** What the spreadsheet itself says to its formulas. */
export const gridSentences: Readonly<Record<string, string>> = {
  "A number is divided by zero or by an empty cell.":
    "Eine Zahl wird durch null oder durch eine leere Zelle geteilt.",
  "A value is not available.": "Ein Wert ist nicht verfügbar.",
  "The formula contains a name or a function that is not known.":
    "Die Formel enthält einen Namen oder eine Funktion, die nicht bekannt ist.",
  "Two ranges do not overlap.": "Zwei Bereiche überschneiden sich nicht.",
  "A number lies outside what can be calculated.":
    "Eine Zahl liegt außerhalb dessen, was sich rechnen lässt.",
  "The formula refers to a cell that does not exist.":
    "Die Formel bezieht sich auf eine Zelle, die es nicht gibt.",
  "The answer does not fit: the cells it would fill are not empty.":
    "Die Antwort hat keinen Platz: Die Zellen, die sie füllen würde, sind nicht leer.",
  "A value is of a kind that cannot be calculated with.":
    "Ein Wert ist von einer Art, mit der sich nicht rechnen lässt.",
  "The formula gives something that is no value.": "Die Formel gibt etwas, das kein Wert ist.",
  "The formula gives the error {error}.": "Die Formel gibt den Fehler {error}.",
  "The spreadsheet's engine could not calculate this formula.":
    "Das Rechenwerk der Tabelle konnte diese Formel nicht rechnen.",
  "The cell before # holds no formula that fills more than its own cell.":
    "In der Zelle vor # steht keine Formel, die mehr als ihre eigene Zelle füllt.",
  "{name} would fill {size} cells; at most {most} are answered.":
    "{name} würde {size} Zellen füllen; beantwortet werden höchstens {most}.",
  "{name} would fill {size} cells, and the sheet ends before.":
    "{name} würde {size} Zellen füllen, und das Blatt endet vorher.",
  "{name} takes at most {most} arguments, not {count}.":
    "{name} nimmt höchstens {most} Argumente, nicht {count}.",
  "{name} failed: {reason}": "{name} ist gescheitert: {reason}",
  'There is no sheet "{name}" in the workbook.': "In der Mappe gibt es kein Blatt „{name}“.",
};
