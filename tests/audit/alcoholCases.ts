import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const rule = "abv-as-mass";
const flags = (what: string, rows: Rows, ...cells: readonly string[]): RuleCase => ({
  ...{ rule, what, rows, cells },
});
const leaves = (what: string, rows: Rows): RuleCase => ({ rule, what, rows, cells: [] });

/**
 * Alcohol by volume in the ways in which it is laid out. 40 % by volume is 33.3 % by mass, 37.5 % is 31.1 %,
 * 12 % is 9.6 % (OIML R 22, as printed in every alcohol table); ethanol weighs 0.789 g/mL (CRC).
 */
export const alcoholCases: readonly RuleCase[] = [
  flags(
    "one formula among those that convert, its drinks to the right",
    [
      ["ABV (%)", "Poured (g)", "Ethanol (g)", "What"],
      [40, 100, formula("RIME.ABVTOMASSFRACTION(A2)*B2", 33.31), "rum 40 %"],
      [37.5, 80, formula("B3*A3/100", 30), "gin 37.5 %"],
    ],
    "C3",
  ),
  flags(
    "a typed gram of a small glass, rounded to a decimal",
    [
      ["Drink", "g", "% vol", "Pure alcohol (g)"],
      ["rum 40 %", 40, 40, 13.3],
      ["liqueur 25 %", 25.3, 25, 6.3],
    ],
    "D3",
  ),
  flags(
    "bottles of no known name, their alcohol cut short",
    [
      ["Bottle", "Shelf", "ABV %", "Pour g", "Pure alc. g"],
      ["House white spirit", "top", 37.5, 30, formula("D2*RIME.ABVTOMASSFRACTION(C2)", 9.33)],
      ["Sloe, ours", "top", 26, 28, formula("D3*C3/100", 7.28)],
    ],
    "E3",
  ),
  leaves("a share of the takings beside what is poured of alcohol", [
    ["Bottle", "Pour g", "Share of takings %", "Kept g"],
    ["Sloe, ours", 28, 26, formula("B2*C2/100", 7.28)],
    ["Rum, ours", 30, 40, formula("B3*C3/100", 12)],
  ]),
  flags(
    "a shot for each glass",
    [
      ["On top", "% vol", "Shot per glass (g)", "Ethanol (g)"],
      ["rum 40 %", 40, 10, formula("C2*B2/100", 4)],
      ["liqueur 25 %", 25, 12, formula("C3*RIME.ABVTOMASSFRACTION(B3)", 2.45)],
    ],
    "D2",
  ),
  flags(
    "a strength as a fraction, in German",
    [
      ["Spirituose", "g", "Vol.-%", "Alkohol (g)"],
      ["Wodka 40 %", 100, 0.4, formula("B2*C2", 40)],
    ],
    "D2",
  ),
  flags(
    "labels one below the other",
    [
      ["Rum in the mix"],
      ["Poured (g)", 150],
      ["Strength (% vol)", 40],
      ["Alcohol (g)", formula("B2*B3%", 60)],
    ],
    "B4",
  ),
  flags(
    "drinks side by side",
    [
      ["Drink", "rum 40 %", "gin 37.5 %"],
      ["g used", 100, 80],
      ["Strength, % by volume", 40, 37.5],
      ["Ethanol, g", formula("B2*B3%", 40), formula("C2*C3%", 30)],
    ],
    "C4",
    "B4",
  ),
  flags(
    "the strength in a cell of its own",
    [
      ["Strength of our spirit (% vol)", 40],
      [],
      ["Batch", "Poured (g)", "Alcohol (g)"],
      ["A", 50, formula("B4*$B$1/100", 20)],
    ],
    "C4",
  ),
  flags(
    "the strength in the name and in the formula only",
    [
      ["Ingredient", "g", "of which alcohol (g)"],
      ["Water", 500, null],
      ["Sucrose", 120, null],
      ["Rum 40 %", 80, formula("B4*0.4", 32)],
    ],
    "C4",
  ),
  flags(
    "millilitres times strength as grams",
    [
      ["Drink", "mL", "% vol", "Alcohol (g)"],
      ["rum", 100, 40, formula("B2*C2/100", 40)],
    ],
    "D2",
  ),
  flags(
    "the strength once more as a share of the mass",
    [
      ["Getränk", "Menge (g)", "% vol", "Alkohol (Massen-%)"],
      ["Rum 40 %", 100, 40, 40],
    ],
    "D2",
  ),
  flags(
    "the water that the strength leaves",
    [
      ["Drink", "g", "ABV %", "Water (g)"],
      ["rum 40 %", 100, 40, formula("B2*(1-C2/100)", 60)],
    ],
    "D2",
  ),
  flags(
    "a sum of products over a recipe",
    [
      ["Ingredient", "g", "ABV %"],
      ["Water", 500, null],
      ["Sucrose", 120, null],
      ["Rum 40 %", 80, 40],
      ["Liqueur 25 %", 30, 25],
      [],
      ["Alcohol in the mix (g)", formula("SUMPRODUCT(B2:B5,C2:C5)/100", 39.5)],
    ],
    "B7",
  ),
  flags(
    "a strength without its unit, of a drink",
    [
      ["Getränk", "Gramm", "Alkohol %", "Alkohol g"],
      ["Wodka", 60, 37.5, 22.5],
    ],
    "D2",
  ),
  leaves("millilitres of alcohol from millilitres of drink", [
    ["Drink", "mL", "% vol", "Alcohol (mL)"],
    ["rum", 100, 40, formula("B2*C2/100", 40)],
    ["Fass", "Liter", "Vol.-%", "Liter reiner Alkohol"],
    ["Rum", 20, 60, formula("B4*C4/100", 12)],
  ]),
  leaves("millilitres with the density of ethanol", [
    ["Drink", "mL", "% vol", "Alcohol (g)"],
    ["rum", 100, 40, formula("B2*C2/100*0.789", 31.56)],
  ]),
  leaves("a strength by mass", [
    ["Drink", "g", "Alcohol (% by mass)", "Alcohol (g)"],
    ["rum 40 %", 100, 33.3, formula("B2*C2/100", 33.3)],
  ]),
  leaves("a laboratory's ethanol by mass, without a drink's name", [
    ["Stock", "g", "Alcohol (%)", "Alcohol (g)"],
    ["Bottle A", 100, 96, formula("B2*C2/100", 96)],
  ]),
  leaves("other per cent of other things", [
    ["Ingredient", "g", "Sugar %", "Sugar g", "Alcohol duty (EUR)"],
    ["Glucose syrup DE 42", 100, 40, 40, 40],
    ["Water", 50, 0, 0, 0],
  ]),
  {
    ...leaves("a stored value that its formula no longer gives", [
      ["Drink", "g", "% vol", "Alcohol (g)"],
      ["rum 40 %", 100, 40, formula("B2*E2", 40)],
    ]),
    fresh: { D2: 33.3 },
  },
];
