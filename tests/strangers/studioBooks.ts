import { acrossSheets } from "./studioBooks/acrossSheets";
import { benchSolutions } from "./studioBooks/benchSolutions";
import { classSweets } from "./studioBooks/classSweets";
import { developersEnglish } from "./studioBooks/developersEnglish";
import { developersGerman } from "./studioBooks/developersGerman";
import { housesEnglish } from "./studioBooks/housesEnglish";
import { housesGerman } from "./studioBooks/housesGerman";
import type { StrangersBook } from "./strangersBook";

/** Workbooks of classes, of one who develops and teaches frozen sweets, and of professional kitchens. */
export const studioBooks: readonly StrangersBook[] = [
  ...benchSolutions,
  ...classSweets,
  ...developersEnglish,
  ...developersGerman,
  ...housesEnglish,
  ...housesGerman,
  ...acrossSheets,
];
