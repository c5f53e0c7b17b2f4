import type { Injector } from "@univerjs/core";
import { ISuperTableService } from "@univerjs/engine-formula";
import { BRACKETS } from "../addressed/tableReference";

/** Signs in a column's title at which the engine breaks off: "Weight (g)", "Cost [€]", "Cost, whole". */
const SIGNS = "()[]#@',:";
/** Stand for them inside of the engine, from the private use area of Unicode. */
const FIRST_STAND_IN = 0xe100;

const standIn = (sign: string): string => {
  const place = SIGNS.indexOf(sign);
  return place < 0 ? sign : String.fromCharCode(FIRST_STAND_IN + place);
};

/** A column's title as the engine knows it. */
export const titleForEngine = (title: string): string => title.replaceAll(/[()[\]#@',:]/g, standIn);

const OF_TABLE = new RegExp(String.raw`"(?:[^"]|"")*"|(?<=[\p{L}\p{N}_.])${BRACKETS}`, "gu");

/** A title as formulas write it: ' takes the next sign as it is. */
const writtenTitle = (title: string): string =>
  title.replaceAll(/'(.)|[(),:]/gsu, (sign, escaped?: string) => standIn(escaped ?? sign));

const INNER = /\[(?:'.|[^[\]'])*\]/gsu;

/** Brackets with one title, "[Weight (g)]", or with several parts, "[[#This Row],[Weight (g)]]". */
const inBrackets = (brackets: string): string =>
  /^\[@?\[/.test(brackets)
    ? `[${brackets.slice(1, -1).replaceAll(INNER, writtenTitle)}]`
    : writtenTitle(brackets);

/** A formula with the titles of table columns as the engine knows them. */
export const titlesForEngine = (formula: string): string =>
  formula.replaceAll(OF_TABLE, (token) => (token.startsWith('"') ? token : inBrackets(token)));

/** Makes the engine know the columns of tables by such titles, too. */
export function registerTitles(injector: Injector): void {
  const service = injector.get(ISuperTableService);
  const register = service.registerTable.bind(service);
  service.registerTable = (unit, name, table) => {
    const titles = [...table.titleMap].map(([title, at]) => [titleForEngine(title), at] as const);
    register(unit, name, { ...table, titleMap: new Map([...table.titleMap, ...titles]) });
  };
}
