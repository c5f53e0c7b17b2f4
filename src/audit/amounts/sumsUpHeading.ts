/** Over what time or how many all lines are: "for the month", "this season", "der Woche", "in all". */
const OF_ALL =
  /\b(for|of|in|this|per|all|im|in der|der|des|diese[nrs]?|pro|aller?) ((the|whole|all|ganzen?|our|last) )*(day|week|weekend|month|season|year|summer|term|tour|round|trip|event|days|weeks|months|tag(es)?|woche|wochenende|monats?|saison|jahr(es)?|sommers?|halbjahr(es)?|tage|wochen|runde)\b|\b(in all|all told|altogether|all together|zusammen|insgesamt|gesamt)\b/i;
const PLAN =
  /budget|limit|cap\b|max|plan|target|ziel|soll|deposit|anzahlung|kaution|last|letzte|vor(jahr|monat|woche)/i;

/** Whether the words beside a number say that it is all of what the heading above it says: "Fees for the month" under "Fee (£)". */
export function sumsUpHeading(label: string, heading: string): boolean {
  const [noun = ""] = /\p{L}{3,}/u.exec(heading.toLowerCase()) ?? [];
  const isOfIt = noun !== "" && label.toLowerCase().includes(noun);
  return isOfIt && OF_ALL.test(label) && !PLAN.test(label);
}
