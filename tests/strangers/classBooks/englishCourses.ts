import { workedOut, type StrangersBook } from "../strangersBook";
import { answerFor } from "./answerFor";

const limeIce = { "lime juice": 180, sucrose: 200, water: 630 };

const banana = {
  "whole milk": 420,
  "cream 35 % fat": 180,
  "skim milk powder": 30,
  sucrose: 90,
  "dark brown sugar": 40,
  banana: 200,
  "lemon juice": 10,
  salt: 2,
  "vanilla extract": 4,
  "locust bean gum": 2,
};
const cherry = {
  "sweet cherry": 550,
  sucrose: 140,
  "glucose monohydrate": 35,
  water: 225,
  "lemon juice": 15,
};
const iceOfCherry = (temperatureC: number): number =>
  Math.round(answerFor("ICEFRACTION", cherry, 2, temperatureC) * 100);
const yoghurt = {
  "whole milk yogurt": 650,
  "cream 35 % fat": 120,
  sucrose: 150,
  "lemon juice": 15,
};
const ginger = { water: 560, sucrose: 180, ginger: 40, "lime juice": 90 };
const mapleCoconut = { "coconut milk": 500, "maple syrup": 140, pecans: 60, salt: 1 };
const tub = { "double cream": 300, "sweetened condensed milk": 200, raspberry: 150 };

