import { cellName, parseRangeName, rangeName } from "../../src/workbook/address";
import { sheetFromRows } from "../../src/workbook/sheetFromRows";
import type { BlockValue, CellBlock, SpreadsheetHost } from "../../taskpane/host";
import { freeSheetName } from "../../taskpane/office/freeSheetName";
import { asInput, stillHolds } from "../../taskpane/office/cellContent";
import { blockOf } from "./blockOf";
import { typed } from "./typed";

type Rows = BlockValue[][];

/** A spreadsheet of arrays with everything a view can ask for, and a record of what was done to it. */
export function fakeHost(
  sheets: Record<string, Rows>,
  select: string,
  sheet = Object.keys(sheets)[0]!,
) {
  let selection = { sheet, address: select };
  const listeners = new Set<() => void>();
  const visited: string[] = [];
  const pictures: { pngBase64: string; name: string }[] = [];
  const faults: Partial<Record<keyof SpreadsheetHost, unknown>> = {};

  const rowsOf = (name: string): Rows => {
    const rows = sheets[name];
    if (rows === undefined) throw Object.assign(new Error("gone"), { code: "ItemNotFound" });
    return rows;
  };
  const valueAt = (name: string, row: number, column: number): BlockValue =>
    rowsOf(name)[row]?.[column] ?? "";
  const read = (name: string, address: string): CellBlock => {
    const { top, left, bottom, right } = parseRangeName(address)!;
    const rows = Array.from({ length: bottom - top + 1 }, (_, row) =>
      Array.from({ length: right - left + 1 }, (_, column) =>
        valueAt(name, top + row, left + column),
      ),
    );
    return blockOf(rows, { at: cellName(top, left), sheet: name });
  };
  /** Grows over filled cells to all sides, as a sheet's own "current region" does. */
  const region = (name: string, address: string): CellBlock => {
    const range = { ...parseRangeName(address)! };
    const filled = (top: number, left: number, bottom: number, right: number) =>
      rowsOf(name).some((row, at) =>
        row.some((value, column) => {
          const inside = at >= top && at <= bottom && column >= left && column <= right;
          return inside && value !== "";
        }),
      );
    for (let before = ""; before !== rangeName(range);) {
      before = rangeName(range);
      const { top, left, bottom, right } = range;
      if (filled(top - 1, left - 1, top - 1, right + 1)) range.top -= 1;
      if (filled(bottom + 1, left - 1, bottom + 1, right + 1)) range.bottom += 1;
      if (filled(top - 1, left - 1, bottom + 1, left - 1)) range.left -= 1;
      if (filled(top - 1, right + 1, bottom + 1, right + 1)) range.right += 1;
    }
    return read(name, rangeName(range));
  };
  /** Answers after a turn of the event loop, or fails as the test wants it to. */
  const later = async <T>(name: keyof SpreadsheetHost, answer: () => T): Promise<T> => {
    await Promise.resolve();
    if (faults[name] !== undefined) throw faults[name] as Error;
    return answer();
  };

  const host: SpreadsheetHost = {
    readSelection: () =>
      later("readSelection", () => {
        const selected = read(selection.sheet, selection.address);
        const isOneCell = !selection.address.includes(":");
        return {
          selected,
          around: isOneCell ? region(selection.sheet, selection.address) : selected,
        };
      }),
    read: (name, address) => later("read", () => read(name, address)),
    cellsFromSelection: (rowCount, columnCount) =>
      later("cellsFromSelection", () => {
        const { top, left } = parseRangeName(selection.address)!;
        const range = { top, left, bottom: top + rowCount - 1, right: left + columnCount - 1 };
        return read(selection.sheet, rangeName(range));
      }),
    insert: (place, contents, { overwrite = false } = {}) =>
      later("insert", () => {
        const now = read(place.sheet, place.address);
        if (JSON.stringify(now.formulas) !== JSON.stringify(place.formulas)) {
          return "changed meanwhile";
        }
        if (now.formulas.some((row) => row.some((cell) => cell !== "")) && !overwrite) {
          return "filled";
        }
        contents.forEach((row, down) =>
          row.forEach((content, along) => {
            const rows = rowsOf(place.sheet);
            const cells = (rows[place.top + down] ??= []);
            for (let column = 0; column < place.left + along; column += 1) cells[column] ??= "";
            cells[place.left + along] = typed(content);
          }),
        );
        return "written";
      }),
    readOnEachSheet: (address) =>
      later("readOnEachSheet", () => Object.keys(sheets).map((name) => read(name, address))),
    usedBlock: (name) =>
      later("usedBlock", () => {
        const rows = rowsOf(name);
        const columnCount = Math.max(0, ...rows.map((row) => row.length));
        return columnCount === 0
          ? null
          : read(
              name,
              rangeName({ top: 0, left: 0, bottom: rows.length - 1, right: columnCount - 1 }),
            );
      }),
    addSheet: (wishedName, contents) =>
      later("addSheet", () => {
        const name = freeSheetName(wishedName, Object.keys(sheets));
        sheets[name] = contents.map((row) => row.map((content) => typed(content)));
        return name;
      }),
    writeCells: (edits) =>
      later("writeCells", () =>
        edits.filter(({ sheet: name, cell, from, to }) => {
          const { top, left } = parseRangeName(cell)!;
          if (!stillHolds(read(name, cell).formulas[0]?.[0], from)) return true;
          (rowsOf(name)[top] ??= [])[left] = typed(asInput(to));
          return false;
        }),
      ),
    insertPicture: (pngBase64, name) =>
      later("insertPicture", () => {
        pictures.push({ pngBase64, name });
        return true;
      }),
    readWorkbook: ({ onSheet } = {}) =>
      later("readWorkbook", () => {
        const names = Object.keys(sheets);
        names.forEach((_, done) => onSheet?.(done, names.length));
        return {
          sheets: names.map((name) => {
            const block = blockOf(rowsOf(name));
            const rows = block.values.map((row, at) =>
              row.map((value, column) => {
                const formula = block.formulas[at]?.[column];
                return typeof formula === "string" && formula.startsWith("=")
                  ? { value, formula: formula.slice(1) }
                  : value;
              }),
            );
            return sheetFromRows(name, rows);
          }),
          names: [],
          calculation: "automatic",
          externalLinks: [],
        };
      }),
    goTo: (name, address) =>
      later("goTo", () => {
        rowsOf(name);
        visited.push(`${name}!${address}`);
      }),
    onSelectionChanged: (callback) =>
      later("onSelectionChanged", () => {
        listeners.add(callback);
        return () => void listeners.delete(callback);
      }),
  };
  return {
    host,
    sheets,
    visited,
    pictures,
    listeners,
    faults,
    select: (address: string, name = selection.sheet) => {
      selection = { sheet: name, address };
      for (const listener of listeners) listener();
    },
  };
}
