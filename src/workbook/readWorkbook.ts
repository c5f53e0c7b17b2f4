import { badInput, isProblem } from "../foundation/problem";
import { andThen, type Result } from "../foundation/result";
import type { Workbook, WorkbookSheet } from "./model";
import { openArchive, type Archive } from "./xlsx/archive";
import { onOneLine } from "./xlsx/onOneLine";
import { readRelationships, type Relationship } from "./xlsx/relationships";
import { readSharedStrings } from "./xlsx/sharedStrings";
import { readSheetPart, type SheetContext } from "./xlsx/sheetPart";
import { readNumberFormats } from "./xlsx/styles";
import { readTablePart, type TablePart } from "./xlsx/tablePart";
import { readWorkbookPart, type SheetEntry, type WorkbookContent } from "./xlsx/workbookPart";

/** Other kinds of spreadsheet that are zip archives too, known by one of their parts. */
const OTHER_KINDS: readonly (readonly [part: string, sentence: string])[] = [
  ["xl/workbook.bin", "The file is a binary workbook (.xlsb); save it as .xlsx."],
  ["content.xml", "The file is an OpenDocument spreadsheet (.ods); save it as .xlsx."],
  ["word/document.xml", "The file is a text document, not a workbook."],
];

/** The part that the file's root relationships call the workbook, else where it usually is. */
function workbookPartName(archive: Archive): Result<string> {
  const { list, problem } = readRelationships(archive, "");
  if (isProblem(problem)) return problem;
  const target = list.find(({ type }) => type === "officeDocument")?.target ?? "xl/workbook.xml";
  const other = OTHER_KINDS.find(([part]) => archive.entries.has(part));
  if (other !== undefined) return badInput(other[1]);
  if (archive.entries.has(target.toLowerCase())) return target;
  return badInput(`The file is a zip archive but not a workbook: it has no part "${target}".`);
}

function readTables(
  archive: Archive,
  sheetPart: string,
  ids: readonly string[],
): Result<readonly TablePart[]> {
  if (ids.length === 0) return [];
  const { list, problem } = readRelationships(archive, sheetPart);
  if (isProblem(problem)) return problem;
  const tables: TablePart[] = [];
  for (const { id, target } of list) {
    if (!ids.includes(id)) continue;
    const table = readTablePart(archive, target);
    if (isProblem(table)) return table;
    tables.push(table);
  }
  return tables;
}

function readSheet(
  context: SheetContext,
  { name, hidden }: SheetEntry,
  partName: string,
): Result<WorkbookSheet> {
  return andThen(readSheetPart(context, name, partName), ({ tableRelationships, ...content }) =>
    andThen(readTables(context.archive, partName, tableRelationships), (parts) => ({
      ...content,
      name,
      hidden,
      tables: parts.map(({ table }) => table),
      filtered: [...(content.filtered ?? []), ...parts.flatMap(({ filtered }) => filtered)],
    })),
  );
}

/** What the external links point to, in the order in which formulas number them. */
function externalTargets(
  archive: Archive,
  parts: readonly (string | undefined)[],
): readonly string[] {
  return parts.map((part) => {
    if (part === undefined) return "unknown";
    return readRelationships(archive, part).list.find(({ external }) => external)?.target ?? part;
  });
}

function readSharedParts(
  archive: Archive,
  relationships: readonly Relationship[],
): Result<SheetContext> {
  const partOf = (wanted: string) => relationships.find(({ type }) => type === wanted)?.target;
  const stringsPart = partOf("sharedStrings");
  const stylesPart = partOf("styles");
  return andThen(
    stringsPart === undefined ? [] : readSharedStrings(archive, stringsPart),
    (sharedStrings) =>
      andThen(
        stylesPart === undefined ? [] : readNumberFormats(archive, stylesPart),
        (formats) => ({
          archive,
          sharedStrings,
          formats,
          cellsSoFar: { count: 0, texts: sharedStrings.length },
        }),
      ),
  );
}

function readSheets(
  context: SheetContext,
  content: WorkbookContent,
  relationships: readonly Relationship[],
): Result<Workbook> {
  const byId = new Map(relationships.map((relationship) => [relationship.id, relationship]));
  const sheets: WorkbookSheet[] = [];
  const seen = new Set<string>();
  for (const entry of content.sheets) {
    const relationship = byId.get(entry.relationship);
    if (relationship === undefined)
      return badInput(`The file is damaged: sheet "${entry.name}" has no part.`);
    if (relationship.type !== "worksheet") continue; // chart and macro sheets hold no cells
    if (seen.has(relationship.target))
      return badInput(`The file is damaged: two sheets share one part.`);
    seen.add(relationship.target);
    const sheet = readSheet(context, entry, relationship.target);
    if (isProblem(sheet)) return sheet;
    sheets.push(sheet);
  }
  if (sheets.length === 0) return badInput("The workbook has no sheet with cells.");
  const externalLinks = externalTargets(
    context.archive,
    content.externalLinks.map((id) => byId.get(id)?.target),
  );
  return { ...content.whole, sheets, externalLinks };
}

function readArchive(archive: Archive): Result<Workbook> {
  return andThen(workbookPartName(archive), (partName): Result<Workbook> => {
    const { list, problem } = readRelationships(archive, partName);
    if (isProblem(problem)) return problem;
    return andThen(readWorkbookPart(archive, partName), (content) =>
      andThen(readSharedParts(archive, list), (context) => readSheets(context, content, list)),
    );
  });
}

/**
 * Reads an .xlsx or .xlsm workbook: values, formulas with their stored results, number formats, names,
 * tables, hidden rows, columns and sheets, filters, merged blocks, calculation mode, external links. The file is
 * treated as hostile: limits are counted, not believed, and each refusal is one sentence.
 * Runs in Node and in the browser; the bytes are not changed.
 */
export async function readWorkbook(bytes: Uint8Array): Promise<Result<Workbook>> {
  await Promise.resolve(); // so that a caller's "reading…" can be shown first
  try {
    const workbook = andThen(openArchive(bytes), readArchive);
    return isProblem(workbook) ? onOneLine(workbook) : workbook;
  } catch (mishap) {
    // A directory that points beyond the bytes; anything else is our own mistake.
    if (!(mishap instanceof RangeError)) throw mishap;
    return badInput("The file is damaged: it points beyond its own end.");
  }
}
