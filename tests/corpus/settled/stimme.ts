import type { Voice } from "../caterers/words";

/** How these people put what the eater has to know; each begins differently. */
export const stimme = (lead: string): Voice => ({
  lead,
  honey: "Honig enthalten, nicht für Säuglinge unter 12 Monaten.",
  alcohol: "Alkohol enthalten, nicht für Kinder und Schwangere, nicht vor dem Autofahren.",
  nuts: "Ganze Nüsse enthalten, Erstickungsgefahr bei Kindern unter 5 Jahren.",
  egg: "Rohes Eigelb: auf 71 °C bringen oder pasteurisiert kaufen.",
});
