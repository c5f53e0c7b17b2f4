import type { OsmoticTable } from "../figureTable";

/** Osmotic coefficients at 25 °C. */
export const osmotic25: readonly OsmoticTable[] = [
  {
    solute: "sodium chloride",
    source: "phreeqcPitzer",
    obtained: "computed here",
    use: "fit",
    temperatureC: 25,
    molalityMolPerKg: [
      0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.4, 1.6, 1.8, 2, 2.5, 3, 3.5, 4, 4.5,
      4.8, 5, 5.5, 6,
    ],
    osmoticCoefficient: [
      0.9325, 0.9238, 0.9211, 0.9209, 0.922, 0.9239, 0.9264, 0.9294, 0.9327, 0.9364, 0.9444, 0.9533,
      0.963, 0.9732, 0.9841, 1.0133, 1.0451, 1.0791, 1.1151, 1.1527, 1.176, 1.1919, 1.2324, 1.2743,
    ],
  },
  {
    solute: "potassium chloride",
    source: "phreeqcPitzer",
    obtained: "computed here",
    use: "fit",
    temperatureC: 25,
    molalityMolPerKg: [
      0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.4, 1.6, 1.8, 2, 2.5, 3, 3.5, 4, 4.5,
      4.8,
    ],
    osmoticCoefficient: [
      0.9266, 0.9134, 0.9067, 0.9028, 0.9005, 0.899, 0.8983, 0.8981, 0.8982, 0.8987, 0.9004, 0.9028,
      0.9059, 0.9094, 0.9134, 0.9246, 0.9373, 0.9509, 0.9653, 0.9802, 0.9893,
    ],
  },
  {
    solute: "calcium chloride",
    source: "phreeqcPitzer",
    obtained: "computed here",
    use: "fit",
    temperatureC: 25,
    molalityMolPerKg: [
      0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.4, 1.6, 1.8, 2, 2.5, 3, 3.5, 4, 4.5,
      4.8, 5, 5.5, 6,
    ],
    osmoticCoefficient: [
      0.8551, 0.8613, 0.8759, 0.8942, 0.9153, 0.9386, 0.9638, 0.9906, 1.0188, 1.0483, 1.1106,
      1.1764, 1.245, 1.3159, 1.3887, 1.5769, 1.7714, 1.97, 2.1715, 2.3751, 2.4981, 2.5803, 2.7866,
      2.9937,
    ],
  },
  {
    solute: "magnesium chloride",
    source: "phreeqcPitzer",
    obtained: "computed here",
    use: "fit",
    temperatureC: 25,
    molalityMolPerKg: [
      0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.4, 1.6, 1.8, 2, 2.5, 3, 3.5, 4, 4.5,
      4.8, 5,
    ],
    osmoticCoefficient: [
      0.8617, 0.8733, 0.8931, 0.917, 0.9438, 0.973, 1.0043, 1.0374, 1.0723, 1.1086, 1.1853, 1.2665,
      1.3516, 1.4399, 1.531, 1.7694, 2.0199, 2.2803, 2.5487, 2.8228, 2.9885, 3.0988,
    ],
  },
  {
    solute: "sodium chloride",
    source: "robinsonStokes1959",
    obtained: "from memory",
    use: "held out",
    reason: "kept for the tests",
    temperatureC: 25,
    molalityMolPerKg: [
      0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.4, 1.6, 1.8, 2, 3, 4, 5, 6,
    ],
    osmoticCoefficient: [
      0.9324, 0.9245, 0.9215, 0.9203, 0.9209, 0.923, 0.9257, 0.9288, 0.932, 0.9355, 0.9428, 0.9513,
      0.9616, 0.9723, 0.9833, 1.0453, 1.1158, 1.1916, 1.2706,
    ],
  },
  {
    solute: "potassium chloride",
    source: "robinsonStokes1959",
    obtained: "from memory",
    use: "held out",
    reason: "kept for the tests",
    temperatureC: 25,
    molalityMolPerKg: [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.4, 1.6, 1.8, 2, 3],
    osmoticCoefficient: [
      0.9266, 0.913, 0.9063, 0.9017, 0.8989, 0.8976, 0.897, 0.897, 0.8971, 0.8974, 0.8986, 0.901,
      0.9042, 0.9081, 0.9124, 0.9367,
    ],
  },
  {
    solute: "calcium chloride",
    source: "robinsonStokes1959",
    obtained: "from memory",
    use: "held out",
    reason: "kept for the tests",
    temperatureC: 25,
    molalityMolPerKg: [
      0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.4, 1.6, 1.8, 2, 2.5, 3, 3.5, 4, 4.5, 5,
      5.5, 6,
    ],
    osmoticCoefficient: [
      0.854, 0.862, 0.876, 0.894, 0.917, 0.94, 0.963, 0.988, 1.017, 1.046, 1.107, 1.171, 1.237,
      1.305, 1.376, 1.568, 1.779, 1.981, 2.182, 2.383, 2.574, 2.743, 2.891,
    ],
  },
  {
    solute: "magnesium chloride",
    source: "robinsonStokes1959",
    obtained: "from memory",
    use: "held out",
    reason: "kept for the tests",
    temperatureC: 25,
    molalityMolPerKg: [
      0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.4, 1.6, 1.8, 2, 2.5, 3, 3.5, 4, 4.5, 5,
    ],
    osmoticCoefficient: [
      0.861, 0.877, 0.895, 0.919, 0.947, 0.976, 1.004, 1.036, 1.071, 1.108, 1.184, 1.264, 1.347,
      1.434, 1.523, 1.762, 2.01, 2.264, 2.521, 2.783, 3.048,
    ],
  },
  {
    solute: "sucrose",
    source: "robinsonStokes1959",
    obtained: "from memory",
    use: "held out",
    reason: "kept for the tests",
    temperatureC: 25,
    molalityMolPerKg: [
      0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.4, 1.6, 1.8, 2, 2.5, 3, 3.5, 4, 4.5, 5,
      5.5, 6,
    ],
    osmoticCoefficient: [
      1.008, 1.017, 1.024, 1.033, 1.041, 1.05, 1.06, 1.068, 1.079, 1.088, 1.108, 1.129, 1.15, 1.17,
      1.189, 1.24, 1.288, 1.334, 1.375, 1.414, 1.45, 1.482, 1.511,
    ],
  },
  {
    solute: "glycerol",
    source: "zhangGraceSun2022",
    obtained: "computed here",
    use: "fit",
    temperatureC: 25,
    molalityMolPerKg: [
      0.5715, 1.2065, 1.9162, 2.7146, 3.6195, 4.6536, 5.8469, 7.239, 8.8842, 10.8585, 13.2715,
      16.2877, 20.1657, 25.3364, 32.5754, 43.4339, 61.5313,
    ],
    osmoticCoefficient: [
      1.1234, 1.1224, 1.1192, 1.1135, 1.1096, 1.1027, 1.0967, 1.0882, 1.0782, 1.0665, 1.0521,
      1.0345, 1.0114, 0.9822, 0.9433, 0.8897, 0.8129,
    ],
  },
];
