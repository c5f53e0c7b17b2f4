import { workedOut, type StrangersBook } from "../strangersBook";

export const handedDown: readonly StrangersBook[] = [
  {
    title: "house syrup of the café we took over",
    sheets: {
      Syrup: [
        ["House syrup (fridge, max 14 days at 4 °C)"],
        ["sugar", 1000, "g"],
        ["water", 800, "g"],
        ["makes", "=B2+B3", "g"],
      ],
      "Lemon sorbet": [
        ["Lemon sorbet as in the old folder", "g", null, "without syrup it is", "g"],
        ["house syrup", 450, null, "sugar", "=B2*Syrup!B2/Syrup!B4"],
        ["water", 330, null, "water", "=B3+B2*Syrup!B3/Syrup!B4"],
        ["lemon juice", 220, null, "lemon juice", "=B4"],
        ["sum", "=SUM(B2:B4)", null, "sum", "=SUM(E2:E4)"],
        [],
        [null, null, null, "freezing point, °C", workedOut("=RIME.FREEZINGPOINT(D2:D4,E2:E4)", 1)],
        ["Old owner's remark: 'bit soft in August'. Allergens: none."],
      ],
    },
  },
  {
    title: "Zeltlager der Pfadfinder",
    sheets: {
      Lager: [
        ["Nachtisch am letzten Abend"],
        ["Kinder + Leiter", 36, "Rezept reicht für", 6],
        [],
        ["ok?", "für 6 (g)", "Was", "für alle (g)"],
        ["x", 250, "Himbeeren TK", "=B5*$B$2/$D$2"],
        ["x", 150, "Joghurt 3.5 %", "=B6*$B$2/$D$2"],
        ["", 70, "Zucker", "=B7*$B$2/$D$2"],
        ["", 80, "Sahne 35 %", "=B8*$B$2/$D$2"],
        [null, "=SUM(B5:B8)", "Summe", "=SUM(D5:D8)"],
        [],
        ["Zelt", "wer darf nicht", "warum", "bekommt"],
        ["Dachs", "Emil", "Milch", "Wassereis vom Kiosk"],
        ["Otter", "Nora", "Milch", "Wassereis vom Kiosk"],
        [],
        ["Kühltruhe beim Bauern: −20 °C, um 19 Uhr holen"],
      ],
    },
  },
  {
    title: "recomputed table of an allotment club",
    sheets: {
      Club: [
        ["Allotment ices. Masses in grams; temperatures in °C"],
        [
          "Ice",
          "plums",
          "blackberries",
          "pears",
          "sugar",
          "water",
          "lemon juice",
          "Batch",
          "Freezes at (old table)",
          "Freezes at (now)",
          "Difference",
        ],
        ...(
          [
            ["Plum", [900, null, null, 260, 300, 40]],
            ["Bramble", [null, 800, null, 320, 420, 20]],
            ["Pear", [null, null, 1000, 220, 230, 60]],
            ["Hedgerow", [300, 500, null, 280, 380, 30]],
          ] as const
        ).map(([ice, masses], index) => {
          const row = index + 3;
          const answer = `=RIME.FREEZINGPOINT($B$2:$G$2,B${row}:G${row})`;
          return [
            ice,
            ...masses,
            `=SUM(B${row}:G${row})`,
            workedOut(answer, 1),
            answer,
            `=J${row}-I${row}`,
          ];
        }),
        [],
        ["All four: fruit, sugar and water only, suitable for everybody"],
        ["Treasurer: jars and sugar £41.20, sold 86 tubs at £1.50"],
      ],
    },
  },
];
