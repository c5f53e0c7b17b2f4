/** Water activity of saturated sugar solutions at 25 °C as food texts print them, ± 0.01; from memory. */
export const saturatedSolutions = [
  { solute: "sucrose", massPercent: 67.3, waterActivity: 0.85 },
  { solute: "glucose", massPercent: 50.8, waterActivity: 0.89 },
  { solute: "fructose", massPercent: 80.3, waterActivity: 0.63 },
] as const;
