import type { Cell, Matrix } from "../../foundation/cell";
import { badInput, outsideValidity } from "../../foundation/problem";
import type { GridFunction } from "../../workbook/univer/gridFunction";
import { NAMESPACE } from "../../worksheet/namespace";

// The same scripts Excel loads, in the order the pane's page loads them.
const FUNCTION_SCRIPTS = ["/runtime.js", "/core.js", "/functions.js"];
const METADATA = "/functions.json";

/** As much of Excel's metadata file as the grid needs. */
interface Metadata {
  readonly functions: readonly {
    readonly id: string;
    readonly name: string;
    readonly description: string;
    readonly parameters: readonly {
      readonly name: string;
      readonly description: string;
      readonly optional?: boolean;
    }[];
  }[];
}

type HostFunction = (...args: unknown[]) => unknown;

/** What Excel calls CustomFunctions.Error: thrown for a single cell, a value inside a spill. */
class HostError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message ?? "");
  }
}

const ERROR_CODES = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
};

function problemOf({ code, message }: HostError): Cell {
  return code === ERROR_CODES.notAvailable ? outsideValidity(message) : badInput(message);
}

function cellOf(value: unknown): Cell {
  if (value instanceof HostError) return problemOf(value);
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean") {
    return value;
  }
  return null;
}

/** Calls a function as Excel does, and takes its answer or its exception as Excel does. */
function call(host: HostFunction, args: readonly unknown[]): Matrix {
  try {
    const answer = host(...args);
    if (!Array.isArray(answer)) return [[cellOf(answer)]];
    return answer.map((row: unknown) => (Array.isArray(row) ? row.map(cellOf) : [cellOf(row)]));
  } catch (error) {
    if (error instanceof HostError) return [[problemOf(error)]];
    throw error;
  }
}

/** Puts the globals in place that the compiled functions register with. */
function offerCustomFunctions(): ReadonlyMap<string, HostFunction> {
  const associated = new Map<string, HostFunction>();
  Object.assign(window, {
    CustomFunctions: {
      associate: (id: string, host: HostFunction) => void associated.set(id, host),
      Error: HostError,
      ErrorCode: ERROR_CODES,
    },
  });
  return associated;
}

function loadScript(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`${address} could not be loaded.`));
    document.head.append(script);
  });
}

async function loadMetadata(): Promise<Metadata> {
  const response = await fetch(METADATA);
  if (!response.ok) throw new Error(`${METADATA} could not be loaded.`);
  return (await response.json()) as Metadata;
}

/** Loads the compiled functions and gives them to the grid, named and described by the metadata. */
export async function loadFunctions(): Promise<readonly GridFunction[]> {
  const associated = offerCustomFunctions();
  const metadata = loadMetadata();
  for (const script of FUNCTION_SCRIPTS) await loadScript(script);
  return (await metadata).functions.map(({ id, name, description, parameters }) => {
    const host = associated.get(id);
    if (host === undefined) throw new Error(`functions.json names ${id}, which is not registered.`);
    return {
      name: `${NAMESPACE}.${name}`,
      summary: description,
      parameters: parameters.map((each) => ({ ...each, optional: each.optional ?? false })),
      invoke: (args) => call(host, args),
    };
  });
}
