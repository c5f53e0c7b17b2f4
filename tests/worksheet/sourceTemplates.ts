import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";

/** A text of the sources. */
export interface SourceTemplate {
  readonly file: string;
  /** As it would read with "3" in its holes, nothing in those that go on a word, and a place before a colon. */
  readonly sample: string;
  /** Whether it is said to the user as a problem: an argument of badInput or outsideValidity. */
  readonly isProblem: boolean;
}

const SRC = path.join(__dirname, "..", "..", "src");
const PROBLEMS = new Set(["badInput", "outsideValidity"]);

function sampleOf(node: ts.Node): string | null {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text;
  if (!ts.isTemplateExpression(node)) return null;
  return node.templateSpans.reduce((text, { literal }) => {
    const goesOn = /[A-Za-z.]$/.test(text);
    const isPlace = text === "" && literal.text.startsWith(": ");
    return `${text}${goesOn ? "" : isPlace ? "items" : "3"}${literal.text}`;
  }, node.head.text);
}

const isProblemCall = (node: ts.Node): boolean =>
  ts.isCallExpression(node) && PROBLEMS.has(node.expression.getText());

/** A text within a hole of a sentence is a part of it, not one of its own. */
function templatesIn(file: string, source: ts.SourceFile): SourceTemplate[] {
  const found: SourceTemplate[] = [];
  const visit = (node: ts.Node, inCall: boolean): void => {
    if (ts.isImportDeclaration(node) || ts.isLiteralTypeNode(node)) return;
    const sample = sampleOf(node);
    if (sample !== null) found.push({ file, sample, isProblem: inCall });
    const goesOn = (inCall || isProblemCall(node)) && sample === null;
    ts.forEachChild(node, (child) => visit(child, goesOn));
  };
  visit(source, false);
  return found;
}

/** Every text in the sources of some rooms. */
export function sourceTemplates(...rooms: readonly string[]): SourceTemplate[] {
  return rooms.flatMap((room) =>
    readdirSync(path.join(SRC, room), { recursive: true, encoding: "utf8" })
      .filter((name) => /\.tsx?$/.test(name) && !name.includes("words/"))
      .flatMap((name) => {
        const file = path.join(room, name);
        const text = readFileSync(path.join(SRC, file), "utf8");
        return templatesIn(file, ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true));
      }),
  );
}
