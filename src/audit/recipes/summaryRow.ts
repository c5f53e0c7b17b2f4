/** Whether a row below recipes calls itself an average or a sum of them, and so is no recipe. */
export const isSummaryTitle = (title: string): boolean =>
  /^(average|mean|total|sum|mittel|durchschnitt|summe|min|max)\b/i.test(title);
