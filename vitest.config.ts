import { defineConfig } from "vitest/config";

const source = { resolve: { conditions: ["source"] }, ssr: { resolve: { conditions: ["source"] } } };

export default defineConfig({
  test: {
    reporters: ["default", "./scripts/closing-line.ts"],
    projects: [
      {
        ...source,
        test: {
          name: "engine",
          root: "engine",
          include: ["src/**/*.test.ts", "reference/**/*.test.ts", "test/**/*.test.ts"],
          benchmark: { include: ["bench/**/*.bench.ts"] },
          testTimeout: 60_000,
        },
      },
      {
        ...source,
        test: {
          name: "documents",
          root: "documents",
          include: ["src/**/*.test.ts", "test/**/*.test.ts"],
          testTimeout: 60_000,
        },
      },
      {
        ...source,
        test: { name: "cli", root: "cli", include: ["src/**/*.test.ts", "test/**/*.test.ts"], testTimeout: 60_000 },
      },
    ],
  },
});
