import { workedOut, type StrangersBook } from "../strangersBook";
import { answerFor } from "./answerFor";

const polyol = { Himbeeren: 450, Wasser: 350, Xylit: 110, Erythrit: 60 };

const vodka = (grams: number): Record<string, number> => ({
  Wasser: 500,
  Zucker: 160,
  Zitronensaft: 120,
  "Wodka 40 %": grams,
});
const vodkaRow = (letter: string, grams: number, row: number): (string | number)[] => [
  letter,
  500,
  160,
  120,
  grams,
  `=SUM(B${String(row)}:E${String(row)})`,
  answerFor("FREEZINGPOINT", vodka(grams), 1),
  Math.round(answerFor("ICEFRACTION", vodka(grams), 2, -18) * 100),
];
const chocolate = {
  Vollmilch: 1200,
  "Sahne 35 %": 400,
  Magermilchpulver: 70,
  Zucker: 280,
  "Glucose, wasserfrei": 90,
  Kakao: 90,
  "Zartbitterschokolade (eingeschmolzen)": 160,
  Eigelb: 100,
  Salz: 2,
  Johannisbrotkernmehl: 4,
};
const sherbet = { Orangensaft: 600, Zucker: 130, Vollmilch: 250, Zitronensaft: 20 };
const kefir = {
  "Naturjoghurt 3,5 %": 700,
  Honig: 120,
  Zucker: 40,
  Pistazien: 50,
  Zitronensaft: 20,
};

