import { cellName, parseRangeName, rangeName } from "../../src/workbook/address";
import type { BlockValue } from "../../taskpane/host";
import { blockOf } from "./blockOf";
import { fakeCollection, FakeError, loadable, type Note, type Waiting } from "./fakeLoadable";

import { typed } from "./typed";

export { FakeError };

// A small stand-in for Excel.run: nothing can be read before it was loaded and synced, as in Excel, and
// every call is noted, so that a test can say what a reading must not do. Office's objects are built on the
// fly here, so they are of no written type.
/* eslint-disable @typescript-eslint/no-explicit-any */

type Rows = BlockValue[][];

export interface FakeBook {
  readonly sheets: Record<string, Rows>;
  readonly tables?: readonly {
    name: string;
    sheet: string;
    address: string;
    showTotals: boolean;
  }[];
  readonly hiddenRows?: Readonly<Record<string, readonly number[]>>;
  /** Where a sheet, or a table by its name, has filter buttons, and whether one has a condition. */
  readonly filters?: Readonly<Record<string, { address: string; isDataFiltered: boolean }>>;
  readonly hiddenSheets?: readonly string[];
  /** Those with a sheet are known there only. */
  readonly names?: readonly { name: string; formula: string; sheet?: string }[];
  readonly calculationMode?: string;
  /** Sheets that may not be written to. */
  readonly protectedSheets?: readonly string[];
  /** Blocks of more cells than this give null for their contents, as in Excel. */
  readonly mostCells?: number;
  readonly pictures?: { name: string }[];
  readonly formats?: Record<string, string>;
  selection: { sheet: string; address: string };
}

export interface Fault {
  readonly error: unknown;
  /** Which sync that has something to do, counted from 0. */
  readonly atSync: number;
  /** How many operations of that sync are carried out before it fails; none when absent. */
  readonly after?: number;
  /** Whether every later sync fails too. */
  readonly lasts?: boolean;
}

