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

// Columns: the recipe's name, what is predicted of it, then the grams of each ingredient, then batch and cost.
const FREEZING = "B";
const SERVED_AS = "C";
const SERVED_AT = "D";
const ICE = "E";
const CHECK = "F";
const ANSWERS = 5;
const FIRST = columnName(1 + ANSWERS);
const LAST = columnName(ANSWERS + pantry.length);
const BATCH = columnName(ANSWERS + pantry.length + 1);
const COST = columnName(ANSWERS + pantry.length + 2);

const column = (letter: string): string => `${letter}${FIRST_ROW}:${letter}${LAST_ROW}`;
const ITEMS = `$${FIRST}$${HEADER_ROW}:$${LAST}$${HEADER_ROW}`;
const GRAMS = `${FIRST}${FIRST_ROW}:${LAST}${LAST_ROW}`;

/** The three columns that one cell each fills for all recipes. */
const filledByOne = {
  freezingPoint: `${NAMESPACE}.FREEZINGPOINT(${ITEMS},${GRAMS},${OWN_INGREDIENTS})`,
  temperature: `${NAMESPACE}.TARGET(${column(SERVED_AS)},"temperature")`,
  ice: `${NAMESPACE}.ICEFRACTION(${ITEMS},${GRAMS},${column(SERVED_AT)},"water",${OWN_INGREDIENTS})`,
};

function recipeRow(index: number): DemoCell[] {
  const recipe = recipes[index];
  if (recipe === undefined) return [];
  const row = FIRST_ROW + index;
  const grams = `${FIRST}${row}:${LAST}${row}`;
  const first = (written: string, format: string): DemoCell =>
    index === 0 ? formula(written, format) : filled(format);
  return [
    text(recipe.name),
    first(filledByOne.freezingPoint, "0.00"),
    text(recipe.target),
    first(filledByOne.temperature, "0.0"),
    first(filledByOne.ice, "0 %"),
    formula(`${NAMESPACE}.CHECK(${ITEMS},${grams},${SERVED_AS}${row},${OWN_INGREDIENTS})`),
    ...pantry.map(({ name }): DemoCell => {
      const amount = recipe.grams[name];
      return amount === undefined ? undefined : number(amount);
    }),
    formula(`SUM(${grams})`, "#,##0"),
    formula(`SUMPRODUCT(${grams},$${FIRST}$${PRICE_ROW}:$${LAST}$${PRICE_ROW})/100`, "0.00"),
  ];
}

const headings = (): DemoCell[] => [
  heading("Recipe"),
  heading("Freezes from, °C", "right"),
  heading("Served as"),
  heading("at, °C", "right"),
  heading("Water frozen then", "right"),
  heading("Check"),
  ...pantry.map(({ name }) => heading(name, "right")),
  heading("Batch, g", "right"),
  heading("Cost", "right"),
];

const prices = (): DemoCell[] => [
  hint("Price of 100 g"),
  ...Array.from({ length: ANSWERS }, () => undefined),
  ...pantry.map((_, index) => formula(priceCell(index), "0.00")),
];

/** Every recipe in one row: one cell fills each column of predictions. */
export const recipesSheet: BookSheet = sheet(
  "Recipes",
  [
    [title("Sallow Row Community Kitchen: frozen sweets")],
    [
      hint(
        `One recipe a row, grams to the right. ${FREEZING}${FIRST_ROW}, ${SERVED_AT}${FIRST_ROW} and ${ICE}${FIRST_ROW} each fill their whole column. Pistachios and biscuit do not dissolve. Honey is not for children under one year.`,
      ),
    ],
    [],
    headings(),
    ...recipes.map((_, index) => recipeRow(index)),
    [],
    prices(),
  ],
  [230, 84, 140, 60, 100, 430, ...pantry.map(() => 76), 72, 64],
  { frozenRows: HEADER_ROW, frozenColumns: 1, rowHeightsPx: new Map([[HEADER_ROW - 1, 42]]) },
);

/** Where the recipe sheet's answers stand, for the tests. */
export const recipeCells = {
  sheet: "Recipes",
  firstRow: FIRST_ROW,
  lastRow: LAST_ROW,
  columns: { freezingPoint: FREEZING, ice: ICE, check: CHECK, batch: BATCH, cost: COST },
  items: ITEMS,
  grams: (row: number): string => `${FIRST}${row}:${LAST}${row}`,
  ownIngredients: OWN_INGREDIENTS,
} as const;
