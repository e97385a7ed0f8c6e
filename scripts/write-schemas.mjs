// Writes documents/schemas/*.schema.json from the schemas in documents/src.
import { execFileSync } from "node:child_process";
import { mkdir, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { bundled } from "./bundled.mjs";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const folder = join(root, "documents", "schemas");
const bundle = join(root, "node_modules", ".cache", "delaywright", "schemas.mjs");

const contents = 'export { kindNames } from "./kinds/kinds.js"; export { jsonSchemaOf } from "./schemas.js";';
await bundled({ contents, resolveDir: join(root, "documents", "src") }, bundle);

const { kindNames, jsonSchemaOf } = await import(pathToFileURL(bundle).href);
await mkdir(folder, { recursive: true });
for (const kind of kindNames) {
  await writeFile(join(folder, `${kind}.schema.json`), `${JSON.stringify(jsonSchemaOf(kind), null, 2)}\n`);
}
await rm(bundle);
execFileSync(
  process.execPath,
  [join(root, "node_modules", "@biomejs", "biome", "bin", "biome"), "format", "--write", folder],
  { stdio: "ignore" },
);
process.stdout.write(`${kindNames.length} schemas written\n`);
