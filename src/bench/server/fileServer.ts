import type { IncomingMessage, ServerResponse } from "node:http";
import sirv from "sirv";

/** Puts on an answer what a browser has to know besides its contents. */
export type SetHeaders = (response: ServerResponse) => void;

/** Headers of every answer, also of none found. @param policy directives of the Content-Security-Policy */
export const headersWith =
  (policy: readonly string[]): SetHeaders =>
  (response) => {
    response.setHeader("Content-Security-Policy", policy.join("; "));
    response.setHeader("X-Content-Type-Options", "nosniff");
    response.setHeader("Referrer-Policy", "no-referrer");
    response.setHeader("Cache-Control", "no-cache");
  };

/** Answers requests with the files of a folder, read anew each time, and with nothing outside of it. */
export function fileServer(directory: string, setHeaders: SetHeaders) {
  const files = sirv(directory, { dev: true, etag: true, setHeaders });
  return (request: IncomingMessage, response: ServerResponse): void =>
    files(request, response, () => {
      setHeaders(response);
      response.statusCode = 404;
      response.end("There is no such file.");
    });
}
