import { createServer } from "node:https";
import path from "node:path";
import { getHttpsServerOptions } from "office-addin-dev-certs";
import sirv from "sirv";
import { ADDIN_ORIGIN } from "../worksheet/metadata";

// Serves the built add-in where manifest.xml says it is. Excel asks for https, so a development certificate
// is made and trusted on the way (the system asks the user first). Started by `npm run excel`.

const DIST = path.join(__dirname, "..", "..", "dist");

async function serveAddin(): Promise<void> {
  const files = sirv(DIST, { dev: true });
  const { port } = new URL(ADDIN_ORIGIN);
  const certificate = await getHttpsServerOptions();
  createServer(certificate, (request, response) => {
    files(request, response, () => {
      response.writeHead(404).end();
    });
  }).listen(Number(port), "localhost", () => {
    console.log(`The add-in is served at ${ADDIN_ORIGIN} (to this machine only).`);
  });
}

serveAddin().catch((error: unknown) => {
  console.error(`The add-in could not be served: ${String(error)}`);
  process.exitCode = 1;
});
