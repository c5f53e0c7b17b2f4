import { strToU8, zipSync } from "fflate";
import fc from "fast-check";
import { eachCell } from "../../src/workbook/eachCell";
import { isProblem } from "../../src/foundation/problem";
import { readWorkbook } from "../../src/workbook/readWorkbook";
import { handMadeParts, handMadeXlsx, relationships, sheetXml, zipped } from "./handMadeXlsx";
import { manyBrokenFiles, richFile } from "./manyBrokenFiles";

const good = () => handMadeXlsx(`<sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData>`);
const withSheet = (xml: string) => handMadeXlsx("", { "xl/worksheets/sheet1.xml": xml });
const withRow = (row: string) => handMadeXlsx(`<sheetData>${row}</sheetData>`);
const compoundFile = (text: string) =>
  new Uint8Array([
    0xd0,
    0xcf,
    0x11,
    0xe0,
    ...new Array<number>(600).fill(0),
    ...Array.from(text).flatMap((c) => [c.charCodeAt(0), 0]),
  ]);

/** The bytes with one replaced wherever a signature stands, `offset` after it. */
function patched(bytes: Uint8Array, signature: number, offset: number, value: number): Uint8Array {
  const copy = bytes.slice();
  const view = new DataView(copy.buffer);
  for (let at = 0; at + 4 <= copy.length; at += 1) {
    if (view.getUint32(at, true) === signature) copy[at + offset] = value;
  }
  return copy;
}
const CENTRAL = 0x02014b50;
const END = 0x06054b50;

const zeros = (megabytes: number) => new Uint8Array(megabytes * 1e6).fill(32);
const blanks = (megabytes: number) =>
  sheetXml(`<sheetData>${" ".repeat(megabytes * 1e6)}</sheetData>`);
/** Text of a low ratio, so that the total limit and not the ratio meets it. */
const padding = Array.from({ length: 3000 }, (_, i) => (i * 2654435761) % 1e9).join(" ");

