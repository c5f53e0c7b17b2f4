import type { Injector, IRange } from "@univerjs/core";
import {
  BaseFunction,
  BaseReferenceObject,
  ErrorType,
  ErrorValueObject,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  type BaseValueObject,
  type IArrayFormulaRangeType,
} from "@univerjs/engine-formula";

const NO_SPILL = "The cell before # holds no formula that fills more than its own cell.";

/** What `A1#` means: the whole block that the formula in A1 fills. The file format writes ANCHORARRAY(A1). */
export class AnchorArray extends BaseFunction {
  override needsReferenceObject = true;

  constructor(private readonly injector: Injector) {
    super("ANCHORARRAY");
  }

  override calculate(anchor?: BaseValueObject | BaseReferenceObject): BaseValueObject {
    if (!(anchor instanceof BaseReferenceObject)) {
      return ErrorValueObject.create(ErrorType.REF, NO_SPILL);
    }
    const block = this.blockOf(anchor);
    return block === null
      ? ErrorValueObject.create(ErrorType.REF, NO_SPILL)
      : this.valuesIn(block, anchor);
  }

  /** Reads through the anchor's own reference, which knows where fresh values lie; it is put back after. */
  private valuesIn(block: IRange, anchor: BaseReferenceObject): BaseValueObject {
    const [range, { x, y }] = [anchor.getRangeData(), anchor.getRefOffset()];
    anchor.setRangeData(block);
    anchor.setRefOffset(0, 0);
    const values = anchor.toArrayValueObject(false);
    anchor.setRangeData(range);
    anchor.setRefOffset(x, y);
    return values;
  }

  /** The block as filled in this calculation, else as filled in an earlier one. */
  private blockOf(anchor: BaseReferenceObject): IRange | null {
    const { startRow, startColumn } = anchor.getRangePosition();
    const within = (blocks: IArrayFormulaRangeType): IRange | undefined =>
      blocks[anchor.getUnitId()]?.[anchor.getSheetId()]?.[startRow]?.[startColumn] ?? undefined;
    const runtime = this.injector.get(IFormulaRuntimeService).getUnitArrayFormula();
    const earlier = this.injector.get(IFormulaCurrentConfigService).getArrayFormulaRange();
    return within(runtime) ?? within(earlier) ?? null;
  }
}
