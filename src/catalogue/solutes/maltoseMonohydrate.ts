import { hydrateOf } from "../hydrateOf";
import { maltose } from "./maltose";

export const maltoseMonohydrate = hydrateOf(maltose, 1, {
  name: "maltose monohydrate",
  cas: "6363-53-7",
  aliases: { en: [], de: ["Maltose-Monohydrat"] },
});
