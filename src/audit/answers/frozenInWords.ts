const HARD = "(?:hard|solid|stiff|hart|fest|steif)";
/** What most labels do not say is not looked for with all that has to stand around it. */
const SAYS_HARD = new RegExp(HARD, "iu");
const IN_THE_COLD =
  "(?= (?:(?:at|by|below|under|bei|ab|unter) ?[-−–] ?\\d|in (?:the|a|our|der) \\p{L}*(?:freezer|cabinet|cold|truhe|vitrine)|im \\p{L}*(?:schrank|froster|fach))";
const SHARE = "(?:%|\\bper ?cent\\b|\\bprozent\\b|\\bshare\\b|anteil\\b)";
const WATER = "\\b(?:water|wassers?)\\b";
/** "Solid (%)", "fest, in Prozent": the unit right behind. */
const IN_PERCENT = "(?=,? ?[([]?(?:in )?(?:%|per ?cent\\b|prozent\\b))";

/**
 * "Of its water, hard at −14 °C", "hard at −14 °C, % of the water", "% of that water solid", "vom Wasser fest (%)":
 * water that is hard in the cold, or a share of it that is hard, is ice.
 */
const HARD_WATER = new RegExp(
  `(?<=${SHARE}.{0,20}${WATER}.{0,20}\\b)${HARD}\\b|(?<=${WATER}.{0,20}\\b)${HARD}(?:${IN_PERCENT}|${IN_THE_COLD}))|\\b${HARD}${IN_THE_COLD}.*(?:of|vom|des|%).*${WATER})`,
  "iu",
);

/** "Slush starts at (°C)", "first crystals show": what is seen of the first ice. */
const SLUSH =
  /\b(slush|slurry|matsch|sulz)(?= (first )?(starts?|begins?|comes?|forms?|shows?|appears?|beginnt|kommt|entsteht)\b)/iu;

/** A label that calls the ice in a mix by what it looks and feels like, in plain words. */
export const frozenInWords = (label: string): string =>
  (SAYS_HARD.test(label) ? label.replace(HARD_WATER, "frozen") : label).replace(SLUSH, "freezing");
