import type { SourceKey } from "../../src/foundation/bibliography";

/** Sodium chloride standards by which milk cryoscopes are set; none of them was used in a fit. */
export const cryoscopeStandards: readonly {
  readonly gramsPerKgWater: number;
  readonly freezingPointC: number;
  readonly source: SourceKey;
  readonly obtained: "from the source" | "from memory";
}[] = [
  { gramsPerKgWater: 6.731, freezingPointC: -0.4, source: "gb5413", obtained: "from the source" },
  { gramsPerKgWater: 9.422, freezingPointC: -0.557, source: "gb5413", obtained: "from memory" },
  { gramsPerKgWater: 10.161, freezingPointC: -0.6, source: "gb5413", obtained: "from memory" },
  // printed as 8.654 and 9.473 g in 1 L of water: 998.2 g at 20 °C
  {
    gramsPerKgWater: 8.67,
    freezingPointC: -0.514,
    source: "lozanoLachenmeier2015",
    obtained: "from the source",
  },
  {
    gramsPerKgWater: 9.49,
    freezingPointC: -0.557,
    source: "lozanoLachenmeier2015",
    obtained: "from the source",
  },
  // 6.859 g in 1 L of solution at 20 °C, which weighs 1003.1 g
  { gramsPerKgWater: 6.885, freezingPointC: -0.408, source: "aoac961", obtained: "from memory" },
];
