import { steer } from "./german/steer";
import { aims } from "./german/aims";
import { batch } from "./german/batch";
import { larder } from "./german/larder";
import { notebook } from "./german/notebook";
import { curves } from "./german/curves";
import { readThrough } from "./german/readThrough";
import { help, welcome } from "./german/welcome";
import { why } from "./german/why";
import { germanSentence } from "../../src/audit/words/germanSentences";
import { german as germanFunctions } from "../../src/worksheet/words/german";
import { allergenNames } from "../../src/worksheet/words/german/allergenNames";
import type { Words } from "./words";

const plural = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

/** The pane in German, and what the functions say, which speak English. */
export const german: Words = {
  language: "de",
  said: germanSentence,
  argument: (functionName, argument, english) =>
    germanFunctions.functions[functionName]?.parameters[argument] ?? english,
  tabs: "Ansichten",
  views: {
    bowl: { name: "Schüssel", about: "Das ausgewählte Rezept: wie es gefriert" },
    steer: { name: "Lenken", about: "Ändert das ausgewählte Rezept, bis es die Wünsche erfüllt" },
    batch: {
      name: "Ansatz",
      about: "Größe, Stunden, Kosten, Rettung, Fassungen, Etikett und Karte des Rezepts",
    },
    curves: { name: "Bilder", about: "Das ausgewählte Rezept in Bildern" },
    aims: {
      name: "Ziele",
      about: "Wie eine Masse serviert sein soll: Ihre Ziele, die des Katalogs",
    },
    larder: { name: "Vorrat", about: "Gelöste Stoffe und Zutaten mit Zahlen und Quellen" },
    notebook: { name: "Heft", about: "Was gemessen wurde und was es lehrt" },
    why: { name: "Warum", about: "Erklärt die Formel der ausgewählten Zelle" },
    readThrough: { name: "Durchsicht", about: "Prüft die ganze Arbeitsmappe" },
  },
  close: "Schließen",
  back: "Zurück zur Suche",
  reading: "Das Blatt wird gelesen …",
  noAnswer: "Keine Antwort.",

  askInBowl:
    "Die Spalten dieses Blocks sind erst zu klären: Beantworten Sie die Frage in der Schüssel.",
  numberWrong: (typed, from, to, unit) =>
    `Es muss eine Zahl von ${from} bis ${to} ${unit} sein, nicht „${typed}“.`,
  outside: {
    "no script":
      "Diese Seite liegt nicht in einer Tabelle, oder deren Skript war nicht zu erreichen; der Vorrat geht trotzdem.",
    "no spreadsheet": "Diese Seite liegt nicht in einer Tabelle; der Vorrat geht trotzdem.",
    "too old":
      "Dieses Tabellenprogramm ist zu alt für den Bereich (ihm fehlt ExcelApi 1.7); der Vorrat geht trotzdem.",
  },
  outsideBowl:
    "Die Schüssel liest ein Rezept aus einem Blatt; öffnen Sie den Bereich in einer Tabelle.",
  outsideReading:
    "Die Durchsicht braucht eine Arbeitsmappe; öffnen Sie den Bereich in einer Tabelle.",
  hostFaults: {
    InvalidOperationInCellEditMode:
      "Eine Zelle wird gerade bearbeitet: mit Eingabe oder Esc abschließen, dann noch einmal.",
    AccessDenied:
      "Das Blatt ist geschützt: nichts wurde geschrieben; Schutz aufheben, dann noch einmal.",
    ItemNotFound: "Dieses Blatt oder diese Zelle gibt es nicht mehr.",
    InvalidReference: "Dieses Blatt oder diese Zelle gibt es nicht mehr.",
    InvalidSelection: "Mehrere Bereiche sind ausgewählt: wählen Sie einen zusammenhängenden.",
    InvalidArgument: "Die Tabelle hat diese Zelle oder diesen Bereich nicht angenommen.",
    RequestPayloadSizeLimitExceeded: "Das ist zu viel auf einmal zu schreiben: wählen Sie weniger.",
    ResponsePayloadSizeLimitExceeded: "Das ist zu viel auf einmal zu lesen: wählen Sie weniger.",
    TooManyCells:
      "Der ausgewählte Block hat mehr als 60000 Zellen: wählen Sie nur die des Rezepts.",
    ApiNotFound: "Diese Version des Tabellenprogramms kann das noch nicht.",
    NotImplemented: "Diese Version des Tabellenprogramms kann das noch nicht.",
    UnsupportedOperation: "Das Tabellenprogramm lässt das hier nicht zu.",
    HostRestartNeeded: "Das Tabellenprogramm muss neu gestartet werden, bevor es weitergeht.",
    ServiceNotAvailable: "Das Tabellenprogramm antwortet gerade nicht: noch einmal versuchen.",
    NothingHandedOver:
      "Das Tabellenprogramm gab keine Inhalte heraus: dieser Block ist ihm zu groß.",
    InvalidObjectPath: "Dieses Blatt oder diese Zelle gibt es nicht mehr.",
    InvalidOperation:
      "Das Tabellenprogramm lässt das hier nicht zu, oder eine Zelle wird bearbeitet.",
    GeneralException: "Das Tabellenprogramm konnte das nicht; warum, hat es nicht gesagt.",
  },
  halfWritten: {
    cells: (written, missing) =>
      `Das Tabellenprogramm brach mittendrin ab: ${written} wurde geschrieben, ${missing} nicht.`,
    unknown: (places) =>
      `Das Tabellenprogramm antwortete nicht mehr, während ${places} geschrieben wurde: bitte nachsehen, ob es dort steht.`,
    unverified: (places) =>
      `${places} wurde geschrieben, konnte aber nicht noch einmal gelesen werden: bitte nachsehen.`,
    sheet: (name) =>
      `Das neue Blatt „${name}“ wurde angelegt, aber nicht gefüllt: es kann gelöscht werden.`,
  },
  otherHostFault: (message) => `Das Tabellenprogramm konnte das nicht: ${message}.`,

  searchLabel: "Gelöste Stoffe und Zutaten suchen",
  searchExample: "Traubenzucker, honey, Haferdrink …",
  found: (count) => plural(count, "Eintrag", "Einträge"),
  nothingFound: (typed) => `Nichts im Vorrat heißt „${typed}“.`,
  showMore: (count) => `Mehr zeigen (noch ${count})`,
  soluteMark: "gelöster Stoff",
  alsoCalled: (names) => `Auch: ${names}`,
  constants: "Konstanten",
  composition: "Woraus 100 g bestehen",
  measures: "Maße",
  gramsPer100: "g/100 g",
  bulkDensity: "mit Löffel und Tasse",
  bulkDensityBasis: "Streuung zwischen Löffeln",
  alcoholByVolume: "Volumenprozent Alkohol",
  notFood: "Kein Lebensmittel: nur für den Unterricht; wird in Essbarem abgelehnt.",
  hydrate: (solute, water) => `Gibt ${solute} und ${water} Kristallwasser.`,
  inclusion: "Löst sich nicht: zählt für Masse und Allergene, nicht für das Gefrieren.",
  allergens: (names) => `Allergene: ${names}`,
  allergensByMaker: (names) => `Je nach Hersteller: ${names}. Etikett lesen.`,
  allergensNone:
    "Von Natur aus keines der wichtigen Allergene; Spuren aus der Verarbeitung lassen sich nicht berechnen.",
  allergensUnknown: "Allergene: unbekannt. Lesen Sie das Etikett dessen, was Sie verwenden.",
  allergenNames,
  obtained: {
    "from the source": "aus der Quelle",
    "computed here": "hier aus der Quelle berechnet",
    "from memory": "aus dem Gedächtnis, noch zu bestätigen",
    own: "Ihr eigenes",
    "common practice": "übliche Praxis",
  },
  basis: (basis) => `± beruht auf: ${basis}`,
  soluteKinds: {
    sugar: "Zucker",
    polyol: "Polyol",
    "saccharide polymer": "Saccharid-Polymer",
    salt: "Salz",
    acid: "Säure",
    alcohol: "Alkohol",
    lumped: "mehrere Stoffe als einer genommen",
    other: "anderes",
  },
  groups: {
    water: "Wasser",
    sugars: "Zucker",
    honey: "Honig",
    "polyols and fibres": "Polyole und Ballaststoffe",
    dairy: "Milch",
    eggs: "Ei",
    fruit: "Obst",
    "vegetables and herbs": "Gemüse und Kräuter",
    "cocoa and chocolate": "Kakao und Schokolade",
    "nuts and seeds": "Nüsse und Samen",
    "plant drinks": "Pflanzendrinks",
    biscuits: "Gebäck",
    confectionery: "Süßwaren",
    alcohol: "Alkohol",
    flavour: "Geschmack",
    "salts and acids": "Salze und Säuren",
    stabilisers: "Bindemittel",
    fats: "Fette",
    finished: "Fertiges",
    own: "Eigenes",
  },
  components: {
    water: "Wasser",
    fat: "Fett",
    protein: "Eiweiß",
    ash: "Mineralstoffe (Asche)",
    inert: "Unbeteiligtes (Fasern, Stärke …)",
    "higher saccharides": "höhere Saccharide",
  },
  soluteFigures: {
    molarMass: "molare Masse",
    vantHoff: "Van-’t-Hoff-Faktor, ideal",
    sweetness: "Süße, Saccharose = 1",
    solubility20: "Löslichkeit bei 20\u00a0°C",
    eutecticTemperature: "eutektische Temperatur",
    eutecticMassFraction: "eutektischer Massenanteil",
    maxFreezeTemperature: "Tm′, darunter kein Eis mehr dazu",
    maxFreezeSolids: "Trockenmasse bei Tm′",
    glassTransitionDry: "Glasübergang, trocken",
    gordonTaylor: "Gordon-Taylor-k",
  },
  curve: {
    title: "Wie gut die Gefrierkurve bekannt ist",
    fitted: (points, rms, largest) =>
      `An ${points} gedruckte Punkte angepasst: im Mittel (RMS) ${rms} K daneben, höchstens ${largest} K.`,
    estimated: "Geschätzt: ohne gedruckte Gefrierpunkte.",
    checked: (checkedTo, share) =>
      `Geprüft bis ${checkedTo}\u00a0°C; angegebene Unsicherheit ${share} der Erniedrigung.`,
  },

  insert: {
    block: "Einen Block von Zellen einfügen",
    blockAbout:
      "Geschrieben wird ab der ausgewählten Zelle, nur in leere Zellen. Wählen Sie, wohin.",
    blockFilled: "ist nicht leer: Wählen Sie eine andere Zelle",
    title: (what) => `Einfügen: ${what}`,
    open: "Einfügen …",
    openFor: (label) => `${label} einfügen …`,
    name: "Name",
    nameOpen: "Namen einfügen …",
    value: "Wert",
    formula: "Formel",
    cell: "Zelle",
    now: "Jetzt",
    then: "Dann",
    empty: "leer",
    write: "Schreiben",
    replace: (address) => `Inhalt von ${address} ersetzen`,
    done: (address) => `In ${address} geschrieben.`,
    filled: (address) => `${address} ist nicht leer; noch wurde nichts geschrieben.`,
    changed: (address) => `${address} hat sich inzwischen geändert; nichts wurde geschrieben.`,
  },

  bowlTitle: "In der Schüssel",
  keep: "Behalten",
  keptGone: (place) =>
    `Das behaltene Rezept, ${place}, gibt es nicht mehr: Jetzt gilt wieder die Auswahl.`,
  keepAbout: "Dieses Rezept behalten, während Sie sich im Blatt bewegen",
  readAgain: "Neu lesen",
  noRecipe: {
    blank: (place) =>
      `${place} ist leer. Klicken Sie in ein Rezept oder wählen Sie Namen und Mengen aus.`,
    "own ingredients": (place) =>
      `${place} ist ein Bereich eigener Zutaten: die Schüssel nimmt ihn für Rezepte. Klicken Sie in ein Rezept.`,
    "no names": (place) =>
      `In ${place} steht keine Zutat, die der Vorrat oder Ihre eigenen Zutaten kennen.`,
  },
  columnForm: {
    why: {
      "several amounts": (place) =>
        `Mehrere Spalten von ${place} könnten die Mengen sein. Welche ist gemeint?`,
      "no amounts": (place) =>
        `${place} hat Namen, aber keine klare Spalte mit Mengen. Welche ist es?`,
      "several names": (place) =>
        `Mehrere Spalten von ${place} nennen Zutaten. Welche ist gemeint?`,
      "few known": (place) =>
        `Weniger als die Hälfte der Namen in ${place} ist bekannt. Sind das die richtigen Spalten?`,
    },
    names: "Namen stehen in",
    amounts: "Mengen stehen in",
    unit: "Mengen sind",
    unitAsWritten: "wie die Überschrift sagt, sonst Gramm",
    perCent: "% (g je 100 g)",
    same: "Namen und Mengen können nicht am selben Ort stehen.",
    read: "So lesen",
  },
  taken: {
    summary: (rows, names, amounts) =>
      `${plural(rows, "Zutat", "Zutaten")}: Namen ${names}, Mengen ${amounts}`,
    names: "Namen",
    amounts: "Mengen",
    unit: "Einheit",
    unitIs: {
      "%": "Prozent, als g je 100 g genommen",
      mixed: "je Zeile eine eigene, mit RIME.GRAMS in Gramm umgerechnet",
    },
    origins: {
      header: "wie die Überschrift sagt",
      "number format": "wie das Zahlenformat sagt",
      "unit column": "aus der Einheitenspalte",
      assumed: "angenommen: auf dem Blatt steht nichts (nur das Verhältnis zählt)",
      chosen: "wie gewählt",
    },
    own: "Eigene Zutaten",
    noOwn: "keine",
    unknown: "Nicht bekannt",
    leftOut: "Weggelassen",
    undo: "Noch einmal fragen",
  },
  own: {
    label: "Eigene Zutaten",
    none: "keine",
    useSelection: "Ausgewählten Bereich nehmen",
    gone: (from, to) =>
      `In ${from.sheet}!${from.address} stehen keine eigenen Zutaten mehr: ${to === null ? "Jetzt gelten keine" : `Jetzt gelten die in ${to.sheet}!${to.address}`}.`,
  },
  freezingPoint: "Erstes Eis bei",
  bandNote: "± eine Standardunsicherheit",
  bandUnknown: "Unsicherheit nicht bekannt",
  servedAt: "Serviert bei",
  temperatureWrong: (typed, from, to) =>
    `Die Serviertemperatur muss eine Zahl von ${from} bis ${to}\u00a0°C sein, nicht „${typed}“.`,
  cold: {
    caption: "Was beim Servieren und im Gefrierschrank gefroren ist",
    serving: "serviert",
    storage: "gelagert",
    iceOfWater: "Eis, vom Wasser",
    iceOfMix: "Eis, von der Masse",
    unfrozenSolids: "Trockenmasse im Ungefrorenen",
  },
  solids: "Trockenmasse",
  waterActivity: "Wasseraktivität bei 25\u00a0°C, keine Haltbarkeitsfreigabe",
  sweetness: "Süße",
  sweetnessValue: (grams) => `wie ${grams} Saccharose je 100 g`,
  target: {
    label: "Gedacht als",
    none: "nichts gewählt",
    asks: {
      water: (from, to, temperature) =>
        `Verlangt ${from} bis ${to} des Wassers als Eis bei ${temperature}\u00a0°C.`,
      mix: (from, to, temperature) =>
        `Verlangt ${from} bis ${to} der Masse als Eis bei ${temperature}\u00a0°C.`,
    },
  },
  chart: {
    title: {
      water: "Anteil des Wassers, der Eis ist, beim Abkühlen.",
      mix: "Anteil der Masse, der Eis ist, beim Abkühlen.",
    },
    temperatureAxis: "°C",
    iceAxis: "% Eis",
    at: (temperature, share) => `Bei ${temperature}\u00a0°C: ${share}.`,
    gate: (name, from, to, temperature) =>
      `Das Ziel „${name}“ verlangt ${from} bis ${to} bei ${temperature}\u00a0°C.`,
    table: "Die Kurve als Tabelle",
  },
  formulas: {
    open: "Formel ins Blatt setzen …",
    freezingPoint: "Erstes Eis",
    iceOfWater: "Eis, vom Wasser",
    iceOfMix: "Eis, von der Masse",
    sweetness: "Süße",
    check: "Vergleich mit dem Ziel",
  },
  troubleAt: "Ansehen:",
  eater: {
    general: "Was für alles Gefrorene gilt",
    title: "Den Essenden zu sagen",
    allergens: "Allergene:",
    byMaker: (names) => `je nach Hersteller ${names}: Etikett lesen`,
    noAllergens: "Von Natur der Zutaten her keines der wichtigen Allergene.",
    unknown: (items) => `Allergene unbekannt: ${items}. Lesen Sie die Etiketten.`,
    defer: "Spuren lassen sich nicht berechnen. Vorschriften und fachlicher Rat gehen vor.",
  },
  whereFrom: "Woher diese Zahlen kommen",
  bandFrom:
    "± ist eine Standardunsicherheit: Zwei von drei Fällen liegen darin. Eigene Zutaten und Gewichte gelten als genau.",

  aims,
  batch,
  curves,
  help,
  larder,
  notebook,
  readThrough,
  steer,
  welcome,
  why,
};
