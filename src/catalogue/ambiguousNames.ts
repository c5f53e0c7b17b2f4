const DEXTROSE = ["glucose monohydrate", "glucose"];
const GLUCOSE_SYRUPS = [
  "glucose syrup DE 28",
  "glucose syrup DE 42",
  "glucose syrup DE 60",
  "high-maltose syrup",
];
const GLUCOSE_POWDERS = [
  "glucose monohydrate",
  "glucose",
  "glucose syrup powder DE 36",
  "glucose syrup powder DE 42",
];
const DRIED_SYRUPS = ["glucose syrup powder DE 36", "glucose syrup powder DE 42"];
const CORN_SYRUPS = ["light corn syrup", "dark corn syrup", ...GLUCOSE_SYRUPS];
const FRUCTOSE_SYRUPS = [
  "high-fructose corn syrup 42",
  "high-fructose corn syrup 55",
  "high-fructose corn syrup, ungraded",
];
const INVERT = ["invert sugar syrup, full", "invert sugar syrup, half"];
const MALTODEXTRINS = ["maltodextrin DE 10", "maltodextrin DE 18"];
const MILKS = ["whole milk", "milk 2 % fat", "skim milk"];
const MILK_POWDERS = ["skim milk powder", "skim milk powder, instant", "whole milk powder"];
const CREAMS = ["half and half", "cream 20 % fat", "cream 35 % fat", "cream 37 % fat"];
const ALL_CREAMS = [...CREAMS, "cream 48 % fat"];
const WHIPPING = ["cream 35 % fat", "cream 37 % fat"];
const CONDENSED = ["evaporated milk", "sweetened condensed milk"];
const YOGURTS = ["whole milk yogurt", "Greek yogurt, nonfat"];
const WHEYS = ["sweet whey powder", "acid whey powder"];
const BUTTERS = ["unsalted butter", "salted butter"];
const dark = ["dark chocolate (pieces)", "dark chocolate (melted in)"];
const semisweet = ["semisweet chocolate (pieces)", "semisweet chocolate (melted in)"];
const milkChocolate = ["milk chocolate (pieces)", "milk chocolate (melted in)"];
const white = ["white chocolate (pieces)", "white chocolate (melted in)"];
const CHOCOLATES = [...dark, ...semisweet, ...milkChocolate, ...white, "unsweetened chocolate"];
const CHIPS = [
  "semisweet chocolate (pieces)",
  "dark chocolate (pieces)",
  "milk chocolate (pieces)",
  "white chocolate (pieces)",
];
const RAISINS = ["raisins (pieces)", "raisins (blended)"];
const DATES = ["medjool dates (pieces)", "medjool dates (blended)"];
const MARSHMALLOW = ["marshmallow (pieces)", "marshmallow (melted in)"];
const CARAMEL = ["soft caramel (pieces)", "soft caramel (melted in)"];
const TOFFEE = ["toffee (pieces)", "toffee (melted in)"];
const PRALINE = ["hazelnut praline (pieces)", "hazelnut praline (melted in)"];
const SPIRITS = ["spirit 37.5 % vol", "spirit 40 % vol"];
const LIQUEURS = [
  "liqueur 25 % vol",
  "coffee liqueur 26.5 % vol",
  "mint liqueur 36 % vol",
  "coffee cream liqueur 17 % vol",
];
const WINES = ["red wine", "white wine", "sweet dessert wine", "fortified wine 20 % vol"];
const SYRUPS = ["maple syrup", "golden syrup", "agave syrup", "glucose syrup DE 42", ...INVERT];
const CITRATES = ["trisodium citrate", "trisodium citrate dihydrate"];
const CHICORY = ["inulin", "oligofructose"];
const GLYCOLS = ["ethylene glycol", "propylene glycol"];

