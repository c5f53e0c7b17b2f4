import { readFile } from "node:fs/promises";
import { createServer, type Server, type ServerResponse } from "node:http";
import path from "node:path";
import { fileServer, headersWith } from "./fileServer";

// The grid draws on a canvas but sets style attributes while it does; everything else comes from us alone.
const setHeaders = headersWith([
  "default-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'self'",
]);

const PORTS_TO_TRY = 20;
const LOOPBACKS = ["127.0.0.1", "::1"]; // a browser may take "localhost" for either

/** A running bench and how to end it. */
export interface Serving {
  readonly url: string;
  readonly close: () => Promise<void>;
}

/**
 * The pane's page with Excel's hosted script replaced by the bench's own host; the file stays as it is. The
 * build may have taken the quotes off its attributes.
 */
export function paneForBench(html: string): string {
  return html.replace(
    /<script\b[^>]*\bsrc="?https:\/\/[^">\s]*\/office\.js"?[^>]*>\s*<\/script>/i,
    '<script src="/bench/host.js"></script>',
  );
}

async function sendPane(directory: string, response: ServerResponse): Promise<void> {
  setHeaders(response);
  try {
    const html = await readFile(path.join(directory, "pane.html"), "utf8");
    response.setHeader("Content-Type", "text/html; charset=utf-8");
    response.end(paneForBench(html));
  } catch {
    response.statusCode = 404;
    response.end("The pane has not been built.");
  }
}

function benchServer(directory: string): Server {
  const files = fileServer(directory, setHeaders);
  return createServer((request, response) => {
    const address = new URL(request.url ?? "/", "http://localhost").pathname;
    if (address === "/pane.html") {
      void sendPane(directory, response);
      return;
    }
    if (address === "/") request.url = "/bench/index.html";
    files(request, response);
  });
}

type Listening = "listening" | "taken" | "no such address";

function listen(server: Server, host: string, port: number): Promise<Listening> {
  return new Promise((resolve, reject) => {
    server.once("error", (error: NodeJS.ErrnoException) => {
      if (error.code === "EADDRINUSE" || error.code === "EACCES") resolve("taken");
      else if (error.code === "EADDRNOTAVAIL" || error.code === "EAFNOSUPPORT") {
        resolve("no such address");
      } else reject(error);
    });
    server.listen({ host, port, exclusive: true }, () => resolve("listening"));
  });
}

const close = (server: Server): Promise<void> =>
  new Promise((resolve) => {
    server.closeAllConnections();
    server.close(() => resolve());
  });

/** Listens on every loopback address this machine has, or on none of them when one is taken. */
async function listenOnLoopback(directory: string, port: number): Promise<readonly Server[]> {
  const servers: Server[] = [];
  for (const host of LOOPBACKS) {
    const server = benchServer(directory);
    const outcome = await listen(server, host, port);
    if (outcome === "listening") servers.push(server);
    if (outcome === "taken") {
      await Promise.all(servers.map(close));
      return [];
    }
  }
  return servers;
}

/** Browsers open nothing on these (WHATWG, Fetch standard, "bad port"; those from 1024 on). */
const REFUSED_BY_BROWSERS: ReadonlySet<number> = new Set([
  ...[1719, 1720, 1723, 2049, 3659, 4045, 4190, 5060, 5061, 6000, 6566],
  ...[6665, 6666, 6667, 6668, 6669, 6679, 6697, 10080],
]);

/** Serves the built files on the first free port from `firstPort` on, to this machine only. */
export async function serve(directory: string, firstPort = 3000): Promise<Serving> {
  for (let port = firstPort; port < firstPort + PORTS_TO_TRY; port += 1) {
    if (REFUSED_BY_BROWSERS.has(port)) continue;
    const servers = await listenOnLoopback(directory, port);
    if (servers.length > 0) {
      return {
        url: `http://localhost:${port}`,
        close: async () => {
          await Promise.all(servers.map(close));
        },
      };
    }
  }
  throw new Error(`Ports ${firstPort} to ${firstPort + PORTS_TO_TRY - 1} are all taken.`);
}
