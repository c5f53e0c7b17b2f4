import { excelHost } from "../../taskpane/excelHost";
import { findHost } from "../../taskpane/office/findHost";
import { hostSentence } from "../../taskpane/office/hostSentence";
import type { BlockValue, SheetEdit, SpreadsheetHost } from "../../taskpane/host";
import { english } from "../../taskpane/words/english";
import { german } from "../../taskpane/words/german";
import { FakeError, fakeExcel, type FakeBook, type Fault } from "./fakeExcel";

// The codes are those of Excel.ErrorCodes and of "API error messages" (learn.microsoft.com, Office Add-ins:
// application-specific API error handling). That what came before a failed operation of a batch stays done is
// said there too. Not tried in a live Excel.
const CODES = [
  ...["AccessDenied", "ApiNotFound", "Conflict", "GeneralException", "HostRestartNeeded"],
  ...["InactiveWorkbook", "InvalidArgument", "InvalidOperation", "InvalidOperationInCellEditMode"],
  ...["InvalidReference", "InvalidSelection", "ItemAlreadyExists", "ItemNotFound"],
  ...["MergedRangeConflict", "NotImplemented", "OperationCellsExceedLimit", "RangeExceedsLimit"],
  ...["RequestAborted", "RequestPayloadSizeLimitExceeded", "ResponsePayloadSizeLimitExceeded"],
  ...["ServiceNotAvailable", "Unauthenticated", "UnsupportedOperation", "UnsupportedSheet"],
];

const office = (most: number) => ({
  context: { requirements: { isSetSupported: (_: string, set: string) => +set.slice(2) <= most } },
});

function hostOf(book: Partial<FakeBook> = {}, most = 9) {
  const whole = {
    sheets: {
      Ices: [
        ["Ingredient", "g"],
        ["water", "200"],
        ["sucrose", 70],
        ["honey", 30],
      ] as BlockValue[][],
    } as Record<string, BlockValue[][]>,
    tables: [{ name: "Ice", sheet: "Ices", address: "A1:B3", showTotals: false }],
    pictures: [] as { name: string }[],
    selection: { sheet: "Ices", address: "A2" },
    ...book,
  };
  const fake = fakeExcel(whole);
  Object.assign(globalThis, { Excel: fake.Excel, Office: office(most) });
  return { host: excelHost(), book: whole, ...fake };
}

const edits: readonly SheetEdit[] = [
  { sheet: "Ices", cell: "B2", from: "200", to: 200 },
  { sheet: "Ices", cell: "B3", from: 70, to: 80 },
  { sheet: "Ices", cell: "B4", from: 30, to: "=B3/2" },
];

const METHODS: Readonly<
  Record<keyof SpreadsheetHost, (host: SpreadsheetHost) => Promise<unknown>>
> = {
  readSelection: (host) => host.readSelection(),
  read: (host) => host.read("Ices", "A1:B4"),
  cellsFromSelection: (host) => host.cellsFromSelection(2, 2),
  insert: async (host) =>
    host.insert(await host.read("Ices", "D1:D2"), [["new"], [1]], { overwrite: true }),
  readOnEachSheet: (host) => host.readOnEachSheet("A1:B1"),
  usedBlock: (host) => host.usedBlock("Ices"),
  addSheet: (host) => host.addSheet("Report", [["found"], [1]]),
  writeCells: (host) => host.writeCells(edits),
  insertPicture: (host) => host.insertPicture("iVBORw0KGgo=", "curve"),
  readWorkbook: (host) => host.readWorkbook(),
  goTo: (host) => host.goTo("Ices", "B2"),
  onSelectionChanged: (host) => host.onSelectionChanged(() => undefined),
};
type Method = keyof SpreadsheetHost;
const methods = Object.keys(METHODS) as Method[];

/** How many times a method asks something of Excel when nothing fails. */
async function syncsOf(method: Method): Promise<number> {
  const { host, state } = hostOf();
  await METHODS[method](host);
  return state.syncs;
}

const snapshot = ({ sheets, pictures }: FakeBook) => JSON.stringify({ sheets, pictures });
const ONE_SENTENCE = /^(?!.*[.!?]\s)[A-Z].*\.$/;

/** Runs a method into a fault: what it ends in, and whether it left something in the workbook. */
async function faulted(method: Method, fault: Fault, book?: Partial<FakeBook>) {
  const { host, state, book: whole } = hostOf(book);
  const before = snapshot(whole);
  state.fault = fault;
  let error: unknown;
  try {
    await METHODS[method](host);
  } catch (reason) {
    error = reason;
  }
  const sentence = error === undefined ? null : hostSentence(error, english);
  return { sentence, error, isChanged: snapshot(whole) !== before, sheets: whole.sheets };
}

