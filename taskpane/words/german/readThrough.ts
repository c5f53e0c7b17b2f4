import type { Words } from "../words";

const plural = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

/** The words of the view that reads the workbook through. */
export const readThrough: Words["readThrough"] = {
  about:
    "Liest jedes Blatt und nennt, was eine Antwort falsch machen würde. Lesen ändert nichts; was geschrieben wird, ist vorher zu sehen.",
  start: "Arbeitsmappe durchsehen",
  again: "Noch einmal durchsehen",
  cancel: "Anhalten",
  cancelled: "Angehalten; nichts wurde geändert.",
  starts: "Die Arbeitsmappe wird gelesen.",
  sheets: (done, total) => `Blatt ${done + 1} von ${total} …`,
  checks: "Prüfung läuft …",
  checking: (done, total) => `Prüfung läuft, Schritt ${done} von ${total} …`,
  result: (count) => (count === 0 ? "Nichts gefunden." : plural(count, "Fund", "Funde") + "."),
  values: {
    automatic:
      "Formeln zählen mit den Werten, die die Tabelle zeigt; keine wurde ein zweites Mal gerechnet.",
    manual:
      "Die Mappe rechnet nur auf Befehl: ihre Werte können älter sein als ihre Mengen. F9 drücken, dann noch einmal durchsehen.",
    "automatic except tables":
      "Die Mappe rechnet ihre Datentabellen nicht von selbst: deren Werte können alt sein. F9 drücken, dann noch einmal durchsehen.",
  },
  recipes: (count) => `Was als Rezept gelesen wurde (${count})`,
  noRecipes: "Kein Rezept gefunden: ein Block braucht eine Spalte mit Namen und eine mit Mengen.",
  severityNames: { error: "falsch", warning: "zweifelhaft", note: "gut zu wissen" },
  severities: {
    error: (count) => `Falsch (${count})`,
    warning: (count) => `Zweifelhaft (${count})`,
    note: (count) => `Gut zu wissen (${count})`,
  },
  filter: "Zeigen",
  allHidden: "Alle Funde sind ausgeblendet: eine Art wieder einschalten.",
  more: (count) => `Mehr zeigen (noch ${count})`,
  goTo: (place) => `Zu ${place} gehen`,
  effect: (quantity, from, to) => `${quantity}: ${from} → ${to}`,
  noEffect: "Ändert keine Antwort.",
  fix: (fix) => `Was hilft: ${fix}`,

  mend: {
    open: "Beheben …",
    openFor: (place) => `Beheben: ${place}`,
    title: (place) => `${place} beheben`,
    about: "Diese Zellen würden geschrieben, jede nur, wenn sie noch enthält, was hier steht:",
    cell: "Zelle",
    now: "Jetzt",
    then: "Dann",
    blank: "leer",
    format: "Zahlenformat: Standard statt Text",
    write: "Schreiben",
    written: (cells) => `Geschrieben und noch einmal gelesen: ${cells}.`,
    left: (cells) =>
      `Nicht angerührt, da inzwischen geändert oder von der Zelle nicht angenommen: ${cells}.`,
    undo: "Alten Inhalt zurückschreiben",
    undone: (cells) => `Zurückgeschrieben: ${cells}.`,
    hostUndo: "Auch das Rückgängig der Tabelle nimmt es zurück.",
    stale: "Seit dieser Durchsicht wurden Zellen geschrieben: noch einmal durchsehen.",
  },

  accept: {
    open: "Hinnehmen …",
    openFor: (place) => `Hinnehmen: ${place}`,
    title: (place) => `Den Fund in ${place} hinnehmen`,
    reason: "Warum es so bleiben darf",
    empty: "Bitte einen Grund angeben: er steht in späteren Berichten.",
    accept: "Hinnehmen",
    done: "Hingenommen.",
    list: (count) => `Hingenommen (${count})`,
    because: (reason) => `Hingenommen: ${reason}`,
    withdraw: "Wieder zählen",
    withdrawFor: (place) => `Wieder zählen: ${place}`,
    withdrawn: "Er zählt wieder.",
    stale: (reason, why) => `Einmal hingenommen („${reason}“). ${why}`,
    forget: "Vergessen",
  },
  acceptanceSheet: {
    name: "Hingenommene Funde",
    headers: ["Kennzeichen", "Warum es so bleiben darf", "Ort", "Fund", "Datum"],
    about: "Was hingenommen wurde, steht noch nicht in der Mappe; sie bekäme ein Blatt dafür.",
    aboutUpdate: "Was hingenommen wurde, weicht von dem ab, was in der Mappe steht.",
  },
  correct: {
    open: "Anders lesen …",
    openFor: (place) => `Anders lesen: ${place}`,
    title: (place) => `Wie ${place} zu lesen ist`,
    missed: "Ein Rezept fehlt …",
    missedTitle: "Wo ein Rezept steht",
    place: "Zellen samt Köpfen, wie Blatt!A1:C9",
    selection: "Die gewählten Zellen nehmen",
    recipe: "Was dort steht",
    kinds: {
      down: "Rezept, Namen in einer Spalte",
      across: "Rezepte, Namen in einer Zeile",
      none: "kein Rezept",
    },
    names: { down: "Spalte der Namen (A)", across: "Zeile der Namen (1)" },
    amounts: { down: "Spalten der Mengen (B oder B, D:F)", across: "Zeilen der Mengen (2:9)" },
    unit: "Einheit der Mengen",
    asWritten: "wie auf dem Blatt",
    blank: "Was leer bleibt, wird gesucht.",
    read: "So lesen",
    said: (count) => `Was zu Rezepten gesagt wurde (${count})`,
    takeBack: "Zurücknehmen",
    takeBackFor: (place) => `Zurücknehmen: ${place}`,
  },
  correctionSheet: {
    name: "Was ein Rezept ist",
    headers: ["Blatt", "Zellen", "Was dort steht", "Namen", "Mengen", "Einheit", "Erste Zeile"],
    about:
      "Was zu Rezepten gesagt wurde, steht noch nicht in der Mappe; sie bekäme ein Blatt dafür.",
    aboutUpdate: "Was zu Rezepten gesagt wurde, weicht von dem ab, was in der Mappe steht.",
  },
  keep: {
    add: "In der Mappe behalten",
    update: (sheet) => `„${sheet}“ auf den Stand bringen`,
    added: (sheet) => `Auf dem neuen Blatt „${sheet}“ behalten; die nächste Durchsicht kennt es.`,
    updated: (sheet) => `„${sheet}“ ist auf dem Stand.`,
    changed: (sheet) =>
      `„${sheet}“ wurde inzwischen geändert; nichts wurde geschrieben: noch einmal versuchen.`,
    notOurs: (sheet) =>
      `Auf „${sheet}“ steht nicht mehr, was dort behalten wurde; nichts wurde geschrieben: noch einmal durchsehen.`,
  },

  reportSheet: {
    name: "Durchsicht",
    add: "Bericht auf neuem Blatt",
    added: (sheet) => `Auf das neue Blatt „${sheet}“ geschrieben.`,
    title: (date) => `Durchsicht vom ${date}`,
    summary: ({ sheets, recipes, errors, warnings, notes, accepted }) =>
      `${plural(sheets, "Blatt", "Blätter")}, ${plural(recipes, "Rezept", "Rezepte")}: ${errors} falsch, ${warnings} zweifelhaft, ${notes} gut zu wissen, ${accepted} hingenommen.`,
    findingHeaders: [
      ...["Art", "Blatt", "Zelle", "Fund", "Was es ändert", "Von", "Auf", "Einheit"],
      ...["Was hilft", "Hingenommen, da"],
    ],
    recipeHeaders: ["Blatt", "Zellen", "Rezepte", "Was wofür gehalten wurde"],
    nothingChanged: "Die Durchsicht selbst hat in der Mappe nichts geändert.",
  },
  page: {
    save: "Als Seite sichern",
    workbook: "the open workbook", // the page is English
    saved: (file) => `Als ${file} gesichert: zum Drucken im Browser öffnen.`,
  },
};
