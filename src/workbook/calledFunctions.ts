/** Names of the functions a formula calls, as written; quoted texts are passed over. */
export function calledFunctions(formula: string): readonly string[] {
  const bare = formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, '""');
  return [...bare.matchAll(/([A-Z_][A-Z0-9_.]*)\(/gi)].map(([, name = ""]) => name);
}
