import { createServer } from "node:https";
import path from "node:path";
import { getHttpsServerOptions } from "office-addin-dev-certs";
import { fileServer, headersWith } from "../bench/server/fileServer";
import { ADDIN_ORIGIN } from "../worksheet/metadata";

// Serves the built add-in where manifest.xml says it is. Excel asks for https, so a development certificate
// is made and trusted on the way (the system asks the user first). Started by `npm run excel`.

const DIST = path.join(__dirname, "..", "..", "dist");

/** Excel's own script loads from several hosts and frames the page: only what it does not need is closed. */
const setHeaders = headersWith(["object-src 'none'", "base-uri 'none'", "form-action 'none'"]);

async function serveAddin(): Promise<void> {
  const { port } = new URL(ADDIN_ORIGIN);
  const certificate = await getHttpsServerOptions();
  createServer(certificate, fileServer(DIST, setHeaders)).listen(Number(port), "localhost", () => {
    console.log(`The add-in is served at ${ADDIN_ORIGIN} (to this machine only).`);
  });
}

serveAddin().catch((error: unknown) => {
  console.error(`The add-in could not be served: ${String(error)}`);
  process.exitCode = 1;
});
