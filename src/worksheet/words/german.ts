import type { FunctionWords, LanguageOfFunctions } from "./functionWords";

// Names of functions and arguments, and the words that arguments take, stay English: they stand in cells.

const recipe = {
  items: "Namen der Zutaten, in einer Zeile oder einer Spalte",
  grams: "Ihre Mengen in g, entlang items; weitere Zeilen (oder Spalten) sind weitere Rezepte",
};

const own = {
  ownIngredients: "Bereich mit Kopfzeile der eigenen Zutaten, etwa Tabelle[#Alle]",
};

const of = (temperature: string): string => `${temperature} in °C, beantwortet von -60 bis 100`;
const ofMix = of("Temperatur der Mischung");
const soluteName = "Name des gelösten Stoffes";
const soluteGrams = "Masse des gelösten Stoffes in g";
const particles = "Teilchen je Formeleinheit (i), über 0 und bis 1e9";
const basis = "Wovon der Anteil gilt: water (des Wassers), mix (der Mischung)";
const scales = "mass fraction, molality, g per 100 g water, mole fraction, Brix, Baume";
const neededFor = (what: string): string =>
  `${of(`Temperatur der Mischung, nötig für ${what},`)}; ohne Angabe 25 bei der Wasseraktivität`;

const functions: Readonly<Record<string, FunctionWords>> = {
  MOLES: {
    summary: "Stoffmenge in einer Masse eines gelösten Stoffes, in mol.",
    parameters: { solute: soluteName, grams: "Seine Masse in g, von 0 bis 1e9 g" },
  },
  MOLALITY: {
    summary: "Mol eines gelösten Stoffes je Kilogramm Wasser.",
    parameters: {
      solute: soluteName,
      soluteGrams: `${soluteGrams}, von 0 bis 1e9 g`,
      waterGrams: "Masse des Wassers in g, über 0 und bis 1e9 g",
    },
  },
  MASSFRACTION: {
    summary: "Masse des gelösten Stoffes geteilt durch die von gelöstem Stoff und Lösungsmittel.",
    parameters: {
      soluteGrams: `${soluteGrams}, von 0 bis 1e9 g`,
      solventGrams: "Masse des Lösungsmittels in g, von 0 bis 1e9 g",
    },
  },
  CONCENTRATION: {
    summary:
      "Rechnet den Gehalt eines in Wasser gelösten Stoffes von einer Skala in eine andere um.",
    parameters: {
      solute: soluteName,
      value: "Der Gehalt auf der Skala `from`, von 0 bis 1e9",
      from: `Skala des Wertes: ${scales}`,
      to: `Skala der Antwort: ${scales}`,
    },
  },
  ABVTOMASSFRACTION: {
    summary: "Massenanteil des Ethanols in einem Getränk von gegebenen Volumenprozent.",
    parameters: { abvPercent: "Alkohol in Volumenprozent bei 20 °C, von 0 bis 100 % vol" },
  },
  GRAMS: {
    summary: "Gramm in einem Haushaltsmaß einer Zutat.",
    parameters: {
      item: "Name der Zutat",
      amount: "Wie viele; eine Zahl oder ein Bruch als Text wie 1 1/2; leer ist 0",
      unit: "Einheit: g, kg, oz, lb, mL, L, tsp (Teelöffel), tbsp (Esslöffel), cup (Tasse), fl oz, piece (Stück), …",
      ...own,
    },
  },
  IDEALDEPRESSION: {
    summary: "Gefrierpunktserniedrigung nach dem idealen Gesetz, für den Unterricht.",
    parameters: {
      molality: "Mol gelöster Stoff je kg Wasser, von 0 bis 1e9 mol/kg",
      vantHoff: particles,
      kf: "Kryoskopische Konstante in K·kg/mol, über 0 und bis 1e9 K·kg/mol",
    },
  },
  IDEALELEVATION: {
    summary: "Siedepunktserhöhung nach dem idealen Gesetz, für den Unterricht.",
    parameters: {
      molality: "Mol gelöster Stoff je kg Wasser, von 0 bis 1e9 mol/kg",
      vantHoff: particles,
      kb: "Ebullioskopische Konstante in K·kg/mol, über 0 und bis 1e9 K·kg/mol",
    },
  },
  MOLARMASSFROM: {
    summary: "Molare Masse eines Stoffes aus einer gemessenen Gefrierpunktserniedrigung.",
    parameters: {
      depression: "Gemessene Erniedrigung in K, über 0 und bis 1e9 K",
      soluteGrams: `${soluteGrams}, über 0 und bis 1e9 g`,
      waterGrams: "Masse des Lösungsmittels in g, über 0 und bis 1e9 g",
      vantHoff: particles,
      kf: "Kryoskopische Konstante in K·kg/mol, über 0 und bis 1e9 K·kg/mol",
    },
  },
  FREEZINGPOINT: {
    summary: "Temperatur, bei der in einer Mischung das erste Eis entsteht.",
    parameters: { ...recipe, ...own },
  },
  DEPRESSION: {
    summary: "Wie weit der Gefrierpunkt einer Mischung unter dem von Wasser liegt.",
    parameters: { ...recipe, ...own },
  },
  ICEFRACTION: {
    summary: "Anteil einer Mischung, der bei einer Temperatur Eis ist.",
    parameters: { ...recipe, temperature: ofMix, basis, ...own },
  },
  ICETEMPERATURE: {
    summary: "Temperatur, bei der ein gegebener Anteil einer Mischung Eis ist.",
    parameters: { ...recipe, iceFraction: "Anteil, der Eis ist, von 0 bis 1", basis, ...own },
  },
  UNFROZENSOLIDS: {
    summary: "Anteil des Gelösten in dem Teil einer Mischung, der nicht gefroren ist.",
    parameters: { ...recipe, temperature: ofMix, ...own },
  },
  FREEZINGCURVE: {
    summary: "Tabelle der Eisanteile und der ungefrorenen Lösung über einen Temperaturbereich.",
    parameters: {
      ...recipe,
      from: of("Erste Temperatur"),
      to: of("Letzte Temperatur"),
      steps: "Zahl der Schritte dazwischen, von 1 bis 1000",
      ...own,
    },
  },
  GLASSTRANSITION: {
    summary: "Glasübergang der ungefrorenen Mischung, wie sie geschrieben steht, ohne Eis.",
    parameters: { ...recipe, ...own },
  },
  MAXFREEZECONCENTRATED: {
    summary:
      "Temperatur Tm′, bei der das Gefrieren endet, und die Trockenmasse dessen, was dann bleibt.",
    parameters: { ...recipe, ...own },
  },
  TEXTURE: {
    summary: "Ein Wort dafür, wie sich eine Mischung bei einer Temperatur anfühlt.",
    parameters: {
      ...recipe,
      temperature: "Temperatur der Mischung in °C, beantwortet von -60 bis 40",
      ...own,
    },
  },
  FREEZINGTIME: {
    summary:
      "Stunden, bis der Kern eines Stückes im Gefrierer eine Temperatur erreicht, geschätzt (± 30 %).",
    parameters: {
      ...recipe,
      thicknessMm: "Volle Dicke oder Durchmesser in mm, von 1 bis 300 mm",
      airTemperature: "Temperatur der Luft oder Sole in °C, beantwortet von -60 bis 40",
      startTemperature: "Temperatur am Anfang in °C, beantwortet von -60 bis 40",
      coreTemperature:
        "Temperatur, die der Kern erreichen soll, in °C, beantwortet von -60 bis 40; ohne Angabe 3 K über der Luft",
      airflow:
        "Woher die Kälte kommt: still (ruhende Luft), fan (Umluft), blast (Schockfroster), brine (Sole)",
      shape: "Form: slab (Platte), cylinder (Zylinder), sphere (Kugel)",
      ...own,
    },
  },
  WATERACTIVITY: {
    summary: "Wasseraktivität der flüssigen Mischung, wie sie geschrieben steht, ohne Eis.",
    parameters: {
      ...recipe,
      temperature: "Temperatur der Mischung in °C, beantwortet von 0 bis 100",
      ...own,
    },
  },
  BOILINGPOINT: {
    summary: "Temperatur, bei der eine Mischung siedet.",
    parameters: { ...recipe, pressure: "Luftdruck in kPa, über 0 und bis 1e9 kPa", ...own },
  },
  OSMOTICPRESSURE: {
    summary: "Osmotischer Druck der flüssigen Mischung gegen reines Wasser.",
    parameters: {
      ...recipe,
      temperature: "Temperatur der Mischung in °C, beantwortet von 0 bis 100",
      ...own,
    },
  },
  OSMOLALITY: {
    summary: "Mol Teilchen je Kilogramm Wasser, ideal gezählt.",
    parameters: { ...recipe, ...own },
  },
  DENSITY: {
    summary: "Dichte einer Mischung bei 20 °C, mit Luft, wenn welche darin ist.",
    parameters: {
      ...recipe,
      overrunFraction: "Volumen der Luft geteilt durch das der Mischung, von 0 bis 1e9",
      ...own,
    },
  },
  BRIX: {
    summary: "Grad Brix, die ein Refraktometer am flüssigen Teil einer Mischung anzeigt.",
    parameters: { ...recipe, ...own },
  },
  SWEETNESS: {
    summary: "Gramm Saccharose je 100 g Mischung, die ebenso süß schmecken.",
    parameters: { ...recipe, ...own },
  },
  COMPONENT: {
    summary: "Gramm eines Bestandteils in einer Mischung.",
    parameters: {
      ...recipe,
      component:
        "water (Wasser), solids (Trockenmasse), dissolved solids (gelöste), sugars (Zucker), polyols, higher saccharides, acids (Säuren), fat (Fett), protein (Eiweiß), ash (Asche), inert (Übriges), total (alles) oder der Name eines gelösten Stoffes",
      ...own,
    },
  },
  COMPOSITION: {
    summary: "Tabelle dessen, woraus eine Mischung besteht, in Gramm und Anteilen.",
    parameters: { ...recipe, ...own },
  },
  SOLUTE: {
    summary: "Eine Konstante eines gelösten Stoffes aus dem Verzeichnis.",
    parameters: {
      name: soluteName,
      property:
        "Was gefragt ist: molar mass, van 't Hoff, Kf equivalent, CAS, formula, kind, food, eutectic, eutectic mass fraction, solubility 20, sweetness, Tm', Cg', dry glass transition, Gordon-Taylor k, checked to, uncertainty, basis, source, note, card",
    },
  },
  INGREDIENT: {
    summary: "Was 100 g einer Zutat enthalten oder was von ihr bekannt ist.",
    parameters: {
      name: "Name der Zutat",
      component:
        "Ein Bestandteil wie water (Wasser), sugars (Zucker), fat (Fett), der Name eines gelösten Stoffes; oder source (Quelle), allergens (Allergene), caution (Warnung), g per mL, g per piece, note (Anmerkung), card (Karte)",
    },
  },
  SOLUTES: {
    summary: "Tabelle der gelösten Stoffe des Verzeichnisses.",
    parameters: { search: "Teil eines Namens, einer Formel oder Art; alle, wenn es fehlt" },
  },
  INGREDIENTS: {
    summary: "Tabelle der Zutaten des Verzeichnisses.",
    parameters: { search: "Teil eines Namens oder einer Gruppe; alle, wenn es fehlt" },
  },
  TARGET: {
    summary: "Ein Ziel für das Servieren: wie viel bei welcher Temperatur Eis ist.",
    parameters: {
      name: "Name des Ziels",
      property: "Was gefragt ist: temperature, ice from, ice to, basis, note, obtained",
    },
  },
  AMOUNTFOR: {
    summary: "Gramm einer Zutat im Ganzen, mit denen eine Größe der Mischung einen Wert annimmt.",
    parameters: {
      ...recipe,
      item: "Gesuchte Zutat, schon im Rezept oder neu",
      quantity:
        "Was erfüllt werden soll: freezing point (Gefrierpunkt), ice fraction (Eisanteil), water activity (Wasseraktivität), sweetness (Süße)",
      value: "Der Wert, der erreicht werden soll, von -60 bis 200",
      temperature: neededFor("den Eisanteil"),
      ...own,
      replacing: "Zutat, die weicht; keine, wenn es fehlt",
      hold: "Was gleich bleibt: others (die anderen Mengen), mass (die Masse), sweetness (die Süße)",
    },
  },
  CHECK: {
    summary: "Ob eine Mischung ein Ziel trifft, sonst wie weit und wohin sie es verfehlt.",
    parameters: {
      ...recipe,
      target:
        "Name eines Ziels oder ein Bereich mit den Köpfen name, temperature, ice from, ice to, basis",
      ...own,
    },
  },
  UNCERTAINTY: {
    summary: "Eine Standardunsicherheit (±) dessen, was für eine Mischung berechnet wird.",
    parameters: {
      ...recipe,
      quantity:
        "Wovon: freezing point (Gefrierpunkt), ice fraction (Eisanteil), water activity (Wasseraktivität), unfrozen solids (ungefrorene Lösung), sweetness (Süße), solids (Trockenmasse)",
      temperature: neededFor("Eisanteil und ungefrorene Lösung"),
      ...own,
    },
  },
  WORKING: {
    summary: "Tabelle der Rechnung, wie man sie an eine Tafel schriebe.",
    parameters: {
      ...recipe,
      temperature: `${of("Temperatur, bei der das Eis berechnet wird,")}; ohne Angabe keine Zeilen zum Eis`,
      ...own,
    },
  },
  CAUTIONS: {
    summary:
      "Tabelle dessen, was Essenden zu sagen ist: Allergene, Säuglinge, Alkohol, Sandigkeit und mehr.",
    parameters: { ...recipe, ...own },
  },
};

/** The functions in German. A test finds what it lacks, and ranges or words that differ from the English. */
export const german: LanguageOfFunctions = {
  functions,
  whenLeftOut: (value) => `ohne Angabe ${String(value).replace(".", ",")}`,
};
