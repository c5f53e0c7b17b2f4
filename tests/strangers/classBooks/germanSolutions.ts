import { workedOut, type StrangersBook } from "../strangersBook";
import { answerFor } from "./answerFor";

const spiritPoint = (ethanol: number): number =>
  answerFor("FREEZINGPOINT", { water: 100 - ethanol, ethanol }, 1);
const seaPoint = (salt: number): number =>
  answerFor("FREEZINGPOINT", { water: 1000 - salt, NaCl: salt }, 1);

export const germanSolutions: readonly StrangersBook[] = [
  {
    title: "Protokoll Kryoskopie, Gruppe 4",
    sheets: {
      Protokoll: [
        ["Praktikum PC I, Versuch 6: Kryoskopie", null, null, "Gruppe 4", null, "12.11."],
        ["Lösungsmittel: Wasser, Kf = 1.86 K·kg/mol"],
        [],
        ["Einwaage Wasser", 50.12, "g"],
        ["Einwaage Harnstoff", 0.752, "g"],
        ["Molmasse Harnstoff", 60.06, "g/mol"],
        ["Molalität", "=B5/B6/B4*1000", "mol/kg"],
        ["ΔT berechnet", "=1.86*B7", "K"],
        [],
        ["Messung Nr.", 1, 2, 3, 4, "Mittel"],
        ["Gefrierpunkt Wasser (°C)", 0.02, 0.01, 0.02, 0.02, "=AVERAGE(B11:E11)"],
        ["Gefrierpunkt Lösung (°C)", -0.44, -0.45, -0.44, -0.46, "=AVERAGE(B12:E12)"],
        ["Differenz (K)", "=B11-B12", "=C11-C12", "=D11-D12", "=E11-E12", "=F11-F12"],
        [],
        ["Abweichung vom berechneten Wert in Prozent", null, null, null, null, "=(F13-B8)/B8*100"],
      ],
    },
  },
  {
    title: "Verdünnungsreihe Kochsalz",
    sheets: {
      Tabelle1: [
        ["Verdünnungsreihe NaCl für die Leitfähigkeit und den Gefrierpunkt (alle Massen in g)"],
        [],
        ["Glas", "NaCl", "Wasser", "Lösung", "Massen-%", "mol/kg", "ΔT ideal (i=2), K", "bemerkt"],
        [
          1,
          11.69,
          400,
          "=B4+C4",
          "=B4/D4*100",
          "=B4/58.44/C4*1000",
          "=2*1.86*F4",
          "geht schnell in Lösung",
        ],
        [2, 5.84, 400, "=B5+C5", "=B5/D5*100", "=B5/58.44/C5*1000", "=2*1.86*F5", null],
        [3, 2.92, 400, "=B6+C6", "=B6/D6*100", "=B6/58.44/C6*1000", "=2*1.86*F6", null],
        [4, 1.46, 400, "=B7+C7", "=B7/D7*100", "=B7/58.44/C7*1000", "=2*1.86*F7", "Waage schwankt"],
        [],
        ["gesamt", "=SUM(B4:B7)", "=SUM(C4:C7)", "=SUM(D4:D7)"],
      ],
    },
  },
  {
    title: "Arbeitsblatt Gefrierpunktserniedrigung mit Lösungen",
    sheets: {
      Aufgaben: [
        ["Arbeitsblatt 7 (Klasse 10c): Warum streut man Salz?"],
        ["Name: ______________________"],
        [],
        [
          "a)",
          "Löse 17.1 g Haushaltszucker (M = 342.3 g/mol) in 250 g Wasser. Wie viel Mol je Kilogramm Wasser sind das?",
        ],
        ["b)", "Um wie viel Grad sinkt der Gefrierpunkt? (1.86 K je mol/kg)"],
        ["c)", "Wie viel Salz (M = 58.44 g/mol, zwei Teilchen) braucht es für dieselbe Wirkung?"],
        ["d)", "Bei welcher Temperatur beginnt die Zuckerlösung zu frieren?"],
      ],
      Lösungen: [
        ["nicht austeilen!"],
        ["a)", workedOut("=17.1/342.3/0.25", 2), "mol/kg"],
        ["b)", workedOut("=1.86*17.1/342.3/0.25", 2), "K"],
        ["c)", workedOut("=17.1/342.3/2*58.44", 2), "g"],
        ["d)", workedOut("=-1.86*17.1/342.3/0.25", 2), "°C"],
      ],
    },
  },
  {
    title: "Abkühlkurve Zuckerwasser",
    sheets: {
      Messwerte: [
        ["Abkühlkurve, 34.2 g Zucker in 200 g Wasser, Kältebad −12 °C"],
        ["t in min", 0, 1, 2, 3, 4, 5, 6, 7, 8, 9],
        ["T in °C", 20.3, 12.8, 7.1, 3.0, 0.2, -1.6, -1.0, -1.0, -1.1, -1.1],
        [],
        ["abgelesener Erstarrungspunkt", null, null, -1.0, "°C"],
        ["gerechnet (0.5 mol/kg · 1.86)", null, null, workedOut("=-1.86*34.2/342.3/0.2", 2), "°C"],
        ["Unterkühlung", null, null, "=D5-MIN(B3:K3)", "K"],
      ],
    },
  },
  {
    title: "Schülergruppen Glycerin",
    sheets: {
      "8b": [
        ["Gruppenergebnisse 8b, Glycerin in Wasser"],
        [],
        [
          "Gruppe",
          "Glycerin [g]",
          "Wasser [g]",
          "b [mol/kg]",
          "erwartet [°C]",
          "gemessen [°C]",
          "Punkte",
        ],
        ["Mia, Jonas", 4.6, 100, "=B4/92.09/C4*1000", "=-1.86*D4", -0.9, 5],
        ["Elif, Tom", 4.6, 100, "=B5/92.09/C5*1000", "=-1.86*D5", -1.0, 5],
        ["Nele, Amir", 9.2, 100, "=B6/92.09/C6*1000", "=-1.86*D6", -1.8, 4],
        ["Lea, Finn", 9.2, 100, "=B7/92.09/C7*1000", "=-1.86*D7", -1.9, 5],
        [
          "Klasse (Mittel)",
          "=AVERAGE(B4:B7)",
          "=AVERAGE(C4:C7)",
          "=AVERAGE(D4:D7)",
          "=AVERAGE(E4:E7)",
          "=AVERAGE(F4:F7)",
          "=AVERAGE(G4:G7)",
        ],
      ],
    },
  },
  {
    title: "Kältemischungen Vorbereitung",
    sheets: {
      Vorbereitung: [
        ["Eis-Salz-Mischungen für Montag, 3. Stunde", "", "", "Eis aus der Mensa holen"],
        ["", "Eis", "Kochsalz", "Verhältnis", "erreicht"],
        ["Schale links", "600 g", "100 g", "6 : 1", "−10 °C"],
        ["Schale Mitte", "600 g", "150 g", "4 : 1", "−14 °C"],
        ["Schale rechts", "600 g", "200 g", "3 : 1", "−20 °C"],
        ["tiefer als −21 °C geht es mit Kochsalz nicht"],
        ["Schutzbrille, Handschuhe; Reagenzgläser mit Leitungswasser zur Hälfte füllen"],
      ],
    },
  },
  {
    title: "Molmasse aus Gefrierpunkt",
    sheets: {
      Auswertung: [
        ["Bestimmung der Molmasse, Studiengang Lebensmitteltechnik, 2. Semester"],
        ["M = Kf · m(Stoff) / (ΔT · m(Wasser))", null, null, "Kf =", 1.86, "K kg/mol"],
        [],
        ["Stoff", "A", "B", "C"],
        ["m(Stoff) in g", 3.6, 6.85, 1.83],
        ["m(Wasser) in g", 80, 80, 80],
        ["ΔT in K", 0.46, 0.47, 0.47],
        ["M in g/mol", "=$E$2*B5/(B7*B6/1000)", "=$E$2*C5/(C7*C6/1000)", "=$E$2*D5/(D7*D6/1000)"],
        ["vermutlich", "Fructose", "Saccharose", "Glycerin"],
        ["Literaturwert in g/mol", 180.16, 342.3, 92.09],
      ],
    },
  },
  {
    title: "Ethanol Wasser Technikum",
    sheets: {
      Ethanol: [
        ["Ethanol/Wasser als Kühlsole (technisch, vergällt – nicht trinken)"],
        ["Ansatz je 100 g Mischung"],
        ["Ethanol g", "Wasser g", "Eisbeginn °C"],
        [5, 95, spiritPoint(5)],
        [10, 90, spiritPoint(10)],
        [15, 85, spiritPoint(15)],
        [20, 80, spiritPoint(20)],
        [25, 75, spiritPoint(25)],
        ["Flammpunkt beachten! Kanister nur halb füllen."],
      ],
    },
  },
  {
    title: "Meerwasser Projektwoche",
    sheets: {
      Meer: [
        ["Projektwoche Meer: wann friert welches Wasser? (Salz als NaCl gerechnet, je 1 kg)"],
        [],
        ["Gewässer", "Salz g", "Süßwasser g", "zusammen g", "friert bei °C"],
        ["Ostsee innen", 5, "=D4-B4", 1000, seaPoint(5)],
        ["Ostsee Kiel", 15, "=D5-B5", 1000, seaPoint(15)],
        ["Nordsee", 32, "=D6-B6", 1000, seaPoint(32)],
        ["Mittelmeer", 38, "=D7-B7", 1000, seaPoint(38)],
        [],
        ["echtes Meersalz wirkt fast gleich"],
      ],
    },
  },
  {
    title: "Laborbuch Zuckerlösungen Brix",
    sheets: {
      Ansatz: [
        ["Datum", "Ansatz", "Saccharose", "Wasser", "Summe", "Soll °Bx", "Ist °Bx", "Kürzel"],
        ["", "", "g", "g", "g", "", "", ""],
        ["03.02.", "Z-10", 50, 450, "=C3+D3", "=C3/E3*100", 10.1, "kw"],
        ["03.02.", "Z-20", 100, 400, "=C4+D4", "=C4/E4*100", 19.9, "kw"],
        ["04.02.", "Z-30", 150, 350, "=C5+D5", "=C5/E5*100", 30, "ts"],
        ["04.02.", "Z-40", 200, 300, "=C6+D6", "=C6/E6*100", 40.1, "ts"],
        ["Verbrauch", "", "=SUM(C3:C6)", "=SUM(D3:D6)", "=SUM(E3:E6)"],
        [],
        [
          "Gefrierpunkt Z-20 (Kryoskop)",
          null,
          workedOut("=RIME.FREEZINGPOINT(C1:D1,C4:D4)", 2),
          "°C",
        ],
        [
          "Gefrierpunkt Z-30 (Kryoskop)",
          null,
          workedOut("=RIME.FREEZINGPOINT(C1:D1,C5:D5)", 2),
          "°C",
        ],
      ],
    },
  },
];
