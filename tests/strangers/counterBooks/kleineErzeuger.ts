import { workedOut, type StrangersBook } from "../strangersBook";
import { answersOf } from "./answersOf";

const sahne = answersOf({
  "whole milk": 600,
  "cream 35 % fat": 170,
  sugar: 130,
  "skim milk powder": 45,
  "glucose syrup DE 42": 52,
  "locust bean gum": 3,
});
const traube = answersOf({ grape: 5000, "red wine": 500, sugar: 900, water: 1600 });
const maracuja = answersOf({ "passion fruit juice": 250, water: 480, sugar: 200, inulin: 30 });

/** Small producers, caterers and bakers, in German. */
export const kleineErzeuger: readonly StrangersBook[] = [
  {
    title: "Sahneeis Rezeptblatt je kg",
    sheets: {
      Rezeptblatt: [
        ["Rezeptblatt 12", "Bauernhofeis Sahne"],
        ["Angaben in g je kg Mix"],
        [],
        ["Vollmilch", 600],
        ["Sahne 35 %", 170],
        ["Zucker", 130],
        ["Magermilchpulver", 45],
        ["Glukosesirup DE 42", 52],
        ["Johannisbrotkernmehl", 3],
        ["Kontrolle", "=SUM(B4:B9)"],
        [],
        ["davon Wasser", sahne.grams("water")],
        ["davon Fett", sahne.grams("fat")],
        ["davon Trockenmasse", sahne.grams("solids")],
      ],
      Technik: [
        ["Kenngröße", "Wert", "Einheit"],
        ["Gefrierpunkt", sahne.freezing(), "°C"],
        ["Gefrierpunktserniedrigung", sahne.depression(), "K"],
        ["ausgefrorenes Wasser bei -6 °C", sahne.icePercent(-6), "%"],
        ["ausgefrorenes Wasser bei -18 °C", sahne.icePercent(-18), "%"],
        ["Pasteurisieren", 85, "°C"],
        ["Reifen", 4, "°C"],
      ],
      Etikett: [
        [
          "Zutaten: VOLLMILCH, SAHNE, Zucker, Glukosesirup, MAGERMILCHPULVER, Verdickungsmittel E 410",
        ],
        ["Allergene in Großbuchstaben"],
      ],
    },
  },
  {
    title: "Traubensorbet mit Rotwein für ein Bankett",
    sheets: {
      Bankett: [
        ["Traubensorbet, 100 Personen je 80 g", null, null, "Bestellung"],
        ["Weintrauben", 5000, "g", "3 Kisten zu 2 kg"],
        ["Rotwein", 500, "g", "1 Flasche"],
        ["Zucker", 900, "g", "1 Paket"],
        ["Wasser", 1600, "g", null],
        ["gesamt", "=SUM(B2:B5)", "g", null],
        ["je Person", "=B6/100", "g", null],
        [],
        ["Gefrierpunkt", traube.freezing(), "°C"],
        ["Eis bei -14 °C", traube.icePercent(-14), "% des Wassers"],
        ["Auf der Karte: mit Alkohol, enthält Sulfite"],
      ],
    },
  },
  {
    title: "Maracujasorbet mit Soll und Ist",
    sheets: {
      Versuch: [
        ["Versuch 4", "Einwaage g", "Charge A (g)", "Charge B (g)"],
        ["Maracujasaft", 250, 251, 249],
        ["Wasser", 480, 480, 482],
        ["Zucker", 200, 200, 199],
        ["Inulin", 30, 30, 30],
        ["Summe", "=SUM(B2:B5)", "=SUM(C2:C5)", "=SUM(D2:D5)"],
        [],
        ["Gefrierpunkt berechnet", maracuja.freezing(), "°C"],
        ["Gefrierpunkt gemessen", maracuja.freezing() + 0.1, "°C"],
        ["Brix gerechnet", workedOut("=RIME.BRIX(A2:A5,B2:B5)", 1), "°Bx"],
        ["frei von den 14 Allergenen"],
      ],
    },
  },
  {
    title: "Mandel-Honig-Parfait der Konditorei",
    sheets: {
      Parfait: [
        ["enthält: Mandeln, Ei, Milch - Honig, darum nicht für Säuglinge"],
        ["Zutat", "1 Form", "6 Formen", "Einheit"],
        ["Sahne 35 %", 320, "=B3*6", "g"],
        ["Eigelb, pasteurisiert", 80, "=B4*6", "g"],
        ["Honig", 60, "=B5*6", "g"],
        ["Zucker", 40, "=B6*6", "g"],
        ["Mandeln, geröstet", 50, "=B7*6", "g"],
        ["Gewicht", "=SUM(B3:B7)", "=SUM(C3:C7)", "g"],
        [],
        [
          "Gefrierpunkt",
          answersOf({
            "cream 35 % fat": 320,
            "egg yolk": 80,
            honey: 60,
            sugar: 40,
            almonds: 50,
          }).freezing(),
          null,
          "°C",
        ],
      ],
    },
  },
  {
    title: "Wochenplan Produktion",
    sheets: {
      Plan: [
        ["Produktion KW 27 (kg Mix)"],
        ["Sorte", "Mo", "Di", "Mi", "Do", "Fr", "Woche"],
        ["Sahne", 20, 0, 20, 0, 30, "=SUM(B3:F3)"],
        ["Himbeersorbet", 0, 15, 0, 15, 10, "=SUM(B4:F4)"],
        [
          "Tag",
          "=SUM(B3:B4)",
          "=SUM(C3:C4)",
          "=SUM(D3:D4)",
          "=SUM(E3:E4)",
          "=SUM(F3:F4)",
          "=SUM(G3:G4)",
        ],
      ],
      Himbeersorbet: [
        ["Himbeersorbet", "g/kg", "kg je Woche"],
        ["Himbeeren", 480, "=B2*Plan!$G$4/1000"],
        ["Wasser", 290, "=B3*Plan!$G$4/1000"],
        ["Zucker", 150, "=B4*Plan!$G$4/1000"],
        ["Traubenzucker-Monohydrat", 80, "=B5*Plan!$G$4/1000"],
        ["zusammen", "=SUM(B2:B5)", "=SUM(C2:C5)"],
        ["Gefrierpunkt °C", workedOut("=RIME.FREEZINGPOINT(A2:A5,B2:B5)", 1)],
      ],
      Sahne: [
        ["Sahneeis (Milch)", "g/kg", "kg je Woche"],
        ["Vollmilch", 640, "=B2*Plan!$G$3/1000"],
        ["Sahne 35 %", 170, "=B3*Plan!$G$3/1000"],
        ["Zucker", 140, "=B4*Plan!$G$3/1000"],
        ["Magermilchpulver", 50, "=B5*Plan!$G$3/1000"],
        ["zusammen", "=SUM(B2:B5)", "=SUM(C2:C5)"],
        ["Gefrierpunkt °C", workedOut("=RIME.FREEZINGPOINT(A2:A5,B2:B5)", 1)],
      ],
    },
  },
  {
    title: "Joghurteis in der Waffel",
    sheets: {
      Tüte: [
        ["Joghurteis in der Waffel", "Gramm", "Allergene"],
        ["Naturjoghurt 3,5 %", 1400, "M"],
        ["Zucker", 260, null],
        ["Magermilchpulver", 60, "M"],
        ["Zitronensaft", 80, null],
        ["Eismasse", "=SUM(B2:B5)", null],
        ["Waffelhörnchen, 24 Stück", 290, "W"],
        ["M = Milch, W = Weizen (Gluten)"],
        [],
        ["Gefrierpunkt der Eismasse:", workedOut("=RIME.FREEZINGPOINT(A2:A5,B2:B5)", 1), "°C"],
        ["Eismasse je Tüte:", "=B6/24", "g"],
      ],
    },
  },
];
