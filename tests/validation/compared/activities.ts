import type { IsopiesticTable, OsmoticTable } from "../../../src/catalogue/fit/figureTable";
import { isopiestic } from "../../../src/catalogue/fit/figures/isopiestic";
import { osmotic25 } from "../../../src/catalogue/fit/figures/osmotic25";
import { referenceOsmoticCoefficient } from "../../../src/catalogue/fit/pitzer";
import { bibliography } from "../../../src/foundation/bibliography";
import { WATER_MOLAR_MASS_KG_PER_MOL } from "../../../src/foundation/constants";
import { saturatedSolutions } from "../../published/saturatedSolutions";
import { starzakPeacockActivity } from "../../published/starzakPeacock";
import { numberOf, ofRecipe } from "../../worksheet/ask";
import { activityFigure } from "./cellFigures";
import { comparisonOf, type Comparison, type Row } from "./comparison";
import { shortSource } from "./shortSource";

const gramsAt = (solute: string, molality: number) => ({
  water: 1000,
  [solute]: molality * numberOf("SOLUTE", solute, "molar mass"),
});

const activityOf = (osmolality: number) => Math.exp(-WATER_MOLAR_MASS_KG_PER_MOL * osmolality);

function figureAt(solute: string, molality: number, printed: number, temperatureC = 25): Row {
  const at = temperatureC === 25 ? "" : `, ${temperatureC} °C`;
  const label = `${solute}, ${molality} mol/kg${at}`;
  const grams = gramsAt(solute, molality);
  return activityFigure({ label, group: solute, grams, printed }, temperatureC);
}

function osmoticRows({ solute, molalityMolPerKg, osmoticCoefficient }: OsmoticTable): Row[] {
  const ions = numberOf("SOLUTE", solute, "van 't Hoff");
  return molalityMolPerKg.map((molality, row) =>
    figureAt(solute, molality, activityOf(ions * molality * osmoticCoefficient[row]!)),
  );
}

/** At 25 °C the reference salt's activity is published; at others both sides are computed and should agree. */
function pairRows(table: IsopiesticTable): Row[] {
  const { solute, reference, temperatureC, molalityMolPerKg, referenceMolalityMolPerKg } = table;
  const referenceActivity = (molality: number): number =>
    temperatureC === 25
      ? activityOf(2 * molality * referenceOsmoticCoefficient(reference, molality))
      : ofRecipe("WATERACTIVITY", gramsAt(reference, molality), temperatureC);
  return molalityMolPerKg.map((molality, row) =>
    figureAt(solute, molality, referenceActivity(referenceMolalityMolPerKg[row]!), temperatureC),
  );
}

/** Tables of one source and use together. */
function bySource<Table extends OsmoticTable | IsopiesticTable>(
  id: string,
  title: string,
  tables: readonly Table[],
  rowsOf: (table: Table) => Row[],
  note?: string,
): Comparison[] {
  const kinds = new Map(tables.map(({ source, use }) => [`${source} ${use}`, { source, use }]));
  return [...kinds.values()].map(({ source, use }) => {
    const chosen = tables.filter((table) => table.source === source && table.use === use);
    const described = {
      id: `${id}-${source}-${use === "fit" ? "fit" : "held"}`,
      title: `${title}: ${shortSource(source)}`,
      source: bibliography[source],
      use: use === "rejected" ? ("set aside" as const) : use,
      quantity: "activity" as const,
      ...(note !== undefined && { note }),
    };
    return comparisonOf(described, chosen.flatMap(rowsOf));
  });
}

const saturated = (): Comparison =>
  comparisonOf(
    {
      id: "saturated",
      title: "Saturated sugar solutions at 25 °C",
      source: "Food texts, ± 0.01; from memory",
      use: "held out",
      quantity: "activity",
    },
    saturatedSolutions.map(({ solute, massPercent, waterActivity: printed }) =>
      activityFigure({
        label: `${solute}, ${massPercent} %`,
        group: solute,
        grams: { water: 100 - massPercent, [solute]: massPercent },
        printed,
      }),
    ),
  );

const TO_65_PERCENT_MOL_PER_KG = Array.from({ length: 21 }, (_, step) => (step + 1) / 4);

const sucroseCorrelation = (): Comparison =>
  comparisonOf(
    {
      id: "sucrose-correlation",
      title: "Water activity of sucrose at 25 °C to 64 %",
      source: bibliography.starzakPeacock1997,
      use: "held out",
      quantity: "activity",
      note: "A correlation of 1197 measurements in 56 papers, read every 0.25 mol/kg.",
    },
    TO_65_PERCENT_MOL_PER_KG.map((molality) =>
      figureAt("sucrose", molality, starzakPeacockActivity(molality, 25)),
    ),
  );

const at25 = ({ temperatureC }: IsopiesticTable) => temperatureC === 25;

/** Water activities: from osmotic coefficients, from solutions of equal vapour pressure, of saturated sugars. */
export const activities = (): Comparison[] => [
  sucroseCorrelation(),
  ...bySource(
    "isopiestic",
    "Equal vapour pressure at 25 °C",
    isopiestic.filter(at25),
    pairRows,
    "Printed are pairs of solutions of equal vapour pressure; the water activity of the sodium or potassium chloride beside each is that of Pitzer & Mayorga 1973.",
  ),
  ...bySource(
    "pairs",
    "Equal vapour pressure at other temperatures",
    isopiestic.filter((table) => !at25(table)),
    pairRows,
    "Printed are pairs of solutions of equal vapour pressure; here “printed” is what Rimeline computes for the chloride beside each, so that this checks one curve against another.",
  ),
  ...bySource("osmotic", "Osmotic coefficients at 25 °C", osmotic25, osmoticRows),
  saturated(),
];
