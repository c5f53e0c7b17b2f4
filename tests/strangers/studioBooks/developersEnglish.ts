import { workedOut, type StrangersBook, type StrangersCell } from "../strangersBook";

const versions = ["B", "C", "D", "E"];

/** One pop of "will it set": its grams across, what it does behind. */
const pop = (
  row: number,
  name: string,
  grams: readonly number[],
  verdict: string,
): readonly StrangersCell[] => [
  name,
  ...grams,
  `=SUM(B${row}:G${row})`,
  workedOut(`=RIME.FREEZINGPOINT($B$4:$G$4,B${row}:G${row})`, 1),
  workedOut(`=100*RIME.ICEFRACTION($B$4:$G$4,B${row}:G${row},-18)`, 0),
  verdict,
];

/** Old workbooks of people who develop and teach frozen sweets, in English. */
export const developersEnglish: readonly StrangersBook[] = [
  {
    title: "lemon bar, four versions",
    sheets: {
      "Lemon bar": [
        ["Lemon bar: how it got to v4", null, null, null, null, "all weights g"],
        [],
        [null, "v1", "v2", "v3", "v4", "remarks"],
        ["Lemon juice", 90, 90, 105, 105],
        ["Water", 330, 300, 290, 285, "boiled, cooled"],
        ["Sugar", 120, 110, 95, 85],
        ["Dextrose monohydrate", 0, 30, 45, 60, "from the brewing shop"],
        ["Guar gum", 0, 0, 1, 1, "mix dry with the sugar!"],
        ["Batch", ...versions.map((letter) => `=SUM(${letter}4:${letter}8)`)],
        ["Bars of 65 g", ...versions.map((letter) => `=${letter}9/65`), "round down"],
        [],
        [
          "Starts to freeze, °C",
          ...versions.map((letter) =>
            workedOut(`=RIME.FREEZINGPOINT($A$4:$A$8,${letter}4:${letter}8)`, 1),
          ),
        ],
        [
          "Water frozen at -12 °C, %",
          ...versions.map((letter) =>
            workedOut(`=100*RIME.ICEFRACTION($A$4:$A$8,${letter}4:${letter}8,-12)`, 0),
          ),
        ],
        ["Bite (1 stone, 5 slush)", 1, 2, 3, 4, "panel of 6, straight from the box"],
        ["Made", "May 24", "June 24", "June 24", "Apr 25"],
        [],
        ["v4 is the one in the course. No allergens in any of them."],
      ],
    },
  },
  {
    title: "pops with alcohol, will it set",
    sheets: {
      "Adult pops": [
        ["Adult pops. ALCOHOL in every one: over-18s only, not near the children's box"],
        ["grams per batch of roughly ten pops"],
        [],
        [
          "pop",
          "Water",
          "Sugar",
          "Lime juice",
          "Watermelon",
          "Tequila 40 %",
          "Vodka 40 %",
          "batch",
          "first ice °C",
          "% of water frozen at -18 °C",
          "sets?",
        ],
        pop(5, "Margarita", [380, 120, 110, 0, 60, 0], "yes, overnight"),
        pop(6, "Watermelon vodka", [60, 60, 40, 480, 0, 50], "yes"),
        pop(7, "Vodka lime", [450, 110, 90, 0, 0, 45], "yes"),
        pop(8, "Strong margarita", [330, 110, 110, 0, 115, 0], "soft, needs -20 °C"),
        [],
        ["most spirit in a batch (g)", "=MAX(F5:G8)"],
      ],
    },
  },
  {
    title: "pistachio slab with its costs",
    sheets: {
      Slab: [
        ["Pistachio & honey slab, tin 20 x 20 cm"],
        [],
        ["", "grams", "price per kg ($)", "cost ($)", "allergen"],
        ["Base"],
        ["Cream 35%", 320, 7.2, "=B5/1000*C5", "milk"],
        ["Sweetened condensed milk", 180, 6.5, "=B6/1000*C6", "milk"],
        ["Honey", 40, 14, "=B7/1000*C7", "not for babies under 1"],
        ["Salt", 1, 1.2, "=B8/1000*C8", null],
        ["base, together", "=SUM(B5:B8)", null, "=SUM(D5:D8)"],
        ["Stirred in (does not dissolve)"],
        ["Pistachios", 70, 32, "=B11/1000*C11", "nuts"],
        ["Digestive biscuits", 60, 5, "=B12/1000*C12", "gluten"],
        ["pieces, together", "=SUM(B11:B12)", null, "=SUM(D11:D12)"],
        [],
        ["slab", "=B9+B13", "g", "=D9+D13"],
        ["16 squares, each", "=B15/16", "g", "=D15/16"],
        [],
        ["Base freezes from", workedOut("=RIME.FREEZINGPOINT(A5:A8,B5:B8)", 1), "°C"],
        ["cuts well at -14 to -12 °C, take out 5 min before"],
      ],
    },
  },
  {
    title: "coffee granita in cups and spoons",
    sheets: {
      Granita: [
        ["COFFEE GRANITA  (makes about 4 cups)"],
        [],
        ["2 cups", 475, "g", "Brewed coffee", "strong, decaf for the evening class"],
        ["1/3 cup + 1 tbsp", 79, "g", "Sugar"],
        ["1 pinch", 0.5, "g", "Salt"],
        ["1 tbsp", 15, "g", "Lemon juice", "sounds odd, try it"],
        [null, "=SUM(B3:B6)", "g", "into a flat dish"],
        [],
        ["Fork through every 30 min, 4 times. Eat at about -8 °C."],
        [
          "Starts to freeze at",
          workedOut("=RIME.FREEZINGPOINT(D3:D6,B3:B6)", 1),
          "°C, at -8 °C",
          workedOut("=100*RIME.ICEFRACTION(D3:D6,B3:B6,-8)", 0),
          "% of the water is ice",
        ],
        ["To serve: whipped cream (milk!) for those who want it"],
      ],
    },
  },
  {
    title: "forecast against what was measured",
    sheets: {
      Base: [
        ["Blackcurrant sorbet, working recipe 2026"],
        ["item", "grams"],
        ["Blackcurrants", 320],
        ["Water", 330],
        ["Sugar", 150],
        ["Glucose syrup DE 42", 60],
        ["total", "=SUM(B3:B6)"],
      ],
      Log: [
        ["Log of the batches from sheet Base"],
        [
          "forecast first ice",
          workedOut("=RIME.FREEZINGPOINT(Base!A3:A6,Base!B3:B6)", 1),
          "°C (give or take 0.2)",
        ],
        [
          "forecast ice at -16 °C",
          workedOut("=100*RIME.ICEFRACTION(Base!A3:A6,Base!B3:B6,-16)", 0),
          "% of the water",
        ],
        [],
        [
          "date",
          "who",
          "freezer °C",
          "first ice seen °C",
          "seen minus forecast, K",
          "firmness 0-10",
        ],
        ["2026-06-12", "me", -18, -2.5, "=D6-$B$2", 7],
        ["2026-06-19", "class A", -16, -2.7, "=D7-$B$2", 6],
        ["2026-06-26", "class B", -17, -2.6, "=D8-$B$2", 6],
        ["2026-07-03", "me", -21, -2.6, "=D9-$B$2", 9],
        [],
        ["on average", null, "=AVERAGE(C6:C9)", "=AVERAGE(D6:D9)", "=AVERAGE(E6:E9)"],
        ["no allergens; stains everything"],
      ],
    },
  },
  {
    title: "frozen yogurt for a class that thinks in Fahrenheit",
    sheets: {
      "Peach froyo": [
        ["Peach frozen yogurt (community class, spring)"],
        ["Everything weighed in grams, every temperature in °F"],
        [],
        ["Whole milk yogurt", 450],
        ["Peaches", 400],
        ["Sugar", 120],
        ["Maple syrup", 80],
        ["Batch", "=SUM(B4:B7)"],
        [],
        ["Freezing starts at (°F)", workedOut("=32+1.8*RIME.FREEZINGPOINT(A4:A7,B4:B7)", 1)],
        ["Take it from the machine at (°F)", 21],
        ["Home freezer (°F)", 0],
        ["Let it stand 10 minutes; scoops from about (°F)", 12],
        [],
        ["Allergen: MILK. Serves 8."],
      ],
    },
  },
  {
    title: "how to make it softer without making it sweeter",
    sheets: {
      Swap: [
        ["Vanilla, sugar swap demo (course day 2)"],
        [],
        ["", "plain (g)", "swapped (g)", "difference (g)"],
        ["Whole milk", 540, 540, "=C4-B4"],
        ["Cream 35%", 240, 240, "=C5-B5"],
        ["Sugar", 150, 108, "=C6-B6"],
        ["Dextrose monohydrate", 0, 60, "=C7-B7"],
        ["Skim milk powder", 45, 45, "=C8-B8"],
        ["Pasteurised egg yolk", 40, 40, "=C9-B9"],
        ["Sum", "=SUM(B4:B9)", "=SUM(C4:C9)", "=C10-B10"],
        [],
        [
          "first ice / °C",
          workedOut("=RIME.FREEZINGPOINT(A4:A9,B4:B9)", 2),
          workedOut("=RIME.FREEZINGPOINT(A4:A9,C4:C9)", 2),
          "=C12-B12",
        ],
        [
          "ice at -13 °C / % of water",
          workedOut("=100*RIME.ICEFRACTION(A4:A9,B4:B9,-13)", 1),
          workedOut("=100*RIME.ICEFRACTION(A4:A9,C4:C9,-13)", 1),
          "=C13-B13",
        ],
        [
          "sugars, lactose too / g",
          ...["B", "C"].map((letter) =>
            workedOut(`=RIME.COMPONENT(A4:A9,${letter}4:${letter}9,"sugars")`, 0),
          ),
          "=C14-B14",
        ],
        [],
        ["milk and egg in both"],
      ],
    },
  },
];
