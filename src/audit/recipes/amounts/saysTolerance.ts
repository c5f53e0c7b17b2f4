/** How far a weighing may be off, and what is weighed with it: grams, but of no recipe. */
const TOLERANCE =
  /^((max|zul|zulässige?r?|erlaubte?r?|allowed|permitted|maximum|maximale?)\.? )?(±|\+ ?\/ ?[-−–])|toleran|\btol\.|abweich|\babw\.|deviation|\bspread\b|streuung|spielraum|\bmargin|(mess|wäge|waagen)?fehler\b|\berrors?\b|unsicherheit|uncertaint|genauigkeit|\baccuracy|\bprecision|ablesbarkeit|readability|\b(tara|tare)\b|leergewicht|\bempty\b|^(allowed|erlaubt|zulässig)\b/i;
/** "Weighed in, with tolerance (g)" is an amount. */
const TOGETHER = /\b(with|incl\w*|plus|mit|inkl\w*|samt|einschließlich|ohne|without)\b/i;

/** Whether a heading of grams says how exactly something is weighed, or in what, not how much of it. */
export const saysTolerance = (heading: string): boolean =>
  TOLERANCE.test(heading) && !TOGETHER.test(heading);
