import { strToU8, zipSync } from "fflate";
import { spoiltXml } from "./spoiltXml";
import { handMadeParts, relationships, sheetXml, zipped, type Parts } from "./handMadeXlsx";

/** A file that cannot be read as a workbook, and what is wrong with it. */
export interface BrokenFile {
  readonly family: string;
  readonly kind: string;
  readonly bytes: () => Uint8Array;
}

type Kinds = Readonly<Record<string, () => Uint8Array>>;

const SHEET = "xl/worksheets/sheet1.xml";

/** A workbook that uses every part the reader knows. */
const richParts = (changes: Parts = {}): Parts => ({
  ...handMadeParts(
    `<sheetData><row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" s="0"><v>1.5</v></c></row></sheetData><tableParts><tablePart r:id="rId1"/></tableParts>`,
    {
      "xl/_rels/workbook.xml.rels": relationships(
        ["rId1", "worksheet", "worksheets/sheet1.xml"],
        ["rId2", "sharedStrings", "sharedStrings.xml"],
        ["rId3", "styles", "styles.xml"],
      ),
      "xl/worksheets/_rels/sheet1.xml.rels": relationships(["rId1", "table", "../tables/t.xml"]),
      "xl/tables/t.xml": `<table name="T" displayName="T" ref="A1:B1"><tableColumns><tableColumn name="a"/><tableColumn name="b"/></tableColumns></table>`,
      "xl/sharedStrings.xml": "<sst><si><t>Sugar</t></si></sst>",
      "xl/styles.xml": `<styleSheet><numFmts><numFmt numFmtId="164" formatCode="0.0 %"/></numFmts><cellXfs><xf numFmtId="164"/></cellXfs></styleSheet>`,
    },
  ),
  ...changes,
});
export const richFile = (): Uint8Array => zipped(richParts());

const XML_PARTS = [
  ...["_rels/.rels", "xl/workbook.xml", "xl/_rels/workbook.xml.rels", SHEET],
  ...["xl/sharedStrings.xml", "xl/styles.xml", "xl/tables/t.xml"],
  "xl/worksheets/_rels/sheet1.xml.rels",
];

const xmlParts = (): Kinds =>
  Object.fromEntries(
    XML_PARTS.flatMap((part) =>
      Object.entries(spoiltXml).map(([how, spoil]) => [
        `${part}: ${how}`,
        () => zipped(richParts({ [part]: spoil(String(richParts()[part])) })),
      ]),
    ),
  );

const cuts = (): Kinds => {
  const { length } = richFile();
  return Object.fromEntries(
    Array.from({ length: 120 }, (_, index) => {
      const at = Math.floor((length * index) / 120);
      return [`cut after ${at} of ${length} bytes`, () => richFile().subarray(0, at)];
    }),
  );
};

const withRow = (row: string): Uint8Array =>
  zipped(richParts({ [SHEET]: sheetXml(`<sheetData>${row}</sheetData>`) }));

const named = (what: string, texts: readonly string[], make: (text: string) => Uint8Array): Kinds =>
  Object.fromEntries(
    texts.map((text) => [`${what} ${JSON.stringify(text.slice(0, 40))}`, () => make(text)]),
  );

const ROWS = [
  ...["0", "-1", "-0.5", "1.5", "abc", "1048577", "2147483647", "2147483648", "4294967295"],
  ...["4294967296", "4294967297", "9007199254740993", "18446744073709551616", "1e300", "1e999"],
  ...["NaN", "Infinity", "1,5", "1 2", "١"],
  "9".repeat(1000),
];
const PLACES = [
  ...["XFE1", "ZZZZ1", "A0", "A", "1", "1A", "A2", "A-1", "A1048577", "A4294967296", "A1:B2"],
  ...["R1C1", "#REF!", "Ä1", "A1 ", "A 1", "A1A", "Sheet1!A1", "$$A1", "B99"],
  "A".repeat(5000),
];
const NUMBERS = [
  ...["12x", "1e999", "-1e999", "NaN", "Infinity", "1,5", "0x10", "1 2", "--1", "1e", "one"],
  ...["½", "#VALUE!", "TRUE", "1.2.3", "9".repeat(400)],
];
const INDICES = ["1", "7", "-1", "0.5", "x", "4294967296", "1e9", "NaN", "9007199254740993"];

