import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const setupFiles = [fileURLToPath(new URL("./scripts/property-seed.ts", import.meta.url))];

/** Nothing of these packages is replaced in a test: files share what they import, and need less than half the time. The app's do not. */
const shared = { isolate: false };

const source = { resolve: { conditions: ["source"] }, ssr: { resolve: { conditions: ["source"] } } };

/** The app's libraries have a condition of that name too, but ship no such files. */
const sources = Object.fromEntries(
  ["engine", "documents"].map((name) => [
    `@delaywright/${name}`,
    fileURLToPath(new URL(`${name}/src/index.ts`, import.meta.url)),
  ]),
);

export default defineConfig({
  test: {
    reporters: ["default", "./scripts/closing-line.ts"],
    // one for each core: the runner would leave one idle
    maxWorkers: availableParallelism(),
    projects: [
      {
        ...source,
        test: {
          name: "engine",
          root: "engine",
          setupFiles,
          include: ["src/**/*.test.ts", "reference/**/*.test.ts", "test/**/*.test.ts"],
          testTimeout: 60_000,
          ...shared,
        },
      },
      {
        ...source,
        test: {
          name: "documents",
          root: "documents",
          setupFiles,
          include: ["src/**/*.test.ts", "test/**/*.test.ts"],
          testTimeout: 60_000,
          ...shared,
        },
      },
      {
        ...source,
        test: {
          name: "cli",
          root: "cli",
          setupFiles,
          include: ["src/**/*.test.ts", "test/**/*.test.ts"],
          testTimeout: 60_000,
          ...shared,
        },
      },
      {
        resolve: { alias: sources },
        test: {
          name: "web",
          root: "web",
          setupFiles,
          include: ["src/**/*.test.ts", "src/**/*.test.tsx"],
          testTimeout: 60_000,
        },
      },
    ],
  },
});
