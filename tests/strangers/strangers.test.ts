import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { classBooks } from "./classBooks";
import { counterBooks } from "./counterBooks";
import { strangersWorkbook, type StrangersBook } from "./strangersBook";

const books = [...counterBooks, ...classBooks];

test.each(books.map((book): [string, StrangersBook] => [book.title, book]))(
  "%s is told nothing but what is true of it",
  (_title, book) => {
    const { workbook, recalculated } = strangersWorkbook(book);
    const { findings } = auditWorkbook(workbook, { recalculated });
    const told = new Set(book.told);
    expect(findings.filter(({ rule }) => !told.has(rule))).toEqual([]);
  },
);
