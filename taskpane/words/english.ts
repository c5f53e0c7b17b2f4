import type { OwnRange } from "../bowl/ownIngredients";
import { steer } from "./english/steer";
import { aims } from "./english/aims";
import { batch } from "./english/batch";
import { larder } from "./english/larder";
import { notebook } from "./english/notebook";
import { curves } from "./english/curves";
import { readThrough } from "./english/readThrough";
import { help, welcome } from "./english/welcome";
import { why } from "./english/why";
const plural = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

/** The pane in English: the language that defines which sentences there are. */
export const english = {
  language: "en",
  /** What a function says: they speak English. */
  said: (sentence: string) => sentence,
  /** What a function's argument is, by its English description. */
  argument: (_functionName: string, _argument: string, english: string) => english,
  tabs: "Views",
  views: {
    bowl: { name: "Bowl", about: "The selected recipe: how it freezes" },
    steer: { name: "Steer", about: "Changes the selected recipe until it meets your wishes" },
    batch: {
      name: "Batch",
      about: "Size, hours, cost, rescue, versions, label and card of the selected recipe",
    },
    curves: { name: "Curves", about: "The selected recipe in pictures" },
    aims: { name: "Aims", about: "How a mix should be when served: your targets, the catalogue’s" },
    larder: { name: "Larder", about: "Solutes and ingredients with their figures and sources" },
    notebook: { name: "Notebook", about: "What was measured, and what it teaches" },
    why: { name: "Why", about: "Explains the formula of the selected cell" },
    readThrough: { name: "Read-through", about: "Checks the whole workbook" },
  },
  close: "Close",
  back: "Back to the search",
  reading: "Reading the sheet…",
  noAnswer: "No answer.",

  askInBowl: "The columns of this block have to be told first: answer the question in the Bowl.",
  numberWrong: (typed: string, from: string, to: string, unit: string) =>
    `It must be a number from ${from} to ${to} ${unit}, not “${typed}”.`,
  outside: {
    "no script":
      "This page is not inside a spreadsheet, or the spreadsheet’s script could not be reached; the larder works all the same.",
    "no spreadsheet": "This page is not inside a spreadsheet; the larder works all the same.",
    "too old":
      "This spreadsheet is too old for the pane (it lacks ExcelApi 1.7); the larder works all the same.",
  },
  outsideBowl: "The bowl reads a recipe from a sheet; open the pane inside a spreadsheet.",
  outsideReading: "The read-through needs a workbook; open the pane inside a spreadsheet.",
  hostFaults: {
    InvalidOperationInCellEditMode:
      "A cell is being edited: finish it with Enter or Esc, then try again.",
    AccessDenied: "The sheet is protected: nothing was written; unprotect it, then try again.",
    ItemNotFound: "That sheet or cell is no longer there.",
    InvalidReference: "That sheet or cell is no longer there.",
    InvalidSelection: "Several areas are selected: select one contiguous range.",
    InvalidArgument: "The spreadsheet did not accept that cell or range.",
    RequestPayloadSizeLimitExceeded: "That is too much to write at once: select less.",
    ResponsePayloadSizeLimitExceeded: "That is too much to read at once: select less.",
    TooManyCells: "The selected block has more than 60000 cells: select the recipe’s own cells.",
    ApiNotFound: "This version of the spreadsheet does not offer what is needed for that.",
    NotImplemented: "This version of the spreadsheet does not offer what is needed for that.",
    UnsupportedOperation: "This spreadsheet does not allow that here.",
    HostRestartNeeded: "The spreadsheet has to be restarted before the pane can go on.",
    ServiceNotAvailable: "The spreadsheet does not answer at the moment: try again.",
    NothingHandedOver: "The spreadsheet handed over no contents: that block is too large for it.",
    InvalidObjectPath: "That sheet or cell is no longer there.",
    InvalidOperation: "The spreadsheet does not allow that here, or a cell is being edited.",
    GeneralException: "The spreadsheet could not do that; nothing is known of why.",
  },
  halfWritten: {
    cells: (written: string, missing: string) =>
      `The spreadsheet stopped in between: ${written} was written, ${missing} was not.`,
    unknown: (places: string) =>
      `The spreadsheet stopped answering while ${places} was being written: look whether it was.`,
    unverified: (places: string) =>
      `${places} was written but could not be read again to make sure: look at it.`,
    sheet: (name: string) => `The new sheet “${name}” was begun but not filled: it can be deleted.`,
  },
  otherHostFault: (message: string) => `The spreadsheet could not do that: ${message}.`,

  searchLabel: "Search solutes and ingredients",
  searchExample: "dextrose, Honig, oat drink…",
  found: (count: number) => plural(count, "entry", "entries"),
  nothingFound: (typed: string) => `Nothing in the larder is called “${typed}”.`,
  showMore: (count: number) => `Show more (${count} left)`,
  soluteMark: "solute",
  alsoCalled: (names: string) => `Also: ${names}`,
  constants: "Constants",
  composition: "What 100 g is made of",
  measures: "Measures",
  gramsPer100: "g/100 g",
  bulkDensity: "by spoon and cup",
  bulkDensityBasis: "spread between spoonfuls",
  alcoholByVolume: "alcohol by volume",
  notFood: "Not food: for class only; refused in anything meant to be eaten.",
  hydrate: (solute: string, water: string) =>
    `Gives ${solute} and ${water} water of crystallisation.`,
  inclusion: "Does not dissolve: counts for mass and allergens, not for freezing.",
  allergens: (names: string) => `Allergens: ${names}`,
  allergensByMaker: (names: string) => `Depending on the maker: ${names}. Read the label.`,
  allergensNone: "None of the major allergens by its nature; cross-contact cannot be computed.",
  allergensUnknown: "Allergens: unknown. Read the label of what you use.",
  allergenNames: {
    milk: "milk",
    egg: "egg",
    fish: "fish",
    crustaceans: "crustaceans",
    molluscs: "molluscs",
    "tree nuts": "tree nuts",
    peanuts: "peanuts",
    "gluten cereals": "cereals with gluten",
    soy: "soy",
    sesame: "sesame",
    celery: "celery",
    mustard: "mustard",
    lupin: "lupin",
    sulphites: "sulphites",
  },
  obtained: {
    "from the source": "from the source",
    "computed here": "computed here from the source",
    "from memory": "from memory, to be confirmed",
    "common practice": "common practice",
    own: "your own",
  },
  basis: (basis: string) => `± rests on: ${basis}`,
  soluteKinds: {
    sugar: "sugar",
    polyol: "polyol",
    "saccharide polymer": "saccharide polymer",
    salt: "salt",
    acid: "acid",
    alcohol: "alcohol",
    lumped: "several substances taken as one",
    other: "other",
  },
  groups: {
    water: "water",
    sugars: "sugars",
    honey: "honey",
    "polyols and fibres": "polyols and fibres",
    dairy: "dairy",
    eggs: "eggs",
    fruit: "fruit",
    "vegetables and herbs": "vegetables and herbs",
    "cocoa and chocolate": "cocoa and chocolate",
    "nuts and seeds": "nuts and seeds",
    "plant drinks": "plant drinks",
    biscuits: "biscuits",
    confectionery: "confectionery",
    alcohol: "alcohol",
    flavour: "flavour",
    "salts and acids": "salts and acids",
    stabilisers: "stabilisers",
    fats: "fats",
    finished: "finished",
    own: "own",
  },
  components: {
    water: "water",
    fat: "fat",
    protein: "protein",
    ash: "minerals (ash)",
    inert: "inert (fibre, starch…)",
    "higher saccharides": "higher saccharides",
  },
  soluteFigures: {
    molarMass: "molar mass",
    vantHoff: "van ’t Hoff factor, ideal",
    sweetness: "sweetness, sucrose = 1",
    solubility20: "solubility at 20\u00a0°C",
    eutecticTemperature: "eutectic temperature",
    eutecticMassFraction: "eutectic mass fraction",
    maxFreezeTemperature: "Tm′, no more ice below",
    maxFreezeSolids: "solids at Tm′",
    glassTransitionDry: "glass transition, dry",
    gordonTaylor: "Gordon–Taylor k",
  },
  curve: {
    title: "How well its freezing curve is known",
    fitted: (points: number, rms: string, largest: string) =>
      `Fitted to ${points} printed points: ${rms} K off on average (RMS), ${largest} K at most.`,
    estimated: "Estimated: no printed freezing points went into it.",
    checked: (checkedTo: string, share: string) =>
      `Checked down to ${checkedTo}\u00a0°C; stated uncertainty ${share} of the depression.`,
  },

  insert: {
    block: "Insert a block of cells",
    blockAbout: "It is written from the selected cell on, into empty cells only. Select where.",
    blockFilled: "is not empty: select another cell",
    title: (what: string) => `Insert: ${what}`,
    open: "Insert…",
    openFor: (label: string) => `Insert ${label}…`,
    name: "Name",
    nameOpen: "Insert name…",
    value: "Value",
    formula: "Formula",
    cell: "Cell",
    now: "Now",
    then: "Then",
    empty: "empty",
    write: "Write",
    replace: (address: string) => `Replace what is in ${address}`,
    done: (address: string) => `Written into ${address}.`,
    filled: (address: string) => `${address} is not empty; nothing was written yet.`,
    changed: (address: string) => `${address} changed meanwhile; nothing was written. Look again.`,
  },

  bowlTitle: "In the bowl",
  keep: "Keep",
  keptGone: (place: string) =>
    `The recipe that was kept, ${place}, is no longer there: the selection is followed again.`,
  keepAbout: "Keep this recipe while you move about the sheet",
  readAgain: "Read again",
  noRecipe: {
    blank: (place: string) =>
      `${place} is empty. Click into a recipe, or select its names and amounts.`,
    "own ingredients": (place: string) =>
      `${place} is a range of own ingredients: the bowl uses it for recipes. Click into a recipe.`,
    "no names": (place: string) =>
      `No ingredient that the larder or your own ingredients know stands in ${place}.`,
  },
  columnForm: {
    why: {
      "several amounts": (place: string) =>
        `Several columns of ${place} could be the amounts. Which is meant?`,
      "no amounts": (place: string) =>
        `${place} has names, but no clear column of amounts. Which is it?`,
      "several names": (place: string) =>
        `Several columns of ${place} name ingredients. Which is meant?`,
      "few known": (place: string) =>
        `Fewer than half of the names in ${place} are known. Are these the right columns?`,
    },
    names: "Names are in",
    amounts: "Amounts are in",
    unit: "Amounts are",
    unitAsWritten: "as the header says, else grams",
    perCent: "% (g per 100 g)",
    same: "Names and amounts cannot be in the same place.",
    read: "Read it so",
  },
  taken: {
    summary: (rows: number, names: string, amounts: string) =>
      `${plural(rows, "ingredient", "ingredients")}: names ${names}, amounts ${amounts}`,
    names: "Names",
    amounts: "Amounts",
    unit: "Unit",
    unitIs: {
      "%": "per cent, taken as g per 100 g",
      mixed: "each row’s own, turned into grams by RIME.GRAMS",
    },
    origins: {
      header: "as the header says",
      "number format": "as the number format says",
      "unit column": "from the unit column",
      assumed: "assumed: nothing on the sheet says so (only the ratio matters)",
      chosen: "as you chose",
    },
    own: "Own ingredients",
    noOwn: "none",
    unknown: "Not known",
    leftOut: "Left out",
    undo: "Ask me again",
  },
  own: {
    label: "Own ingredients",
    none: "none",
    useSelection: "Use the selected range",
    gone: (from: OwnRange, to: OwnRange | null) =>
      `Own ingredients are no longer in ${from.sheet}!${from.address}: ${to === null ? "none count now" : `those in ${to.sheet}!${to.address} count now`}.`,
  },
  freezingPoint: "First ice at",
  bandNote: "± one standard uncertainty",
  bandUnknown: "uncertainty not known",
  servedAt: "Served at",
  temperatureWrong: (typed: string, from: string, to: string) =>
    `The serving temperature must be a number from ${from} to ${to}\u00a0°C, not “${typed}”.`,
  cold: {
    caption: "What is frozen at serving and at storage temperature",
    serving: "served",
    storage: "stored",
    iceOfWater: "ice, of the water",
    iceOfMix: "ice, of the mix",
    unfrozenSolids: "solids in the unfrozen part",
  },
  solids: "Solids",
  waterActivity: "Water activity at 25\u00a0°C, no shelf-life release",
  sweetness: "Sweetness",
  sweetnessValue: (grams: string) => `as ${grams} sucrose per 100 g`,
  target: {
    label: "Meant to be",
    none: "nothing chosen",
    asks: {
      water: (from: string, to: string, temperature: string) =>
        `Asks for ${from} to ${to} of the water as ice at ${temperature}\u00a0°C.`,
      mix: (from: string, to: string, temperature: string) =>
        `Asks for ${from} to ${to} of the mix as ice at ${temperature}\u00a0°C.`,
    },
  },
  chart: {
    title: {
      water: "Share of the water that is ice, as it cools.",
      mix: "Share of the mix that is ice, as it cools.",
    },
    temperatureAxis: "°C",
    iceAxis: "% ice",
    at: (temperature: string, share: string) => `At ${temperature}\u00a0°C: ${share}.`,
    gate: (name: string, from: string, to: string, temperature: string) =>
      `The target “${name}” asks for ${from} to ${to} at ${temperature}\u00a0°C.`,
    table: "The curve as a table",
  },
  formulas: {
    open: "Put a formula in the sheet…",
    freezingPoint: "First ice",
    iceOfWater: "Ice, of the water",
    iceOfMix: "Ice, of the mix",
    sweetness: "Sweetness",
    check: "Check against the target",
  },
  troubleAt: "Look at",
  eater: {
    general: "What holds for anything frozen",
    title: "Say it to the eater",
    allergens: "Allergens:",
    byMaker: (names: string) => `depending on the maker ${names}: read the label`,
    noAllergens: "None of the major allergens by the ingredients’ nature.",
    unknown: (items: string) => `Allergens unknown: ${items}. Read the labels.`,
    defer: "Cross-contact cannot be computed. Local codes and licensed advice go before this.",
  },
  whereFrom: "Where these numbers come from",
  bandFrom:
    "± is one standard uncertainty: two cases in three lie within. Own ingredients and weights count as exact.",

  aims,
  batch,
  curves,
  help,
  larder,
  notebook,
  readThrough,
  steer,
  welcome,
  why,
};
