import { workedOut, type StrangersBook } from "../strangersBook";
import { answerFor } from "./answerFor";

const saltPoint = (salt: number, water: number): number =>
  answerFor("FREEZINGPOINT", { water, NaCl: salt }, 2);
const glycolPoint = (glycol: number): number =>
  answerFor("FREEZINGPOINT", { water: 100 - glycol, "ethylene glycol": glycol }, 0);

export const englishSolutions: readonly StrangersBook[] = [
  {
    title: "Cryoscopy practical 3, second-year physical chemistry",
    sheets: {
      "Prac 3": [
        ["CHEM 204 – Practical 3: freezing-point depression of aqueous solutions"],
        ["Kf(water) =", 1.86, "K kg mol⁻¹", null, "bench 7, Tues pm"],
        [],
        [
          "Run",
          "Solute",
          "m(solute) / g",
          "m(water) / g",
          "M / g mol⁻¹",
          "i",
          "b / mol kg⁻¹",
          "ΔT(calc) / K",
          "ΔT(obs) / K",
        ],
        [1, "glucose", 4.51, 100.2, 180.16, 1, "=C5/E5/D5*1000", "=F5*$B$2*G5", 0.47],
        [2, "glucose", 9.02, 100.1, 180.16, 1, "=C6/E6/D6*1000", "=F6*$B$2*G6", 0.94],
        [3, "urea", 3.02, 99.9, 60.06, 1, "=C7/E7/D7*1000", "=F7*$B$2*G7", 0.92],
        [4, "sodium chloride", 1.46, 100.0, 58.44, 2, "=C8/E8/D8*1000", "=F8*$B$2*G8", 0.87],
        [5, "sodium chloride", 2.92, 100.3, 58.44, 2, "=C9/E9/D9*1000", "=F9*$B$2*G9", 1.7],
        [],
        ["Thermometer: Pt100 in stirred jacket, ice point read as +0.02 °C and subtracted."],
        ["Runs 4 and 5 come out low: ions attract each other, so i is a little below 2."],
      ],
    },
  },
  {
    title: "sucrose dilutions year 12",
    sheets: {
      Sheet1: [
        ["Dilution series, sucrose, by mass (use the balance, not the cylinder!)"],
        ["Stock: 171.15 g sucrose dissolved in 1000 g water = 0.500 mol/kg"],
        [],
        ["", "A", "B", "C", "D", "E"],
        ["g of stock", 100, 80, 60, 40, 20],
        ["g of extra water", 0, 20, 40, 60, 80],
        [
          "g sucrose in it",
          "=B5*171.15/1171.15",
          "=C5*171.15/1171.15",
          "=D5*171.15/1171.15",
          "=E5*171.15/1171.15",
          "=F5*171.15/1171.15",
        ],
        ["g water in it", "=B5+B6-B7", "=C5+C6-C7", "=D5+D6-D7", "=E5+E6-E7", "=F5+F6-F7"],
        [
          "mol/kg",
          "=B7/342.3/B8*1000",
          "=C7/342.3/C8*1000",
          "=D7/342.3/D8*1000",
          "=E7/342.3/E8*1000",
          "=F7/342.3/F8*1000",
        ],
        ["should freeze at, °C", "=-1.86*B9", "=-1.86*C9", "=-1.86*D9", "=-1.86*E9", "=-1.86*F9"],
        ["our class found", -0.97, -0.75, -0.54, -0.38, -0.2],
      ],
    },
  },
  {
    title: "Homework 14 with answers",
    sheets: {
      Questions: [
        ["Colligative properties – homework 14", null, "Teacher's copy"],
        ["For all questions: Kf of water 1.86 °C/m"],
        [],
        [
          "1",
          "36.0 g of glucose (180 g/mol) are dissolved in 500 g of water. Molality?",
          0.4,
          "mol/kg",
        ],
        ["2", "By how much is the freezing point lowered?", 0.744, "°C"],
        ["3", "So at what temperature does it freeze?", -0.744, "°C"],
        [
          "4",
          "14.6 g of NaCl in 500 g of water: molality?",
          workedOut("=14.6/58.44/0.5", 2),
          "mol/kg",
        ],
        ["5", "Depression, if NaCl gives two ions?", workedOut("=2*1.86*14.6/58.44/0.5", 2), "°C"],
        ["6", "Which of the two freezes first on cooling?", "the glucose solution"],
        ["7", "Why do we use molality, not molarity?", "mass does not change with temperature"],
        [],
        ["2 points each, 14 in all"],
      ],
    },
  },
  {
    title: "Cooling curves, water v. salt water",
    sheets: {
      Data: [
        ["Time / s", "tap water / °C", "salt solution / °C"],
        [0, 18.4, 18.1],
        [30, 11.2, 11.0],
        [60, 6.3, 6.1],
        [90, 2.4, 2.3],
        [120, -0.9, -0.4],
        [150, 0, -2.3],
        [180, 0, -1.7],
        [210, 0, -1.7],
        [240, 0, -1.8],
        [270, -0.1, -1.8],
        [300, -0.1, -1.9],
      ],
      "What we used": [
        ["salt solution: 5.84 g NaCl in 200 g water"],
        ["molality (mol/kg)", "=5.84/58.44/0.2"],
        ["expected from i = 2 (°C)", "=-2*1.86*B2"],
        ["tables say (°C)", saltPoint(5.84, 200)],
        ["we read off the plateau (°C)", -1.7],
        [
          "The dip before the plateau is supercooling. The plateau of the salt slopes down because the ice leaves the salt behind.",
        ],
      ],
    },
  },
  {
    title: "Group results 11B",
    sheets: {
      Results: [
        ["Freezing point of 0.25 mol/kg urea solution in degrees C – class 11B"],
        ["Group", "Owls", "Foxes", "Otters", "Herons", "Newts", "Mean"],
        ["urea weighed (g)", 3.0, 3.01, 2.99, 3.0, 3.02, "=AVERAGE(B3:F3)"],
        ["water weighed (g)", 200, 200, 199, 201, 200, "=AVERAGE(B4:F4)"],
        [
          "molality (mol/kg)",
          "=B3/60.06/B4*1000",
          "=C3/60.06/C4*1000",
          "=D3/60.06/D4*1000",
          "=E3/60.06/E4*1000",
          "=F3/60.06/F4*1000",
          "=AVERAGE(B5:F5)",
        ],
        ["first reading", -0.4, -0.5, -0.5, -0.4, -0.5, "=AVERAGE(B6:F6)"],
        ["second reading", -0.5, -0.5, -0.4, -0.5, -0.5, "=AVERAGE(B7:F7)"],
        ["third reading", -0.5, -0.4, -0.5, -0.5, -0.5, "=AVERAGE(B8:F8)"],
        [],
        ["Range of all readings", "=MAX(B6:F8)-MIN(B6:F8)", null, null, "Book value", -0.46],
      ],
    },
  },
  {
    title: "freezing mixtures for the bucket machine",
    sheets: {
      Sheet1: [
        ["Cold baths (technician's list)", null, null, null, "not for eating"],
        [],
        ["Bath", "crushed ice, g", "salt, g", "which salt", "usually gets to °C", "lasts, min"],
        ["A", 1000, 100, "table salt", -6, 40],
        ["B", 1000, 200, "table salt", -12, 35],
        ["C", 1000, 330, "table salt", -20, 30],
        ["D", 1000, 250, "ammonium chloride", -15, 25],
        [],
        ["Crush the ice small, layer with the salt, drain off brine only when the ice floats."],
        ["Bath C cannot go below −21.1 °C (eutectic of NaCl and water)."],
        ["Gloves and goggles. Brine down the sink with plenty of water."],
      ],
    },
  },
  {
    title: "Coolant demo",
    sheets: {
      Coolant: [
        ["Why antifreeze works: ethylene glycol and water, 100 g of each mix"],
        [],
        ["glycol g", "water g", "starts to freeze °C"],
        [10, 90, glycolPoint(10)],
        [20, 80, glycolPoint(20)],
        [30, 70, glycolPoint(30)],
        [40, 60, glycolPoint(40)],
        [],
        ["TOXIC – keep locked, never pour away where animals drink"],
      ],
    },
  },
  {
    title: "Unknowns lab (find the molar mass)",
    sheets: {
      Unknowns: [
        [
          "Unknown",
          "grams",
          "in g water",
          "ΔTf measured (K)",
          "molar mass found (g/mol)",
          "it was",
          "true M (g/mol)",
          "error %",
        ],
        ["U1", 6.0, 100, 0.62, "=1.86*B2/(D2*C2/1000)", "glucose", 180.16, "=(E2-G2)/G2*100"],
        ["U2", 8.6, 100, 0.47, "=1.86*B3/(D3*C3/1000)", "sucrose", 342.3, "=(E3-G3)/G3*100"],
        ["U3", 2.4, 100, 0.74, "=1.86*B4/(D4*C4/1000)", "urea", 60.06, "=(E4-G4)/G4*100"],
        ["U4", 3.7, 100, 0.75, "=1.86*B5/(D5*C5/1000)", "glycerol", 92.09, "=(E5-G5)/G5*100"],
        [],
        [
          "Cryoscopic constant of water taken as 1.86 K·kg/mol. None of the four is an electrolyte.",
        ],
      ],
    },
  },
  {
    title: "rehydration drink osmolality",
    sheets: {
      ORS: [
        ["Oral rehydration salts, one sachet to 1 litre of water (nursing module 2)"],
        [],
        ["what", "g", "M g/mol", "particles", "mmol of particles"],
        ["sodium chloride", 2.6, 58.44, 2, "=B4/C4*D4*1000"],
        ["glucose, anhydrous", 13.5, 180.16, 1, "=B5/C5*D5*1000"],
        ["potassium chloride", 1.5, 74.55, 2, "=B6/C6*D6*1000"],
        ["trisodium citrate dihydrate", 2.9, 294.1, 4, "=B7/C7*D7*1000"],
        ["sachet", "=SUM(B4:B7)", null, null, "=SUM(E4:E7)"],
        [],
        [
          "In a litre that is about 245 mOsm; freezing point by 1.86 × 0.245 ≈ −0.46 °C, the osmometer said 0.44 K of depression.",
        ],
      ],
    },
  },
  {
    title: "Refractometer check",
    sheets: {
      "week 4": [
        ["Sugar solutions for the refractometer bench, made up by weight"],
        ["Beaker", "Sucrose", "Water", "Sum", "°Brix made", "°Brix read by hand-held", "Diff."],
        ["", "g", "g", "g", "% m/m", "", ""],
        ["i", 10, 190, "=B4+C4", "=100*B4/D4", 5.1, "=F4-E4"],
        ["ii", 20, 180, "=B5+C5", "=100*B5/D5", 10.2, "=F5-E5"],
        ["iii", 30, 170, "=B6+C6", "=100*B6/D6", 15, "=F6-E6"],
        ["iv", 40, 160, "=B7+C7", "=100*B7/D7", 20.1, "=F7-E7"],
        ["v", 60, 140, "=B8+C8", "=100*B8/D8", 29.8, "=F8-E8"],
      ],
    },
  },
  {
    title: "Ideal or real? NaCl",
    sheets: {
      Lecture9: [
        ["molality of NaCl, mol/kg", 0.1, 0.2, 0.3, 0.5],
        ["g NaCl per kg of water", "=B1*58.44", "=C1*58.44", "=D1*58.44", "=E1*58.44"],
        ["ideal, i = 2: ΔT in K", "=2*1.86*B1", "=2*1.86*C1", "=2*1.86*D1", "=2*1.86*E1"],
        ["real ΔT in K", ...[0.1, 0.2, 0.3, 0.5].map((b) => -saltPoint(b * 58.44, 1000))],
        ["so effective i", "=B4/B1/1.86", "=C4/C1/1.86", "=D4/D1/1.86", "=E4/E1/1.86"],
      ],
    },
  },
  {
    title: "Road salt project (Fahrenheit)",
    sheets: {
      Brine: [
        ["Road brine, 8th grade science fair. All temperatures in °F"],
        [],
        ["Jar", "Water (g)", "Rock salt (g)", "Froze at (°F), book", "Froze at (°F), ours"],
        [1, 500, 0, 32, 32],
        [2, 500, 25, workedOut(`=32+1.8*${String(saltPoint(25, 500))}`, 1), 27],
        [3, 500, 50, workedOut(`=32+1.8*${String(saltPoint(50, 500))}`, 1), 21.5],
        [4, 500, 75, workedOut(`=32+1.8*${String(saltPoint(75, 500))}`, 1), 15],
        [],
        ["Chest freezer 0 °F. Jars stirred every 10 min until first slush."],
      ],
    },
  },
];
