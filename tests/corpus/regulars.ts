import type { Layout } from "./kit";
import { buckets } from "./regulars/buckets";
import { buffet } from "./regulars/buffet";
import { classMix } from "./regulars/classMix";
import { cryoscope } from "./regulars/cryoscope";
import { event } from "./regulars/event";
import { formulation } from "./regulars/formulation";
import { matrix } from "./regulars/matrix";
import { oldCard } from "./regulars/oldCard";
import { oldSheets } from "./regulars/oldSheets";
import { samples } from "./regulars/samples";
import { theory } from "./regulars/theory";
import { popBatches } from "./regulars/popBatches";

/** Sheets of six people who work with frozen sweets every day, two of each. */
export const regulars: readonly Layout[] = [
  { name: "Berufsschule, drei Stoffe in einem Topf", language: "de", build: theory },
  { name: "Berufsschule, Praxistag mit Gruppen", language: "de", build: classMix },
  { name: "formulation by weight for the factory", language: "en", build: formulation },
  { name: "three formulas and their data sheets", language: "en", build: matrix },
  { name: "wedding, tasting batch and store room", language: "en", build: event },
  { name: "buffet with three desserts and drinks", language: "en", build: buffet },
  { name: "Kryoskop, drei Messungen je Probe", language: "de", build: cryoscope },
  { name: "Eismixproben, berechnet und gemessen", language: "de", build: samples },
  { name: "kiosk, flavours by the batch", language: "en", build: popBatches },
  { name: "kiosk, buckets and the board", language: "en", build: buckets },
  { name: "Opas Karte mit Werten am Rand", language: "de", build: oldCard },
  { name: "alte Blätter mit Zusammenstellung", language: "de", build: oldSheets },
];
