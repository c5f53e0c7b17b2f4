import { knownItem } from "../../catalogue/names/knownItem";
import { solutes as catalogue } from "../../catalogue/solutes";
import { matchesSearch, nothingFound } from "../define/search";
import { defineTable, text } from "../define";

const HEADER = [
  ...["name", "formula", "kind", "molar mass, g/mol", "van 't Hoff", "food", "other names"],
];

export const solutes = defineTable({
  name: "SOLUTES",
  summary: "Table of the solutes of the catalogue.",
  args: {
    search: text("Part of a name, formula or kind; all when left out", "part of a name", {
      default: "",
    }),
  },
  unit: "table",
  sources: ["ciaaw2021"],
  example: { formula: '=RIME.SOLUTES("lactose")', from: "computed here" },
  seeAlso: ["SOLUTE", "INGREDIENTS"],
  table: ({ search }) => {
    const meant = knownItem(search);
    const found = catalogue.filter(
      (one) =>
        matchesSearch(search, [
          ...[one.name, one.formula, one.kind],
          ...[...one.aliases.en, ...one.aliases.de],
        ]) ||
        (meant?.kind === "solute" && meant.solute === one),
    );
    if (found.length === 0) return nothingFound(search, catalogue);
    const rows = found.map(({ name, aliases, formula, kind, molarMass, vantHoff, food }) => [
      ...[name, formula, kind, molarMass.value, vantHoff.value, food ? "yes" : "no"],
      [...aliases.en, ...aliases.de].join(", "),
    ]);
    return [HEADER, ...rows];
  },
});
