import { hydrateOf } from "../hydrateOf";
import { glucose } from "./glucose";

export const glucoseMonohydrate = hydrateOf(glucose, 1, {
  name: "glucose monohydrate",
  cas: "5996-10-1",
  aliases: {
    en: ["dextrose monohydrate", "dextrose, monohydrate", "dextrose mono"],
    de: ["Dextrose-Monohydrat", "Traubenzucker-Monohydrat", "Glukose-Monohydrat"],
  },
});
