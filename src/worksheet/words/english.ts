import type { LanguageOfFunctions } from "./functionWords";

export const english: LanguageOfFunctions = {
  functions: {},
  whenLeftOut: (value) => `${value} when left out`,
};
