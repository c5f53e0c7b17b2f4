const PLAIN_SUM = /^\s*SUM\s*\([$A-Z0-9:,;\s]+\)\s*$/i;

/** Whether a formula adds up cells of its own sheet and does nothing else: "SUM(B5:F5)". */
export const isPlainSum = (formula: string): boolean => PLAIN_SUM.test(formula);
