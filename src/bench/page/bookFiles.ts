import type { FUniver } from "@univerjs/core/facade";
import { isProblem } from "../../foundation/problem";
import type { Book } from "../book";
import type { Grid } from "../grid";
import { downloadXlsx } from "./download";
import { fileToBook, type AskDecimal } from "./fileToBook";
import { gridToBook } from "./gridToBook";
import { openBook } from "./openBook";

/** Opening and saving. Each answers with sentences for the user, none when there is nothing to say. */
export interface BookFiles {
  readonly show: (book: Book) => Promise<readonly string[]>;
  readonly openFile: (file: File) => Promise<readonly string[]>;
  readonly saveCopy: () => Promise<readonly string[]>;
}

/** What is open is closed only after the new book stands; a file that cannot be read changes nothing. */
export function bookFiles(
  api: FUniver,
  grid: Grid,
  ask: AskDecimal,
  onOpened: (book: Book) => void,
): BookFiles {
  const show = async (book: Book): Promise<readonly string[]> => {
    const refused = await openBook(api, book);
    onOpened(book);
    await grid.settled();
    return refused;
  };

  const openFile = async (file: File): Promise<readonly string[]> => {
    const opened = await fileToBook(file, ask);
    if (opened === null) return [`${file.name} was not opened.`];
    if (isProblem(opened)) return [`${file.name} was not opened. ${opened.message}`];
    const refused = await show(opened.book);
    return [...opened.notes, ...refused];
  };

  const saveCopy = async (): Promise<readonly string[]> => {
    const snapshot = api.getActiveWorkbook()?.save();
    if (snapshot === undefined) return [];
    const { bookToXlsx } = await import("../xlsx/bookToXlsx");
    const bytes = await bookToXlsx(gridToBook(grid, snapshot));
    downloadXlsx(`${snapshot.name} copy.xlsx`, bytes);
    return [];
  };
  return { show, openFile, saveCopy };
}
