import { listOf } from "./listOf";

/** Names of ingredients as recipe sheets write them, by the entry that is meant; common practice, no source. */
export const foodNames: Readonly<Record<string, readonly string[]>> = {
  strawberry: listOf(`
  fresh strawberries; frozen strawberries; TK-Erdbeeren; Erdbeeren, TK;
  strawberries, hulled and quartered; strawberry purée; strawberry purée, unsweetened;
  strawberry puree (no added sugar); 100 % strawberry purée; strawberry pulp;
  strawberry fruit purée; Erdbeermark; Erdbeerpüree, ungezuckert; Erdbeerpüree 100 %;
  Erdbeeren, püriert; Erdbeer-Fruchtpüree; Erdbeerpulpe; Gartenerdbeeren;
  Erdbeeren, geviertelt; puréed strawberries; IQF strawberries; Erdbeeren, geputzt;
  strawberry purée without sugar; Erdbeerpüree ohne Zuckerzusatz`),
  raspberry: listOf(`
  raspberries, frozen; Himbeermark; Himbeerpüree, passiert; raspberry purée, seedless;
  raspberry pulp; sieved raspberries; Himbeerfruchtmark; TK-Himbeeren;
  raspberry purée (unsweetened)`),
  blackberry: listOf(`
  blackberry purée; brambles; Brombeermark; Brombeerpüree; blackberries, frozen`),
  blueberry: listOf(`
  Kulturheidelbeeren; blueberry purée; Heidelbeerpüree; Blaubeerpüree;
  cultivated blueberries; Heidelbeeren, TK; highbush blueberries`),
  mango: listOf(`
  ripe mango; mangoes; mangos; Mango; Mangos; mango pulp; mango purée, unsweetened;
  Mangomark; Mangopulpe; mango, peeled and diced; Mango, reif; pulp of 2 mangoes;
  Mangowürfel; mango cubes; Mangofruchtmark; mango chunks, frozen;
  Fruchtfleisch einer Mango`),
  banana: listOf(`
  ripe bananas; Bananenmark; banana purée; mashed bananas; Bananen, reif, geschält;
  banana pulp; bananas, sliced; zerdrückte Bananen; banana, overripe; Bananenfruchtfleisch`),
  "lemon juice": listOf(`
  fresh lemon juice; freshly squeezed lemon juice; juice of 1 lemon; juice of half a lemon;
  juice of ½ lemon; Saft einer Zitrone; Saft von 2 Zitronen; Saft einer halben Zitrone;
  Saft 1 Zitrone; Zitronensaft, frisch gepresst; lemon juice, strained;
  Zitronen-Direktsaft; frischer Zitronensaft; Zitronensaft (Direktsaft)`),
  "lime juice": listOf(`
  fresh lime juice; juice of 2 limes; Limettensaft, frisch; Saft einer Limette;
  freshly pressed lime juice; Saft von Limetten`),
  "orange juice": listOf(`
  freshly squeezed orange juice; orange juice, not from concentrate;
  Orangensaft, frisch gepresst; Orangendirektsaft; Saft einer Orange; juice of 1 orange;
  orange juice, strained; orange juice, smooth`),
  apple: listOf(`
  dessert apples; eating apples; apples, peeled and cored; Äpfel, geschält; Tafeläpfel;
  apple, diced; Apfel, entkernt; apple, unpeeled; apple flesh; Apfelwürfel`),
  "apple puree, unsweetened": listOf(`
  unsweetened apple sauce; unsweetened applesauce; Apfelmus, ungezuckert;
  Apfelmus ohne Zucker; Apfelmark, ungesüßt; apple sauce, no added sugar;
  apple purée (unsweetened); Apfelmus, ungesüsst; Apfelpüree ohne Zuckerzusatz`),
  peach: listOf(`
  peach purée; peach pulp; yellow peaches; Pfirsichmark; Pfirsichpüree;
  peaches, skinned and stoned; Pfirsiche, enthäutet; peach, fresh; ripe peaches, stoned;
  Pfirsichfruchtfleisch; peach slices, frozen; gelbe Pfirsiche`),
  apricot: listOf(`
  apricot purée; apricot pulp; Marillenmark; Marillenpüree; Aprikosenmark; Aprikosenpüree;
  Marillen, entkernt; apricots, stoned; fresh apricots, halved;
  Aprikosen, frisch, entsteint; apricot purée, unsweetened; Marillenfruchtfleisch;
  Aprikosenfruchtmark`),
  "sweet cherry": listOf(`
  sweet cherries, pitted; black cherries; Herzkirschen; Knorpelkirschen;
  Süßkirschen, entsteint; cherries, stoned; Kirschen, entkernt; sweet cherry purée;
  Süßkirschpüree; Süsskirschen; sweet cherries, frozen; dark sweet cherries`),
  grape: listOf(`
  white grapes; red grapes; seedless grapes; green grapes; table grapes; Tafeltrauben;
  kernlose Trauben; blaue Trauben; grüne Trauben; rote Trauben; helle Trauben;
  black grapes; weiße Trauben`),
  "passion fruit": listOf(`
  passionfruit; passion fruits; Passionsfrüchte; Maracujas; passionfruit pulp;
  passion fruit pulp with seeds; passion fruit with seeds; pulp of passion fruit;
  Passionsfrucht mit Kernen; passion fruit, pulp and seeds`),
  "passion fruit juice": listOf(`
  passionfruit juice; passion fruit juice, unsweetened; Maracujasaft, ungezuckert;
  juice of passion fruit; Maracuja-Direktsaft; strained passion fruit juice;
  Passionsfruchtsaft 100 %`),
  pineapple: listOf(`
  fresh pineapple; pineapple, peeled and cored; Ananasfruchtfleisch; pineapple purée;
  Ananaspüree; Ananas, frisch; pineapple chunks, fresh; pineapple, diced; Ananasmark;
  Ananasstücke, frisch; pineapple pulp`),
  watermelon: listOf(`
  watermelon, cubed; watermelon, seedless; Wassermelonenfruchtfleisch; watermelon purée;
  Wassermelone ohne Schale; Wassermelone, entkernt; Wassermelonenpüree; water melon`),
  "pomegranate juice": listOf(`
  pomegranate juice, unsweetened; Granatapfelsaft, 100 %; Granatapfel-Direktsaft;
  Granatapfelmuttersaft; juice of 2 pomegranates; Saft eines Granatapfels;
  fresh pomegranate juice; 100 % pomegranate juice`),
  "medjool dates (pieces)": listOf(`
  medjool dates, chopped; Datteln, gehackt; gehackte Datteln; dates, pitted and chopped;
  Medjool-Datteln, gehackt; chopped medjool dates`),
  "medjool dates (blended)": listOf(`
  date paste; Dattelpaste; Dattelmus; dates, pureed; pureed medjool dates;
  Datteln, püriert; medjool dates, blended; Dattelpüree`),
  "raisins (pieces)": listOf(`
  chopped raisins; raisins, chopped; Rosinen, gehackt; whole sultanas; gehackte Rosinen;
  Sultaninen, ganz`),
  "raisins (blended)": listOf(`
  raisins, pureed; Rosinenpaste; raisin paste; pürierte Rosinen`),
  avocado: listOf(`
  ripe avocado; avocados; avocado, peeled and stoned; Avocadopüree; avocado purée;
  Avocado, reif; avocado pulp; mashed avocado`),
  "coconut milk": listOf(`
  tinned coconut milk; coconut milk, tinned; full-fat coconut milk;
  coconut milk, unsweetened; Kokosmilch, ungesüßt; Kokosmilch aus der Dose;
  Kokosmilch (Dose); Kokosnussmilch; coconut milk, full fat`),
  "soy drink, sweetened": listOf(`
  sweetened soy milk; soya milk, sweetened; sweetened soy drink; Sojamilch, gesüßt;
  Sojadrink, gesüsst; sweetened soya drink; soy beverage, sweetened; gesüßter Sojadrink;
  Sojagetränk, gesüßt`),
  "brewed coffee": listOf(`
  coffee, brewed; cold coffee; hot brewed coffee; drip coffee; filtered coffee;
  Kaffee, gebrüht; Kaffee, kalt; kalter Kaffee; aufgebrühter Kaffee; pour-over coffee;
  freshly brewed coffee; Brühkaffee; coffee (brewed); schwarzer Kaffee;
  Kaffee (aufgebrüht); Kaffee, flüssig; Filterkaffee, abgekühlt; liquid coffee`),
  almonds: listOf(`
  blanched almonds; flaked almonds; slivered almonds; Mandelblättchen; Mandelstifte;
  Mandeln, gehobelt; whole almonds, roasted; Mandelkerne; Mandelsplitter; almond kernels;
  toasted almonds; geschälte Mandeln; Mandeln, blanchiert; sliced almonds; almond flakes;
  almond slivers; nibbed almonds; gehackte Mandeln; Mandeln, geröstet; Mandelscheiben;
  raw almonds; süße Mandeln; sweet almonds; Mandeln ohne Haut; natural almonds`),
  "ground almonds": listOf(`
  almonds, ground; almond meal; Mandeln, gemahlen; geriebene Mandeln; Mandelgriess;
  blanched ground almonds; Mandeln, gerieben; ground blanched almonds; almond powder;
  finely ground almonds; fein gemahlene Mandeln`),
  hazelnuts: listOf(`
  hazelnut kernels; roasted hazelnuts; Haselnusskerne; Haselnüsse, geröstet;
  chopped hazelnuts; hazelnuts, skinned; Haselnüsse, gehackt; Haselnussblättchen;
  hazel nuts; hazelnuts, blanched and roasted; gehobelte Haselnüsse`),
  "ground hazelnuts": listOf(`
  geriebene Haselnüsse; Haselnüsse, gemahlen; Haselnussgrieß; Haselnüsse, gerieben;
  ground roasted hazelnuts; hazelnut powder; Haselnussgriess`),
  walnuts: listOf(`
  Baumnüsse; Baumnuss; Baumnusskerne; walnut halves; walnut pieces; walnut kernels;
  Walnusskerne; walnuts, chopped; Walnüsse, gehackt; Walnusshälften; gehackte Baumnüsse;
  Walnüsse, gemahlen; shelled walnuts; geriebene Walnüsse`),
  pecans: listOf(`
  pecan halves; pecan nut; Pekannusskerne; chopped pecans; Pecannüsse; toasted pecans;
  pecan pieces; Pecannuss; Pekannusshälften`),
  pistachios: listOf(`
  shelled pistachios; pistachios, unsalted; Pistazien, gehackt; Pistazienkerne, ungesalzen;
  green pistachios; chopped pistachios; slivered pistachios; grüne Pistazien;
  ground pistachios; gemahlene Pistazien; pistachio nuts; pistachio kernels, chopped;
  raw pistachios; roasted unsalted pistachios; Pistazien, geschält`),
  cashews: listOf(`
  cashew kernels; Cashewnüsse; cashew nut; Cashewnuss; Kaschunüsse; raw cashews;
  Cashewnusskerne; unsalted cashews; roasted cashews; Cashew-Kerne, ungesalzen`),
  macadamias: listOf(`
  macadamia nut; roasted macadamias; Macadamianusskerne; Macadamia; Macadamias;
  macadamia kernels; chopped macadamia nuts; Macadamiakerne; Makadamianüsse`),
  peanuts: listOf(`
  unsalted peanuts; roasted peanuts; Erdnusskerne; Erdnüsse, ungesalzen; groundnuts;
  peanuts, shelled; Erdnüsse, geröstet; raw peanuts; peanut kernels; chopped peanuts;
  Erdnüsse, gehackt; roasted unsalted peanuts`),
  "sesame seeds": listOf(`
  sesame seed; toasted sesame seeds; Sesamsaat; Sesamkörner; black sesame seeds;
  white sesame seeds; Sesam, geröstet; schwarzer Sesam; weißer Sesam; hulled sesame seeds;
  Sesam, geschält; heller Sesam`),
  "desiccated coconut": listOf(`
  desiccated coconut, unsweetened; Kokosette; Kokosraspeln; Kokosflocken, getrocknet;
  dried shredded coconut, unsweetened; Kokosnussraspel; dessicated coconut;
  unsweetened shredded coconut; unsweetened dried coconut; unsweetened coconut flakes;
  getrocknete Kokosraspel; Kokosraspel, ungesüßt; coconut, desiccated`),
  "almond butter": listOf(`
  Mandelmus, weiß; almond butter, 100 %; white almond butter; Mandelpaste 100 %;
  Mandelmus 100 %; 100 % almond paste; smooth almond butter; pure almond butter;
  almond paste 100 %; weißes Mandelmus; braunes Mandelmus; roasted almond butter;
  almond butter, unsalted; unsweetened almond butter`),
  "peanut butter, salted": listOf(`
  peanut butter, crunchy; smooth peanut butter, salted; Erdnussbutter, cremig;
  creamy peanut butter; crunchy peanut butter; salted peanut butter;
  Erdnussbutter, gesalzen; Erdnussbutter, fein`),
  tahini: listOf(`
  tahini paste; Sesampaste; Tahin, hell; sesame butter; light tahini; Tahini (Sesampaste);
  tahina; Sesammus, weiß; tahin; helles Tahin; tahini (sesame paste); sesame seed paste;
  white tahini`),
  "hazelnut paste": listOf(`
  hazelnut paste 100 %; pure hazelnut paste; 100 % hazelnut paste; Haselnussmark;
  Haselnusspaste, 100 %; hazelnut butter, unsweetened; roasted hazelnut paste;
  Haselnusspaste, ungesüßt; hazelnut paste, unsweetened; Haselnussmus, geröstet;
  Haselnussmark 100 %; reine Haselnusspaste`),
  "pistachio paste": listOf(`
  pistachio paste 100 %; pure pistachio paste; 100 % pistachio paste; Pistazienmark;
  Pistazienpaste 100 %; pistachio paste, unsweetened; Pistazienpaste, ungesüßt;
  reine Pistazienpaste; Pistazienmus 100 %`),
  "hazelnut praline (pieces)": listOf(`
  hazelnut praline pieces; praline, chopped; Haselnusskrokant, gehackt;
  crushed hazelnut praline; hazelnut brittle, crushed; crushed praline`),
  "hazelnut praline (melted in)": listOf(`
  hazelnut praliné paste; praliné paste 50 %; melted nougat; hazelnut praline paste 50 %;
  Nougat, geschmolzen`),
  "cocoa powder": listOf(`
  unsweetened cocoa; cocoa powder, unsweetened; Kakaopulver, ungesüßt; Kakao, ungezuckert;
  baking cocoa; Dutch-process cocoa; alkalised cocoa powder; Kakaopulver, stark entölt;
  natural cocoa powder; cocoa powder, sifted; cacao powder; Kakaopulver (Backkakao);
  dutch-processed cocoa powder; alkalisiertes Kakaopulver; reines Kakaopulver;
  pure cocoa powder; cocoa powder 10-12 % fat; Kakao, stark entölt; ungesüßter Kakao;
  unsweetened cacao powder`),
  "unsweetened chocolate": listOf(`
  unsweetened baking chocolate; cacao mass; cocoa liquor; cocoa paste;
  Schokolade 100 % Kakao; Kakaopaste; chocolate 100 %; Kakaomasse 100 %;
  chocolate, unsweetened; unsweetened chocolate, grated; Schokolade, ungesüßt;
  cacao liquor; 100 % chocolate; Schokolade 100 %; cacao paste`),
  "dark chocolate (pieces)": listOf(`
  dark chocolate, chopped; chopped plain chocolate; Zartbitterschokolade, gehackt;
  gehackte Zartbitterschokolade; dark chocolate chunks; finely chopped dark chocolate;
  dark chocolate drops; dunkle Schokolade, gehackt; dark chocolate shavings;
  plain chocolate chips; Zartbitter-Schokotropfen; dark choc chips`),
  "dark chocolate (melted in)": listOf(`
  dark chocolate, melted; melted plain chocolate; Zartbitterschokolade, geschmolzen;
  geschmolzene Zartbitterschokolade; dark chocolate, melted and cooled;
  dunkle Schokolade, geschmolzen; Bitterschokolade, geschmolzen; dark couverture, melted;
  Zartbitterkuvertüre, geschmolzen`),
  "semisweet chocolate (pieces)": listOf(`
  semi-sweet chocolate chips; semisweet chocolate, chopped; Halbbitterschokolade, gehackt;
  semisweet chocolate chunks; semisweet chips; semi-sweet chips;
  semi-sweet chocolate, chopped`),
  "semisweet chocolate (melted in)": listOf(`
  semi-sweet chocolate, melted; Halbbitterschokolade, geschmolzen;
  semisweet chocolate, melted; geschmolzene Halbbitterschokolade`),
  "milk chocolate (pieces)": listOf(`
  milk chocolate, chopped; Vollmilchschokolade, gehackt; milk chocolate chunks;
  gehackte Milchschokolade; milk chocolate drops; milk choc chips`),
  "milk chocolate (melted in)": listOf(`
  milk chocolate, melted; Vollmilchschokolade, geschmolzen; geschmolzene Milchschokolade;
  milk couverture, melted; Vollmilchkuvertüre, geschmolzen`),
  "white chocolate (pieces)": listOf(`
  white chocolate, chopped; weiße Schokolade, gehackt; white chocolate chunks;
  gehackte weisse Schokolade; white choc chips; white chocolate drops`),
  "white chocolate (melted in)": listOf(`
  white chocolate, melted; weiße Schokolade, geschmolzen; geschmolzene weisse Schokolade;
  weiße Kuvertüre, geschmolzen`),
  "chocolate coating, 30 % coconut oil": listOf(`
  chocolate coating with 30 % coconut oil; Schokoladenüberzug mit 30 % Kokosfett;
  chocolate coating, 30 % coconut fat; chocolate ice-cream coating`),
  "chocolate fudge syrup": listOf(`
  hot fudge sauce; hot fudge; chocolate fudge sauce; Schokoladen-Fudge-Sauce; fudge syrup;
  chocolate fudge topping; Fudgesauce; Schokoladen-Fudgesoße`),
  "digestive biscuit": listOf(`
  digestives; digestive biscuits, crushed; graham cracker crumbs; crushed digestives;
  Vollkornkekse, zerbröselt; digestive biscuit crumbs; crushed graham crackers;
  Grahamkekse; digestive crumbs; Digestive-Kekse; Graham-Cracker`),
  shortbread: listOf(`
  shortbread cookies; shortbread, crumbled; Mürbekekse; Mürbteigkekse; shortbread fingers;
  Mürbeteigkekse; shortbread crumbs; Shortbread, zerbröselt; Mürbeteiggebäck`),
  "ginger biscuit": listOf(`
  ginger nuts; ginger snaps; ginger cookies; ginger nut biscuits; Ingwerplätzchen;
  gingersnap cookies; crushed ginger biscuits; ginger biscuit crumbs; Ingwer-Kekse;
  gingersnap crumbs`),
  "ice-cream cone, wafer": listOf(`
  wafer cones; cake cone; cake cones; ice cream wafer cone; Eiswaffeln`),
  "ice-cream cone, sugar": listOf(`
  sugar cones; ice cream sugar cone; rolled sugar cones`),
  "pretzels, salted": listOf(`
  pretzel sticks; salted pretzels, crushed; Salzbrezeln, zerbröselt; Salzstangen;
  mini pretzels; crushed pretzels; Salzbrezel; pretzel pieces; Mini-Salzbrezeln;
  hard pretzels, salted`),
  granola: listOf(`
  homemade granola; granola, crumbled; geröstetes Müsli; Granola;
  hausgemachtes Knuspermüsli; Crunchymüsli`),
  "marshmallow (pieces)": listOf(`
  marshmallow pieces; chopped marshmallows; Marshmallows, gehackt; miniature marshmallows;
  Mini-Marshmallows; marshmallows, chopped; Marshmallow-Stücke; diced marshmallow`),
  "marshmallow (melted in)": listOf(`
  marshmallows, melted; geschmolzene Marshmallows; Marshmallows, geschmolzen;
  melted marshmallows`),
  "soft caramel (pieces)": listOf(`
  soft caramels, chopped; chopped caramels; Weichkaramellen, gehackt; soft caramel chunks;
  Karamellstücke; chopped soft caramel; Karamellstückchen; caramel bits`),
  "soft caramel (melted in)": listOf(`
  melted caramels; soft caramel, melted; Weichkaramell, geschmolzen;
  geschmolzenes Karamell; melted soft caramels; Karamell, geschmolzen; caramels, melted`),
  "toffee (pieces)": listOf(`
  chopped toffee; crushed toffee; toffee chunks; English toffee bits;
  Butterkaramell, gehackt; toffee, crushed; Toffeestücke; toffee, chopped`),
  "toffee (melted in)": listOf(`
  toffee, melted; Butterkaramell, geschmolzen; geschmolzenes Toffee; Toffee, geschmolzen`),
  "spirit 40 % vol": listOf(`
  vodka 40 % vol; white rum 40 %; dark rum 40 %; rum (40 %); rum 40% ABV; Wodka 40 Vol.-%;
  Kirschwasser 40 % vol; Kirsch 40 %; kirsch (40 % vol); Obstler 40 %; Cognac 40 %;
  cognac 40 % vol; grappa 40 %; Grappa 40 % vol; Tequila 40 %; bourbon 40 %; Calvados 40 %;
  brandy 40 % vol; Weinbrand 40 %; vodka, 80 proof; rum 80 proof; brauner Rum 40 %;
  weißer Rum 40 %; Himbeergeist 40 %; Birnenbrand 40 %; Zwetschgenwasser 40 %;
  Marillenschnaps 40 %; Whisky 40 Vol%; gin 40 % vol.; scotch whisky 40 %; 40 % vodka;
  cachaça 40 %; Obstbrand 40 % vol; Marillenbrand 40 %; fruit brandy 40 %; Pisco 40 %;
  aged rum 40 %; Zwetschkenschnaps 40 %; mezcal 40 %; Armagnac 40 %; plum brandy 40 %;
  bourbon whiskey, 40% abv; Rum 40 Volumenprozent; vodka 40 percent; Rum, 40,0 % vol`),
  "spirit 37.5 % vol": listOf(`
  white rum 37.5 %; Rum 37,5 % vol; gin 37.5 % vol; vodka (37.5 % ABV); Wodka 37,5 Vol.-%;
  weißer Rum 37,5 % vol; Kirschwasser 37,5 %; Gin 37,5%; Obstler 37,5 %; spirit 37.5 % abv;
  tequila 37.5 %; 37.5 % vodka; brauner Rum 37,5 %; Spirituose 37,5 Vol.-%`),
  "coffee liqueur 26.5 % vol": listOf(`
  Kaffeelikör 26,5 % vol; coffee liqueur 26.5 %; coffee liqueur, 26.5% ABV`),
  "mint liqueur 36 % vol": listOf(`
  mint liqueur; mint liqueur 36 %; Pfefferminzlikör 36 %; peppermint liqueur 36 % vol;
  Minzlikör 36 % vol; crème de menthe, 36 %`),
  "coffee cream liqueur 17 % vol": listOf(`
  cream liqueur 17 %; coffee cream liqueur; Kaffeesahnelikör; Irish cream;
  Irish cream liqueur; cream liqueur 17 % vol; Sahnelikör 17 % vol; Rahmlikör`),
  "sweet dessert wine": listOf(`
  dessert wine, sweet; Dessertwein, süß; Süsswein; sweet dessert wine 19 % vol;
  Süßwein 19 %`),
  "red wine": listOf(`
  dry red wine; red wine, dry; red table wine; Rotwein, trocken; trockener Rotwein;
  Rotwein 13 %; red wine 13 %; roter Tafelwein; Rotwein 13 % vol; Rotwein 13 Vol.-%;
  red wine, 13% ABV`),
  "white wine": listOf(`
  dry white wine; white wine, dry; white table wine; Weißwein, trocken; trockener Weißwein;
  Weißwein 13 %; Weisswein; weißer Tafelwein; white wine 13 % ABV`),
  beer: listOf(`
  pale lager; Lagerbier; lager beer; pilsner; Pils; beer, 5 %; helles Bier; Bier, 5 % vol;
  pale lager 5 % vol; lager 5 %; Lager; beer 5% ABV`),
  "neutral spirit 96 % vol": listOf(`
  neutral alcohol 96 %; Neutralalkohol; Ethanol 96 % vol; reiner Alkohol 96 %;
  neutral spirit; pure alcohol 96 %; Trinkalkohol 96 %; rectified spirit; Feinsprit 96 %;
  Alkohol 96 %; alcohol 96 %; ethanol, 96 % vol; neutral grain spirit 96 %;
  Weingeist 96 % vol; Primasprit 96 %; food-grade ethanol 96 %; Neutralalkohol 96 Vol.-%;
  grain alcohol, 96% ABV`),
  "liqueur 25 % vol": listOf(`
  liqueur 25 % ABV; fruit liqueur 25 %; Fruchtlikör 25 % vol; Likör 25 Vol.-%;
  Likör, 25 % vol; orange liqueur 25 %; Kirschlikör 25 %; Orangenlikör 25 %;
  raspberry liqueur 25 % vol; Himbeerlikör 25 %; cherry liqueur 25 %`),
  "fortified wine 20 % vol": listOf(`
  port; port wine; Portwein; ruby port; tawny port; Portwein 20 % vol; port 20 %;
  roter Portwein; port wine 20 % vol; red port`),
  "vanilla extract": listOf(`
  pure vanilla extract; vanilla extract, pure; natural vanilla extract;
  Vanilleextrakt, rein; reiner Vanilleextrakt; vanilla extract 35 %;
  flüssiger Vanilleextrakt; vanilla extract, 35% alcohol; real vanilla extract;
  Vanilleextrakt 35 % vol`),
  "vanilla ice cream, finished": listOf(`
  fertiges Vanilleeis; Vanilleeis (fertig); shop-bought vanilla ice cream;
  ready-made vanilla ice cream; gekauftes Vanilleeis; store-bought vanilla ice cream;
  bought vanilla ice cream`),
};

