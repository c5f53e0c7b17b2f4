import { fittedNumber } from "../../src/bench/page/fittedNumber";

test.each([
  [-2.118953525666809, 88, "en", "-2.1189535"],
  [-2.118953525666809, 88, "de", "-2,1189535"],
  [-2.118953525666809, 200, "en", "-2.11895352567"],
  [0.1 + 0.2, 200, "en", "0.3"],
  [0.712911517, 40, "en", "0.71"],
  [600, 88, "en", "600"],
  [123456789012, 64, "en", "1.2E+11"],
  [123456789012, 64, "de", "1,2E+11"],
  [123456.7, 60, "en", "123457"],
  [99999.96, 60, "en", "100000"],
  [1e-9, 88, "en", "1e-9"],
  [0, 20, "en", "0"],
  [-123456, 30, "en", "###"],
] as const)("%d in %d px in %s is shown as %s", (value, width, language, shown) => {
  expect(fittedNumber(value, width, language)).toBe(shown);
});

test("what is shown is never further off than its last digit", () => {
  for (let step = 0; step < 2000; step += 1) {
    const value = (step % 2 === 0 ? 1 : -1) * Math.exp((step / 2000) * 40 - 20) * (1 + step / 777);
    const text = fittedNumber(value, 30 + (step % 120), "en");
    if (text.startsWith("#")) continue;
    const [mantissa = "", exponent = "0"] = text.toLowerCase().split("e");
    const lastDigit = 10 ** (Number(exponent) - (mantissa.split(".")[1]?.length ?? 0));
    expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(0.51 * lastDigit);
  }
});
