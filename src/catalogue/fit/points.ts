import type { SourceKey } from "../../foundation/bibliography";
import type { FigureUse, FreezingTable } from "./figureTable";
import { ashraeGlycols } from "./figures/ashraeGlycols";
import { coldChlorides } from "./figures/coldChlorides";
import { coolants } from "./figures/coolants";
import { crc102 } from "./figures/crc102";
import { lange15 } from "./figures/lange15";

export const freezingTables: readonly FreezingTable[] = [
  ...crc102,
  ...coldChlorides,
  ...coolants,
  ...ashraeGlycols,
  ...lange15,
];

/** One printed freezing point of one solute in water. */
export interface FreezingPointOfOne {
  readonly molalityMolPerKg: number;
  readonly freezingPointC: number;
  readonly source: SourceKey;
}

/** All printed freezing points of a solute that are kept for one use. */
export function freezingPoints(
  solute: string,
  molarMassGPerMol: number,
  use: FigureUse,
  tables: readonly FreezingTable[] = freezingTables,
): FreezingPointOfOne[] {
  return tables
    .filter((table) => table.solute === solute && table.use === use)
    .flatMap(({ massPercent, freezingPointC, source }) =>
      massPercent.map((percent, row) => ({
        molalityMolPerKg: (1000 * percent) / (100 - percent) / molarMassGPerMol,
        freezingPointC: freezingPointC[row] ?? Number.NaN,
        source,
      })),
    );
}