/** Names that a careful person would ask back about. */
export const askedBack: readonly string[] = listOf(`
  Kirschwasser; kirsch; Kirsch; Cognac; grappa; bourbon; white rum; dark rum; brauner Rum;
  Obstler; Calvados; tequila; Weinbrand; Himbeergeist; fruit brandy; Obstbrand;
  passion fruit purée; Maracujapüree; Passionsfruchtmark; Maracujamark; passionfruit puree;
  Zartbitterkuvertüre; dunkle Kuvertüre; dark couverture; Vollmilchkuvertüre;
  milk couverture; weiße Kuvertüre; white couverture; Kuvertüre; couverture;
  couverture chocolate; bittersweet chocolate; plain chocolate; dunkle Schokolade;
  dark chocolate 55 %; Zartbitterschokolade 50 %; dark chocolate (55 % cocoa);
  semi-sweet chocolate; chocolate chunks; choc chips; Schokodrops; Schokotropfen;
  Schokoraspel; Schokoladenstückchen; golden raisins; seedless raisins; Datteln, entsteint;
  pitted dates; Medjool-Datteln; soft caramels; Weichkaramell; Weichkaramellen; caramels;
  Mäusespeck; Butterkaramell; Toffee; English toffee; ice cream cone; ice-cream cones;
  Eistüte; Eistüten; Waffeltüte; Eishörnchen; melted chocolate; geschmolzene Schokolade;
  chopped chocolate; gehackte Schokolade; Limonensaft; praliné; Nougat; Nussnougat;
  Weinbeeren; Zartbitter; Kochschokolade; Vollmilch-Schokolade; wine, dry; Tafelwein;
  weisse Schokolade; chocolate drops; Whiskey; Scotch; Sultaninen`);
