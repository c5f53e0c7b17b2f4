import { parseArgs } from "node:util";
import type { DecimalMark } from "../workbook/csv/decimalMark";

export const AUDIT_USAGE = `Usage: npm run -s audit -- book.xlsx|table.csv [options]
  --json                    print the report as JSON (src/audit/report/report.schema.json)
  --html report.html        also write a page to read or print; an existing file is kept
  --replace                 let --html replace an existing file
  --accepted file.json      findings to accept: [{"finding": "<key>", "reason": "…"}]
  --corrections file.json   what is a recipe and what is none: entries like "correction" of --json
  --keys                    print the key of each finding, for --accepted
  --decimal comma|point     the decimal mark of a CSV file that does not tell
  --no-recalculation        take stored results as they are
Ends with 0 when nothing is found, 1 on errors or warnings, 2 when the file cannot be read.`;

export interface AuditArguments {
  readonly file: string;
  readonly json: boolean;
  readonly html: string | null;
  readonly replace: boolean;
  readonly accepted: string | null;
  readonly corrections: string | null;
  readonly keys: boolean;
  readonly decimal: DecimalMark | null;
  readonly recalculation: boolean;
}

const OPTIONS = {
  json: { type: "boolean" },
  html: { type: "string" },
  replace: { type: "boolean" },
  accepted: { type: "string" },
  corrections: { type: "string" },
  keys: { type: "boolean" },
  decimal: { type: "string" },
  "no-recalculation": { type: "boolean" },
  help: { type: "boolean", short: "h" },
} as const;

const MARKS: Readonly<Record<string, DecimalMark>> = { comma: ",", point: "." };

/** What could not be understood, in one sentence. */
export interface Misuse {
  readonly misuse: string;
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options: OPTIONS, allowPositionals: true });
  } catch (mishap) {
    const [, unknown] = /^Unknown option '([^']*)'/.exec((mishap as Error).message) ?? [];
    const misuse =
      unknown === undefined ? `${(mishap as Error).message}.` : `There is no option ${unknown}.`;
    return { misuse: misuse.replace(/\s+/g, " ").replace(/\.\.$/, ".") };
  }
}

/** Reads the command line of the audit; null asks for help. */
export function auditOptions(args: readonly string[]): AuditArguments | Misuse | null {
  const read = parsed(args);
  if ("misuse" in read) return read;
  const { values, positionals } = read;
  if (values.help === true) return null;
  const [file] = positionals;
  if (file === undefined) return { misuse: "No file is named." };
  if (positionals.length > 1) return { misuse: "One file is read at a time." };
  const decimal = values.decimal === undefined ? null : MARKS[values.decimal];
  if (decimal === undefined)
    return { misuse: `--decimal is comma or point, not "${values.decimal ?? ""}".` };
  return {
    file,
    json: values.json === true,
    html: values.html ?? null,
    replace: values.replace === true,
    accepted: values.accepted ?? null,
    corrections: values.corrections ?? null,
    keys: values.keys === true,
    decimal,
    recalculation: values["no-recalculation"] !== true,
  };
}
