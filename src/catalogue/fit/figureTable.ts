import type { SourceKey } from "../../foundation/bibliography";
import type { HowObtained } from "../../foundation/figure";

/** What a table of published figures is for. Nothing is dropped in silence: a rejected table says why. */
export type FigureUse = "fit" | "held out" | "rejected";

interface Printed {
  readonly solute: string; // name in the catalogue, anhydrous
  readonly source: SourceKey;
  readonly obtained: HowObtained;
  readonly use: FigureUse;
  readonly reason?: string; // why it is held out or rejected
}

/** Freezing points of one solute in water, as printed; the columns run in parallel. */
export interface FreezingTable extends Printed {
  readonly massPercent: readonly number[];
  readonly freezingPointC: readonly number[];
}

/** Osmotic coefficients of one solute in water at one temperature. */
export interface OsmoticTable extends Printed {
  readonly temperatureC: number;
  readonly molalityMolPerKg: readonly number[];
  readonly osmoticCoefficient: readonly number[];
}

/** Solutions of two solutes with the same vapour pressure, standing side by side. */
export interface IsopiesticTable extends Printed {
  readonly temperatureC: number;
  readonly reference: "sodium chloride" | "potassium chloride";
  readonly molalityMolPerKg: readonly number[];
  readonly referenceMolalityMolPerKg: readonly number[];
}
