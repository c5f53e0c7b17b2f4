const SUMS = /\b(SUM|SUBTOTAL|AGGREGATE|AVERAGE|MIN|MAX|COUNT|MEDIAN)\s*\(/i;

/** Whether a formula sums up cells, as a line of totals or of means does. */
export const sumsUp = (formula: string): boolean => SUMS.test(formula);
