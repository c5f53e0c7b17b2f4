import { seenBooks } from "./lots";
import type { StrangersBook } from "./strangersBook";
import { wronglyTold } from "./wronglyTold";

const books = Object.values(seenBooks).flat();

test.each(books.map((book): [string, StrangersBook] => [book.title, book]))(
  "%s is told nothing but what is true of it",
  (_title, book) => {
    expect(wronglyTold(book)).toEqual([]);
  },
);