const TABLE: readonly (readonly [kind: string, bytes: () => Uint8Array, sentence: RegExp])[] = [
  ["an empty file", () => new Uint8Array(), /is empty/],
  ["a file over 50 MB", () => zeros(51), /51 MB large; at most 50 MB/],
  ["a text file", () => strToU8("Ingredient;g\nSugar;100\n"), /not an \.xlsx workbook/],
  ["an old .xls renamed", () => compoundFile("Workbook"), /old \.xls workbook/],
  ["a workbook with a password", () => compoundFile("EncryptedPackage"), /protected by a password/],
  ["an encrypted zip", () => patched(good(), CENTRAL, 8, 1), /protected by a password/],
  ["four bytes of a zip", () => good().subarray(0, 4), /cut short/],
  ["the first half", () => good().subarray(0, good().length / 2), /cut short/],
  ["all but the last byte", () => good().subarray(0, -1), /cut short/],
  ["an end record that points nowhere", () => patched(good(), END, 19, 0x7f), /cut short/],
  [
    "65,535 promised entries",
    () => patched(patched(good(), END, 10, 255), END, 11, 255),
    /65535 parts/,
  ],
  ["a part whose place is wrong", () => patched(good(), CENTRAL, 45, 0x7f), /cut short/],
  ["an unknown compression", () => patched(good(), CENTRAL, 10, 12), /method 12/],
  ["garbage in a compressed part", () => garbled(), /cannot be unpacked|not well-formed/],
  ["a name with ..", () => zipped({ ...handMadeParts(""), "../evil.xml": "x" }), /points outside/],
  [
    "a name with \\..\\",
    () => zipped({ ...handMadeParts(""), "xl\\..\\..\\e": "x" }),
    /points outside/,
  ],
  [
    "a name over two lines that steers a terminal",
    () => zipped({ ...handMadeParts(""), "../a\nb\u001b[2J\u2028c": "x" }),
    /named "\.\.\/a�b�\[2J�c", which/,
  ],
  [
    "two parts of one name of 60,000 letters",
    () => zipped({ ...handMadeParts(""), ["x".repeat(60000)]: "", ["X".repeat(60000)]: "" }),
    /two parts named "X{79}…"/,
  ],
  [
    "two parts of one name",
    () => zipped({ ...handMadeParts(""), "XL/workbook.xml": "x" }),
    /two parts named/,
  ],
  [
    "a zip of something else",
    () => zipSync({ "photo.jpg": strToU8("x") }),
    /no part "xl\/workbook.xml"/,
  ],
  ["an OpenDocument sheet", () => zipSync({ "content.xml": strToU8("<x/>") }), /\.ods/],
  ["a binary workbook", () => zipSync({ "xl/workbook.bin": strToU8("x") }), /\.xlsb/],
  ["a bomb of one repeated letter", () => withSheet(blanks(150)), /over 400 times its size/],
  [
    "a bomb within the ratio",
    () => withSheet(sheetXml(`<sheetData>${padding.slice(0, 20000).repeat(10500)}</sheetData>`)),
    /more than 200 MB/,
  ],
  [
    "an external entity",
    () =>
      withSheet(
        `<!DOCTYPE x [<!ENTITY e SYSTEM "file:///etc/hostname">]><worksheet>&e;</worksheet>`,
      ),
    /document type/,
  ],
  [
    "a billion laughs",
    () =>
      withSheet(`<!DOCTYPE x [<!ENTITY a "lol"><!ENTITY b "&a;&a;">]><worksheet>&b;</worksheet>`),
    /document type/,
  ],
  ["an entity never declared", () => withSheet(sheetXml("&xxe;")), /not well-formed/],
  [
    "a thousand levels of tags",
    () => withSheet(sheetXml("<a>".repeat(1000))),
    /nested deeper than 64/,
  ],
  ["tags that never end", () => withSheet("<worksheet><sheetData>"), /not well-formed/],
  ["crossed tags", () => withSheet("<worksheet><a><b></a></b></worksheet>"), /not well-formed/],
  ["no XML at all", () => withSheet("hello"), /not well-formed/],
  [
    "row 4294967296",
    () => withRow(`<row r="4294967296"/>`),
    /row 4294967296; rows run from 1 to 1048576/,
  ],
  ["row 0", () => withRow(`<row r="0"/>`), /row 0;/],
  ["row minus one", () => withRow(`<row r="-1"/>`), /row -1;/],
  ["row abc", () => withRow(`<row r="abc"/>`), /row abc;/],
  ["the same row twice", () => withRow(`<row r="1"/><row r="1"/>`), /two rows 1/],
  [
    "a column beyond XFD",
    () => withRow(`<row r="1"><c r="XFE1"><v>1</v></c></row>`),
    /cell at "XFE1"/,
  ],
  [
    "a cell in another row",
    () => withRow(`<row r="1"><c r="A2"><v>1</v></c></row>`),
    /cell at "A2"/,
  ],
  ["a cell without a row", () => withRow(`<c r="A1"><v>1</v></c>`), /cell at "A1"/],
  [
    "a number that is none",
    () => withRow(`<row r="1"><c r="A1"><v>12x</v></c></row>`),
    /A1.*"12x"/,
  ],
  [
    "an infinite number",
    () => withRow(`<row r="1"><c r="A1"><v>1e999</v></c></row>`),
    /A1.*"1e999"/,
  ],
  [
    "a shared text that is not there",
    () => withRow(`<row r="1"><c r="A1" t="s"><v>7</v></c></row>`),
    /A1.*"7"/,
  ],
  [
    "a workbook without sheets",
    () => handMadeXlsx("", { "xl/workbook.xml": "<workbook/>" }),
    /no sheet with cells/,
  ],
  [
    "a sheet without its part",
    () => handMadeXlsx("", { "xl/_rels/workbook.xml.rels": "<Relationships/>" }),
    /has no part/,
  ],
  [
    "a sheet part that is missing",
    () => withoutPart("xl/worksheets/sheet1.xml"),
    /"xl\/worksheets\/sheet1.xml" is missing/,
  ],
  [
    "600 sheets",
    () =>
      handMadeXlsx("", {
        "xl/workbook.xml": `<workbook><sheets>${"<sheet/>".repeat(600)}</sheets></workbook>`,
      }),
    /more than 500 sheets/,
  ],
  [
    "a workbook that relates to itself",
    () =>
      handMadeXlsx("", {
        "_rels/.rels": `<Relationships><Relationship Id="1" Type="a/officeDocument" Target="_rels/.rels"/></Relationships>`,
      }),
    /no sheet with cells/,
  ],
];

function withoutPart(name: string): Uint8Array {
  return zipped(
    Object.fromEntries(Object.entries(handMadeParts("")).filter(([part]) => part !== name)),
  );
}

