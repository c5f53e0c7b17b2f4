import { strToU8, zipSync, type Zippable } from "fflate";

/** The parts of a small workbook by name, as the file format (ECMA-376) writes them. */
export type Parts = Record<string, string | Uint8Array>;

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships";

export const sheetXml = (inside: string): string =>
  `<?xml version="1.0" encoding="UTF-8"?><worksheet xmlns="${MAIN}" xmlns:r="${RELATION}">${inside}</worksheet>`;

export const relationships = (...list: readonly [id: string, type: string, target: string][]) =>
  `<Relationships xmlns="${PACKAGE}">${list
    .map(
      ([id, type, target]) =>
        `<Relationship Id="${id}" Type="${RELATION}/${type}" Target="${target}"/>`,
    )
    .join("")}</Relationships>`;

/** A workbook with one sheet "Sheet1" of the given XML; any part can be replaced or added. */
export function handMadeParts(sheetInside: string, changes: Parts = {}): Parts {
  return {
    "[Content_Types].xml": `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>`,
    "_rels/.rels": relationships(["rId1", "officeDocument", "xl/workbook.xml"]),
    "xl/workbook.xml": `<workbook xmlns="${MAIN}" xmlns:r="${RELATION}"><sheets><sheet name="Sheet1" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": relationships(["rId1", "worksheet", "worksheets/sheet1.xml"]),
    "xl/worksheets/sheet1.xml": sheetXml(sheetInside),
    ...changes,
  };
}

export function zipped(parts: Parts): Uint8Array {
  const entries: Zippable = {};
  for (const [name, content] of Object.entries(parts)) {
    entries[name] = typeof content === "string" ? strToU8(content) : content;
  }
  // A fixed time, so that the same parts are the same bytes in every run.
  return zipSync(entries, { level: 6, mtime: "2024-02-29T12:00:00" });
}

export const handMadeXlsx = (sheetInside: string, changes?: Parts): Uint8Array =>
  zipped(handMadeParts(sheetInside, changes));
