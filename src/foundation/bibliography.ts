/** Every published source the project quotes, once. Keys are used in figures, functions and tests. */
export const bibliography = {
  ciaaw2021:
    "Prohaska, T. et al., Standard atomic weights of the elements 2021 (IUPAC), Pure Appl. Chem. 94 (2022) 573",
  siBrochure2019: "BIPM, The International System of Units, 9th ed., 2019",
  openstaxChemistry2e: "Flowers, P. et al., Chemistry 2e, OpenStax, 2019, section 11.4",
  murphyKoop2005: "Murphy, D.M. & Koop, T., Q. J. R. Meteorol. Soc. 131 (2005) 1539, eqs 7 and 10",
  stokesRobinson1966: "Stokes, R.H. & Robinson, R.A., J. Phys. Chem. 70 (1966) 2126",
  crc102:
    "Rumble, J.R. (ed.), CRC Handbook of Chemistry and Physics, 102nd ed., 2021, Concentrative Properties of Aqueous Solutions",
  rimeline: "Computed by this project; the method is in DEVELOPERS.md",
  commonPractice: "Common practice, no source",
} as const;

export type SourceKey = keyof typeof bibliography;