export const germanCourses: readonly StrangersBook[] = [
  {
    title: "Himbeereis mit Zuckeralkoholen, Diätschule",
    sheets: {
      Rezeptur: [
        ["Unterricht Diätassistenz: Himbeersorbet ohne Zucker", "g", "% vom Ganzen"],
        ["Himbeeren", 450, "=B2/B$6*100"],
        ["Wasser", 350, "=B3/B$6*100"],
        ["Xylit", 110, "=B4/B$6*100"],
        ["Erythrit", 60, "=B5/B$6*100"],
        ["Masse gesamt", "=SUM(B2:B5)", "=SUM(C2:C5)"],
        [],
        ["Gefrierpunkt in °C", answerFor("FREEZINGPOINT", polyol, 1)],
        ["kann bei übermäßigem Verzehr abführend wirken; Xylit ist für Hunde giftig"],
        ["Allergene: keine"],
      ],
    },
  },
  {
    title: "Übungsblatt Rezeptrechnen",
    sheets: {
      Übung: [
        ["Rezeptrechnen Eis, Klasse K2b – ausgefülltes Lehrerblatt"],
        ["Ein Mangosorbet besteht aus 52 % Mango, 16 % Zucker, 30 % Wasser und 2 % Limettensaft."],
        ["1. Wie viel Gramm sind das für 1800 g?"],
        ["Mango", 52, "%", "=B4*18", "g"],
        ["Zucker", 16, "%", "=B5*18", "g"],
        ["Wasser", 30, "%", "=B6*18", "g"],
        ["Limettensaft", 2, "%", "=B7*18", "g"],
        ["Probe", "=SUM(B4:B7)", "%", "=SUM(D4:D7)", "g"],
        ["2. Wie viele Kugeln zu 45 g?", null, null, "=D8/45", "Kugeln"],
        ["3. Materialkosten bei 2.80 € je kg?", null, null, "=2.8*D8/1000", "€"],
        [
          "4. Gefrierpunkt laut Programm?",
          null,
          null,
          workedOut("=RIME.FREEZINGPOINT(A4:A7,D4:D7)", 1),
          "°C",
        ],
        ["5. Welche Allergene müssen auf das Schild?", null, null, "keine"],
      ],
    },
  },
  {
    title: "Stufenversuch Wodka-Zitrone",
    sheets: {
      Stufen: [
        ["Stufenversuch Zitrone-Wodka (Barkurs, Teilnahme ab 18, alkoholhaltig)"],
        ["Angaben in g, Eisanteil in % des Wassers bei −18 °C"],
        [],
        [
          "Stufe",
          "Wasser",
          "Zucker",
          "Zitronensaft",
          "Wodka 40 % vol",
          "gesamt",
          "Gefrierpunkt °C",
          "Eisanteil",
        ],
        vodkaRow("0", 0, 5),
        vodkaRow("I", 30, 6),
        vodkaRow("II", 60, 7),
        vodkaRow("III", 90, 8),
        [],
        ["Ergebnis: 0 hart, I gut, II cremig, III zu weich für den Stiel, im Glas prima"],
      ],
    },
  },
  {
    title: "Schokoladeneis Tag der offenen Tür",
    told: ["unknown-ingredient"],
    sheets: {
      Zutaten: [
        ["Schokoladeneis, eine Maschinenfüllung"],
        [null, null, null, "Vorrat", "Rest", "Preis"],
        ["Pos.", "Rohstoff", "g", "g", "g", "€ je kg", "€"],
        [1, "Vollmilch", 1200, 4000, "=D4-C4", 1.2, "=C4*F4/1000"],
        [2, "Sahne 35 %", 400, 1000, "=D5-C5", 5.4, "=C5*F5/1000"],
        [3, "Magermilchpulver", 70, 500, "=D6-C6", 9, "=C6*F6/1000"],
        [4, "Zucker", 280, 2000, "=D7-C7", 1.4, "=C7*F7/1000"],
        [5, "Glucose, wasserfrei", 90, 1000, "=D8-C8", 4.8, "=C8*F8/1000"],
        [6, "Kakao", 90, 250, "=D9-C9", 12, "=C9*F9/1000"],
        [7, "Dunkle Schokolade, schmelzen", 160, 400, "=D10-C10", 11.5, "=C10*F10/1000"],
        [8, "Eigelb, pasteurisiert", 100, 200, "=D11-C11", 8.9, "=C11*F11/1000"],
        [9, "Salz", 2, 500, "=D12-C12", 0.8, "=C12*F12/1000"],
        [10, "Johannisbrotkernmehl", 4, 100, "=D13-C13", 38, "=C13*F13/1000"],
        [null, "Füllung", "=SUM(C4:C13)", null, null, null, "=SUM(G4:G13)"],
        [],
        [null, "je Kugel (50 g) in Cent", null, null, null, null, "=G14/C14*50*100"],
        [null, "Gefrierpunkt in °C", answerFor("FREEZINGPOINT", chocolate, 1)],
        [null, "Wasser in g", answerFor("COMPONENT", chocolate, 0, "water")],
        [null, "Deklaration: Milch, Ei, Soja (Lecithin in der Schokolade)"],
      ],
      Dienst: [
        ["Uhrzeit", "Ausgabe", "Kasse", "Vitrine °C"],
        ["10–12", "Yusuf", "Clara", -13],
        ["12–14", "Hanna", "Leo", -12.5],
        ["14–16", "Pia", "Yusuf", -12],
      ],
    },
  },
  {
    title: "Orangen-Milch-Sorbet Kursmappe",
    sheets: {
      Rezept: [
        ["Orange mit Milch", null],
        [null, "Gewicht"],
        ["Orangensaft", "600 g"],
        ["Zucker", "130 g"],
        ["Vollmilch", "250 g"],
        ["Zitronensaft", "20 g"],
        ["gibt", "1000 g"],
      ],
      Kurve: [
        ["Temperatur", -4, -8, -12, -18, "°C"],
        [
          "Eis",
          ...[-4, -8, -12, -18].map((t) =>
            Math.round(answerFor("ICEFRACTION", sherbet, 2, t) * 100),
          ),
          "% vom Wasser",
        ],
        ["Gefrierbeginn", answerFor("FREEZINGPOINT", sherbet, 1), null, null, null, "°C"],
      ],
      Hinweise: [
        ["1", "Milch zuletzt zugeben, sonst flockt sie."],
        ["2", "Enthält Milch und Milchzucker."],
        ["3", "Rührschüssel vorher ins Gefrierfach (−18 °C)."],
        ["4", "Ablauf: 18:00 Theorie, 18:40 Ansatz, 19:30 Maschine, 20:15 Verkostung"],
      ],
    },
  },
  {
    title: "Joghurteis mit Honig und Pistazien, Elternabend",
    sheets: {
      Blatt1: [
        ["Joghurteis", "Honig-Pistazie", null, "Bitte beachten"],
        [700, "g Naturjoghurt 3,5 %", null, "Milch"],
        [120, "g Honig", null, "Honig erst ab dem 1. Geburtstag"],
        [40, "g Zucker", null, null],
        [50, "g Pistazien, gehackt", null, "Schalenfrüchte (Pistazien)"],
        [20, "g Zitronensaft", null, null],
        ["=SUM(A2:A6)", "g zusammen"],
        [],
        [answerFor("FREEZINGPOINT", kefir, 1), "°C Gefrierpunkt der Masse"],
        [answerFor("COMPONENT", kefir, 0, "water"), "g Wasser darin"],
        ["=A7/62", "Becher zu 62 g"],
      ],
    },
  },
  {
    title: "Traubenzucker oder Zucker, Wahlpflicht Chemie",
    sheets: {
      Vergleich: [
        [
          "Lösung",
          "Stoff",
          "Masse Stoff (g)",
          "Masse Wasser (g)",
          "M (g/mol)",
          "mol/kg",
          "ΔT (K)",
          "gemessen (K)",
        ],
        ["L1", "Glucose, wasserfrei", 9, 200, 180.16, "=C2/E2/D2*1000", "=F2*1.86", 0.5],
        ["L2", "Glucose, wasserfrei", 18, 200, 180.16, "=C3/E3/D3*1000", "=F3*1.86", 0.9],
        ["L3", "Saccharose", 17.1, 200, 342.3, "=C4/E4/D4*1000", "=F4*1.86", 0.5],
        ["L4", "Saccharose", 34.2, 200, 342.3, "=C5/E5/D5*1000", "=F5*1.86", 1],
        [],
        [
          "L1 und L3 frieren gleich, obwohl in L3 fast doppelt so viel Zucker ist: es zählen die Teilchen.",
        ],
        ["Kf(Wasser) 1.86 K·kg/mol. Thermometer zeigt nur Zehntel."],
      ],
    },
  },
];
