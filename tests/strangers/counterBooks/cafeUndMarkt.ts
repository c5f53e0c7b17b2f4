import { workedOut, type StrangersBook } from "../strangersBook";
import { answersOf } from "./answersOf";

const vanille = answersOf({
  "whole milk": 2500,
  "cream 35 % fat": 800,
  sugar: 620,
  "skim milk powder": 110,
  "egg yolk": 200,
});
const kaffee = answersOf({ "brewed coffee": 700, sugar: 140 });
const schoko = answersOf({
  water: 2200,
  sugar: 640,
  "cocoa powder": 320,
  "glucose syrup DE 42": 150,
});
const kirsch = answersOf({ "sweet cherry": 1800, sugar: 350, water: 700, "lemon juice": 50 });

/** Café and market people, in German. */
export const cafeUndMarkt: readonly StrangersBook[] = [
  {
    title: "Vanilleeis Kalkulation Café",
    sheets: {
      Kalkulation: [
        ["Vanilleeis - Kalkulation Café am Eck, Stand Mai"],
        ["Pos.", "Zutat", "kg", "€/kg", "€"],
        [1, "Vollmilch", 2.5, 1.1, "=C3*D3"],
        [2, "Konditorsahne 35 %", 0.8, 4.2, "=C4*D4"],
        [3, "Zucker", 0.62, 1.15, "=C5*D5"],
        [4, "Magermilchpulver", 0.11, 7.5, "=C6*D6"],
        [5, "Eigelb, pasteurisiert", 0.2, 9.8, "=C7*D7"],
        [null, "Ansatz", "=SUM(C3:C7)", null, "=SUM(E3:E7)"],
        [],
        [null, "Kugeln zu 60 g", "=ROUND(C8/0.06,0)"],
        [null, "Wareneinsatz je Kugel €", "=E8/C10"],
        [null, "Verkauf je Kugel €", 1.8],
        [null, "Wareneinsatz %", "=C11/C12*100"],
        [],
        [null, "Gefrierpunkt °C", vanille.freezing()],
        [null, "Allergene", "Milch (G), Ei (C)"],
      ],
    },
  },
  {
    title: "Kaffeegranita mit Tagesplan",
    sheets: {
      Granita: [
        ["Kaffeegranita für 10 Gläser"],
        ["700 g", "Kaffee", "stark, kalt"],
        ["140 g", "Zucker", "im heißen Kaffee gelöst"],
        ["840 g", "zusammen"],
        [],
        ["Gefrierpunkt", kaffee.freezing(), "°C"],
        ["Eis bei -8 °C", kaffee.icePercent(-8), "% vom Wasser"],
        ["Obendrauf: Sahne (Milch!)"],
      ],
      Tagesplan: [
        ["Uhrzeit", "Was", "Wer"],
        ["07:30", "Kaffee kochen", "Jule"],
        ["08:00", "ins Tiefkühlfach", "Jule"],
        ["alle 40 min", "rühren", "wer da ist"],
        ["13:00", "fertig, auf die Tafel", "Emre"],
      ],
    },
  },
  {
    title: "Schokosorbet vegan Marktstand",
    sheets: {
      Schokosorbet: [
        ["Schokosorbet (vegan)", "g", "%", "Trockenmasse g"],
        ["Wasser", 2200, "=B2/$B$6*100", 0],
        ["Zucker", 640, "=B3/$B$6*100", 640],
        ["Kakaopulver", 320, "=B4/$B$6*100", answersOf({ "cocoa powder": 320 }).grams("solids")],
        [
          "Glukosesirup DE 42",
          150,
          "=B5/$B$6*100",
          answersOf({ "glucose syrup DE 42": 150 }).grams("solids"),
        ],
        ["Summe", "=SUM(B2:B5)", "=SUM(C2:C5)", "=SUM(D2:D5)"],
        [],
        ["Gefrierpunkt", null, null, schoko.freezing(), "°C"],
        ["Eisanteil bei -12 °C", null, null, schoko.icePercent(-12), "% des Wassers"],
        ["Ohne Milch, Ei, Nüsse. Kann Spuren von Milch enthalten (gleiche Maschine)."],
      ],
    },
  },
  {
    title: "Kirschsorbet Preise untereinander",
    sheets: {
      Kirsche: [
        ["Kirschsorbet"],
        ["Mengen (g)"],
        ["Süßkirschen", 1800],
        ["Zucker", 350],
        ["Wasser", 700],
        ["Zitronensaft", 50],
        ["Gesamtgewicht", "=SUM(B3:B6)"],
        [],
        ["Preise (€ je kg)"],
        ["Süßkirschen", 4.9],
        ["Zucker", 1.2],
        ["Zitronensaft", 3.5],
        [],
        ["Kosten (€)"],
        ["Süßkirschen", "=B3*B10/1000"],
        ["Zucker", "=B4*B11/1000"],
        ["Zitronensaft", "=B6*B12/1000"],
        ["zusammen", "=SUM(B15:B17)"],
        ["je 100 g", "=B18/B7*100"],
        [],
        [
          `Gefrierpunkt ${kirsch.freezing()} °C, bei -14 °C sind ${kirsch.icePercent(-14)} % vom Wasser Eis.`,
        ],
      ],
    },
  },
  {
    title: "Übersicht Sorten Eiscafé",
    sheets: {
      Sorten: [
        ["Alle Mengen in Gramm je Ansatz"],
        [
          "Sorte",
          "Vollmilch",
          "Sahne 35 %",
          "Zucker",
          "Frucht",
          "Ansatz",
          "Gefrierpunkt °C",
          "Allergene",
        ],
        [
          "Fior di Latte",
          2600,
          700,
          600,
          0,
          "=SUM(B3:E3)",
          answersOf({ "whole milk": 2600, "cream 35 % fat": 700, sugar: 600 }).freezing(),
          "Milch",
        ],
        [
          "Erdbeere",
          1300,
          500,
          560,
          1500,
          "=SUM(B4:E4)",
          answersOf({
            "whole milk": 1300,
            "cream 35 % fat": 500,
            sugar: 560,
            strawberry: 1500,
          }).freezing(),
          "Milch",
        ],
        [
          "Heidelbeere",
          1400,
          500,
          530,
          1400,
          "=SUM(B5:E5)",
          answersOf({
            "whole milk": 1400,
            "cream 35 % fat": 500,
            sugar: 530,
            blueberry: 1400,
          }).freezing(),
          "Milch",
        ],
        ["Bedarf Woche", "=SUM(B3:B5)", "=SUM(C3:C5)", "=SUM(D3:D5)", "=SUM(E3:E5)", "=SUM(F3:F5)"],
      ],
    },
  },
  {
    title: "Affogato und Eisbecher Preise",
    sheets: {
      Becher: [
        [
          "Eisbecher",
          "Vanilleeis g",
          "Sahne g",
          "Sauce g",
          "Einsatz €",
          "Karte €",
          "Faktor",
          "enthält",
        ],
        ["Heiße Himbeeren", 150, 30, 80, 1.35, 7.5, "=F2/E2", "Milch, Ei"],
        ["Affogato", 60, 0, 40, 0.7, 3.9, "=F3/E3", "Milch, Ei"],
        ["Nussbecher", 150, 40, 30, 1.6, 8.2, "=F4/E4", "Milch, Ei, Walnüsse"],
        ["Mittel", null, null, null, "=AVERAGE(E2:E4)", "=AVERAGE(F2:F4)", "=AVERAGE(G2:G4)"],
      ],
      Vanilleeis: [
        ["für 5 Liter Fertigeis", "Gramm"],
        ["Vollmilch", 1900],
        ["Sahne 35 %", 500],
        ["Zucker", 480],
        ["gezuckertes Eigelb, pasteurisiert", 180],
        ["Magermilchpulver", 70],
        ["Mix", "=SUM(B2:B6)"],
        ["Gefrierpunkt", workedOut("=RIME.FREEZINGPOINT(A2:A6,B2:B6)", 1), "°C"],
        [
          "Gefriergrad bei -13 °C",
          workedOut("=100*RIME.ICEFRACTION(A2:A6,B2:B6,-13)", 0),
          "% des Wassers",
        ],
        ["Allergene: Milch und Ei"],
      ],
    },
  },
  {
    title: "Temperaturliste Truhe und ein Rezept",
    sheets: {
      Truhe: [
        ["Soll: -18 °C oder kälter"],
        ["Datum", "morgens", "abends", "Kürzel"],
        ["03.06.", -19.5, -18.9, "LK"],
        ["04.06.", -20.1, -19.2, "LK"],
        ["05.06.", -19.8, -18.6, "MB"],
        ["06.06.", -19.9, -19, "MB"],
        ["wärmster Wert", "=MAX(B3:B6)", "=MAX(C3:C6)"],
        ["(alles in °C)"],
      ],
      Pfirsich: [
        ["Pfirsichsorbet", "g"],
        ["Pfirsiche", 1500],
        ["Zucker", 380],
        ["Wasser", 500],
        ["Zitronensaft", 60],
        ["Menge", "=SUM(B2:B5)"],
        ["Anfang des Gefrierens", workedOut("=RIME.FREEZINGPOINT(A2:A5,B2:B5)", 1), "°C"],
      ],
    },
  },
];
