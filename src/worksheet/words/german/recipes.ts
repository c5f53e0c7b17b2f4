/** What is said to recipes, to what is asked of them, and to own ingredients. */
export const recipeSentences: Readonly<Record<string, string>> = {
  "items is {size} cells; one row or one column of names is expected.":
    "items hat {size} Zellen; erwartet wird eine Zeile oder eine Spalte mit Namen.",
  "grams is {size} cells (rows × columns) and items is {other}; grams must lie along items.":
    "grams hat {size} Zellen (Zeilen × Spalten) und items {other}; grams muss entlang items liegen.",
  "{value} is not a name; the name of an ingredient is expected.":
    "{value} ist kein Name; erwartet wird der Name einer Zutat.",
  "the amount{of?} is {shown}; a number of grams from 0 up is expected.":
    "die Menge{of?} ist {shown}; erwartet wird eine Zahl in Gramm ab 0.",
  "the amount{of?} is {grams} g; it must be from 0 to {most} g.":
    "die Menge{of?} ist {grams} g; erlaubt sind 0 bis {most} g.",
  ' of "{item}"': " von „{item}“",
  "the amount {grams} has no name beside it in items; one is expected.":
    "neben der Menge {grams} steht in items kein Name; dort wird einer erwartet.",
  '"{word}" is {stated}, but the amounts above it add up to {sum}; a total must equal that sum.':
    "„{word}“ ist {stated}, die Mengen darüber ergeben aber {sum}; eine Summe muss dem gleichen.",
  "the amounts add up to {grams} g; a recipe needs at least {least} g.":
    "die Mengen ergeben zusammen {grams} g; ein Rezept braucht mindestens {least} g.",
  '"water lost" is {lost} g, more than the {grams} g of water in the mix.':
    "„water lost“ ist {lost} g, mehr als die {grams} g Wasser in der Mischung.",
  '"{name}" is not a food and must not be in anything that is eaten; it can only be calculated with for class, and edible ingredients are expected here.':
    "„{name}“ ist kein Lebensmittel und darf in nichts sein, was gegessen wird; damit wird nur für den Unterricht gerechnet, hier werden essbare Zutaten erwartet.",
  "the mix holds 0 g of water, so nothing in it can dissolve or freeze; more than 0 g is expected.":
    "die Mischung enthält 0 g Wasser, also kann darin nichts gelöst sein oder gefrieren; erwartet wird mehr als 0 g.",

  "no ice forms in this mix: its ice line lies {where} °C, below the {end} °C (Tm′) at which freezing ends.{water?} It thickens into a glass{glass?} instead, and sugar that crystallises in it, as glucose does in honey, is not freezing.":
    "in dieser Mischung entsteht kein Eis: Ihre Eislinie liegt {where} °C, unter den {end} °C (Tm′), bei denen das Gefrieren endet.{water?} Stattdessen wird sie zähe bis zu einem Glas{glass?}, und Zucker, der darin kristallisiert, wie Glucose im Honig, ist kein Gefrieren.",
  " At {temperature} °C ice would need about {needed} % of water in it; it has {there} %.":
    " Bei {temperature} °C bräuchte es für Eis etwa {needed} % Wasser darin; es sind {there} %.",
  "below {limit}": "unter {limit}",
  "at {where}": "bei {where}",
  " near {temperature} °C": " nahe {temperature} °C",
  "at a temperature of {temperature} °C all the water is ice and nothing is dissolved, so there is no unfrozen phase; something dissolved, or a temperature above 0 °C, is expected.":
    "bei {temperature} °C ist alles Wasser Eis und nichts gelöst, also gibt es nichts Ungefrorenes; erwartet wird etwas Gelöstes oder eine Temperatur über 0 °C.",
  "{share} of the {basis} cannot freeze; at most {most} is ice, at {temperature} °C.":
    "ein Anteil {basis} von {share} kann nicht gefrieren; höchstens {most} sind Eis, bei {temperature} °C.",
  "the freezing point would lie below {coldest} °C, the coldest that is answered.":
    "der Gefrierpunkt läge unter {coldest} °C, dem Kältesten, was beantwortet wird.",
  "the water of the mix is {amount} kg; it must be above 0.":
    "die Mischung enthält {amount} kg Wasser; es muss mehr als 0 sein.",
  "the water activity would lie below {lowest}, the lowest that is answered.":
    "die Wasseraktivität läge unter {lowest}, dem Niedrigsten, was beantwortet wird.",
  "nothing is dissolved, so no glass can form.": "nichts ist gelöst, also entsteht kein Glas.",
  "nothing is dissolved in this mix, so no glass can form; something that dissolves is expected.":
    "in dieser Mischung ist nichts gelöst, also entsteht kein Glas; erwartet wird etwas, das sich löst.",
  "nothing is dissolved, so there is no Tm′.": "nichts ist gelöst, also gibt es kein Tm′.",
  "nothing is dissolved in this mix, so there is no Tm′; something that dissolves is expected.":
    "in dieser Mischung ist nichts gelöst, also gibt es kein Tm′; erwartet wird etwas, das sich löst.",
  "{percent} % of what is dissolved has no known glass transition; at most {most} % may lack one.":
    "für {percent} % des Gelösten ist kein Glasübergang bekannt; fehlen darf er für höchstens {most} %.",
  "{percent} % of what is dissolved has no known Tm′; at most {most} % may lack one.":
    "für {percent} % des Gelösten ist kein Tm′ bekannt; fehlen darf es für höchstens {most} %.",

  "{percent} % of the water and alcohol is alcohol; {asked} is answered up to {most} %.":
    "von Wasser und Alkohol sind {percent} % Alkohol; {asked} wird bis {most} % beantwortet.",
  "the water activity": "die Wasseraktivität",
  "the boiling point": "der Siedepunkt",
  "the osmotic pressure": "der osmotische Druck",
  "the water activity at {temperature} °C is not answered; the checked range is 0 to 100 °C.":
    "die Wasseraktivität bei {temperature} °C wird nicht beantwortet; geprüft ist der Bereich von 0 bis 100 °C.",
  "the pressure is {pressure} kPa; it must be above 0.":
    "der Druck ist {pressure} kPa; er muss über 0 liegen.",
  "at {pressure} kPa the mix boils outside {from} to {to} °C, the range that is answered.":
    "bei {pressure} kPa siedet die Mischung außerhalb von {from} bis {to} °C, dem Bereich, der beantwortet wird.",
  "osmotic pressure is answered from 0 to 100 °C; the temperature is {temperature} °C.":
    "der osmotische Druck wird von 0 bis 100 °C beantwortet; die Temperatur ist {temperature} °C.",
  "nothing in this mix is liquid at 20 °C; water or something dissolved is expected.":
    "nichts in dieser Mischung ist bei 20 °C flüssig; erwartet wird Wasser oder etwas Gelöstes.",
  "the reading would lie {where} °Bx; 0 to {most} is answered.":
    "die Ablesung läge {where} °Bx; beantwortet wird 0 bis {most}.",
  "above {limit}": "über {limit}",
  "{overrun} is not answered; at most {most} is (200 % overrun).":
    "{overrun} wird nicht beantwortet; höchstens {most} (200 % Aufschlag).",
  "{percent} % of the liquid is {names}, whose density in water is not in the catalogue; at most {most} % may be.":
    "{percent} % des Flüssigen sind {names}, deren Dichte in Wasser nicht im Katalog steht; erlaubt sind höchstens {most} %.",
  "no sweetness is known for {names}; it is asked of every sugar in the mix.":
    "für {names} ist keine Süße bekannt; gebraucht wird sie von jedem Zucker der Mischung.",
  '"{scale}" is a scale of sucrose only, and the solute is "{solute}"; another scale is expected.':
    "„{scale}“ ist eine Skala nur für Saccharose, gelöst ist aber „{solute}“; erwartet wird eine andere Skala.",
  '{value} is not answered as "{scale}"; it must be {limit}.':
    "{value} wird als „{scale}“ nicht beantwortet; erlaubt ist {limit}.",
  "less than {limit}": "weniger als {limit}",
  "{percent} % of sucrose is not answered in Baume; at most {most} % is.":
    "{percent} % Saccharose werden in Baume nicht beantwortet; höchstens {most} %.",

  'no amount of "{item}" makes the {quantity} {value}; {reach}.':
    "keine Menge „{item}“ bringt {quantity} auf {value}; {reach}.",
  "it is {value} with any amount, and only that is answered":
    "mit jeder Menge bleibt es bei {value}, und nur das wird beantwortet",
  "it reaches from {from} to {to}, and a value in between is expected":
    "erreichbar ist {from} bis {to}, erwartet wird ein Wert dazwischen",
  '"{name}" is not sweet, so it cannot hold the sweetness; something sweet is expected.':
    "„{name}“ ist nicht süß und kann die Süße nicht halten; erwartet wird etwas Süßes.",
  '"water lost" cannot be solved for; an ingredient is expected.':
    "nach „water lost“ lässt sich nicht auflösen; erwartet wird eine Zutat.",
  '"sweetness" needs an item that gives way; a name in replacing is expected.':
    "„sweetness“ braucht eine Zutat, die weicht; erwartet wird ein Name in replacing.",
  '"{name}" is the item itself; another one is expected.':
    "„{name}“ ist die Zutat selbst; erwartet wird eine andere.",

  "coreTemperature, left out and so {kelvin} K above the air: {refusal}":
    "coreTemperature, ausgelassen und also {kelvin} K über der Luft: {refusal}",
  "{temperature} °C is the start temperature already; another one is expected.":
    "{temperature} °C ist schon die Anfangstemperatur; erwartet wird eine andere.",
  "{core} °C is not reached from {start} °C in surroundings at {air} °C (airTemperature); it must lie between the two.":
    "{core} °C wird von {start} °C aus bei {air} °C Umgebung (airTemperature) nicht erreicht; es muss dazwischen liegen.",
  "{temperature} °C is not answered; the method is checked down to {coldest} °C.":
    "{temperature} °C wird nicht beantwortet; das Verfahren ist bis {coldest} °C hinab geprüft.",
  "the mix holds {percent} % of water; the method is checked from {least} % up.":
    "die Mischung enthält {percent} % Wasser; das Verfahren ist ab {least} % geprüft.",
  "{core} °C is not below the freezing point of the mix, {point} °C; the method answers freezing, and warming up to below it.":
    "{core} °C liegt nicht unter dem Gefrierpunkt der Mischung, {point} °C; das Verfahren beantwortet Gefrieren und Erwärmen bis unter ihn.",
  '{thickness} mm with "{airflow}" gives a Biot number of {biot}; the method is checked to {most}.':
    "{thickness} mm mit „{airflow}“ ergibt eine Biot-Zahl von {biot}; das Verfahren ist bis {most} geprüft.",
  "{core} °C is less than {near} K below the freezing point of the mix, {point} °C; so near the method is checked to a Biot number of {most}, and here it is {biot}.":
    "{core} °C liegt weniger als {near} K unter dem Gefrierpunkt der Mischung, {point} °C; so nahe ist das Verfahren bis zu einer Biot-Zahl von {most} geprüft, und hier ist sie {biot}.",
  "at {air} °C the surface melts ({surface} °C) before the core is at {core} °C; colder or calmer surroundings, or a thinner piece, are expected.":
    "bei {air} °C schmilzt die Oberfläche ({surface} °C), ehe der Kern {core} °C hat; erwartet wird eine kältere oder ruhigere Umgebung oder ein dünneres Stück.",
};
