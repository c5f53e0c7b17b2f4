// A batch returns a promise whether or not it waits for anything.
/* eslint-disable @typescript-eslint/require-await */
import { office } from "../../src/bench/host/office";
import { run, type RequestContext } from "../../src/bench/host/requestContext";
import { memoryGrid } from "./memoryGrid";

// What is expected here is what Excel's documentation says of its JavaScript API: "Work with objects",
// "*OrNullObject methods and properties", "Error handling", "Work with events".

const book = () =>
  memoryGrid({
    Recipes: [
      ["Item", "g", null, "note"],
      ["Sugar", 120],
      ["Milk", 700],
    ],
    Costing: [
      ["Item", "Price"],
      ["Sugar", 1.3],
      ["Milk", 1.25],
    ],
  });

const inBook = <T>(batch: (context: RequestContext) => Promise<T>) => run(book().grid, batch);
const codeOf = async (work: Promise<unknown>): Promise<string> => {
  try {
    await work;
    return "no error";
  } catch (error) {
    return (error as { code: string }).code;
  }
};

describe("Loading", () => {
  test("a property read before load and sync is PropertyNotLoaded", async () => {
    expect(await codeOf(inBook(async (c) => c.workbook.getSelectedRange().values))).toBe(
      "PropertyNotLoaded",
    );
    const onlyLoaded = inBook(async (c) => {
      const range = c.workbook.getSelectedRange();
      range.load("values");
      return range.values;
    });
    expect(await codeOf(onlyLoaded)).toBe("PropertyNotLoaded");
  });

  test("only what was loaded can be read", async () => {
    const other = inBook(async (c) => {
      const range = c.workbook.getSelectedRange();
      range.load("values");
      await c.sync();
      return range.formulas;
    });
    expect(await codeOf(other)).toBe("PropertyNotLoaded");
  });

  test("a loaded range gives address, size, values, formulas and formats", async () => {
    const loaded = await inBook(async (c) => {
      const range = c.workbook.worksheets.getItem("Recipes").getRange("A1:B3");
      range.load("address,values,rowCount,columnCount,rowIndex,numberFormat,valueTypes,rowHidden");
      range.load({ worksheet: { name: true } });
      await c.sync();
      return { ...range.toJSON(), valueTypes: range.valueTypes, sheet: range.worksheet.name };
    });
    expect(loaded).toMatchObject({
      address: "Recipes!A1:B3",
      values: [
        ["Item", "g"],
        ["Sugar", 120],
        ["Milk", 700],
      ],
      rowCount: 3,
      columnCount: 2,
      rowIndex: 0,
      rowHidden: null, // the rows do not agree
      sheet: "Recipes",
    });
    expect(loaded.valueTypes).toEqual([
      ["String", "String"],
      ["String", "Double"],
      ["String", "Double"],
    ]);
  });

  test("a blank cell is an empty text, as in Excel", async () => {
    const values = await inBook(async (c) => {
      const cell = c.workbook.worksheets.getItem("Recipes").getRange("C1").load("values");
      await c.sync();
      return cell.values;
    });
    expect(values).toEqual([[""]]);
  });

  test("an unknown property is refused at sync", async () => {
    const wrong = inBook(async (c) => {
      c.workbook.getSelectedRange().load("colour");
      await c.sync();
    });
    expect(await codeOf(wrong)).toBe("InvalidArgument");
  });

  test("the items of a collection are there after load and sync", async () => {
    const names = await inBook(async (c) => {
      const { worksheets, tables } = c.workbook;
      worksheets.load("items/name,items/visibility");
      tables.load("items/name,items/showTotals");
      await c.sync();
      const of = tables.items[0]!.getRange().load("address");
      await c.sync();
      return [
        worksheets.items.map((s) => `${s.name} ${s.visibility}`),
        tables.items[0]!.name,
        of.address,
      ];
    });
    expect(names).toEqual([["Recipes Visible", "Costing Visible"], "Prices", "Costing!A1:B3"]);
  });
});

describe("Objects that are not there", () => {
  test("getItem of a missing sheet is ItemNotFound, and only at sync", async () => {
    let reached = false;
    const missing = inBook(async (c) => {
      c.workbook.worksheets.getItem("Nowhere");
      reached = true;
      await c.sync();
    });
    expect(await codeOf(missing)).toBe("ItemNotFound");
    expect(reached).toBe(true);
  });

  test("the OrNullObject variant says so without an error", async () => {
    const found = await inBook(async (c) => {
      const none = c.workbook.worksheets.getItemOrNullObject("Nowhere");
      const some = c.workbook.worksheets.getItemOrNullObject("recipes").load("name");
      await c.sync();
      return [none.isNullObject, some.isNullObject, some.name];
    });
    expect(found).toEqual([true, false, "Recipes"]);
  });

  test("isNullObject too can be read only after sync", async () => {
    const early = inBook(async (c) => c.workbook.worksheets.getItemOrNullObject("x").isNullObject);
    expect(await codeOf(early)).toBe("PropertyNotLoaded");
  });
});

