import { badInput, isProblem, type Problem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import type { Archive } from "./archive";
import { LIMITS } from "./limits";
import { plainText } from "./plainText";
import { readXml } from "./readXml";

/** The workbook's table of texts; pieces of rich text are joined, phonetic guides left out. */
export function readSharedStrings(archive: Archive, partName: string): Result<readonly string[]> {
  const strings: string[] = [];
  let current = "";
  let phonetic = 0;
  const problem: Problem | null = readXml(archive, partName, {
    open: (name) => {
      if (name === "si") current = "";
      if (name === "rPh") phonetic += 1;
      return null;
    },
    close: (name, text) => {
      if (name === "t" && phonetic === 0) current += text;
      if (name === "rPh") phonetic -= 1;
      if (name === "si") strings.push(plainText(current));
      return strings.length > LIMITS.texts
        ? badInput(`The workbook has more than ${LIMITS.texts} different texts.`)
        : null;
    },
  });
  return isProblem(problem) ? problem : strings;
}
