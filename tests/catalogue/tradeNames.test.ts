import { describe, expect, test } from "@jest/globals";
import { findItem } from "../../src/catalogue/findItem";

/** Names as kitchens, shops and laboratories write them: common practice, no source. */
function meaning(name: string): string {
  const match = findItem(name);
  if (match.kind === "solute") return match.solute.name;
  return match.kind === "ingredient" ? match.ingredient.name : match.kind;
}

describe("a name of the trade", () => {
  test.each([
    [
      "whole milk",
      ["Milch 3,5 % Fett", "H-Milch 3,5 %", "UHT whole milk", "Vollmilch (3,5 % Fett)"],
    ],
    ["milk 2 % fat", ["2 % milk", "fettarme Milch 1,5 %", "reduced-fat milk 2 %", "Halbfettmilch"]],
    ["skim milk", ["Milch 0,1 % Fett", "fat-free skim milk", "entrahmte Milch 0,3 %"]],
    ["half and half", ["Kaffeesahne (10 %)", "Kaffeeobers 10 %", "half & half"]],
    [
      "cream 35 % fat",
      ["Schlagsahne 35 % Fett", "Vollrahm", "35%ige Sahne", "UHT whipping cream 35 %"],
    ],
    ["cream 37 % fat", ["Schlagobers (36 %)", "whipping cream 36 %", "heavy cream 37 %"]],
    ["skim milk powder", ["NFDM", "Magermilchpulver (MMP)", "dried skimmed milk"]],
    ["whole milk powder", ["FCMP", "Vollmilchpulver 26 %", "Milchpulver 26 %"]],
    ["unsalted butter", ["Sauerrahmbutter", "unsalted sweet cream butter"]],
    ["whole milk yogurt", ["Joghurt 3,5 %", "Joghurt natur 3,5 %", "plain full fat yogurt"]],
    ["Greek yogurt, nonfat", ["0 % Greek yoghurt", "griechischer Joghurt 0 % Fett"]],
    ["whole egg", ["Eier (Größe M)", "eggs, size L", "egg(s)", "pasteurised liquid egg", "Ei(er)"]],
    ["egg yolk", ["yolks of 3 eggs", "Flüssigeigelb", "Eigelb (pasteurisiert)"]],
    ["sucrose", ["castor sugar", "Feinkristallzucker", "Hagelzucker"]],
    ["glucose", ["D-(+)-glucose", "wasserfreie Glukose"]],
    ["glucose monohydrate", ["D(+)-Glucose-Monohydrat", "glucose 1-hydrate", "Glukosemonohydrat"]],
    ["high-fructose corn syrup 42", ["HFCS-42", "HFCS 42 %", "Isoglukosesirup 42"]],
    ["glucose syrup DE 42", ["Stärkesirup DE 42", "Glukosesirup (42 DE)"]],
    ["maple syrup", ["Ahornsyrup", "maple syrup, grade A"]],
    ["honey, average", ["runny honey", "Honig, flüssig", "Bienenhonig"]],
    ["sorbitol syrup 70 %", ["sorbitol 70 %", "Sorbitlösung"]],
    ["locust bean gum", ["LBG", "JBKM", "Johannisbrotkernmehl (E 410)"]],
    ["gelatin powder", ["leaf gelatine (200 bloom)", "Blattgelatine", "Gelatinepulver 250 Bloom"]],
    ["carrageenan", ["Karrageen", "iota carrageenan", "Carragheen"]],
    ["cellulose gum", ["Na-CMC", "Carboxymethylzellulose"]],
    ["water", ["VE-Wasser", "aqua dest.", "deionized water", "stilles Mineralwasser"]],
    ["calcium chloride", ["Kalziumchlorid wasserfrei", "calcium chloride, anhydrous"]],
    [
      "calcium chloride dihydrate",
      ["CaCl2 x 2 H2O", "CaCl2•2H2O", "CaCl2 dihydrate", "Calciumchlorid-2-hydrat"],
    ],
    ["sodium bicarbonate", ["Natriumhydrogenkarbonat", "E500ii", "E 500 (ii)", "Speisesoda"]],
    ["sodium chloride", ["NaCl p.a.", "Steinsalz"]],
    ["acetic acid", ["Eisessig", "acetic acid, glacial"]],
    ["tartaric acid", ["L-(+)-Weinsäure", "E 334"]],
    ["ethanol", ["EtOH", "Ethanol, wasserfrei"]],
  ])("stands for %s: %j", (expected, names) => {
    expect(names.map((name) => [name, meaning(name)])).toEqual(
      names.map((name) => [name, expected]),
    );
  });
});

describe("a name that leaves open which", () => {
  test.each([
    ...["Kuhmilch", "H-Milch", "süße Sahne", "Kaffeerahm", "Teebutter", "Naturjoghurt"],
    ...["dextrose powder", "liquid glucose", "Glukose-Fruktose-Sirup", "Läuterzucker"],
    ...["sodium citrate", "E 330", "E 420", "E 500", "glycol", "IPA", "chicory root fiber"],
  ])("%s asks back", (name) => {
    expect(meaning(name)).toBe("ambiguous");
  });

  test("keeps the choices of its share", () => {
    expect(findItem("milk powder 26 %")).toEqual(findItem("whole milk powder"));
    expect(findItem("butter 82 %").kind).toBe("ambiguous");
  });
});

describe("what is of other composition stays unknown", () => {
  test.each([
    // another share
    ...["cream 30 %", "Schlagsahne 30 % Fett", "Sahne 33 %", "heavy cream 40 %", "Kaffeerahm 15 %"],
    ...["Milch 3,8 %", "1% milk", "H-Milch 0,5 %", "Sauerrahm 15 %", "Joghurt 1,5 %"],
    ...["Greek yogurt 10 %", "Kondensmilch 10 %", "wine 20 %", "liqueur 17 %", "butter 60 %"],
    // a solution, another hydrate
    ...["Glycerin 85 %", "Milchsäure 80 %", "Salzsäure 37 %", "NaCl solution", "NaCl 0.9 %"],
    ...["sodium acetate trihydrate", "CaCl2·6H2O", "Magnesiumsulfat-Heptahydrat", "Bittersalz"],
    // another thing with the same words
    ...["Halbrahm", "Schmand", "light cream cheese", "part-skim ricotta", "buttermilk powder"],
    ...[
      "maltitol syrup",
      "dry malt extract",
      "blackstrap molasses",
      "Rohrohrzucker",
      "Gelierzucker",
    ],
    ...["egg white powder", "Eigelbpulver", "liquid pectin", "Gelatinemasse", "Johannisbrotmehl"],
    ...["brown butter", "margarine", "sweet whey", "lactose-free milk", "tonic water"],
    ...["E 965", "E 407a", "E 270", "ascorbic acid", "baking powder", "Eischnee mit Zucker"],
  ])("%s", (name) => {
    expect(meaning(name)).toBe("unknown");
  });
});

describe("a heading or a label is no ingredient", () => {
  test.each([
    ...["Sugars", "Total solids", "pure alcohol", "water content", "Trockenmasse", "Gms", "MSNF"],
    ...["Wassergehalt", "davon Zucker", "Fett in %", "Milk fat %", "sugar level", "frozen water"],
    ...[
      "powder",
      "Pulver",
      "food grade",
      "pasteurised",
      "anhydrous",
      "wasserfrei",
      "35 %",
      "DE 42",
    ],
    ...["water 60 %", "Zucker 10 %", "honey 5 %", "salt 2 %", "3,5 % Fett", "Milchtrockenmasse"],
  ])("%s", (name) => {
    expect(meaning(name)).toBe("unknown");
  });
});
