const OFFSET_BASIS = 0xcbf29ce484222325n;
const PRIME = 0x100000001b3n;

/**
 * Sixteen hexadecimal digits for a text: FNV-1a, 64 bits, over its UTF-8 bytes. Not a secret, only a mark that
 * a content has changed. The constants are those of RFC 9923.
 */
export function hashText(text: string): string {
  let hash = OFFSET_BASIS;
  for (const byte of new TextEncoder().encode(text)) {
    hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * PRIME);
  }
  return hash.toString(16).padStart(16, "0");
}
