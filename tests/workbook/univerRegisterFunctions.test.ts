import { LocaleType, LogLevel, Univer, type Injector, type IWorkbookData } from "@univerjs/core";
import { IFunctionService } from "@univerjs/engine-formula";
import { FUniver } from "@univerjs/core/facade";
import { UniverSheetsNodeCorePreset } from "@univerjs/preset-sheets-node-core";
import { registerFunctions } from "../../src/workbook/univer/registerFunctions";
import type { ErrorMessages } from "../../src/workbook/univer/errorMessages";
import { testFunctions } from "./univerTestFunctions";

// The whole spreadsheet of the Node preset, as the bench has it in the browser.

interface Bench {
  univerAPI: FUniver;
  messages: ErrorMessages;
  /** Writes into a cell and waits until all is calculated. */
  type: (address: string, content: string | number | null) => Promise<void>;
  value: (address: string) => unknown;
  message: (address: string) => string | null;
  dispose: () => void;
}

function openBench(cellData: IWorkbookData["sheets"][string]["cellData"] = {}): Bench {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { enUS: {} },
    logLevel: LogLevel.SILENT,
  });
  for (const plugin of UniverSheetsNodeCorePreset().plugins) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0] as never, plugin[1] as never);
    else univer.registerPlugin(plugin as never);
  }
  const univerAPI = FUniver.newAPI(univer);
  const sheet = { id: "s", name: "Sheet1", rowCount: 100, columnCount: 12, cellData };
  univerAPI.createWorkbook({ id: "b", sheetOrder: ["s"], sheets: { s: sheet } });
  const messages = registerFunctions(univerAPI, testFunctions);
  const range = (address: string) =>
    univerAPI.getActiveWorkbook()!.getActiveSheet().getRange(address);
  const settled = (): Promise<void> =>
    new Promise((resolve) => {
      const listener = univerAPI.getFormula().calculationEnd(() => {
        listener.dispose();
        setTimeout(resolve, 0);
      });
      setTimeout(resolve, 1000);
    });
  return {
    univerAPI,
    messages,
    type: async (address, content) => {
      const isFormula = typeof content === "string" && content.startsWith("=");
      const calculated = settled();
      range(address).setValue(isFormula ? { f: content } : { v: content, f: null });
      await calculated;
    },
    value: (address) => range(address).getCellData()?.v ?? range(address).getValue(),
    message: (address) => {
      const { startRow: row, startColumn: column } = range(address).getRange();
      return messages.messageAt({ unitId: "b", sheetId: "s", row, column });
    },
    dispose: () => univer.dispose(),
  };
}

describe("functions registered with the grid", () => {
  let bench: Bench;
  beforeAll(async () => {
    bench = openBench({ 0: { 0: { v: 4 }, 1: { f: "=RIME.HALF(A1)" } } });
    await bench.type("L1", "ready");
  });
  afterAll(() => bench.dispose());

  test("a formula that stood in the workbook before is calculated", () => {
    expect(bench.value("B1")).toBe(2);
  });

  test("blank cells and omitted arguments arrive as null, and SUM and AVERAGE stay right", async () => {
    await bench.type("A3", 3);
    await bench.type("C1", "=RIME.SEEN(A3:A5,,B9)");
    expect(bench.value("C1")).toBe("[3;null;null] | null | [null]");
    await bench.type("C2", "=SUM(A3:A5)+0*RIME.HALF(2)");
    await bench.type("C3", "=AVERAGE(A3:A5)");
    expect([bench.value("C2"), bench.value("C3")]).toEqual([3, 3]);
  });

  test("an answer keeps every digit of the double", async () => {
    await bench.type("C4", "=RIME.THIRD()");
    expect(bench.value("C4")).toBe(-1.8599999999999999 / 3);
  });

  test("an error keeps its sentence until the cell is right again", async () => {
    await bench.type("A6", "much");
    await bench.type("C6", "=RIME.HALF(A6)");
    expect(bench.value("C6")).toBe("#VALUE!");
    expect(bench.message("C6")).toBe('value: "much" is not a number.');
    await bench.type("A6", 5);
    expect(bench.value("C6")).toBe(2.5);
    expect(bench.message("C6")).toBeNull();
  });

  test("in a spill an error stands in its own cell, with its own sentence", async () => {
    await bench.type("E1", '=RIME.HALF({2;-1;"x";8})');
    expect(["E1", "E2", "E3", "E4"].map(bench.value)).toEqual([1, "#N/A", "#VALUE!", 4]);
    expect(["E1", "E2", "E3", "E4"].map(bench.message)).toEqual([
      null,
      "value: -1 is below 0.",
      'value: "x" is not a number.',
      null,
    ]);
    await bench.type("E1", "=RIME.HALF({2;4})");
    expect(bench.message("E2")).toBeNull();
  });

  test("a call within another keeps the sentence; caught by IFERROR it leaves none", async () => {
    await bench.type("G1", "=SUM(1,RIME.HALF(-2))");
    expect([bench.value("G1"), bench.message("G1")]).toEqual(["#N/A", "value: -2 is below 0."]);
    await bench.type("G1", "=IFERROR(RIME.HALF(-2),9)");
    expect([bench.value("G1"), bench.message("G1")]).toEqual([9, null]);
  });

  test("dependents follow a change", async () => {
    await bench.type("H1", "=RIME.HALF(A1)+RIME.HALF(B1)");
    expect(bench.value("H1")).toBe(3);
    await bench.type("A1", 8);
    expect(bench.value("H1")).toBe(6);
  });

  test("lookups and comparisons find the values as they are now", async () => {
    await bench.type("K1", "=RIME.HALF({2;4;8})");
    await bench.type("K5", "=MATCH(2,K1:K3,0)&COUNTIF(K1:K3,2)&SUM((K1:K3=2)*1)");
    expect(bench.value("K5")).toBe("211");
    await bench.type("K1", "=RIME.HALF({4;2;4})");
    expect(bench.value("K5")).toBe("122");
  });

  test("@ before a function takes the top left value", async () => {
    await bench.type("I1", "=@RIME.HALF({2;4})+1");
    expect(bench.value("I1")).toBe(2);
    expect(bench.value("I2")).toBeFalsy();
  });

  test("a defect of a function is an error in its cell and stops nothing else", async () => {
    await bench.type("J1", "=RIME.BROKEN()");
    await bench.type("J2", "=RIME.HALF(6)");
    expect([bench.value("J1"), bench.value("J2")]).toEqual(["#VALUE!", 3]);
    expect(bench.message("J1")).toMatch(/RIME\.BROKEN failed/);
  });

  test("autocompletion knows the functions and their arguments", () => {
    const { _injector: injector } = bench.univerAPI as unknown as { _injector: Injector };
    const description = injector.get(IFunctionService).getDescription("RIME.SEEN")!;
    expect(description.abstract).toBe("Says what arrived.");
    expect(description.functionParameter.map(({ name }) => name)).toEqual([
      "first",
      "second",
      "third",
    ]);
    expect(description.functionParameter[1]!.require).toBe(0);
  });
});
