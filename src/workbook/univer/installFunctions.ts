import type { Injector } from "@univerjs/core";
import {
  ErrorType,
  ErrorValueObject,
  IFunctionService,
  Interpreter,
  Lexer,
} from "@univerjs/engine-formula";
import { AnchorArray } from "./anchorArray";
import { repairArrayLiterals } from "./arrayLiterals";
import { boundRanges } from "./boundedRanges";
import { boundSpills } from "./boundedSpills";
import { keepErrorMessages, type ErrorMessages, type ReportMessage } from "./errorMessages";
import { formulaForEngine } from "./formulaText";
import { registerTitles } from "./tableTitles";
import { GridExecutor } from "./gridExecutor";
import type { GridFunction } from "./gridFunction";
import { repairNumberLiterals } from "./numberLiterals";
import { quickenIndex } from "./quickIndex";
import { Single } from "./single";

const ENGINE_FAILED = "The spreadsheet's engine could not calculate this formula.";

/** A built-in function that fails on odd arguments must not stop the calculation of every other cell. */
function keepCalculating(injector: Injector): void {
  const interpreter = injector.get(Interpreter);
  const execute = interpreter.execute.bind(interpreter);
  interpreter.execute = (task) => {
    try {
      return execute(task);
    } catch {
      return ErrorValueObject.create(ErrorType.VALUE, ENGINE_FAILED);
    }
  };
}

/** Puts our functions into a running formula engine and repairs what stands in their way there. */
export function installFunctions(
  injector: Injector,
  functions: readonly GridFunction[],
  report: ReportMessage = () => undefined,
): ErrorMessages {
  repairArrayLiterals();
  boundRanges();
  quickenIndex();
  const service = injector.get(IFunctionService);
  const ours = functions.map((each) => new GridExecutor(each));
  service.registerExecutors(new Single(), new AnchorArray(injector), ...ours);
  // Formulas met before the functions were there are remembered as #NAME?.
  service.deleteFormulaAstCacheKey(...functions.map(({ name }) => name));

  const lexer = injector.get(Lexer);
  const read = lexer.treeBuilder.bind(lexer);
  lexer.treeBuilder = (formula, ...rest) => read(formulaForEngine(formula), ...rest);
  repairNumberLiterals(injector);
  boundSpills(injector);
  registerTitles(injector);
  keepCalculating(injector);
  return keepErrorMessages(injector, report);
}
