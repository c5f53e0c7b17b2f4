import { cellName, parseRangeName, rangeName } from "../../src/workbook/address";
import type { BlockValue } from "../../taskpane/host";
import { blockOf } from "./blockOf";

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
  readonly hiddenSheets?: readonly string[];
  readonly names?: readonly { name: string; formula: string }[];
  readonly calculationMode?: string;
  selection: { sheet: string; address: string };
}

export class FakeError extends Error {
  constructor(readonly code: string) {
    super(code);
  }
}

type Waiting = () => void;

/** An object whose properties come to be only by load and sync. */
function loadable<T extends object>(
  queue: Waiting[],
  facts: () => Record<string, unknown>,
  methods: T,
) {
  const loaded: Record<string, unknown> = {};
  const object: Record<string, unknown> = {
    ...methods,
    load: (names: string) => {
      queue.push(() => {
        const all = facts();
        for (const name of names.split(",").map((one) => one.split("/").at(-1)!.trim())) {
          if (!(name in all)) throw new FakeError("InvalidArgument");
          loaded[name] = all[name];
        }
        if ("isNullObject" in all) loaded["isNullObject"] = all["isNullObject"];
      });
    },
  };
  return new Proxy(object, {
    get: (target, key: string) => {
      if (key in target) return target[key];
      if (key in loaded) return loaded[key];
      if (key === "then") return undefined;
      throw new FakeError("PropertyNotLoaded");
    },
    set: (target, key: string, value) => {
      const setter = target[`set ${key}`] as ((value: unknown) => void) | undefined;
      if (setter === undefined) return false;
      queue.push(() => setter(value));
      return true;
    },
  }) as unknown as T & Record<string, any>;
}

export function fakeExcel(book: FakeBook) {
  const calls: string[] = [];
  const handlers: (() => Promise<void>)[] = [];
  /** Thrown at the next sync, once. */
  const fault: { next: Error | null } = { next: null };

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
        const part = Array.from({ length: bottom - top + 1 }, (_, row) =>
          Array.from({ length: right - left + 1 }, (_, at) => rows[top + row]?.[left + at] ?? ""),
        );
        const block = blockOf(part, { at: cellName(top, left), sheet });
        const hidden = book.hiddenRows?.[sheet] ?? [];
        const hiddenHere = hidden.filter((row) => row >= top && row <= bottom).length;
        return {
          isNullObject: false,
          address: `${/\W/.test(sheet) ? `'${sheet.replace(/'/g, "''")}'` : sheet}!${block.address}`,
          values: block.values,
          formulas: block.formulas,
          numberFormat: block.numberFormats,
          rowIndex: top,
          columnIndex: left,
          rowCount: bottom - top + 1,
          columnCount: right - left + 1,
          rowHidden: hiddenHere === 0 ? false : hiddenHere === bottom - top + 1 ? true : null,
          columnHidden: false,
        };
      };
      return loadable(queue, facts, {
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
        "set formulas": (contents: BlockValue[][]) => {
          const { sheet, top, left } = place();
          calls.push(`write ${sheet}!${where()!.address}`);
          contents.forEach((row, down) =>
            row.forEach((content, along) => {
              const cells = (rowsOf(sheet)[top + down] ??= []);
              while (cells.length < left + along) cells.push("");
              cells[left + along] = content;
            }),
          );
        },
      });
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
        },
      );

    /** A collection: its items appear at sync, with the asked properties loaded. */
    const collection = (make: () => any[]) => {
      let items: any[] | null = null;
      const own: Record<string, unknown> = {
        load: (names: string) => {
          queue.push(() => {
            items = make();
            for (const item of items) item.load(names);
            // What items load is part of the same sync.
          });
        },
      };
      return new Proxy(own, {
        get: (target, key: string) => {
          if (key in target) return target[key];
          if (key === "items") {
            if (items === null) throw new FakeError("PropertyNotLoaded");
            return items;
          }
          return undefined;
        },
      }) as Record<string, any>;
    };

    const worksheets = collection(() =>
      Object.keys(book.sheets).map((name) => makeSheet(() => name)),
    );
    worksheets["getItem"] = (name: string) => makeSheet(() => name);
    worksheets["getActiveWorksheet"] = () => makeSheet(() => book.selection.sheet);
    const workbook = {
      worksheets,
      getSelectedRange: () => makeRange(() => book.selection),
      tables: collection(() =>
        (book.tables ?? []).map((table) => {
          const made: any = loadable(queue, () => ({ ...table }), {
            getRange: () => makeRange(() => ({ sheet: table.sheet, address: table.address })),
            worksheet: makeSheet(() => table.sheet),
          });
          return made;
        }),
      ),
      names: collection(() =>
        (book.names ?? []).map((name) => loadable(queue, () => ({ ...name }), {})),
      ),
      application: loadable(
        queue,
        () => ({ calculationMode: book.calculationMode ?? "Automatic" }),
        {},
      ),
      onSelectionChanged: {
        add: (handler: () => Promise<void>) => {
          calls.push("add handler");
          handlers.push(handler);
        },
      },
    };
    const sync = async () => {
      await Promise.resolve();
      const { next } = fault;
      fault.next = null;
      if (next !== null) throw next;
      for (let step = queue.shift(); step !== undefined; step = queue.shift()) step();
    };
    return { workbook, sync };
  };

  const run = async (batch: (context: unknown) => Promise<unknown>) => {
    const context = makeContext();
    const answer = await batch(context);
    await context.sync();
    return answer;
  };
  return { Excel: { run }, calls, handlers, fault };
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
