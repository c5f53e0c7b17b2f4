/** Parts between which no line ends, such as a number, its "±" and the unit; blank ones are left out. */
export const together = (...parts: readonly string[]): string =>
  parts.filter((part) => part !== "").join("\u00a0");
