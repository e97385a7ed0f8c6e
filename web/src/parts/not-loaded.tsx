import { Button } from "react-aria-components";
import { Notice } from "./notice.js";

interface NotLoadedProps {
  readonly again: () => void;
  readonly wholePage: boolean;
}

const why =
  "Without a network all of the bench is there once the app is kept on this device. With one, a newer version may have come: load the page again then. Your documents are kept as they are.";

/** Stands in the place of a part of the app whose code could not be had. */
export function NotLoaded({ again, wholePage }: NotLoadedProps) {
  const tryAgain = (
    <Button className="act" onPress={again}>
      Try again
    </Button>
  );
  if (!wholePage)
    return (
      <Notice urgent acts={tryAgain}>
        This part of the bench could not be loaded. {why}
      </Notice>
    );
  return (
    <main className="page-none" id="main" tabIndex={-1}>
      <h1>This page could not be loaded</h1>
      <p role="alert">{why}</p>
      <p>
        {tryAgain}{" "}
        <a className="act" href="#/">
          To the bench
        </a>
      </p>
    </main>
  );
}
