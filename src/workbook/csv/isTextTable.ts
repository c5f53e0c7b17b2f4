const ENDINGS = /\.(csv|tsv|txt)$/i;

/** Whether a file is one of rows and fields, by its name's ending. */
export const isTextTable = (fileName: string): boolean => ENDINGS.test(fileName);
