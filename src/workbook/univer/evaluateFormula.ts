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
import { referencedSheets } from "./referencedSheets";

type FormulaTree = NonNullable<ReturnType<AstTreeBuilder["parse"]>>;

// The engine takes "1 2" or "a" "b" for a name; a spreadsheet refuses such a formula.
const MISSING_OPERATOR = /(?<![\w.$:!])\d+(?:\.\d+)?\s+[\w("{]|_"\s+[\w("{]/;

const withoutTexts = (formula: string): string => formula.replace(/"(?:[^"]|"")*"/g, '_"');

function parse({ injector }: GridEngine, formula: string): FormulaTree | null {
  if (!formula.startsWith("=") || formula.slice(1).trim() === "") return null;
  if (MISSING_OPERATOR.test(withoutTexts(formula))) return null;
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

/** The engine reads an unknown sheet as the current one; the user must not take its cells for the answer. */
function missingSheet({ book }: GridEngine, formula: string): GridAnswer | null {
  const known = new Set(book.getSheets().map((sheet) => sheet.getName().toLowerCase()));
  const missing = referencedSheets(formula).find((name) => !known.has(name.toLowerCase()));
  if (missing === undefined) return null;
  return { error: "#REF!", message: `There is no sheet "${missing}" in the workbook.` };
}

/** Answers a formula as if it stood in the first sheet's first cell; null when it cannot be read. */
export async function evaluateFormula(
  engine: GridEngine,
  formula: string,
): Promise<{ readonly value: GridAnswer } | null> {
  const { injector, book } = engine;
  injector.get(IFormulaCurrentConfigService).loadDataLite();
  const runtime = injector.get(IFormulaRuntimeService);
  runtime.reset();
  const sheet = book.getActiveSheet();
  const [rows, columns] = [sheet.getRowCount(), sheet.getColumnCount()];
  runtime.setCurrent(0, 0, rows, columns, gridSheetId(0), GRID_UNIT);
  const tree = parse(engine, formula);
  if (tree === null) return null;
  return { value: missingSheet(engine, formula) ?? gridAnswer(await run(engine, tree)) };
}
