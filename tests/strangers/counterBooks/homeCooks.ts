import { workedOut, type StrangersBook } from "../strangersBook";
import { answersOf } from "./answersOf";

const ripple = answersOf({ "whole milk": 400, "heavy cream": 250, sugar: 125, "egg yolk": 72 });
const peanut = answersOf({
  "whole milk": 366,
  "heavy cream": 119,
  "peanut butter": 128,
  "brown sugar": 110,
  salt: 1.5,
});
const coconut = answersOf({ "coconut milk": 400, sugar: 90, "lime juice": 60, water: 100 });

/** Home cooks, in English. */
export const homeCooks: readonly StrangersBook[] = [
  {
    title: "Mum's raspberry ripple",
    sheets: {
      Ripple: [
        ["Raspberry ripple, Sunday lunch (makes about 1 litre)"],
        [],
        ["Custard", "grams", "what I do"],
        ["Whole milk", 400, "warm to 60 °C with the sugar"],
        ["Heavy cream", 250, "stir in cold at the end"],
        ["Caster sugar", 125],
        ["Egg yolks", 72, "4 of them, cook to 82 °C, so nothing raw is left"],
        ["custard all together", "=SUM(B4:B7)"],
        [],
        ["Ripple", "grams"],
        ["Raspberries", 180, "sieve"],
        ["Caster sugar", 60],
        ["ripple all together", "=SUM(B11:B12)"],
        [],
        [
          `The custard starts to freeze at ${ripple.freezing()} °C, the ripple is folded in after churning.`,
        ],
        ["There is milk, cream and egg in it (Aunt Jo: no!)"],
      ],
    },
  },
  {
    title: "granita, amounts first",
    sheets: {
      Sheet1: [
        ["Lemon granita for 6"],
        [480, "g", "water"],
        [150, "g", "sugar"],
        [130, "g", "lemon juice", "3 big lemons"],
        [2, "g", "salt", "no more!"],
        ["=SUM(A2:A5)", "g", "in the tray"],
        [],
        [workedOut("=RIME.FREEZINGPOINT(C2:C5,A2:A5)", 1), "°C", "first crystals"],
        ["fork it every 30 min, 3 hours in all"],
      ],
    },
  },
  {
    title: "three sorbets beside each other",
    told: ["unknown-ingredient"],
    sheets: {
      "Sorbets 2024": [
        [null, "strawberry", "mango", "blackcurrant"],
        ["fruit, sieved", 500, 500, 400],
        ["sugar", 140, 110, 170],
        ["water", 150, 200, 250],
        ["lemon juice", 20, 30, 0],
        ["sum", "=SUM(B2:B5)", "=SUM(C2:C5)", "=SUM(D2:D5)"],
        [],
        [
          "freezes from (°C)",
          answersOf({ strawberry: 500, sugar: 140, water: 150, "lemon juice": 20 }).freezing(),
          answersOf({ mango: 500, sugar: 110, water: 200, "lemon juice": 30 }).freezing(),
          answersOf({ blackcurrant: 400, sugar: 170, water: 250 }).freezing(),
        ],
        ["churned in (min)", 28, 31, 27],
        ["liked by", "all", "Ben, Asha", "me"],
        [],
        ["Everything weighed in grams. Nothing in here anybody is allergic to."],
      ],
    },
  },
  {
    title: "peanut butter pops with cups",
    sheets: {
      Pops: [
        ["PB POPS", null, null, "makes 8 of 85 ml"],
        ["What", "How much", "in g", "Note"],
        ["Whole milk", "1 1/2 cups", 366, null],
        ["Heavy cream", "1/2 cup", 119, null],
        ["Peanut butter", "1/2 cup", 128, "smooth, salted"],
        ["Brown sugar", "1/2 cup", 110, "packed"],
        ["Salt", "1/4 tsp", 1.5, "fine"],
        ["Together", null, "=SUM(C3:C7)", null],
        ["One pop", null, "=ROUND(C8/8,0)", null],
        [],
        ["Begins to freeze", peanut.freezing(), "°C"],
        ["Ice at -18 °C", peanut.icePercent(-18), "% of the water"],
        [],
        ["PEANUTS!! and dairy. Not for Liam's class."],
      ],
    },
  },
  {
    title: "honey and thyme ice cream",
    sheets: {
      Recipe: [
        ["Honey & thyme", "weights g", "% of mix"],
        ["whole milk", 520, "=B2/$B$8*100"],
        ["double cream", 160, "=B3/$B$8*100"],
        ["honey", 90, "=B4/$B$8*100"],
        ["caster sugar", 60, "=B5/$B$8*100"],
        ["skimmed milk powder", 30, "=B6/$B$8*100"],
        ["thyme, 4 sprigs, taken out", null, null],
        ["mix", "=SUM(B2:B6)", "=SUM(C2:C6)"],
      ],
      Notes: [
        [
          "Freezing point of the mix",
          workedOut("=RIME.FREEZINGPOINT(Recipe!A2:A6,Recipe!B2:B6)", 1),
          "°C",
        ],
        ["Solids", workedOut('=RIME.COMPONENT(Recipe!A2:A6,Recipe!B2:B6,"solids")', 0), "g"],
        ["Drawn from the machine at", -6, "°C"],
        ["Eaten at", -13, "°C"],
        [],
        ["Contains milk. Honey: not for babies under one year."],
      ],
    },
  },
  {
    title: "dairy-free coconut and lime",
    sheets: {
      Sheet1: [
        ["Coconut & lime (vegan)", "10 March", "batch 2"],
        ["Coconut milk, tin", "400 g"],
        ["Sugar", "90 g"],
        ["Lime juice", "60 g"],
        ["Water", "100 g"],
        ["Total", "650 g"],
        [],
        ["Freezing point", `${coconut.freezing()} °C`],
        ["Water in it", `${coconut.grams("water")} g`],
        ["Fat in it", `${coconut.grams("fat")} g`],
        [],
        ["Allergens: none of the fourteen (coconut is not on the list)"],
      ],
    },
  },
  {
    title: "rum and lime pops for the grown-ups",
    sheets: {
      "Grown-up pops": [
        ["Rum & lime pops, 10 moulds at 75 ml"],
        ["18+ only: alcohol in every pop"],
        [],
        ["g", "for 10", "for 20", "for 30"],
        ["water", 430, "=B5*2", "=B5*3"],
        ["sugar", 130, "=B6*2", "=B6*3"],
        ["lime juice", 110, "=B7*2", "=B7*3"],
        ["rum 40 %", 50, "=B8*2", "=B8*3"],
        ["all", "=SUM(B5:B8)", "=SUM(C5:C8)", "=SUM(D5:D8)"],
        [],
        ["freezing point in °C", workedOut("=RIME.FREEZINGPOINT(A5:A8,B5:B8)", 1)],
        ["ice in the water at -18 °C", workedOut("=RIME.ICEFRACTION(A5:A8,B5:B8,-18)", 2)],
      ],
    },
  },
  {
    title: "one page from the freezer door",
    sheets: {
      Sheet1: [
        ["Watermelon slush"],
        ["watermelon flesh", 800, "g"],
        ["sugar", 80, "g"],
        ["lime juice", 40, "g"],
        [null, "=SUM(B2:B4)", "g"],
        ["fp", workedOut("=RIME.FREEZINGPOINT(A2:A4,B2:B4)", 1), "°C"],
      ],
      "Freezer log": [
        ["Date", "top shelf °C", "bottom °C"],
        ["1 July", -18.5, -20.1],
        ["2 July", -18.2, -19.8],
        ["3 July", -19, -20.4],
        ["mean", "=AVERAGE(B2:B4)", "=AVERAGE(C2:C4)"],
      ],
    },
  },
];
