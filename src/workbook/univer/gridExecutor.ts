import {
  BaseFunction,
  ErrorType,
  ErrorValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import { answerToGrid } from "./answerToGrid";
import { argumentFromGrid } from "./argumentFromGrid";
import type { GridFunction } from "./gridFunction";

const refuse = (message: string): BaseValueObject =>
  ErrorValueObject.create(ErrorType.VALUE, message);

/**
 * One of our functions inside the grid's formula engine. It is registered as the engine's own functions
 * are, not through the public door for custom functions: there blanks arrive as 0, text that looks like a
 * number arrives as one, answers lose their last digits, and an error has no room for its sentence.
 */
export class GridExecutor extends BaseFunction {
  constructor(private readonly definition: GridFunction) {
    super(definition.name);
  }

  /** Text stays text: "50%" is not 0.5. */
  override isArgumentsIgnoreNumberPattern(): boolean {
    return true;
  }

  override calculate(...values: BaseValueObject[]): BaseValueObject {
    const { name, parameters, invoke } = this.definition;
    if (values.length > parameters.length) {
      return refuse(`${name} takes at most ${parameters.length} arguments, not ${values.length}.`);
    }
    const args = parameters.map((_parameter, index) => {
      const value = values[index];
      return value === undefined ? null : argumentFromGrid(value);
    });
    try {
      return answerToGrid(invoke(args));
    } catch (error) {
      // A defect of ours must not stop the calculation of every other cell.
      return refuse(`${name} failed: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
}
