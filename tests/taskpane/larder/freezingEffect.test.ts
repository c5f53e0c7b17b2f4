import { ingredients } from "../../../src/catalogue/ingredients";
import { solutes } from "../../../src/catalogue/solutes";
import { effectPerDissolvedGram, effectPerGram } from "../../../taskpane/larder/freezingEffect";

// CRC Handbook, 102nd ed., Concentrative Properties of Aqueous Solutions: freezing-point depression at 10 % by mass, K
const CRC_AT_10_PERCENT = {
  sucrose: 0.63,
  glucose: 1.17,
  fructose: 1.16,
  glycerol: 2.32,
  "sodium chloride": 6.56,
} as const;
const HALF_A_DIGIT_K = 0.005;

describe("the freezing effect against sucrose", () => {
  test("is 1 for sucrose by definition, without a band", () => {
    expect(effectPerGram("sucrose")).toMatchObject({ shows: 1, uncertainty: 0 });
  });

  test.each(["glucose", "fructose", "glycerol", "sodium chloride"] as const)(
    "of %s is the ratio of the printed depressions at 10 %",
    (name) => {
      const { shows, uncertainty } = effectPerGram(name)!;
      const printed = CRC_AT_10_PERCENT[name] / CRC_AT_10_PERCENT.sucrose;
      const rounding = printed * (HALF_A_DIGIT_K / CRC_AT_10_PERCENT.sucrose);
      expect(Math.abs(shows - printed)).toBeLessThan(2 * uncertainty + rounding);
    },
  );

  test("of a watery thing is small gram for gram, and that of its sugars and salts by what is dissolved", () => {
    // Whole milk freezes at −0.52 °C (mean of print): a tenth of it in water does about a tenth of that.
    expect(effectPerGram("whole milk")!.shows * CRC_AT_10_PERCENT.sucrose).toBeCloseTo(0.052, 2);
    // By CRC 5.8 % of sucrose (5.45 g in 88.1 g of water, as milk's dissolved matter) freezes at −0.34 °C.
    expect(Math.abs(effectPerDissolvedGram("whole milk")!.shows - 0.52 / 0.34)).toBeLessThan(0.15);
  });

  test("of what does not dissolve is none", () => {
    expect(effectPerGram("pistachios")!.shows).toBe(0);
    expect(effectPerDissolvedGram("pistachios")).toBeNull();
  });

  test("is answered for everything in the larder", () => {
    for (const { name } of [...solutes, ...ingredients]) {
      expect([name, (effectPerGram(name)?.uncertainty ?? -1) >= 0]).toEqual([name, true]);
    }
  });

  test("as a formula is two depressions, one by the other", () => {
    expect(effectPerGram("glucose")!.formula).toBe(
      '=RIME.DEPRESSION({"water";"glucose"},{90;10})/RIME.DEPRESSION({"water";"sucrose"},{90;10})',
    );
  });
});
