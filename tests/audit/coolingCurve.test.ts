import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

// 27 °F is −2.8 °C, 15 °F −9.4 °C, by definition.
const CURVE = [2.9, 0.4, -2.1, -2.6, -2.8, -3.1, -4, -6.2, -9.6];
const curve = (readings: readonly number[], ...below: Rows): Rows => [
  ["Time (min)", "Air (°C)", "Probe (°C)"],
  ...readings.map((reading, at): Rows[number] => [20 * at, -18.5 + (at % 3) / 2, reading]),
  [],
  ["Air, on average (°C)", formula("AVERAGE(B2:B10)", -18)],
  ...below,
];
const probe = (what: string, readings: readonly number[], ...found: string[]): Tried => ({
  ...{ what, sheets: { Curve: curve(readings) }, found },
});

/** Ice with salt, from 0 °C down: 17 °F is −8.3 °C, 32 °F is 0 °C. */
const bag = (what: string, readings: readonly number[], ...found: string[]): Tried => ({
  ...{ what, found },
  sheets: {
    Bag: [
      ["Ice and salt", "in the bag (°C)"],
      ...readings.map((reading, at): Rows[number] => [`after ${3 * at} min`, reading]),
    ],
  },
});
const SALTED = [0, -7.5, -13, -16.5, -15.5];

/** What each beaker read, the unit behind the last; 31 °F is −0.6 °C. */
const row = (what: string, last: number, ...found: string[]): Tried => ({
  ...{ what, found },
  sheets: {
    Row: [
      ["Team", "Penguins", "Seals", "Bears", "Foxes", "Unit"],
      ["Our thermometer said", -0.9, -0.4, -0.6, last, "°C"],
    ],
  },
});

describe("A curve of what cools down", () => {
  test.each<Tried>([
    bag("from 0 °C in few steps", SALTED),
    bag("its first reading in °F", SALTED.with(0, 32), "temperature-units-mixed Bag!B2"),
    bag("its second in °F", SALTED.with(1, 17), "temperature-units-mixed Bag!B3"),
    bag("a chiller so cold that both scales say about the same", [-34.5, -31, -35, -31]),
    bag("fast at first, and ever slower", [-3.3, -14.7, -15.3, -16.5, -16.5, -17.7, -19.8]),
    bag(
      "a freezer's first reading in °F, which then rise and fall",
      [-1, -17.7, -18.3, -17.5, -18.5, -17.9],
      "temperature-units-mixed Bag!B2",
    ),
    row("readings in a row", -0.6),
    row("one of them in °F", 31, "temperature-units-mixed Row!E2"),
    probe("all in °C", CURVE),
    probe("a reading in °F at the plateau", CURVE.with(4, 27), "temperature-units-mixed Curve!C6"),
    probe("the last reading in °F", CURVE.with(8, 15), "temperature-units-mixed Curve!C10"),
    probe("a hot mix that is put in", [37, 30, 24, 15, 9, 4, 2, 0, -1]),
    probe("a probe that was lifted out for a moment", CURVE.with(4, 12)),
    {
      what: "labelled numbers below the readings are none of them",
      sheets: {
        Curve: curve(
          CURVE,
          ["Coldest the probe got (°C)", formula("MIN(C2:C10)", -9.6)],
          ["Level stretch of the curve (°C)", -2.6],
        ),
      },
      found: [],
    },
  ])("$what", expectFound);
});
