import {
  ArrayValueObject,
  BaseFunction,
  NullValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";

/** What `@` before a function means: of an array, only its top left value. */
export class Single extends BaseFunction {
  constructor() {
    super("SINGLE");
  }

  override calculate(value?: BaseValueObject): BaseValueObject {
    if (value === undefined) return NullValueObject.create();
    return value instanceof ArrayValueObject ? value.getFirstCell() : value;
  }
}
