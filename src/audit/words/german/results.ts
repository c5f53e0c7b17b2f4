/** Findings on results, formulas, totals and the workbook. */
export const resultFindings: Readonly<Record<string, string>> = {
  'None of the {count} answers here fits the list: "{label}" is {stated} {unit}; recomputed from the recipe it is {ours} {unit2}.':
    "Keine der {count} Antworten hier passt zur Liste: „{label}“ ist {stated} {unit}; aus dem Rezept nachgerechnet sind es {ours} {unit2}.",
  'None of the {count} answers of this name fits its list: "{label}" is {stated} {unit}; recomputed from the recipe it is {ours} {unit2}.':
    "Keine der {count} Antworten dieses Namens passt zu ihrer Liste: „{label}“ ist {stated} {unit}; aus dem Rezept nachgerechnet sind es {ours} {unit2}.",
  "Look at what the name means, and of how much, then at how the numbers were worked out.":
    "Ansehen, was der Name meint und bezogen worauf, dann, wie die Zahlen gerechnet wurden.",
  "Look at what was read as the recipe, then at its amounts.":
    "Erst ansehen, was als Rezept gelesen wurde, dann die Mengen.",
  '"{label}" is {stated} {unit}; recomputed from the recipe it is {ours} {unit2}.{why?}':
    "„{label}“ ist {stated} {unit}; aus dem Rezept neu berechnet ist es {ours} {unit2}.{why?}",
  " The ideal law i·Kf·m gives the sheet's number; at this strength real solutions differ.":
    " Das ideale Gesetz i·Kf·m gibt die Zahl des Blattes; so stark weichen wirkliche Lösungen ab.",
  " The sheet's number comes out {mistakes}.": " Die Zahl des Blattes kommt heraus {mistakes}.",
  "with Kf = 18.6": "mit Kf = 18,6",
  "with Kf = 0.186": "mit Kf = 0,186",
  "with Kf = 3.35, the constant for °F": "mit Kf = 3,35, der Konstante für °F",
  "with salt counted as one particle": "mit Salz als einem Teilchen gezählt",
  "with the molar mass of the anhydrous sugar for its hydrate":
    "mit der molaren Masse des wasserfreien Zuckers für sein Hydrat",
  "per kilogram of mix instead of water": "je Kilogramm Mischung statt Wasser",
  "with the inclusions counted as sugar": "mit den Einlagen als Zucker gezählt",
  "with the sign reversed": "mit umgekehrtem Vorzeichen",
  "Say that it is the ideal law's, or use the freezing point of the real solution.":
    "Sagen, dass es nach dem idealen Gesetz ist, oder den Gefrierpunkt der wirklichen Lösung nehmen.",
  "Mend what it is computed from, or enter it again.":
    "Richten, woraus es berechnet ist, oder neu eingeben.",
  "ice fraction": "Eisanteil",
  depression: "Erniedrigung",
  molality: "Molalität",
  water: "Wasser",
  "dissolved solids": "gelöste Feststoffe",
  solids: "Feststoffe",
  sugars: "Zucker",
  ethanol: "Alkohol",
  total: "Summe",
  temperature: "Temperatur",
  "share of the water that is ice at −18 °C": "Anteil des Wassers, der bei −18 °C Eis ist",
  "share of the water that is ice at this temperature":
    "Anteil des Wassers, der bei dieser Temperatur Eis ist",
  "share of the {basis} that is ice at {temperature} °C":
    "Anteil {basis}, der bei {temperature} °C Eis ist",

  '"{label}" is {value}, above 0 °C: this is a depression, a freezing point has the opposite sign.':
    "„{label}“ ist {value}, über 0 °C: Das ist eine Erniedrigung, ein Gefrierpunkt hat das andere Vorzeichen.",
  '"{label}" is {value}: a depression is a positive number, this is a freezing point.':
    "„{label}“ ist {value}: Eine Erniedrigung ist eine positive Zahl, das ist ein Gefrierpunkt.",
  "Change the sign, or the label.": "Das Vorzeichen ändern oder die Beschriftung.",
  '"{label}" says the share of {iceOf} that is ice, but {percent} % is the share of {iceOf2}.':
    "„{label}“ nennt den Anteil {iceOf}, der Eis ist, {percent} % ist aber der Anteil {iceOf2}.",
  "share of {iceOf} that is ice": "Anteil {iceOf}, der Eis ist",
  "Change the label, or the basis in the formula.":
    "Die Beschriftung ändern oder die Bezugsmenge in der Formel.",
  '"{label}" is {value}, which is per {per}; per {per2} it is {right}.':
    "„{label}“ ist {value}, das gilt je {per}; je {per2} sind es {right}.",
  "sugar per {per}": "Zucker je {per}",
  "salt per {per}": "Salz je {per}",
  "what is dissolved per {per}": "Gelöstes je {per}",
  "Enter {value}, or change the label.": "{value} eingeben oder die Beschriftung ändern.",
  "{cell} is {value} in a column of {among}: as {meant} the shares come to {whole}.":
    "{cell} ist {value} in einer Spalte mit {among}: Als {meant} ergeben die Anteile {whole}.",
  "sum of the shares": "Summe der Anteile",
  "Enter {value}.": "{value} eingeben.",
  "{says}, which is {celsius} °C.": "{says}, das sind {celsius} °C.",
  "{fahrenheit} °F stands on a sheet in °C": "{fahrenheit} °F steht auf einem Blatt in °C",
  "No freezer is at {value} °C: this is {fahrenheit} °F":
    "Kein Gefrierfach hat {value} °C: Das sind {fahrenheit} °F",
  "{cell} claims {decimals} decimals of {unit}; what it is made from is known to {most} at most.":
    "{cell} nennt {decimals} Nachkommastellen von {unit}; woraus es gemacht ist, ist höchstens auf {most} bekannt.",
  "Show {most} decimals or fewer.": "Höchstens {most} Nachkommastellen zeigen.",

  '{recipe} misses "{name}": {verdict}.': "{recipe} verfehlt „{name}“: {verdict}.",
  '{recipe} misses "{name}" by less than it is known to: {verdict}.':
    "{recipe} verfehlt „{name}“ um weniger, als man es weiß: {verdict}.",
  "{item} moves it with the fewest grams: {to} g instead of {from} g ({by} g {way}) just meets it.":
    "{item} bewegt es mit den wenigsten Gramm: {to} g statt {from} g ({by} g {way}) trifft es gerade.",
  "{recipe} has {percent} % of alcohol by mass: at {temperature} °C only {share} % of the {basis} is ice{more?}.":
    "{recipe} hat {percent} % Alkohol nach Masse: Bei {temperature} °C sind nur {share} % {basis} Eis{more?}.",
  ", too little to be held in the hand": ", zu wenig, um in der Hand zu halten",
  "Take less of the spirit, or boil part of it off before.":
    "Weniger von der Spirituose nehmen oder einen Teil vorher abkochen.",
  "{recipe} has {grams} g of lactose per 100 g of water; above about {most} g it may crystallise in storage and feel like sand.":
    "{recipe} hat {grams} g Lactose je 100 g Wasser; über etwa {most} g kann sie im Lager kristallisieren und sandig werden.",
  "lactose per 100 g of water": "Lactose je 100 g Wasser",
  "Take less milk powder, or eat it fresh.": "Weniger Milchpulver nehmen oder frisch essen.",
  "{recipe} has {grams} g of {substance} per 100 g of water; at 20 °C only {most} g dissolve, in the cold less.":
    "{recipe} hat {grams} g {substance} je 100 g Wasser; bei 20 °C lösen sich nur {most} g, in der Kälte weniger.",
  "{substance} per 100 g of water": "{substance} je 100 g Wasser",
  "Take less {substance} or more water.": "Weniger {substance} nehmen oder mehr Wasser.",
  "The {substance} in {recipe} will crystallise: at −18 °C the water left liquid has {grams} g per 100 g, and not even at 20 °C do more than {most} g dissolve.":
    "{substance} in {recipe} wird kristallisieren: Bei −18 °C hat das Wasser, das flüssig bleibt, {grams} g je 100 g, und selbst bei 20 °C lösen sich nicht mehr als {most} g.",
  "{substance} per 100 g of unfrozen water at −18 °C":
    "{substance} je 100 g ungefrorenes Wasser bei −18 °C",
  "Replace part of the {substance} by a sugar that stays dissolved.":
    "Einen Teil von {substance} durch einen Zucker ersetzen, der gelöst bleibt.",
  "Nothing here or on a sheet for all tells the eater: {unsaid}.":
    "Weder hier noch auf einem Blatt für alle steht für den Essenden: {unsaid}.",
  "honey is not for children under twelve months":
    "Honig ist nichts für Kinder unter zwölf Monaten",
  "it contains alcohol": "es enthält Alkohol",
  "it contains raw egg unless pasteurised": "es enthält rohes Ei, wenn nicht pasteurisiert",
  "it contains raw flour unless heated": "es enthält rohes Mehl, wenn nicht erhitzt",
  "glycerol is not for small children": "Glycerin ist nichts für kleine Kinder",
  "its allergens are {allergens}": "Allergene sind {allergens}",
  "Say it on the sheet or the label; local food rules decide the wording.":
    "Auf dem Blatt oder dem Etikett sagen; den Wortlaut bestimmt das örtliche Lebensmittelrecht.",

  "The total in {cell} is {stated} where the {summed} add up to {right}: {why}.":
    "Die Summe in {cell} ist {stated}, {summed} ergeben aber {right}: {why}.",
  "The total in {cell} is {stated} as it should be, but {why}.":
    "Die Summe in {cell} ist {stated}, wie sie soll, aber {why}.",
  "it counts {cells}, a total already, once more":
    "sie zählt {cells}, schon eine Summe, noch einmal mit",
  "it leaves out {cells}": "sie lässt {cells} aus",
  "it does not fit the amounts": "sie passt nicht zu den Mengen",
  "total of the recipe": "Summe des Rezepts",
  "Enter ={formula}, or mend the amount that is wrong.":
    "={formula} eingeben oder die falsche Menge richten.",
  "Enter ={formula}.": "={formula} eingeben.",
  "The shares in {range} add up to {percent} %, not 100 %.":
    "Die Anteile in {range} ergeben {percent} %, nicht 100 %.",
  "Mend the share that is wrong, or divide each by their sum.":
    "Den falschen Anteil richten oder jeden durch ihre Summe teilen.",
  "{cell} counts {cells}, in rows that a filter hides: it is not about what is shown.":
    "{cell} zählt {cells} in Zeilen, die ein Filter ausblendet: Das gilt nicht für das Gezeigte.",
  "{cells?} and more": "{cells?} und mehr",
  "sum of the rows shown": "Summe der gezeigten Zeilen",
  "Clear the filter, or use SUBTOTAL(109, …) where only the rows shown are meant.":
    "Den Filter löschen oder TEILERGEBNIS(109; …) nehmen, wo nur die gezeigten Zeilen gemeint sind.",

  "{cell} needs its own answer: {way}; a spreadsheet shows 0 or the last value there.":
    "{cell} braucht die eigene Antwort: {way}; eine Tabelle zeigt dort 0 oder den letzten Wert.",
  "Break the circle: let one of these cells hold a number or read other cells.":
    "Den Kreis unterbrechen: In eine dieser Zellen eine Zahl setzen oder sie andere lesen lassen.",
  "{cell} is the number {value} among formulas: it does not follow when the recipe changes.":
    "{cell} ist die Zahl {value} unter Formeln: Sie folgt nicht, wenn sich das Rezept ändert.",
  "Enter ={formula}, as in the cells around it, if the number is not meant.":
    "={formula} eingeben wie in den Zellen ringsum, wenn die Zahl nicht gewollt ist.",
  "The formula{s?} in {range} hold{s2?} the typed number{s3?} {numbers}: whoever changes {it} has to find {it2} first.":
    "In {range} steckt Getipptes in Formeln: {numbers}. Wer das ändert, muss es erst finden.",
  "Give the number a cell of its own with a label and a unit, and refer to it.":
    "Der Zahl eine eigene Zelle mit Beschriftung und Einheit geben und sich darauf beziehen.",
  "{cell} has the formula ={formula}, unlike the cells around it (={expected}).":
    "{cell} hat die Formel ={formula}, anders als die Zellen ringsum (={expected}).",
  "Enter ={expected}, if the difference is not meant.":
    "={expected} eingeben, wenn der Unterschied nicht gewollt ist.",
  "{cell} has ={formula} where the cells around it have ={expected}: a $ is missing or too much{now?}.":
    "{cell} hat ={formula}, wo die Zellen ringsum ={expected} haben: Ein $ fehlt oder ist zu viel{now?}.",
  "; it reads the same cells for now": "; noch liest sie dieselben Zellen",
  "{range}: the formula of {cell} reads {read}, and filled down without a $ its copies read the blank cells below it.":
    "{range}: Die Formel von {cell} liest {read}, und ohne $ nach unten ausgefüllt lesen ihre Kopien die leeren Zellen darunter.",
  "Write {fixed} in {cell} and fill it down again.":
    "{fixed} in {cell} schreiben und neu nach unten ausfüllen.",
  "Column {column} holds {count} single calls; one call with all rows as its amounts fills the column.":
    "Spalte {column} enthält {count} einzelne Aufrufe; einer mit allen Zeilen als Mengen füllt die Spalte.",
  "Hand all rows to one call, and let its answer fill the column.":
    "Alle Zeilen einem Aufruf geben und seine Antwort die Spalte füllen lassen.",
  "The workbook is set to manual calculation: what it shows may be older than its amounts.":
    "Die Mappe rechnet nur auf Befehl: Was sie zeigt, kann älter sein als ihre Mengen.",
  "Set the calculation to automatic, or press F9 before reading a result.":
    "Die Berechnung auf automatisch stellen oder vor dem Lesen F9 drücken.",
  "{cell} comes from {source}: what is stored may be old.":
    "{cell} kommt aus {source}: Was gespeichert ist, kann alt sein.",
  "the workbook {name}": "der Mappe {name}",
  "the function {name}, whose add-in is not there": "der Funktion {name}, deren Add-in fehlt",
  "Enter the number itself, or open the source and recalculate.":
    "Die Zahl selbst eingeben oder die Quelle öffnen und neu berechnen.",
  "{cell} {how}: {formula}": "{cell} {how}: {formula}",
  "fetches something from outside": "holt etwas von außen",
  "starts a program": "startet ein Programm",
  "puts the contents of cells into an address": "setzt Zellinhalte in eine Adresse",
  "leads to a file or another machine": "führt zu einer Datei oder einem anderen Rechner",
  "hides an address behind other words": "versteckt eine Adresse hinter anderen Worten",
  "Delete it unless you put it there yourself.":
    "Löschen, wenn Sie es nicht selbst dort hingesetzt haben.",
  "{cell} shows {stored}, but its formula gives {fresh}.":
    "{cell} zeigt {stored}, die Formel gibt aber {fresh}.",
  "value of {cell}": "Wert von {cell}",
  "Recalculate the workbook (F9, or Ctrl+Alt+F9 for every formula) and save it.":
    "Die Mappe neu berechnen (F9, für alle Formeln Strg+Alt+F9) und speichern.",
  "Rimeline's functions show #NAME? on this sheet (first in {cell}, cells: {count}): it was last calculated where Rimeline is not installed.":
    "Rimelines Funktionen zeigen auf diesem Blatt #NAME? (zuerst in {cell}, Zellen: {count}): Es wurde zuletzt dort berechnet, wo Rimeline nicht installiert ist.",
  "Open the workbook where Rimeline is installed, let it calculate, and save it.":
    "Die Mappe dort öffnen, wo Rimeline installiert ist, rechnen lassen und speichern.",
  "{count} formulas of this sheet were stored without a result, the first in {cell}: they count as blank here.":
    "{count} Formeln dieses Blattes sind ohne Ergebnis gespeichert, die erste in {cell}: Hier gelten sie als leer.",
  "Open the workbook in a spreadsheet, let it calculate, and save it.":
    "Die Mappe in einer Tabellenkalkulation öffnen, rechnen lassen und speichern.",
  '{cell} holds the text "{text}": it shows no result, and would run as a formula when it is pasted or imported again.':
    "{cell} enthält den Text „{text}“: Er zeigt kein Ergebnis und liefe als Formel, wenn er neu eingefügt oder eingelesen wird.",
  "Type it again as a formula in a cell that is not formatted as text, or delete it.":
    "Als Formel in einer Zelle tippen, die nicht als Text formatiert ist, oder löschen.",
};
