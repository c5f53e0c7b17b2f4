/** Molar mass of water, kg/mol. @source IUPAC standard atomic weights (ciaaw2021) */
export const WATER_MOLAR_MASS_KG_PER_MOL = 0.01801528;

/** 0 °C on the kelvin scale. By definition. */
export const ZERO_CELSIUS_K = 273.15;

/** Molar gas constant, J/(mol·K). Exact since 2019. @source siBrochure2019 */
export const GAS_CONSTANT_J_PER_MOL_K = 8.314462618;

/**
 * Cryoscopic constant of water of the ideal law, K·kg/mol, as classrooms print it.
 * @source openstaxChemistry2e, table 11.2 (1.86)
 */
export const IDEAL_KF_K_KG_PER_MOL = 1.86;

/** Ebullioscopic constant of water, K·kg/mol. @source openstaxChemistry2e, table 11.2 (0.512) */
export const IDEAL_KB_K_KG_PER_MOL = 0.512;

/** Lowest temperature that is answered, °C, and where answers start to be called extrapolated. */
export const COLDEST_C = -60;
export const EXTRAPOLATED_BELOW_C = -50;
