import { headerRole } from "../recipes/headings/headerRole";
import { partOf } from "./partLabel";

const ANSWERS = new Set(["freezing point", "depression", "molality", "ice fraction"]);

/** Whether words name something that is worked out of a recipe. */
export const saysAnswer = (label: string): boolean =>
  label !== "" && (ANSWERS.has(headerRole(label) ?? "") || partOf(label) !== null);
