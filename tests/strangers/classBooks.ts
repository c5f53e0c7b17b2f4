import { englishCourses } from "./classBooks/englishCourses";
import { englishSolutions } from "./classBooks/englishSolutions";
import { englishSweets } from "./classBooks/englishSweets";
import { germanCourses } from "./classBooks/germanCourses";
import { germanSolutions } from "./classBooks/germanSolutions";
import { germanSweets } from "./classBooks/germanSweets";
import type { StrangersBook } from "./strangersBook";

/** Workbooks of people who teach, learn and measure. */
export const classBooks: readonly StrangersBook[] = [
  ...englishSolutions,
  ...germanSolutions,
  ...englishSweets,
  ...germanSweets,
  ...englishCourses,
  ...germanCourses,
];
