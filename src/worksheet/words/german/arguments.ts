/** What is said to the arguments of a call, whatever the function. */
export const argumentSentences: Readonly<Record<string, string>> = {
  'this is the text "{text}"; a number from 0 to 1e9 or a fraction such as 1 1/2 is expected.':
    "hier steht der Text „{text}“; erwartet wird eine Zahl von 0 bis 1e9 oder ein Bruch wie 1 1/2.",
  "this is blank; {expected} is expected.": "hier steht nichts; erwartet wird {expected}.",
  "this is {shown}; {expected} is expected.": "hier steht {shown}; erwartet wird {expected}.",
  "{value} is not a text; {expected} is expected.":
    "{value} ist kein Text; erwartet wird {expected}.",
  '"{word}" is not known; {meant}.': "„{word}“ ist nicht bekannt; {meant}.",
  '"{word}" can mean several things; write {choices}.':
    "„{word}“ kann mehreres bedeuten; zu schreiben ist {choices}.",
  '"{word}" is not a component; {meant}.': "„{word}“ ist kein Bestandteil; {meant}.",
  '"{word}" is not a unit; {meant}.': "„{word}“ ist keine Einheit; {meant}.",
  '"{word}" is not a serving target; {meant}.': "„{word}“ ist kein Ziel fürs Servieren; {meant}.",
  '"{word}" is not a solute; {expected} is expected.':
    "„{word}“ ist kein gelöster Stoff; erwartet wird {expected}.",
  '"{word}" is an ingredient, a mixture; {expected} such as "sucrose" is expected.':
    "„{word}“ ist eine Zutat, also ein Gemisch; erwartet wird {expected} wie „sucrose“.",
  '"{word}" could be several of the own ingredients; write the name as it stands there.':
    "„{word}“ kann mehrere der eigenen Zutaten meinen; zu schreiben ist der Name, wie er dort steht.",
  '"{word}" is neither in the catalogue nor an own ingredient; {meant}.':
    "„{word}“ steht weder im Katalog noch unter den eigenen Zutaten; {meant}.",
  'nothing in the catalogue matches "{word}"; {meant}.':
    "nichts im Katalog passt zu „{word}“; {meant}.",
  "{expected} is expected": "erwartet wird {expected}",
  "the nearest name is {names}": "am nächsten kommt {names}",
  "no name resembles it": "kein Name ist ihm ähnlich",
  "the name is blank; the name of a catalogue or own ingredient is expected.":
    "der Name fehlt; erwartet wird der einer Zutat des Katalogs oder einer eigenen.",

  'the text "{text}"': "der Text „{text}“",
  TRUE: "WAHR",
  FALSE: "FALSCH",
  "a number {range}": "eine Zahl {range}",
  "a number from 0 up": "eine Zahl ab 0",
  "from {from} to {to}": "von {from} bis {to}",
  "above {from} and up to {to}": "über {from} und bis {to}",
  "the name of a solute": "der Name eines gelösten Stoffes",
  "the name of an ingredient": "der Name einer Zutat",
  "the name of a serving target": "der Name eines Ziels fürs Servieren",
  "{target} or a range with the headers name, temperature, ice from, ice to, basis":
    "{target} oder ein Bereich mit den Köpfen name, temperature, ice from, ice to, basis",
  "a component such as water, sugars, fat or the name of a solute":
    "ein Bestandteil wie water, sugars, fat oder der Name eines gelösten Stoffes",
  'a component, "source", "allergens" or "caution"':
    "ein Bestandteil, „source“, „allergens“ oder „caution“",
  "a unit such as g, cup, tbsp, mL or piece": "eine Einheit wie g, cup, tbsp, mL oder piece",
  "part of a name": "ein Teil eines Namens",

  "{value} is out of range; it must be {range}.": "{value} liegt außerhalb des Erlaubten: {range}.",
  "{value} is not answered; the checked range is {from} to {to}.":
    "{value} wird nicht beantwortet; geprüft ist der Bereich von {from} bis {to}.",
  "{value} is out of range for the {quantity}; it must be from {from} to {to}.":
    "{value} ist für {quantity} nicht möglich; erlaubt ist {from} bis {to}.",
  "{value} is not a whole number; one from 1 to 1000 is expected.":
    "{value} ist keine ganze Zahl; erwartet wird eine von 1 bis 1000.",
  "{value} is not a number that can be used; a finite one is expected.":
    "{value} ist keine brauchbare Zahl; erwartet wird eine endliche.",
  "this is a date object; a number or a text is expected.":
    "hier steht ein Datum als Objekt; erwartet wird eine Zahl oder ein Text.",
  "this is a card, not a value; a number or a text is expected.":
    "hier steht eine Karte, kein Wert; erwartet wird eine Zahl oder ein Text.",
  "this is an object; a number or a text is expected.":
    "hier steht ein Objekt; erwartet wird eine Zahl oder ein Text.",
  "a {type} is not a cell's value; a number or a text is expected.":
    "{type} ist kein Wert einer Zelle; erwartet wird eine Zahl oder ein Text.",
  "the cell holds the error {code}; a value is expected.":
    "die Zelle enthält den Fehler {code}; erwartet wird ein Wert.",
  "the range is empty; at least one cell is expected.":
    "der Bereich ist leer; erwartet wird mindestens eine Zelle.",
  "row {row} is not as long as the first, which has {width} cells; all rows must be equally long.":
    "Zeile {row} ist nicht so lang wie die erste mit {width} Zellen; alle Zeilen müssen gleich lang sein.",
  "The arguments do not fit together (rows × columns: {shapes}); each must have the same length or 1.":
    "Die Argumente passen nicht zusammen (Zeilen × Spalten: {shapes}); jedes muss dieselbe Länge haben oder 1.",
  "{name} spills a table for one recipe at a time; the arguments describe {rows} × {columns}, and 1 × 1 is expected.":
    "{name} gibt eine Tabelle für ein Rezept auf einmal; die Argumente beschreiben {rows} × {columns}, erwartet wird 1 × 1.",
  "With these {names} the answer runs over what a cell can hold; numbers of a size that occurs in a kitchen are expected.":
    "Mit diesen Werten ({names}) wird die Antwort größer, als eine Zelle fassen kann; erwartet werden Zahlen, wie sie in einer Küche vorkommen.",

  "this is left out; the names of the ingredients are expected.":
    "dies fehlt; erwartet werden die Namen der Zutaten.",
  "this is blank; the names of the ingredients are expected.":
    "hier steht nichts; erwartet werden die Namen der Zutaten.",
  "this is left out; the amounts in g are expected.":
    "dies fehlt; erwartet werden die Mengen in g.",
  "this is left out; for the {quantity} one from -60 to 100 °C is expected.":
    "dies fehlt; für {quantity} wird eine Temperatur von −60 bis 100 °C erwartet.",
  "soluteGrams and solventGrams are both 0 g; their sum must be above 0.":
    "soluteGrams und solventGrams sind beide 0 g; ihre Summe muss über 0 liegen.",
  'the catalogue has no "{property}" of "{name}"; a figure with a source is expected before it is shown.':
    "der Katalog hat kein „{property}“ von „{name}“; gezeigt wird nur eine Angabe mit Quelle.",
  "a freezing point is computed, not looked up; {why}":
    "ein Gefrierpunkt wird berechnet, nicht nachgeschlagen; {why}",
  'for "{name}" there is none: {reason}': "für „{name}“ gibt es keinen: {reason}",
  "{formula} is expected, and answers {point} °C.":
    "erwartet wird {formula}, und das gibt {point} °C.",
  '"water lost" has no composition; an ingredient is expected.':
    "„water lost“ hat keine Zusammensetzung; erwartet wird eine Zutat.",
  'unit "{unit}": no bulk density of "{item}" is known; weigh it.':
    "Einheit „{unit}“: von „{item}“ ist keine Schüttdichte bekannt; bitte wiegen.",
  'unit "piece": "{item}" does not come in pieces of a known weight; use g.':
    "Einheit „piece“: von „{item}“ ist kein Stückgewicht bekannt; bitte g nehmen.",
};
