import { fireEvent, render, screen, waitFor, within } from "@testing-library/preact";
import * as steps from "../../../src/audit/auditInSteps";
import type { AuditOptions } from "../../../src/audit/auditWorkbook";
import type { ReportedFinding } from "../../../src/audit/report/auditReport";
import type { BlockValue } from "../../../taskpane/host";
import { HalfWritten } from "../../../taskpane/office/halfWritten";
import { readThrough } from "../../../taskpane/views/readThrough";
import { fakeHost } from "../fakeHost";
import { paneContext } from "../paneContext";

const { Content: ReadThrough } = readThrough;

// The findings are made up: what the rules find is tested where the rules are.
const known = (found: Omit<ReportedFinding, "key">): ReportedFinding => ({
  ...found,
  key: `${found.rule}@${found.sheet}!${found.cell}#0`,
});
const findings: readonly ReportedFinding[] = [
  known({
    rule: "number-as-text",
    severity: "error",
    sheet: "Ices",
    cell: "B2",
    message: "B2 holds a text.",
    effect: { quantity: "freezing point", from: -1.4, to: -2.3, unit: "°C" },
    fix: "Enter 12.5 as a number.",
    edits: [
      { sheet: "Ices", cell: "B2", from: "12,5", to: 12.5 },
      { sheet: "Ices", cell: "B3", from: 100, to: "=SUM(B1:B2)" },
    ],
  }),
  known({
    rule: "hidden",
    severity: "note",
    sheet: "Old",
    cell: "B2:B4",
    message: "Rows are hidden.",
    effect: null,
  }),
];

jest.mock("../../../src/audit/auditInSteps", () => ({ auditInSteps: jest.fn() }));
const auditInSteps = steps.auditInSteps as unknown as jest.Mock;

const recalculation = { calculated: 0, leftAlone: 0, complete: true, reason: null };
const summary = { sheets: 2, recipes: 1, errors: 1, warnings: 0, notes: 1, accepted: 0 };

/** A report of two steps, so that there is something to stop between. */
const reportOf = (found: readonly ReportedFinding[]) =>
  function* () {
    yield { done: 1, total: 2 };
    return {
      findings: found,
      accepted: [],
      staleAcceptances: [],
      recipes: [
        {
          ...{ sheet: "Ices", range: "A1:B1", recipes: 1, taken: "Took A1 for the ingredients." },
          isCorrected: false,
          correction: { sheet: "Ices", range: "A1:B1", recipe: "down", names: "A", amounts: "B" },
        },
      ],
      reading: [],
      summary: { ...summary, recalculation },
    };
  };

const book = (): Record<string, BlockValue[][]> => ({
  Ices: [
    ["water", 200],
    ["sucrose", "12,5"],
    ["Total", 100],
  ],
  Old: [["x"]],
});

function open(found: readonly ReportedFinding[] = findings, sheets = book()) {
  auditInSteps.mockImplementation(reportOf(found));
  const fake = fakeHost(sheets, "A1");
  const { context, said } = paneContext(fake.host);
  render(<ReadThrough context={context} active />);
  return { ...fake, said };
}

const click = (name: string | RegExp) => fireEvent.click(screen.getByRole("button", { name }));
const read = async () => {
  click(/^Read (the workbook|it again)$/);
  await screen.findByRole("heading", { level: 2 });
  await waitFor(() => expect(screen.queryByRole("button", { name: "Stop" })).toBeNull());
};

