import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { validationPage } from "./validationPage";

// npx tsx tests/validation/write.ts [folder]: writes validation.html, as the build does into dist/help.
const folder = process.argv[2] ?? path.join(__dirname, "../../dist/help");
mkdirSync(folder, { recursive: true });
const file = path.join(folder, "validation.html");
writeFileSync(file, validationPage());
process.stdout.write(`${file}\n`);
