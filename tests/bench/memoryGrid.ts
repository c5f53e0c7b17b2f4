import type { BookValue } from "../../src/bench/book";
import type { Grid, GridInput } from "../../src/bench/grid";
import type { CellRange } from "../../src/workbook/model";

type Cells = Map<string, GridInput>;

/** A spreadsheet without formulas, for tests of the host adapter: it records what was asked of it. */
export function memoryGrid(contents: Readonly<Record<string, readonly (readonly GridInput[])[]>>) {
  const sheets = new Map<string, Cells>();
  const formats = new Map<string, string>();
  for (const [name, rows] of Object.entries(contents)) {
    const cells: Cells = new Map();
    rows.forEach((row, r) =>
      row.forEach((value, c) => value !== null && cells.set(`${r},${c}`, value)),
    );
    sheets.set(name, cells);
  }
  let active = [...sheets.keys()][0]!;
  let selected: CellRange = { top: 0, left: 0, bottom: 0, right: 0 };
  const listeners = new Set<() => void>();
  const log: string[] = [];
  const cellsOf = (name: string): Cells => {
    const cells = sheets.get(name);
    if (cells === undefined) throw new Error(`no sheet ${name}`);
    return cells;
  };
  const block = <T>({ top, left, bottom, right }: CellRange, at: (r: number, c: number) => T) =>
    Array.from({ length: bottom - top + 1 }, (_, r) =>
      Array.from({ length: right - left + 1 }, (__, c) => at(top + r, left + c)),
    );

  const grid: Grid = {
    sheets: () =>
      [...sheets.keys()].map((name) => ({ name, hidden: false, rowCount: 20, columnCount: 10 })),
    activeSheet: () => active,
    activate: (name) => void (active = name),
    addSheet: (name) => {
      const given = name ?? `Sheet${sheets.size + 1}`;
      sheets.set(given, new Map());
      return given;
    },
    usedRange: (name) => {
      const places = [...cellsOf(name).keys()].map((key) => key.split(",").map(Number));
      if (places.length === 0) return null;
      const rows = places.map(([r]) => r!);
      const columns = places.map(([, c]) => c!);
      return {
        top: Math.min(...rows),
        bottom: Math.max(...rows),
        left: Math.min(...columns),
        right: Math.max(...columns),
      };
    },
    read: (name, range) => {
      const cells = cellsOf(name);
      const valueAt = (r: number, c: number): BookValue => cells.get(`${r},${c}`) ?? null;
      return {
        values: block(range, valueAt),
        formulas: block(range, (r, c) => {
          const value = valueAt(r, c);
          return typeof value === "string" && value.startsWith("=") ? value : "";
        }),
        formats: block(range, (r, c) => formats.get(`${name}!${r},${c}`) ?? "General"),
        texts: block(range, (r, c) => String(cells.get(`${r},${c}`) ?? "")),
      };
    },
    write: (name, range, inputs) => {
      log.push(`write ${name}`);
      inputs.forEach((row, r) =>
        row.forEach((input, c) => {
          if (input === null) return;
          const key = `${range.top + r},${range.left + c}`;
          if (input === "") cellsOf(name).delete(key);
          else cellsOf(name).set(key, input);
        }),
      );
    },
    setFormats: (name, range, given) =>
      given.forEach((row, r) =>
        row.forEach((format, c) =>
          formats.set(`${name}!${range.top + r},${range.left + c}`, format),
        ),
      ),
    selection: () => ({ sheet: active, range: selected }),
    select: (name, range) => {
      active = name;
      selected = range;
      for (const listener of listeners) listener();
    },
    isRowHidden: (_, row) => row === 2,
    isColumnHidden: () => false,
    spills: () => new Map(),
    merged: () => [],
    tables: () => [
      {
        name: "Prices",
        sheet: "Costing",
        range: { top: 0, left: 0, bottom: 2, right: 1 },
        columns: ["Item", "Price"],
        hasTotals: false,
      },
    ],
    names: () => [{ name: "OurNames", refersTo: "Costing!$A$1:$B$3", sheet: null }],
    onSelectionChanged: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    asOneStep: (work) => {
      const writings = log.length;
      work();
      if (log.length > writings) log.push("step");
    },
    settled: () => {
      log.push("settled");
      return Promise.resolve();
    },
  };
  return { grid, log };
}
