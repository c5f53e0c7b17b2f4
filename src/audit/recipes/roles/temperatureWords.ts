import { anyOf } from "./anyOf";
import type { Words } from "./words";

const SERVED = anyOf(
  "\\b(serv(e|es|ed|ing|ice)|dish(ed|ing)?[- ]?up|scoop(s|ed|ing)?|eat(en|ing)?|hand(ed|s)? out|on the plate|at the table)\\b",
  "\\bserv\\.|servier|portionier|abstech|\\bstechen\\b|spatel|ausschank|ausgeschenkt|genuss|genuß|ausgabe|ausgeben|ausgegeben|ausgeteilt|verzehr|\\b(ge|zum |beim )?essen|gegessen|gereicht|auf dem teller|theke|verkauf|\\bess-?temp|\\b(display|sold|sale)\\b|\\bcounter\\b",
);
const FREEZER =
  /\b(freezer|deep[- ]freeze|cabinet|vitrine)\b|tiefkühl|gefrier-?(schrank|truhe|fach|zelle)|truhe\b|\btk\b|eisvitrine|\bfroster\b|\b(display|cold|ice)[- ]case\b|\bcase (stands|is|runs|set|held|at|temp)|(eis|kühl)-?theke/;
const STORED =
  /\b(stored|storage|kept|keep( it)?( frozen)?|holding)\b|\b(cold|freezer|ice|frozen) ?-?(store|room)s?\b|\blager(ung|n|t|temp)?|gelagert|aufbewahr/;
const SENT =
  /distribut|transport|\bshipp|\bdeliver|cold chain|\bvertrieb|versand|liefer|kühlkette|tiefkühlkette/;
/** What makes a temperature of a device or of serving: "freezer is at", "T serve", "Truhe steht auf". */
const AT =
  /\b(at|bei|is|ist|auf|mit|steht|setting|einstellung|set to|eingestellt)\b\W*(k?c)?$|^t[ _(]|\bt$/;
const NAME_ONLY =
  /^((our|the|chest|upright|unser|der|die|das|im|in the) )*[\p{L}-]*(freezer|deep[- ]freeze|tk[- ]?(schrank|truhe|fach|zelle)|tiefkühl\w*|gefrier\w+|truhe|froster)$/u;
/** Of a freezer much else is written down. */
const OTHER_THING =
  /(?<!\p{L})(no|nr|number|nummer|space|platz|shelf|regal|time|date|datum|costs?|name|litres?|liter|l|h|min|day|tag)(?!\p{L})|zeit|kosten|dauer/u;

const isAt: Words = {
  test: (plain) => [SERVED, FREEZER, STORED].some((words) => words.test(plain)) && AT.test(plain),
};

/** What is bought for a freezer. */
const FOR_FREEZER =
  /\bfreezer[- ](proof )?(tapes?|bags?|box(es)?|tubs?|labels?|stickers?|paper|pens?|film|foil|burn|jars?|tins?|pots?|lids?|containers?|gloves?|trays?|sticks?)\b|\b(tapes?|bags?|box(es)?|labels?|tubs?) for (the |our )?freezer|(gefrier|tiefkühl|tk)-?(beutel|tüte|etikett|folie|band|klebeband|stift|dose|handschuh|papier|deckel|schale)/;

/** Labels of temperatures, and of which. */
export const temperatureWords = {
  any: {
    test: (plain) => {
      if (/temp|°c|°f/.test(plain)) return true;
      if (OTHER_THING.test(plain) || FOR_FREEZER.test(plain)) return false;
      return isAt.test(plain) || /freezer|serving at/.test(plain) || NAME_ONLY.test(plain);
    },
  },
  ofServing: SERVED,
  ofFreezer: FREEZER,
  /** Of ice that is kept or sent, not of ice that is served. */
  ofStore: { test: (plain) => STORED.test(plain) || SENT.test(plain) },
} as const satisfies Readonly<Record<string, Words>>;
