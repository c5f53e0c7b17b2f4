/** What is said to files, and to what cannot be carried over from them or into them. */
export const fileSentences: Readonly<Record<string, string>> = {
  "{file} was not opened.": "{file} wurde nicht geöffnet.",
  "{file} was not opened. {reason}": "{file} wurde nicht geöffnet. {reason}",
  "{address} could not be loaded.": "{address} ließ sich nicht laden.",
  "That did not work: {reason}": "Das ging nicht: {reason}",
  "The bench could not start: {reason}": "Die Werkbank konnte nicht starten: {reason}",
  "The table {name} could not be kept as a table; its cells are there.":
    "Die Tabelle {name} blieb nicht als Tabelle erhalten; ihre Zellen sind da.",
  "Not carried over: {losses}. Your file itself is unchanged.":
    "Nicht übernommen: {losses}. Ihre Datei selbst ist unverändert.",
  "pivot tables": "Pivottabellen",
  charts: "Diagramme",
  pictures: "Bilder",
  comments: "Kommentare",
  macros: "Makros",
  "conditional formats": "bedingte Formate",
  "input rules": "Eingaberegeln",
  "the protection of sheets": "der Schutz von Blättern",
  hyperlinks: "Hyperlinks",
  "bold or coloured words inside a text": "fette oder farbige Wörter in einem Text",
  "filters (what they hide stays hidden)": "Filter (was sie ausblenden, bleibt ausgeblendet)",
  "links to other workbooks (their last values are there)":
    "Verknüpfungen mit anderen Mappen (ihre letzten Werte sind da)",
  "the totals rows of tables as such (their cells are there)":
    "die Ergebniszeilen von Tabellen als solche (ihre Zellen sind da)",
  "fonts, colours and column widths": "Schriften, Farben und Spaltenbreiten",
  "The workbook counts its days from 1904: dates show four years and a day too early here and in saved copies.":
    "Die Mappe zählt ihre Tage ab 1904: Daten erscheinen hier und in gespeicherten Kopien vier Jahre und einen Tag zu früh.",
  "The workbook is set to manual calculation; here everything is calculated at once.":
    "Die Mappe rechnet von Hand; hier wird alles sofort gerechnet.",

  "A saved copy is a new .xlsx file; your file itself stays as it is.":
    "Eine gespeicherte Kopie ist eine neue .xlsx-Datei; Ihre Datei selbst bleibt, wie sie ist.",
  "The file is not in UTF-8; its letters were read as Windows-1252.":
    "Die Datei ist nicht in UTF-8; ihre Buchstaben wurden als Windows-1252 gelesen.",
  "Fields were split at {delimiter}; the decimal mark is the {mark}.":
    "Felder wurden an {delimiter} getrennt; das Dezimalzeichen ist {mark}.",
  'Numbers with the other decimal mark stay texts: {count}, the first "{text}".':
    "Zahlen mit dem anderen Dezimalzeichen bleiben Texte: {count}, die erste „{text}“.",
  "The file has as many numbers with a decimal comma as with a decimal point ({count} each).":
    "Die Datei hat so viele Zahlen mit Dezimalkomma wie mit Dezimalpunkt (je {count}).",
  '"{text}" can mean {comma} with a decimal comma or {point} with a decimal point, and nothing else in the file tells.':
    "„{text}“ kann mit Dezimalkomma {comma} heißen oder mit Dezimalpunkt {point}, und nichts sonst in der Datei verrät es.",

  "The file is empty.": "Die Datei ist leer.",
  "The file is {size} large; at most {most} are read.":
    "Die Datei ist {size} groß; gelesen werden höchstens {most}.",
  "The file holds bytes that no text has: it is not a CSV file.":
    "Die Datei enthält Bytes, die kein Text hat: Sie ist keine CSV-Datei.",
  "The file has {rows} rows and {columns} columns; a sheet has at most {mostRows} and {mostColumns}.":
    "Die Datei hat {rows} Zeilen und {columns} Spalten; ein Blatt hat höchstens {mostRows} und {mostColumns}.",
  "The file has more than {most} cells, the most that are read.":
    "Die Datei hat mehr als {most} Zellen, die meisten, die gelesen werden.",
  "A quotation mark of row {row} is not closed.":
    "Ein Anführungszeichen in Zeile {row} ist nicht geschlossen.",
  'The file is a zip archive but not a workbook: it has no part "{part}".':
    "Die Datei ist ein Zip-Archiv, aber keine Mappe: Ihr fehlt der Teil „{part}“.",
  'The file is damaged: sheet "{sheet}" has no part.':
    "Die Datei ist beschädigt: Blatt „{sheet}“ hat keinen Teil.",
  "The file is damaged: two sheets share one part.":
    "Die Datei ist beschädigt: Zwei Blätter teilen sich einen Teil.",
  "The workbook has no sheet with cells.": "Die Mappe hat kein Blatt mit Zellen.",
  "The file is damaged: it points beyond its own end.":
    "Die Datei ist beschädigt: Sie verweist über ihr eigenes Ende hinaus.",
  "The file is damaged or cut short: its list of parts cannot be read.":
    "Die Datei ist beschädigt oder abgeschnitten: Ihr Verzeichnis lässt sich nicht lesen.",
  "The file is protected by a password; save a copy without one.":
    "Die Datei ist durch ein Kennwort geschützt; bitte eine Kopie ohne speichern.",
  'The part "{part}" is packed by method {method}; only deflate is read.':
    "Der Teil „{part}“ ist mit Verfahren {method} gepackt; gelesen wird nur Deflate.",
  "The file holds {count} parts; at most {most} are read.":
    "Die Datei hat {count} Teile; gelesen werden höchstens {most}.",
  "The file is an old .xls workbook, whatever its name; save it as .xlsx.":
    "Die Datei ist eine alte .xls-Mappe, wie immer sie heißt; bitte als .xlsx speichern.",
  "The file is not an .xlsx workbook: it does not begin as one.":
    "Die Datei ist keine .xlsx-Mappe: Sie beginnt nicht wie eine.",
  "The file is cut short: it ends before its first part.":
    "Die Datei ist abgeschnitten: Sie endet vor ihrem ersten Teil.",
  "The file unpacks to more than {most}, the most that is read.":
    "Die Datei wird entpackt größer als {most}, das Meiste, was gelesen wird.",
  'The part "{part}" unpacks to over {times} times its size; not read.':
    "Der Teil „{part}“ wird entpackt über {times}-mal so groß; er wird nicht gelesen.",
  'The file is damaged: its part "{part}" cannot be unpacked.':
    "Die Datei ist beschädigt: Ihr Teil „{part}“ lässt sich nicht entpacken.",
  'The part "{part}" declares a document type; such files are not read.':
    "Der Teil „{part}“ erklärt einen Dokumenttyp; solche Dateien werden nicht gelesen.",
  'The file is damaged: its part "{part}" is not well-formed XML.':
    "Die Datei ist beschädigt: Ihr Teil „{part}“ ist kein wohlgeformtes XML.",
  'The part "{part}" is nested deeper than {most} levels.':
    "Der Teil „{part}“ ist tiefer als {most} Stufen verschachtelt.",
  'The file is damaged: its part "{part}" is missing.':
    "Die Datei ist beschädigt: Ihr Teil „{part}“ fehlt.",
  "The workbook has more than {most} different texts.":
    "Die Mappe hat mehr als {most} verschiedene Texte.",
  "The workbook has more than {most} different texts and formulas.":
    "Die Mappe hat mehr als {most} verschiedene Texte und Formeln.",
  "The workbook has more than {most} cells, the most that are read.":
    "Die Mappe hat mehr als {most} Zellen, die meisten, die gelesen werden.",
  "The workbook has more than {most} sheets or too many names.":
    "Die Mappe hat mehr als {most} Blätter oder zu viele Namen.",
  'Sheet "{sheet}" has more than {most} merged blocks.':
    "Blatt „{sheet}“ hat mehr als {most} verbundene Blöcke.",
  'Sheet "{sheet}" has a row {row}; rows run from 1 to {most}.':
    "Blatt „{sheet}“ hat eine Zeile {row}; Zeilen gehen von 1 bis {most}.",
  'The file is damaged: sheet "{sheet}" has two rows {row}.':
    "Die Datei ist beschädigt: Blatt „{sheet}“ hat zweimal Zeile {row}.",
  'The file is damaged: sheet "{sheet}" has a cell at "{cell}".':
    "Die Datei ist beschädigt: Blatt „{sheet}“ hat eine Zelle bei „{cell}“.",
  'The file is damaged: {place} holds "{text}" as a value.':
    "Die Datei ist beschädigt: {place} enthält „{text}“ als Wert.",
  'The file is damaged: its part "{part}" describes no table.':
    "Die Datei ist beschädigt: Ihr Teil „{part}“ beschreibt keine Tabelle.",
  "The file is a binary workbook (.xlsb); save it as .xlsx.":
    "Die Datei ist eine binäre Mappe (.xlsb); bitte als .xlsx speichern.",
  "The file is an OpenDocument spreadsheet (.ods); save it as .xlsx.":
    "Die Datei ist eine OpenDocument-Tabelle (.ods); bitte als .xlsx speichern.",
  "The file is a text document, not a workbook.": "Die Datei ist ein Textdokument, keine Mappe.",
  'The file holds a part named "{part}", which points outside the file.':
    "Die Datei enthält einen Teil „{part}“, der aus ihr hinausweist.",
  'The file holds two parts named "{part}".': "Die Datei enthält zwei Teile „{part}“.",
};
