import { workedOut, type StrangersBook } from "../strangersBook";

const gefrierpunkt = (namen: string, gramm: string, stellen = 1) =>
  workedOut(`=RIME.FREEZINGPOINT(${namen},${gramm})`, stellen);
const eis = (namen: string, gramm: string, celsius: number, stellen = 2) =>
  workedOut(`=RIME.ICEFRACTION(${namen},${gramm},${celsius})`, stellen);
const anteil = (namen: string, gramm: string, teil: string, stellen = 0) =>
  workedOut(`=RIME.COMPONENT(${namen},${gramm},"${teil}")`, stellen);

export const versuche: readonly StrangersBook[] = [
  {
    title: "Versuchsreihe Erdbeere mit Refraktometer",
    sheets: {
      Erdbeere: [
        ["Versuchsreihe Erdbeersorbet, KW 23, Mengen in Gramm"],
        ["Versuch", "Erdbeeren", "Zucker", "Traubenzucker-Monohydrat", "Wasser", "Ansatz"],
        ["V1", 550, 210, 0, 240, "=SUM(B3:E3)"],
        ["V2", 550, 180, 40, 230, "=SUM(B4:E4)"],
        ["V3", 600, 170, 50, 180, "=SUM(B5:E5)"],
        ["V4", 650, 160, 60, 130, "=SUM(B6:E6)"],
        [],
        ["Versuch", "Gefrierpunkt (°C)", "Wasser (g)", "Bewertung"],
        ...["zu hart", "noch hart", "gut", "gut, fruchtiger"].map((urteil, index) => [
          `V${index + 1}`,
          gefrierpunkt("$B$2:$E$2", `B${index + 3}:E${index + 3}`, 2),
          anteil("$B$2:$E$2", `B${index + 3}:E${index + 3}`, "water"),
          urteil,
        ]),
        ["Verkostung aus dem −18er nach 10 min. Keine Allergene."],
      ],
    },
  },
  {
    title: "Bilanz Walnusseis",
    sheets: {
      Bilanz: [
        ["Bilanz Walnusseis, 1 kg"],
        ["enthält: Milch, Schalenfrüchte (Walnuss)"],
        ["Zutat", "Menge/g", "Wasser/g", "Fett/g", "Zucker/g"],
        ...(
          [
            ["Vollmilch", 585],
            ["Sahne 35 %", 110],
            ["Walnüsse", 80],
            ["Zucker", 120],
            ["Glukosesirup DE 42", 40],
            ["Dextrose Monohydrat", 25],
            ["Magermilchpulver", 40],
          ] as const
        ).map(([zutat, menge], index) => {
          const zeile = index + 4;
          return [
            zutat,
            menge,
            zutat === "Walnüsse" ? 3.3 : anteil(`A${zeile}`, `B${zeile}`, "water", 1),
            anteil(`A${zeile}`, `B${zeile}`, "fat", 1),
            anteil(`A${zeile}`, `B${zeile}`, "sugars", 1),
          ];
        }),
        ["Summe", "=SUM(B4:B10)", "=SUM(C4:C10)", "=SUM(D4:D10)", "=SUM(E4:E10)"],
        ["in Prozent", "=B11/$B11*100", "=C11/$B11*100", "=D11/$B11*100", "=E11/$B11*100"],
        [],
        ["Nüsse erst nach dem Gefrieren einrühren (Röstung 150 °C, 12 min)"],
      ],
    },
  },
  {
    title: "weniger süß, Zuckertausch",
    told: ["hydrate-not-stated"],
    sheets: {
      Tausch: [
        ["Quitte? gibt's nicht mehr. Deshalb Birne, und weniger süß."],
        [],
        [null, "bisher", null, "neu"],
        [null, "g", null, "g"],
        ["Birnenpüree", 600, null, 600],
        ["Zucker", 200, null, 120],
        ["Trehalose", null, null, 50],
        ["Inulin", null, null, 30],
        ["Wasser", 180, null, 180],
        ["Zitronensaft", 20, null, 20],
        ["Summe", "=SUM(B5:B10)", null, "=SUM(D5:D10)"],
        [],
        [
          "Süße wie g Zucker je 100 g",
          workedOut("=RIME.SWEETNESS(A5:A10,B5:B10)", 1),
          null,
          workedOut("=RIME.SWEETNESS(A5:A10,D5:D10)", 1),
        ],
        [
          "Gefrierpunkt in °C",
          gefrierpunkt("A5:A10", "B5:B10"),
          null,
          gefrierpunkt("A5:A10", "D5:D10"),
        ],
        ["Eisanteil bei −12 °C", eis("A5:A10", "B5:B10", -12), null, eis("A5:A10", "D5:D10", -12)],
        ["Fazit: geringfügig härter, 5 min länger stehen lassen. Keine Allergene, Inulin bläht."],
      ],
    },
  },
  {
    title: "Prozentblatt Fruchtsorbets",
    sheets: {
      Prozente: [
        ["Fruchtsorbets, Angaben in % der Masse"],
        ["", "Mango", "Maracuja", "Heidelbeere", "Aprikose"],
        ["Frucht", "Mangopüree", "Maracujasaft", "Heidelbeeren", "Aprikosen"],
        ["Fruchtanteil", 55, 25, 45, 50],
        ["Zucker", 14, 21, 17, 16],
        ["Glukosesirup DE 42", 5, 5, 4, 5],
        ["Wasser", 25.6, 48.6, 33.6, 28.6],
        ["Pektin", 0.4, 0.4, 0.4, 0.4],
        ["Summe", "=SUM(B4:B8)", "=SUM(C4:C8)", "=SUM(D4:D8)", "=SUM(E4:E8)"],
        [],
        ["Ansatz in g", 4000, 3000, 3000, 2500],
        ["davon Frucht in g", "=B4*B11/100", "=C4*C11/100", "=D4*D11/100", "=E4*E11/100"],
        ["davon Zucker in g", "=B5*B11/100", "=C5*C11/100", "=D5*D11/100", "=E5*E11/100"],
        ["davon Wasser in g", "=B7*B11/100", "=C7*C11/100", "=D7*D11/100", "=E7*E11/100"],
        [],
        ["vegan, ohne kennzeichnungspflichtige Allergene"],
      ],
    },
  },
  {
    title: "Kirschwasser in Stufen",
    sheets: {
      Kirsch: [
        ["Kirscheis mit Kirschwasser: wie viel verträgt es?"],
        [],
        ["alle Mengen in g", "ohne", "2 %", "4 %", "6 %"],
        ["Süßkirschen", 500, 500, 500, 500],
        ["Kirschwasser 40 %", 0, 20, 40, 60],
        ["Zucker", 170, 170, 170, 170],
        ["Wasser", 310, 290, 270, 250],
        ["Zitronensaft", 20, 20, 20, 20],
        ["zusammen", "=SUM(B4:B8)", "=SUM(C4:C8)", "=SUM(D4:D8)", "=SUM(E4:E8)"],
        [
          "Gefrierbeginn °C",
          ...["B", "C", "D", "E"].map((spalte) => gefrierpunkt("$A4:$A8", `${spalte}4:${spalte}8`)),
        ],
        [
          "Eis bei −14 °C, % des Wassers",
          ...["B", "C", "D", "E"].map((spalte) =>
            workedOut(`=RIME.ICEFRACTION($A4:$A8,${spalte}4:${spalte}8,-14)*100`, 0),
          ),
        ],
        [
          "Alkohol, g",
          0,
          ...["C", "D", "E"].map((spalte) =>
            anteil("$A4:$A8", `${spalte}4:${spalte}8`, "ethanol", 1),
          ),
        ],
        [],
        ['Genommen: 4 %. Auf die Karte: "enthält Alkohol". Für Kinder die Sorte "ohne".'],
      ],
    },
  },
  {
    title: "Zwetschgen eines Obstbauern",
    sheets: {
      Ernte: [
        ["Zwetschgen 2026", null, null, "°C = Saft im Gefrierbad"],
        ["Baumreihe", "Erntetag", "kg", "Brix (°Bx)", "erstes Eis im Saft °C"],
        ["oben", "24.8.", 310, 15.2, -1.9],
        ["Mitte", "28.8.", 420, 16.4, -2.1],
        ["Bach", "2.9.", 275, 17.1, -2.2],
        ["Summe", null, "=SUM(C3:C5)"],
        ["im Mittel, gewogen", null, null, "=SUMPRODUCT(C3:C5,D3:D5)/C6"],
      ],
      Sorbet: [
        ["Zwetschgensorbet vom Hof"],
        ["kg", "Zutat"],
        [6.0, "Zwetschgen, entsteint"],
        [1.6, "Zucker"],
        [2.3, "Wasser"],
        [0.1, "Zitronensaft"],
        ["=SUM(A3:A6)", "gesamt"],
        [],
        [workedOut("=RIME.FREEZINGPOINT(B3:B6,A3:A6)", 1), "°C Gefrierpunkt"],
        [105, "Becher"],
        ["=A7/A10*1000", "g im Becher"],
        [null, "Allergene keine; Kerne können vorkommen (Hinweis aufs Etikett)"],
      ],
    },
  },
  {
    title: "Ziele für den Haushaltsfroster",
    told: ["caution-not-named"],
    sheets: {
      Ziele: [
        ["Stracciatella fürs Tiefkühlfach (−18 °C)"],
        ["Zutat", "Menge", "Einheit bzw. Soll"],
        ["Vollmilch", 480, "g"],
        ["Sahne 35 %", 180, "g"],
        ["Zucker", 110, "g"],
        ["Dextrose Monohydrat", 100, "g"],
        ["Glycerin", 15, "g"],
        ["Magermilchpulver", 45, "g"],
        ["Zartbitterschokolade (Stückchen)", 70, "g"],
        ["Summe", "=SUM(B3:B9)", "1000 g"],
        ["Eisanteil bei −18 °C", eis("A3:A9", "B3:B9", -18), "0.65 bis 0.75"],
        ["Gefrierpunkt °C", gefrierpunkt("A3:A9", "B3:B9"), "unter −4"],
        ["Fett g", anteil("A3:A9", "B3:B9", "fat"), "80 bis 120"],
        ["Milch, Soja (Lecithin der Schokolade)"],
      ],
    },
  },
];
