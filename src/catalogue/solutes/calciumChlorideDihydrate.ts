import { hydrateOf } from "../hydrateOf";
import { calciumChloride } from "./calciumChloride";

export const calciumChlorideDihydrate = hydrateOf(calciumChloride, 2, {
  name: "calcium chloride dihydrate",
  cas: "10035-04-8",
  aliases: { en: [], de: ["Calciumchlorid-Dihydrat"] },
});
