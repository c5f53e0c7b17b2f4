import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from "fflate";

// The mark by which Excel knows a formula that may spill (ECMA-376 part 1, 18.9, and [MS-XLSX] 2.3.4.2):
// cm="1" on the cell names the first entry of this part. Without it the formula would be a fixed array.
const METADATA_PART = "xl/metadata.xml";
const METADATA = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`;
const CONTENT_TYPE = `<Override PartName="/${METADATA_PART}" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml"/>`;
const RELATIONSHIP = `<Relationship Id="rIdSheetMetadata" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata" Target="metadata.xml"/>`;

const ARRAY_CELL = /<c (r="[A-Z]+\d+"[^>]*)>(?=<f t="array")/g;

/** Turns every array formula of a workbook just written into one that spills, and leaves the rest alone. */
export function markDynamicArrays(bytes: Uint8Array): Uint8Array {
  const parts: Zippable = unzipSync(bytes);
  let marked = 0;
  const edit = (name: string, change: (xml: string) => string): void => {
    const part = parts[name];
    if (part instanceof Uint8Array) parts[name] = strToU8(change(strFromU8(part)));
  };
  for (const name of Object.keys(parts)) {
    if (!/^xl\/worksheets\/[^/]+\.xml$/.test(name)) continue;
    edit(name, (xml) =>
      xml.replace(ARRAY_CELL, (_cell, attributes: string) => {
        marked += 1;
        return `<c ${attributes} cm="1">`;
      }),
    );
  }
  if (marked === 0) return bytes;
  parts[METADATA_PART] = strToU8(METADATA);
  edit("[Content_Types].xml", (xml) => xml.replace("</Types>", `${CONTENT_TYPE}</Types>`));
  edit("xl/_rels/workbook.xml.rels", (xml) =>
    xml.replace("</Relationships>", `${RELATIONSHIP}</Relationships>`),
  );
  return zipSync(parts, { level: 6 });
}
