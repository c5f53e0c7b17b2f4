import type { Cell, Matrix } from "../../src/foundation/cell";
import { callFunction } from "../../src/worksheet/callFunction";
import { toMatrix } from "../bowl/cells";
import type { SpreadsheetHost } from "../host";
import type { Argument, OwnCall } from "./formulaCalls";
import { ownFunction } from "./ownFunction";
import { cellsNamed, cellsOf, type Home } from "./resolveReference";

/** A call's arguments as read from the sheet, or the part of the formula that cannot be read from here. */
export type ResolvedCall =
  { readonly args: readonly (Cell | Matrix)[] } | { readonly unread: string };

type Read = { readonly value: Cell | Matrix } | { readonly unread: string };

async function readReference(text: string, home: Home, host: SpreadsheetHost): Promise<Read> {
  if (text.endsWith("#")) return { unread: text };
  const cells =
    cellsOf(text, home) ?? cellsNamed(text, home, await host.readWorkbook({ mostRows: 1 }));
  if (cells === null) return { unread: text };
  const block = await host.read(cells.sheet, cells.address);
  return { value: toMatrix(block.values) };
}

async function readArgument(given: Argument, home: Home, host: SpreadsheetHost): Promise<Read> {
  if (given.kind === "value") return given;
  if (given.kind === "other") return { unread: given.text };
  if (given.kind === "reference") return readReference(given.text, home, host);
  const inner = await resolveCall(given.call, home, host);
  if ("unread" in inner) return inner;
  if (ownFunction(given.call.name) === null) return { unread: given.call.text };
  return { value: callFunction(given.call.name, ...inner.args) };
}

/** Reads what a call's arguments refer to. Faults of the spreadsheet are thrown on, as everywhere. */
export async function resolveCall(
  { args }: OwnCall,
  home: Home,
  host: SpreadsheetHost,
): Promise<ResolvedCall> {
  const values: (Cell | Matrix)[] = [];
  for (const given of args) {
    const read = await readArgument(given, home, host);
    if ("unread" in read) return read;
    values.push(read.value);
  }
  return { args: values };
}
