import { hydrateOf } from "../hydrateOf";
import { trehalose } from "./trehalose";

export const trehaloseDihydrate = hydrateOf(trehalose, 2, {
  name: "trehalose dihydrate",
  cas: "6138-23-4",
  aliases: { en: [], de: ["Trehalose-Dihydrat"] },
});
