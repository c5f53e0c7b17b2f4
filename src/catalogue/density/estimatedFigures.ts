import type { SourceKey } from "../../foundation/bibliography";
import type { SolutionFigures } from "./solutionFigures";

/** How the apparent volume of sugars and polyols grows with what is dissolved, mL/g: as the fitted ones do. */
const GROWTH = [0.012, 0.0198] as const;
/** The same for salts, after sodium chloride, and for acids and glycol. */
const SALT_GROWTH = [0.25] as const;
const OTHER_GROWTH = [0.02] as const;
const GLYCOL_GROWTH = [0.035] as const;
const SALTS_TO = 0.26;

type Named = readonly [name: string, volume: number, volumeDoubt: number, refraction: number];

/**
 * Partial volumes of very dilute solutions at 25 °C over the molar mass, less 0.003 mL/g for 20 °C (as the
 * fitted ones differ from theirs); refraction by Eisenlohr's atomic refractions (C 2.418, H 1.100, O hydroxyl
 * 1.525, ether 1.643, carbonyl 2.211), which meet the fitted ones within 2 %.
 */
const CARBOHYDRATES: readonly Named[] = [
  ["galactose", 0.61, 0.01, 0.2062],
  ["allulose", 0.61, 0.015, 0.2062],
  ["trehalose", 0.6035, 0.01, 0.2072],
  ["maltotriose", 0.605, 0.012, 0.2075],
  ["sorbitol", 0.655, 0.01, 0.2144],
  ["xylitol", 0.67, 0.01, 0.2163],
  ["erythritol", 0.709, 0.01, 0.2192],
  ["maltitol", 0.63, 0.025, 0.2104],
  ["isomalt", 0.62, 0.025, 0.2104],
  ["lactitol", 0.625, 0.025, 0.2104],
];

const GLYCOL: Named = ["propylene glycol", 0.93, 0.02, 0.251];

const ACIDS: readonly Named[] = [
  ["fruit acids", 0.595, 0.03, 0.192],
  ["malic acid", 0.615, 0.03, 0.1885],
  ["tartaric acid", 0.557, 0.03, 0.1758],
  ["lactic acid", 0.76, 0.05, 0.2134],
  ["acetic acid", 0.862, 0.02, 0.2161],
];

/** Sums of the ions' volumes; milk salts by what milk's solids leave for them (1/1.608 mL/g without fat). */
const SALTS: readonly Named[] = [
  ["potassium chloride", 0.35, 0.03, 0.152],
  ["calcium chloride", 0.16, 0.05, 0.16],
  ["magnesium chloride", 0.15, 0.05, 0.17],
  ["sodium bicarbonate", 0.264, 0.05, 0.15],
  ["trisodium citrate", 0.26, 0.08, 0.17],
  ["milk salts", 0.35, 0.15, 0.17],
];

const estimate =
  (source: SourceKey, growth: readonly number[], upTo: number, refractionDoubt: number) =>
  ([name, volume, volumeDoubt, refraction]: Named): SolutionFigures => ({
    name,
    volumeMlPerG: [volume, ...growth],
    refractionMlPerG: [refraction],
    upToMassFraction: upTo,
    source,
    obtained: "from memory",
    relativeUncertainty: { volume: volumeDoubt / volume, refraction: refractionDoubt },
    basis: "dilute partial volume from memory; refraction added up from atoms or alike substances",
  });

/**
 * The long saccharides of syrups: volume so that a syrup of DE 42 with 80 % solids has 1.424 g/mL (1.415 at
 * 38 °C, trade figure), refraction so that it meets the glucose syrup table of ISO 1743 at 40 % solids.
 */
const higherSaccharides: SolutionFigures = {
  name: "higher saccharides",
  volumeMlPerG: [0.5985, ...GROWTH],
  refractionMlPerG: [0.2084],
  upToMassFraction: 0.9,
  source: "iso1743",
  obtained: "computed here",
  relativeUncertainty: { volume: 0.01, refraction: 0.01 },
  basis: "one density and one refractive index of a glucose syrup of DE 42",
};

/** Dissolved substances whose densities are not printed where we look. */
export const estimatedFigures: readonly SolutionFigures[] = [
  higherSaccharides,
  ...CARBOHYDRATES.map(estimate("hoiland1986", GROWTH, 0.9, 0.02)),
  estimate("hoiland1986", GLYCOL_GROWTH, 1, 0.02)(GLYCOL),
  ...ACIDS.map(estimate("hoiland1986", OTHER_GROWTH, 0.6, 0.03)),
  ...SALTS.map(estimate("millero1971", SALT_GROWTH, SALTS_TO, 0.1)),
];
