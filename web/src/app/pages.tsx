import { BenchPage } from "../bench/bench-page.js";
import { Loaded, type LoadedLater, loadedLater } from "../parts/index.js";
import { addressOf, type Route } from "./router.js";

const planPage = loadedLater(async () => (await import("../plan/plan-page.js")).PlanPage);
const padPage = loadedLater(async () => (await import("../pad/pad-page.js")).PadPage);
const shelfPage = loadedLater(async () => (await import("../libraries/index.js")).ShelfPage);
const documentPage = loadedLater(async () => (await import("../libraries/index.js")).DocumentPage);
const labelPage = loadedLater(async () => (await import("../label/label-page.js")).LabelPage);
const shortlistPage = loadedLater(async () => (await import("../shortlist/shortlist-page.js")).ShortlistPage);
const cardDeskPage = loadedLater(async () => (await import("../card-desk/card-desk-page.js")).CardDeskPage);
const flightsPage = loadedLater(async () => (await import("../flights/flights-page.js")).FlightsPage);
const importPage = loadedLater(async () => (await import("../exchange/import-page.js")).ImportPage);

const later = [
  planPage,
  padPage,
  shelfPage,
  documentPage,
  labelPage,
  shortlistPage,
  cardDeskPage,
  flightsPage,
  importPage,
];

/** Loads what the first page did not need, so that going on takes no time. */
export function loadAhead(): void {
  for (const { load } of later) load().catch(() => undefined);
}

function opened<Props extends object>(part: LoadedLater<Props>, props: Props) {
  return <Loaded part={part} props={props} waiting={<p className="page-loading">Opening …</p>} wholePage />;
}

/** The page of a place. */
export function Page({ route }: { readonly route: Route }) {
  switch (route.page) {
    case "bench":
      return <BenchPage />;
    case "import":
      return opened(importPage, {});
    case "card-desk":
      return opened(cardDeskPage, {});
    case "plan":
      return opened(planPage, { path: route.path });
    case "pad":
      return opened(padPage, { path: route.path });
    case "label":
      return opened(labelPage, { path: route.path });
    case "shortlist":
      return opened(shortlistPage, { path: route.path });
    case "shelf":
      if (route.shelf === "flights") return opened(flightsPage, {});
      return opened(shelfPage, { shelf: route.shelf });
    case "document":
      return opened(documentPage, { shelf: route.shelf, path: route.path });
    case "unknown":
      return (
        <main className="page-none" id="main" tabIndex={-1}>
          <h1>There is no such page</h1>
          <p>The address may be mistyped, or of another version of the bench.</p>
          <a className="act" href={addressOf({ page: "bench" })}>
            To the bench
          </a>
        </main>
      );
  }
}
