import { workedOut, type StrangersBook } from "../strangersBook";
import { answerFor } from "./answerFor";

const nitrogenIce = { Vollmilch: 900, "Sahne 35 %": 600, Zucker: 300, Eigelb: 180 };
const perLitre = { Erdbeeren: 450, Zucker: 190, Wasser: 340, Zitronensaft: 25 };
const mulled = { Rotwein: 400, Orangensaft: 300, Wasser: 300, Zucker: 120 };
const parfait = { "Sahne 35 %": 400, Eigelb: 120, Honig: 130, Mandeln: 80 };
const waterIce = (name: string): Record<string, number> => ({
  [name]: 300,
  Zucker: 160,
  Wasser: 540,
});
const kita = { Bananen: 360, "Naturjoghurt 3,5 %": 300, Kakao: 12 };

const coconut = {
  Kokosmilch: 400,
  Sojadrink: 300,
  Zucker: 140,
  Kakao: 40,
  Erdnuss: 70,
  Johannisbrotkernmehl: 3,
};

const percentOfWater = (mix: Record<string, number>, temperatureC: number): string =>
  String(Math.round(answerFor("ICEFRACTION", mix, 2, temperatureC) * 100));

export const germanSweets: readonly StrangersBook[] = [
  {
    title: "Zitronensorbet Lehrküche",
    sheets: {
      Tabelle1: [
        ["Zitronensorbet", "Wasser", "Zucker", "Zitronensaft", "Summe"],
        ["Gramm", 550, 210, 140, "=SUM(B2:D2)"],
        ["Prozent", "=B2/$E$2*100", "=C2/$E$2*100", "=D2/$E$2*100", "=SUM(B3:D3)"],
        ["für 6 Gruppen (kg)", "=B2*6/1000", "=C2*6/1000", "=D2*6/1000", "=E2*6/1000"],
        [],
        ["Gefrierpunkt", workedOut("=RIME.FREEZINGPOINT(B1:D1,B2:D2)", 1), "°C"],
        ["keine Allergene nach Anhang II"],
      ],
    },
  },
  {
    title: "Stickstoffeis Weihnachtsvorlesung",
    sheets: {
      Eis: [
        ["Weihnachtsvorlesung Chemie – Eis mit flüssigem Stickstoff"],
        ["Zutat", "Menge", "Einheit", "wer bringt mit"],
        ["Vollmilch", 900, "g", "Assistenz"],
        ["Sahne 35 %", 600, "g", "Assistenz"],
        ["Zucker", 300, "g", "steht im Labor? NEIN, neu kaufen"],
        ["Eigelb, pasteurisiert", 180, "g", "Mensa"],
        ["Masse", "=SUM(B3:B6)", "g"],
        ["Flüssigstickstoff", 6, "Liter", "Kryoraum"],
        [],
        ["Beginn des Gefrierens", answerFor("FREEZINGPOINT", nitrogenIce, 1), "°C"],
        [
          "Milch und Ei ansagen. Lüften! Schutzbrille, kein Kontakt mit der Haut. Erst essen, wenn nichts mehr dampft.",
        ],
      ],
    },
  },
  {
    title: "VHS Sorbetkurs",
    sheets: {
      Rezepte: [
        ["Sorbetkurs Herbst, Mengen in g je Tisch", null, null, null, "Allergene"],
        ["Birne", null, null, null, null],
        ["Birnenpüree", 600, null, null, "–"],
        ["Zucker", 130, null, null, null],
        ["Wasser", 180, null, null, null],
        ["Zitronensaft", 20, null, null, null],
        ["fertig", "=SUM(B3:B6)", null, null, null],
        ["Zwetschge-Walnuss"],
        ["Zwetschgen", 500, null, null, "Walnüsse (Schalenfrüchte)"],
        ["Zucker", 150],
        ["Wasser", 220],
        ["Walnüsse, gehackt", 60],
        ["fertig", "=SUM(B9:B12)"],
      ],
      Einkauf: [
        ["5 Tische", "kg", "€/kg", "€"],
        ["Birnen (Püree)", "=5*Rezepte!B3/1000", 3.9, "=B2*C2"],
        ["Zwetschgen", "=5*Rezepte!B9/1000", 3.2, "=B3*C3"],
        ["Zucker", "=5*(Rezepte!B4+Rezepte!B10)/1000", 1.4, "=B4*C4"],
        ["Walnüsse", "=5*Rezepte!B12/1000", 14.5, "=B5*C5"],
        ["Kasse", null, null, "=SUM(D2:D5)"],
        ["Zitronen hat die Küche"],
      ],
    },
  },
  {
    title: "Erdbeersorbet je Liter",
    sheets: {
      "je Liter": [
        ["Erdbeersorbet", "g je Ansatz", "g je kg", "g je Portion (60 g)"],
        ["Erdbeeren", 450, "=B2/$B$6*1000", "=C2*0.06"],
        ["Zucker", 190, "=B3/$B$6*1000", "=C3*0.06"],
        ["Wasser", 340, "=B4/$B$6*1000", "=C4*0.06"],
        ["Zitronensaft", 25, "=B5/$B$6*1000", "=C5*0.06"],
        ["", "=SUM(B2:B5)", "=SUM(C2:C5)", "=SUM(D2:D5)"],
        ["Dichte der Mischung (g/ml)", answerFor("DENSITY", perLitre, 2)],
        ["ein Liter wiegt (g)", "=B7*1000"],
        ["Gefrierpunkt (°C)", answerFor("FREEZINGPOINT", perLitre, 1)],
        ["Erdbeeren: bei Allergie nachfragen, sonst ohne kennzeichnungspflichtige Stoffe"],
      ],
    },
  },
  {
    title: "Haselnusseis Berufsschule Bilanz",
    sheets: {
      Bilanz: [
        ["Bilanz Haselnusseis (Konditoren, 3. Lehrjahr)", null, null, null, null, null],
        ["Rohstoff", "g", "Wasser %", "Fett %", "Wasser g", "Fett g"],
        ["Vollmilch", 560, 88, 3.5, "=B3*C3/100", "=B3*D3/100"],
        ["Schlagsahne 35 %", 120, 59, 35, "=B4*C4/100", "=B4*D4/100"],
        ["Magermilchpulver", 35, 4, 1, "=B5*C5/100", "=B5*D5/100"],
        ["Zucker", 130, 0, 0, "=B6*C6/100", "=B6*D6/100"],
        ["Glucose, wasserfrei", 45, 0, 0, "=B7*C7/100", "=B7*D7/100"],
        ["Haselnussmus", 110, 1, 62, "=B8*C8/100", "=B8*D8/100"],
        ["Summe", "=SUM(B3:B8)", null, null, "=SUM(E3:E8)", "=SUM(F3:F8)"],
        ["in % der Masse", null, null, null, "=E9/B9*100", "=F9/B9*100"],
        ["Soll", null, null, null, "54–60", "10–16"],
        [],
        ["Allergene: Milch, Haselnüsse"],
        ["Gefrierpunkt", workedOut("=RIME.FREEZINGPOINT(A3:A8,B3:B8)", 1), "°C"],
        ["Eis bei −12 °C", workedOut("=RIME.ICEFRACTION(A3:A8,B3:B8,-12)*100", 0), "% des Wassers"],
      ],
    },
  },
  {
    title: "Glühwein-Granita Fortbildung",
    sheets: {
      Granita: [
        ["Glühwein-Granita (nur für Erwachsene, enthält Alkohol)"],
        [],
        ["400 g", "Rotwein"],
        ["300 g", "Orangensaft"],
        ["300 g", "Wasser"],
        ["120 g", "Zucker"],
        ["1 Stange", "Zimt, wieder herausnehmen"],
        ["1120 g", "ergibt das (nur erwärmen, nicht kochen)"],
        [],
        [
          `Friert ab ${String(answerFor("FREEZINGPOINT", mulled, 1))} °C; bei −10 °C sind ${percentOfWater(mulled, -10)} % des Wassers Eis.`,
        ],
        ["Wein: Sulfite"],
      ],
    },
  },
  {
    title: "Honigparfait, zwei Varianten",
    sheets: {
      Parfait: [
        ["Honigparfait (Hauswirtschaft)", null, null, "Honigparfait mit Mandeln", null],
        ["Sahne 35 %", 400, null, "Sahne 35 %", 400],
        ["Eigelb (pasteurisiert)", 120, null, "Eigelb (pasteurisiert)", 120],
        ["Honig", 130, null, "Honig", 130],
        [null, null, null, "Mandeln, geröstet", 80],
        ["Summe in g", "=SUM(B2:B4)", null, "Summe in g", "=SUM(E2:E5)"],
        [
          "friert ab (°C)",
          workedOut("=RIME.FREEZINGPOINT(A2:A4,B2:B4)", 1),
          null,
          "friert ab (°C)",
          answerFor("FREEZINGPOINT", parfait, 1),
        ],
        [],
        ["enthält Milch, Ei", null, null, "enthält Milch, Ei, Mandeln"],
        ["Honig: nicht für Kinder unter einem Jahr!"],
      ],
    },
  },
  {
    title: "Schülerfirma Wassereis",
    sheets: {
      Sorten: [
        ["Schülerfirma „Kalt & Gut“ – Wassereis am Stiel", null, null, "alle Mengen in Gramm"],
        ["Sorte Ananas", null, "Sorte Mango", null, "Sorte Himbeere", null],
        ["Ananas", 300, "Mango", 300, "Himbeeren", 300],
        ["Zucker", 160, "Zucker", 160, "Zucker", 160],
        ["Wasser", 540, "Wasser", 540, "Wasser", 540],
        ["zus.", "=SUM(B3:B5)", "zus.", "=SUM(D3:D5)", "zus.", "=SUM(F3:F5)"],
        [
          "°C",
          answerFor("FREEZINGPOINT", waterIce("Ananas"), 1),
          "°C",
          answerFor("FREEZINGPOINT", waterIce("Mango"), 1),
          "°C",
          answerFor("FREEZINGPOINT", waterIce("Himbeeren"), 1),
        ],
        ["(letzte Zeile: da fängt es an zu frieren)"],
      ],
      Kasse: [
        ["", "Stück", "Preis €", "Einnahmen €"],
        ["Ananas", 42, 0.8, "=B2*C2"],
        ["Mango", 35, 0.8, "=B3*C3"],
        ["Himbeere", 51, 0.8, "=B4*C4"],
        ["Summe", "=SUM(B2:B4)", null, "=SUM(D2:D4)"],
        ["Aushang am Stand: ohne Milch, Ei, Nüsse, Gluten"],
      ],
    },
  },
  {
    title: "Kokos-Kakao-Eis vegan, Kennbuchstaben",
    sheets: {
      Rezept: [
        ["Nr", "Zutat", "g", "Allergen"],
        [1, "Kokosmilch", 400, ""],
        [2, "Sojadrink", 300, "F"],
        [3, "Zucker", 140, ""],
        [4, "Kakao", 40, ""],
        [5, "Erdnüsse, gehackt", 70, "E"],
        [6, "Johannisbrotkernmehl", 3, ""],
        ["", "Gesamt", "=SUM(C2:C7)", "E, F"],
        [],
        ["", "Legende: E = Erdnüsse, F = Soja"],
        ["", "Gefrierpunkt °C", answerFor("FREEZINGPOINT", coconut, 1)],
      ],
    },
  },
  {
    title: "Bananeneis Kita-Nachmittag",
    told: ["unknown-ingredient"],
    sheets: {
      "Bananen-Eis": [
        ["Bananeneis ohne Zuckerzusatz (für ca. 10 Kinder)"],
        ["3 große", "Bananen, gefroren, ohne Schale", "360 g"],
        ["2 Becher", "Naturjoghurt 3,5 %", "300 g"],
        ["2 EL", "Kakao, schwach entölt", "12 g"],
        ["", "zusammen", "672 g"],
        [],
        ["Enthält Milch (Joghurt). Für Emil ohne Joghurt: 300 g Apfelmus nehmen."],
        ["Anfang der Eisbildung: ", "", `${String(answerFor("FREEZINGPOINT", kita, 1))} °C`],
      ],
    },
  },
  {
    title: "Gemessen und berechnet, Milcheis",
    sheets: {
      Vergleich: [
        ["Technikum Milch, Versuch 11", null, null, null, "Milch!"],
        ["Mischung (g)", "M1", "M2", "M3"],
        ["Vollmilch", 700, 650, 600],
        ["Sahne 35 %", 150, 150, 150],
        ["Saccharose", 150, 150, 150],
        ["Glucose, wasserfrei", 0, 50, 100],
        ["Ansatz", "=SUM(B3:B6)", "=SUM(C3:C6)", "=SUM(D3:D6)"],
        [],
        ["Gefrierpunkt (°C), alles", "M1", "M2", "M3"],
        [
          "berechnet (±0.1)",
          workedOut("=RIME.FREEZINGPOINT($A$3:$A$6,B3:B6)", 1),
          workedOut("=RIME.FREEZINGPOINT($A$3:$A$6,C3:C6)", 1),
          workedOut("=RIME.FREEZINGPOINT($A$3:$A$6,D3:D6)", 1),
        ],
        [
          "gemessen 1",
          workedOut("=RIME.FREEZINGPOINT($A$3:$A$6,B3:B6)-0.06", 1),
          workedOut("=RIME.FREEZINGPOINT($A$3:$A$6,C3:C6)+0.08", 1),
          workedOut("=RIME.FREEZINGPOINT($A$3:$A$6,D3:D6)-0.1", 1),
        ],
        [
          "gemessen 2",
          workedOut("=RIME.FREEZINGPOINT($A$3:$A$6,B3:B6)+0.05", 1),
          workedOut("=RIME.FREEZINGPOINT($A$3:$A$6,C3:C6)", 1),
          workedOut("=RIME.FREEZINGPOINT($A$3:$A$6,D3:D6)-0.12", 1),
        ],
        ["Mittel gemessen", "=AVERAGE(B11:B12)", "=AVERAGE(C11:C12)", "=AVERAGE(D11:D12)"],
      ],
    },
  },
];
