import { workedOut, type StrangersBook } from "../strangersBook";
import { answersOf } from "./answersOf";

const wedding = answersOf({ "white wine": 600, water: 1500, sugar: 560, "lemon juice": 240 });
const ginger = answersOf({
  "whole milk": 5500,
  "heavy cream": 2400,
  "soft brown sugar": 900,
  "glucose syrup DE 42": 600,
  "skim milk powder": 400,
});
const plain = answersOf({ "whole milk": 620, "cream 35 % fat": 180, sugar: 140, SMP: 60 });
const banana = answersOf({ banana: 600, "coconut milk": 300, "maple syrup": 80, "lime juice": 20 });
const peach = answersOf({ peach: 450, water: 300, sugar: 150, "dextrose monohydrate": 60, LBG: 3 });

/** Caterers, bakers and small producers, in English. */
export const caterersAndMakers: readonly StrangersBook[] = [
  {
    title: "wine sorbet for a wedding",
    sheets: {
      Sorbet: [
        ["Palate cleanser, Harris wedding, 84 guests, 30 g each"],
        ["line", "item", "g", "per guest g"],
        [1, "White wine", 600, "=C3/84"],
        [2, "Water", 1500, "=C4/84"],
        [3, "Sugar", 560, "=C5/84"],
        [4, "Lemon juice", 240, "=C6/84"],
        [5, "ready", "=SUM(C3:C6)", "=SUM(D3:D6)"],
        ["needed, g", null, "=84*30"],
        ["spare, g", null, "=C7-C8"],
      ],
      "For the kitchen": [
        ["Freezing point", wedding.freezing(), "°C"],
        ["Solid water at -12 °C", wedding.icePercent(-12), "%"],
        ["Glasses frosted at", -18, "°C"],
        [],
        ["On the menu card: contains alcohol and sulphites (wine)"],
      ],
    },
  },
  {
    title: "ginger biscuit ice cream, phases",
    sheets: {
      "GB-07": [
        ["Recipe GB-07 Ginger biscuit", null, null, "rev. C"],
        ["Phase", "Ingredient", "kg"],
        ["A", "Whole milk", 5.5],
        ["A", "Heavy cream", 2.4],
        [null, "liquid", "=SUM(C3:C4)"],
        ["B", "Soft brown sugar", 0.9],
        ["B", "Glucose syrup DE 42", 0.6],
        ["B", "Skimmed milk powder", 0.4],
        [null, "dry and syrup", "=SUM(C6:C8)"],
        ["C", "Ginger biscuits, broken, after freezing", 0.7],
        [null, "Batch", "=C5+C9+C10"],
        [],
        ["Mix without phase C:"],
        ["Freezing point", ginger.freezing(), "°C"],
        ["Frozen at draw (-6 °C)", ginger.icePercent(-6), "% of water"],
        [],
        ["ALLERGENS: MILK, GLUTEN (WHEAT)"],
      ],
    },
  },
  {
    title: "label text for a 500 ml tub",
    told: ["lactose-may-feel-sandy"],
    sheets: {
      Label: [
        ["Sweet cream ice cream, 500 ml tub = 320 g"],
        ["per kg of mix", "g", "per tub g"],
        ["whole milk", 620, "=B3*0.32"],
        ["cream 35 %", 180, "=B4*0.32"],
        ["sugar", 140, "=B5*0.32"],
        ["skimmed milk powder", 60, "=B6*0.32"],
        ["mix", "=SUM(B3:B6)", "=SUM(C3:C6)"],
        [],
        ["fat", `${plain.grams("fat")} g/kg`],
        ["water", `${plain.grams("water")} g/kg`],
        ["freezing point", `${plain.freezing()} °C`],
        [],
        ["Ingredients: whole MILK, CREAM (MILK), sugar, skimmed MILK powder."],
        ["Keep at -18 °C. Do not refreeze once thawed."],
      ],
    },
  },
  {
    title: "banana nice cream, portions and order",
    sheets: {
      Recipe: [
        ["Batch of", 1000, "g"],
        [],
        ["Banana", 600],
        ["Coconut milk", 300],
        ["Maple syrup", 80],
        ["Lime juice", 20],
        ["g in all", "=SUM(B3:B6)"],
        ["freezing point °C", banana.freezing()],
        ["freezing point depression K", banana.depression()],
        ["water, g", banana.grams("water")],
      ],
      Order: [
        ["For 12 batches", "g", "pack g", "packs"],
        ["Banana", "=Recipe!B3*12", 1000, "=B2/C2"],
        ["Coconut milk", "=Recipe!B4*12", 400, "=B3/C3"],
        ["Maple syrup", "=Recipe!B5*12", 250, "=B4/C4"],
        ["Lime juice", "=Recipe!B6*12", 200, "=B5/C5"],
      ],
    },
  },
  {
    title: "peach sorbet, target and reading",
    sheets: {
      Trial: [
        ["Peach trial 3 (weights in grams)"],
        ["Peach puree", 450],
        ["Water", 300],
        ["Sugar", 150],
        ["Dextrose monohydrate", 60],
        ["Locust bean gum", 3],
        ["Trial", "=SUM(B2:B6)"],
        [],
        ["", "want", "calculated", "measured"],
        ["Freezing point °C", "-3.0 to -2.0", peach.freezing(), peach.freezing() + 0.1],
        ["Solids %", "25 to 32", workedOut(`=${peach.grams("solids", 1)}/963*100`, 1), null],
        ["Ice at -14 °C, % of water", "70 to 80", peach.icePercent(-14), null],
      ],
    },
  },
  {
    title: "bakery: ice cream cake layers",
    sheets: {
      Cake: [
        ["Ice cream cake 24 cm", null, "g", "€/kg", "€"],
        ["base", "digestive biscuits", 200, 4.8, "=C2*D2/1000"],
        ["base", "unsalted butter", 90, 8.9, "=C3*D3/1000"],
        ["filling", "whole milk", 350, 1.1, "=C4*D4/1000"],
        ["filling", "heavy cream", 250, 4.6, "=C5*D5/1000"],
        ["filling", "sugar", 110, 1.2, "=C6*D6/1000"],
        ["filling", "cream cheese", 200, 7.2, "=C7*D7/1000"],
        ["top", "raspberries", 180, 9.5, "=C8*D8/1000"],
        ["cake", null, "=SUM(C2:C8)", null, "=SUM(E2:E8)"],
        ["slices", null, 12],
        ["a slice", null, "=C9/C10", null, "=E9/C10"],
        [],
        ["filling: freezing point °C", workedOut("=RIME.FREEZINGPOINT(B4:B7,C4:C7)", 1)],
        ["wheat (gluten), milk"],
      ],
    },
  },
  {
    title: "pistachio, uncertainty beside",
    sheets: {
      Pistachio: [
        ["Pistachio gelato, 3 kg pan"],
        ["Ingredient", "g", "Contains"],
        ["Whole milk", 1900, "milk"],
        ["Heavy cream", 350, "milk"],
        ["Sugar", 380, null],
        ["Skim milk powder", 100, "milk"],
        ["Pistachios", 270, "nuts (pistachio)"],
        ["Pan", "=SUM(B3:B7)", null],
        [],
        [null, "value", "+/-", "unit"],
        [
          "Freezing point",
          workedOut("=RIME.FREEZINGPOINT(A3:A7,B3:B7)", 2),
          workedOut('=RIME.UNCERTAINTY(A3:A7,B3:B7,"freezing point")', 2),
          "°C",
        ],
      ],
    },
  },
];
