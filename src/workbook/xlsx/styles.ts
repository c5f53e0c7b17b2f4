import { isProblem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import type { Archive } from "./archive";
import { readXml } from "./readXml";

/** Number formats that the file names by number only (ECMA-376 part 1, 18.8.30). */
const BUILT_IN: Readonly<Record<number, string>> = {
  1: "0",
  2: "0.00",
  3: "#,##0",
  4: "#,##0.00",
  9: "0%",
  10: "0.00%",
  11: "0.00E+00",
  12: "# ?/?",
  13: "# ??/??",
  14: "mm-dd-yy",
  15: "d-mmm-yy",
  16: "d-mmm",
  17: "mmm-yy",
  18: "h:mm AM/PM",
  19: "h:mm:ss AM/PM",
  20: "h:mm",
  21: "h:mm:ss",
  22: "m/d/yy h:mm",
  37: "#,##0 ;(#,##0)",
  38: "#,##0 ;[Red](#,##0)",
  39: "#,##0.00;(#,##0.00)",
  40: "#,##0.00;[Red](#,##0.00)",
  45: "mm:ss",
  46: "[h]:mm:ss",
  47: "mmss.0",
  48: "##0.0E+0",
  49: "@",
};

/** The number format of each cell style, by the style's number; undefined for General. */
export function readNumberFormats(
  archive: Archive,
  partName: string,
): Result<readonly (string | undefined)[]> {
  const written = new Map<number, string>();
  const formatOfStyle: number[] = [];
  let inCellStyles = false;
  const problem = readXml(archive, partName, {
    open: (name, attributes) => {
      if (name === "numFmt") {
        written.set(Number(attributes["numFmtId"]), attributes["formatCode"] ?? "General");
      }
      if (name === "cellXfs") inCellStyles = true;
      if (name === "xf" && inCellStyles) formatOfStyle.push(Number(attributes["numFmtId"] ?? 0));
      return null;
    },
    close: (name) => {
      if (name === "cellXfs") inCellStyles = false;
      return null;
    },
  });
  if (isProblem(problem)) return problem;
  return formatOfStyle.map((id) => {
    const format = written.get(id) ?? BUILT_IN[id];
    return format === undefined || /^general$/i.test(format) ? undefined : format;
  });
}
