import { NAMESPACE } from "../../worksheet/namespace";
import type { BookSheet } from "../book";
import { filled, formula, heading, hint, number, sheet, text, title } from "./cells";
import { OWN_INGREDIENTS } from "./namesSheet";

const HEADER_ROW = 4;

/** The bars as they are made in class: spoons and cups, turned into grams. */
const measures: readonly (readonly [item: string, amount: number, unit: string])[] = [
  ["Apricot", 600, "g"],
  ["Sugar", 0.75, "cup"],
  ["Dextrose", 40, "g"],
  ["Glucose syrup", 60, "g"],
  ["Lemon juice", 2, "tbsp"],
  ["Pistachios", 60, "g"],
];

const LAST_ROW = HEADER_ROW + measures.length;
const ITEMS = `$A$${HEADER_ROW + 1}:$A$${LAST_ROW}`;
const GRAMS = `$D$${HEADER_ROW + 1}:$D$${LAST_ROW}`;
const MIX = `${ITEMS},${GRAMS}`;

const CURVE_STEPS = 12;

/** What is asked about the bars: words, formula and format. */
const questions: readonly (readonly [label: string, written: string, format: string])[] = [
  ["Freezes from, °C", `${NAMESPACE}.FREEZINGPOINT(${MIX},${OWN_INGREDIENTS})`, "0.00"],
  [
    "Water frozen at −18 °C",
    `${NAMESPACE}.ICEFRACTION(${MIX},-18,"water",${OWN_INGREDIENTS})`,
    "0 %",
  ],
  [
    "Ice in the whole bar at −18 °C",
    `${NAMESPACE}.ICEFRACTION(${MIX},-18,"mix",${OWN_INGREDIENTS})`,
    "0 %",
  ],
  [
    "Half of the water is ice at, °C",
    `${NAMESPACE}.ICETEMPERATURE(${MIX},0.5,"water",${OWN_INGREDIENTS})`,
    "0.0",
  ],
  [
    "Tastes as sweet as sugar, g per 100 g",
    `${NAMESPACE}.SWEETNESS(${MIX},${OWN_INGREDIENTS})`,
    "0.0",
  ],
  ["Water, g", `${NAMESPACE}.COMPONENT(${MIX},"water",${OWN_INGREDIENTS})`, "0"],
  [
    "Nuts and other matter that does not dissolve, g",
    `${NAMESPACE}.COMPONENT(${MIX},"inert",${OWN_INGREDIENTS})`,
    "0",
  ],
];

/** One recipe in full: household measures, what it does in the cold, and its freezing curve. */
export const barsSheet: BookSheet = sheet(
  "Apricot bars",
  [
    [title("Apricot-pistachio sorbet bars")],
    [hint("Change an amount and look below. The pane shows the same numbers with a picture.")],
    [],
    [heading("Ingredient"), heading("Amount", "right"), heading("Unit"), heading("g", "right")],
    ...measures.map(([item, amount, unit], index) => {
      const row = HEADER_ROW + 1 + index;
      return [
        text(item),
        number(amount, Number.isInteger(amount) ? "0" : "0.00"),
        text(unit),
        formula(`${NAMESPACE}.GRAMS(A${row},B${row},C${row},${OWN_INGREDIENTS})`, "0"),
      ];
    }),
    [],
    [heading("In the cold"), heading(""), heading(""), heading("", "right")],
    ...questions.map(([label, written, format]) => [
      text(label),
      undefined,
      undefined,
      formula(written, format),
    ]),
    [],
    [heading("Freezing curve"), heading(""), heading(""), heading("")],
    [formula(`${NAMESPACE}.FREEZINGCURVE(${MIX},0,-24,${CURVE_STEPS},${OWN_INGREDIENTS})`)],
    ...Array.from({ length: CURVE_STEPS + 1 }, () => ["0", "0 %", "0 %", "0 %"].map(filled)),
  ],
  [330, 110, 110, 150],
  { frozenRows: HEADER_ROW },
);