describe.each(methods)("%s", (method) => {
  test("ends in one sentence at each code of each of its requests, and nothing is half written unsaid", async () => {
    const syncs = await syncsOf(method);
    expect(syncs).toBeGreaterThan(0);
    for (let atSync = 0; atSync < syncs; atSync += 1) {
      for (const code of CODES) {
        for (const lasts of [false, true]) {
          const fault = { error: new FakeError(code), atSync, lasts };
          const { sentence, error, isChanged } = await faulted(method, fault);
          const where = `${method}, request ${atSync}, ${code}${lasts ? " and ever after" : ""}`;
          if (sentence === null) throw new Error(`${where}: nothing was said`);
          expect(`${where}: ${sentence}`).toMatch(new RegExp(`^${where}: [A-Z].*\\.$`));
          expect(sentence).toMatch(ONE_SENTENCE);
          expect(hostSentence(error, german)).toMatch(/\.$/);
          if (isChanged) expect(sentence).toMatch(/Ices!|Report|curve/);
        }
      }
    }
  });

  test("the same when a request stops at each of its operations: what was written is named", async () => {
    const syncs = await syncsOf(method);
    for (let atSync = 0; atSync < syncs; atSync += 1) {
      for (let after = 0; after < 12; after += 1) {
        for (const lasts of [false, true]) {
          const fault = { error: new FakeError("GeneralException"), atSync, after, lasts };
          const { sentence, isChanged } = await faulted(method, fault);
          if (isChanged && sentence !== null) expect(sentence).toMatch(/Ices!|Report|curve/);
          if (sentence !== null) expect(sentence).toMatch(ONE_SENTENCE);
        }
      }
    }
  });
});

describe("writing cells", () => {
  const failing = (after: number, lasts = false) =>
    faulted("writeCells", { error: new FakeError("AccessDenied"), atSync: 1, after, lasts });

  test("names what was written and what was not when the writing stops in between", async () => {
    const { sentence, sheets } = await failing(2);
    expect(sheets["Ices"]!.map((row) => row[1])).toEqual(["g", 200, 80, 30]);
    expect(sentence).toBe(
      "The spreadsheet stopped in between: Ices!B2, Ices!B3 was written, Ices!B4 was not.",
    );
  });

  test("keeps the host's own reason when nothing was written", async () => {
    const { sentence, isChanged } = await failing(0);
    expect(isChanged).toBe(false);
    expect(sentence).toBe(english.hostFaults.AccessDenied);
  });

  test("says that nobody knows when the spreadsheet stays silent", async () => {
    expect((await failing(1, true)).sentence).toMatch(/stopped answering.*Ices!B2.*Ices!B4.*look/);
  });

  test("says nothing of a fault after which all cells turn out to be written", async () => {
    expect(await failing(3)).toMatchObject({ sentence: null, isChanged: true });
  });

  test("says what could not be read again", async () => {
    const fault = { error: new FakeError("ServiceNotAvailable"), atSync: 2 };
    expect((await faulted("writeCells", fault)).sentence).toMatch(/was written but could not be/);
  });

  test("a protected sheet is left as it is", async () => {
    const { host, book } = hostOf({ protectedSheets: ["Ices"] });
    const before = snapshot(book);
    const error: unknown = await host.writeCells(edits).catch((reason: unknown) => reason);
    expect(hostSentence(error, english)).toBe(english.hostFaults.AccessDenied);
    expect(snapshot(book)).toBe(before);
  });

  test("a sheet deleted meanwhile stops the whole writing before it begins", async () => {
    const { host, book } = hostOf();
    const before = snapshot(book);
    const gone = [...edits, { sheet: "Gone", cell: "A1", from: "", to: 1 }];
    const error: unknown = await host.writeCells(gone).catch((reason: unknown) => reason);
    expect(hostSentence(error, english)).toBe(english.hostFaults.ItemNotFound);
    expect(snapshot(book)).toBe(before);
  });
});

describe("what the spreadsheet lacks", () => {
  test("a block too large to be handed over is null in Excel, and one sentence here", async () => {
    for (const method of ["read", "usedBlock", "readSelection", "readWorkbook"] as const) {
      const { host } = hostOf({ mostCells: 1 });
      const error: unknown = await METHODS[method](host).catch((reason: unknown) => reason);
      expect(hostSentence(error, english)).toBe(english.hostFaults.NothingHandedOver);
    }
  });

  test("without ExcelApi 1.9 no picture is placed, and the caller is told", async () => {
    const { host, requests } = hostOf({}, 8);
    expect(await host.insertPicture("iVBORw0KGgo=", "curve")).toBe(false);
    expect(requests).toEqual([]);
  });

  test("without the host's script, another host, or an old one there is no host, and why is said", async () => {
    const ready = (host: string | null, most: number) =>
      Object.assign(globalThis, {
        Office: { ...office(most), onReady: () => Promise.resolve({ host }) },
      });
    delete (globalThis as { Office?: unknown }).Office;
    const why = [await findHost()];
    for (const [host, most] of [
      [null, 9],
      ["Word", 9],
      ["Excel", 6],
    ] as const) {
      ready(host, most);
      why.push(await findHost());
    }
    expect(why).toMatchObject([
      { host: null, why: "no script" },
      { host: null, why: "no spreadsheet" },
      { host: null, why: "no spreadsheet" },
      { host: null, why: "too old" },
    ]);
    for (const sentence of Object.values(english.outside)) expect(sentence).toMatch(/^[A-Z].*\.$/);
  });
});
