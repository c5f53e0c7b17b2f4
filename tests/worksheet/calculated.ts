/** Value of a sum as it stands on the board: numbers, + - × /, brackets, ln(…). A calculator for the tests. */
export function calculated(sum: string): number {
  const tokens = sum.match(/ln|\d+(?:\.\d+)?(?:e[-+]?\d+)?|[-+×/()]/g) ?? [];
  if (tokens.join("") !== sum.replaceAll(" ", "")) throw new Error(`not a sum: ${sum}`);
  let at = 0;
  const take = (...wanted: readonly string[]): string | null =>
    wanted.includes(tokens[at] ?? "") ? tokens[at++]! : null;
  const factor = (): number => {
    if (take("-")) return -factor();
    if (take("ln")) return Math.log(factor());
    if (take("(")) {
      const inner = terms();
      if (!take(")")) throw new Error(`bracket left open: ${sum}`);
      return inner;
    }
    return Number(tokens[at++]);
  };
  const product = (): number => {
    let value = factor();
    for (let sign = take("×", "/"); sign; sign = take("×", "/")) {
      value = sign === "×" ? value * factor() : value / factor();
    }
    return value;
  };
  const terms = (): number => {
    let value = product();
    for (let sign = take("+", "-"); sign; sign = take("+", "-")) {
      value = sign === "+" ? value + product() : value - product();
    }
    return value;
  };
  return terms();
}