describe("the read-through", () => {
  test("reads the workbook on a click and lists findings by severity, with their effect", async () => {
    const { said } = open();
    await read();
    expect(screen.getByText("2 findings.")).toBeTruthy();
    const titles = screen.getAllByRole("heading", { level: 3 }).map((title) => title.textContent);
    expect(titles).toEqual(["Wrong (1)", "Worth knowing (1)"]);
    expect(screen.getByText("freezing point: −1.4 → −2.3 °C")).toBeTruthy();
    expect(screen.getByText("Changes no answer.")).toBeTruthy();
    expect(screen.getByText("What helps: Enter 12.5 as a number.")).toBeTruthy();
    expect(said).toEqual(["Reading the workbook.", "2 findings."]);
  });

  test("tells the findings in German where the pane does", async () => {
    auditInSteps.mockImplementation(reportOf(findings));
    const { context } = paneContext(fakeHost(book(), "A1").host, "de");
    render(<ReadThrough context={context} active />);
    fireEvent.click(screen.getByRole("button", { name: "Arbeitsmappe durchsehen" }));
    expect(await screen.findByText(/12,5 als Zahl eingeben\./)).toBeTruthy();
    expect(screen.getByText("Gefrierpunkt: −1,4 → −2,3 °C")).toBeTruthy();
  });

  test("says whose values count, and warns where the workbook calculates on command only", async () => {
    const { host } = open();
    await read();
    expect(screen.getByText(/values the spreadsheet shows/)).toBeTruthy();
    document.body.innerHTML = "";
    const manual = {
      ...host,
      readWorkbook: async () => ({
        ...(await host.readWorkbook()),
        calculation: "manual" as const,
      }),
    };
    const { context } = paneContext(manual);
    render(<ReadThrough context={context} active />);
    await read();
    expect(screen.getByText(/set to manual calculation: .* Press F9/)).toBeTruthy();
  });

  test("a click on the address jumps to the cell", async () => {
    const { visited } = open();
    await read();
    click("Go to Old!B2:B4");
    await waitFor(() => expect(visited).toEqual(["Old!B2:B4"]));
  });

  test("a sheet that is gone by then ends in a sentence", async () => {
    const { sheets } = open();
    await read();
    delete sheets["Old"];
    click("Go to Old!B2:B4");
    expect(await screen.findByText("That sheet or cell is no longer there.")).toBeTruthy();
  });

  test("says so when there is nothing, and what was read", async () => {
    const { said } = open([]);
    await read();
    expect(said).toContain("Nothing found.");
    expect(screen.getByText("Took A1 for the ingredients.")).toBeTruthy();
  });

  test("a workbook that cannot be read ends in a sentence, and it can be tried again", async () => {
    const { faults } = open([]);
    faults.readWorkbook = { code: "InvalidOperationInCellEditMode" };
    click("Read the workbook");
    expect(await screen.findByText(/A cell is being edited/)).toBeTruthy();
    delete faults.readWorkbook;
    await read();
    expect(screen.getByText("Nothing found.")).toBeTruthy();
  });

  test("can be stopped between two steps", async () => {
    const { said } = open();
    click("Read the workbook");
    click("Stop");
    await waitFor(() => expect(said).toContain("Stopped; nothing was changed."));
    expect(screen.queryByRole("heading", { level: 2 })).toBeNull();
    await read();
    expect(screen.getByText("2 findings.")).toBeTruthy();
  });

  test("kinds of findings can be hidden and shown again", async () => {
    open();
    await read();
    click("wrong");
    click("worth knowing");
    expect(screen.queryByText("B2 holds a text.")).toBeNull();
    expect(screen.getByText(/All findings are hidden/)).toBeTruthy();
    click("wrong");
    expect(screen.getByText("B2 holds a text.")).toBeTruthy();
  });

  test("of many findings the first fifty are drawn, and more when asked for", async () => {
    const many = Array.from({ length: 120 }, (_, at) =>
      known({ ...findings[1]!, cell: `B${at + 1}`, message: `${at}` }),
    );
    open(many);
    await read();
    expect(
      screen.getAllByRole("listitem").filter((one) => one.className.includes("finding")),
    ).toHaveLength(50);
    click("Show more (70 left)");
    expect(screen.getByRole("button", { name: "Show more (20 left)" })).toBeTruthy();
  });
});