describe("Changing cells", () => {
  test("nothing is written before sync, and sync waits for the calculation", async () => {
    const { grid, log } = book();
    await run(grid, async (c) => {
      c.workbook.worksheets.getItem("Recipes").getRange("C2:C3").values = [["=B2*2"], [7]];
      expect(log).toEqual([]);
      await c.sync();
      expect(log).toEqual(["write Recipes", "step", "settled"]);
    });
    expect(grid.read("Recipes", { top: 1, left: 2, bottom: 2, right: 2 }).values).toEqual([
      ["=B2*2"],
      [7],
    ]);
  });

  test("a value becomes what it would be when typed; null leaves a cell alone", async () => {
    const { grid } = book();
    await run(grid, async (c) => {
      const range = c.workbook.worksheets.getItem("Recipes").getRange("A2:D2");
      range.values = [[null, "12.5", "TRUE", "'007"]];
    });
    expect(grid.read("Recipes", { top: 1, left: 0, bottom: 1, right: 3 }).values).toEqual([
      ["Sugar", 12.5, true, "007"],
    ]);
  });

  test("one value fills the whole range; another size is InvalidArgument", async () => {
    const { grid } = book();
    await run(grid, async (c) => {
      c.workbook.worksheets.getItem("Costing").getRange("D1:D2").values = 5;
    });
    expect(grid.read("Costing", { top: 0, left: 3, bottom: 1, right: 3 }).values).toEqual([
      [5],
      [5],
    ]);
    const wrongSize = run(grid, async (c) => {
      c.workbook.worksheets.getItem("Costing").getRange("D1:D2").values = [[1, 2]];
    });
    expect(await codeOf(wrongSize)).toBe("InvalidArgument");
  });

  test("an error ends the batch, and what was done before it stays done", async () => {
    const { grid } = book();
    const failing = run(grid, async (c) => {
      const sheet = c.workbook.worksheets.getItem("Recipes");
      sheet.getRange("E1").values = [[1]];
      c.workbook.worksheets.getItem("Nowhere");
      sheet.getRange("E2").values = [[2]];
    });
    expect(await codeOf(failing)).toBe("ItemNotFound");
    expect(grid.read("Recipes", { top: 0, left: 4, bottom: 1, right: 4 }).values).toEqual([
      [1],
      [null],
    ]);
  });

  test("a sheet is added, not shown; a name that is taken is refused", async () => {
    const { grid } = book();
    await run(grid, async (c) => {
      c.workbook.worksheets.add("Card");
    });
    expect(grid.sheets().map(({ name }) => name)).toContain("Card");
    expect(grid.activeSheet()).toBe("Recipes");
    expect(await codeOf(run(grid, async (c) => c.workbook.worksheets.add("card")))).toBe(
      "ItemAlreadyExists",
    );
  });
});

describe("Ranges from ranges", () => {
  const addressOf = (pick: (c: RequestContext) => { load: (s: string) => { address: string } }) =>
    inBook(async (c) => {
      const range = pick(c).load("address");
      await c.sync();
      return range.address;
    });
  const b2 = (c: RequestContext) => c.workbook.worksheets.getItem("Recipes").getRange("B2");

  test.each([
    ["getCell", (c: RequestContext) => b2(c).getCell(1, 2), "Recipes!D3"],
    ["getOffsetRange", (c: RequestContext) => b2(c).getOffsetRange(1, -1), "Recipes!A3"],
    ["getResizedRange", (c: RequestContext) => b2(c).getResizedRange(1, 1), "Recipes!B2:C3"],
    ["getSurroundingRegion", (c: RequestContext) => b2(c).getSurroundingRegion(), "Recipes!A1:B3"],
    [
      "getUsedRange",
      (c: RequestContext) => c.workbook.worksheets.getItem("Recipes").getUsedRange(),
      "Recipes!A1:D3",
    ],
    [
      "getRange of a whole column",
      (c: RequestContext) => c.workbook.worksheets.getItem("Costing").getRange("B:B"),
      "Costing!B1:B20", // as far as this grid has rows
    ],
    [
      "getRangeByIndexes",
      (c: RequestContext) => c.workbook.worksheets.getItem("Costing").getRangeByIndexes(1, 0, 2, 2),
      "Costing!A2:B3",
    ],
  ])("%s", async (_, pick, address) => {
    expect(await addressOf(pick)).toBe(address);
  });

  test("a range off the sheet is InvalidArgument", async () => {
    const off = inBook(async (c) => {
      b2(c).getOffsetRange(-5, 0);
      await c.sync();
    });
    expect(await codeOf(off)).toBe("InvalidArgument");
  });

  test("what is no address is InvalidArgument", async () => {
    const wrong = inBook(async (c) => {
      c.workbook.worksheets.getItem("Recipes").getRange("cell one");
      await c.sync();
    });
    expect(await codeOf(wrong)).toBe("InvalidArgument");
  });
});

describe("Events and surroundings", () => {
  test("a handler hears of a moved selection until it is removed", async () => {
    const { grid } = book();
    let heard = 0;
    const handler = await run(grid, async (c) => {
      const result = c.workbook.onSelectionChanged.add(async () => {
        heard += 1;
      });
      await c.sync();
      return result;
    });
    await run(grid, async (c) => c.workbook.worksheets.getItem("Costing").getRange("B2").select());
    expect(heard).toBe(1);
    handler.remove();
    await handler.context.sync();
    await run(grid, async (c) => c.workbook.worksheets.getItem("Costing").getRange("B3").select());
    expect(heard).toBe(1);
  });

  test("the calculation mode is automatic", async () => {
    const mode = await inBook(async (c) => {
      const application = c.workbook.application.load("calculationMode");
      await c.sync();
      return application.calculationMode;
    });
    expect(mode).toBe("Automatic");
  });

  test("requirement sets are asked for as texts, and 1.10 is more than 1.9", () => {
    const { requirements } = office("en-US").context;
    expect(requirements.isSetSupported("ExcelApi", "1.4")).toBe(true);
    expect(requirements.isSetSupported("ExcelApi", "1.10")).toBe(false);
    expect(requirements.isSetSupported("Mailbox", "1.1")).toBe(false);
  });

  test("onReady names the host and the platform", async () => {
    expect(await office("en-US").onReady()).toEqual({ host: "Excel", platform: "OfficeOnline" });
  });
});
