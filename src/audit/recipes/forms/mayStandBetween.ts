const LONGEST = 10;
/** By which formula a value is worked out: "ΔT = Kf · b", "n · i". */
const IN_LETTERS =
  /^(?=.{1,40}$)[\p{L}\p{N}Δ₀-₉_()'., −+*/:·×∙⋅=^-]*[=·×∙⋅*/:][\p{L}\p{N}Δ₀-₉_()'., −+*/:·×∙⋅=^-]*$/u;

/** Whether words between a label and its value may be its symbol, its unit or its formula in letters. */
export const mayStandBetween = (text: string): boolean =>
  text.length <= LONGEST || IN_LETTERS.test(text);
