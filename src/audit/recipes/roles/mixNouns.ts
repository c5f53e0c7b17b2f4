/**
 * What cooks and teachers call the whole of what is frozen, as a pattern for plain words: "of the mix", "in der
 * Eismasse". Common practice, no source.
 */
export const MIX_NOUNS =
  "(mix(ture)?|mass|bar|batch|base|weight|lot|everything|recipe|product|ice ?cream|gelato|sorbets?|sherbet|granita|slush|masse|gesamtmasse|gesamtmischung|grundmasse|grundmischung|eismasse|eismix|mischung|gemisch(es)?|ansatz|basis|rezepts?|rezeptur|formel|formula(tion)?|blend|produkts?|samples?|specimen|proben?|prüflings?|pops?|dessert|speiseeis(es)?)";
