import type { Voice } from "../caterers/words";

export const HOME: Voice = {
  lead: "There is in it:",
  honey: "Honey: none for babies, not before their first birthday (12 months).",
  alcohol: "Contains alcohol: not for children, not in pregnancy, not before driving.",
  nuts: "Whole nuts: a choking hazard, not for under 5s.",
  egg: "Raw egg yolk: heat to 71 °C or take pasteurised.",
};

export const SHOP: Voice = {
  lead: "Tell guests, contains:",
  honey: "With honey, not for infants under 12 months.",
  alcohol: "With alcohol, adults only, not for pregnant women or drivers.",
  nuts: "Whole nuts, choking hazard for children under 5.",
  egg: "Raw egg yolk, the mix is heated to 71 °C.",
};

export const LADEN: Voice = {
  lead: "Für die Tafel, enthält:",
  honey: "Mit Honig: nichts für Babys unter 12 Monaten.",
  alcohol: "Mit Alkohol: nicht für Kinder, Schwangere und Fahrer.",
  nuts: "Ganze Nüsse: Erstickungsgefahr für Kinder unter 5 Jahren.",
  egg: "Rohes Eigelb: Masse auf 71 °C erhitzen.",
};

export const DAHEIM: Voice = {
  lead: "Da ist drin:",
  honey: "Honig, also nicht für Kinder unter 12 Monaten.",
  alcohol: "Alkohol, also nicht für Kinder, nicht in der Schwangerschaft, nicht vor dem Fahren.",
  nuts: "Ganze Nüsse, Erstickungsgefahr: nicht für Kinder unter 5 Jahren.",
  egg: "Rohes Eigelb: auf 71 °C erhitzen oder pasteurisiertes kaufen.",
};
