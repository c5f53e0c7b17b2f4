export type Language = "en" | "de";

type Words = Readonly<Record<Language, string>>;

/** One line of a recipe: its name in both languages, grams, and what it brings to the label. */
export interface StockLine extends Words {
  readonly grams: number;
  readonly allergen?: Words;
  readonly caution?: Words;
}

export interface StockRecipe extends Words {
  readonly lines: readonly StockLine[];
}

type Label = Pick<StockLine, "allergen" | "caution">;

export const line = (en: string, de: string, grams: number, label: Label = {}): StockLine => ({
  ...{ en, de, grams },
  ...label,
});

const MILK: Label = { allergen: { en: "milk", de: "Milch" } };
const CHOKING = {
  en: "Whole nuts: choking hazard, not for children under 5.",
  de: "Ganze Nüsse: Erstickungsgefahr, nicht für Kinder unter 5 Jahren.",
};
const nuts = (en: string, de: string): Label => ({
  allergen: { en: `tree nuts (${en})`, de: `Schalenfrüchte (${de})` },
  caution: CHOKING,
});
const SULPHITES: Label = { allergen: { en: "sulphites", de: "Sulfite" } };
const WHEAT: Label = { allergen: { en: "gluten (wheat)", de: "Gluten (Weizen)" } };

export const HONEY: Label = {
  caution: {
    en: "Honey: not for children under 12 months.",
    de: "Honig: nicht für Kinder unter 12 Monaten.",
  },
};
export const ALCOHOL: Label = {
  caution: {
    en: "Contains alcohol: not for children, not in pregnancy, not before driving.",
    de: "Enthält Alkohol: nicht für Kinder, Schwangere und wer noch fährt.",
  },
};
const RAW_EGG: Label = {
  allergen: { en: "egg", de: "Ei" },
  caution: {
    en: "Raw egg yolk: heat the mix to 71 °C or use pasteurised yolk.",
    de: "Rohes Eigelb: Masse auf 71 °C erhitzen oder pasteurisiertes Eigelb nehmen.",
  },
};

export const water = (grams: number) => line("water", "Wasser", grams);
const sugar = (grams: number) => line("sugar", "Zucker", grams);
const sucrose = (grams: number) => line("sucrose", "Saccharose", grams);
const dextrose = (grams: number) => line("dextrose monohydrate", "Dextrose-Monohydrat", grams);
const syrup = (grams: number) => line("glucose syrup DE 42", "Glukosesirup DE 42", grams, WHEAT);
const lemon = (grams: number) => line("lemon juice", "Zitronensaft", grams);
const milk = (grams: number) => line("whole milk", "Vollmilch", grams, MILK);
const cream = (grams: number) => line("cream 35 % fat", "Sahne 35 %", grams, MILK);
const powder = (grams: number) => line("skim milk powder", "Magermilchpulver", grams, MILK);
const honey = (grams: number) => line("honey", "Honig", grams, HONEY);
const salt = (grams: number) => line("salt", "Salz", grams);
const spirit = (grams: number) => line("vodka 40 %", "Spirituose 40 % vol", grams, ALCOHOL);
const hazelnuts = (grams: number) =>
  line("hazelnuts", "Haselnüsse", grams, nuts("hazelnuts", "Haselnüsse"));

const recipe = (en: string, de: string, lines: readonly StockLine[]): StockRecipe => ({
  ...{ en, de, lines },
});

/** Mixes of a made-up kitchen. */
export const stock: readonly StockRecipe[] = [
  recipe("Lemon ice", "Zitroneneis", [water(500), sugar(150), dextrose(45), lemon(110)]),
  recipe("Peach ice", "Pfirsicheis", [
    ...[line("peach", "Pfirsich", 600), sugar(150), syrup(60), water(150), lemon(20)],
  ]),
  recipe("White milk ice", "Weißes Milcheis", [
    ...[milk(550), cream(200), sugar(140), dextrose(30), powder(20)],
  ]),
  recipe("Honey milk ice", "Honig-Milcheis", [milk(600), cream(150), honey(110), sugar(60)]),
  recipe("Strawberry ice with nuts", "Erdbeereis mit Nüssen", [
    ...[line("strawberries", "Erdbeeren", 500), sugar(150), dextrose(30), water(100)],
    hazelnuts(60),
  ]),
  recipe("Salted cocoa ice", "Gesalzenes Kakaoeis", [
    ...[water(520), sucrose(160), line("cocoa powder", "Kakaopulver", 60), dextrose(40), salt(3)],
  ]),
  recipe("Coffee granita", "Kaffee-Granita", [
    ...[line("brewed coffee", "Filterkaffee", 800), sugar(120), dextrose(30)],
  ]),
  recipe("Blueberry ice", "Heidelbeereis", [
    ...[line("blueberries", "Heidelbeeren", 450), water(200), sugar(130)],
    ...[line("fructose", "Fruktose", 25), lemon(25)],
  ]),
  recipe("Lime ice with spirit", "Limetteneis mit Schnaps", [
    ...[water(600), sugar(150), line("lime juice", "Limettensaft", 80), spirit(60)],
  ]),
  recipe("Mango ice", "Mangoeis", [
    ...[line("mango", "Mango", 650), sugar(130), syrup(50), lemon(30)],
    line("inulin", "Inulin", 20),
  ]),
  recipe("Raspberry ice", "Himbeereis", [
    ...[line("raspberries", "Himbeeren", 500), water(180), sugar(170), dextrose(40)],
    line("citric acid monohydrate", "Zitronensäure-Monohydrat", 4),
  ]),
  recipe("Pistachio bar", "Pistazienriegel", [
    ...[milk(450), cream(150), sugar(120), dextrose(80)],
    line("pistachios", "Pistazien", 100, nuts("pistachios", "Pistazien")),
  ]),
  recipe("Orange ice", "Orangeneis", [
    ...[line("orange juice", "Orangensaft", 750), sugar(100), syrup(60)],
  ]),
  recipe("Custard ice", "Vanillecremeeis", [
    ...[milk(500), cream(250), line("egg yolk", "Eigelb", 80, RAW_EGG), sugar(150)],
  ]),
  recipe("Walnut honey slab", "Walnuss-Honig-Platte", [
    ...[cream(300), milk(300), honey(140), sugar(60)],
    line("walnuts", "Walnüsse", 120, nuts("walnuts", "Walnüsse")),
  ]),
  recipe("Pear-spirit pop", "Birnengeist am Stiel", [
    ...[line("apple puree", "Apfelmus", 400), water(250), sugar(130), spirit(50), lemon(20)],
  ]),
  recipe("Cherry ice", "Kirscheis", [
    ...[line("sweet cherries", "Süßkirschen", 550), water(160), sugar(110), dextrose(35)],
    lemon(15),
  ]),
  recipe("Coconut bar", "Kokosriegel", [
    ...[line("coconut milk", "Kokosmilch", 500), water(200), sugar(140), syrup(45), salt(2)],
    line("desiccated coconut", "Kokosraspel", 60, SULPHITES),
  ]),
  recipe("Yogurt ice", "Joghurteis", [
    ...[line("whole milk yogurt", "Naturjoghurt 3,5 %", 600, MILK), sugar(150), cream(120)],
    dextrose(35),
  ]),
  recipe("Banana ice", "Bananeneis", [
    ...[line("banana", "Banane", 450), milk(300), sugar(90), cream(100), lemon(15)],
  ]),
];
