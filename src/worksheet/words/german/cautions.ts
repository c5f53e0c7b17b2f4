import { textureWords } from "./textureWords";

/** CAUTIONS, CHECK and TEXTURE. */
export const cautionSentences: Readonly<Record<string, string>> = {
  "Contains honey: not for children under 12 months (infant botulism); freezing and cooking do not make it safe.":
    "Enthält Honig: nicht für Kinder unter 12 Monaten (Säuglingsbotulismus); Gefrieren und Kochen machen ihn nicht sicher.",
  "Contains raw egg: use pasteurised egg or heat the mix to 71 °C (160 °F), above all for children, in pregnancy, for the old and the ill.":
    "Enthält rohes Ei: pasteurisiertes nehmen oder die Mischung auf 71 °C erhitzen, vor allem für Kinder, Schwangere, Alte und Kranke.",
  "Contains raw milk: pasteurise it; freezing does not kill its germs.":
    "Enthält Rohmilch: pasteurisieren; Gefrieren tötet ihre Keime nicht.",
  "Contains raw flour: bake or heat-treat it first; freezing does not kill its germs.":
    "Enthält rohes Mehl: vorher backen oder erhitzen; Gefrieren tötet seine Keime nicht.",
  "Contains alcohol: not for children, in pregnancy, for those who drive or must not drink; freezing does not remove it, and sale may need a licence.":
    "Enthält Alkohol: nicht für Kinder, Schwangere, Fahrende und wer nicht trinken darf; Gefrieren entfernt ihn nicht, und der Verkauf kann eine Erlaubnis brauchen.",
  "Contains glycerol: not for children under 7, and sparingly for children up to 10 (low blood sugar, drowsiness, after slush drinks).":
    "Enthält Glycerin: nicht für Kinder unter 7 und sparsam bis 10 Jahre (Unterzuckerung und Benommenheit nach Slush-Getränken).",
  "Contains propylene glycol: a carrier of flavours, limited to 2.5 % of frozen dairy sweets in the US; not a means to soften ice.":
    "Enthält Propylenglykol: ein Träger von Aromen, in den USA auf 2,5 % von gefrorenen Milchdesserts begrenzt; kein Mittel, um Eis weich zu machen.",
  "Contains whole or coarse nuts: not for children under 5, who may choke on them; grind them or use a paste.":
    "Enthält ganze oder grobe Nüsse: nicht für Kinder unter 5 Jahren, die sich daran verschlucken können; mahlen oder Mus nehmen.",
  "Contains sugar alcohols: above 10 % of the food, excessive consumption may produce laxative effects.":
    "Enthält Zuckeralkohole: über 10 % des Lebensmittels kann übermäßiger Verzehr abführend wirken.",
  "Contains xylitol, which is poisonous to dogs, even a little of it.":
    "Enthält Xylit, der schon in kleiner Menge giftig für Hunde ist.",
  "Not a food: for the class-room only, never in anything that is eaten.":
    "Kein Lebensmittel: nur für den Unterricht, nie in etwas, das gegessen wird.",
  "Allergens: {allergens}.": "Allergene: {allergens}.",
  "{allergens}; depending on the maker: {byMaker} (read the label)":
    "{allergens}; je nach Hersteller: {byMaker} (Etikett lesen)",
  "depending on the maker: {byMaker} (read the label)":
    "je nach Hersteller: {byMaker} (Etikett lesen)",
  "none by its nature": "von Natur aus keine",
  unknown: "unbekannt",
  "none known": "keine bekannt",
  "every recipe": "jedes Rezept",
  "the whole mix": "die ganze Mischung",
  "Traces from other foods made with the same tools cannot be computed: this is no statement that anything is free from an allergen.":
    "Spuren anderer Lebensmittel von denselben Geräten lassen sich nicht berechnen: Dies sagt von nichts, es sei frei von einem Allergen.",
  "Freezing point not answered: {reason}": "Gefrierpunkt nicht beantwortet: {reason}",
  "Extrapolated: the mix freezes at {point} °C, and the curve of {name} has been checked down to {checked} °C.":
    "Fortgesetzt: Die Mischung gefriert bei {point} °C, und die Kurve von {name} ist bis {checked} °C geprüft.",
  "Freezing kills neither bacteria nor viruses: what was unsafe before stays so.":
    "Gefrieren tötet weder Bakterien noch Viren: Was vorher unsicher war, bleibt es.",
  "What has thawed and stood warm is not frozen again.":
    "Was aufgetaut ist und warm stand, wird nicht wieder eingefroren.",
  "A water activity computed here is no release of a shelf life.":
    "Eine hier berechnete Wasseraktivität gibt keine Haltbarkeit frei.",
  "Very cold bars, metal and salted ice burn skin, lips and tongue: let them warm a little, and use gloves.":
    "Sehr kalte Riegel, Metall und gesalzenes Eis verbrennen Haut, Lippen und Zunge: etwas wärmer werden lassen, Handschuhe tragen.",
  "Hard-frozen cubes and sticks can choke small children or hurt them when they fall.":
    "An hart gefrorenen Würfeln und Stielen können kleine Kinder ersticken oder sich beim Fallen verletzen.",
  "Local food law, the label of each ingredient and licensed advice go before anything said here.":
    "Örtliches Lebensmittelrecht, das Etikett jeder Zutat und fachlicher Rat gehen allem hier Gesagten vor.",
  "Lactose may crystallise and feel sandy in storage: {grams} g per 100 g of water, and up to {most} is usual.":
    "Lactose kann im Lager kristallisieren und sandig werden: {grams} g je 100 g Wasser, üblich sind bis {most}.",
  "More {name} than dissolves at 20 °C: {grams} g per 100 g of water, and {most} dissolve.":
    "Mehr {name}, als sich bei 20 °C löst: {grams} g je 100 g Wasser, und {most} lösen sich.",
  "Common practice, no source": "Übliche Praxis, keine Quelle",
  "Computed by this project; the method is in DEVELOPERS.md":
    "Von diesem Projekt berechnet; das Verfahren steht in DEVELOPERS.md",
  "weighed by the user": "selbst gewogen",
  "the user's own range; no source stated": "eigener Bereich, ohne Quelle",

  "meets {target}": "trifft {target}",
  "too hard: {percent} % of the {basis} is ice at {temperature} °C, target {from}–{to} %":
    "zu hart: {percent} % {basis} sind Eis bei {temperature} °C, Ziel {from}–{to} %",
  "too soft: {percent} % of the {basis} is ice at {temperature} °C, target {from}–{to} %":
    "zu weich: {percent} % {basis} sind Eis bei {temperature} °C, Ziel {from}–{to} %",
  ...textureWords,
  "{texture} below {limit}": "{texture} unter {limit}",
  "{texture} above": "darüber {texture}",
};
