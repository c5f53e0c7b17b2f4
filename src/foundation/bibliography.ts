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
  archerWang1990: "Archer, D.G. & Wang, P., J. Phys. Chem. Ref. Data 19 (1990) 371",
  wagnerPruss1993: "Wagner, W. & Pruss, A., J. Phys. Chem. Ref. Data 22 (1993) 783",
  kell1975: "Kell, G.S., J. Chem. Eng. Data 20 (1975) 97",
  chandrupatla1997: "Chandrupatla, T.R., Adv. Eng. Software 28 (1997) 145",
  norrish1966: "Norrish, R.S., J. Food Technol. 1 (1966) 25",
  gordonTaylor1952: "Gordon, M. & Taylor, J.S., J. Appl. Chem. 2 (1952) 493",
  fox1956: "Fox, T.G., Bull. Am. Phys. Soc. 1 (1956) 123",
  kleinhansMazur2007: "Kleinhans, F.W. & Mazur, P., Cryobiology 54 (2007) 212",
  roos1993: "Roos, Y.H., Carbohydr. Res. 238 (1993) 39",
  roosKarel1991: "Roos, Y. & Karel, M., J. Food Sci. 56 (1991) 1676",
  orford1989: "Orford, P.D. et al., Int. J. Biol. Macromol. 11 (1989) 91",
  angell1988: "Angell, C.A. & Sare, E.J., J. Chem. Phys. 52 (1970) 1058; Angell, C.A. (1988)",
  takaizumi1997: "Takaizumi, K. & Wakabayashi, T., J. Solution Chem. 26 (1997) 927",
  belitz2004:
    "Belitz, H.-D., Grosch, W. & Schieberle, P., Food Chemistry, table 0.7 (after Slade & Levine)",
  gamanSherrington1990:
    "Relative sweetness, table after Gaman, P.M. & Sherrington, K.B. (1990) and Emodi, A. (1982)",
  foodProperties2006:
    "Int. J. Food Prop. 9 (2006) 559 (glass transitions of dry trehalose and sucrose)",
  goffHartel2013: "Goff, H.D. & Hartel, R.W., Ice Cream, 7th ed., Springer, 2013",
  foxMcSweeney1998:
    "Fox, P.F. & McSweeney, P.L.H., Dairy Chemistry and Biochemistry, 1998, tables 5.4 to 5.7",
  mohos2010:
    "Antokolskaya et al. (1964) in Mohos, F., Confectionery and Chocolate Engineering, 2010, table A2.2",
  solubilityTables: "Solubilities in water at 20 °C as handbooks print them",
  ict: "Washburn, E.W. (ed.), International Critical Tables, McGraw-Hill, 1926-1930",
  lange15: "Dean, J.A. (ed.), Lange's Handbook of Chemistry, 15th ed., 1999, table 5.13",
  youngJones1949: "Young, F.E. & Jones, F.T., J. Phys. Colloid Chem. 53 (1949) 1334",
  young1957: "Young, F.E., J. Phys. Chem. 61 (1957) 616",
  youngJonesLewis1952: "Young, F.E., Jones, F.T. & Lewis, H.J., J. Phys. Chem. 56 (1952) 1093",
  nickerson1974: "Nickerson, T.A., in Fundamentals of Dairy Chemistry, 2nd ed., 1974",
  cavatur2002: "Cavatur, R.K. et al., Pharm. Res. 19 (2002) 894",
  lane1925: "Lane, L.B., Ind. Eng. Chem. 17 (1925) 924",
  chirife1980:
    "Chirife, J., Ferro Fontán, C. & Benmergui, E.A., J. Food Technol. 15 (1980) 59 (Norrish constants)",
  chirife2010: "Norrish constants of polyols, Int. J. Dentistry (2010) 981072, table 3",
  melinder2010:
    "Melinder, Å., Properties of Secondary Working Fluids for Indirect Systems, IIR, 2010",
  vdiCoolants: "VDI-Wärmeatlas (VDI Heat Atlas), freezing points of brines and antifreezes",
  janisFerguson1939: "Janis, A.A. & Ferguson, J.B., Can. J. Res. B 17 (1939) 215",
  pitzerMayorga1973: "Pitzer, K.S. & Mayorga, G., J. Phys. Chem. 77 (1973) 2300",
  ashraeGlycols: "ASHRAE Handbook, Fundamentals, tables of aqueous glycol solutions",
  tonerCatling2017:
    "Toner, J.D. & Catling, D.C., J. Chem. Eng. Data 62 (2017) 995, evaluated with PHREEQC 3.8.9",
  phreeqcPitzer:
    "Plummer, L.N. et al., USGS WRI 88-4153 (1988); Pitzer parameters as distributed with PHREEQC 3.8.9",
  robinsonStokes1959:
    "Robinson, R.A. & Stokes, R.H., Electrolyte Solutions, 2nd ed., 1959, appendix 8",
  robinsonSinclair1934: "Robinson, R.A. & Sinclair, D.A., J. Am. Chem. Soc. 56 (1934) 1830",
  scatchardHamerWood1938:
    "Scatchard, G., Hamer, W.J. & Wood, S.E., J. Am. Chem. Soc. 60 (1938) 3061 (isopiestic at 25 °C)",
  platford1973: "Platford, R.F., J. Chem. Eng. Data 18 (1973) 215 (isopiestic at 0 °C)",
  zhangGraceSun2022: "Zhang, L., Grace, P.M. & Sun, D.-W., Drying Technology 40 (2022) 2404",
  teos10:
    "IOC, SCOR & IAPSO, The International Thermodynamic Equation of Seawater 2010, evaluated with the Gibbs SeaWater toolbox 3.6.16",
  millero1978:
    "Millero, F.J., UNESCO Tech. Pap. Mar. Sci. 28 (1978) 29 (freezing point of seawater)",
  millero2008:
    "Millero, F.J. et al., Deep-Sea Res. I 55 (2008) 50 (reference composition of seawater)",
  bodnar1993: "Bodnar, R.J., Geochim. Cosmochim. Acta 57 (1993) 683 (after Hall, D.L. et al. 1988)",
  starzakPeacock1997: "Starzak, M. & Peacock, S.D., Zuckerindustrie 122 (1997) 380",
  gb5413: "GB 5413.38-2016, Freezing point of raw milk, thermistor cryoscope (after ISO 5764)",
  lozanoLachenmeier2015: "Lozano Tarancon, A. & Lachenmeier, D.W., Beverages 1 (2015) 45",
  phEur20235: "European Pharmacopoeia, 2.2.35 Osmolality, table of reference solutions",
  aoac961: "AOAC 961.07, Freezing point of milk",
  leighton1927: "Leighton, A., J. Dairy Sci. 10 (1927) 300 (sucrose figures after Pickering 1891)",
  weng2011: "Weng, L., Li, W. & Zuo, J., Thermochim. Acta 512 (2011) 225",
  usdaSr26:
    "USDA National Nutrient Database for Standard Reference, release 26, 2013 (carried on as FoodData Central SR Legacy)",
  ifct2017:
    "Longvah, T., Ananthan, R., Bhaskarachary, K. & Venkaiah, K., Indian Food Composition Tables, National Institute of Nutrition (ICMR), Hyderabad, 2017",
  white1962: "White, J.W. et al., Composition of American Honeys, USDA Tech. Bull. 1261, 1962",
  craNutritiveSweeteners:
    "Corn Refiners Association, Nutritive Sweeteners from Corn, table of saccharide compositions",
  cfr184_1866: "21 CFR 184.1866, High fructose corn syrup",
  mccanceWiddowson: "McCance and Widdowson's The Composition of Foods",
  eu231_2012: "Commission Regulation (EU) No 231/2012, specifications for food additives",
  eu1169_2011:
    "Regulation (EU) No 1169/2011 on food information: Annex II (allergens), III (statements), XII (strength)",
  usc343w:
    "21 U.S.C. 343(w) and 321(qq), major food allergens, as amended by the FASTER Act of 2021 (sesame)",
  oimlR22: "OIML R 22, International alcoholometric tables, 1973",
  nistHandbook44: "NIST Handbook 44, Appendix C, General tables of units of measurement",
  nistSp811: "NIST Special Publication 811, Guide for the use of the SI, 2008, Appendix B",
  cfr101_9: "21 CFR 101.9(b)(5)(viii), household measures on nutrition labels",
  cfr184_1666: "21 CFR 184.1666, Propylene glycol",
  cdcInfantBotulism:
    "Centers for Disease Control and Prevention, advice on foods to avoid: no honey before 12 months",
  fdaEggSafety: "US Food and Drug Administration, What You Need to Know About Egg Safety",
  cdcRawMilk: "Centers for Disease Control and Prevention, advice on raw milk",
  fdaFlour: "US Food and Drug Administration, Flour is a raw food",
  cdcAlcohol: "Centers for Disease Control and Prevention, advice on alcohol use and pregnancy",
  fsaGlycerol: "Food Standards Agency (UK), guidance on glycerol in slush-ice drinks, 2025",
  nhsChoking: "National Health Service (UK), food safety advice for young children: whole nuts",
  fdaXylitolDogs: "US Food and Drug Administration, advice on xylitol and dogs",
  nbsC440:
    "Bates, F.J. and others, Polarimetry, Saccharimetry and the Sugars, NBS Circular C440, 1942 (Brix, Baumé of modulus 145)",
  choiOkos1986:
    "Choi, Y. & Okos, M.R. (1986), as printed in ASHRAE Handbook, Refrigeration, 2006, chapter 9, tables 1 and 2",
  usdaFreezing:
    "US Department of Agriculture, Food Safety and Inspection Service, Freezing and Food Safety",
  pham1986: "Pham, Q.T., J. Food Technol. 21 (1986) 209 (freezing time of foods, simplified)",
  plank1941: "Plank, R., Z. Ges. Kälte-Ind. 20 (1913) 109 and 48 (1941) (freezing time)",
  pham1984:
    "Pham, Q.T., Int. J. Refrig. 7 (1984) 377 (cooling, phase change and cooling below, one after the other), as in ASHRAE Handbook, Refrigeration, 2006, chapter 10",
  levy1981:
    "Levy, F.L., Int. J. Refrig. 4 (1981) 223 (conductivity), as in ASHRAE Handbook, Refrigeration, 2006, chapter 9",
  wlf1955: "Williams, M.L., Landel, R.F. & Ferry, J.D., J. Am. Chem. Soc. 77 (1955) 3701",
  lorentzLorenz1880: "Lorentz, H.A., Ann. Phys. 9 (1880) 641; Lorenz, L., Ann. Phys. 11 (1880) 70",
  hoiland1986:
    "Høiland, H., in Hinz, H.-J. (ed.), Thermodynamic Data for Biochemistry and Biotechnology, Springer, 1986 (partial molar volumes)",
  iso1743:
    "ISO 1743:1973, Glucose syrup, dry matter by refractive index, as GOST R 50546-93 prints its table",
  millero1971: "Millero, F.J., Chem. Rev. 71 (1971) 147 (molal volumes of electrolytes)",
  rimeline: "Computed by this project; the method is in DEVELOPERS.md",
  commonPractice: "Common practice, no source",
} as const;

export type SourceKey = keyof typeof bibliography;
