import type { WorkbookValue } from "../model";
import { plainText } from "./plainText";

const MS_PER_DAY = 86_400_000;
/** Serial number 0 of the 1900 date system as it counts from March 1900 on. */
const SERIAL_ORIGIN_MS = Date.UTC(1899, 11, 30);

function dateSerial(text: string): WorkbookValue {
  const ms = Date.parse(/[zZ]|[+-]\d\d:\d\d$/.test(text) || text.length <= 10 ? text : `${text}Z`);
  return Number.isNaN(ms) ? text : (ms - SERIAL_ORIGIN_MS) / MS_PER_DAY;
}

/** A cell's value from its type mark (ECMA-376 18.18.11) and text; undefined when the file contradicts itself. */
export function cellValue(
  type: string | undefined,
  text: string,
  sharedStrings: readonly string[],
): WorkbookValue | undefined {
  switch (type) {
    case "s":
      return sharedStrings[Number(text)];
    case "b":
      return text.trim() === "1" || text.trim().toLowerCase() === "true";
    case "e":
      return { error: text };
    case "str":
    case "inlineStr":
      return plainText(text);
    case "d":
      return dateSerial(text);
    default: {
      const number = Number(text);
      // xsd:double knows no other base than ten.
      return text.trim() === "" || !Number.isFinite(number) || /^\s*0[xob]/i.test(text)
        ? undefined
        : number;
    }
  }
}