/** Words that stand for more than one thing of the catalogue: answered with the choices, never guessed. */
export const ambiguousNames: Readonly<Record<string, readonly string[]>> = {
  dextrose: DEXTROSE,
  Traubenzucker: DEXTROSE,
  "dextrose powder": DEXTROSE,
  Dextrosepulver: DEXTROSE,
  Traubenzuckerpulver: DEXTROSE,
  "corn sugar": DEXTROSE,
  "glucose syrup": GLUCOSE_SYRUPS,
  Glukosesirup: GLUCOSE_SYRUPS,
  Glucosesirup: GLUCOSE_SYRUPS,
  "liquid glucose": GLUCOSE_SYRUPS,
  Flüssigglukose: GLUCOSE_SYRUPS,
  "liquid glucose syrup": GLUCOSE_SYRUPS,
  "flüssiger Glukosesirup": GLUCOSE_SYRUPS,
  "flüssige Glukose": GLUCOSE_SYRUPS,
  "starch syrup": GLUCOSE_SYRUPS,
  Stärkesirup: GLUCOSE_SYRUPS,
  "glucose powder": GLUCOSE_POWDERS,
  Glukosepulver: GLUCOSE_POWDERS,
  "glucose syrup powder": DRIED_SYRUPS,
  "dried glucose syrup": DRIED_SYRUPS,
  "corn syrup solids": DRIED_SYRUPS,
  "glucose syrup solids": DRIED_SYRUPS,
  "dried glucose": DRIED_SYRUPS,
  "atomised glucose": DRIED_SYRUPS,
  "getrockneter Glukosesirup": DRIED_SYRUPS,
  Trockenglukosesirup: DRIED_SYRUPS,
  Trockenglukose: DRIED_SYRUPS,
  "corn syrup": CORN_SYRUPS,
  "maize syrup": CORN_SYRUPS,
  Maissirup: CORN_SYRUPS,
  "high-fructose corn syrup": FRUCTOSE_SYRUPS,
  HFCS: FRUCTOSE_SYRUPS,
  isoglucose: FRUCTOSE_SYRUPS,
  "glucose-fructose syrup": FRUCTOSE_SYRUPS,
  "fructose-glucose syrup": FRUCTOSE_SYRUPS,
  Isoglukose: FRUCTOSE_SYRUPS,
  "invert sugar": INVERT,
  "invert syrup": INVERT,
  "invert sugar syrup": INVERT,
  Invertzucker: INVERT,
  Invertzuckersirup: INVERT,
  maltodextrin: MALTODEXTRINS,
  "maltodextrin powder": MALTODEXTRINS,
  Maltodextrinpulver: MALTODEXTRINS,
  "sugar syrup": ["refined sugar", "water", ...INVERT],
  "simple syrup": ["refined sugar", "water", ...INVERT],
  "stock syrup": ["refined sugar", "water", ...INVERT],
  Zuckersirup: ["refined sugar", "water", ...INVERT],
  Läuterzucker: ["refined sugar", "water", ...INVERT],
  syrup: SYRUPS,
  Sirup: SYRUPS,
  milk: MILKS,
  Milch: MILKS,
  "cow's milk": MILKS,
  Kuhmilch: MILKS,
  Haltbarmilch: MILKS,
  Pastmilch: MILKS,
  Frischmilch: MILKS,
  Trinkmilch: MILKS,
  "milk powder": MILK_POWDERS,
  "dry milk": MILK_POWDERS,
  "dried milk": MILK_POWDERS,
  "dried milk powder": MILK_POWDERS,
  "powdered milk": MILK_POWDERS,
  Milchpulver: MILK_POWDERS,
  Trockenmilch: MILK_POWDERS,
  cream: ALL_CREAMS,
  Sahne: ALL_CREAMS,
  Rahm: ALL_CREAMS,
  Obers: ALL_CREAMS,
  Süßrahm: ALL_CREAMS,
  "süße Sahne": ALL_CREAMS,
  "flüssige Sahne": ALL_CREAMS,
  "flüssiger Rahm": ALL_CREAMS,
  "whipping cream": WHIPPING,
  Schlagsahne: WHIPPING,
  Schlagrahm: WHIPPING,
  Schlagobers: WHIPPING,
  Kaffeesahne: ["half and half", "cream 20 % fat"],
  Kaffeeobers: ["half and half", "cream 20 % fat"],
  Kaffeerahm: ["half and half", "cream 20 % fat"],
  "condensed milk": CONDENSED,
  Kondensmilch: CONDENSED,
  yogurt: YOGURTS,
  yoghurt: YOGURTS,
  Joghurt: YOGURTS,
  Naturjoghurt: YOGURTS,
  "Greek yogurt": ["Greek yogurt, nonfat", "whole milk yogurt"],
  "whey powder": WHEYS,
  "dried whey": WHEYS,
  Molkenpulver: WHEYS,
  butter: BUTTERS,
  "butter 82 % fat": BUTTERS,
  Markenbutter: BUTTERS,
  Tafelbutter: BUTTERS,
  Teebutter: BUTTERS,
  chocolate: CHOCOLATES,
  Schokolade: CHOCOLATES,
  "dark chocolate": dark,
  Zartbitterschokolade: dark,
  Bitterschokolade: dark,
  "semisweet chocolate": semisweet,
  Halbbitterschokolade: semisweet,
  "milk chocolate": milkChocolate,
  Vollmilchschokolade: milkChocolate,
  Milchschokolade: milkChocolate,
  "white chocolate": white,
  "weiße Schokolade": white,
  "chocolate chips": CHIPS,
  Schokoladentropfen: CHIPS,
  Schokostückchen: CHIPS,
  raisins: RAISINS,
  Rosinen: RAISINS,
  sultanas: RAISINS,
  Sultaninen: RAISINS,
  dates: DATES,
  "medjool dates": DATES,
  Datteln: DATES,
  marshmallow: MARSHMALLOW,
  marshmallows: MARSHMALLOW,
  caramel: CARAMEL,
  "soft caramel": CARAMEL,
  Karamell: CARAMEL,
  toffee: TOFFEE,
  praline: PRALINE,
  "hazelnut praline": PRALINE,
  nougat: PRALINE,
  spirit: SPIRITS,
  spirits: SPIRITS,
  Spirituose: SPIRITS,
  Schnaps: SPIRITS,
  vodka: SPIRITS,
  Wodka: SPIRITS,
  rum: SPIRITS,
  gin: SPIRITS,
  whisky: SPIRITS,
  whiskey: SPIRITS,
  brandy: SPIRITS,
  liqueur: LIQUEURS,
  Likör: LIQUEURS,
  "sodium citrate": CITRATES,
  Natriumcitrat: CITRATES,
  "E 331(iii)": CITRATES,
  Waschsoda: ["sodium carbonate", "sodium carbonate decahydrate"],
  glycol: GLYCOLS,
  Glykol: GLYCOLS,
  "chicory root fibre": CHICORY,
  Zichorienfaser: CHICORY,
  IPA: ["2-propanol", "beer"],
  "E 330": ["citric acid powder", "citric acid powder (monohydrate)"],
  "E 420": ["sorbitol powder", "sorbitol syrup 70 %"],
  "E 500": ["sodium carbonate", "sodium bicarbonate"],
  "E 501": ["potassium carbonate", "potassium bicarbonate"],
  "E 509": ["calcium chloride", "calcium chloride dihydrate"],
  wine: WINES,
  Wein: WINES,
};
