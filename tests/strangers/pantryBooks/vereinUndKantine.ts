import { workedOut, type StrangersBook } from "../strangersBook";

const gefrierpunkt = (namen: string, gramm: string, stellen = 1) =>
  workedOut(`=RIME.FREEZINGPOINT(${namen},${gramm})`, stellen);

export const vereinUndKantine: readonly StrangersBook[] = [
  {
    title: "Eis fürs Sommerfest des Turnvereins",
    sheets: {
      Sommerfest: [
        ["TV Sommerfest: Eissorten und wer sie macht (Mengen in g)"],
        [
          "Sorte",
          "wer",
          "Vollmilch",
          "Sahne 35 %",
          "Zucker",
          "Magermilchpulver",
          "Kakaopulver",
          "Bananen",
          "Haselnussmus",
          "gesamt",
          "Gefrierpunkt °C",
          "Allergene",
        ],
        ...(
          [
            ["Schoko", "Fam. K.", [1300, 300, 300, 60, 110, null, null], "M"],
            ["Banane", "Jutta", [1000, 200, 240, 60, null, 550, null], "M"],
            ["Haselnuss", "Ruderer", [1350, 150, 310, 80, null, null, 170], "M, N"],
            ["Milcheis pur", "Jugend", [1400, 250, 330, 90, null, null, null], "M"],
          ] as const
        ).map(([sorte, wer, mengen, allergene], index) => {
          const zeile = index + 3;
          return [
            sorte,
            wer,
            ...mengen,
            `=SUM(C${zeile}:I${zeile})`,
            gefrierpunkt("$C$2:$I$2", `C${zeile}:I${zeile}`),
            allergene,
          ];
        }),
        [
          "einkaufen",
          null,
          ...["C", "D", "E", "F", "G", "H", "I", "J"].map(
            (spalte) => `=SUM(${spalte}3:${spalte}6)`,
          ),
        ],
        [],
        ["M Milch, N Nüsse (Haselnuss). Schild an jede Wanne!"],
      ],
      Dienste: [
        ["Schicht", "Stand", "Kasse"],
        ["11-13", "Jutta, Ole", "Heiner"],
        ["13-15", "Fam. K.", "Heiner"],
        ["15-17", "Jugend", "Silke"],
      ],
    },
  },
  {
    title: "Kantine, Erdbeer-Joghurteis Nr. 418",
    sheets: {
      Kantine: [
        ["Nr. 418", "Erdbeer-Joghurteis", null, "Portionen:", 120],
        [null, "Rohware", "für 10 Port. [g]", "Bedarf [kg]", "Kennz."],
        [1, "Erdbeeren TK", 300, "=C3/10*$E$1/1000"],
        [2, "Joghurt, 3.5 % Fett", 320, "=C4/10*$E$1/1000", "g"],
        [3, "Sahne 35 %", 60, "=C5/10*$E$1/1000", "g"],
        [4, "Zucker", 110, "=C6/10*$E$1/1000"],
        [5, "Trockenglukose DE 36", 30, "=C7/10*$E$1/1000"],
        [null, "Gesamtmenge", "=SUM(C3:C7)", "=SUM(D3:D7)"],
        [],
        ["Portionsgewicht [g]", null, "=C8/10"],
        ["Gefrierpunkt", null, gefrierpunkt("B3:B7", "C3:C7"), "°C"],
        [],
        ["Kennz.: a Gluten, c Ei, f Soja, g Milch/Laktose, h Schalenfrüchte"],
        ["Ausgabe bei −10 bis −12 °C; Froster −20 °C"],
      ],
    },
  },
  {
    title: "Landfrauen, zwei Rezepte nebeneinander",
    sheets: {
      Johannisbeer: [
        ["Johannisbeereis: Ilses gegen Margrets Rezept"],
        [],
        ["Ilse (alles in g)", null, null, "Margret (alles in g)"],
        [500, "Schwarze Johannisbeeren", null, 400, "Schwarze Johannisbeeren"],
        [260, "Zucker", null, 180, "Zucker"],
        [240, "Wasser", null, 60, "Honig"],
        [null, null, null, 200, "Wasser"],
        [null, null, null, 160, "Sahne 35 %"],
        ["=SUM(A4:A8)", "gesamt", null, "=SUM(D4:D8)", "gesamt"],
        [],
        [
          gefrierpunkt("B4:B6", "A4:A6"),
          "°C, da gefriert's",
          null,
          gefrierpunkt("E4:E8", "D4:D8"),
          "°C, da gefriert's",
        ],
        [],
        [
          "Ilses: ohne Milch. Margrets: Sahne, also Milch! Und Honig ist nichts für Kinder unter 1 Jahr.",
        ],
        ["Abstimmung Frühjahrstreffen", null, null, "11 : 14"],
      ],
    },
  },
  {
    title: "Rezepte des Vorbesitzers, in Pfund",
    sheets: {
      "Blatt 3": [
        ["Abschrift aus dem blauen Heft (1 Pfund = 500 g)"],
        ["Nr. 17", "Fürst-Pückler, weißer Teil"],
        [],
        ["", "Pfund", "Gramm", "heute statt dessen"],
        ["Vollmilch", 4, "=B5*500"],
        ["Sahne 35 %", 3, "=B6*500", '"guter Rahm" im Heft'],
        ["Zucker", 1.5, "=B7*500"],
        ["Eigelb", 0.8, "=B8*500", "pasteurisiert, aus der Flasche"],
        ["", "=SUM(B5:B8)", "=SUM(C5:C8)"],
        [],
        ["Nachgerechnet: gefriert ab", null, gefrierpunkt("A5:A8", "C5:C8"), "°C"],
        ["Fett in der Masse", null, workedOut('=RIME.COMPONENT(A5:A8,C5:C8,"fat")/C9*100', 1), "%"],
        ["Allergene stehen nicht im Heft, sind aber: Milch, Ei"],
      ],
    },
  },
  {
    title: "Zuckerwasser am Projekttag der Schulküche",
    sheets: {
      Klasse: [
        ["Projekttag: warum friert Zuckerwasser später? (nur messen, wird weggeschüttet)"],
        ["Kf von Wasser", 1.86, "K kg/mol"],
        [],
        [
          "Gruppe",
          "Stoff",
          "Stoff in g",
          "Wasser in g",
          "Molare Masse g/mol",
          "i",
          "Molalität mol/kg",
          "berechnet °C",
          "gemessen °C",
        ],
        ...(
          [
            ["Rot", "Saccharose", 60, 500, 342.3, 1, -0.7],
            ["Blau", "Saccharose", 90, 500, 342.3, 1, -1.0],
            ["Grün", "NaCl", 6, 500, 58.44, 2, -0.7],
            ["Gelb", "NaCl", 12, 500, 58.44, 2, -1.4],
            ["Weiß", "Harnstoff", 12, 400, 60.06, 1, -0.9],
          ] as const
        ).map(([gruppe, stoff, gramm, wasser, masse, teilchen, gemessen], index) => {
          const zeile = index + 5;
          return [
            gruppe,
            stoff,
            gramm,
            wasser,
            masse,
            teilchen,
            `=C${zeile}/E${zeile}/(D${zeile}/1000)`,
            `=-F${zeile}*$B$2*G${zeile}`,
            gemessen,
          ];
        }),
        ["Thermometer auf 0.1 °C, vorher in Eiswasser geprüft"],
      ],
    },
  },
  {
    title: "Familienrezepte mit Notizblatt",
    sheets: {
      Kaffee: [
        ["Kaffee-Eis", "Gramm"],
        ["Sahne 35 %", 200],
        ["gezuckerte Kondensmilch", 200],
        ["Kaffee", 250],
        ["Zucker", 40],
        ["macht", "=SUM(B2:B5)"],
      ],
      Mohn: [
        ["Mohneis", "Gramm"],
        ["Vollmilch", 450],
        ["Sahne 35 %", 150],
        ["Mohn", 60],
        ["Ahornsirup", 90],
        ["Zucker", 80],
        ["macht", "=SUM(B2:B6)"],
      ],
      Melone: [
        ["Wassermelone", "Gramm"],
        ["Wassermelone", 700],
        ["Zucker", 140],
        ["Limettensaft", 60],
        ["macht", "=SUM(B2:B4)"],
      ],
      Notizen: [
        ["Was", "Kaffee", "Mohn", "Melone"],
        [
          "Gefrierpunkt °C",
          gefrierpunkt("Kaffee!A2:A5", "Kaffee!B2:B5"),
          gefrierpunkt("Mohn!A2:A6", "Mohn!B2:B6"),
          gefrierpunkt("Melone!A2:A4", "Melone!B2:B4"),
        ],
        ["Milch?", "ja", "ja", "nein"],
        ["für wen nicht", "Kinder (Koffein), Lena (Laktose)", "Lena (Laktose)", "geht für alle"],
        ["zuletzt", "Pfingsten", "Advent", "August"],
      ],
    },
  },
  {
    title: "zwei Eisdielen zusammengelegt",
    sheets: {
      Vergleich: [
        ["Pistazie: Rezept Markt und Rezept Hafen, beide auf 10 kg, und das gemeinsame ab Mai"],
        ["Zutat", "Markt kg", "Hafen kg", "gemeinsam kg", "Lager kg", "reicht für Ansätze"],
        ["Vollmilch", 6.1, 5.8, "=(B3+C3)/2", 60, "=E3/D3"],
        ["Sahne 35 %", 0.9, 1.1, "=(B4+C4)/2", 14, "=E4/D4"],
        ["Pistazienmus 100 %", 0.8, 1.0, "=(B5+C5)/2", 9, "=E5/D5"],
        ["Zucker", 1.3, 1.4, "=(B6+C6)/2", 75, "=E6/D6"],
        ["Dextrose Monohydrat", 0.5, 0.4, "=(B7+C7)/2", 20, "=E7/D7"],
        ["Magermilchpulver", 0.4, 0.3, "=(B8+C8)/2", 12.5, "=E8/D8"],
        ["Ansatz", "=SUM(B3:B8)", "=SUM(C3:C8)", "=SUM(D3:D8)"],
        [
          "Gefrierpunkt °C",
          gefrierpunkt("$A3:$A8", "B3:B8"),
          gefrierpunkt("$A3:$A8", "C3:C8"),
          gefrierpunkt("$A3:$A8", "D3:D8"),
        ],
        ["Vitrine °C", -13, -12, -13],
        ["Aushang in beiden Läden: Milch, Pistazie"],
      ],
    },
  },
];
