import type { Book } from "../book";

export const demoBook: Book = {
  name: "Demo",
  names: [{ name: "Sugars", refersTo: "Sheet1!$A$1:$A$3", sheet: null }],
  sheets: [
    {
      name: "Sheet1",
      hidden: false,
      rows: [
        [{ value: "water", look: { bold: true } }, { value: "sucrose" }, { value: "°C" }],
        [
          { value: 200 },
          { value: 70 },
          {
            value: null,
            formula: "RIME.FREEZINGPOINT(A1:B1,A2:B4)",
            look: { numberFormat: "0.00" },
          },
          { value: null, formula: "SUM(Prices[Price])" },
        ],
        [{ value: 200 }, { value: -7 }],
        [{ value: 200 }, { value: 30 }],
        [],
        [{ value: "Item" }, { value: "Price" }],
        [{ value: "Milk" }, { value: 1.1 }],
        [{ value: "Sugar" }, { value: 2.2 }],
      ],
      columnWidthsPx: new Map([[0, 160]]),
      rowHeightsPx: new Map(),
      hiddenRows: new Set(),
      hiddenColumns: new Set(),
      merged: [],
      tables: [
        {
          name: "Prices",
          range: { top: 5, left: 0, bottom: 7, right: 1 },
          columns: ["Item", "Price"],
          hasTotals: false,
        },
      ],
      frozenRows: 1,
      frozenColumns: 0,
    },
  ],
};
