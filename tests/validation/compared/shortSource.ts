import { bibliography, type SourceKey } from "../../../src/foundation/bibliography";

const SHORT: Partial<Readonly<Record<SourceKey, string>>> = {
  crc102: "CRC Handbook",
  lange15: "Lange’s Handbook",
  vdiCoolants: "VDI Heat Atlas",
  ashraeGlycols: "ASHRAE",
  melinder2010: "Melinder 2010",
  tonerCatling2017: "Toner & Catling 2017",
  robinsonSinclair1934: "Robinson & Sinclair 1934",
  janisFerguson1939: "Janis & Ferguson 1939",
  scatchardHamerWood1938: "Scatchard, Hamer & Wood 1938",
  platford1973: "Platford 1973",
  robinsonStokes1959: "Robinson & Stokes 1959",
  phreeqcPitzer: "PHREEQC’s Pitzer model",
  zhangGraceSun2022: "Zhang, Grace & Sun 2022",
  ict: "Int. Critical Tables",
  youngJones1949: "Young & Jones 1949",
  young1957: "Young 1957",
  youngJonesLewis1952: "Young, Jones & Lewis 1952",
};

/** A source as one names it in passing. */
export const shortSource = (key: SourceKey): string =>
  SHORT[key] ?? bibliography[key].split(",")[0]!;
