import { fireEvent, render, screen, waitFor } from "@testing-library/preact";
import type { Finding } from "../../../src/audit/finding";
import * as audit from "../../../src/audit/auditWorkbook";
import { readThrough } from "../../../taskpane/views/readThrough";
import { fakeHost } from "../fakeHost";
import { paneContext } from "../paneContext";

const { Content: ReadThrough } = readThrough;

// The findings are made up: what the rules find is tested where the rules are.
const findings: readonly Finding[] = [
  {
    rule: "unknown-ingredient",
    severity: "error",
    sheet: "Ices",
    cell: "A4",
    message: "“honney” is not known.",
    effect: { quantity: "freezing point", from: -1.4, to: -2.3, unit: "°C" },
    fix: "Write “honey”.",
  },
  {
    rule: "hidden",
    severity: "note",
    sheet: "Old",
    cell: "B2:B4",
    message: "Rows are hidden.",
    effect: null,
  },
];

jest.mock("../../../src/audit/auditWorkbook", () => ({ auditWorkbook: jest.fn() }));
const auditWorkbook = audit.auditWorkbook as unknown as jest.Mock;

function open() {
  const fake = fakeHost({ Ices: [["water", 200]], Old: [["x"]] }, "A1");
  const { context, said } = paneContext(fake.host);
  render(<ReadThrough context={context} active />);
  return { ...fake, said };
}

const report = (found: readonly Finding[]) => ({
  findings: found,
  recipes: [{ sheet: "Ices", range: "A1:B1", recipes: 1, taken: "Took A1 for the ingredients." }],
  summary: { sheets: 2, recipes: 1, errors: 1, warnings: 0, notes: 1 },
});

describe("the read-through", () => {
  test("reads the workbook on a click and lists findings by severity, with their effect", async () => {
    auditWorkbook.mockReturnValue(report(findings));
    const { said } = open();
    fireEvent.click(screen.getByText("Read the workbook"));
    expect(await screen.findByText("2 findings.")).toBeTruthy();
    const titles = screen.getAllByRole("heading", { level: 3 }).map((title) => title.textContent);
    expect(titles).toEqual(["Wrong (1)", "Worth knowing (1)"]);
    expect(screen.getByText("freezing point: −1.4 → −2.3 °C")).toBeTruthy();
    expect(screen.getByText("Changes no answer.")).toBeTruthy();
    expect(screen.getByText("What helps: Write “honey”.")).toBeTruthy();
    expect(said).toEqual(["Reading the workbook.", "2 findings."]);
  });

  test("a click on the address jumps to the cell", async () => {
    auditWorkbook.mockReturnValue(report(findings));
    const { visited } = open();
    fireEvent.click(screen.getByText("Read the workbook"));
    fireEvent.click(await screen.findByRole("button", { name: "Go to Old!B2:B4" }));
    await waitFor(() => expect(visited).toEqual(["Old!B2:B4"]));
  });

  test("a sheet that is gone by then ends in a sentence", async () => {
    auditWorkbook.mockReturnValue(report(findings));
    const { sheets } = open();
    fireEvent.click(screen.getByText("Read the workbook"));
    const go = await screen.findByRole("button", { name: "Go to Old!B2:B4" });
    delete sheets["Old"];
    fireEvent.click(go);
    expect(await screen.findByText("That sheet or cell is no longer there.")).toBeTruthy();
  });

  test("says so when there is nothing, and what was read", async () => {
    auditWorkbook.mockReturnValue(report([]));
    const { said } = open();
    fireEvent.click(screen.getByText("Read the workbook"));
    expect(await screen.findByText("Nothing found.")).toBeTruthy();
    expect(said).toContain("Nothing found.");
    expect(screen.getByText("Took A1 for the ingredients.")).toBeTruthy();
  });

  test("a workbook that cannot be read ends in a sentence, and it can be tried again", async () => {
    auditWorkbook.mockReturnValue(report([]));
    const { faults } = open();
    faults.readWorkbook = { code: "InvalidOperationInCellEditMode" };
    fireEvent.click(screen.getByText("Read the workbook"));
    expect(await screen.findByText(/A cell is being edited/)).toBeTruthy();
    delete faults.readWorkbook;
    fireEvent.click(screen.getByText("Read the workbook"));
    expect(await screen.findByText("Nothing found.")).toBeTruthy();
  });
});
