/** What a newcomer reads. */
export const welcome = {
  title: "To begin with",
  sheet:
    "Write ingredients in one column and their grams in the next, then click one: the Bowl says when that mix freezes.",
  cells: "Cells say it too, by functions that begin with =RIME. The Bowl writes them for you.",
  begin: "Put an example on a new sheet",
  dismiss: "Not needed",
  added: (sheet: string) => `The sheet “${sheet}” holds an example now; click its ingredients.`,
  example: {
    sheet: "Lemon ice",
    title: "Lemon ice, an example to change at will",
    ingredient: "Ingredient",
    grams: "Amount (g)",
    servedAs: "Served as",
    freezingPoint: "First ice, °C",
    ice: "Ice of water",
    check: "Check",
    working: "How the freezing point is worked out",
  },
};

/** Help in place: what each view is for and how it is begun. */
export const help = {
  label: "Help for this view",
  functions: "All functions, with examples (a new window)",
  views: {
    bowl: "Click into a recipe: names in one column or row, amounts in another. Say how it is meant to be served, and the Bowl tells whether it will be, puts formulas into the sheet and names what the eater must know.",
    steer:
      "Click into a recipe, choose how it is meant to be, tick what may change: you get the smallest change that does it, in a new column beside the old.",
    batch:
      "Click into a recipe to scale it to a mould, see hours and cost, mend what is already in the bowl, compare versions and print its label or card.",
    curves:
      "Click into a recipe to see it freeze: as a curve, a state diagram, by what holds water, by what matters most. Each picture has its table and can be saved.",
    aims: "Targets say how much ice a mix should hold when served. Add your own, keep them on a sheet, hand them on as a file.",
    larder:
      "Search any substance or ingredient, in English or German. Every figure says where it comes from; insert it as a value or a formula where the selection is.",
    notebook:
      "Write down what the thermometer or the Brix meter said. Measured beside forecast shows what to correct, and by how much.",
    why: "Click a cell with one of our formulas: its arguments, its working line by line, and what the ideal law would say.",
    readThrough:
      "Reads all sheets and lists what may be wrong, the largest effect first. Nothing is changed unless you say so.",
  },
};
