// Compiles the hot loop of the draws to WebAssembly and writes it into the engine: `npm run kernel`.
import { readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { argv } from "node:process";
import { fileURLToPath } from "node:url";
import asc from "assemblyscript/asc";

const engine = join(dirname(dirname(fileURLToPath(import.meta.url))), "engine");

/** Modules of the engine that are another one in the kernel: memory is not rows of JavaScript there. */
const standIns = {
  "src/math/doubles.ts": "kernel/doubles.ts",
  "src/flight/fast/work.ts": "kernel/work.ts",
  "src/spread/judge-work.ts": "kernel/judge-work.ts",
  "src/spread/scatter.ts": "kernel/scatter.ts",
};

/** Text of a module, in the words of the kernel's compiler: types are imported as anything else is, its own kinds of numbers not at all. */
function inItsWords(text) {
  return text
    .replace(/^import (?:type )?\{([^}]*)\} from (.*)$/gm, (_, names, from) => {
      const all = names.split(",").map((name) => name.trim().replace(/^type /, ""));
      const kept = all.filter((name) => name !== "" && name !== "f64" && name !== "i32");
      return kept.length === 0 ? "" : `import { ${kept.join(", ")} } from ${from}`;
    })
    .replaceAll("]!", "]")
    .replaceAll("Number.POSITIVE_INFINITY", "Infinity")
    .replaceAll("Number.NEGATIVE_INFINITY", "-Infinity")
    .replaceAll("Number.NaN", "NaN");
}

function readModule(name) {
  const file = name.replace(/\.js(?=\.ts$)/, "");
  try {
    return inItsWords(readFileSync(join(engine, standIns[file] ?? file), "utf8"));
  } catch {
    return null;
  }
}

export async function compiledKernel() {
  let bytes = null;
  const words = [
    "kernel/kernel.ts",
    "-O3",
    "--runtime",
    "stub",
    "--noAssert",
    "--use",
    "abort=",
    "--outFile",
    "kernel.wasm",
  ];
  const { error, stderr } = await asc.main(words, {
    readFile: readModule,
    writeFile: (_, contents) => {
      bytes = contents;
    },
    listFiles: () => [],
  });
  if (error !== null || bytes === null) throw new Error(`the kernel does not compile:\n${stderr.toString()}`);
  return bytes;
}

export function kernelModule(bytes) {
  const code = Buffer.from(bytes).toString("base64");
  return `/** The hot loop of the draws as WebAssembly, written by \`npm run kernel\`. */\nexport const kernelCode =\n  "${code}";\n`;
}

if (argv[1] === fileURLToPath(import.meta.url)) {
  const bytes = await compiledKernel();
  writeFileSync(join(engine, "src/spread/kernel-code.ts"), kernelModule(bytes));
  console.log(`${bytes.length} bytes written`);
}
