import type { Problem } from "../../foundation/problem";

/** A name inside a file may be as long as 65,535 letters. */
const LONGEST_NAME = 80;

/**
 * A refusal as one readable line, whatever names of a hostile file it quotes: long names are cut short,
 * and letters that would break the line or steer a terminal are shown as "�".
 */
export function onOneLine({ kind, message }: Problem): Problem {
  const shortened = message.replace(/"[^"]*"/gu, (name) =>
    name.length <= LONGEST_NAME + 2 ? name : `${name.slice(0, LONGEST_NAME)}…"`,
  );
  return { kind, message: shortened.replace(/[\p{Cc}\p{Zl}\p{Zp}]/gu, "�") };
}
