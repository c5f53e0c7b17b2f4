import { hydrateOf } from "../hydrateOf";
import { citricAcid } from "./citricAcid";

export const citricAcidMonohydrate = hydrateOf(citricAcid, 1, {
  name: "citric acid monohydrate",
  cas: "5949-29-1",
  aliases: { en: [], de: ["Zitronensäure-Monohydrat"] },
});
