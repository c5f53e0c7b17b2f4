import type { Words } from "./words";

const VESSEL =
  "(bowl|pot|pan|jug|tub|bucket|vat|mixer|machine|schüssel|topf|eimer|kanne|kessel|wanne|maschine|scales?|waage)";

/**
 * Labels of the weight of what was mixed, which below a list is its sum and over a column heads the amounts: the
 * position tells.
 */
export const lotWords: Words = new RegExp(
  `^(the |das |die |der )?((batch|mix|recipe|lot|base|ansatz|chargen?|rezept|misch|end|net(to)?|final|finished|fertig\\w*)[ -]?(mix|batch|lot|base)?[ -]?(weight|wt|mass|amount|gewicht|masse|menge|mischung)|(finished|final|fertige[rs]?) (mix|batch|lot|base|ansatz)|(all )?(in|into|on) (the )?${VESSEL}|(im|in (der|dem|die|den)|auf der) ${VESSEL}|((the |die |der |das )?(mix|mixture|batch|masse|mischung|ansatz|charge|eismasse|eismischung|grundmasse)$))\\b(?!.*(target|soll|\\b(per|pro|je)\\b))`,
);
