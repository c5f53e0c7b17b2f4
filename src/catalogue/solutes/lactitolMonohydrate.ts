import { hydrateOf } from "../hydrateOf";
import { lactitol } from "./lactitol";

export const lactitolMonohydrate = hydrateOf(lactitol, 1, {
  name: "lactitol monohydrate",
  cas: "81025-04-9",
  aliases: { en: [], de: ["Lactit-Monohydrat"] },
});
