import { worksheetFunctions } from "./functions";
import { english } from "./words/english";
import type { LanguageOfFunctions } from "./words/functionWords";
import { german } from "./words/german";

/** The metadata's files: Excel takes the one its manifest names for the user's language, and English else. */
export const METADATA_FILES: Readonly<Record<string, LanguageOfFunctions>> = {
  "functions.json": english,
  "functions.de.json": german,
};

/** Where the add-in's pages are served from; the manifest names the same place. */
export const ADDIN_ORIGIN = "https://localhost:3443";

/**
 * The JSON metadata by which Excel knows our functions. Every parameter is a matrix of any type and takes
 * error values, so that one bad cell spoils its own answer only.
 * @param language of the descriptions; ids and names of functions and arguments stay as they are
 */
export function functionMetadata({ functions: words, whenLeftOut }: LanguageOfFunctions = english) {
  return {
    allowCustomDataForDataTypeAny: true,
    allowErrorForDataTypeAny: true,
    functions: worksheetFunctions.map((definition) => ({
      id: definition.name,
      name: definition.name,
      description: words[definition.name]?.summary ?? definition.summary,
      helpUrl: `${ADDIN_ORIGIN}/help/${definition.name.toLowerCase()}.html`,
      parameters: definition.parameters.map(({ name, description, optional, default: value }) => ({
        name,
        description: `${words[definition.name]?.parameters[name] ?? description}${
          value === undefined ? "" : `; ${whenLeftOut(value)}`
        }`,
        type: "any",
        dimensionality: "matrix",
        ...(optional ? { optional } : {}),
      })),
      result: { type: "any", dimensionality: "matrix" },
    })),
  };
}
