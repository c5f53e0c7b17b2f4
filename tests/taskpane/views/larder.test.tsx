import { fireEvent, render, screen, waitFor, within } from "@testing-library/preact";
import { solutes } from "../../../src/catalogue/solutes";
import { larder } from "../../../taskpane/views/larder";
import type { SpreadsheetHost } from "../../../taskpane/host";
import { fakeHost } from "../fakeHost";
import { paneContext } from "../paneContext";

const { Content: Larder } = larder;

function open(host: SpreadsheetHost | null, language = "en") {
  const { context, said } = paneContext(host, language);
  render(<Larder context={context} active />);
  return said;
}

const search = (text: string) =>
  fireEvent.input(screen.getByRole("searchbox"), { target: { value: text } });

const openEntry = (typed: string, name: string) => {
  search(typed);
  const [hit] = screen
    .getAllByRole("button")
    .filter((button) => button.querySelector(".hit-name")?.textContent === name);
  fireEvent.click(hit!);
};

const molarMass = () => solutes.find(({ name }) => name === "sucrose")!.molarMass;

describe("looking something up", () => {
  test("a constant is shown with unit, uncertainty, source and how it was obtained", () => {
    open(null);
    openEntry("Haushaltszucker", "sucrose");
    const row = screen.getByText("molar mass").closest("li")!;
    expect(row.textContent).toContain(String(molarMass().value));
    expect(row.textContent).toContain("g/mol");
    expect(row.textContent).toMatch(/±\s0\.005/);
    expect(row.textContent).toContain("Standard atomic weights");
    expect(row.textContent).toContain("computed here");
  });

  test("German shows decimal commas", () => {
    open(null, "de");
    openEntry("sucrose", "sucrose");
    const row = screen.getByText("molare Masse").closest("li")!;
    expect(row.textContent).toContain(String(molarMass().value).replace(".", ","));
  });

  test("an ingredient says what it is made of and names its allergens, or that they are unknown", () => {
    open(null);
    openEntry("honey", "honey, average");
    expect(screen.getByText("What 100 g is made of")).toBeTruthy();
    expect(screen.getByText(/allergen/i)).toBeTruthy();
    expect(screen.getByText(/not for children under 12 months/)).toBeTruthy();
  });

  test("what is no food is marked so", () => {
    open(null);
    openEntry("methanol", "methanol");
    expect(screen.getByText(/Not food/)).toBeTruthy();
  });

  test("Escape leads back to the search, which keeps what was typed and takes the focus", async () => {
    open(null);
    openEntry("sucrose", "sucrose");
    expect(document.activeElement?.textContent).toBe("sucrose");
    fireEvent.keyDown(screen.getByRole("heading", { level: 2 }), { key: "Escape" });
    const box = await screen.findByRole("searchbox");
    expect((box as HTMLInputElement).value).toBe("sucrose");
    await waitFor(() => expect(document.activeElement).toBe(box));
  });

  test("arrows walk the hits", () => {
    open(null);
    search("glucose");
    const hits = screen.getAllByRole("button").filter((one) => one.className === "hit");
    hits[0]!.focus();
    fireEvent.keyDown(hits[0]!, { key: "ArrowDown" });
    expect(document.activeElement).toBe(hits[1]);
  });

  test("without a spreadsheet nothing offers to insert", () => {
    open(null);
    openEntry("sucrose", "sucrose");
    expect(screen.queryByRole("button", { name: /Insert/ })).toBeNull();
  });
});

