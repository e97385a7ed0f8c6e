import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";

/** Libraries here have a condition named source too, but ship no such files: ours are named one by one. */
function sourceOf(name: string): string {
  return fileURLToPath(new URL(`../${name}/src/index.ts`, import.meta.url));
}

/** Stands on printed cards. */
const { version } = JSON.parse(readFileSync(new URL("package.json", import.meta.url), "utf8")) as { version: string };

export default defineConfig({
  base: "./",
  define: { "import.meta.env.VITE_VERSION": JSON.stringify(version) },
  resolve: {
    alias: Object.fromEntries(["engine", "documents"].map((name) => [`@delaywright/${name}`, sourceOf(name)])),
  },
  plugins: [
    react(),
    VitePWA({
      registerType: "prompt",
      manifest: {
        name: "Delaywright bench",
        short_name: "Delaywright",
        description: "Which ejection delay to cut, how to cut it, and how good the odds are.",
        theme_color: "#fcfbf7",
        background_color: "#fcfbf7",
        display: "standalone",
        start_url: "./",
        icons: [{ src: "icons/icon.svg", sizes: "any", type: "image/svg+xml" }],
      },
      workbox: { clientsClaim: true, globPatterns: ["**/*.{js,css,html,svg,webmanifest}"] },
    }),
  ],
  worker: { format: "es" },
  build: { target: "es2023", sourcemap: true },
});
