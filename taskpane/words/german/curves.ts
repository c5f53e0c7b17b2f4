import type { Words } from "../words";

/** The words of the view with the pictures. */
export const curves: Words["curves"] = {
  outside: "Die Bilder zeigen ein Rezept eines Blattes; öffnen Sie den Bereich in einer Tabelle.",
  picture: "Bild",
  pictures: {
    freezing: "Eisanteil beim Abkühlen",
    state: "Eis, Lösung und Glas",
    held: "Was das Wasser flüssig hält",
    movers: "Was die Antwort am meisten bewegt",
  },
  keepOther: (title: string) => `„${title}“ neben das nächste Rezept stellen`,
  otherIs: (title: string) => `Daneben, gestrichelt: ${title}`,
  dropOther: "Wegnehmen",
  beside: (title: string) => `Die gestrichelte Kurve ist „${title}“.`,
  bandNote: "Der schattierte Rand ist eine Standardunsicherheit.",
  asTable: "Das Bild als Tabelle",
  saveSvg: "Als SVG speichern",
  savePng: "Als PNG speichern",
  insert: "Neben die Auswahl setzen",
  saved: (file: string) => `${file} wurde gespeichert.`,
  placed: "Das Bild steht jetzt neben den ausgewählten Zellen.",
  noPictures:
    "Diese Tabellenkalkulation nimmt keine Bilder an: Speichern Sie es stattdessen als Datei.",
  declined: "Dieses Bild gibt es für dieses Rezept nicht: Eine seiner Funktionen antwortet nicht.",
  temperature: "°C",
  iceOfWater: "Eis, vom Wasser",
  dissolvedShare: "% gelöst",
  freezingLine: "Eis bildet sich",
  glassLine: "Glas",
  served: (temperature: string) => `serviert, ${temperature}\u00a0°C`,
  stored: (temperature: string) => `gelagert, ${temperature}\u00a0°C`,
  weighed: "wie gewogen",
  endOfFreezing: "Ende des Gefrierens",
  stateTitle: "Gelöster Anteil des Flüssigen gegen die Temperatur.",
  stateNote:
    "Das Ende des Gefrierens (Tm′) und die Glaslinie sind bei Zuckern auf etwa ± 5\u00a0°C, bei Sirupen auf ±\u00a010\u00a0°C bekannt; jenseits der gepunkteten Linie fließt nichts.",
  place: "Stelle",
  line: "Linie",
  heldTitle: (temperature: string) =>
    `Bei ${temperature}\u00a0°C flüssig gehaltenes Wasser, je Zutat.`,
  heldNote:
    "Nach der Mischungsregel hält jede Zutat ihren eigenen Teil; das übrige Wasser ist Eis.",
  ice: "Eis",
  water: "Wasser, g",
  shareOfWater: "Anteil am Wasser",
  ingredient: "Zutat",
  quantity: "Antwort",
  quantities: {
    "freezing point": "Erstes Eis",
    "ice of water": "Eis, vom Wasser",
  },
  moversTitle: (quantity: string) =>
    `${quantity}, wenn jede Zutat der Reihe nach ein Zehntel weniger (hohl) oder mehr (gefüllt) ist.`,
  less: "ein Zehntel weniger",
  more: "ein Zehntel mehr",
};
