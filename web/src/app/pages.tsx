import { lazy } from "react";
import { BenchPage } from "../bench/bench-page.js";
import { addressOf, type Route } from "./router.js";

const loadPlan = () => import("../plan/plan-page.js");
const loadPad = () => import("../pad/pad-page.js");
const loadLibraries = () => import("../libraries/index.js");
const loadLabel = () => import("../label/label-page.js");
const loadShortlist = () => import("../shortlist/shortlist-page.js");
const loadCardDesk = () => import("../card-desk/card-desk-page.js");
const loadFlights = () => import("../flights/flights-page.js");
const loadImport = () => import("../exchange/import-page.js");

const PlanPage = lazy(async () => ({ default: (await loadPlan()).PlanPage }));
const PadPage = lazy(async () => ({ default: (await loadPad()).PadPage }));
const ShelfPage = lazy(async () => ({ default: (await loadLibraries()).ShelfPage }));
const DocumentPage = lazy(async () => ({ default: (await loadLibraries()).DocumentPage }));
const LabelPage = lazy(async () => ({ default: (await loadLabel()).LabelPage }));
const ShortlistPage = lazy(async () => ({ default: (await loadShortlist()).ShortlistPage }));
const CardDeskPage = lazy(async () => ({ default: (await loadCardDesk()).CardDeskPage }));
const FlightsPage = lazy(async () => ({ default: (await loadFlights()).FlightsPage }));
const ImportPage = lazy(async () => ({ default: (await loadImport()).ImportPage }));

/** Loads what the first page did not need, so that going on takes no time. */
export function loadAhead(): void {
  for (const load of [
    loadPlan,
    loadPad,
    loadLibraries,
    loadLabel,
    loadShortlist,
    loadCardDesk,
    loadFlights,
    loadImport,
  ])
    load().catch(() => undefined);
}

/** The page of a place. */
export function Page({ route }: { readonly route: Route }) {
  switch (route.page) {
    case "bench":
      return <BenchPage />;
    case "import":
      return <ImportPage />;
    case "card-desk":
      return <CardDeskPage />;
    case "plan":
      return <PlanPage path={route.path} />;
    case "pad":
      return <PadPage path={route.path} />;
    case "label":
      return <LabelPage path={route.path} />;
    case "shortlist":
      return <ShortlistPage path={route.path} />;
    case "shelf":
      if (route.shelf === "flights") return <FlightsPage />;
      return <ShelfPage shelf={route.shelf} />;
    case "document":
      return <DocumentPage shelf={route.shelf} path={route.path} />;
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