const cells = (): Kinds => ({
  ...named("row", ROWS, (r) => withRow(`<row r="${r}"/>`)),
  ...named("cell at", PLACES, (r) => withRow(`<row r="1"><c r="${r}"><v>1</v></c></row>`)),
  ...named("number", NUMBERS, (v) => withRow(`<row r="1"><c r="A1"><v>${v}</v></c></row>`)),
  ...named("shared text", INDICES, (v) =>
    withRow(`<row r="1"><c r="A1" t="s"><v>${v}</v></c></row>`),
  ),
  "the same row twice": () => withRow(`<row r="1"/><row r="1"/>`),
  "a cell outside of rows": () => withRow(`<c r="A1"><v>1</v></c>`),
});

/** The bytes with one replaced, `offset` after every place where a signature stands. */
function patched(bytes: Uint8Array, signature: number, offset: number, ...values: number[]) {
  const copy = bytes.slice();
  const view = new DataView(copy.buffer);
  for (let at = 0; at + 4 <= bytes.length; at += 1) {
    if (view.getUint32(at, true) === signature) copy.set(values, at + offset);
  }
  return copy;
}
const [CENTRAL, END] = [0x02014b50, 0x06054b50];
const MAX = [0xff, 0xff, 0xff, 0xff];

const METHODS = [
  1, 2, 3, 4, 5, 6, 7, 9, 10, 11, 12, 14, 16, 18, 19, 20, 93, 94, 95, 96, 97, 98, 99,
];

const containers = (): Kinds => ({
  ...Object.fromEntries(
    METHODS.map((method) => [
      `compression ${method}`,
      () => patched(richFile(), CENTRAL, 10, method),
    ]),
  ),
  "every part encrypted": () => patched(richFile(), CENTRAL, 8, 1),
  "strongly encrypted": () => patched(richFile(), CENTRAL, 8, 0x41),
  "packed sizes of 2³² − 1": () => patched(richFile(), CENTRAL, 20, ...MAX),
  "sizes of 2³² − 1 on both sides": () => patched(richFile(), CENTRAL, 20, ...MAX, ...MAX),
  "parts at 2³² − 1": () => patched(richFile(), CENTRAL, 42, ...MAX),
  "names of 65,535 letters": () => patched(richFile(), CENTRAL, 28, 0xff, 0xff),
  "extra fields of 65,535 bytes": () => patched(richFile(), CENTRAL, 30, 0xff, 0xff),
  "comments of 65,535 bytes": () => patched(richFile(), CENTRAL, 32, 0xff, 0xff),
  "65,535 parts promised": () => patched(richFile(), END, 8, 0xff, 0xff, 0xff, 0xff),
  "a directory at 2³² − 1": () => patched(richFile(), END, 16, ...MAX),
  "a directory of 2³² − 1 bytes at 2³² − 1": () => patched(richFile(), END, 12, ...MAX, ...MAX),
  "no part at all": () => zipSync({}),
  "six thousand parts": () =>
    zipped(richParts(Object.fromEntries(Array.from({ length: 6000 }, (_, i) => [`x/${i}`, "x"])))),
});

const OUTSIDE = [
  "../a",
  "xl/../../a",
  "xl\\..\\..\\a",
  "..\\a",
  "/../a",
  "a/../../b",
  "..",
  "./../a",
];

const names = (): Kinds => ({
  ...named("part", OUTSIDE, (name) => zipped(richParts({ [name]: "x" }))),
  "two parts of one name but for case": () => zipped(richParts({ "XL/WORKBOOK.XML": "x" })),
  ...Object.fromEntries(
    ["xl/workbook.xml", SHEET].map((part) => [
      `without ${part}`,
      () => zipped(Object.fromEntries(Object.entries(richParts()).filter(([at]) => at !== part))),
    ]),
  ),
});

const workbookRels = (target: string, type = "worksheet"): Uint8Array =>
  zipped(richParts({ "xl/_rels/workbook.xml.rels": relationships(["rId1", type, target]) }));
const TARGETS = [
  "none.xml",
  "../../../etc/passwd",
  "/etc/passwd",
  "http://localhost/sheet.xml",
  "",
];

const relations = (): Kinds => ({
  ...named("sheet at", TARGETS, (target) => workbookRels(target)),
  "a workbook that is its own relationships": () =>
    zipped(richParts({ "_rels/.rels": relationships(["1", "officeDocument", "_rels/.rels"]) })),
  "a sheet that is the workbook's text part": () => workbookRels("sharedStrings.xml", "theme"),
  "no relationships": () => zipped(richParts({ "xl/_rels/workbook.xml.rels": "<Relationships/>" })),
  "two sheets of one part": () =>
    zipped(
      richParts({
        "xl/workbook.xml": `<workbook xmlns:r="r"><sheets><sheet name="A" r:id="rId1"/><sheet name="B" r:id="rId1"/></sheets></workbook>`,
      }),
    ),
  "600 sheets": () =>
    zipped(
      richParts({
        "xl/workbook.xml": `<workbook><sheets>${"<sheet/>".repeat(600)}</sheets></workbook>`,
      }),
    ),
  "no sheets": () => zipped(richParts({ "xl/workbook.xml": "<workbook/>" })),
});

