/** How many decimals a number has as it was typed. */
export function decimalsOf(value: number): number {
  const [, decimals = "", exponent = "0"] = /\.(\d+)(?:e([-+]\d+))?$/.exec(String(value)) ?? [];
  return Math.max(0, decimals.length - Number(exponent));
}
