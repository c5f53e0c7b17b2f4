import type { Chance } from "../random";

/** Euros that a kilogram costs, more or less; what is not here is fruit or the like. */
const EUROS: Readonly<Record<string, number>> = {
  ...{ Wasser: 0.004, Leitungswasser: 0.004, Filterkaffee: 1.1, Orangensaft: 2.2, Vollmilch: 1.15 },
  ...{ Zucker: 1.05, Kristallzucker: 1.05, Haushaltszucker: 1.15, Saccharose: 1.05, Salz: 0.6 },
  ...{ "Dextrose-Monohydrat": 2.1, "Glukosesirup DE 42": 2.6, Fruktose: 4.4, Inulin: 9.5 },
  ...{ "Sahne 35 %": 5.2, Magermilchpulver: 6.8, "Naturjoghurt 3,5 %": 2.3, Eigelb: 7.5 },
  ...{ Honig: 11.5, Zitronensaft: 3.4, Limettensaft: 5.2, Apfelmus: 2.2, Banane: 1.9 },
  ...{ Haselnüsse: 13.5, Walnüsse: 15, Pistazien: 38, Kokosraspel: 6.5, Kokosmilch: 4.8 },
  ...{ Kakaopulver: 12, "Zitronensäure-Monohydrat": 5, Himbeeren: 8.9, Heidelbeeren: 9.5 },
  ...{ "Spirituose 40 % vol": 16, "Fruchtlikör 25 %": 14 },
};

/** What a kilogram costs here, in cents. */
export function eurosPerKg(random: Chance, name: string): number {
  const usual = EUROS[name] ?? 4.5;
  return usual < 0.1 ? usual : Math.round(100 * usual * random.between(0.9, 1.15)) / 100;
}
