/**
 * How far that table is from the handbook's (crc102), root mean square, K. Its weak end lies 0.02 to 0.09 K
 * below the ideal law, twice what any other print of sucrose does.
 */
export const DAIRY_TABLE_BAND_K = 0.06;

/**
 * Sucrose by the table of dairy textbooks: grams per 100 g of water and depression, K, to 47 % solids.
 * @source leighton1927 (after Pickering 1891), from memory
 */
export const dairySucrose: readonly (readonly [grams: number, depressionK: number])[] = [
  [3, 0.18],
  [6, 0.35],
  [9, 0.53],
  [12, 0.72],
  [15, 0.9],
  [18, 1.1],
  [21, 1.29],
  [24, 1.47],
  [27, 1.67],
  [30, 1.86],
  [33, 2.03],
  [36, 2.21],
  [39, 2.4],
  [42, 2.6],
  [45, 2.78],
  [48, 2.99],
  [51, 3.2],
  [54, 3.42],
  [57, 3.63],
  [60, 3.85],
  [63, 4.1],
  [66, 4.33],
  [69, 4.54],
  [72, 4.77],
  [75, 5],
  [78, 5.26],
  [81, 5.53],
  [84, 5.77],
  [87, 5.99],
];
