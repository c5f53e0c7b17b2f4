import { workedOut, type StrangersBook } from "../strangersBook";

const firstIce = (names: string, grams: string, digits = 1) =>
  workedOut(`=RIME.FREEZINGPOINT(${names},${grams})`, digits);
const percentIce = (names: string, grams: string, celsius: number) =>
  workedOut(`=RIME.ICEFRACTION(${names},${grams},${celsius})*100`, 0);
const partOf = (item: string, grams: string, part: string) =>
  workedOut(`=RIME.COMPONENT(${item},${grams},"${part}")`, 1);

/** What a line of a balance sheet brings: water, fat, sugars and the rest, in g. */
const balanced = (row: number, name: string, grams: number) => [
  name,
  grams,
  partOf(`A${row}`, `B${row}`, "water"),
  partOf(`A${row}`, `B${row}`, "fat"),
  partOf(`A${row}`, `B${row}`, "sugars"),
  `=B${row}-C${row}-D${row}-E${row}`,
];

export const trialsAndBalances: readonly StrangersBook[] = [
  {
    title: "raspberry trials 1 to 4",
    sheets: {
      Trials: [
        ["Raspberry sorbet, four trials on the small machine. Weights in g."],
        [null, "T1", "T2", "T3", "T4"],
        ["raspberry puree", 500, 500, 500, 500],
        ["sucrose", 220, 180, 160, 140],
        ["dextrose monohydrate", 0, 40, 60, 60],
        ["inulin", 0, 0, 0, 30],
        ["water", 280, 280, 280, 270],
        ["mass", "=SUM(B3:B7)", "=SUM(C3:C7)", "=SUM(D3:D7)", "=SUM(E3:E7)"],
        [
          "calc. freezing point, °C",
          firstIce("$A3:$A7", "B3:B7"),
          firstIce("$A3:$A7", "C3:C7"),
          firstIce("$A3:$A7", "D3:D7"),
          firstIce("$A3:$A7", "E3:E7"),
        ],
        [
          "ice at −12 °C, % of water",
          percentIce("$A3:$A7", "B3:B7", -12),
          percentIce("$A3:$A7", "C3:C7", -12),
          percentIce("$A3:$A7", "D3:D7", -12),
          percentIce("$A3:$A7", "E3:E7", -12),
        ],
        ["drawn at, °C (probe)", -6.1, -6.4, -6.6, -6.2],
        ["panel, 1-9", 5, 6.5, 7, 7.5],
        ["remark", "crumbly", "ok", "good", "best, creamy"],
        ["No declarable allergens in T1-T4."],
      ],
    },
  },
  {
    title: "balance sheet of a milk gelato",
    sheets: {
      Balance: [
        ["Fior di latte, balance (all in grams). Allergen: milk."],
        ["", "batch", "water", "fat", "sugars", "other solids"],
        balanced(3, "whole milk", 600),
        balanced(4, "cream 35 % fat", 150),
        balanced(5, "sucrose", 130),
        balanced(6, "glucose monohydrate", 45),
        balanced(7, "skim milk powder", 45),
        balanced(8, "locust bean gum", 3),
        ["sum", "=SUM(B3:B8)", "=SUM(C3:C8)", "=SUM(D3:D8)", "=SUM(E3:E8)", "=SUM(F3:F8)"],
        [
          "% of batch",
          "=B9/$B$9*100",
          "=C9/$B$9*100",
          "=D9/$B$9*100",
          "=E9/$B$9*100",
          "=F9/$B$9*100",
        ],
        ["wanted, %", null, "60-66", "6-9", "21-25", "4-6"],
        [],
        ["first ice", firstIce("A3:A8", "B3:B8"), "°C"],
      ],
    },
  },
  {
    title: "swapping a third of the sugar",
    told: ["hydrate-not-stated"],
    sheets: {
      Swap: [
        ["What happens if a third of the sucrose goes?"],
        ["g / kg of mix", "plain", "with fructose", "with trehalose", "with erythritol"],
        ["water", 560, 560, 560, 560],
        ["lemon juice", 200, 200, 200, 200],
        ["sucrose", 240, 160, 160, 160],
        ["fructose", null, 80],
        ["trehalose", null, null, 80],
        ["erythritol", null, null, null, 80],
        [],
        [
          "freezing point (°C)",
          firstIce("A3:A8", "B3:B8"),
          firstIce("A3:A8", "C3:C8"),
          firstIce("A3:A8", "D3:D8"),
          firstIce("A3:A8", "E3:E8"),
        ],
        [
          "as sweet as … g of sucrose in 100 g of mix",
          workedOut("=RIME.SWEETNESS(A3:A8,B3:B8)", 1),
          workedOut("=RIME.SWEETNESS(A3:A8,C3:C8)", 1),
          workedOut("=RIME.SWEETNESS(A3:A8,D3:D8)", 1),
          workedOut("=RIME.SWEETNESS(A3:A8,E3:E8)", 1),
        ],
        [
          "Label: erythritol version from 10 % polyols 'excessive consumption may have laxative effects' - not reached",
        ],
        ["no allergens"],
      ],
    },
  },
  {
    title: "gin ladder",
    sheets: {
      Gin: [
        [
          "GIN & LIME SORBET - how much gin can it take? (grams)",
          null,
          null,
          null,
          null,
          null,
          "first ice",
        ],
        [
          "version",
          "water",
          "sucrose",
          "lime juice",
          "gin 40 % vol",
          "sum",
          "°C",
          "alcohol, % of mass",
        ],
        ...[0, 25, 50, 75].map((gin, index) => {
          const row = index + 3;
          return [
            "ABCD".charAt(index),
            560 - gin,
            230,
            210,
            gin,
            `=SUM(B${row}:E${row})`,
            firstIce("$B$2:$E$2", `B${row}:E${row}`),
            workedOut(`=RIME.COMPONENT($B$2:$E$2,B${row}:E${row},"ethanol")/F${row}*100`, 1),
          ];
        }),
        [],
        ["C is the one for the bar. Over 18s only, menu says 'contains alcohol'. No allergens."],
      ],
    },
  },
  {
    title: "honey instead of sugar",
    sheets: {
      Original: [
        ["Thyme ice cream, original", "g"],
        ["whole milk", 560],
        ["cream 35 %", 200],
        ["egg yolk, pasteurised", 60],
        ["sugar", 150],
        ["skimmed milk powder", 30],
        ["honey", null],
        ["sum", "=SUM(B2:B7)"],
        ["freezing point °C", firstIce("A2:A7", "B2:B7")],
        ["Contains milk and egg."],
      ],
      "Honey version": [
        ["Thyme ice cream with honey", "g", "against original"],
        ["whole milk", 545, "=B2-Original!B2"],
        ["cream 35 %", 200, "=B3-Original!B3"],
        ["egg yolk, pasteurised", 60, "=B4-Original!B4"],
        ["sugar", 75, "=B5-Original!B5"],
        ["skimmed milk powder", 30, "=B6-Original!B6"],
        ["honey", 90, "=B7-Original!B7"],
        ["sum", "=SUM(B2:B7)", "=SUM(C2:C7)"],
        ["freezing point °C", firstIce("A2:A7", "B2:B7"), "=B9-Original!B9"],
        ["Contains milk and egg. Honey: not for babies under one year."],
      ],
    },
  },
  {
    title: "fat of our milk through the year",
    sheets: {
      Milk: [
        ["Farm milk for ice cream, pasteurised 72 °C 15 s in our own plant"],
        ["Milk + cream = 8 kg of each 10 kg mix, and the mix shall have 8 % fat"],
        ["month", "milk fat %", "cream fat %", "cream kg", "milk kg", "fat in mix kg"],
        ...[
          ["Jan", 4.31],
          ["Mar", 4.22],
          ["May", 3.95],
          ["Jul", 3.88],
          ["Sep", 4.05],
          ["Nov", 4.27],
        ].map(([month, fat], index) => {
          const row = index + 4;
          return [
            month!,
            fat!,
            40,
            `=(0.8-8*B${row}/100)/(C${row}/100-B${row}/100)`,
            `=8-D${row}`,
            `=(D${row}*C${row}+E${row}*B${row})/100`,
          ];
        }),
        ["mean", "=AVERAGE(B4:B9)", "=AVERAGE(C4:C9)", "=AVERAGE(D4:D9)", "=AVERAGE(E4:E9)"],
        [],
        ["the other 2 kg: sugar 1.4 kg, dextrose 0.3 kg, skimmed milk powder 0.3 kg"],
        ["allergen: milk"],
      ],
    },
  },
  {
    title: "ice at serving temperatures",
    sheets: {
      Mixes: [
        ["amounts in g", "Pistachio", "Mango"],
        ["whole milk", 620],
        ["cream 35 % fat", 80],
        ["pistachio paste", 90],
        ["sucrose", 140, 150],
        ["glucose monohydrate", 40, 50],
        ["skim milk powder", 30],
        ["mango puree", null, 550],
        ["water", null, 220],
        ["lime juice", null, 30],
        ["all", "=SUM(B2:B10)", "=SUM(C2:C10)"],
        ["pistachio: milk, nuts. mango: none"],
      ],
      Serving: [
        ["Percentage of the water that is ice"],
        ["temp. °C", "Pistachio", "Mango"],
        ...[-8, -10, -12, -14, -16, -18].map((celsius) => [
          celsius,
          percentIce("Mixes!A2:A10", "Mixes!B2:B10", celsius),
          percentIce("Mixes!A2:A10", "Mixes!C2:C10", celsius),
        ]),
        [],
        [
          "begins to freeze °C",
          firstIce("Mixes!A2:A10", "Mixes!B2:B10"),
          firstIce("Mixes!A2:A10", "Mixes!C2:C10"),
        ],
        ["Cabinet runs at −13 °C"],
      ],
    },
  },
];
