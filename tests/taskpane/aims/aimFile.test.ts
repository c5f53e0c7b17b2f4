import fc from "fast-check";
import { findTarget } from "../../../src/catalogue/findTarget";
import { normalName } from "../../../src/catalogue/normalName";
import { aimFileText, readAimFile, type AimFileFault } from "../../../taskpane/aims/aimFile";
import type { AimBody } from "../../../taskpane/aims/aim";

const name = fc
  .string({ minLength: 1, maxLength: 80, unit: "grapheme" })
  .map((text) => text.trim().slice(0, 80).trim())
  .filter(
    (text) => /^[^=]/.test(text) && findTarget(text) === undefined && normalName(text) !== "",
  );
const share = fc.double({ min: 0, max: 1, noNaN: true }).map((one) => one + 0);
const aim: fc.Arbitrary<AimBody> = fc
  .record({
    name,
    temperatureC: fc.double({ min: -60, max: 40, noNaN: true }).map((one) => one + 0),
    ends: fc.tuple(share, share),
    basis: fc.constantFrom("water" as const, "mix" as const),
    note: fc.string({ maxLength: 60 }).filter((text) => !/^\s*=/.test(text)),
  })
  .map(({ ends, ...rest }) => ({
    ...rest,
    iceFrom: Math.min(...ends),
    iceTo: Math.max(...ends),
  }));

test("what is saved comes back as it was", () => {
  const several = fc.uniqueArray(aim, {
    minLength: 1,
    maxLength: 8,
    selector: (one) => normalName(one.name),
  });
  fc.assert(
    fc.property(several, (aims) => {
      expect(readAimFile(aimFileText(aims))).toEqual(aims);
    }),
  );
});

const good = { name: "mine", temperatureC: -16, iceFrom: 0.3, iceTo: 0.5, basis: "mix" };
const withOne = (part: object) => JSON.stringify({ servingTargets: [good, { ...good, ...part }] });

test.each<readonly [string, string, AimFileFault]>([
  ["no JSON", "{", { why: "no JSON" }],
  ["another list", '{"targets":[]}', { why: "no list" }],
  ["an empty list", '{"servingTargets":[]}', { why: "no list" }],
  [
    "a share in per cent",
    withOne({ name: "b", iceTo: 50 }),
    { why: "entry", entry: 2, field: "iceTo", value: 50, must: "iceTo" },
  ],
  [
    "ends the wrong way round",
    withOne({ name: "b", iceTo: 0.2 }),
    { why: "entry", entry: 2, field: "iceTo", value: 0.2, must: "iceTo" },
  ],
  [
    "a temperature as a text",
    withOne({ name: "b", temperatureC: "-16" }),
    { why: "entry", entry: 2, field: "temperatureC", value: "-16", must: "temperatureC" },
  ],
  [
    "a name that would be a formula",
    withOne({ name: "=1+1" }),
    { why: "entry", entry: 2, field: "name", value: "=1+1", must: "name" },
  ],
  [
    "a name of the catalogue",
    withOne({ name: "Scooped at −13" }),
    { why: "entry", entry: 2, field: "name", value: "Scooped at −13", must: "catalogue" },
  ],
  [
    "a name twice",
    withOne({ name: "MINE" }),
    { why: "entry", entry: 2, field: "name", value: "MINE", must: "twice" },
  ],
  [
    "a name left out",
    withOne({ name: undefined }),
    { why: "entry", entry: 2, field: "name", value: undefined, must: "name" },
  ],
  [
    "no target at all",
    '{"servingTargets":[7]}',
    { why: "entry", entry: 1, field: "target", value: 7, must: "target" },
  ],
])("%s is refused with its place", (_, text, fault) => {
  expect(readAimFile(text)).toEqual(fault);
});

test("whatever stands in a file, it is taken whole or refused", () => {
  fc.assert(
    fc.property(fc.json(), (text) => {
      const read = readAimFile(`{"servingTargets":${text}}`);
      expect(Array.isArray(read) || "why" in read).toBe(true);
    }),
  );
});
