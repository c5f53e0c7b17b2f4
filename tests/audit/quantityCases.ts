import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** 5 g of salt in 800 g of water, 21 g of sugar in 150 g: by i·Kf·n/kg with Kf = 1.86 K·kg/mol 0.398 and 0.761 K. */
const solutions = (saltsDepression: Rows[number][number], unitless = "-"): Rows => [
  ["Kf, cryoscopic constant of water", "K·kg/mol", 1.86],
  [],
  ["Solution", unitless, "S1", "S2"],
  ["Dissolved substance", unitless, "sodium chloride", "sucrose"],
  ["ms, mass dissolved", "g", 5, 21],
  ["M, molar mass", "g/mol", 58.44, 342.3],
  ["i, particles from one", unitless, 2, 1],
  ["mw, mass of water", "g", 800, 150],
  ["n, amount dissolved", "mol", formula("C5/C6", 0.08556), formula("D5/D6", 0.06135)],
  ["b, molality", "mol/kg", formula("1000*C9/C8", 0.10695), formula("1000*D9/D8", 0.409)],
  ["dT = i Kf b", "K", saltsDepression, formula("D7*$C$1*D10", 0.7607)],
  ["T by calculation", "°C", formula("-C11", -0.3978), formula("-D11", -0.7607)],
  ["T by probe", "°C", -0.6, -0.5],
];

/** Quantities with their letters and their units in a cell of its own, as engineers write them. */
export const quantityCases: readonly RuleCase[] = [
  {
    ...{ rule: "particles-not-counted", cells: ["C11"] },
    what: "a salt counted once, in a table of quantities with their letters",
    rows: solutions(formula("$C$1*C10", 0.1989)),
  },
  {
    ...{ rule: "particles-not-counted", cells: [] },
    what: "a salt counted twice, in a table of quantities with their letters",
    rows: solutions(formula("C7*$C$1*C10", 0.3978)),
  },
  {
    ...{ rule: "result-differs", cells: [] },
    what: "what a probe showed, and moles that are no mass of what is dissolved",
    rows: solutions(formula("C7*$C$1*C10", 0.3978), "none"),
  },
  {
    ...{ rule: "result-differs", cells: [] },
    what: "a gross profit in per cent that is short for a freezing point elsewhere",
    rows: [
      ["Stuff", "Batch (g)"],
      ["water", 600],
      ["sugar", 190],
      ["lemon juice", 60],
      [],
      ["Price less VAT (£)", 2.9],
      ["GP (%)", 87],
    ],
  },
];
