import { worksheetFunctions } from "./functions";

/** Where the add-in's pages are served from; the manifest names the same place. */
export const ADDIN_ORIGIN = "https://localhost:3443";

/**
 * The JSON metadata by which Excel knows our functions. Every parameter is a matrix of any type and takes
 * error values, so that one bad cell spoils its own answer only.
 */
export function functionMetadata() {
  return {
    allowCustomDataForDataTypeAny: true,
    allowErrorForDataTypeAny: true,
    functions: worksheetFunctions.map((definition) => ({
      id: definition.name,
      name: definition.name,
      description: definition.summary,
      helpUrl: `${ADDIN_ORIGIN}/help/${definition.name.toLowerCase()}.html`,
      parameters: definition.parameters.map(({ name, description, optional }) => ({
        name,
        description,
        type: "any",
        dimensionality: "matrix",
        ...(optional ? { optional } : {}),
      })),
      result: { type: "any", dimensionality: "matrix" },
    })),
  };
}
