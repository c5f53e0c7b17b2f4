import * as z from "zod/mini";
import { findTarget } from "../../src/catalogue/findTarget";
import { normalName } from "../../src/catalogue/normalName";
import type { Words } from "../words/words";
import type { AimBody } from "./aim";

const share = z.number().check(z.minimum(0), z.maximum(1));
const entry = z.object({
  // In a cell a text that begins with "=" would be a formula.
  name: z.string().check(z.trim(), z.maxLength(80), z.regex(/^[^=]/)),
  temperatureC: z.number().check(z.minimum(-60), z.maximum(40)), // as RIME.CHECK takes it
  iceFrom: share,
  iceTo: share,
  basis: z.enum(["water", "mix"]),
  note: z.optional(z.string().check(z.maxLength(500), z.regex(/^(?!\s*=)/))),
});
const file = z.object({
  servingTargets: z.array(entry).check(z.minLength(1), z.maxLength(500)),
});

type Must = keyof Words["aims"]["must"];

/** Why a file of targets cannot be taken. */
export type AimFileFault =
  | { readonly why: "no JSON" | "no list" }
  | {
      readonly why: "entry";
      /** From 1. */
      readonly entry: number;
      readonly field: string;
      /** As it stands in the file; undefined where it is missing. */
      readonly value: unknown;
      readonly must: Must;
    };

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

const MUSTS: readonly Must[] = ["name", "temperatureC", "iceFrom", "iceTo", "basis", "note"];

/** The first place at which a file breaks the schema. */
function faultOf(json: unknown, [list, at, field]: readonly PropertyKey[]): AimFileFault {
  if (list !== "servingTargets" || typeof at !== "number") return { why: "no list" };
  const given = (json as { servingTargets: readonly unknown[] }).servingTargets[at];
  const must = MUSTS.find((one) => one === field);
  return must === undefined
    ? { why: "entry", entry: at + 1, field: "target", value: given, must: "target" }
    : {
        ...{ why: "entry", entry: at + 1, field: must, must },
        value: (given as Record<string, unknown>)[must],
      };
}

/** What no schema says: ends in order, and names that mean one target each. */
function clashIn(aims: readonly AimBody[]): AimFileFault | null {
  const seen = new Set<string>();
  for (const [at, { name, iceFrom, iceTo }] of aims.entries()) {
    const fault = (field: string, value: unknown, must: Must): AimFileFault => ({
      ...{ why: "entry", entry: at + 1, field, value, must },
    });
    if (iceTo < iceFrom) return fault("iceTo", iceTo, "iceTo");
    if (findTarget(name) !== undefined) return fault("name", name, "catalogue");
    if (seen.has(normalName(name))) return fault("name", name, "twice");
    seen.add(normalName(name));
  }
  return null;
}

/** The targets of a file, or the first thing that is wrong with it. Nothing of a faulty file is taken. */
export function readAimFile(text: string): readonly AimBody[] | AimFileFault {
  const json = parsed(text);
  if (json === undefined) return { why: "no JSON" };
  const { data, error } = z.safeParse(file, json);
  if (error !== undefined) return faultOf(json, error.issues[0]?.path ?? []);
  const aims = data.servingTargets.map(({ note = "", ...rest }) => ({ ...rest, note }));
  return clashIn(aims) ?? aims;
}

/** The text of a file with targets. */
export const aimFileText = (aims: readonly AimBody[]): string =>
  JSON.stringify(
    {
      servingTargets: aims.map(({ name, temperatureC, iceFrom, iceTo, basis, note }) => ({
        ...{ name, temperatureC, iceFrom, iceTo, basis, note },
      })),
    },
    null,
    2,
  );
