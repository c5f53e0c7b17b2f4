import type { Voice } from "../caterers/words";

const voice = (lead: string, honey: string, alcohol: string, nuts: string, egg: string): Voice => ({
  lead,
  honey,
  alcohol,
  nuts,
  egg,
});

/** What teachers, lecturers and people who give courses say of an ice before it is eaten. */
export const VOICES = {
  set12: voice(
    "Allergens:",
    "Contains honey: not for infants under 12 months.",
    "Contains alcohol: adults only, not in pregnancy, not before driving.",
    "Whole nuts: choking hazard for children under 5.",
    "Raw egg yolk: heat the mix to 71 °C or use pasteurised yolk.",
  ),
  lecture: voice(
    "This batch contains the following allergens:",
    "Honey present, unsuitable for infants below 12 months.",
    "Alcohol present: adults only, not during pregnancy or before driving.",
    "Whole nuts present, a choking hazard below the age of 5.",
    "Raw egg yolk: pasteurise at 71 °C or buy pasteurised yolk.",
  ),
  evening: voice(
    "Allergy list:",
    "Honey in it, do not share with babies under 12 months.",
    "Alcohol in it, 21 and over, not if you are pregnant or drive home.",
    "Whole nuts in it, kids under 5 can choke.",
    "Raw yolk in it: heat to 71 °C, or use pasteurized yolk.",
  ),
  binder: voice(
    "Tell your guests: contains",
    "Honey is in it, so none for babies under 12 months.",
    "Alcohol is in it: not for children, pregnant women or drivers.",
    "Whole nuts are in it: under-fives may choke.",
    "Raw yolk is in it: take the mix to 71 °C or buy pasteurised yolk.",
  ),
  stall: voice(
    "Sign: contains",
    "HONEY, not under 12 months.",
    "ALCOHOL, over 18s only, not when pregnant or driving.",
    "WHOLE NUTS, choking risk under 5 years.",
    "RAW EGG YOLK, heat to 71 °C or pasteurised only.",
  ),
  dinner: voice(
    "contains",
    "made with honey, keep from babies under 12 months.",
    "made with alcohol, not for children, nor in pregnancy, nor before driving.",
    "whole nuts, small children under 5 may choke.",
    "raw egg yolk, cook to 71 °C or use pasteurised.",
  ),
  kurs: voice(
    "Enthaltene Allergene:",
    "Honig: kein Eis für Kinder unter 12 Monaten.",
    "Alkohol: nicht für Kinder, nicht in der Schwangerschaft, nicht vor dem Fahren.",
    "Ganze Nüsse: Erstickungsgefahr für Kinder unter 5 Jahren.",
    "Rohes Eigelb: Masse auf 71 °C erhitzen oder pasteurisiertes Eigelb verwenden.",
  ),
  berufsschule: voice(
    "",
    "Enthält Honig, für Säuglinge unter 12 Monaten nicht geeignet.",
    "Enthält Alkohol, nicht für Kinder, Schwangere und vor dem Autofahren.",
    "Enthält ganze Nüsse, Erstickungsgefahr bei Kindern unter 5 Jahren.",
    "Enthält rohes Eigelb, auf 71 °C erhitzen oder pasteurisierte Ware nehmen.",
  ),
  wahlpflicht: voice(
    "Vor dem Essen vorlesen: Es enthält",
    "Da ist Honig drin, nichts für Babys unter 12 Monaten.",
    "Da ist Alkohol drin, nichts für Kinder, Schwangere und wer noch fährt.",
    "Da sind ganze Nüsse drin, kleine Geschwister unter 5 Jahren können daran ersticken.",
    "Da ist rohes Eigelb drin, auf 71 °C erhitzen oder pasteurisiertes kaufen.",
  ),
  abend: voice(
    "Auf das Schild: enthält",
    "Mit Honig, deshalb nichts für Babys unter 12 Monaten.",
    "Mit Alkohol, deshalb nicht für Kinder, Schwangere und Fahrer.",
    "Mit ganzen Nüssen: unter 5 Jahren Erstickungsgefahr.",
    "Mit rohem Eigelb: auf 71 °C erhitzen oder pasteurisiertes nehmen.",
  ),
  werkstatt: voice(
    "Allergene laut Rezept:",
    "Honig, erst ab 12 Monaten.",
    "Alkohol, nur für Erwachsene, nicht für Schwangere, nicht vor der Fahrt.",
    "Ganze Nüsse, Erstickungsgefahr unter 5 Jahren.",
    "Eigelb roh, erst auf 71 °C erhitzen oder pasteurisiert kaufen.",
  ),
  buch: voice(
    "Drin ist:",
    "Honig, also keine Kinder unter 12 Monaten.",
    "Alkohol, also keine Kinder, keine Schwangeren, keine Autofahrer.",
    "ganze Nüsse, Kinder unter 5 Jahren können ersticken.",
    "rohes Eigelb, auf 71 °C bringen oder pasteurisiertes nehmen.",
  ),
} as const;
