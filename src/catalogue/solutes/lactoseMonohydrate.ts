import { hydrateOf } from "../hydrateOf";
import { lactose } from "./lactose";

export const lactoseMonohydrate = hydrateOf(lactose, 1, {
  name: "lactose monohydrate",
  cas: "64044-51-5",
  aliases: {
    en: ["milk sugar, monohydrate"],
    de: ["Laktose-Monohydrat", "Milchzucker-Monohydrat"],
  },
});