const wide = (text: string): number[] => Array.from(text).flatMap((c) => [c.charCodeAt(0), 0]);
const compound = (stream: string): Uint8Array =>
  new Uint8Array([
    0xd0,
    0xcf,
    0x11,
    0xe0,
    0xa1,
    0xb1,
    0x1a,
    0xe1,
    ...new Array<number>(504).fill(0),
    ...wide(stream),
  ]);

const BEGINNINGS: Readonly<Record<string, readonly number[]>> = {
  "a PDF": [0x25, 0x50, 0x44, 0x46, 0x2d],
  "a PNG picture": [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a],
  "a JPEG picture": [0xff, 0xd8, 0xff, 0xe0],
  "a gzip file": [0x1f, 0x8b, 0x08],
  "a 7z file": [0x37, 0x7a, 0xbc, 0xaf, 0x27, 0x1c],
  "a RAR file": [0x52, 0x61, 0x72, 0x21, 0x1a, 0x07],
  "a program": [0x7f, 0x45, 0x4c, 0x46],
  "a zip's first four bytes and zeros": [0x50, 0x4b, 3, 4],
  "an empty zip that goes on": [0x50, 0x4b, 5, 6],
};

/** Bytes without order, the same at every run (a linear congruential generator). */
function noise(seed: number, length: number): Uint8Array {
  let state = seed + 1;
  return Uint8Array.from({ length }, () => {
    state = (state * 1664525 + 1013904223) >>> 0;
    return state >>> 24;
  });
}

const wrongFiles = (): Kinds => ({
  "an empty file": () => new Uint8Array(),
  "51 MB of blanks": () => new Uint8Array(51e6).fill(32),
  "a CSV text": () => strToU8("Ingredient;g\nSugar;100\n"),
  "a web page": () => strToU8("<!doctype html><table><tr><td>1</td></tr></table>"),
  "an XML spreadsheet of 2003": () => strToU8(`<?xml version="1.0"?><Workbook/>`),
  "an old .xls renamed": () => compound("Workbook"),
  "an older .xls renamed": () => compound("Book"),
  "a workbook with a password": () => compound("EncryptedPackage"),
  "a text document of the same kind": () => zipSync({ "word/document.xml": strToU8("<x/>") }),
  "an OpenDocument sheet": () => zipSync({ "content.xml": strToU8("<x/>") }),
  "a binary workbook": () => zipSync({ "xl/workbook.bin": strToU8("x") }),
  "a zip of a workbook": () => zipSync({ "book.xlsx": richFile() }),
  "a zip of a picture": () => zipSync({ "photo.jpg": strToU8("x") }),
  ...Object.fromEntries(
    Object.entries(BEGINNINGS).map(([kind, start]) => [
      kind,
      () => new Uint8Array([...start, ...new Array<number>(2000).fill(0)]),
    ]),
  ),
  ...Object.fromEntries(
    Array.from({ length: 60 }, (_, seed) => [`noise ${seed}`, () => noise(seed, 1 << (seed % 16))]),
  ),
  ...Object.fromEntries(
    Array.from({ length: 40 }, (_, seed) => [
      `a workbook with noise from its middle on, ${seed}`,
      () => {
        const bytes = richFile().slice();
        bytes.set(noise(seed, Math.floor(bytes.length / 2)), Math.ceil(bytes.length / 2));
        return bytes;
      },
    ]),
  ),
});

const FAMILIES: Readonly<Record<string, () => Kinds>> = {
  "XML spoilt": xmlParts,
  "cut short": cuts,
  "cells out of bounds": cells,
  "container headers": containers,
  "names of parts": names,
  relationships: relations,
  "not a workbook": wrongFiles,
};

/** Over 500 kinds of broken files, each made when it is asked for. */
export function manyBrokenFiles(): readonly BrokenFile[] {
  return Object.entries(FAMILIES).flatMap(([family, kinds]) =>
    Object.entries(kinds()).map(([kind, bytes]) => ({ family, kind, bytes })),
  );
}