function garbled(): Uint8Array {
  const bytes = handMadeXlsx(`<sheetData>${padding.slice(0, 5000)}</sheetData>`).slice();
  const middle = Math.floor(bytes.length / 2);
  for (let at = middle; at < middle + 200; at += 1) bytes[at] = 0xa5 ^ (at & 0xff);
  return bytes;
}

describe("A file that cannot be read ends in one sentence", () => {
  test.each(TABLE)("%s", async (_, bytes, sentence) => {
    const answer = await readWorkbook(bytes());
    expect(isProblem(answer)).toBe(true);
    const { message } = answer as { message: string };
    expect(message).toMatch(sentence);
    expect(message).toMatch(/^[^\n]{10,260}\.$/);
  });

  // tests/benchmarks/brokenFiles.ts reads them all, the large ones too, and measures time and memory.
  test("five hundred kinds of them, one by one", async () => {
    const small = manyBrokenFiles().filter(({ kind }) => !/\d+ MB/.test(kind));
    expect(small.length).toBeGreaterThan(500);
    const wrong: string[] = [];
    for (const { family, kind, bytes } of small) {
      const answer = await readWorkbook(bytes());
      if (!isProblem(answer) || !/^[^\n]{10,600}\.$/.test(answer.message))
        wrong.push(`${family}: ${kind}`);
    }
    expect(wrong).toEqual([]);
  });

  test("and the file that they are made from is read", async () => {
    expect(await readWorkbook(richFile())).toMatchObject({ sheets: [{ tables: [{ name: "T" }] }] });
  });

  test("wherever a good file is cut, the reader neither throws nor accepts it", async () => {
    const bytes = good();
    for (let length = 0; length < bytes.length; length += 7) {
      expect(isProblem(await readWorkbook(bytes.subarray(0, length)))).toBe(true);
    }
  });

  test("whichever byte is changed, the reader answers with a workbook or a sentence", async () => {
    const bytes = good();
    for (let at = 0; at < bytes.length; at += 3) {
      const changed = bytes.slice();
      changed[at] = (changed[at] ?? 0) ^ 0xff;
      const answer = await readWorkbook(changed);
      expect(isProblem(answer) || answer.sheets.length > 0).toBe(true);
    }
  });

  test("however the parts inside are garbled, the reader answers with a workbook or a sentence", async () => {
    const parts = handMadeParts(
      `<cols><col min="1" max="3" hidden="1"/></cols><sheetData><row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1"><f t="shared" ref="B1:B2" si="0">A1*2</f><v>1.5</v></c></row><row r="2"><c r="B2"><f t="shared" si="0"/><v>2</v></c></row></sheetData><mergeCells><mergeCell ref="A3:B4"/></mergeCells>`,
      {
        "xl/_rels/workbook.xml.rels": relationships(
          ["rId1", "worksheet", "worksheets/sheet1.xml"],
          ["rId2", "sharedStrings", "sharedStrings.xml"],
          ["rId3", "styles", "styles.xml"],
        ),
        "xl/sharedStrings.xml": "<sst><si><t>Sugar</t></si></sst>",
        "xl/styles.xml": `<styleSheet><numFmts><numFmt numFmtId="164" formatCode="0.0 %"/></numFmts><cellXfs><xf numFmtId="164"/></cellXfs></styleSheet>`,
      },
    );
    const names = Object.keys(parts);
    const piece = fc.constantFrom(
      "<",
      ">",
      "</row>",
      "<row>",
      '"',
      "&amp;",
      "&x;",
      "]]>",
      "<!--",
      "9".repeat(400),
      "\u0000",
      "Ω",
    );
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...names),
        fc.nat(600),
        fc.nat(30),
        piece,
        async (name, at, cut, put) => {
          const text = String(parts[name]);
          const garbled =
            text.slice(0, at % text.length) + put + text.slice((at % text.length) + cut);
          const answer = await readWorkbook(zipped({ ...parts, [name]: garbled }));
          if (isProblem(answer)) expect(answer.message).toMatch(/^[^\n]{10,600}\.$/);
          else
            for (const sheet of answer.sheets)
              eachCell(sheet, (_row, _column, cell) => expect(cell).toBeDefined());
        },
      ),
      { numRuns: 500 },
    );
  });
});
