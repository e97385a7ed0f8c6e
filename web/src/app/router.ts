import { useSyncExternalStore } from "react";

/** Libraries, by the word that stands in the address. `others`: what has no library of its own, or cannot be read. */
export const shelves = [
  "rockets",
  "motors",
  "hands",
  "tools",
  "fields",
  "flyers",
  "rules",
  "flights",
  "others",
] as const;
export type Shelf = (typeof shelves)[number];

/** Where in the app one is. The address after the hash says it, so that the app works from any folder and offline. */
export type Route =
  | { readonly page: "bench" }
  | { readonly page: "import" }
  | { readonly page: "card-desk" }
  | { readonly page: "plan"; readonly path: string }
  | { readonly page: "pad"; readonly path: string }
  | { readonly page: "label"; readonly path: string }
  | { readonly page: "shortlist"; readonly path: string }
  | { readonly page: "shelf"; readonly shelf: Shelf }
  | { readonly page: "document"; readonly shelf: Shelf; readonly path: string }
  | { readonly page: "unknown"; readonly address: string };

function isShelf(text: string | undefined): text is Shelf {
  return shelves.some((shelf) => shelf === text);
}

/** Pages of one document, by the word that stands in the address. */
const pagesOfOne = ["plan", "pad", "label", "shortlist"] as const;

function isPageOfOne(text: string): text is (typeof pagesOfOne)[number] {
  return pagesOfOne.some((page) => page === text);
}

/**
 * Reads an address.
 *
 * @param hash as the browser gives it, with or without `#`
 * @example
 * routeOf("#/plan/demo.plan.json"); // { page: "plan", path: "demo.plan.json" }
 */
export function routeOf(hash: string): Route {
  const address = hash.replace(/^#\/?/, "");
  let parts: string[];
  try {
    parts = address.split("/").map(decodeURIComponent);
  } catch {
    return { page: "unknown", address };
  }
  const [first, second, ...rest] = parts;
  if (first === undefined || first === "") return { page: "bench" };
  if (rest.length > 0) return { page: "unknown", address };
  if (second === undefined || second === "") {
    if (first === "import" || first === "card-desk") return { page: first };
    return isShelf(first) ? { page: "shelf", shelf: first } : { page: "unknown", address };
  }
  if (isPageOfOne(first)) return { page: first, path: second };
  return isShelf(first) ? { page: "document", shelf: first, path: second } : { page: "unknown", address };
}

/** The address of a place in the app, for links. */
export function addressOf(route: Exclude<Route, { page: "unknown" }>): string {
  switch (route.page) {
    case "bench":
      return "#/";
    case "import":
    case "card-desk":
      return `#/${route.page}`;
    case "shelf":
      return `#/${route.shelf}`;
    case "document":
      return `#/${route.shelf}/${encodeURIComponent(route.path)}`;
    default:
      return `#/${route.page}/${encodeURIComponent(route.path)}`;
  }
}

/** Goes to a place in the app. */
export function go(route: Exclude<Route, { page: "unknown" }>): void {
  location.hash = addressOf(route);
}

function subscribe(changed: () => void): () => void {
  addEventListener("hashchange", changed);
  return () => removeEventListener("hashchange", changed);
}

/** The place that the address names now. */
export function useRoute(): Route {
  return routeOf(useSyncExternalStore(subscribe, () => location.hash));
}
