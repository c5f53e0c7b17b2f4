import type { Cell, Matrix } from "../../foundation/cell";
import { badInput, outsideValidity } from "../../foundation/problem";
import type { GridFunction } from "../../workbook/univer/gridFunction";
import type { FunctionDescription } from "../../workbook/univer/registerFunctions";
import { NAMESPACE } from "../../worksheet/namespace";
import type { Language } from "./createGrid";

// The same scripts Excel loads, in the order the pane's page loads them.
const FUNCTION_SCRIPTS = ["/runtime.js", "/core.js", "/functions.js"];
// As the manifest names them.
const METADATA: Readonly<Record<Language, string>> = {
  en: "/functions.json",
  de: "/functions.de.json",
};

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

async function loadMetadata(language: Language): Promise<Metadata["functions"]> {
  const response = await fetch(METADATA[language]);
  if (!response.ok) throw new Error(`${METADATA[language]} could not be loaded.`);
  return ((await response.json()) as Metadata).functions;
}

type Described = Metadata["functions"][number];

const described = ({ name, description, parameters }: Described): FunctionDescription => ({
  name: `${NAMESPACE}.${name}`,
  summary: description,
  parameters: parameters.map((each) => ({ ...each, optional: each.optional ?? false })),
});

/** What autocompletion shows of the functions, in a language. */
export const loadDescriptions = async (
  language: Language,
): Promise<readonly FunctionDescription[]> => (await loadMetadata(language)).map(described);

/** Loads the compiled functions and gives them to the grid, named and described by the metadata. */
export async function loadFunctions(): Promise<readonly GridFunction[]> {
  const associated = offerCustomFunctions();
  const metadata = loadMetadata("en");
  for (const script of FUNCTION_SCRIPTS) await loadScript(script);
  return (await metadata).map((each) => {
    const host = associated.get(each.id);
    if (host === undefined)
      throw new Error(`The metadata names ${each.id}, which is not registered.`);
    return { ...described(each), invoke: (args) => call(host, args) };
  });
}
