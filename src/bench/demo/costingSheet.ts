import type { BookSheet } from "../book";
import { formula, heading, hint, number, sheet, text, title } from "./cells";
import { pantry } from "./kitchen";

const HEADER_ROW = 4;
const LAST_ROW = HEADER_ROW + pantry.length;

/** The cell with the price of 100 g of the item at a place in the pantry. */
export const priceCell = (index: number): string => `Costing!$D$${HEADER_ROW + 1 + index}`;

/** What a pack costs, and what that makes for 100 g. */
export const costingSheet: BookSheet = sheet(
  "Costing",
  [
    [title("What the kitchen pays")],
    [hint("Made-up prices. Change a pack here and every batch follows.")],
    [],
    [
      heading("Item"),
      heading("Pack, g", "right"),
      heading("Price of the pack", "right"),
      heading("Price of 100 g", "right"),
    ],
    ...pantry.map(({ name, packGrams, packPrice }, index) => {
      const row = HEADER_ROW + 1 + index;
      return [
        text(name),
        number(packGrams, "#,##0"),
        number(packPrice, "0.00"),
        formula(`C${row}/B${row}*100`, "0.000"),
      ];
    }),
  ],
  [150, 90, 130, 120],
  {
    frozenRows: HEADER_ROW,
    tables: [
      {
        name: "Prices",
        range: { top: HEADER_ROW - 1, left: 0, bottom: LAST_ROW - 1, right: 3 },
        columns: ["Item", "Pack, g", "Price of the pack", "Price of 100 g"],
        hasTotals: false,
      },
    ],
  },
);
