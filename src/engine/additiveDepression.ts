import { andThen, type Result } from "../foundation/result";
import type { Solution } from "./dissolved";
import { freezingPointC } from "./freezingPoint";

/**
 * The rival mixture rule: the plain sum of the depressions that each solute alone would give in the same
 * water, K (positive). Its distance from the depression by `freezingPointC` is part of the stated error.
 * @source kleinhansMazur2007
 */
export function additiveDepressionK({ waterKg, solutes }: Solution): Result<number> {
  return solutes.reduce<Result<number>>(
    (sum, solute) =>
      andThen(sum, (sumK) =>
        andThen(freezingPointC({ waterKg, solutes: [solute] }), (alone) => sumK - alone),
      ),
    0,
  );
}
