import type { FreezingTable } from "../../../src/catalogue/fit/figureTable";
import { freezingTables } from "../../../src/catalogue/fit/points";
import { bibliography } from "../../../src/foundation/bibliography";
import { cellOf } from "../../worksheet/ask";
import { freezingFigure } from "./cellFigures";
import { comparisonOf, printedWithin, type Comparison, type Row, type Use } from "./comparison";
import { shortSource } from "./shortSource";

const USES: Readonly<Record<FreezingTable["use"], Use>> = {
  fit: "fit",
  "held out": "held out",
  rejected: "set aside",
};

const isKnown = (solute: string) => typeof cellOf("SOLUTE", solute, "molar mass") === "number";

/** Handbooks round to 0.01 K, and those antifreezes to whole °F: the last digit's step / √12. */
const ROUNDING_K = 0.01 / Math.sqrt(12);
const WHOLE_FAHRENHEIT_K = 5 / 9 / Math.sqrt(12);
const isInWholeFahrenheit = ({ source, solute }: FreezingTable) =>
  source === "lange15" && (solute === "propylene glycol" || solute === "methanol");

function rowsOf(table: FreezingTable): Row[] {
  const { solute, massPercent, freezingPointC } = table;
  const rounding = isInWholeFahrenheit(table) ? WHOLE_FAHRENHEIT_K : ROUNDING_K;
  return massPercent.map((percent, row) =>
    printedWithin(
      freezingFigure({
        label: `${solute}, ${percent} %`,
        group: solute,
        grams: { water: 100 - percent, [solute]: percent },
        printed: freezingPointC[row]!,
      }),
      rounding,
    ),
  );
}

/** The tables of freezing points by source and use. */
export function singleSolutes(): Comparison[] {
  const known = freezingTables.filter(({ solute, use }) => use !== "rejected" && isKnown(solute));
  const kinds = new Map(known.map(({ source, use }) => [`${source} ${use}`, { source, use }]));
  return [...kinds.values()].map(({ source, use }) =>
    comparisonOf(
      {
        id: `freezing-${source}-${use === "fit" ? "fit" : "held"}`,
        title: `Single solutes: ${shortSource(source)}`,
        source: bibliography[source],
        use: USES[use],
        quantity: "freezing",
      },
      known.filter((table) => table.source === source && table.use === use).flatMap(rowsOf),
    ),
  );
}

/** The tables that no fit and no test takes for true, each with its reason. */
export const setAsideTables = (): Comparison[] =>
  freezingTables
    .filter(({ solute, use }) => use === "rejected" || !isKnown(solute))
    .map((table, at) =>
      comparisonOf(
        {
          id: `aside-${at + 1}`,
          title: table.solute,
          source: bibliography[table.source],
          use: "set aside",
          quantity: "freezing",
          note: table.reason!,
        },
        isKnown(table.solute) ? rowsOf(table) : [],
      ),
    );
