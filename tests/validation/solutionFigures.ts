import { curveUncertaintyFraction } from "../../src/catalogue/curveUncertainty";
import type { OsmoticTable } from "../../src/catalogue/fit/figureTable";
import { osmotic25 } from "../../src/catalogue/fit/figures/osmotic25";
import { solutes } from "../../src/catalogue/solutes";
import { freezingTables } from "../../src/catalogue/fit/points";
import { freezingPointC } from "../../src/engine/freezingPoint";
import { waterActivity } from "../../src/engine/waterActivity";
import { bibliography, type SourceKey } from "../../src/foundation/bibliography";
import { WATER_MOLAR_MASS_KG_PER_MOL } from "../../src/foundation/constants";
import { isProblem } from "../../src/foundation/problem";
import { soluteNamed } from "../published/solutionOf";
import type { ComparedFigure, Comparison } from "./comparison";

export const CLASSROOM_KF = 1.86; // K·kg/mol, as classroom texts print it (OpenStax Chemistry 2e, 11.4)

/** What one solute at one molality freezes at, beside print; nothing where no freezing point is answered. */
export function freezingFigure(
  solute: string,
  molality: number,
  printed: number,
  label: string,
): ComparedFigure[] {
  const { curve, curveRecord, vantHoff } = soluteNamed(solute);
  const computed = freezingPointC({ waterKg: 1, solutes: [{ moles: molality, curve }] });
  if (isProblem(computed)) return [];
  return [
    {
      label,
      group: solute,
      printed,
      computed,
      ideal: -CLASSROOM_KF * vantHoff.value * molality,
      band: curveUncertaintyFraction(curveRecord, computed) * -computed,
    },
  ];
}

/** A table of something that is not in the catalogue has nothing to be compared with. */
const tables = freezingTables.filter(({ solute }) => solutes.some(({ name }) => name === solute));

/** The tables of freezing points by source, those kept back before those that were fitted. */
export function freezingComparisons(): Comparison[] {
  const keys = new Map<string, { source: SourceKey; use: Comparison["use"] }>();
  for (const { source, use } of tables) {
    if (use !== "rejected") keys.set(`${use} ${source}`, { source, use });
  }
  return [...keys.values()].map(({ source, use }) => ({
    id: `freezing-${source}-${use === "fit" ? "fit" : "held"}`,
    title: "Freezing points of single solutes",
    source: bibliography[source],
    use,
    unit: "°C" as const,
    figures: tables
      .filter((table) => table.source === source && table.use === use)
      .flatMap(({ solute, massPercent, freezingPointC: printed }) =>
        massPercent.flatMap((percent, row) => {
          const molality = (1000 * percent) / (100 - percent) / soluteNamed(solute).molarMass.value;
          return freezingFigure(solute, molality, printed[row] ?? 0, `${solute}, ${percent} %`);
        }),
      ),
  }));
}

function activityFigures(table: OsmoticTable): ComparedFigure[] {
  const { solute, molalityMolPerKg, osmoticCoefficient, temperatureC } = table;
  const { curve, vantHoff } = soluteNamed(solute);
  return molalityMolPerKg.flatMap((molality, row) => {
    const particles = vantHoff.value * molality;
    const coefficient = osmoticCoefficient[row] ?? 0;
    const computed = waterActivity(
      { waterKg: 1, solutes: [{ moles: molality, curve }] },
      temperatureC,
    );
    if (isProblem(computed)) return [];
    return {
      label: `${solute}, ${molality} mol/kg`,
      group: solute,
      printed: Math.exp(-WATER_MOLAR_MASS_KG_PER_MOL * particles * coefficient),
      computed,
      ideal: 1 / (1 + WATER_MOLAR_MASS_KG_PER_MOL * particles), // Raoult's law
      band: null,
    };
  });
}

/** Water activities at 25 °C from printed osmotic coefficients, by source. */
export function activityComparisons(): Comparison[] {
  const used = osmotic25.filter(({ use }) => use !== "rejected");
  const keys = new Map(used.map(({ source, use }) => [`${use} ${source}`, { source, use }]));
  return [...keys.values()].map(({ source, use }) => ({
    id: `activity-${source}-${use === "fit" ? "fit" : "held"}`,
    title: "Water activities of single solutes at 25 °C",
    source: bibliography[source],
    use: use === "fit" ? "fit" : "held out",
    unit: "a_w" as const,
    figures: used
      .filter((table) => table.source === source && table.use === use)
      .flatMap(activityFigures),
  }));
}
