import { ownCalls } from "../../../taskpane/why/formulaCalls";
import { cellsNamed, cellsOf } from "../../../taskpane/why/resolveReference";
import { sheetFromRows } from "../../../src/workbook/sheetFromRows";

const argumentsIn = (formula: string) => ownCalls(formula)[0]?.args;

describe("calls of our functions in a formula", () => {
  test("are found inside other functions, in any case, and not inside quoted text", () => {
    const formula = '=IF(rime.FreezingPoint(A2:A5,B2:B5)<-2,"RIME.MOLES(1)",RIME.MOLES("salt",3))';
    expect(ownCalls(formula).map(({ name }) => name)).toEqual(["FREEZINGPOINT", "MOLES"]);
    expect(ownCalls(formula)[0]?.text).toBe("rime.FreezingPoint(A2:A5,B2:B5)");
  });

  test("a longer name that ends like ours is not ours", () => {
    expect(ownCalls("=PRIME.MOLES(1,2)")).toEqual([]);
  });

  test("an unfinished call is none", () => {
    expect(ownCalls('=RIME.MOLES("salt",(3)')).toEqual([]);
  });

  test("constants, blanks, arrays, references, calls and sums are told apart", () => {
    const formula =
      "=RIME.X({\"water\";\"sugar, fine\"},,-12.5,TRUE,50%,'My ''ice'''!$A$1:B9,Ices[g],total,RIME.MOLES(\"salt\",2),B2*100)";
    expect(argumentsIn(formula)).toMatchObject([
      { kind: "value", value: [["water"], ["sugar, fine"]] },
      { kind: "value", value: null },
      { kind: "value", value: -12.5 },
      { kind: "value", value: true },
      { kind: "value", value: 0.5 },
      { kind: "reference", text: "'My ''ice'''!$A$1:B9" },
      { kind: "reference", text: "Ices[g]" },
      { kind: "reference", text: "total" },
      { kind: "call", call: { name: "MOLES" } },
      { kind: "other", text: "B2*100" },
    ]);
  });
});

describe("what a reference stands for", () => {
  const home = { sheet: "Ices", row: 4 };
  test("cells of this sheet or of another", () => {
    expect(cellsOf("$B$2:C$9", home)).toEqual({ sheet: "Ices", address: "B2:C9" });
    expect(cellsOf("'My ''ice'''!A1", home)).toEqual({ sheet: "My 'ice'", address: "A1" });
    expect(cellsOf("Ices[g]", home)).toBeNull();
  });

  test("names and the parts of a table", () => {
    const table = {
      name: "Mix",
      range: { top: 1, left: 0, bottom: 5, right: 2 },
      columns: ["item", "g", "cost"],
      hasTotals: true,
    };
    const sheets = [{ ...sheetFromRows("Ices", [["x"]]), tables: [table] }];
    const book = { sheets, names: [{ name: "total", refersTo: "Ices!$B$7", sheet: null }] };
    const address = (reference: string) => cellsNamed(reference, home, book)?.address ?? null;
    expect(address("total")).toBe("B7");
    expect(address("Mix")).toBe("A3:C5");
    expect(address("Mix[#All]")).toBe("A2:C6");
    expect(address("Mix[g]")).toBe("B3:B5");
    expect(address("Mix[@g]")).toBe("B5");
    expect(address("Mix[[#This Row],[g]:[cost]]")).toBe("B5:C5");
    expect(address("Nothing[g]")).toBeNull();
  });
});
