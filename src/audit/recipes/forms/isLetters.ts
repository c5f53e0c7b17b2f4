/** "Kf", "ΔT", "m(w)", "T_f". */
const LETTERS = /^([^\s()]{1,3}|\p{L}{1,3}(_[^\s()]{1,6}|\([^()]{1,8}\)))$/u;

/** Whether a label is the letters that stand for a quantity in formulas. */
export const isLetters = (label: string): boolean => LETTERS.test(label);
