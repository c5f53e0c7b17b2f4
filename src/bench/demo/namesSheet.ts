import type { BookSheet } from "../book";
import { filled, heading, hint, number, sheet, text, title } from "./cells";
import { pantry } from "./kitchen";

const HEADER_ROW = 4;

/** The cells that map the kitchen's names, as the recipe functions take them. */
export const OWN_INGREDIENTS = `Names!$A$${HEADER_ROW}:$D$${HEADER_ROW + pantry.length}`;

/** The kitchen's own names: most are the same as one of the catalogue, brewed coffee is described. */
export const namesSheet: BookSheet = sheet(
  "Names",
  [
    [title("What our names mean")],
    [
      hint(
        "Passed to every function as its last argument, so that Milk and Sugar can stay Milk and Sugar.",
      ),
    ],
    [],
    [heading("name"), heading("same as"), heading("water", "right"), heading("source")],
    ...pantry.map(({ name, sameAs }) =>
      sameAs === null
        ? [
            text(name),
            filled(),
            number(98.6, "0.0"),
            text("brewed 60 g to the litre, about 1.4 % extract: common practice"),
          ]
        : [text(name), text(sameAs)],
    ),
  ],
  [130, 230, 80, 420],
  { frozenRows: HEADER_ROW },
);
