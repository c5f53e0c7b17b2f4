import { format } from "prettier";
import { densityTables } from "./figures/crcDensities";
import { fitVolume } from "./fitVolume";
import { keepFile } from "./keepFile";

/** Run from the top of the project: npx tsx src/catalogue/fit/runVolumes.ts [--check] */
const FILE = "src/catalogue/density/fittedFigures.ts";

/** Fits every printed table of densities, prints what it found, and rewrites the file of the results. */
async function run(): Promise<void> {
  const fits = densityTables.map(fitVolume);
  for (const { figures, largestGramsPerMl, largestIndex } of fits) {
    console.log(
      `${figures.name}: ${figures.basis}; largest ${largestGramsPerMl.toPrecision(2)} g/mL, ${largestIndex.toPrecision(2)} of the index`,
    );
  }
  const source = `// Written by src/catalogue/fit/runVolumes.ts; a change by hand is lost at the next run.
import type { SolutionFigures } from "./solutionFigures";

export const fittedFigures: readonly SolutionFigures[] = ${JSON.stringify(fits.map(({ figures }) => figures))};
`;
  keepFile(FILE, await format(source, { parser: "typescript", printWidth: 100 }));
}

void run();
