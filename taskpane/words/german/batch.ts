import type { Words } from "../words";

/** The words of the view about a batch: its size, time, cost, rescue, label and card. */
export const batch: Words["batch"] = {
  outside: "Ein Ansatz wird aus einem Blatt gelesen; öffnen Sie den Bereich in einer Tabelle.",
  size: {
    title: "Größe",
    by: "Es sollen werden",
    grams: "so viele Gramm",
    pieces: "so viele Stücke nach Gewicht",
    moulds: "so viele Formen nach Volumen",
    total: "Insgesamt",
    count: "Stück",
    gramsEach: "Je Stück",
    millilitresEach: "Eine Form fasst",
    overrun: "Eingeschlagene Luft",
    headroom: (percent: string) =>
      `Formen werden zu ${percent} gefüllt: Eis braucht ein Zehntel mehr Platz als Wasser (übliche Praxis).`,
    noDensity:
      "Die Dichte dieser Mischung ist nicht bekannt, Formen lassen sich nicht nach Volumen füllen.",
    result: (grams: string, factor: string) => `${grams} g insgesamt, ${factor}-mal das Rezept.`,
    before: "Rezept, g",
    after: "Ansatz, g",
    insert: "Das umgerechnete Rezept ins Blatt setzen",
    item: "Zutat",
  },
  hours: {
    title: "Stunden bis zum Gefrieren",
    thickness: "Dicke (Durchmesser, wenn rund)",
    air: "Luft im Gefriergerät",
    start: "Die Mischung kommt hinein mit",
    airflow: "Die Kälte kommt durch",
    airflows: {
      still: "ruhende Luft",
      fan: "einen Lüfter",
      blast: "starkes Gebläse",
      brine: "eine kalte Sole",
    },
    shape: "Form",
    shapes: { slab: "Platte oder Riegel", cylinder: "Zylinder", sphere: "Kugel" },
    answer: (hours: string, from: string, to: string) =>
      `Etwa ${hours} h, bis der Kern 3 K wärmer als die Luft ist: zwischen ${from} und ${to} h (±\u00a030\u00a0% des Verfahrens).`,
    household:
      "Ein Haushaltsgerät schafft etwa 5 kg je 100 L in 24 h: Mehr wärmt es auf und dauert länger. Lassen Sie Platz zwischen den Formen.",
  },
  cost: {
    title: "Kosten",
    column: "Die Preise stehen in",
    basis: "Ein Preis gilt für",
    bases: { kg: "1 kg", "100 g": "100 g", g: "1 g", row: "die ganze Zeile" },
    none: "Keine Spalte oder Zeile neben dem Rezept ist mit Preis oder Kosten überschrieben.",
    ask: "Sagen Sie, wofür die Preise gelten.",
    total: (total: string, per100: string) => `${total} für den Ansatz, ${per100} je 100 g.`,
    unpriced: (items: string) => `Ohne Preis und nicht in der Summe: ${items}.`,
    share: "Kosten",
  },
  rescue: {
    title: "Was in der Schüssel ist",
    about:
      "Ändern Sie die Mengen auf das, was wirklich in der Schüssel ist. Herausnehmen lässt sich nichts.",
    inBowl: "In der Schüssel, g",
    restore: (factor: string) =>
      `Um die Verhältnisse des Rezepts wieder zu haben, dazugeben (der Ansatz ist dann ${factor}-mal das Rezept):`,
    right: "Die Schüssel hat die Verhältnisse des Rezepts.",
    one: (point: string) =>
      `Oder eines davon allein, damit es wie das Rezept gefriert (${point}\u00a0°C); Süße und Textur werden dann anders:`,
    add: (grams: string, item: string) => `${grams} g ${item}`,
    noOne: "Keine einzelne Zutat des Rezepts bringt den Gefrierpunkt zurück.",
  },
  compare: {
    title: "Neben einer anderen Fassung",
    keep: (title: string) => `„${title}“ als andere Fassung behalten`,
    select: "Wählen Sie nun das andere Rezept auf dem Blatt.",
    drop: "Loslassen",
    item: "Zutat",
    firstIce: "Erstes Eis, °C",
    iceServed: (temperature: string) => `Eis vom Wasser bei ${temperature}\u00a0°C`,
    sweetness: "Süße, g Saccharose je 100 g",
    solids: "Trockenmasse",
    total: "Insgesamt, g",
    difference: "Unterschied",
  },
  base: {
    title: "Grundmischung darin",
    about: (kept: string) =>
      `Heißt eine Zeile dieses Rezepts „${kept}“, lässt sie sich ausschreiben; die Grundmischung kann auch eine eigene Zutat werden.`,
    keep: (title: string) => `„${title}“ als Grundmischung behalten`,
    none: "Behalten Sie ein Rezept als Grundmischung, und wählen Sie dann das Rezept, das sie verwendet.",
    notUsed: (title: string) => `Keine Zeile dieses Rezepts heißt „${title}“.`,
    writeOut: "Das Rezept mit ausgeschriebener Grundmischung ins Blatt setzen",
    own: "Die Grundmischung als eigene Zutat ins Blatt setzen",
    noOwn:
      "Diese Grundmischung enthält lange Ketten eines Glukosesirups, für die eigene Zutaten keine Spalte haben: Schreiben Sie sie aus.",
  },
  label: {
    title: "Etikettentext",
    ingredients: "Zutaten",
    about:
      "In absteigender Masse, wie gewogen; Allergene hervorgehoben. Das örtliche Lebensmittelrecht und das Etikett jeder Zutat gehen vor.",
    unknown: (items: string) => `Allergene unbekannt: ${items}. Lesen Sie die Etiketten.`,
    copy: "Kopieren",
    copied: "Der Etikettentext wurde kopiert.",
    notCopied: "Er ließ sich nicht kopieren: Markieren und kopieren Sie den Text selbst.",
  },
  card: {
    title: "Karte",
    about:
      "Das Rezept auf einer Seite: Gramm und Haushaltsmaße, was zu erwarten ist, Hinweise, Quellen, Datum.",
    save: "Als Seite zum Drucken speichern",
    sheet: "Auf ein neues Blatt setzen",
    saved: (file: string) => `${file} wurde gespeichert; öffnen und drucken Sie die Datei.`,
    written: (sheet: string) => `Die Karte steht auf dem Blatt „${sheet}“.`,
    sheetName: (title: string) => `Karte ${title}`,
    grams: "Gramm",
    household: "Haushaltsmaß",
    units: { cup: "Cup", tbsp: "EL", tsp: "TL" },
    expected: "Was zu erwarten ist",
    firstIce: "Erstes Eis",
    ice: (temperature: string) => `Eis vom Wasser bei ${temperature} °C`,
    texture: (temperature: string) => `Festigkeit bei ${temperature} °C`,
    germs: "Gefrieren tötet keine Keime: Was vorher unsicher war, bleibt unsicher.",
    assumptions: "Vorausgesetzt",
    assumed: [
      "Mengen sind Gramm, wie gewogen; Haushaltsmaße sind US-amerikanische, auf ein Viertel gerundet.",
      "Die Zutaten sind, wie der Katalog sie führt, mit ihrer Streuung; ± ist eine Standardunsicherheit.",
      "Verdunstung beim Erhitzen zählt nur, wenn „water lost“ unter den Zutaten steht.",
    ],
    cautions: "Hinweise",
    sources: "Quellen",
    made: (date: string) => `Mit Rimeline erstellt am ${date}.`,
  },
};
