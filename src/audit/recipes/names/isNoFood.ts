const NO_FOOD =
  /\b(sticks?|box(es)?|labels?|wrappers?|bags?|cups? and lids?|lids?|tubs?|moulds?|molds?|napkins?|packaging|labou?r|work|energy|electricity|rent|delivery|stiele?|schachteln?|etiketten?|verpackung|arbeit\w*|strom|miete)\b/i;

/** Whether a row of a costing sheet is packaging, work or rent and no food. Common practice, no source. */
export const isNoFood = (name: string): boolean => NO_FOOD.test(name);
