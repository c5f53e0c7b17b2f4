import type { Figure } from "../foundation/figure";

/** The i of the ideal law: particles that one formula unit gives if it falls apart completely. */
export function particles(count: number): Figure {
  return {
    value: count,
    unit: "1",
    source: "openstaxChemistry2e",
    obtained: "computed here",
    uncertainty: 0,
    basis: "counted in the formula; real solutions behave as if it were a little less",
  };
}
