const MULTIPLIES = /^[^+]*[*/][^+]*$/;

/** Whether a formula multiplies or divides and adds nothing. */
export const onlyMultiplies = (formula: string): boolean => MULTIPLIES.test(formula);