export const englishCourses: readonly StrangersBook[] = [
  {
    title: "Pop mould scaling",
    sheets: {
      Scale: [
        ["Mould holds", 10, "pops of", 75, "g"],
        ["so we need", "=B1*D1", "g of mix"],
        ["recipe gives", "=SUM(B6:B9)", "g of mix"],
        ["times", "=B2/B3"],
        ["Pineapple-coconut", "g in recipe", "g to weigh"],
        ["pineapple", 400, "=B6*$B$4"],
        ["coconut milk", 300, "=B7*$B$4"],
        ["sugar", 90, "=B8*$B$4"],
        ["lime juice", 30, "=B9*$B$4"],
        [null, null, "=SUM(C6:C9)"],
        ["freezing point in °C by the add-in", "=RIME.FREEZINGPOINT(A6:A9,B6:B9)"],
        ["Allergies: coconut (tell parents, although not on the legal list). Vegan."],
      ],
    },
  },
  {
    title: "Camp lime ice (Fahrenheit)",
    sheets: {
      "Lime ice": [
        ["Lime ice, Camp Science Week – temperatures in °F"],
        ["3/4 cup", "lime juice", 180, "g"],
        ["1 cup", "granulated sugar", 200, "g"],
        ["2 2/3 cups", "water", 630, "g"],
        ["makes", null, "=SUM(C2:C4)", "g"],
        [],
        [
          "freezing point",
          null,
          workedOut(`=32+1.8*${String(answerFor("FREEZINGPOINT", limeIce, 2))}`, 1),
          "°F",
        ],
        ["camp freezer", null, 5, "°F"],
        ["serve at", null, 14, "°F"],
        ["No common allergens. Sticky fingers!"],
      ],
    },
  },
  {
    title: "Coffee granita week plan",
    sheets: {
      Granita: [
        ["Per cent", "Part", "for 2.5 kg"],
        ["(mass)", null, "(g)"],
        [84, "brewed coffee", "=A3*25"],
        [15, "sugar", "=A4*25"],
        [1, "lemon juice", "=A5*25"],
        ["=SUM(A3:A5)", null, "=SUM(C3:C5)"],
        [null, "freezing point (°C)", workedOut("=RIME.FREEZINGPOINT(B3:B5,C3:C5)", 1)],
        [null, "caffeine – not for the juniors", null],
      ],
      Duty: [
        ["Day", "who scrapes", "freezer °C at 9:00", "at 14:00"],
        ["Mon", "Priya", -17.5, -16.8],
        ["Tue", "Oskar", -18.1, -17.2],
        ["Wed", "Bea", -18.4, -17.9],
        ["Thu", "Priya", -17.9, -16.5],
        ["warmest", null, "=MAX(C2:C5)", "=MAX(D2:D5)"],
      ],
    },
  },
  {
    title: "Banoffee sundae, end-of-course dinner",
    told: ["unknown-ingredient", "caution-not-named"],
    sheets: {
      "Ice cream": [
        [],
        [null, "BANOFFEE ICE CREAM", null, null, "Team: Jo, Kit, Marta"],
        [null, "stage", "what", "weight (g)", "remark"],
        [null, "A – milk side", "whole milk", 420, "full cream, from the farm shop"],
        [null, null, "cream 35 % fat", 180, null],
        [null, null, "skimmed milk powder", 30, "mix dry with the gum"],
        [null, null, "locust bean gum", 2, null],
        [null, null, "white sugar", 90, null],
        [null, null, "dark muscovado sugar", 40, null],
        [null, null, "salt", 2, null],
        [null, "A in all", null, "=SUM(D4:D10)", null],
        [null, "B – fruit side", "ripe bananas", 200, "weighed peeled"],
        [null, null, "lemon juice", 10, null],
        [null, null, "vanilla extract", 4, null],
        [null, "B in all", null, "=SUM(D12:D14)", null],
        [null, "A + B", null, "=D11+D15", "churn together, cold"],
        [],
        [null, "freezing point", null, answerFor("FREEZINGPOINT", banana, 1), "°C (calculated)"],
        [null, "out of the machine at", null, -6, "°C"],
      ],
      "On the plate": [
        ["per sundae", "g", "for 24 guests, kg"],
        ["ice cream", 90, "=B2*24/1000"],
        ["digestive biscuits, crushed", 15, "=B3*24/1000"],
        ["toffee sauce (bought)", 20, "=B4*24/1000"],
        ["pecans", 8, "=B5*24/1000"],
        ["plate", "=SUM(B2:B5)", "=SUM(C2:C5)"],
        [],
        ["Menu card: contains MILK, GLUTEN (wheat, in the biscuits), NUTS (pecans)"],
      ],
    },
  },
  {
    title: "Cherry sorbet, how hard at which temperature",
    sheets: {
      List: [
        ["Sorbet for session 5", "g"],
        ["sweet cherries, stoned", 550],
        ["sugar", 140],
        ["glucose monohydrate", 35],
        ["water", 225],
        ["lemon juice", 15],
        ["weight of all", "=SUM(B2:B6)"],
      ],
      Curve: [
        ["at °C", "of its water frozen, %", "class said"],
        [-5, iceOfCherry(-5), "slush"],
        [-8, iceOfCherry(-8), "soft serve"],
        [-12, iceOfCherry(-12), "good scoop"],
        [-15, iceOfCherry(-15), "firm"],
        [-18, iceOfCherry(-18), "leave out five minutes"],
        [],
        ["first crystals at", answerFor("FREEZINGPOINT", cherry, 1), "°C"],
        ["No allergens declared; stones removed by hand, so warn of the odd one."],
      ],
    },
  },
  {
    title: "Recipe booklet page 3",
    sheets: {
      "Page 3": [
        ["Our three favourites (each fits into a 1-litre box)"],
        [],
        ["Frozen yoghurt", null, "answers to the quiz"],
        [
          "650 g",
          "plain yoghurt (whole milk)",
          "freezes at",
          answerFor("FREEZINGPOINT", yoghurt, 1),
          "°C",
        ],
        ["120 g", "cream 35 %", "water", answerFor("COMPONENT", yoghurt, 0, "water"), "g"],
        ["150 g", "sugar", "allergens", "milk"],
        ["15 g", "lemon juice"],
        ["935 g", "ready to churn"],
        [],
        ["Ginger-lime ice", null, "answers to the quiz"],
        ["560 g", "water", "freezes at", answerFor("FREEZINGPOINT", ginger, 1), "°C"],
        ["180 g", "sugar", "water", answerFor("COMPONENT", ginger, 0, "water"), "g"],
        ["40 g", "fresh ginger, grated", "allergens", "none"],
        ["90 g", "lime juice"],
        ["870 g", "ready to churn"],
        [],
        ["Maple-pecan coconut ice", null, "answers to the quiz"],
        ["500 g", "coconut milk", "freezes at", answerFor("FREEZINGPOINT", mapleCoconut, 1), "°C"],
        ["140 g", "maple syrup", "water", answerFor("COMPONENT", mapleCoconut, 0, "water"), "g"],
        ["60 g", "pecans, toasted", "allergens", "pecans (nuts); coconut"],
        ["1 g", "salt"],
        ["701 g", "ready to churn"],
      ],
    },
  },
  {
    title: "No-churn raspberry ripple, after-school club",
    sheets: {
      Card: [
        ["No-churn raspberry ripple (M)"],
        ["1 tub", "double cream", "300 g", "M"],
        ["half a tin", "sweetened condensed milk", "200 g", "M"],
        ["a good cupful", "raspberries, crushed", "150 g", null],
        [],
        ["Whip, fold, freeze overnight at −18 °C. Fills a 650 g box."],
        [
          "The part that is not fat begins to freeze",
          null,
          `between ${(answerFor("FREEZINGPOINT", tub, 1) - 0.2).toFixed(1)} and ${(answerFor("FREEZINGPOINT", tub, 1) + 0.2).toFixed(1)} °C`,
        ],
        ["M = milk"],
      ],
      Register: [
        ["Child", "allowed", "paid (£)"],
        ["Ada", "yes", 1.5],
        ["Ben", "no – milk", 0],
        ["Chidi", "yes", 1.5],
        ["Dora", "yes", 1.5],
        ["", "in the tin", "=SUM(C2:C5)"],
      ],
    },
  },
  {
    title: "Fructose against sucrose (sixth form project)",
    sheets: {
      Project: [
        ["Does fruit sugar freeze lower than table sugar? Same grams, 250 g water each."],
        [],
        [null, "table sugar", "fruit sugar"],
        ["sugar (g)", 40, 40],
        ["water (g)", 250, 250],
        ["molar mass (g/mol)", 342.3, 180.16],
        ["molality (mol/kg)", "=B4/B6/B5*1000", "=C4/C6/C5*1000"],
        ["Kf × molality (K), Kf = 1.86 K kg/mol", "=1.86*B7", "=1.86*C7"],
        ["measured, four runs (°C)", -0.9, -1.7],
        [null, -0.9, -1.6],
        [null, -0.8, -1.7],
        [null, -0.9, -1.7],
        ["average (°C)", "=AVERAGE(B9:B12)", "=AVERAGE(C9:C12)"],
        [
          "Conclusion: yes, nearly twice as low, as the smaller molecule gives more particles per gram.",
        ],
      ],
    },
  },
];
