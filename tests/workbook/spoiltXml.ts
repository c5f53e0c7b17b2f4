/** Ways to spoil a part's XML, whatever the part. */
export const spoiltXml: Readonly<Record<string, (xml: string) => string>> = {
  "cut in the middle": (xml) => xml.slice(0, xml.length / 2),
  "cut before its last bracket": (xml) => xml.slice(0, -1),
  "its last tag left out": (xml) => xml.slice(0, xml.lastIndexOf("</")),
  "plain text": () => "hello",
  "nothing at all": () => "",
  "blanks only": () => "   \n",
  "a second root": (xml) => `${xml}<more/>`,
  "crossed tags": (xml) => xml.replace(/(<\/[^>]+>)$/, "<a><b></a></b>$1"),
  "an attribute without quotes": (xml) => xml.replace(/(<\/[^>]+>)$/, "<a b=c/>$1"),
  "an entity never declared": (xml) => xml.replace(/(<\/[^>]+>)$/, "&nothing;$1"),
  "an external entity of a file": (xml) =>
    `<!DOCTYPE x [<!ENTITY e SYSTEM "file:///etc/passwd">]>${xml.replace(/^<\?.*?\?>/, "")}`,
  "an external entity of an address": (xml) =>
    `<!DOCTYPE x [<!ENTITY e SYSTEM "http://localhost/e">]>${xml.replace(/^<\?.*?\?>/, "")}`,
  "an external document type": (xml) =>
    `<!DOCTYPE x SYSTEM "http://localhost/x.dtd">${xml.replace(/^<\?.*?\?>/, "")}`,
  "a parameter entity": (xml) =>
    `<!DOCTYPE x [<!ENTITY % p SYSTEM "file:///etc/hosts"> %p;]>${xml.replace(/^<\?.*?\?>/, "")}`,
  "a billion laughs": (xml) => `${laughs()}${xml.replace(/^<\?.*?\?>/, "")}`,
  "a thousand levels": (xml) => xml.replace(/(<\/[^>]+>)$/, `${"<a>".repeat(1000)}$1`),
  "a hundred thousand levels": (xml) => xml.replace(/(<\/[^>]+>)$/, `${"<a>".repeat(1e5)}$1`),
  "a control character": (xml) => xml.replace(/(<\/[^>]+>)$/, "\u0001$1"),
  "a bare ampersand": (xml) => xml.replace(/(<\/[^>]+>)$/, " & $1"),
  "a comment never closed": (xml) => xml.replace(/(<\/[^>]+>)$/, "<!-- $1"),
  "a repeated letter, 150 MB": (xml) => xml.replace(/(<\/[^>]+>)$/, `${"a".repeat(150e6)}$1`),
};

function laughs(): string {
  const entity = (index: number) => `<!ENTITY a${index} "${`&a${index - 1};`.repeat(10)}">`;
  const list = Array.from({ length: 9 }, (_, index) => entity(index + 1)).join("");
  return `<!DOCTYPE x [<!ENTITY a0 "lol">${list}]>`;
}
