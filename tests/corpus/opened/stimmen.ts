import type { Voice } from "./own";

/** How a club's treasurer puts it. */
export const VEREIN: Voice = {
  lead: "Aushang: enthält",
  honey: "Mit Honig, nicht für Babys unter 12 Monaten.",
  alcohol: "Mit Alkohol, nur für Erwachsene, nicht für Schwangere und Fahrer.",
  nuts: "Mit ganzen Nüssen, Verschluckungsgefahr für Kinder unter 5 Jahren.",
  egg: "Mit rohem Eigelb, Masse auf 71 °C erhitzen oder pasteurisiertes nehmen.",
};

/** How a delicatessen puts it. */
export const LADEN: Voice = {
  lead: "Zutatenschild: enthält",
  honey: "Enthält Honig: für Säuglinge unter 12 Monaten nicht geeignet.",
  alcohol: "Enthält Alkohol: nicht für Kinder, nicht in der Schwangerschaft, nicht vor der Fahrt.",
  nuts: "Enthält ganze Nüsse: Erstickungsgefahr bei Kindern unter 5 Jahren.",
  egg: "Rohes Eigelb: auf 71 °C erhitzen, sonst pasteurisierte Ware.",
};

/** How a nursery's cook puts it. */
export const KITA: Voice = {
  lead: "Allergene:",
  honey: "Honig! Nicht für Krippenkinder unter 12 Monaten.",
  alcohol: "Alkohol! Nur fürs Team, nichts für Kinder und Schwangere, nicht vor dem Fahren.",
  nuts: "Ganze Nüsse! Verschlucken: nichts für Kinder unter 5 Jahren.",
  egg: "Rohes Eigelb! Auf 71 °C erhitzen oder pasteurisiert kaufen.",
};

/** How a fruit growers' association puts it. */
export const OBST: Voice = {
  lead: "Auf dem Schild steht: enthält",
  honey: "Honig, nichts für Kinder unter 12 Monaten.",
  alcohol: "Alkohol, nichts für Kinder, Schwangere und Autofahrer.",
  nuts: "Ganze Nüsse, Kleinkinder unter 5 Jahren können sich verschlucken.",
  egg: "Rohes Eigelb, auf 71 °C erhitzen oder pasteurisiert nehmen.",
};

/** How a pensioner puts it. */
export const RENTNER: Voice = {
  lead: "enthält",
  honey: "Honig, nicht für den Enkel unter 12 Monaten",
  alcohol: "Alkohol, nicht für Kinder, Schwangere oder wer fährt",
  nuts: "ganze Nüsse, Erstickungsgefahr unter 5 Jahren",
  egg: "rohes Eigelb, 71 °C oder pasteurisiert",
};