export function fakeExcel(book: FakeBook) {
  const calls: string[] = [];
  const requests: string[] = [];
  const note: Note = (request) => requests.push(request);
  const state: { syncs: number; fault: Fault | null } = { syncs: 0, fault: null };
  const handlers: (() => Promise<void>)[] = [];

  const makeContext = () => {
    const queue: Waiting[] = [];
    const rowsOf = (sheet: string): Rows => {
      const rows = book.sheets[sheet];
      if (rows === undefined) throw new FakeError("ItemNotFound");
      return rows;
    };
    const usedOf = (sheet: string) => {
      const rows = rowsOf(sheet);
      const filled = rows.flatMap((row, at) =>
        row.flatMap((value, column) => (value === "" ? [] : [{ at, column }])),
      );
      if (filled.length === 0) return null;
      return {
        top: Math.min(...filled.map(({ at }) => at)),
        left: Math.min(...filled.map(({ column }) => column)),
        bottom: Math.max(...filled.map(({ at }) => at)),
        right: Math.max(...filled.map(({ column }) => column)),
      };
    };

    const makeRange = (where: () => { sheet: string; address: string } | null): any => {
      const place = () => {
        const at = where() ?? { sheet: "", address: "A1" };
        const parsed = parseRangeName(at.address);
        if (parsed === null) throw new FakeError("InvalidArgument");
        return { sheet: at.sheet, ...parsed };
      };
      const moved = (change: (at: ReturnType<typeof place>) => ReturnType<typeof place>) =>
        makeRange(() => {
          const next = change(place());
          return { sheet: next.sheet, address: rangeName(next) };
        });
      const facts = () => {
        if (where() === null) return { isNullObject: true, ...blankFacts };
        const { sheet, top, left, bottom, right } = place();
        const rows = rowsOf(sheet);
        const isTooLarge = (bottom - top + 1) * (right - left + 1) > (book.mostCells ?? Infinity);
        const part = Array.from({ length: bottom - top + 1 }, (_, row) =>
          Array.from({ length: right - left + 1 }, (_, at) => rows[top + row]?.[left + at] ?? ""),
        );
        const block = blockOf(part, { at: cellName(top, left), sheet });
        const hidden = book.hiddenRows?.[sheet] ?? [];
        const hiddenHere = hidden.filter((row) => row >= top && row <= bottom).length;
        return {
          isNullObject: false,
          address: `${/\W/.test(sheet) ? `'${sheet.replace(/'/g, "''")}'` : sheet}!${block.address}`,
          values: isTooLarge ? null : block.values,
          formulas: isTooLarge ? null : block.formulas,
          numberFormat: isTooLarge ? null : block.numberFormats,
          left: 64 * left,
          top: 20 * top,
          width: 64 * (right - left + 1),
          rowIndex: top,
          columnIndex: left,
          rowCount: bottom - top + 1,
          columnCount: right - left + 1,
          rowHidden: hiddenHere === 0 ? false : hiddenHere === bottom - top + 1 ? true : null,
          columnHidden: false,
        };
      };
      return loadable(
        queue,
        facts,
        {
          select: () =>
            queue.push(() => void calls.push(`select ${place().sheet}!${where()!.address}`)),
          getCell: (row: number, column: number) =>
            moved(({ sheet, top, left }) => ({
              sheet,
              top: top + row,
              bottom: top + row,
              left: left + column,
              right: left + column,
            })),
          getResizedRange: (rows: number, columns: number) =>
            moved((at) => ({ ...at, bottom: at.bottom + rows, right: at.right + columns })),
          getSurroundingRegion: () =>
            makeRange(() => {
              const { sheet, top, left } = place();
              const used = usedOf(sheet);
              // Enough for these tests: one block a sheet.
              return used === null
                ? { sheet, address: cellName(top, left) }
                : { sheet, address: rangeName(used) };
            }),
          get worksheet() {
            return makeSheet(() => place().sheet);
          },
          "set numberFormat": (formats: string[][]) => {
            const { sheet, top, left } = place();
            if (book.formats !== undefined) {
              book.formats[`${sheet}!${cellName(top, left)}`] = formats[0]![0]!;
            }
          },
          "set formulas": (contents: BlockValue[][]) => {
            const { sheet, top, left } = place();
            if (book.protectedSheets?.includes(sheet) === true) throw new FakeError("AccessDenied");
            calls.push(`write ${sheet}!${where()!.address}`);
            contents.forEach((row, down) =>
              row.forEach((content, along) => {
                const cells = (rowsOf(sheet)[top + down] ??= []);
                while (cells.length < left + along) cells.push("");
                const format = book.formats?.[`${sheet}!${cellName(top + down, left + along)}`];
                cells[left + along] = typed(content, format);
              }),
            );
          },
        },
        ["Range", note],
      );
    };

    const makeFilter = (of: () => string, sheet: () => string): any => {
      const filter = () => book.filters?.[of()];
      return loadable(
        queue,
        () => ({ isDataFiltered: filter()?.isDataFiltered ?? false }),
        {
          getRangeOrNullObject: () =>
            makeRange(() => {
              const address = filter()?.address;
              return address === undefined ? null : { sheet: sheet(), address };
            }),
        },
        ["AutoFilter", note],
      );
    };

    const makeSheet = (name: () => string): any =>
      loadable(
        queue,
        () => {
          rowsOf(name());
          const hidden = book.hiddenSheets?.includes(name()) === true;
          return { name: name(), visibility: hidden ? "Hidden" : "Visible" };
        },
        {
          activate: () => queue.push(() => void calls.push(`activate ${name()}`)),
          getRange: (address: string) => makeRange(() => ({ sheet: name(), address })),
          getRangeByIndexes: (top: number, left: number, rows: number, columns: number) =>
            makeRange(() => {
              const range = { top, left, bottom: top + rows - 1, right: left + columns - 1 };
              return { sheet: name(), address: rangeName(range) };
            }),
          getUsedRangeOrNullObject: () =>
            makeRange(() => {
              const used = usedOf(name());
              return used === null ? null : { sheet: name(), address: rangeName(used) };
            }),
          get shapes() {
            return shapes;
          },
          get autoFilter() {
            return makeFilter(name, name);
          },
          get names() {
            return namesOf(name());
          },
        },
        ["Worksheet", note],
      );

    const makeShape = (facts: () => { name: string }): any =>
      loadable(
        queue,
        facts,
        {
          "set name": (name: string) => void (facts().name = name),
          "set left": () => undefined,
          "set top": () => undefined,
        },
        ["Shape", note],
      );

    const collection = (kind: string, make: () => any[]) => fakeCollection(queue, note, kind, make);
    const namesOf = (sheet: string | undefined) =>
      collection("NamedItemCollection", () =>
        (book.names ?? [])
          .filter((name) => name.sheet === sheet)
          .map((name) => loadable(queue, () => ({ ...name }), {}, ["NamedItem", note])),
      );
    const pictures = book.pictures ?? [];
    const shapes = collection("ShapeCollection", () => pictures.map((one) => makeShape(() => one)));
    shapes["addImage"] = () => {
      note("ShapeCollection.addImage()");
      const added = { name: "Picture" };
      queue.push(() => void pictures.push(added));
      return makeShape(() => added);
    };

    const worksheets = collection("WorksheetCollection", () =>
      Object.keys(book.sheets).map((name) => makeSheet(() => name)),
    );
    worksheets["add"] = (name: string) => {
      note("WorksheetCollection.add()");
      queue.push(() => {
        if (name in book.sheets) throw new FakeError("ItemAlreadyExists");
        book.sheets[name] = [];
      });
      return makeSheet(() => name);
    };
    worksheets["getItem"] = (name: string) => makeSheet(() => name);
    worksheets["getActiveWorksheet"] = () => makeSheet(() => book.selection.sheet);
    const workbook = {
      worksheets,
      getSelectedRange: () => makeRange(() => book.selection),
      tables: collection("TableCollection", () =>
        (book.tables ?? []).map((table) => {
          const made: any = loadable(
            queue,
            () => ({ ...table }),
            {
              getRange: () => makeRange(() => ({ sheet: table.sheet, address: table.address })),
              worksheet: makeSheet(() => table.sheet),
              autoFilter: makeFilter(
                () => table.name,
                () => table.sheet,
              ),
            },
            ["Table", note],
          );
          return made;
        }),
      ),
      names: namesOf(undefined),
      application: loadable(
        queue,
        () => ({ calculationMode: book.calculationMode ?? "Automatic" }),
        { "set calculationMode": () => undefined },
        ["Application", note],
      ),
      onSelectionChanged: {
        add: (handler: () => Promise<void>) => {
          queue.push(() => void calls.push("add handler"));
          note("Workbook.onSelectionChanged.add()");
          handlers.push(handler);
        },
      },
    };
    const sync = async () => {
      await Promise.resolve();
      if (queue.length === 0) return; // nothing is asked of Excel then
      const number = state.syncs;
      state.syncs += 1;
      const { fault } = state;
      const fails =
        fault !== null &&
        (number === fault.atSync || (fault.lasts === true && number > fault.atSync));
      let most = fails ? (number === fault.atSync ? (fault.after ?? 0) : 0) : Infinity;
      try {
        for (let step = queue.shift(); step !== undefined; step = queue.shift()) {
          if (most === 0) throw fault?.error as Error;
          most -= 1;
          step();
        }
        if (fails) throw fault.error as Error;
      } finally {
        queue.length = 0; // what a failed sync left undone is forgotten
      }
    };
    return { workbook, sync };
  };

  const run = async (batch: (context: unknown) => Promise<unknown>) => {
    const context = makeContext();
    const answer = await batch(context);
    await context.sync();
    return answer;
  };
  return { Excel: { run }, calls, requests, handlers, state };
}

/** What an empty place answers: there is no range at all. */
const blankFacts = {
  address: "",
  values: [],
  formulas: [],
  numberFormat: [],
  rowIndex: 0,
  columnIndex: 0,
  rowCount: 0,
  columnCount: 0,
  rowHidden: false,
  columnHidden: false,
};
