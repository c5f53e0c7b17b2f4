import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { Book } from "../book";
import { withFileFunctionNames } from "./functionPrefixes";

const WORKBOOK_PART = "xl/workbook.xml";
const ESCAPES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
};

const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => ESCAPES[sign] ?? sign);

/** Names of cells, constants and formulas, of the whole book or of one sheet (ECMA-376 18.2.5). */
function namesXml({ names, sheets }: Book): string {
  const written = names.map(({ name, refersTo, sheet }) => {
    const owner = sheets.findIndex((each) => each.name === sheet);
    const local = owner < 0 ? "" : ` localSheetId="${owner}"`;
    const formula = escaped(withFileFunctionNames(refersTo));
    return `<definedName name="${escaped(name)}"${local}>${formula}</definedName>`;
  });
  return `<definedNames>${written.join("")}</definedNames>`;
}

/** Puts a book's names into the workbook just written: the library knows names of cells of the whole book only. */
export function withDefinedNames(bytes: Uint8Array, book: Book): Uint8Array {
  if (book.names.length === 0) return bytes;
  const parts = unzipSync(bytes);
  const xml = strFromU8(parts[WORKBOOK_PART] ?? new Uint8Array());
  // A function, for "$" in a replacement means more than itself.
  parts[WORKBOOK_PART] = strToU8(xml.replace("</sheets>", () => `</sheets>${namesXml(book)}`));
  return zipSync(parts, { level: 6 });
}
