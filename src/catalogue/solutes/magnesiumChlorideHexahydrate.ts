import { hydrateOf } from "../hydrateOf";
import { magnesiumChloride } from "./magnesiumChloride";

export const magnesiumChlorideHexahydrate = hydrateOf(magnesiumChloride, 6, {
  name: "magnesium chloride hexahydrate",
  cas: "7791-18-6",
  aliases: { en: ["nigari", "E 511"], de: ["Magnesiumchlorid-Hexahydrat"] },
});
