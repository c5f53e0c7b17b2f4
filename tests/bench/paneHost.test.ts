import { office } from "../../src/bench/host/office";
import { run, type RequestContext } from "../../src/bench/host/requestContext";
import { excelHost } from "../../taskpane/excelHost";
import { memoryGrid } from "./memoryGrid";

/** The pane's own host, over the bench's stand-in for Excel. */
function paneHost() {
  const { grid, log } = memoryGrid({
    Ices: [
      ["Ingredient", "g"],
      ["water", "12,5"],
      ["sucrose", 70],
    ],
    Empty: [],
    Costing: [["Item"]],
  });
  Object.assign(globalThis, {
    Office: office("en-US"),
    Excel: { run: (batch: (context: RequestContext) => Promise<unknown>) => run(grid, batch) },
  });
  return { host: excelHost(), grid, log };
}

describe("the pane's host on the bench", () => {
  test("reads the same cells of all sheets, and the filled part of one", async () => {
    const { host } = paneHost();
    const heads = await host.readOnEachSheet("A1:B1");
    expect(heads.map(({ sheet, values }) => [sheet, values])).toEqual([
      ["Ices", [["Ingredient", "g"]]],
      ["Empty", [["", ""]]],
      ["Costing", [["Item", ""]]],
    ]);
    expect(await host.usedBlock("Ices")).toMatchObject({ address: "A1:B3", top: 0, left: 0 });
    expect(await host.usedBlock("Empty")).toBeNull();
  });

  test("adds a sheet under a free name in one step, and shows nothing", async () => {
    const { host, grid, log } = paneHost();
    expect(await host.addSheet("ices", [["found"], ["x", 2]])).toBe("ices (2)");
    expect(grid.read("ices (2)", { top: 0, left: 0, bottom: 1, right: 1 }).values).toEqual([
      ["found", null],
      ["x", 2],
    ]);
    expect(grid.activeSheet()).toBe("Ices");
    expect(log).toEqual(["write ices (2)", "step", "settled"]);
  });

  test("changes cells in one step, leaves the changed one alone, and writes a text back as a text", async () => {
    const { host, grid, log } = paneHost();
    const edits = [
      { sheet: "Ices", cell: "B2", from: "12,5", to: 12.5, format: "General" },
      { sheet: "Ices", cell: "B3", from: 70, to: "=B2*2" },
      { sheet: "Ices", cell: "A3", from: "glucose", to: "sucrose" },
    ];
    expect(await host.writeCells(edits)).toEqual([edits[2]]);
    expect(log).toEqual(["write Ices", "write Ices", "step", "settled"]);
    const column = { top: 1, left: 1, bottom: 2, right: 1 };
    expect(grid.read("Ices", column).values).toEqual([[12.5], ["=B2*2"]]);
    await host.writeCells([{ sheet: "Ices", cell: "B2", from: 12.5, to: "12,5" }]);
    expect(grid.read("Ices", column).values[0]).toEqual(["12,5"]);
  });

  test("takes no pictures, and says so before anything is asked of the grid", async () => {
    const { host, log } = paneHost();
    expect(await host.insertPicture("iVBORw0KGgo=", "curve")).toBe(false);
    expect(log).toEqual([]);
  });
});
