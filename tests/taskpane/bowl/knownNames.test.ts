import * as worksheet from "../../../src/worksheet/callFunction";
import { nameKnower } from "../../../taskpane/bowl/knownNames";

jest.mock("../../../src/worksheet/callFunction", () => {
  const actual = jest.requireActual<typeof worksheet>("../../../src/worksheet/callFunction");
  return { callFunction: jest.fn(actual.callFunction) };
});
const asked = worksheet.callFunction as jest.MockedFunction<typeof worksheet.callFunction>;

describe("which names count as ingredients", () => {
  const isKnown = nameKnower([
    ["name", "same as", "source"],
    ["Our milk", "whole milk", "the dairy"],
  ]);

  test.each(["sucrose", " Zucker ", "OUR MILK", "water", "honey, average"])("%p does", (name) => {
    expect(isKnown(name)).toBe(true);
  });

  test.each(["Freezing point", "sucrsoe", "the dairy", "", "Lemon ice", "glucose syrup"])(
    "%p does not: unknown, ambiguous, or no name at all",
    (name) => {
      expect(isKnown(name)).toBe(false);
    },
  );

  test("a sheet's thousands of other texts are not asked of the functions, and a name is asked once", () => {
    asked.mockClear();
    for (let index = 0; index < 5000; index += 1) isKnown(`Recipe number ${index}`);
    expect(asked).not.toHaveBeenCalled();
    for (let index = 0; index < 5000; index += 1) isKnown("lemon juice");
    expect(asked).toHaveBeenCalledTimes(1);
  });
});