describe("mending a finding", () => {
  const preview = () => click("Mend: Ices!B2");
  const panel = () => within(screen.getByRole("group", { name: "Mending Ices!B2" }));

  test("shows cells, old and new contents before anything is written", async () => {
    const { sheets } = open();
    await read();
    preview();
    const rows = panel()
      .getAllByRole("row")
      .map((row) => row.textContent);
    expect(rows).toEqual(["CellNowThen", "Ices!B2“12,5”12.5", "Ices!B3100=SUM(B1:B2)"]);
    expect(sheets).toEqual(book());
    fireEvent.keyDown(panel().getByRole("button", { name: "Write" }), { key: "Escape" });
    expect(screen.queryByRole("group", { name: "Mending Ices!B2" })).toBeNull();
    expect(document.activeElement).toBe(screen.getByRole("button", { name: "Mend: Ices!B2" }));
  });

  test("writes on a click, says what was written, and writes the old contents back", async () => {
    const { sheets, said } = open();
    await read();
    preview();
    fireEvent.click(panel().getByRole("button", { name: "Write" }));
    expect(await screen.findByText("Written and read again: Ices!B2, Ices!B3.")).toBeTruthy();
    expect(sheets["Ices"]!.map((row) => row[1])).toEqual([200, 12.5, "=SUM(B1:B2)"]);
    expect(screen.getByText(/read it again\.$/)).toBeTruthy();
    click("Write the old contents back");
    expect(await screen.findByText("Written back: Ices!B2, Ices!B3.")).toBeTruthy();
    expect(sheets).toEqual(book());
    expect(screen.queryByRole("button", { name: "Write the old contents back" })).toBeNull();
    expect(said.at(-1)).toMatch(/^Written back/);
    await read();
    expect(screen.queryByText(/^Written back/)).toBeNull(); // it was of the reading before
  });

  test("leaves a cell alone that changed meanwhile, and says so; writing back does the same", async () => {
    const { sheets } = open();
    await read();
    sheets["Ices"]![1]![1] = 13;
    preview();
    fireEvent.click(panel().getByRole("button", { name: "Write" }));
    expect(await screen.findByText("Written and read again: Ices!B3.")).toBeTruthy();
    expect(screen.getByText(/^Left alone.*Ices!B2\.$/)).toBeTruthy();
    sheets["Ices"]![2]![1] = 7;
    click("Write the old contents back");
    expect(await screen.findByText(/^Left alone.*Ices!B3\.$/)).toBeTruthy();
    expect(sheets["Ices"]!.map((row) => row[1])).toEqual([200, 13, 7]);
  });

  test("a writing that was interrupted names what was written", async () => {
    const { faults } = open();
    await read();
    const state = { kind: "cells", written: ["Ices!B2"], missing: ["Ices!B3"] } as const;
    faults.writeCells = new HalfWritten(state, null);
    preview();
    fireEvent.click(panel().getByRole("button", { name: "Write" }));
    expect(await screen.findByText(/Ices!B2 was written, Ices!B3 was not/)).toBeTruthy();
  });
});

describe("accepting a finding", () => {
  const accept = (reason: string) => {
    click("Accept: Ices!B2");
    fireEvent.input(screen.getByLabelText("Why it may stay"), { target: { value: reason } });
    click("Accept it");
  };

  test("asks for a reason, and lists it apart with that", async () => {
    const { said } = open();
    await read();
    accept(" ");
    expect(said.at(-1)).toMatch(/^Give a reason/);
    fireEvent.input(screen.getByLabelText(/Why it may stay/), { target: { value: "a label" } });
    click("Accept it");
    expect(await screen.findByText("Accepted: a label")).toBeTruthy();
    expect(screen.getByText("1 finding.")).toBeTruthy();
    expect(document.activeElement).toBe(screen.getByRole("heading", { level: 2 }));
    click("Count it again: Ices!B2");
    expect(screen.getByText("2 findings.")).toBeTruthy();
  });

  test("is kept in the workbook only when asked for, and known to the next reading", async () => {
    const fake = open();
    await read();
    accept("=a label");
    expect(Object.keys(fake.sheets)).toEqual(["Ices", "Old"]);
    click("Keep in the workbook");
    expect(await screen.findByText(/Kept on the new sheet “Accepted findings”/)).toBeTruthy();
    expect(fake.sheets["Accepted findings"]!.slice(2)).toEqual([
      [
        "number-as-text@Ices!B2#0",
        "=a label",
        "Ices!B2",
        "B2 holds a text.",
        expect.stringMatching(/^\d{4}-/),
      ],
    ]);
    expect(screen.queryByRole("button", { name: "Keep in the workbook" })).toBeNull();
    document.body.innerHTML = "";
    const sheets = { ...book(), Kept: fake.sheets["Accepted findings"]! };
    sheets.Kept[2]![1] = "a label"; // a formula in these arrays is told by its "="
    open(findings, sheets);
    await read();
    expect(screen.getByText("Accepted: a label")).toBeTruthy();
    expect(screen.getByText("1 finding.")).toBeTruthy();
  });

  test("the sheet is brought up to date row by row, and other cells on it stay", async () => {
    const sheets = {
      ...book(),
      Kept: [
        ["Rimeline: accepted findings", "", "", "", "", "mine"],
        ["Mark", "Why it may stay", "Place", "Finding", "Date", ""],
        ["number-as-text@Ices!B2#0", "once", "Ices!B2", "B2…", "2026-01-02", "my note"],
        ["hidden@Old!B9#0", "old one", "Old!B9", "Rows…", "2026-01-02", ""],
      ] as BlockValue[][],
    };
    open(findings, sheets);
    await read();
    expect(screen.getByText(/Accepted once \(“old one”\)\. There is no such finding/)).toBeTruthy();
    click("Count it again: Ices!B2");
    click("Accept: Old!B2:B4");
    fireEvent.input(screen.getByLabelText("Why it may stay"), { target: { value: "on purpose" } });
    click("Accept it");
    click("Bring “Kept” up to date");
    expect(await screen.findByText("“Kept” is up to date.")).toBeTruthy();
    expect(sheets.Kept[2]![5]).toBe("my note");
    expect(sheets.Kept.slice(2).map((row) => row.slice(0, 2))).toEqual([
      ["", ""],
      ["hidden@Old!B9#0", "old one"],
      ["hidden@Old!B2:B4#0", "on purpose"],
    ]);
  });
});

