import { BooleanNumber, type Injector } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { FunctionType, type IFunctionInfo } from "@univerjs/engine-formula";
import type { ErrorMessages, ReportMessage } from "./errorMessages";
import type { GridFunction } from "./gridFunction";
import { installFunctions } from "./installFunctions";

/** The facade's door for descriptions; it recalculates the workbook afterwards. */
interface FormulaFacade {
  registerFunction(config: { calculate: []; description: IFunctionInfo[] }): unknown;
}

/** What a user reads of a function while typing it. */
export type FunctionDescription = Omit<GridFunction, "invoke">;

function descriptionOf({ name, summary, parameters }: FunctionDescription): IFunctionInfo {
  return {
    functionName: name,
    functionType: FunctionType.User,
    description: summary,
    abstract: summary,
    functionParameter: parameters.map((parameter) => ({
      name: parameter.name,
      detail: parameter.description,
      example: parameter.name,
      require: parameter.optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: BooleanNumber.FALSE,
    })),
  };
}

/**
 * Makes our functions known to a Univer spreadsheet, with descriptions for autocompletion, and has it
 * recalculate. Call it once, after the first workbook exists; it serves the browser's preset and the one for Node.
 *
 * @param report told whenever a cell gets or loses the sentence that explains its error
 * @returns where the sentence of an error in a cell can be looked up
 */
export function registerFunctions(
  univerAPI: FUniver,
  functions: readonly GridFunction[],
  report?: ReportMessage,
): ErrorMessages {
  const { _injector: injector } = univerAPI as unknown as { _injector: Injector };
  const messages = installFunctions(injector, functions, report);
  describeFunctions(univerAPI, functions);
  return messages;
}

/** Gives autocompletion its texts, in place of earlier ones. */
export function describeFunctions(
  univerAPI: FUniver,
  descriptions: readonly FunctionDescription[],
): void {
  const facade = univerAPI as unknown as FormulaFacade;
  facade.registerFunction({ calculate: [], description: descriptions.map(descriptionOf) });
}
