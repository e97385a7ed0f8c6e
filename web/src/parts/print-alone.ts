import "./print-alone.css";

/** Prints one part of the page and nothing else of it. */
export function printAlone(part: Element | null): void {
  if (part === null) return;
  const root = document.documentElement;
  for (const each of root.querySelectorAll("[data-print-alone]")) each.removeAttribute("data-print-alone");
  root.setAttribute("data-print", "part");
  part.setAttribute("data-print-alone", "");
  const after = (): void => {
    root.removeAttribute("data-print");
    part.removeAttribute("data-print-alone");
  };
  addEventListener("afterprint", after, { once: true });
  print();
}
