import { ingredients as catalogue } from "../../catalogue/ingredients";
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
    const found = catalogue.filter(({ name, group, aliases }) =>
      matchesSearch(search, [name, group, ...aliases.en, ...aliases.de]),
    );
    if (found.length === 0) return nothingFound(search, catalogue);
    const rows = found.map(({ name, group, composition, inclusion, source, aliases }) => [
      ...[name, group, composition.water, inclusion === true ? "no, stays in pieces" : "yes"],
      ...[bibliography[source], [...aliases.en, ...aliases.de].join(", ")],
    ]);
    return [HEADER, ...rows];
  },
});
