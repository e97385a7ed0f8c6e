import "../chrome/chrome.css";
import "./notices.css";
import { useEffect } from "react";
import { askRedo, askUndo, TakeBack } from "../parts/index.js";
import { Hatches } from "../pictures/hatches.js";
import { useEntryPart } from "../store/index.js";
import { useArrival } from "./arrival.js";
import { ErrorBoundary } from "./error-boundary.js";
import { Notices } from "./notices.js";
import { loadAhead, Page } from "./pages.js";
import { addressOf, useRoute } from "./router.js";
import { useShortcuts } from "./shortcuts.js";
import { useTheme } from "./theme.js";
import { titleOf } from "./titles.js";

/** How long the first page has the line to itself [ms]. */
const AHEAD_AFTER = 1500;

/** The whole app. */
export function App() {
  const route = useRoute();
  const name = useEntryPart("path" in route ? route.path : "", (entry) => entry?.name);
  const address = route.page === "unknown" ? `?${route.address}` : addressOf(route);
  useTheme();
  useShortcuts(askUndo, askRedo);
  useArrival(address, titleOf(route, name));
  useEffect(() => {
    const timer = setTimeout(loadAhead, AHEAD_AFTER);
    return () => clearTimeout(timer);
  }, []);
  return (
    <>
      <button type="button" className="act skip-link" onClick={() => document.getElementById("main")?.focus()}>
        To the content
      </button>
      <Hatches />
      <Notices />
      <ErrorBoundary key={address}>
        <Page route={route} />
      </ErrorBoundary>
      <TakeBack />
    </>
  );
}
