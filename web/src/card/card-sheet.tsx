import type { CardPage } from "@delaywright/documents";
import { type CSSProperties, type RefObject, useLayoutEffect } from "react";
import type { Paper } from "./paper.js";

interface CardSheetProps {
  readonly page: CardPage;
  readonly paper: Paper;
  /** How large it is shown; 1: as it prints. */
  readonly zoom: number;
  /** The element to be printed. */
  readonly host: RefObject<HTMLDivElement | null>;
}

/** The card as it prints: its own markup and styles, which nothing of the app reaches into. */
export function CardSheet({ page, paper, zoom, host }: CardSheetProps) {
  useLayoutEffect(() => {
    if (host.current === null) return;
    const root = host.current.shadowRoot ?? host.current.attachShadow({ mode: "open" });
    const styles = new CSSStyleSheet();
    styles.replaceSync(page.styles);
    root.adoptedStyleSheets = [styles];
    // whatever stands in a document is text in it: the builder of the page escaped it, and what is parsed so runs no script
    const { body } = new DOMParser().parseFromString(page.body, "text/html");
    root.replaceChildren(...body.childNodes);
  }, [page, host]);
  return (
    <div ref={host} className="card-paper" data-paper={paper.id} style={{ "--card-zoom": zoom } as CSSProperties} />
  );
}
