import type { FreezingTable } from "../figureTable";

/** Lange's Handbook of Chemistry, 15th ed., table 5.13: mass per cent and freezing point. */
export const lange15: readonly FreezingTable[] = [
  {
    solute: "ethanol",
    source: "lange15",
    obtained: "from the source",
    use: "held out",
    reason: "kept for the tests",
    massPercent: [
      2.5, 4.8, 6.8, 11.3, 13.8, 16.4, 17.5, 18.8, 20.3, 22.1, 24.2, 26.7, 29.9, 33.8, 39, 46.3,
      56.1, 71.9,
    ],
    freezingPointC: [
      -1, -2, -3, -5, -6.1, -7.5, -8.7, -9.4, -10.6, -12.2, -14, -16, -18.9, -23.6, -28.7, -33.9,
      -41, -51.3,
    ],
  },
  {
    solute: "methanol",
    source: "lange15",
    obtained: "from the source",
    use: "held out",
    reason: "kept for the tests",
    massPercent: [3.9, 8.1, 12.2, 16.4, 20.6, 24.9, 29.2, 33.6],
    freezingPointC: [-2.2, -5, -8.3, -11.7, -15.6, -20, -25, -30],
  },
  {
    solute: "glycerol",
    source: "lange15",
    obtained: "from the source",
    use: "held out",
    reason: "kept for the tests",
    massPercent: [10, 20, 30, 40],
    freezingPointC: [-1.6, -4.8, -9.5, -15.5],
  },
  {
    solute: "glycerol",
    source: "lange15",
    obtained: "from the source",
    use: "rejected",
    reason: "past the eutectic the solid is glycerol; 50 and 60 % disagree with the rest",
    massPercent: [50, 60, 70, 80, 90, 100],
    freezingPointC: [-22, -33.6, -37.8, -19.2, -1.6, 17],
  },
  {
    solute: "magnesium chloride",
    source: "lange15",
    obtained: "from the source",
    use: "held out",
    reason: "kept for the tests",
    massPercent: [5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21],
    freezingPointC: [
      -3.11, -3.89, -4.72, -5.67, -6.67, -7.83, -9.05, -10.5, -12.1, -13.7, -15.6, -17.6, -19.7,
      -22.1, -25.6, -27.4, -30.6,
    ],
  },
  {
    solute: "magnesium chloride",
    source: "lange15",
    obtained: "from the source",
    use: "rejected",
    reason: "the solid is a hydrate, not ice",
    massPercent: [22, 23, 24, 25, 26, 27, 28, 29, 30],
    freezingPointC: [-32.8, -28.9, -25.6, -23.3, -21.1, -19.4, -18.3, -17.2, -16.7],
  },
  {
    solute: "sodium chloride",
    source: "lange15",
    obtained: "from the source",
    use: "held out",
    reason: "kept for the tests",
    massPercent: [1, 2, 3, 4, 5, 6, 7, 8, 9, 15, 16, 17, 18, 19, 20, 21, 22, 23],
    freezingPointC: [
      -0.58, -1.13, -1.72, -2.35, -2.97, -3.63, -4.32, -5.03, -5.77, -10.88, -11.9, -12.93, -14.03,
      -15.21, -16.46, -17.78, -19.19, -20.69,
    ],
  },
  {
    solute: "sodium chloride",
    source: "lange15",
    obtained: "from the source",
    use: "rejected",
    reason: "the solid is a hydrate, not ice",
    massPercent: [23.3],
    freezingPointC: [-21.1],
  },
];
