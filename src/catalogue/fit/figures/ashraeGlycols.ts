import type { FreezingTable } from "../figureTable";

/** ASHRAE Handbook, aqueous glycols: mass per cent and freezing point. */
export const ashraeGlycols: readonly FreezingTable[] = [
  {
    solute: "ethylene glycol",
    source: "ashraeGlycols",
    obtained: "from the source",
    use: "held out",
    reason: "kept for the tests",
    massPercent: [5, 10, 15, 20, 21, 22, 23],
    freezingPointC: [-1.4, -3.2, -5.4, -7.8, -8.4, -8.9, -9.5],
  },
  {
    solute: "ethylene glycol",
    source: "ashraeGlycols",
    obtained: "from the source",
    use: "rejected",
    reason: "1 to 2.5 K warmer than every other source",
    massPercent: [
      24, 25, 26, 27, 28, 29, 30, 31, 32, 33, 34, 35, 36, 37, 38, 39, 40, 41, 42, 43, 44, 45, 46,
      47, 48, 49, 50, 51, 52, 53, 54, 55, 56, 57, 58, 59, 60,
    ],
    freezingPointC: [
      -10.2, -10.7, -11.4, -12, -12.7, -13.3, -14.1, -14.8, -15.4, -16.2, -17, -17.9, -18.6, -19.4,
      -20.3, -21.3, -22.3, -23.2, -24.3, -25.3, -26.4, -27.5, -28.8, -29.8, -31.1, -32.6, -33.8,
      -35.1, -36.4, -37.9, -39.3, -41.1, -42.6, -44.2, -45.6, -47.1, -48.3,
    ],
  },
  {
    solute: "propylene glycol",
    source: "ashraeGlycols",
    obtained: "from the source",
    use: "fit",
    massPercent: [15, 25, 35, 45, 55, 60],
    freezingPointC: [-5.1, -9.6, -16.4, -26.7, -41.6, -51.1],
  },
  {
    solute: "propylene glycol",
    source: "ashraeGlycols",
    obtained: "from the source",
    use: "held out",
    reason:
      "kept for the tests: the fit takes as many rows of this source as of the other, which differ by 0.5 K",
    massPercent: [
      5, 10, 20, 21, 22, 23, 24, 26, 27, 28, 29, 30, 31, 32, 33, 34, 36, 37, 38, 39, 40, 41, 42, 43,
      44, 46, 47, 48, 49, 50, 51, 52, 53, 54, 56, 57, 58, 59,
    ],
    freezingPointC: [
      -1.6, -3.3, -7.1, -7.6, -8, -8.6, -9.1, -10.2, -10.8, -11.4, -12, -12.7, -13.4, -14.1, -14.8,
      -15.6, -17.3, -18.2, -19.1, -20.1, -21.1, -22.1, -23.2, -24.3, -25.5, -27.9, -29.3, -30.6,
      -32.1, -33.5, -35, -36.6, -38.2, -39.8, -43.3, -45.2, -47.1, -49,
    ],
  },
];