describe("what was read as a recipe", () => {
  const reads = () => (auditInSteps.mock.lastCall[1] as AuditOptions).corrections;
  const form = () => within(screen.getByRole("group", { name: "How to read Ices!A1:B1" }));
  const fill = (label: RegExp, value: string) =>
    fireEvent.input(form().getByLabelText(label), { target: { value } });
  const value = (label: RegExp) => form().getByLabelText<HTMLInputElement>(label).value;
  const choose = (label: string, value: string) =>
    fireEvent.change(form().getByLabelText(label), { target: { value } });
  const said = { sheet: "Ices", range: "A1:B3", recipe: "down", names: "A", amounts: "B" } as const;
  const correct = async () => {
    click("Read it differently: Ices!A1:B1");
    fill(/^Cells/, "Ices!A1:B3");
    choose("Unit of the amounts", "kg");
    fireEvent.submit(form().getByRole("button", { name: "Read it like this" }).closest("form")!);
    await waitFor(() => expect(reads()).toEqual([{ ...said, unit: "kg", heading: "water" }]));
    await waitFor(() => expect(screen.queryByRole("button", { name: "Stop" })).toBeNull());
  };

  test("is shown as it was taken, and read again as the user says", async () => {
    const { sheets } = open();
    await read();
    expect(reads()).toEqual([]);
    click("Read it differently: Ices!A1:B1");
    expect(value(/^Column of the names/)).toBe("A");
    fireEvent.keyDown(form().getByLabelText(/^Cells/), { key: "Escape" });
    await correct();
    expect(screen.getByText(/^Ices!A1:B3: a recipe.*; A; B; kg/)).toBeTruthy();
    expect(document.activeElement).toBe(screen.getByRole("heading", { level: 2 }));
    expect(sheets).toEqual(book());
    click("Take back: Ices!A1:B3");
    await waitFor(() => expect(reads()).toEqual([]));
  });

  test("a recipe that was missed is named by the selected cells", async () => {
    const { select } = open();
    await read();
    click("A recipe was missed…");
    const missed = within(screen.getByRole("group", { name: "Where a recipe stands" }));
    fireEvent.submit(missed.getByRole("button", { name: "Read it like this" }).closest("form")!);
    expect(await missed.findByText(/^There is no sheet ""/)).toBeTruthy();
    select("A1:B3");
    fireEvent.click(missed.getByRole("button", { name: "Take the selected cells" }));
    await waitFor(() => {
      expect(missed.getByLabelText<HTMLInputElement>(/^Cells/).value).toBe("Ices!A1:B3");
    });
    fireEvent.change(missed.getByLabelText("What stands there"), { target: { value: "none" } });
    fireEvent.submit(missed.getByRole("button", { name: "Read it like this" }).closest("form")!);
    const none = { sheet: "Ices", range: "A1:B3", recipe: "none", heading: "water" };
    await waitFor(() => expect(reads()).toEqual([none]));
  });

  test("a refusal of it is German where the pane is", async () => {
    auditInSteps.mockImplementation(reportOf(findings));
    render(<ReadThrough context={paneContext(fakeHost(book(), "A1").host, "de").context} active />);
    click("Arbeitsmappe durchsehen");
    fireEvent.click(await screen.findByRole("button", { name: "Ein Rezept fehlt …" }));
    const form = screen.getByRole("group", { name: "Wo ein Rezept steht" });
    fireEvent.submit(within(form).getByRole("button", { name: "So lesen" }).closest("form")!);
    expect(await within(form).findByText(/^Es gibt kein Blatt „“: Zellen werden/)).toBeTruthy();
  });

  test("a correction that contradicts itself ends in a sentence and is not read by", async () => {
    const { said: told } = open();
    await read();
    const before = auditInSteps.mock.calls.length;
    click("Read it differently: Ices!A1:B1");
    choose("What stands there", "across");
    expect(value(/^Row of the names/)).toBe("");
    fill(/^Rows of the amounts/, "B");
    fireEvent.submit(form().getByRole("button", { name: "Read it like this" }).closest("form")!);
    expect(await screen.findByText(/"B" names no rows\.$/)).toBeTruthy();
    expect(told.at(-1)).toMatch(/names no rows/);
    expect(auditInSteps.mock.calls.length).toBe(before);
  });

  test("is kept in the workbook only when asked for, and known to the next reading", async () => {
    const { sheets } = open();
    await read();
    await correct();
    expect(Object.keys(sheets)).toEqual(["Ices", "Old"]);
    click("Keep in the workbook");
    expect(await screen.findByText(/Kept on the new sheet “What is a recipe”/)).toBeTruthy();
    const kept = sheets["What is a recipe"]!;
    expect(kept[2]).toEqual(["Ices", "A1:B3", "down", "A", "B", "kg", "water"]);
    expect(screen.queryByRole("button", { name: "Keep in the workbook" })).toBeNull();
    document.body.innerHTML = "";
    const later = { ...book(), Words: kept };
    open(findings, later);
    await read();
    expect(reads()).toEqual([{ ...said, unit: "kg", heading: "water" }]);
    // Taken back, it stays so in the next reading; in the workbook when that is asked for.
    click("Take back: Ices!A1:B3");
    await waitFor(() => expect(reads()).toEqual([]));
    await waitFor(() => expect(screen.queryByRole("button", { name: "Stop" })).toBeNull());
    click("Bring “Words” up to date");
    expect(await screen.findByText("“Words” is up to date.")).toBeTruthy();
    expect(later.Words[2]).toEqual(["", "", "", "", "", "", ""]);
  });
});

