import { worksheetFunctions } from "../../src/worksheet/functions";
import { withPlainFunctionNames } from "../../src/workbook/functionNames";

test.each(worksheetFunctions.map(({ name }) => name))(
  "the stored form of %s becomes its plain name",
  (name) => {
    const stored = `_xldudf_RIME_${name.replaceAll(".", "_")}(A1:A3,B1:B3)`;
    expect(withPlainFunctionNames(stored)).toBe(`RIME.${name}(A1:A3,B1:B3)`);
  },
);

test.each([
  ["_xlfn._xlws.FILTER(A1:A3,B1:B3)", "FILTER(A1:A3,B1:B3)"],
  ["_xlfn.LET(_xlpm.x,2,_xlpm.x*2)", "LET(x,2,x*2)"],
  ["_xll.rime.depression(A1,B1)", "RIME.DEPRESSION(A1,B1)"],
  // as LibreOffice Calc 7.4 writes the names of functions that it does not know
  ["_xldudf_rime_freezingpoint(A1,B1)", "RIME.FREEZINGPOINT(A1,B1)"],
  ["ROUND(rime.freezingpoint(A1,B1),1)", "ROUND(RIME.FREEZINGPOINT(A1,B1),1)"],
  ['"rime.x("&prime.x(A1)', '"rime.x("&prime.x(A1)'],
  ["_xldudf_OTHER_ADDIN_THING(A1)", "_xldudf_OTHER_ADDIN_THING(A1)"],
  ["CONCAT(\"_xlfn.\",'_xlfn.s'!A1)", "CONCAT(\"_xlfn.\",'_xlfn.s'!A1)"],
])("%s is read as %s", (stored, plain) => expect(withPlainFunctionNames(stored)).toBe(plain));
