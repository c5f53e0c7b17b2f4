/**
 * Freezing points of water with an alcohol and sodium chloride, by calorimetry (real scatter 0.3 to 0.5 K):
 * mol per kg of water of each, °C.
 * @source weng2011
 */
export const wengMixtures: readonly {
  readonly alcohol: "methanol" | "propylene glycol";
  readonly alcoholMolPerKg: number;
  readonly saltMolPerKg: number;
  readonly freezingPointC: number;
}[] = [
  { alcohol: "methanol", alcoholMolPerKg: 0.8044, saltMolPerKg: 0.0882, freezingPointC: -2.465 },
  { alcohol: "methanol", alcoholMolPerKg: 1.6601, saltMolPerKg: 0.182, freezingPointC: -4.35 },
  { alcohol: "methanol", alcoholMolPerKg: 2.5722, saltMolPerKg: 0.282, freezingPointC: -6.77 },
  { alcohol: "methanol", alcoholMolPerKg: 3.5465, saltMolPerKg: 0.3889, freezingPointC: -8.95 },
  { alcohol: "methanol", alcoholMolPerKg: 5.709, saltMolPerKg: 0.626, freezingPointC: -13.1 },
  { alcohol: "methanol", alcoholMolPerKg: 2.1355, saltMolPerKg: 0.1171, freezingPointC: -5.015 },
  { alcohol: "methanol", alcoholMolPerKg: 3.5066, saltMolPerKg: 0.1923, freezingPointC: -8.04 },
  { alcohol: "methanol", alcoholMolPerKg: 5.0068, saltMolPerKg: 0.2745, freezingPointC: -10.485 },
  { alcohol: "methanol", alcoholMolPerKg: 6.6551, saltMolPerKg: 0.3649, freezingPointC: -13.845 },
  { alcohol: "methanol", alcoholMolPerKg: 2.5442, saltMolPerKg: 0.093, freezingPointC: -5.285 },
  { alcohol: "methanol", alcoholMolPerKg: 3.9898, saltMolPerKg: 0.1458, freezingPointC: -8.13 },
  { alcohol: "methanol", alcoholMolPerKg: 5.573, saltMolPerKg: 0.2037, freezingPointC: -11.15 },
  { alcohol: "methanol", alcoholMolPerKg: 7.3146, saltMolPerKg: 0.2674, freezingPointC: -14.825 },
  {
    alcohol: "propylene glycol",
    alcoholMolPerKg: 0.3387,
    saltMolPerKg: 0.0882,
    freezingPointC: -0.845,
  },
  {
    alcohol: "propylene glycol",
    alcoholMolPerKg: 0.699,
    saltMolPerKg: 0.182,
    freezingPointC: -2.34,
  },
  {
    alcohol: "propylene glycol",
    alcoholMolPerKg: 1.0831,
    saltMolPerKg: 0.282,
    freezingPointC: -3.515,
  },
  {
    alcohol: "propylene glycol",
    alcoholMolPerKg: 1.4934,
    saltMolPerKg: 0.3889,
    freezingPointC: -4.785,
  },
  {
    alcohol: "propylene glycol",
    alcoholMolPerKg: 2.404,
    saltMolPerKg: 0.626,
    freezingPointC: -8.115,
  },
  {
    alcohol: "propylene glycol",
    alcoholMolPerKg: 4.6934,
    saltMolPerKg: 1.2222,
    freezingPointC: -16.305,
  },
  {
    alcohol: "propylene glycol",
    alcoholMolPerKg: 0.8992,
    saltMolPerKg: 0.1171,
    freezingPointC: -2.59,
  },
  {
    alcohol: "propylene glycol",
    alcoholMolPerKg: 1.4766,
    saltMolPerKg: 0.1923,
    freezingPointC: -4.105,
  },
  {
    alcohol: "propylene glycol",
    alcoholMolPerKg: 2.1083,
    saltMolPerKg: 0.2745,
    freezingPointC: -6.1,
  },
  {
    alcohol: "propylene glycol",
    alcoholMolPerKg: 2.8024,
    saltMolPerKg: 0.3649,
    freezingPointC: -7.785,
  },
  {
    alcohol: "propylene glycol",
    alcoholMolPerKg: 5.8843,
    saltMolPerKg: 0.7662,
    freezingPointC: -17.5,
  },
  {
    alcohol: "propylene glycol",
    alcoholMolPerKg: 1.0713,
    saltMolPerKg: 0.093,
    freezingPointC: -2.6,
  },
  {
    alcohol: "propylene glycol",
    alcoholMolPerKg: 1.68,
    saltMolPerKg: 0.1458,
    freezingPointC: -4.52,
  },
  {
    alcohol: "propylene glycol",
    alcoholMolPerKg: 2.3467,
    saltMolPerKg: 0.2037,
    freezingPointC: -6.025,
  },
  {
    alcohol: "propylene glycol",
    alcoholMolPerKg: 3.0801,
    saltMolPerKg: 0.2674,
    freezingPointC: -8.115,
  },
];
