/** What a share is of, behind a stroke. "Tf / K" is in its unit, and so is "mass / g". */
const OVER_WHOLE =
  /(?<=\p{L}{3}) ?[/÷] ?(?!.*(?:\bbath|\bratio|bad\b|verhältnis))(?=(?:(?:the|all|total|whole|alles|alle[ms]?|ganzes|gesamtes) )*(?:(?:gesamt)?wasser|water|(?:whole |eis)?mix|(?:gesamt)?mischung)\b)/iu;

/** "Frozen / all water": one over the other is a share of it. */
export const quotientInWords = (label: string): string =>
  label.replace(OVER_WHOLE, " as a share of ");
