import { NAMESPACE } from "../../src/worksheet/namespace";

/** An argument as a cell would hold it: a text, a number, or a block of them. */
export type FormulaArgument = Scalar | readonly (readonly Scalar[])[];

type Scalar = string | number;

const cellText = (cell: Scalar): string =>
  typeof cell === "string" ? `"${cell.replace(/"/g, '""')}"` : String(cell);

const argumentText = (argument: FormulaArgument): string =>
  typeof argument === "object"
    ? `{${argument.map((row) => row.map(cellText).join(",")).join(";")}}`
    : cellText(argument);

/** A call as one types it, without the "=": RIME.SOLUTE("sucrose","molar mass"). */
export const callText = (name: string, args: readonly FormulaArgument[]): string =>
  `${NAMESPACE}.${name}(${args.map(argumentText).join(",")})`;
