import { callFunction } from "../../../src/worksheet/callFunction";
import { heldWater } from "../../../taskpane/curves/heldWater";
import { moversOf } from "../../../taskpane/curves/movers";
import { stateLines } from "../../../taskpane/curves/stateLines";

const mixOf = (recipe: Record<string, number>) => ({
  title: "mix",
  items: Object.keys(recipe).map((name) => [name]),
  grams: Object.values(recipe).map((grams) => [grams]),
  own: null,
});
const sorbet = mixOf({
  water: 500,
  sucrose: 120,
  "dextrose monohydrate": 60,
  "sodium chloride": 2,
  almonds: 10,
});

describe("what holds the water", () => {
  test("the shares add up to all that is liquid, and with the ice to all the water", () => {
    const held = heldWater(sorbet, -12)!;
    const sum = held.shares.reduce((total, { heldGrams }) => total + heldGrams, 0);
    expect(sum + held.iceGrams).toBeCloseTo(held.waterGrams, 6);
  });
  test("water and nuts hold none, and the sugar of which there is most holds most", () => {
    expect(heldWater(sorbet, -12)!.shares.map(({ name }) => name)).toEqual([
      "sucrose",
      "dextrose monohydrate",
      "sodium chloride",
    ]);
  });
  test("a mix that no function answers about has no picture", () => {
    expect(heldWater(mixOf({ water: 100, "no such thing": 5 }), -12)).toBeNull();
  });
});

describe("what moves the answer", () => {
  test("a tenth more water warms the freezing point, a tenth more of a sugar chills it", () => {
    const { now, movers } = moversOf(sorbet, "freezing point", -12)!;
    const by = new Map(movers.map((mover) => [mover.name, mover]));
    expect(by.get("water")!.more).toBeGreaterThan(now);
    expect(by.get("sucrose")!.more).toBeLessThan(now);
    expect(by.get("almonds")!.more).toBeCloseTo(now, 9);
    expect(movers.at(-1)!.name).toBe("almonds");
  });
  test("each bar's end is what the function answers for that recipe", () => {
    const { movers } = moversOf(sorbet, "ice of water", -12)!;
    const more = sorbet.grams.map(([grams = 0], row) => [row === 1 ? grams * 1.1 : grams]);
    const [[expected] = []] = callFunction("ICEFRACTION", sorbet.items, more, -12, "water");
    expect(movers.find(({ name }) => name === "sucrose")!.more).toBe(expected);
  });
});

describe("the state diagram", () => {
  const lines = stateLines(mixOf({ water: 200, sucrose: 100 }))!;
  test("the freezing line falls from pure water as what is left gets stronger", () => {
    const { freezing } = lines;
    expect(freezing[0]).toEqual({ solidsFraction: 0, temperatureC: 0 });
    for (let at = 1; at < freezing.length; at += 1) {
      expect(freezing[at]!.solidsFraction).toBeGreaterThan(freezing[at - 1]!.solidsFraction);
      expect(freezing[at]!.temperatureC).toBeLessThan(freezing[at - 1]!.temperatureC);
    }
  });
  test("it passes the printed eutectic of sucrose, 62.4 % at −13.95 °C (sources: sucrose eutectic in the published eutectics)", () => {
    // CRC and sugar-technology handbooks print 62.4 % and −13.95 °C; the curve's own miss there is 0.3 K.
    const near = lines.freezing.reduce((best, point) =>
      Math.abs(point.temperatureC + 13.95) < Math.abs(best.temperatureC + 13.95) ? point : best,
    );
    expect(Math.abs(near.solidsFraction - 0.624)).toBeLessThan(0.012);
  });
  test("the glass line rises with strength and stays below the freezing line", () => {
    const { glass, freezing } = lines;
    expect(glass.length).toBeGreaterThan(8);
    for (let at = 1; at < glass.length; at += 1) {
      expect(glass[at]!.temperatureC).toBeGreaterThan(glass[at - 1]!.temperatureC);
    }
    const freezingAt = freezing.find(({ solidsFraction }) => solidsFraction > 0.6)!;
    const glassAt = glass.find(({ solidsFraction }) => solidsFraction >= 0.6)!;
    expect(glassAt.temperatureC).toBeLessThan(freezingAt.temperatureC);
  });
  test("the mix stands at its own share of dissolved matter", () => {
    expect(lines.mixSolidsFraction).toBeCloseTo(1 / 3, 9);
    expect(lines.end?.temperatureC).toBeCloseTo(-34, 6); // Roos 1993, from memory
  });
});
