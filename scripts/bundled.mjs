import { build } from "esbuild";

/**
 * Bundles one of our programs from its sources, for Node.
 *
 * @param entry path of its first file, or `{ contents, resolveDir }`
 * @param outfile where the bundle goes
 * @returns its path
 */
export async function bundled(entry, outfile) {
  await build({
    ...(typeof entry === "string" ? { entryPoints: [entry] } : { stdin: { loader: "ts", ...entry } }),
    outfile,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    conditions: ["source"],
    logLevel: "warning",
  });
  return outfile;
}
