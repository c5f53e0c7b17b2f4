import { workedOut, type StrangersBook } from "../strangersBook";
import { answersOf } from "./answersOf";

const erdbeer = answersOf({
  strawberry: 400,
  "cream 35 % fat": 200,
  sugar: 110,
  "lemon juice": 15,
});
const nuss = answersOf({
  "whole milk": 500,
  "cream 35 % fat": 150,
  sugar: 120,
  "hazelnut paste": 80,
  "skim milk powder": 25,
});
const apfel = answersOf({ "apple puree": 350, sugar: 90, water: 220, "lemon juice": 25 });

/** Home cooks, in German. */
export const hausgemacht: readonly StrangersBook[] = [
  {
    title: "Erdbeereis wie bei Oma",
    sheets: {
      Tabelle1: [
        ["Erdbeereis (1 Blech)"],
        ["Zutat", "Menge in g", "Bemerkung"],
        ["Erdbeeren", 400, "püriert, durchs Sieb"],
        ["Konditorsahne 35 %", 200, "halbsteif"],
        ["Zucker", 110],
        ["Zitronensaft", 15, "1/2 Zitrone"],
        ["Summe", "=SUM(B3:B6)"],
        [],
        ["Gefrierpunkt:", `${erdbeer.freezing()} °C`],
        ["Allergene: Milch (Sahne)"],
      ],
    },
  },
  {
    title: "Zitronensorbet quer",
    sheets: {
      Sorbet: [
        ["Zitronensorbet", "Wasser", "Zucker", "Dextrose-Monohydrat", "Zitronensaft", "gesamt"],
        ["Gramm", 450, 140, 40, 170, "=SUM(B2:E2)"],
        ["Prozent", "=B2/$F$2*100", "=C2/$F$2*100", "=D2/$F$2*100", "=E2/$F$2*100", "=SUM(B3:E3)"],
        ["für 2 kg (g)", "=B3*20", "=C3*20", "=D3*20", "=E3*20", "=SUM(B4:E4)"],
        [],
        ["erstarrt ab", workedOut("=RIME.FREEZINGPOINT(B1:E1,B2:E2)", 1), "°C"],
        [
          "Eis bei -12 °C",
          workedOut("=RIME.ICEFRACTION(B1:E1,B2:E2,-12)", 2),
          "(Anteil des Wassers)",
        ],
      ],
    },
  },
  {
    title: "Haselnusseis mit Anteilen",
    sheets: {
      Haselnuss: [
        ["Haselnusseis für die Eismaschine 1 l"],
        [null, "g", "Wasser g", "Fett g"],
        [
          "Vollmilch",
          500,
          answersOf({ "whole milk": 500 }).grams("water", 1),
          answersOf({ "whole milk": 500 }).grams("fat", 1),
        ],
        [
          "Sahne 35 %",
          150,
          answersOf({ "cream 35 % fat": 150 }).grams("water", 1),
          answersOf({ "cream 35 % fat": 150 }).grams("fat", 1),
        ],
        ["Zucker", 120, 0, 0],
        [
          "Haselnussmus",
          80,
          answersOf({ "hazelnut paste": 80 }).grams("water", 1),
          answersOf({ "hazelnut paste": 80 }).grams("fat", 1),
        ],
        [
          "Magermilchpulver",
          25,
          answersOf({ "skim milk powder": 25 }).grams("water", 1),
          answersOf({ "skim milk powder": 25 }).grams("fat", 1),
        ],
        ["zusammen", "=SUM(B3:B7)", "=SUM(C3:C7)", "=SUM(D3:D7)"],
        ["in % der Masse", null, "=C8/B8*100", "=D8/B8*100"],
        [],
        ["Gefrierpunkt in °C", nuss.freezing()],
        ["gefrorenes Wasser bei -14 °C in %", nuss.icePercent(-14)],
        [],
        ["enthält Milch und Schalenfrüchte (Haselnuss)"],
      ],
    },
  },
  {
    title: "Honig-Joghurt-Eis am Stiel",
    sheets: {
      "Eis am Stiel": [
        ["8 Stück", "g"],
        ["Naturjoghurt 3,5 %", 420],
        ["Honig", 70],
        ["Heidelbeeren", 120],
        ["Zucker", 30],
        ["alles", "=SUM(B2:B5)"],
        ["pro Stück", "=B6/8"],
        [],
        ["fängt an zu frieren (°C)", workedOut("=RIME.FREEZINGPOINT(A2:A5,B2:B5)", 1)],
        [],
        ["! Honig: nichts für Kinder unter 1 Jahr (Mia erst ab Mai)"],
        ["! Milch"],
      ],
    },
  },
  {
    title: "Apfelsorbet mit Messwerten",
    sheets: {
      Apfel: [
        ["Apfelsorbet 12.10.", null, null, "Messung", "Zeit min", "Temperatur °C"],
        ["Apfelmark", 350, "g", null, 0, 8.2],
        ["Zucker", 90, "g", null, 10, 1.1],
        ["Wasser", 220, "g", null, 20, apfel.freezing() - 0.1],
        ["Zitronensaft", 25, "g", null, 30, -3.4],
        ["Masse", "=SUM(B2:B5)", "g", null, 40, -5.2],
        [],
        ["Gefrierpunkt gerechnet", apfel.freezing(), "°C"],
        ["Gefrierpunkt am Thermometer", apfel.freezing() - 0.1, "°C"],
        ["Allergene keine"],
      ],
    },
  },
  {
    title: "Eierlikörparfait",
    sheets: {
      Parfait: [
        ["Parfait zum Fest, 10 Scheiben"],
        [],
        ["Eigelb", 90, "g", "mit dem Zucker über Dampf auf 80 °C, also nicht roh"],
        ["Zucker", 110, "g"],
        ["Sahne 35 %", 400, "g", "geschlagen"],
        ["Rum 40 %", 30, "g"],
        ["Summe", "=SUM(B3:B6)", "g"],
        ["1 Scheibe", "=B7/10", "g"],
        [],
        ["Gefrierpunkt", workedOut("=RIME.FREEZINGPOINT(A3:A6,B3:B6)", 1), "°C"],
        [],
        ["Ei, Milch, Alkohol! Nicht für die Kinder, die bekommen Himbeereis."],
      ],
    },
  },
  {
    title: "Himbeereis zweimal",
    sheets: {
      Rezept: [
        ["Himbeersorbet", "alt", "neu"],
        ["Himbeeren", 500, 500],
        ["Wasser", 150, 150],
        ["Zucker", 180, 140],
        ["Traubenzucker, wasserfrei", 0, 40],
        ["Masse [g]", "=SUM(B2:B5)", "=SUM(C2:C5)"],
        [],
        [
          "Gefrierpunkt [°C]",
          workedOut("=RIME.FREEZINGPOINT($A$2:$A$5,B2:B5)", 1),
          workedOut("=RIME.FREEZINGPOINT($A$2:$A$5,C2:C5)", 1),
        ],
        ["Note (1 bis 6)", 3, 1],
        ["Alle Mengen in Gramm. Das neue ist weicher, weil Traubenzucker stärker wirkt."],
      ],
    },
  },
];
