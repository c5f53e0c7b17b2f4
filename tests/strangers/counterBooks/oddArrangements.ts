import { workedOut, type StrangersBook } from "../strangersBook";
import { answersOf } from "./answersOf";

const ripe = answersOf({ strawberry: 700, sugar: 150, water: 150, "lemon juice": 20 });
const jug = answersOf({
  "whole milk": 1030,
  "heavy cream": 500,
  sugar: 260,
  "skim milk powder": 60,
});
const bombe = answersOf({
  "whole milk": 400,
  "cream 35 % fat": 300,
  "egg yolk": 80,
  sugar: 130,
  "skim milk powder": 30,
  "rum 40 %": 25,
});

/** People who arrange their sheets in ways of their own, in English and German. */
export const oddArrangements: readonly StrangersBook[] = [
  {
    title: "total first",
    sheets: {
      Sheet1: [
        ["Pineapple paddle pops"],
        ["Mix g", "=SUM(B4:B7)", "pops", "=ROUND(B2/70,0)"],
        [],
        ["pineapple", 900, "blended"],
        ["water", 350],
        ["sugar", 160],
        ["lime juice", 60],
        [],
        ["fp °C", workedOut("=RIME.FREEZINGPOINT(A4:A7,B4:B7)", 1)],
        ["fp depression K", workedOut("=RIME.DEPRESSION(A4:A7,B4:B7)", 1)],
      ],
    },
  },
  {
    title: "Birnensorbet, Einheit vor der Zahl, Summe daneben",
    sheets: {
      Birne: [
        ["Birnensorbet für die Theke", null, null, null, "Wanne"],
        ["Birnenpüree", "g", 2800, null, "=SUM(C2:C5)", "g"],
        ["Zucker", "g", 520],
        ["Wasser", "g", 900],
        ["Zitronensaft", "g", 110],
        [],
        ["Gefrierpunkt", "°C", workedOut("=RIME.FREEZINGPOINT(A2:A5,C2:C5)", 1)],
        ["Theke", "°C", -13],
        [
          "gefroren in der Theke",
          "% des Wassers",
          workedOut("=100*RIME.ICEFRACTION(A2:A5,C2:C5,-13)", 0),
        ],
      ],
      Dienst: [
        ["Theke", "früh", "spät"],
        ["Sa 6.7.", "Nele", "Anton"],
        ["So 7.7.", "Anton", "Nele, Kim"],
      ],
    },
  },
  {
    title: "strawberries, ripe or not",
    sheets: {
      Strawberry: [
        ["Strawberry sorbet", "all in g"],
        ["Strawberries", 700],
        ["Sugar", 150],
        ["Water", 150],
        ["Lemon juice", 20],
        ["In the machine", "=SUM(B2:B5)"],
        [],
        [
          "Freezing point (°C)",
          `${(ripe.freezing() - 0.2).toFixed(1)} to ${(ripe.freezing() + 0.2).toFixed(1)}`,
          "depends on the berries",
        ],
        [`About ${ripe.icePercent(-12)} % of the water is ice at -12 °C.`],
        ["Date", "berries", "took (min)"],
        ["12 June", "Polka, very ripe", 34],
        ["19 June", "Symphony", 29],
      ],
    },
  },
  {
    title: "Kaffeesahne-Eis in zwei Chargen",
    sheets: {
      Chargen: [
        ["Kaffeeeis", "Charge 8.3.", "Charge 15.3.", "Anteil 15.3."],
        ["Vollmilch", 1500, 1450, "=C2/C$8"],
        ["Sahne 35 %", 400, 400, "=C3/C$8"],
        ["Kaffee", 250, 300, "=C4/C$8"],
        ["Zucker", 350, 350, "=C5/C$8"],
        ["Magermilchpulver", 90, 90, "=C6/C$8"],
        [],
        ["Summe (g)", "=SUM(B2:B6)", "=SUM(C2:C6)", "=SUM(D2:D6)"],
        [
          "Gefrierpunkt (°C)",
          workedOut("=RIME.FREEZINGPOINT($A$2:$A$6,B2:B6)", 1),
          workedOut("=RIME.FREEZINGPOINT($A$2:$A$6,C2:C6)", 1),
        ],
        ["Milcheiweiß, Laktose"],
      ],
    },
  },
  {
    title: "milk by the jug",
    sheets: {
      "Fior di latte": [
        ["", "ml", "g per ml", "g"],
        ["whole milk", 1000, 1.03, "=B2*C2"],
        ["heavy cream", 500, 1, "=B3*C3"],
        ["sugar", null, null, 260],
        ["skimmed milk powder", null, null, 60],
        ["sum", null, null, "=SUM(D2:D5)"],
        [],
        ["freezing point", `${jug.freezing()} °C`],
        ["water", `${jug.grams("water")} g`],
        ["milk fat", `${jug.grams("fat")} g`],
        ["(milk!)"],
      ],
    },
  },
  {
    title: "per 100 g, then my bucket",
    sheets: {
      Blackberry: [
        ["Bucket (g)", 3500],
        [],
        ["Blackberry sorbet", "per 100 g", "bucket"],
        ["blackberries", 48, "=B4*$B$1/100"],
        ["water", 31, "=B5*$B$1/100"],
        ["sugar", 17, "=B6*$B$1/100"],
        ["lemon juice", 4, "=B7*$B$1/100"],
        ["check", "=SUM(B4:B7)", "=SUM(C4:C7)"],
        [],
        ["freezing point °C", null, workedOut("=RIME.FREEZINGPOINT(A4:A7,C4:C7)", 1)],
        ["water g", null, workedOut('=RIME.COMPONENT(A4:A7,C4:C7,"water")', 0)],
      ],
    },
  },
  {
    title: "Eisbombe zu Silvester, lange Liste",
    sheets: {
      Eisbombe: [
        ["Eisbombe für 16", null, "Achtung:"],
        ["Schicht", "Zutat", "Allergen", "g"],
        ["Creme", "Vollmilch", "Milch", 400],
        ["Creme", "Sahne 35 %", "Milch", 300],
        ["Creme", "Eigelb, pasteurisiert", "Ei", 80],
        ["Creme", "Zucker", "-", 130],
        ["Creme", "Magermilchpulver", "Milch", 30],
        ["Creme", "Rum 40 %", "Alkohol!", 25],
        ["Fülle", "Himbeeren", "-", 250],
        ["Fülle", "Zucker", "-", 60],
        ["Boden", "Mürbekekse", "Weizen, Milch", 180],
        ["Boden", "Süßrahmbutter", "Milch", 60],
        ["Deko", "Mandeln", "Mandel", 40],
        [null, "Creme", null, "=SUM(D3:D8)"],
        [null, "Bombe", null, "=SUM(D3:D13)"],
        [null, "ein Stück", null, "=D15/16"],
        [],
        ["Gefrierpunkt der Creme:", null, null, bombe.freezing(), "°C"],
      ],
    },
  },
  {
    title: "summary of the season with live answers",
    sheets: {
      Season: [
        ["Flavour", "batch g", "freezing point °C", "ice at -13 °C, share of water", "contains"],
        [
          "Mint milk",
          "=Mint!B6",
          "=RIME.FREEZINGPOINT(Mint!A2:A5,Mint!B2:B5)",
          "=RIME.ICEFRACTION(Mint!A2:A5,Mint!B2:B5,-13)",
          "milk",
        ],
        [
          "Pear",
          "=Pear!B6",
          "=RIME.FREEZINGPOINT(Pear!A2:A5,Pear!B2:B5)",
          "=RIME.ICEFRACTION(Pear!A2:A5,Pear!B2:B5,-13)",
          "nothing listed",
        ],
      ],
      Mint: [
        ["Mint milk ice", "g"],
        ["whole milk", 800],
        ["single cream", 200],
        ["sugar", 150],
        ["mint leaves", 15],
        ["batch", "=SUM(B2:B5)"],
      ],
      Pear: [
        ["Pear sorbet", "g"],
        ["pears", 700],
        ["water", 200],
        ["sugar", 130],
        ["lemon juice", 30],
        ["batch", "=SUM(B2:B5)"],
      ],
    },
  },
];
