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
    ["STDEV.S(A1:A9)/STDEV(A1:A9)", "_xlfn.STDEV.S(A1:A9)/STDEV(A1:A9)"],
    [
      "SUM(B1#)+@RIME.MOLES(A1,B1)",
      "SUM(_xlfn.ANCHORARRAY(B1))+_xlfn.SINGLE(_xldudf_RIME_MOLES(A1,B1))",
    ],
    ["Mix[@Grams]*2", "Mix[[#This Row],[Grams]]*2"],
    ["LET(x,2,y, x+1,X*y+x!A1)", "_xlfn.LET(_xlpm.x,2,_xlpm.y, _xlpm.x+1,_xlpm.X*_xlpm.y+x!A1)"],
    [
      'MAP(A1:A9,LAMBDA(cell,IF(cell>1,"cell",{1,2})))+cell',
      '_xlfn.MAP(A1:A9,_xlfn.LAMBDA(_xlpm.cell,IF(_xlpm.cell>1,"cell",{1,2})))+cell',
    ],
    ["NETWORKDAYS.INTL(A1,A2)", "NETWORKDAYS.INTL(A1,A2)"],
  ])("%s", (typed, stored) => {
    expect(withFileFunctionNames(typed)).toBe(stored);
  });

  // LibreOffice Calc 7.4 writes these so, and knows none of them without the mark.
  test.each(
    `AGGREGATE BETA.DIST BINOM.DIST CHISQ.TEST CONFIDENCE.NORM COVARIANCE.S ERF.PRECISE EXPON.DIST F.DIST.RT
    FORECAST.LINEAR GAMMA GAUSS HYPGEOM.DIST LOGNORM.INV MODE.SNGL NORM.DIST NORM.S.INV PERCENTILE.EXC
    PERCENTILE.INC PERCENTRANK.INC PERMUTATIONA PHI POISSON.DIST QUARTILE.INC RANK.EQ STDEV.P T.DIST.2T T.TEST
    VAR.P VAR.S WEIBULL.DIST Z.TEST`.split(/\s+/),
  )("%s is one of the newer functions", (name) => {
    expect(withFileFunctionNames(`${name}(1)`)).toBe(`_xlfn.${name}(1)`);
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
