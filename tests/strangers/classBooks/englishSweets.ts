import { workedOut, type StrangersBook } from "../strangersBook";
import { answerFor } from "./answerFor";

const lemon = { water: 480, sucrose: 190, "lemon juice": 130 };
const bag = { "semi-skimmed milk": 120, "cream 35 % fat": 60, sucrose: 20 };
const custard = {
  "whole milk": 500,
  "cream 35 % fat": 250,
  "egg yolk": 90,
  sucrose: 150,
  "skim milk powder": 25,
  salt: 1,
};
const wine = { "white wine": 300, peach: 350, water: 200, sucrose: 150 };
const honeyBar = { "whole milk yogurt": 600, honey: 110, raspberry: 200, almonds: 90 };
const berry = (fruit: string, sugar: number): Record<string, number> => ({
  [fruit]: 500,
  sucrose: sugar,
  water: 250,
});

export const englishSweets: readonly StrangersBook[] = [
  {
    title: "Lemon sorbet for the open day",
    sheets: {
      "Lemon sorbet": [
        ["Lemon sorbet, kitchen chemistry stand"],
        [],
        [480, "g", "water"],
        [190, "g", "white sugar"],
        [130, "g", "lemon juice, strained"],
        ["=SUM(A3:A5)", "g", "in the tub"],
        [],
        [
          `Starts to freeze at about ${String(answerFor("FREEZINGPOINT", lemon, 1))} °C. In the display at −12 °C roughly ${String(answerFor("ICEFRACTION", lemon, 2, -12) * 100)} % of its water is ice.`,
        ],
        [
          "None of the 14 allergens among the ingredients; made in the school kitchen, so traces are possible.",
        ],
      ],
    },
  },
  {
    title: "Ice cream in a bag, Y8",
    sheets: {
      Lesson: [
        [
          "ICE CREAM IN A BAG",
          null,
          null,
          null,
          "CONTAINS MILK – check the register for allergies",
        ],
        ["inner bag (each pair)", null, null, "outer bag (each pair)"],
        ["semi-skimmed milk", 120, "g", "ice cubes", 700, "g"],
        ["whipping cream", 60, "g", "rock salt", 180, "g"],
        ["caster sugar", 20, "g", null, null, null],
        ["inner bag altogether", "=SUM(B3:B5)", "g", "outer bag altogether", "=SUM(E3:E4)", "g"],
        [],
        ["pairs in the class", 14],
        ["milk to buy", "=B8*B3/1000", "kg"],
        ["cream to buy", "=B8*B4/1000", "kg"],
        ["sugar to buy", "=B8*B5/1000", "kg"],
        ["salt to buy", "=B8*E4/1000", "kg"],
        [],
        ["mix begins to freeze", answerFor("FREEZINGPOINT", bag, 1), "°C"],
        ["ice and salt get down to", -12, "°C, sometimes lower"],
        ["The salt water must not get into the inner bag. Double-zip!"],
      ],
    },
  },
  {
    title: "Gelato base, module 3 of the evening course",
    told: ["hard-coded-number"],
    sheets: {
      Base: [
        ["Fior di latte, balancing by the gram (contains: milk)"],
        ["", "g", "water g", "fat g", "sugars g", "other solids g"],
        ["whole milk", 620, "=B3*0.88", "=B3*0.035", "=B3*0.048", "=B3-C3-D3-E3"],
        ["cream 35 %", 150, "=B4*0.59", "=B4*0.35", "=B4*0.03", "=B4-C4-D4-E4"],
        ["skim milk powder", 45, "=B5*0.04", "=B5*0.01", "=B5*0.52", "=B5-C5-D5-E5"],
        ["sugar", 130, 0, 0, "=B6", "=B6-C6-D6-E6"],
        ["glucose, anhydrous", 50, 0, 0, "=B7", "=B7-C7-D7-E7"],
        ["locust bean gum", 5, 0, 0, 0, "=B8-C8-D8-E8"],
        ["sum", "=SUM(B3:B8)", "=SUM(C3:C8)", "=SUM(D3:D8)", "=SUM(E3:E8)", "=SUM(F3:F8)"],
        [
          "% of mix",
          "=B9/$B$9*100",
          "=C9/$B$9*100",
          "=D9/$B$9*100",
          "=E9/$B$9*100",
          "=F9/$B$9*100",
        ],
        [],
        ["freezing point °C", workedOut("=RIME.FREEZINGPOINT(A3:A8,B3:B8)", 1)],
        [
          "share of the water frozen at −12 °C",
          workedOut("=RIME.ICEFRACTION(A3:A8,B3:B8,-12)*100", 0),
          "%",
        ],
      ],
    },
  },
  {
    title: "Three strawberry sorbets, taste trial",
    sheets: {
      Trial: [
        ["weights in grams", "batch 1", "batch 2", "batch 3"],
        ["strawberries", 600, 600, 600],
        ["sugar", 120, 150, 120],
        ["glucose monohydrate", 0, 0, 40],
        ["water", 150, 150, 150],
        ["lemon juice", 20, 20, 20],
        ["batch weight", "=SUM(B2:B6)", "=SUM(C2:C6)", "=SUM(D2:D6)"],
        [],
        [
          "freezes from (°C)",
          workedOut("=RIME.FREEZINGPOINT(A2:A6,B2:B6)", 1),
          workedOut("=RIME.FREEZINGPOINT(A2:A6,C2:C6)", 1),
          workedOut("=RIME.FREEZINGPOINT(A2:A6,D2:D6)", 1),
        ],
        [
          "of the water, ice at −14 °C (%)",
          workedOut("=RIME.ICEFRACTION(A2:A6,B2:B6,-14)*100", 0),
          workedOut("=RIME.ICEFRACTION(A2:A6,C2:C6,-14)*100", 0),
          workedOut("=RIME.ICEFRACTION(A2:A6,D2:D6,-14)*100", 0),
        ],
        [],
        ["likes, of 22 tasters", 4, 11, 7],
        ["said", "icy", "best, a bit sweet", "scoops well"],
      ],
    },
  },
  {
    title: "Peach and wine pops (adults' class)",
    sheets: {
      Pops: [
        ["Peach & white wine pops – over 18s only, contains alcohol and sulphites (wine)"],
        ["makes 12, a good 80 g each"],
        [],
        ["no.", "ingredient", "for 12 (g)", "each (g)"],
        [1, "peach purée, skinned", 350, "=C5/12"],
        [2, "dry white wine 13 % vol", 300, "=C6/12"],
        [3, "water", 200, "=C7/12"],
        [4, "sugar", 150, "=C8/12"],
        [null, "all", "=SUM(C5:C8)", "=SUM(D5:D8)"],
        [],
        [
          "sets hard enough in the −18 °C freezer overnight; first ice",
          null,
          answerFor("FREEZINGPOINT", wine, 1),
          "°C",
        ],
        ["pure alcohol", null, answerFor("COMPONENT", wine, 0, "ethanol"), "g in all 12"],
      ],
    },
  },
  {
    title: "Frozen yoghurt bark, nursery cooks training",
    sheets: {
      Recipe: [
        ["Yoghurt bark with honey and almonds"],
        ["Plain whole-milk yoghurt", "600 g"],
        ["Clear honey", "110 g"],
        ["Raspberries", "200 g"],
        ["Flaked almonds", "90 g"],
        ["Spread on two trays, freeze 3 hours, break up"],
        ["Tray weight together", "1000 g"],
      ],
      "Who may eat it": [
        ["Milk", "yes"],
        [
          "Nuts",
          "yes – almonds; leave them off for the under-fives, whole pieces are a choking risk",
        ],
        ["Honey", "yes – NEVER for babies under 12 months"],
        ["Gluten, egg, soya", "not in the recipe"],
      ],
      Science: [
        ["The yoghurt part starts freezing at", answerFor("FREEZINGPOINT", honeyBar, 1), "°C"],
        ["water in a whole lot", answerFor("COMPONENT", honeyBar, 0, "water"), "g"],
      ],
    },
  },
  {
    title: "Custard ice cream, assessment sheet",
    sheets: {
      Assessment: [
        ["Level 2 Pastry – practical assessment: vanilla custard ice"],
        ["Candidate: ………………   Station: ……   ", null, null, "Allergens: milk, egg"],
        ["PHASE 1 heat to 60 °C", null, "grams"],
        ["", "whole milk", 500],
        ["", "cream 35 % fat", 250],
        ["", "skimmed milk powder", 25],
        ["subtotal", null, "=SUM(C4:C6)"],
        ["PHASE 2 whisk, then cook together to 84 °C", null, "grams"],
        ["", "egg yolk, pasteurised", 90],
        ["", "caster sugar", 150],
        ["", "salt", 1],
        ["subtotal", null, "=SUM(C9:C11)"],
        ["BOTH", null, "=C7+C12"],
        [],
        ["Model answers", null, null, "marks"],
        ["Freezing point", null, `${String(answerFor("FREEZINGPOINT", custard, 1))} °C`, 2],
        ["Water in the mix", null, `${String(answerFor("COMPONENT", custard, 0, "water"))} g`, 2],
        ["Fat in the mix", null, `${String(answerFor("COMPONENT", custard, 0, "fat"))} g`, 2],
        ["Why chill overnight?", null, "fat crystallises, gums and proteins take up water", 1],
        ["total marks", null, null, "=SUM(D16:D19)"],
      ],
    },
  },
  {
    title: "Chocolate sorbet with shopping",
    sheets: {
      Recipe: [
        [
          "Dark chocolate sorbet (dairy-free recipe; the chocolate contains soya lecithin and may contain traces of milk)",
        ],
        ["", "g"],
        ["water", 520],
        ["sugar", 140],
        ["cocoa powder", 50],
        ["dark chocolate (melted in)", 120],
        ["glucose syrup DE 42", 60],
        ["salt", 1],
        ["Weight", "=SUM(B3:B8)"],
        ["Freezing point", workedOut("=RIME.FREEZINGPOINT(A3:A8,B3:B8)", 1), "°C"],
      ],
      Shopping: [
        ["for 4 batches", "need g", "pack g", "packs", "£ a pack", "£"],
        ["sugar", "=4*Recipe!B4", 1000, 1, 1.1, "=D2*E2"],
        ["cocoa", "=4*Recipe!B5", 250, 1, 3.2, "=D3*E3"],
        ["chocolate", "=4*Recipe!B6", 200, 3, 2.4, "=D4*E4"],
        ["glucose syrup", "=4*Recipe!B7", 500, 1, 2.75, "=D5*E5"],
        ["to pay", null, null, null, null, "=SUM(F2:F5)"],
      ],
    },
  },
  {
    title: "All our sorbets compared",
    told: ["unknown-ingredient"],
    sheets: {
      "Fruit lists": [
        ["Sorbets of the summer school. Everything in g. No nuts, milk, egg or gluten in any."],
        ["", "mango", "raspberry", "blackcurrant", "watermelon"],
        ["fruit", 500, 500, 500, 500],
        ["sugar", 130, 170, 190, 120],
        ["water", 250, 250, 250, 250],
        ["together", "=SUM(B3:B5)", "=SUM(C3:C5)", "=SUM(D3:D5)", "=SUM(E3:E5)"],
      ],
      Comparison: [
        ["sorbet", "freezing point", "ice at −15 °C, % of the water", "how was it"],
        [
          "mango",
          `${String(answerFor("FREEZINGPOINT", berry("mango", 130), 1))} °C`,
          answerFor("ICEFRACTION", berry("mango", 130), 2, -15) * 100,
          "smooth",
        ],
        [
          "raspberry",
          `${String(answerFor("FREEZINGPOINT", berry("raspberry", 170), 1))} °C`,
          answerFor("ICEFRACTION", berry("raspberry", 170), 2, -15) * 100,
          "fine, pips",
        ],
        [
          "blackcurrant",
          `${String(answerFor("FREEZINGPOINT", berry("blackcurrant", 190), 1))} °C`,
          answerFor("ICEFRACTION", berry("blackcurrant", 190), 2, -15) * 100,
          "sharp",
        ],
        [
          "watermelon",
          `${String(answerFor("FREEZINGPOINT", berry("watermelon", 120), 1))} °C`,
          answerFor("ICEFRACTION", berry("watermelon", 120), 2, -15) * 100,
          "icy",
        ],
      ],
    },
  },
];
