import { saysPasteurised } from "./saysPasteurised";

/** "Nothing raw is left", "also nicht roh". */
const NOT_RAW =
  /\b(not|nothing|no longer|never|isn['’]t|aren['’]t) (\p{L}+ )?raw\b|\b(cooked|boiled|heat[- ]treated)\b|\b(nicht|nichts|nie|kein\p{L}*) (mehr |ganz )?roh\p{L}*\b|(?<!\p{L})(gekocht|erhitzt|gegart|zur rose (ab)?(ge)?z(ie|o)gen)\b/iu;
/** Egg sets from here on, and a custard is held for minutes; common practice. */
const HOT = /(?<![\d.,])(6[5-9]|[78]\d|9\d)( ?[-–] ?\d\d)? ?(°|grad|degrees)/iu;
const HOT_F = /(?<![\d.,])1([5-9]\d) ?°? ?f\b/iu;

/** Whether words beside egg say that it is not raw: so it was bought, or it is cooked. */
export const saysEggSafe = (text: string): boolean =>
  saysPasteurised(text) || [NOT_RAW, HOT, HOT_F].some((words) => words.test(text));
