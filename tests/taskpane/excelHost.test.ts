import { excelHost } from "../../taskpane/excelHost";
import { Cancelled } from "../../taskpane/office/cancelled";
import { hostSentence } from "../../taskpane/office/hostSentence";
import { english } from "../../taskpane/words/english";
import { FakeError, fakeExcel, type FakeBook } from "./fakeExcel";

// Which calls clear Excel's undo history, and which codes its errors carry, is taken from its published
// documentation (learn.microsoft.com, Office add-ins: error handling; Excel JavaScript API). Not tried in a
// live Excel.

const lemonIce = () => [
  ["Ingredient", "g"],
  ["water", 200],
  ["sucrose", 70],
  ["Total", "=SUM(B2:B3) → 270"],
];

function hostOf(book: Partial<FakeBook>) {
  const fake = fakeExcel({
    sheets: { "My ices": lemonIce() },
    selection: { sheet: "My ices", address: "A2" },
    ...book,
  });
  (globalThis as Record<string, unknown>)["Excel"] = fake.Excel;
  return { host: excelHost(), ...fake };
}

describe("reading the selection", () => {
  test("a single cell brings the block around it", async () => {
    const { host } = hostOf({});
    const { selected, around } = await host.readSelection();
    expect(selected.address).toBe("A2");
    expect(around).toMatchObject({ sheet: "My ices", address: "A1:B4", top: 0, left: 0 });
    expect(around.values[3]).toEqual(["Total", 270]);
    expect(around.formulas[3]).toEqual(["Total", "=SUM(B2:B3)"]);
  });

  test("a cell in a table brings the table only", async () => {
    const { host } = hostOf({
      tables: [{ name: "Ice", sheet: "My ices", address: "A1:B3", showTotals: false }],
    });
    expect((await host.readSelection()).around.address).toBe("A1:B3");
  });

  test("a selected range is taken as it is, cut to what is in use", async () => {
    const { host } = hostOf({ selection: { sheet: "My ices", address: "A1:B1048576" } });
    const { selected, around } = await host.readSelection();
    expect(selected.address).toBe("A1:B4");
    expect(around.address).toBe("A1:B4");
  });

  test("an empty sheet answers with the one blank cell", async () => {
    const { host } = hostOf({
      sheets: { Empty: [] },
      selection: { sheet: "Empty", address: "C7" },
    });
    expect((await host.readSelection()).around).toMatchObject({ address: "C7", values: [[""]] });
  });

  test("more cells than are read at once are refused in a sentence", async () => {
    const wide = Array.from({ length: 300 }, () => Array.from({ length: 201 }, () => 1));
    const { host } = hostOf({
      sheets: { Big: wide },
      selection: { sheet: "Big", address: "A1:GS300" },
    });
    const error: unknown = await host.readSelection().catch((reason: unknown) => reason);
    expect(hostSentence(error, english)).toContain("60000 cells");
  });
});

describe("inserting", () => {
  test("writes into an empty cell what was announced", async () => {
    const { host, calls } = hostOf({ selection: { sheet: "My ices", address: "D2" } });
    const place = await host.cellsFromSelection(1, 1);
    expect(place).toMatchObject({ address: "D2", values: [[""]] });
    expect(await host.insert(place, [['=RIME.SOLUTE("sucrose","molar mass")']])).toBe("written");
    expect(calls).toContain("write My ices!D2");
  });

  test("never overwrites a filled cell unless told to", async () => {
    const { host, calls } = hostOf({});
    const place = await host.cellsFromSelection(1, 1);
    expect(await host.insert(place, [["honey"]])).toBe("filled");
    expect(calls).toEqual([]);
    expect(await host.insert(place, [["honey"]], { overwrite: true })).toBe("written");
  });

  test("leaves a cell alone that changed since it was shown, even when told to overwrite", async () => {
    const sheets = { "My ices": lemonIce() };
    const { host, calls } = hostOf({ sheets });
    const place = await host.cellsFromSelection(1, 1);
    sheets["My ices"][1]![0] = "cream";
    expect(await host.insert(place, [["honey"]], { overwrite: true })).toBe("changed meanwhile");
    expect(calls).toEqual([]);
  });
});

