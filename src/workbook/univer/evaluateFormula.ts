import {
  AstTreeBuilder,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  Interpreter,
  Lexer,
  LexerNode,
  type FunctionVariantType,
} from "@univerjs/engine-formula";
import { gridAnswer, type GridAnswer } from "./gridAnswer";
import { GRID_UNIT, gridSheetId } from "./gridSnapshot";
import type { GridEngine } from "./openEngine";

type FormulaTree = NonNullable<ReturnType<AstTreeBuilder["parse"]>>;

function parse({ injector }: GridEngine, formula: string): FormulaTree | null {
  if (!formula.startsWith("=") || formula.slice(1).trim() === "") return null;
  try {
    const lexed = injector.get(Lexer).treeBuilder(formula);
    if (!(lexed instanceof LexerNode)) return null;
    return injector.get(AstTreeBuilder).parse(lexed) ?? null;
  } catch {
    // The engine's parser has no other way to say that it cannot read a text.
    return null;
  }
}

async function run({ injector }: GridEngine, node: FormulaTree): Promise<FunctionVariantType> {
  const interpreter = injector.get(Interpreter);
  const task = { node, refOffsetX: 0, refOffsetY: 0 };
  return interpreter.checkAsyncNode(node)
    ? interpreter.executeAsync(task)
    : interpreter.execute(task);
}

/** Answers a formula as if it stood in the first sheet's first cell; null when it cannot be read. */
export async function evaluateFormula(
  engine: GridEngine,
  formula: string,
): Promise<GridAnswer | null> {
  const { injector, book } = engine;
  injector.get(IFormulaCurrentConfigService).loadDataLite();
  const runtime = injector.get(IFormulaRuntimeService);
  runtime.reset();
  const node = parse(engine, formula);
  if (node === null) return null;
  const sheet = book.getActiveSheet();
  const [rows, columns] = [sheet.getRowCount(), sheet.getColumnCount()];
  runtime.setCurrent(0, 0, rows, columns, gridSheetId(0), GRID_UNIT);
  return gridAnswer(await run(engine, node));
}
