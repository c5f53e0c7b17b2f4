import { columnName } from "../../workbook/address";
import { NAMESPACE } from "../../worksheet/namespace";
import type { BookSheet } from "../book";
import { filled, formula, heading, hint, number, sheet, text, title, type DemoCell } from "./cells";
import { priceCell } from "./costingSheet";
import { pantry, recipes } from "./kitchen";
import { OWN_INGREDIENTS } from "./namesSheet";

const HEADER_ROW = 4;
const FIRST_ROW = HEADER_ROW + 1;
const LAST_ROW = HEADER_ROW + recipes.length;
const PRICE_ROW = LAST_ROW + 2;
const FIRST = "B";
const LAST = columnName(pantry.length);
const ITEMS = `$${FIRST}$${HEADER_ROW}:$${LAST}$${HEADER_ROW}`;
const GRAMS = `${FIRST}${FIRST_ROW}:${LAST}${LAST_ROW}`;

const [BATCH, COST, FREEZING, SERVED_AS, SERVED_AT, ICE, CHECK] = Array.from(
  { length: 7 },
  (_, index) => columnName(pantry.length + 1 + index),
) as [string, string, string, string, string, string, string];

/** The three columns that one cell each fills for all recipes. */
const filledByOne = {
  freezingPoint: `${NAMESPACE}.FREEZINGPOINT(${ITEMS},${GRAMS},${OWN_INGREDIENTS})`,
  temperature: `${NAMESPACE}.TARGET(${SERVED_AS}${FIRST_ROW}:${SERVED_AS}${LAST_ROW},"temperature")`,
  ice: `${NAMESPACE}.ICEFRACTION(${ITEMS},${GRAMS},${SERVED_AT}${FIRST_ROW}:${SERVED_AT}${LAST_ROW},"water",${OWN_INGREDIENTS})`,
};

function recipeRow(index: number): DemoCell[] {
  const recipe = recipes[index];
  if (recipe === undefined) return [];
  const row = FIRST_ROW + index;
  const grams = `${FIRST}${row}:${LAST}${row}`;
  const column = (written: string, format: string): DemoCell =>
    index === 0 ? formula(written, format) : filled(format);
  return [
    text(recipe.name),
    ...pantry.map(({ name }): DemoCell => {
      const amount = recipe.grams[name];
      return amount === undefined ? undefined : number(amount);
    }),
    formula(`SUM(${grams})`, "#,##0"),
    formula(`SUMPRODUCT(${grams},$${FIRST}$${PRICE_ROW}:$${LAST}$${PRICE_ROW})/100`, "0.00"),
    column(filledByOne.freezingPoint, "0.00"),
    text(recipe.target),
    column(filledByOne.temperature, "0"),
    column(filledByOne.ice, "0 %"),
    formula(`${NAMESPACE}.CHECK(${ITEMS},${grams},${SERVED_AS}${row},${OWN_INGREDIENTS})`),
  ];
}

const headings = (): DemoCell[] => [
  heading("Recipe, grams of each"),
  ...pantry.map(({ name }) => heading(name, "right")),
  heading("Batch, g", "right"),
  heading("Cost", "right"),
  heading("Freezes from, °C", "right"),
  heading("Served as"),
  heading("at, °C", "right"),
  heading("Water frozen then", "right"),
  heading("Check"),
];

/** Every recipe in one row: one cell fills each column of predictions. */
export const recipesSheet: BookSheet = sheet(
  "Recipes",
  [
    [title("Sallow Row Community Kitchen: frozen sweets")],
    [
      hint(
        `One recipe a row. ${FREEZING}${FIRST_ROW}, ${SERVED_AT}${FIRST_ROW} and ${ICE}${FIRST_ROW} each fill their whole column. Pistachios and biscuit do not dissolve.`,
      ),
    ],
    [],
    headings(),
    ...recipes.map((_, index) => recipeRow(index)),
    [],
    [hint("Price of 100 g"), ...pantry.map((_, index) => formula(priceCell(index), "0.00"))],
  ],
  [210, ...pantry.map(() => 72), 72, 64, 84, 110, 56, 84, 380],
  { frozenRows: HEADER_ROW, frozenColumns: 1, rowHeightsPx: new Map([[HEADER_ROW - 1, 42]]) },
);

/** Where the recipe sheet's answers stand, for the tests. */
export const recipeCells = {
  sheet: "Recipes",
  firstRow: FIRST_ROW,
  lastRow: LAST_ROW,
  columns: { batch: BATCH, cost: COST, freezingPoint: FREEZING, ice: ICE, check: CHECK },
  formulas: filledByOne,
} as const;
