import * as z from "zod/mini";
import type { HeldWaterCurve } from "../engine/heldWaterCurve";
import { bibliography, type SourceKey } from "../foundation/bibliography";
import type { Figure } from "../foundation/figure";

/** What a kitchen or a classroom calls a solute. */
export type SoluteKind =
  | "sugar"
  | "polyol"
  | "saccharide polymer"
  | "salt"
  | "acid"
  | "alcohol"
  | "lumped" // several substances taken as one: milk salts, fruit acids
  | "other";

/** How well the curve is known: shown with every answer that rests on it. */
export interface CurveRecord {
  readonly source: readonly SourceKey[];
  readonly obtained: Figure["obtained"];
  /** RMS and largest residual of the fit, K; 0 points when the curve is an estimate. */
  readonly rmsK: number;
  readonly largestK: number;
  readonly points: number;
  /** The curve has been checked against print down to this temperature, °C. */
  readonly checkedToC: number;
  /** Stated standard uncertainty of the freezing-point depression, as a share of the depression. */
  readonly relativeUncertainty: number;
  readonly basis: string;
}

/** A substance that dissolves, one file each under solutes/. */
export interface Solute {
  readonly name: string;
  readonly aliases: { readonly en: readonly string[]; readonly de: readonly string[] };
  readonly formula: string;
  readonly cas: string | null;
  readonly kind: SoluteKind;
  /** False for glycols, methanol and the like: for class only, refused in what is meant to be eaten. */
  readonly food: boolean;
  readonly molarMass: Figure;
  /** Particles per formula unit if fully dissociated: the i of the ideal law. */
  readonly vantHoff: Figure;
  readonly curve: HeldWaterCurve;
  readonly curveRecord: CurveRecord;
  /** Set on a hydrate ("glucose monohydrate"): what it gives to the solution, and its water of crystallisation. */
  readonly hydrateOf?: { readonly solute: string; readonly waterMassFraction: number };
  /** Relative to sucrose = 1, gram for gram, in solution. */
  readonly sweetness?: Figure;
  readonly glassTransitionDry?: Figure; // °C
  readonly gordonTaylor?: Figure; // constant k of the Gordon–Taylor equation, 1
  readonly maxFreezeTemperature?: Figure; // Tm′, °C
  readonly maxFreezeSolids?: Figure; // C_g′, mass fraction
  readonly eutecticTemperature?: Figure; // °C
  readonly eutecticMassFraction?: Figure;
  readonly solubility20?: Figure; // g per 100 g water at 20 °C
  readonly note?: string;
}

const sourceKey = z.enum(Object.keys(bibliography) as [SourceKey, ...SourceKey[]]);
const obtained = z.enum(["from the source", "computed here", "from memory", "common practice"]);
const text = z.string().check(z.minLength(1));

export const figureSchema = z.strictObject({
  value: z.number(),
  unit: text,
  source: sourceKey,
  obtained,
  uncertainty: z.number().check(z.nonnegative()),
  basis: text,
});

const curveSchema = z.discriminatedUnion("form", [
  z.strictObject({
    form: z.literal("hydration"),
    sites: z.number().check(z.positive()),
    constantFreezing: z.number().check(z.positive()),
    constant25C: z.number().check(z.positive()),
    units: z.optional(z.number().check(z.positive())),
  }),
  z.strictObject({ form: z.literal("norrish"), constant: z.number() }),
  z.strictObject({
    form: z.literal("series"),
    ions: z.number().check(z.positive()),
    debyeHueckel: z.number().check(z.nonnegative()),
    a: z.tuple([z.number(), z.number(), z.number(), z.number()]),
    e: z.number(),
    e2: z.number(),
    k: z.tuple([z.number(), z.number()]),
  }),
]);

const soluteSchema = z.strictObject({
  name: text,
  aliases: z.strictObject({ en: z.array(text), de: z.array(text) }),
  formula: text,
  cas: z.nullable(z.string().check(z.regex(/^\d{2,7}-\d{2}-\d$/))),
  kind: z.enum([
    "sugar",
    "polyol",
    "saccharide polymer",
    "salt",
    "acid",
    "alcohol",
    "lumped",
    "other",
  ]),
  food: z.boolean(),
  molarMass: figureSchema,
  vantHoff: figureSchema,
  curve: curveSchema,
  curveRecord: z.strictObject({
    source: z.array(sourceKey).check(z.minLength(1)),
    obtained,
    rmsK: z.number().check(z.nonnegative()),
    largestK: z.number().check(z.nonnegative()),
    points: z.number().check(z.nonnegative()),
    checkedToC: z.number(),
    relativeUncertainty: z.number().check(z.nonnegative()),
    basis: text,
  }),
  hydrateOf: z.optional(
    z.strictObject({
      solute: text,
      waterMassFraction: z.number().check(z.positive(), z.lt(1)),
    }),
  ),
  sweetness: z.optional(figureSchema),
  glassTransitionDry: z.optional(figureSchema),
  gordonTaylor: z.optional(figureSchema),
  maxFreezeTemperature: z.optional(figureSchema),
  maxFreezeSolids: z.optional(figureSchema),
  eutecticTemperature: z.optional(figureSchema),
  eutecticMassFraction: z.optional(figureSchema),
  solubility20: z.optional(figureSchema),
  note: z.optional(text),
});

/** Checks a catalogue entry when the program loads; a broken one is our mistake and stops it. */
export function defineSolute(entry: Solute): Solute {
  soluteSchema.parse(entry);
  return entry;
}
