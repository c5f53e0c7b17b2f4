import { badInput, isProblem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import { withPlainFunctionNames } from "../functionNames";
import type { DefinedName, Workbook } from "../model";
import type { Archive } from "./archive";
import { LIMITS } from "./limits";
import { isTrue, prefixedAttribute, readXml, type Attributes } from "./readXml";

export interface SheetEntry {
  readonly name: string;
  readonly hidden: boolean;
  readonly relationship: string;
}

type Whole = Pick<Workbook, "names" | "calculation" | "datesFrom1904">;

export interface WorkbookContent {
  /** What the workbook part alone tells of the workbook. */
  readonly whole: Whole;
  readonly sheets: readonly SheetEntry[];
  /** Relationships of the external links, in the order in which formulas number them: [1], [2]… */
  readonly externalLinks: readonly string[];
}

const CALCULATION: Readonly<Record<string, Workbook["calculation"]>> = {
  manual: "manual",
  autoNoTable: "automatic except tables",
};

const sheetEntry = (attributes: Attributes): SheetEntry => ({
  name: attributes["name"] ?? "",
  hidden: attributes["state"] === "hidden" || attributes["state"] === "veryHidden",
  relationship: prefixedAttribute(attributes, "id") ?? "",
});

/** Reads the workbook part: the list of sheets, names, calculation mode and external links. */
export function readWorkbookPart(archive: Archive, partName: string): Result<WorkbookContent> {
  const sheets: SheetEntry[] = [];
  const names: { name: string; refersTo: string; sheetIndex: string | undefined }[] = [];
  const externalLinks: string[] = [];
  let calculation: Workbook["calculation"] = "automatic";
  let days: Pick<Workbook, "datesFrom1904"> = {};
  let definedName: Attributes = {};
  const problem = readXml(archive, partName, {
    open: (name, attributes) => {
      if (name === "sheet") sheets.push(sheetEntry(attributes));
      if (name === "definedName") definedName = attributes;
      if (name === "workbookPr" && isTrue(attributes["date1904"])) days = { datesFrom1904: true };
      if (name === "calcPr") calculation = CALCULATION[attributes["calcMode"] ?? ""] ?? "automatic";
      if (name === "externalReference")
        externalLinks.push(prefixedAttribute(attributes, "id") ?? "");
      const tooMany = sheets.length > LIMITS.sheets || names.length > LIMITS.ranges;
      return tooMany
        ? badInput(`The workbook has more than ${LIMITS.sheets} sheets or too many names.`)
        : null;
    },
    close: (name, text) => {
      if (name !== "definedName") return null;
      const { name: ownName = "", localSheetId } = definedName;
      names.push({
        name: ownName,
        refersTo: withPlainFunctionNames(text),
        sheetIndex: localSheetId,
      });
      return null;
    },
  });
  if (isProblem(problem)) return problem;
  const scoped = names.map(({ name, refersTo, sheetIndex }): DefinedName => ({
    name,
    refersTo,
    sheet: sheetIndex === undefined ? null : (sheets[Number(sheetIndex)]?.name ?? null),
  }));
  const whole = { names: scoped, calculation, ...days };
  return { whole, sheets, externalLinks };
}
