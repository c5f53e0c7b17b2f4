import { callsOurs, withFileFunctionNames } from "../../src/bench/xlsx/functionPrefixes";
import { withPlainFunctionNames } from "../../src/workbook/functionNames";

// The marks are those of [MS-XLSX] 2.2.2 (future functions) and of files that Excel writes.
describe("Function names on their way into a file", () => {
  test.each([
    ["RIME.FREEZINGPOINT(A1:B1,A2:B9)", "_xldudf_RIME_FREEZINGPOINT(A1:B1,A2:B9)"],
    ["SUM(A1:A3)", "SUM(A1:A3)"],
    ["XLOOKUP(1,A:A,B:B)", "_xlfn.XLOOKUP(1,A:A,B:B)"],
    ["SORT(FILTER(A1:A9,B1:B9>0))", "_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A9,B1:B9>0))"],
    ['"FILTER("&RIME.MOLES("sucrose",1)', '"FILTER("&_xldudf_RIME_MOLES("sucrose",1)'],
    ["'RIME.MOLES(x)'!A1+ABS(-1)", "'RIME.MOLES(x)'!A1+ABS(-1)"],
    ["STDEV.S(A1:A9)", "STDEV.S(A1:A9)"],
  ])("%s", (typed, stored) => {
    expect(withFileFunctionNames(typed)).toBe(stored);
  });

  test("a newer function of the sheet comes back as it was typed", () => {
    const typed = 'IFS(A1>1,XLOOKUP(1,A:A,B:B),TRUE,"FILTER(")';
    expect(withPlainFunctionNames(withFileFunctionNames(typed))).toBe(typed);
  });

  test("a function of ours is known by its call, not by a text that looks like one", () => {
    expect(callsOurs("1+RIME.BRIX(A1:A2,B1:B2)")).toBe(true);
    expect(callsOurs('"RIME.BRIX("')).toBe(false);
    expect(callsOurs("PRIME.BRIX(1)")).toBe(false);
  });
});
