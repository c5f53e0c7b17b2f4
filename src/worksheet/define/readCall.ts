import { badInput, isProblem, type Problem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import { commonShape, stretchedAt, type Lattice, type Shape } from "../../recipe/lattice";
import { NO_OWN_INGREDIENTS } from "../../recipe/namedItem";
import type { Parameter } from "../worksheetFunction";
import type { Argument, ValuesOf } from "./argument";
import { toMatrix, type Given } from "./hostValue";

export type Arguments = Readonly<Record<string, Argument<unknown>>>;

/** The parameters of all arguments, in the order of the keys. */
export const parametersOf = (args: Arguments): readonly Parameter[] =>
  Object.entries(args).flatMap(([key, argument]) => argument.parameters(key));

interface Slot {
  readonly key: string;
  readonly argument: Argument<unknown>;
  readonly given: readonly Given[];
}

/** Raw arguments as rows of cells, one for each parameter; a problem when one is ragged or empty. */
export function givenOf(
  parameters: readonly Parameter[],
  raw: readonly unknown[],
): Result<readonly Given[]> {
  const given: Given[] = [];
  for (const [at, { name }] of parameters.entries()) {
    const matrix = toMatrix(name, raw[at]);
    if (isProblem(matrix)) return matrix;
    given.push(matrix);
  }
  return given;
}

/** Lines the given cells up with the arguments that read them. */
function slotsOf(args: Arguments, given: readonly Given[]): readonly Slot[] {
  let next = 0;
  return Object.entries(args).map(([key, argument]) => {
    const from = next;
    next += argument.parameters(key).length;
    return { key, argument, given: given.slice(from, next) };
  });
}

/** A call's arguments, read: their common shape and the values at each place of it. */
export interface ReadCall<Args> {
  readonly shape: Shape;
  readonly valuesAt: (row: number, column: number) => Result<ValuesOf<Args>>;
}

/** Reads all arguments of a call; a problem when they do not belong together at all. */
export function readCall<Args extends Arguments>(
  args: Args,
  given: readonly Given[],
): Result<ReadCall<Args>> {
  const slots = slotsOf(args, given);
  const owner = slots.find(({ argument }) => argument.readsOwn !== undefined);
  const own = owner?.argument.readsOwn?.(owner.given[0] ?? null) ?? NO_OWN_INGREDIENTS;
  if (isProblem(own)) return own;
  const lattices = slots.map(
    (slot) => [slot.key, slot.argument.read(slot.key, slot.given, { own })] as const,
  );
  const shape = commonShape(lattices.map(([, lattice]) => lattice));
  if (shape === null) return shapesDiffer(lattices);
  return { shape, valuesAt: (row, column) => valuesAt<Args>(lattices, row, column) };
}

type Named = readonly (readonly [string, Lattice<unknown>])[];

function valuesAt<Args extends Arguments>(
  lattices: Named,
  row: number,
  column: number,
): Result<ValuesOf<Args>> {
  const values: Record<string, unknown> = {};
  for (const [key, lattice] of lattices) {
    const value = stretchedAt(lattice, row, column);
    if (isProblem(value)) return value;
    values[key] = value;
  }
  return values as ValuesOf<Args>;
}

function shapesDiffer(lattices: Named): Problem {
  const shapes = lattices
    .filter(([, { rows, columns }]) => rows > 1 || columns > 1)
    .map(([key, { rows, columns }]) => `${key} ${rows} × ${columns}`);
  return badInput(
    `The arguments do not fit together (rows × columns: ${shapes.join(", ")}); each must have the same length or 1.`,
  );
}
