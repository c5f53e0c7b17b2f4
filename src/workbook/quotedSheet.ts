/** A sheet's name as it stands before "!", quoted where it has to be. */
export const quotedSheet = (name: string): string =>
  /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) && !/^[A-Z]{1,3}\d+$/i.test(name)
    ? name
    : `'${name.replaceAll("'", "''")}'`;