describe("reading the whole workbook", () => {
  const book = (): Partial<FakeBook> => ({
    sheets: {
      "My ices": lemonIce(),
      Empty: [],
      "Old 'ones'": [
        ["", ""],
        ["", "=[costs.xlsx]Sheet1!A1 → 3"],
        ["", "#N/A"],
        ["", 5],
      ],
    },
    tables: [{ name: "Ice", sheet: "My ices", address: "A1:B4", showTotals: true }],
    hiddenSheets: ["Old 'ones'"],
    hiddenRows: { "My ices": [2] },
    names: [
      { name: "batch", formula: "='My ices'!$B$4" },
      { name: "batch", formula: "='Old ''ones'''!$B$4", sheet: "Old 'ones'" },
    ],
    calculationMode: "Manual",
  });

  test("gives the model the audit reads", async () => {
    const { host } = hostOf(book());
    const seen: string[] = [];
    const workbook = await host.readWorkbook({
      onSheet: (done, total) => seen.push(`${done}/${total}`),
    });
    expect(seen).toEqual(["0/3", "1/3", "2/3"]);
    expect(workbook).toMatchObject({
      calculation: "manual",
      names: [
        { name: "batch", refersTo: "'My ices'!$B$4", sheet: null },
        { name: "batch", refersTo: "'Old ''ones'''!$B$4", sheet: "Old 'ones'" },
      ],
      externalLinks: ["costs.xlsx"],
    });
    const [ices, empty, old] = workbook.sheets;
    expect(ices!.cellAt(3, 1)).toMatchObject({ value: 270, formula: "SUM(B2:B3)" });
    expect([...ices!.hiddenRows]).toEqual([2]);
    expect(ices!.tables).toMatchObject([
      { name: "Ice", columns: ["Ingredient", "g"], hasTotals: true },
    ]);
    expect(empty!.rowCount).toBe(0);
    expect(old).toMatchObject({ name: "Old 'ones'", hidden: true });
    expect(old!.cellAt(2, 1)).toMatchObject({ value: { error: "#N/A" } });
    expect(old!.cellAt(3, 1)).toMatchObject({ value: 5 });
    expect(old!.cellAt(0, 0)).toBeUndefined();
  });

  test("can stop after so many rows of each sheet", async () => {
    const { host } = hostOf(book());
    const { sheets } = await host.readWorkbook({ mostRows: 2 });
    expect(sheets[0]!.rowCount).toBe(2);
    expect(sheets[0]!.cellAt(1, 0)).toMatchObject({ value: "water" });
  });

  test("ends when it is asked to, before the next sheet or part", async () => {
    const { host, state } = hostOf(book());
    const stop = new AbortController();
    const reading = host.readWorkbook({ signal: stop.signal, onSheet: () => stop.abort() });
    await expect(reading).rejects.toBeInstanceOf(Cancelled);
    expect(state.syncs).toBeLessThan(6);
  });

  test("leaves selection, sheet and undo history as they are", async () => {
    const { host, calls } = hostOf(book());
    await host.readWorkbook();
    expect(calls).toEqual([]);
  });
});

describe("jumping and following", () => {
  test("a jump activates the sheet and selects the cells", async () => {
    const { host, calls } = hostOf({});
    await host.goTo("My ices", "B2:B3");
    expect(calls).toEqual(["activate My ices", "select My ices!B2:B3"]);
  });

  test("one event handler serves every view, and a view that leaves is not called any more", async () => {
    const { host, calls, handlers } = hostOf({});
    const heard: string[] = [];
    const stop = await host.onSelectionChanged(() => heard.push("one"));
    await host.onSelectionChanged(() => heard.push("other"));
    expect(calls).toEqual(["add handler"]);
    await handlers[0]!();
    stop();
    await handlers[0]!();
    expect(heard).toEqual(["one", "other", "other"]);
  });
});

