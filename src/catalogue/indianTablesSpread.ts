/** How the spread of what is carried over from the Indian tables was set. */
export const indianTablesSpread = {
  fruit:
    "between regions and varieties in the source; at least solids ± 12 %, sugars ± 35 % (as far as the source and the USDA differ about fruit that both have), acids ± 50 %, salts ± 15 % relative",
  vegetables:
    "between regions and varieties in the source; at least solids ± 12 %, sugars ± 35 % (as for fruit), acids ± 50 %, salts ± 15 % relative",
  dry: "between makers and harvests: water ± 15 %, fat ± 5 %, sugars ± 12 % relative (common practice)",
} as const;
