const TOKEN = /"(?:[^"]|"")*"|'(?:[^']|'')*'|[\p{L}_][\p{L}\p{N}_.]*|[\s\S]/gu;
const NAME = /^[\p{L}_][\p{L}\p{N}_.]*$/u;

/** A call of LET or LAMBDA and the names that it gives, in small letters; other brackets give none. */
interface Scope {
  readonly gives: "LET" | "LAMBDA" | null;
  readonly from: number;
  to: number;
  readonly names: Set<string>;
  argument: number;
  begin: number;
}

function opened(tokens: readonly string[], at: number): Scope {
  const called = tokens[at - 1]?.toUpperCase();
  const gives = tokens[at] === "(" && (called === "LET" || called === "LAMBDA") ? called : null;
  return { gives, from: at, to: tokens.length, names: new Set(), argument: 0, begin: at + 1 };
}

/** An argument ends at a comma: in LET every other one is a name, in LAMBDA all but the last. */
function endArgument(scope: Scope | undefined, tokens: readonly string[], at: number): void {
  if (scope === undefined || scope.gives === null) return;
  const text = tokens.slice(scope.begin, at).join("").trim();
  const mayBeName = scope.gives === "LAMBDA" || scope.argument % 2 === 0;
  if (mayBeName && NAME.test(text)) scope.names.add(text.toLowerCase());
  scope.argument += 1;
  scope.begin = at + 1;
}

function scopesIn(tokens: readonly string[]): Scope[] {
  const [open, all]: [Scope[], Scope[]] = [[], []];
  tokens.forEach((token, at) => {
    if (token === "(" || token === "{") {
      const scope = opened(tokens, at);
      open.push(scope);
      all.push(scope);
    } else if (token === ")" || token === "}") {
      const scope = open.pop();
      if (scope !== undefined) scope.to = at;
    } else if (token === ",") endArgument(open.at(-1), tokens, at);
  });
  return all.filter(({ names }) => names.size > 0);
}

/** LET(x,2,x*2) as files hold it, LET(_xlpm.x,2,_xlpm.x*2): Excel shows #NAME? without ([MS-XLSX] 2.2.2). */
export function withParameterMarks(formula: string): string {
  if (!/\b(?:LET|LAMBDA)\(/i.test(formula)) return formula;
  const tokens = formula.match(TOKEN) ?? [];
  const scopes = scopesIn(tokens);
  return tokens
    .map((token, at) => {
      const name = token.toLowerCase();
      const isGiven = scopes.some(({ names, from, to }) => from < at && at < to && names.has(name));
      return isGiven && tokens[at + 1] !== "!" ? `_xlpm.${token}` : token;
    })
    .join("");
}