describe("a fault of the host", () => {
  test.each(Object.keys(english.hostFaults))("%s ends in one sentence of ours", async (code) => {
    const { host, state } = hostOf({});
    state.fault = { error: new FakeError(code), atSync: 0 };
    const error: unknown = await host.readSelection().catch((reason: unknown) => reason);
    const sentence = hostSentence(error, english);
    expect(sentence).toBe(english.hostFaults[code as keyof typeof english.hostFaults]);
    expect(sentence).toMatch(/^[A-Z][^\n]*\.$/);
  });

  test("an unknown one keeps the host's words", () => {
    expect(hostSentence(new FakeError("Odd."), english)).toBe(
      "The spreadsheet could not do that: Odd.",
    );
    expect(hostSentence(undefined, english)).toMatch(/^The spreadsheet could not do that/);
  });

  test("a sheet deleted meanwhile is said to be gone", async () => {
    const { host } = hostOf({});
    const error: unknown = await host.read("Gone", "A1").catch((reason: unknown) => reason);
    expect(hostSentence(error, english)).toBe(english.hostFaults.ItemNotFound);
  });
});

describe("changing single cells", () => {
  test("leaves a cell alone that changed since it was shown, and writes the others", async () => {
    const sheets = { "My ices": lemonIce() };
    const { host } = hostOf({ sheets });
    const left = await host.writeCells([
      { sheet: "My ices", cell: "B2", from: 190, to: 1 },
      { sheet: "My ices", cell: "B3", from: 70, to: 75 },
    ]);
    expect(left.map(({ cell }) => cell)).toEqual(["B2"]);
    expect(sheets["My ices"].map((row) => row[1])).toEqual(["g", 200, 75, "=SUM(B2:B3) → 270"]);
  });

  test("a text stays a text, even where it looks like a number, a date or a formula", async () => {
    const { host } = hostOf({});
    for (const text of ["12.5", "+3", "May 5", "@home", "honey"]) {
      const { formulas } = await host.read("My ices", "A2");
      const edit = { sheet: "My ices", cell: "A2", from: formulas[0]![0]!, to: text };
      expect(await host.writeCells([edit])).toEqual([]);
      expect((await host.read("My ices", "A2")).values).toEqual([[text]]);
    }
  });

  test("a cell formatted as text takes a number only with another format", async () => {
    const sheets = { "My ices": [["12,5"]] };
    const { host } = hostOf({ sheets, formats: { "My ices!A1": "@" } });
    const edit = { sheet: "My ices", cell: "A1", from: "12,5", to: 12.5 };
    expect(await host.writeCells([edit])).toEqual([edit]); // written, read again, found to be a text
    const again = { ...edit, from: "12.5", format: "General" };
    expect(await host.writeCells([again])).toEqual([]);
    expect(sheets["My ices"]).toEqual([[12.5]]);
  });

  test("Excel's own spelling of a formula counts as the same", async () => {
    const sheets = { "My ices": [["=SUM(B2:B3)"]] };
    const { host } = hostOf({ sheets });
    const edit = { sheet: "My ices", cell: "A1", from: "=sum( B2:B3 )", to: "=SUM(B2:B4)" };
    expect(await host.writeCells([edit])).toEqual([]);
    const quoted = { sheet: "My ices", cell: "A1", from: '="a b"', to: 1 };
    sheets["My ices"][0] = ['="a  b"'];
    expect(await host.writeCells([quoted])).toEqual([quoted]);
  });
});

describe("new sheets", () => {
  test("get a free name and never touch one that is there", async () => {
    const sheets: Record<string, (string | number)[][]> = {
      "My ices": lemonIce(),
      Report: [["x"]],
    };
    const { host, calls } = hostOf({ sheets });
    expect(await host.addSheet("report", [["a"], ["b", 2]])).toBe("report (2)");
    expect(sheets["Report"]).toEqual([["x"]]);
    expect(sheets["report (2)"]).toEqual([
      ["a", ""],
      ["b", 2],
    ]);
    expect(calls).toEqual(["write report (2)!A1:B2"]);
    const heads = await host.readOnEachSheet("A1");
    expect(heads.map(({ sheet, values }) => [sheet, values[0]?.[0]])).toEqual([
      ["My ices", "Ingredient"],
      ["Report", "x"],
      ["report (2)", "a"],
    ]);
  });

  test("the filled part of a sheet is read, and an empty sheet has none", async () => {
    const { host } = hostOf({ sheets: { "My ices": lemonIce(), Empty: [] } });
    expect(await host.usedBlock("My ices")).toMatchObject({ address: "A1:B4" });
    expect(await host.usedBlock("Empty")).toBeNull();
  });
});
