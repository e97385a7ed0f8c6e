import "./style/tokens.css";
import "./app/base-layer.css";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app/app.js";
import { askWhatComes } from "./app/ask-what-comes.js";
import { ErrorScreen } from "./app/error-screen.js";
import { warmUp } from "./compute/index.js";
import { keepOffline } from "./offline/update.js";
import { openStore } from "./store/index.js";

/** How long the first decision has line and cores to itself before the app is kept for use without a network [ms]. */
const OFFLINE_AFTER = 2500;

const place = document.getElementById("root");
if (place === null) throw new Error("the page has no root");
const root = createRoot(place);

warmUp();
try {
  await openStore();
  askWhatComes();
  // before the page hears of it: its first frame shows what is known
  addEventListener("hashchange", askWhatComes);
  root.render(
    <StrictMode>
      <App />
    </StrictMode>,
  );
} catch (error) {
  root.render(<ErrorScreen error={error} />);
}
setTimeout(keepOffline, OFFLINE_AFTER);
