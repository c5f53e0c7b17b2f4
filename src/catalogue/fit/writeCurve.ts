import { format } from "prettier";
import type { FittedCurve } from "../fittedCurve";

/** File name of a solute: "sodium chloride" → "sodiumChloride", "1-propanol" → "onePropanol". */
export function fileNameOf(solute: string): string {
  return solute
    .replace(/^1-/, "one ")
    .replace(/^2-/, "two ")
    .replace(/[ -](\w)/g, (_, letter: string) => letter.toUpperCase());
}

/** The generated module of one solute's curve, as text. */
export function curveModule(solute: string, fitted: FittedCurve): Promise<string> {
  const source = `// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const ${fileNameOf(solute)}Fit: FittedCurve = ${JSON.stringify(fitted)};
`;
  return format(source, { parser: "typescript", printWidth: 100, quoteProps: "as-needed" });
}
