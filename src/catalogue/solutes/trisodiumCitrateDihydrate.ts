import { hydrateOf } from "../hydrateOf";
import { trisodiumCitrate } from "./trisodiumCitrate";

export const trisodiumCitrateDihydrate = hydrateOf(trisodiumCitrate, 2, {
  name: "trisodium citrate dihydrate",
  cas: "6132-04-3",
  aliases: {
    en: ["sodium citrate dihydrate"],
    de: ["Natriumcitrat-Dihydrat", "Trinatriumcitrat-Dihydrat"],
  },
});
