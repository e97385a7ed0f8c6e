import { shelfTitles } from "../chrome/shelf-titles.js";
import type { Route } from "./router.js";

const APP = "Delaywright";

/**
 * What the browser calls a page.
 *
 * @param name of the document that the page shows, where it shows one
 * @example
 * titleOf({ page: "pad", path: "demo.plan.json" }, "Third flight"); // "Third flight, at the pad – Delaywright"
 */
export function titleOf(route: Route, name: string | undefined): string {
  const named = name ?? "Nothing here";
  switch (route.page) {
    case "bench":
      return `Bench – ${APP}`;
    case "import":
      return `Import – ${APP}`;
    case "card-desk":
      return `Card desk – ${APP}`;
    case "plan":
      return `${named} – ${APP}`;
    case "pad":
      return `${named}, at the pad – ${APP}`;
    case "label":
      return `Label for ${named} – ${APP}`;
    case "shortlist":
      return `Shortlist for ${named} – ${APP}`;
    case "shelf":
      return `${shelfTitles[route.shelf]} – ${APP}`;
    case "document":
      return `${named}, ${shelfTitles[route.shelf].toLowerCase()} – ${APP}`;
    case "unknown":
      return `Nothing here – ${APP}`;
  }
}
