import { anyOf } from "./anyOf";
import type { Words } from "./words";

const VESSEL =
  "(bowl|pot|pan|jug|tub|bucket|vat|mixer|machine|schüssel|topf|eimer|kanne|kessel|wanne|maschine|scales?|waage)";

const MIX =
  "(mix|mixture|batch|lot|base|masse|mischung|ansatz(es)?|charge|eismasse|eismischung|grundmasse)";
const WEIGHT = "(weight|wt|mass|amount|gewicht|masse|menge|mischung)";
const NOT_ITSELF = "\\b(?!.*(target|soll|\\b(per|pro|je)\\b))";

/**
 * Labels of the weight of what was mixed, which below a list is its sum and over a column heads the amounts: the
 * position tells.
 */
export const lotWords: Words = anyOf(
  ...[
    `(batch|mix|recipe|lot|base|ansatz|chargen?|rezept|misch|end|net(to)?|final|finished|fertig\\w*)[ -]?(mix|batch|lot|base)?[ -]?${WEIGHT}`,
    `(finished|final|fertige[rs]?) ${MIX}`,
    `(weight|mass|gewicht|masse) (of|des|der|von) (the |all )?(whole |finished |fertigen |ganzen )?${MIX}`,
    `((all|alles|altogether|everything|together|zusammen) )?(in|into|on|im|in (der|dem|die|den)|auf der) (the )?${VESSEL}`,
    `${MIX}$`,
  ].map((words) => `^(the |das |die |der )?${words}${NOT_ITSELF}`),
);
