import type { Matrix } from "../foundation/cell";
import { worksheetFunctions } from "./functions";

const byName = new Map(worksheetFunctions.map((definition) => [definition.name, definition]));

/**
 * Calls a worksheet function as a cell would, for the pane, the audit and the command line: so that every
 * number shown anywhere is by construction the number in the cell.
 * @throws when there is no such function: our mistake, not the user's.
 */
export function callFunction(name: string, ...args: readonly unknown[]): Matrix {
  const definition = byName.get(name);
  if (definition === undefined) throw new Error(`There is no worksheet function ${name}.`);
  return definition.evaluate(args);
}
