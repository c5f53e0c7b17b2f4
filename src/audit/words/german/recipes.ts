/** Findings on ingredients, amounts and constants, and what a reading says of the recipes it found. */
export const recipeFindings: Readonly<Record<string, string>> = {
  "the recipe": "das Rezept",
  "{count} more cells of this column have the same fault; the largest: {finding}":
    "{count} weitere Zellen dieser Spalte haben denselben Fehler; der größte: {finding}",

  "No recipe.": "Kein Rezept.",
  "Took {what}.": "Genommen: {what}.",
  "As it was said, took {what}.": "Wie gesagt genommen: {what}.",
  "{names} for the ingredients and {lines} for the amounts ({unit})":
    "{names} für die Zutaten und {lines} für die Mengen ({unit})",
  "{first} to {last} ({count} recipes)": "{first} bis {last} ({count} Rezepte)",
  "column {column}": "Spalte {column}",
  "row {row}": "Zeile {row}",
  "unit in column {column}": "Einheit in Spalte {column}",
  "{unit?}, assumed: no unit is written": "{unit?}, angenommen: es steht keine Einheit da",
  "What was said of {place} is not followed: there is no such sheet.":
    "Was von {place} gesagt war, gilt nicht: Ein solches Blatt gibt es nicht.",
  'What was said of {place} is not followed: its first row no longer reads "{heading}".':
    "Was von {place} gesagt war, gilt nicht: In der ersten Zeile steht nicht mehr „{heading}“.",
  "What was said of {place} is not followed: no name with an amount stands there.":
    "Was von {place} gesagt war, gilt nicht: Dort steht kein Name mit einer Menge.",
  "{place} was said to be no recipe and left out.":
    "{place} ist, wie gesagt, kein Rezept und blieb außen vor.",
  'There is no sheet "{sheet?}": cells are written like Ices!A1:C9.':
    "Es gibt kein Blatt „{sheet?}“: Zellen werden geschrieben wie Eise!A1:C9.",
  '"{range?}" is no range: cells are written like Ices!A1:C9.':
    "„{range?}“ ist kein Bereich: Zellen werden geschrieben wie Eise!A1:C9.",
  "The correction of {place} is not followed: {reason}.":
    "Die Berichtigung von {place} gilt nicht: {reason}.",
  "Row {row} of {sheet}: {reason}": "Zeile {row} von {sheet}: {reason}",
  "Corrections are of the shape {formula}, the last three if need be{where?}.":
    "Berichtigungen haben die Form {formula}, die letzten drei nach Bedarf{where?}.",
  "; entry {entry} is not{field?}": "; Eintrag {entry} hat sie nicht{field?}",
  ', by its "{field}"': ", nämlich bei „{field}“",
  '"{text}" names no {kind}': "„{text}“ nennt keine {kind}",
  'not all of the {kind} "{text}" lie in the range': "nicht alle {kind} „{text}“ liegen im Bereich",
  "a range is written like A1:C9": "ein Bereich wird geschrieben wie A1:C9",
  'the names stand in one line, and "{names}" are more':
    "die Namen stehen in einer Linie, und „{names}“ sind mehr",
  '"{names}" cannot hold both the names and amounts':
    "„{names}“ kann nicht Namen und Mengen zugleich enthalten",
  '"{unit}" is no unit of an amount': "„{unit}“ ist keine Einheit einer Menge",

  '"{name}" can mean several things: {choices}.': "„{name}“ kann mehreres bedeuten: {choices}.",
  "Write which one, or map the name once in the own-ingredients range (`same as`).":
    "Schreiben, welches; oder den Namen einmal bei den eigenen Zutaten zuordnen (`same as`).",
  "Use a name of the catalogue, or add it to the own-ingredients range (`same as`, or its composition).":
    "Einen Namen des Katalogs nehmen oder ihn bei den eigenen Zutaten anlegen (`same as` oder seine Zusammensetzung).",
  "mass not accounted for": "Masse ohne Zuordnung",
  "% of the mix": "% der Mischung",
  '"{name}" does not say whether it is {one} or {other}, which brings its own water.':
    "„{name}“ sagt nicht, ob es {one} ist oder {other}, das eigenes Wasser mitbringt.",
  'Write "{hydrate}" or "{anhydrous}", as the bag says.':
    "„{hydrate}“ oder „{anhydrous}“ schreiben, wie es auf der Tüte steht.",
  '"{name}" is counted as dissolved, but it stays whole: it adds mass and cost and does not lower the freezing point.':
    "„{name}“ zählt als gelöst, bleibt aber ganz: Es bringt Masse und Kosten und senkt den Gefrierpunkt nicht.",
  "Leave it out of the moles and of the solids that dissolve.":
    "Aus den Molen und der gelösten Trockenmasse herauslassen.",
  "{name} stands twice with the same amount ({first} and {second}).":
    "{name} steht zweimal mit derselben Menge da ({first} und {second}).",
  "Delete one of the columns if it was copied by mistake.":
    "Eine der Spalten löschen, wenn sie versehentlich kopiert wurde.",
  "Enter a formula that reads its own sheet, as those around it read theirs, if the number is not meant.":
    "Eine Formel eingeben, die das eigene Blatt liest, so wie die Formeln ringsum ihres, wenn die Zahl nicht gemeint ist.",
  "Delete one of the rows if it was copied by mistake.":
    "Eine der Zeilen löschen, wenn sie versehentlich kopiert ist.",
  "{grams} g of lactose is what the milk ingredients bring already ({there} g): it is counted twice.":
    "{grams} g Lactose bringen die Milchzutaten schon mit ({there} g): Sie zählt doppelt.",
  "Delete the row if no lactose is added.": "Die Zeile löschen, wenn keine Lactose zugesetzt wird.",
  "{name} is hidden but still counts in the recipe.":
    "{name} ist ausgeblendet, zählt aber im Rezept.",
  "{names} are hidden but still count in their recipes.":
    "{names} sind ausgeblendet, zählen aber in ihren Rezepten.",
  "Show the row or column, or delete it.": "Die Zeile oder Spalte einblenden oder löschen.",
  'The hidden sheet "{sheet}"': "Das ausgeblendete Blatt „{sheet}“",
  "The hidden row {row}": "Die ausgeblendete Zeile {row}",
  "The hidden column {column}": "Die ausgeblendete Spalte {column}",
  "{what} feeds the answer in {cell}: what it counts on cannot be seen.":
    "{what} geht in die Antwort in {cell} ein: Worauf sie beruht, ist nicht zu sehen.",
  "Show it, so that whoever reads the answer can check it.":
    "Einblenden, damit prüfen kann, wer die Antwort liest.",
  'The name "{name}" in {cell} has {what}: look-ups and comparisons do not find it.':
    "Der Name „{name}“ in {cell} hat {what}: Suche und Vergleich finden ihn nicht.",
  'Write "{name}".': "„{name}“ schreiben.",
  "letters or digits that only look like the right ones":
    "Buchstaben oder Ziffern, die nur so aussehen wie die richtigen",
  "a sign that is not seen": "ein Zeichen, das man nicht sieht",
  "a blank that is none for a look-up": "ein Leerzeichen, das für eine Suche keines ist",
  "a blank {side} it": "ein Leerzeichen {side}",
  "two blanks in a row": "zwei Leerzeichen hintereinander",
  "State `same as`, or parts that add up to 100 g.":
    "`same as` angeben oder Teile, die 100 g ergeben.",
  "own ingredients known": "bekannte eigene Zutaten",

  "{cell}, the amount of {name}, is {error}: nothing can be computed from this recipe.":
    "{cell}, die Menge von {name}, ist {error}: Aus diesem Rezept lässt sich nichts berechnen.",
  "mass that can be read": "lesbare Masse",
  "all of it": "alles",
  "Enter the amount again, or mend the cell that it comes from.":
    "Die Menge neu eingeben oder die Zelle richten, aus der sie kommt.",
  '{cell} holds the amount of {name} as the text "{text}", {why}: sums leave it out.':
    "{cell} enthält die Menge von {name} als Text „{text}“, {why}: Summen lassen sie aus.",
  "with a decimal comma that this sheet does not read":
    "mit einem Dezimalkomma, das dieses Blatt nicht liest",
  "with its unit in the same cell": "mit der Einheit in derselben Zelle",
  "stored as text": "als Text gespeichert",
  '{cell} holds the text "{text}" for "{label}", {why}: nothing can be calculated with it.':
    "{cell} enthält den Text „{text}“ für „{label}“, {why}: Damit lässt sich nicht rechnen.",
  '{cell} holds the text "{text}", {why}: nothing can be calculated with it.':
    "{cell} enthält den Text „{text}“, {why}: Damit lässt sich nicht rechnen.",
  "Enter {number} as a number.": "{number} als Zahl eingeben.",
  "{cell}, the amount of {name}, is marked {mark} in a column of {unit}.":
    "{cell}, die Menge von {name}, ist mit {mark} bezeichnet in einer Spalte in {unit}.",
  "Convert it to {unit}, or correct the mark.": "In {unit} umrechnen oder die Bezeichnung richten.",
  "{cell}, the amount of {name}, is {stated} {unit}; {right} {unit2} would fit, {why}.":
    "{cell}, die Menge von {name}, ist {stated} {unit}; {right} {unit2} würden passen, {why}.",
  "which no recipe has beside the other amounts":
    "was neben den anderen Mengen in keinem Rezept vorkommt",
  "and only then do the amounts come to the total that is written":
    "und nur dann ergeben die Mengen die Summe, die da steht",
  "and only then do the amounts come to a round sum":
    "und nur dann ergeben die Mengen eine runde Summe",
  "as in the recipes beside it": "wie in den Rezepten daneben",
  "which no water takes up": "die kein Wasser aufnimmt",
  "which leaves next to nothing dissolved": "in der so gut wie nichts gelöst wäre",
  "Enter {right} if another unit, or a point in the wrong place, was typed.":
    "{right} eingeben, wenn eine andere Einheit oder ein Komma an falscher Stelle getippt ist.",
  "No unit is written for the amounts of {what}; they were taken for grams.":
    "Für die Mengen in {what} steht keine Einheit da; sie galten als Gramm.",
  "No unit is written for the amounts of {what}; they were taken for {unit}, as what is worked out from them.":
    "Für die Mengen in {what} steht keine Einheit da; sie galten als {unit}, wie das, was daraus gerechnet ist.",
  "this table": "dieser Tabelle",
  'Write the unit in the header, for example "Amount (g)".':
    "Die Einheit in den Kopf schreiben, etwa „Menge (g)“.",
  '{cell}, "{label}", is {value} without a unit: °C is assumed.':
    "{cell}, „{label}“, ist {value} ohne Einheit: angenommen ist °C.",
  '{cell}, "{label}", is {value} without a unit: K·kg/mol is assumed.':
    "{cell}, „{label}“, ist {value} ohne Einheit: angenommen ist K·kg/mol.",
  "Write K·kg/mol beside it or in its label.":
    "K·kg/mol daneben oder in die Beschriftung schreiben.",
  "Write °C or °F beside it or in its label.":
    "°C oder °F daneben oder in die Beschriftung schreiben.",

  "The molar mass of {name} is given as {stated}, it is {right} g/mol{hint?}.":
    "Die molare Masse von {name} ist mit {stated} angegeben, sie ist {right} g/mol{hint?}.",
  "; {value} is that of {twin}": "; {value} ist die von {twin}",
  "Use {right}.": "{right} nehmen.",
  "Use {right}, or name the ingredient {twin}.": "{right} nehmen oder die Zutat {twin} nennen.",
  "The moles of {name} are those of {twin} ({used} g/mol); its own molar mass is {right} g/mol.":
    "Die Mole von {name} sind die von {twin} ({used} g/mol); die eigene molare Masse ist {right} g/mol.",
  "Divide by {right}, or name the ingredient {twin}.":
    "Durch {right} teilen oder die Zutat {twin} nennen.",
  "The number of particles (van 't Hoff factor) of {name} is {given}; one formula unit gives {right}.":
    "Die Zahl der Teilchen (Van-'t-Hoff-Faktor) von {name} ist {given}; eine Formeleinheit gibt {right}.",
  "not given": "nicht angegeben",
  "given as {value}": "mit {value} angegeben",
  '{name} falls into {ions} particles, but "{label}" counts its {moles} mol once.':
    "{name} zerfällt in {ions} Teilchen, „{label}“ zählt die {moles} mol aber einfach.",
  "{name} falls into {ions} particles, but {says} once.":
    "{name} zerfällt in {ions} Teilchen, aber {says} nur einmal.",
  '"{label}" counts each of its {moles} mol': "„{label}“ zählt jedes der {moles} mol",
  '"{label}" counts each unit of it': "„{label}“ zählt jede Einheit davon",
  "Multiply by the van 't Hoff factor {ions}.": "Mit dem Van-'t-Hoff-Faktor {ions} malnehmen.",
  "Multiply its moles by the van 't Hoff factor {ions}.":
    "Die Mole mit dem Van-'t-Hoff-Faktor {ions} malnehmen.",
  "Kf is {value}: {what}; for water and degrees Celsius it is {right} K·kg/mol.":
    "Kf ist {value}: {what}; für Wasser und Grad Celsius ist es {right} K·kg/mol.",
  "ten times the constant of water": "das Zehnfache der Konstante von Wasser",
  "the constant of benzene, or the boiling constant ten times":
    "die Konstante von Benzol, oder die Siedekonstante zehnfach",
  "not the constant of water": "nicht die Konstante von Wasser",
  "a tenth of the constant of water": "ein Zehntel der Konstante von Wasser",
  "the constant for degrees Fahrenheit": "die Konstante für Grad Fahrenheit",
  "the boiling constant Kb": "die Siedekonstante Kb",
  "The alcohol in {name} is taken as {percent} % of its mass, but that is its share by volume: {right} % by mass.":
    "Der Alkohol in {name} gilt als {percent} % der Masse, das ist aber sein Volumenanteil: {right} % der Masse.",
  "{cell}, a total, is {error}: it comes to no number.":
    "{cell}, eine Summe, ist {error}: Sie ergibt keine Zahl.",
  '{cell}, "{label}", is {error}: it has no answer.':
    "{cell}, „{label}“, ist {error}: Es gibt keine Antwort.",
  "Mend what its formula reads, or write the formula again.":
    "Richten, was die Formel liest, oder die Formel neu schreiben.",
  answers: "Antworten",
  "The amounts in the hidden column {column} cannot be seen, though they make the recipe.":
    "Die Mengen in der ausgeblendeten Spalte {column} sind nicht zu sehen, obwohl sie das Rezept ausmachen.",
  "mass of the recipe": "Masse des Rezepts",
  '{cell}, "{label}", is {value} without a unit, and formulas work with it.':
    "{cell}, „{label}“, ist {value} ohne Einheit, und Formeln rechnen damit.",
  "Write its unit beside it or in its label.": "Die Einheit danebenschreiben oder ins Etikett.",
  '{cell}, "{label}", is {value} without a unit: grams are assumed.':
    "{cell}, „{label}“, ist {value} ohne Einheit: Angenommen werden Gramm.",
  "Write g or kg beside it or in its label.":
    "g oder kg daneben oder in die Beschriftung schreiben.",
  "The alcohol in {name} is taken as {stated} g, which are its millilitres: {mL} mL at {abv} % vol hold {right} g.":
    "Der Alkohol in {name} ist mit {stated} g angesetzt, das sind seine Milliliter: {mL} ml zu {abv} % vol enthalten {right} g.",
  '"{label}" of {name} is its strength by volume, {abv} %: by mass it is {right} %.':
    "„{label}“ von {name} ist die Stärke nach Volumen, {abv} %: Nach der Masse sind es {right} %.",
  "The water in {name} is what its strength by volume, {abv} %, leaves of its mass: by mass its alcohol is {right} %.":
    "Das Wasser in {name} ist, was die Stärke nach Volumen, {abv} %, von der Masse übrig lässt: Nach der Masse hat es {right} % Alkohol.",
  "Turn each strength into a share of the mass first, with RIME.ABVTOMASSFRACTION.":
    "Erst jede Stärke mit RIME.ABVTOMASSFRACTION in einen Anteil an der Masse umrechnen.",
  "Use {grams} g of ethanol.": "{grams} g Ethanol nehmen.",
  '"{label}" takes the strength by volume as a share of the mass: it is {stated}, by mass {right}.':
    "„{label}“ nimmt die Stärke nach Volumen als Anteil der Masse: Es sind {stated}, nach Masse {right}.",
  '"{label}" counts the {grams} g that stay whole, too: without them it is {right}.':
    "„{label}“ zählt auch die {grams} g, die ganz bleiben: Ohne sie sind es {right}.",
  '"{label}" counts the {plain} g poured in; with the water in the other ingredients it is {all} {unit}.':
    "„{label}“ zählt die {plain} g, die zugegossen sind; mit dem Wasser der anderen Zutaten sind es {all} {unit}.",
  "Use {grams} g.": "{grams} g nehmen.",
};