describe("a report as a page", () => {
  test("is handed over as a file of its own, with the findings in it", async () => {
    const files: Blob[] = [];
    URL.createObjectURL = (file: Blob) => {
      files.push(file);
      return "blob:page";
    };
    HTMLAnchorElement.prototype.click = () => undefined;
    const { sheets } = open([{ ...findings[0]!, message: "<b>B2</b> holds a text." }]);
    await read();
    click("Save as a page");
    expect(await screen.findByText(/^Saved as Read-through \d{4}-\d\d-\d\d\.html/)).toBeTruthy();
    const reader = new FileReader();
    const page = await new Promise<string>((resolve) => {
      reader.onload = () => resolve(reader.result as string);
      reader.readAsText(files[0]!);
    });
    expect(page).toMatch(/^<!doctype html>/);
    expect(page).toContain("&lt;b&gt;B2&lt;/b&gt; holds a text.");
    expect(sheets).toEqual(book());
  });
});

describe("a report on a sheet", () => {
  test("gets a free name and holds findings, effects, recipes, summary and date", async () => {
    const found = [{ ...findings[0]!, message: "=1+1 was typed" }, findings[1]!];
    const { sheets } = open(found, { ...book(), "Read-through": [["mine"]] });
    await read();
    click("Report on a new sheet");
    expect(await screen.findByText("Written on the new sheet “Read-through (2)”.")).toBeTruthy();
    expect(sheets["Read-through"]).toEqual([["mine"]]);
    const rows = sheets["Read-through (2)"]!;
    expect(rows[0]![0]).toMatch(/^Read-through of \d{4}-\d\d-\d\d$/);
    expect(rows[1]![0]).toBe(
      "2 sheets, 1 recipe: 1 wrong, 0 doubtful, 1 worth knowing, 0 accepted.",
    );
    expect(rows).toContainEqual([
      ...["wrong", "Ices", "B2", "=1+1 was typed", "freezing point", -1.4, -2.3, "°C"],
      ...["Enter 12.5 as a number.", ""],
    ]);
    expect(rows).toContainEqual(["Ices", "A1:B1", 1, "Took A1 for the ingredients."]);
  });
});
