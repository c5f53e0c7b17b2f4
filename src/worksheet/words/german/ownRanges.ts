/** What is said to the user's own ranges: ingredients and targets. */
export const ownRangeSentences: Readonly<Record<string, string>> = {
  'the first row has no header "name"; a range with its header row, such as Table[#All], is expected.':
    "die erste Zeile hat keinen Kopf „name“; erwartet wird ein Bereich mit seiner Kopfzeile, etwa Tabelle[#Alle].",
  'the header "{header}" can mean several things; write {choices}.':
    "der Kopf „{header}“ kann mehreres bedeuten; zu schreiben ist {choices}.",
  'the header "{header}" is not known; the nearest is "{nearest}".':
    "der Kopf „{header}“ ist nicht bekannt; am nächsten kommt „{nearest}“.",
  'the header "{header}" means the same as that of column {column}; each is expected once.':
    "der Kopf „{header}“ bedeutet dasselbe wie der von Spalte {column}; jeder wird einmal erwartet.",
  '"{name}" is given more than once; each name is expected once.':
    "„{name}“ steht mehrmals da; jeder Name wird einmal erwartet.",
  "the name is {shown}; a text is expected.": "der Name ist {shown}; erwartet wird ein Text.",
  '"{name}" is given as the same as "{other}" and also {more}; nothing else is expected then.':
    "„{name}“ ist als dasselbe wie „{other}“ angegeben und dazu {more}; dann wird sonst nichts erwartet.",
  "one of water, solids or brix must be stated, or its water would pass as inert.":
    "water, solids oder brix muss angegeben sein, sonst gälte das Wasser als unlöslich.",
  "water, solids and brix disagree by {off} g of water per 100 g; at most {most} is allowed.":
    "water, solids und brix weichen um {off} g Wasser je 100 g voneinander ab; erlaubt sind höchstens {most}.",
  "the parts add up to {total} g, {off} g too {way}; 100 ± {most} g is expected (what does not dissolve goes to inert).":
    "die Teile ergeben {total} g, {off} g zu {way}; erwartet werden 100 ± {most} g (was sich nicht löst, gehört zu inert).",
  "both abv ({abv}) and ethanol ({ethanol}) are given; one is expected.":
    "abv ({abv}) und ethanol ({ethanol}) sind beide angegeben; erwartet wird eines.",
  "both abv ({abv}) and brix are given, and alcohol falsifies a Brix reading; water or solids is expected.":
    "abv ({abv}) und brix sind beide angegeben, und Alkohol verfälscht eine Brix-Ablesung; erwartet wird water oder solids.",
  "{sugar} ({grams}) and milk solids ({milk}) are both given, and milk solids hold lactose; one of them is expected.":
    "{sugar} ({grams}) und milk solids ({milk}) sind beide angegeben, und in milk solids ist Lactose; erwartet wird eines.",
  "the sugars named one by one add up to {named}, more than sugars ({sugars}), which is their sum.":
    "die einzeln genannten Zucker ergeben {named}, mehr als sugars ({sugars}), ihre Summe.",
  "what is dissolved adds up to {stated}, more than brix ({brix}) allows; at most {most} is expected.":
    "das Gelöste ergibt {stated}, mehr als brix ({brix}) zulässt; erwartet wird höchstens {most}.",

  'the first row has no header "{missing}"; {headers} are expected.':
    "die erste Zeile hat keinen Kopf „{missing}“; erwartet werden {headers}.",
  "{to} is less than ice from, {from}; it must be at least that.":
    "{to} ist weniger als ice from, {from}; es muss mindestens so viel sein.",

  "stepGrams: no amounts in steps of {step} g lie within the given ranges; wider ranges or a smaller step are expected.":
    "stepGrams: In Schritten von {step} g liegen keine Mengen in den angegebenen Bereichen; erwartet werden weitere Bereiche oder ein kleinerer Schritt.",
  "wishes: they cannot all be met with the ingredients that may change, and no single one of them stands in the way; fewer wishes or wider ranges are expected.":
    "Wünsche: Mit den Zutaten, die sich ändern dürfen, lassen sie sich nicht alle erfüllen, und kein einzelner steht allein im Weg; erwartet werden weniger Wünsche oder weitere Bereiche.",
  "wishes: an answer was found that does not keep the wishes when it is recomputed, so it is not shown; wider wishes are expected.":
    "Wünsche: Es fand sich eine Antwort, die beim Nachrechnen die Wünsche nicht hält und darum nicht gezeigt wird; erwartet werden weitere Wünsche.",
  '"{name}" is {grams} g; a number of at least 0 is expected.':
    "„{name}“ ist {grams} g; erwartet wird eine Zahl ab 0.",
  '"{name}" may go from {from} to {to} g; two amounts, the smaller first, are expected.':
    "„{name}“ darf von {from} bis {to} g gehen; erwartet werden zwei Mengen, die kleinere zuerst.",
  '"water lost" is what evaporates and cannot be chosen.':
    "„water lost“ ist, was verdampft, und lässt sich nicht wählen.",
  '"{name}" has {price}; a price of 1 kg of at least 0 is expected of every ingredient.':
    "„{name}“ hat {price}; von jeder Zutat wird ein Preis je kg ab 0 erwartet.",
  "no price": "keinen Preis",
  "the price {price}": "den Preis {price}",
  "the step is {step} g; a number above 0 is expected.":
    "der Schritt ist {step} g; erwartet wird eine Zahl über 0.",
  "no ingredient may change; at least one is expected.":
    "keine Zutat darf sich ändern; erwartet wird mindestens eine.",
  '"{name}" cannot stand in for itself.': "„{name}“ kann sich nicht selbst ersetzen.",
  '{left} g of "{name}" are to be left; from 0 to less than the {given} g that are there is expected.':
    "{left} g „{name}“ sollen bleiben; erwartet wird 0 bis weniger als die {given} g, die da sind.",
  "the {quantity} is to be {end}; {least} to {most} can be asked for.":
    "für {quantity} ist {end} gewünscht; wünschen lässt sich {least} bis {most}.",
  "the {quantity} is to go from {from} to {to}; the smaller comes first.":
    "für {quantity} ist {from} bis {to} gewünscht; das Kleinere kommt zuerst.",
  "the ice fraction is asked for at {temperature} °C; a temperature from {coldest} to below 0 °C is expected.":
    "der Eisanteil ist für {temperature} °C gewünscht; erwartet wird eine Temperatur von {coldest} bis unter 0 °C.",
};
