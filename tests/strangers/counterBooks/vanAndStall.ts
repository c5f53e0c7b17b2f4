import { workedOut, type StrangersBook } from "../strangersBook";
import { answersOf } from "./answersOf";

const whippy = answersOf({
  "whole milk": 6000,
  "heavy cream": 1200,
  sugar: 1100,
  "skim milk powder": 320,
  "glucose syrup DE 42": 380,
});
const mango = answersOf({ mango: 2400, water: 1100, sugar: 520, "lime juice": 180 });
const lemonIce = answersOf({ water: 5200, sugar: 1450, "lemon juice": 1350 });
const choc = answersOf({
  "whole milk": 3000,
  "heavy cream": 900,
  sugar: 640,
  "cocoa powder": 220,
  "skim milk powder": 140,
});

/** Ice-cream van and market-stall people, in English. */
export const vanAndStall: readonly StrangersBook[] = [
  {
    title: "the van, one tank of vanilla",
    sheets: {
      Vanilla: [
        ["VANILLA FOR THE VAN - one tank"],
        ["", "kg", "£ per kg", "£"],
        ["Whole milk", 6, 0.95, "=B3*C3"],
        ["Heavy cream", 1.2, 4.6, "=B4*C4"],
        ["Sugar", 1.1, 1.1, "=B5*C5"],
        ["Skimmed milk powder", 0.32, 6.8, "=B6*C6"],
        ["Glucose syrup DE 42", 0.38, 2.9, "=B7*C7"],
        ["TANK", "=SUM(B3:B7)", null, "=SUM(D3:D7)"],
        [],
        ["Cones from a tank at 75 g", "=ROUND(B8*1000/75,0)"],
        ["Cost of ice cream in a cone, £", "=D8/B10"],
        ["Cone itself, £", 0.06],
        ["We sell at, £", 2.8],
        ["Left for us, £", "=B13-B11-B12"],
        [],
        ["Freezing point", whippy.freezing(), "°C"],
        ["ALLERGENS ON THE HATCH: milk, and gluten in the cone"],
      ],
    },
  },
  {
    title: "mango sorbet at the Saturday stall",
    sheets: {
      Mix: [
        ["Item", "Unit", "Qty"],
        ["Mango puree", "g", 2400],
        ["Water", "g", 1100],
        ["Sugar", "g", 520],
        ["Lime juice", "g", 180],
        ["Mix", "g", "=SUM(C2:C5)"],
        ["Freezing point", "°C", mango.freezing()],
        ["Ice at -12", "% of water", mango.icePercent(-12)],
        ["Solids", "g", mango.grams("solids")],
      ],
      Day: [
        ["Saturday", "tubs out", "tubs back", "sold"],
        ["before 11", 20, 6, "=B2-C2"],
        ["11 to 2", 36, 1, "=B3-C3"],
        ["after 2", 24, 9, "=B4-C4"],
        ["day", "=SUM(B2:B4)", "=SUM(C2:C4)", "=SUM(D2:D4)"],
        ["takings at £3.50 a tub", null, null, "=D5*3.5"],
      ],
    },
  },
  {
    title: "lemon ice by the bucket",
    sheets: {
      Sheet1: [
        ["Lemon ice", null, "1 bucket", "3 buckets", "Fair day (8)"],
        ["water", "g", 5200, "=C2*3", "=C2*8"],
        ["sugar", "g", 1450, "=C3*3", "=C3*8"],
        ["lemon juice", "g", 1350, "=C4*3", "=C4*8"],
        ["weight", "g", "=SUM(C2:C4)", "=SUM(D2:D4)", "=SUM(E2:E4)"],
        ["bags of sugar, 1 kg", null, "=C3/1000", "=D3/1000", "=E3/1000"],
        [],
        [`Starts freezing ${lemonIce.freezing()} °C - keep the drum at -6 °C`],
        ["nothing to declare, no nuts no dairy no egg"],
      ],
    },
  },
  {
    title: "chocolate scoop price",
    sheets: {
      Costing: [
        ["Belgian chocolate, scooped", null, null, null, "Pack", "Pack price €"],
        ["Ingredient", "Use (g)", "Cost (€)", null, "g", "€"],
        ["Whole milk", 3000, "=B3/E3*F3", null, 1000, 1.05],
        ["Heavy cream", 900, "=B4/E4*F4", null, 1000, 4.9],
        ["Sugar", 640, "=B5/E5*F5", null, 1000, 1.2],
        ["Cocoa powder", 220, "=B6/E6*F6", null, 500, 7.4],
        ["Skimmed milk powder", 140, "=B7/E7*F7", null, 1000, 7.1],
        ["Batch", "=SUM(B3:B7)", "=SUM(C3:C7)"],
        ["Scoop 65 g", 65, "=C8*B9/B8"],
        ["Price x12", null, "=ROUND(C9*12,2)"],
        [],
        ["fp (°C)", choc.freezing()],
        ["frozen at -14 °C (% of its water)", choc.icePercent(-14)],
        ["Allergy card: MILK"],
      ],
    },
  },
  {
    title: "slush machine settings",
    sheets: {
      Slush: [
        ["Slush, 10 litre bowl, all g"],
        ["", "Raspberry", "Orange", "Plain sugar"],
        ["Water", 7600, 5400, 8700],
        ["Sugar", 1200, 950, 1300],
        ["Raspberry puree", 1200, null, null],
        ["Orange juice", null, 3650, null],
        ["Bowl", "=SUM(B3:B6)", "=SUM(C3:C6)", "=SUM(D3:D6)"],
        [],
        [
          "Freezes °C",
          answersOf({ water: 7600, sugar: 1200, raspberry: 1200 }).freezing(),
          answersOf({ water: 5400, sugar: 950, "orange juice": 3650 }).freezing(),
          answersOf({ water: 8700, sugar: 1300 }).freezing(),
        ],
        ["Bowl set to °C", -2.5, -2.5, -2.5],
        ["Cups of 330 g", "=ROUND(B7/330,0)", "=ROUND(C7/330,0)", "=ROUND(D7/330,0)"],
      ],
    },
  },
  {
    title: "kulfi stall with stock list",
    told: ["lactose-may-feel-sandy"],
    sheets: {
      Kulfi: [
        ["Kulfi on a stick - 40 sticks"],
        ["Contains: milk, pistachio nuts, almonds"],
        [null, "g"],
        ["Evaporated milk", 1600],
        ["Sweetened condensed milk", 600],
        ["Heavy cream", 400],
        ["Pistachios", 80],
        ["Almonds", 60],
        ["Cardamom", 6],
        ["Pot", "=SUM(B4:B9)"],
        ["Stick", "=B10/40"],
        ["Freezes at (°C)", workedOut("=RIME.FREEZINGPOINT(A4:A9,B4:B9)", 1)],
      ],
      Stock: [
        ["in the van", "have", "need", "buy", "unit"],
        ["Evaporated milk", 3, 4, "=C2-B2", "tins of 400 g"],
        ["Sweetened condensed milk", 1, 2, "=C3-B3", "tins of 397 g"],
        ["Sticks", 20, 40, "=C4-B4", "pieces"],
        ["Paper bags", 15, 40, "=C5-B5", "pieces"],
      ],
    },
  },
  {
    title: "snow cones and dry numbers",
    sheets: {
      Syrups: [
        ["Syrup", "sugar g", "water g", "juice g", "which juice", "bottle g", "price/l £"],
        ["Lemon", 600, 300, 200, "lemon juice", "=B2+C2+D2", 2.1],
        ["Lime", 600, 300, 180, "lime juice", "=B3+C3+D3", 2.6],
        ["Orange", 550, 150, 400, "orange juice", "=B4+C4+D4", 1.9],
        [],
        ["Pour 40 ml on 180 g of shaved ice. The syrups stay liquid in the cool box at 4 °C."],
      ],
      Takings: [
        ["", "Fri", "Sat", "Sun", "weekend"],
        ["cones", 64, 151, 133, "=SUM(B2:D2)"],
        ["£ each", 2, 2, 2, null],
        ["£", "=B2*B3", "=C2*C3", "=D2*D3", "=SUM(B4:D4)"],
        ["pitch £", -25, -40, -40, "=SUM(B5:D5)"],
        ["left £", "=B4+B5", "=C4+C5", "=D4+D5", "=SUM(B6:D6)"],
      ],
    },
  },
];
