import { ingredients as catalogue } from "../../catalogue/ingredients";
import { knownItem } from "../../catalogue/names/knownItem";
import { bibliography } from "../../foundation/bibliography";
import { matchesSearch, nothingFound } from "../define/search";
import { defineTable, text } from "../define";

const HEADER = ["name", "group", "water, g per 100 g", "dissolves", "source", "other names"];

export const ingredients = defineTable({
  name: "INGREDIENTS",
  summary: "Table of the ingredients of the catalogue.",
  args: {
    search: text("Part of a name or group; all when left out", "part of a name", { default: "" }),
  },
  unit: "table",
  sources: ["usdaSr26"],
  example: { formula: '=RIME.INGREDIENTS("honey")', from: "computed here" },
  seeAlso: ["INGREDIENT", "SOLUTES"],
  table: ({ search }) => {
    const meant = knownItem(search);
    const found = catalogue.filter(
      (one) =>
        matchesSearch(search, [one.name, one.group, ...one.aliases.en, ...one.aliases.de]) ||
        (meant?.kind === "ingredient" && meant.ingredient === one),
    );
    if (found.length === 0) return nothingFound(search, catalogue);
    const rows = found.map(({ name, group, composition, inclusion, source, aliases }) => [
      ...[name, group, composition.water, inclusion === true ? "no, stays in pieces" : "yes"],
      ...[bibliography[source], [...aliases.en, ...aliases.de].join(", ")],
    ]);
    return [HEADER, ...rows];
  },
});