describe("inserting into a cell", () => {
  const openInsert = async () => {
    openEntry("sucrose", "sucrose");
    fireEvent.click(screen.getByRole("button", { name: "Insert molar mass…" }));
    const panel = await screen.findByRole("group", { name: "Insert: sucrose, molar mass" });
    await within(panel).findByText(/Sheet!/);
    return within(panel);
  };

  test("shows first what would go where, and writes the value into an empty cell", async () => {
    const fake = fakeHost({ Sheet: [["", ""]] }, "B1");
    const said = open(fake.host);
    const panel = await openInsert();
    expect(panel.getByText("Sheet!B1")).toBeTruthy();
    expect(panel.getByText("empty")).toBeTruthy();
    fireEvent.click(panel.getByLabelText("Value"));
    fireEvent.click(panel.getByText("Write"));
    await waitFor(() => expect(said).toContain("Written into Sheet!B1."));
    expect(fake.sheets["Sheet"]![0]![1]).toBe(molarMass().value);
  });

  test("a filled cell is overwritten only by a second click that says so", async () => {
    const fake = fakeHost({ Sheet: [["rent"]] }, "A1");
    const said = open(fake.host);
    const panel = await openInsert();
    fireEvent.click(panel.getByLabelText("Value"));
    fireEvent.click(panel.getByText("Write"));
    const replace = await panel.findByText("Replace what is in Sheet!A1");
    expect(fake.sheets["Sheet"]![0]![0]).toBe("rent");
    expect(said).toContain("Sheet!A1 is not empty; nothing was written yet.");
    fireEvent.click(replace);
    await waitFor(() => expect(fake.sheets["Sheet"]![0]![0]).toBe(molarMass().value));
  });

  test("the leave to overwrite does not wander to another cell", async () => {
    const fake = fakeHost({ Sheet: [["rent", "wages"]] }, "A1");
    open(fake.host);
    const panel = await openInsert();
    fireEvent.click(panel.getByText("Write"));
    await panel.findByText("Replace what is in Sheet!A1");
    fake.select("B1");
    await panel.findByText("Sheet!B1");
    fireEvent.click(panel.getByText("Write"));
    await panel.findByText("Replace what is in Sheet!B1");
    expect(fake.sheets["Sheet"]![0]).toEqual(["rent", "wages"]);
  });

  test("a cell that changed meanwhile is left alone", async () => {
    const fake = fakeHost({ Sheet: [[""]] }, "A1");
    const said = open(fake.host);
    const panel = await openInsert();
    fake.sheets["Sheet"]![0]![0] = "typed just now";
    fireEvent.click(panel.getByText("Write"));
    await waitFor(() => expect(said.join()).toContain("changed meanwhile"));
    expect(fake.sheets["Sheet"]![0]![0]).toBe("typed just now");
  });

  test("a protected sheet ends in one sentence", async () => {
    const fake = fakeHost({ Sheet: [[""]] }, "A1");
    fake.faults.insert = Object.assign(new Error("denied"), { code: "AccessDenied" });
    const said = open(fake.host);
    const panel = await openInsert();
    fireEvent.click(panel.getByText("Write"));
    expect(await panel.findByText(/The sheet is protected/)).toBeTruthy();
    expect(said.join()).toContain("The sheet is protected");
  });

  test("closing it stops following the selection", async () => {
    const fake = fakeHost({ Sheet: [[""]] }, "A1");
    open(fake.host);
    const panel = await openInsert();
    await waitFor(() => expect(fake.listeners.size).toBe(1));
    fireEvent.click(panel.getByText("Close"));
    await waitFor(() => expect(fake.listeners.size).toBe(0));
  });

  test("Escape closes it only, and the focus goes back to what opened it", async () => {
    const fake = fakeHost({ Sheet: [[""]] }, "A1");
    open(fake.host);
    openEntry("sucrose", "sucrose");
    const opener = screen.getByRole("button", { name: "Insert molar mass…" });
    opener.focus();
    fireEvent.click(opener);
    const panel = await screen.findByRole("group", { name: /molar mass/ });
    fireEvent.keyDown(panel, { key: "Escape" });
    await waitFor(() => expect(screen.queryByRole("group", { name: /molar mass/ })).toBeNull());
    expect(document.activeElement).toBe(opener);
    expect(screen.getByRole("heading", { name: "sucrose" })).toBeTruthy();
  });
});
