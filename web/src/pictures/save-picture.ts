import { saveBlob } from "../parts/save-file.js";
import { HATCHES } from "./hatches.js";

/** What a mark looks like; everything else in a saved picture is in its attributes. */
const looks = [
  "fill",
  "fill-opacity",
  "stroke",
  "stroke-width",
  "stroke-opacity",
  "stroke-dasharray",
  "stroke-linecap",
  "stroke-linejoin",
  "opacity",
  "paint-order",
  "shape-rendering",
  "visibility",
  "font-family",
  "font-size",
  "font-size-adjust",
  "font-weight",
  "font-variant-numeric",
  "letter-spacing",
  "text-anchor",
] as const;

/** Elements without looks. */
const silent = new Set(["title", "desc", "clipPath"]);

const SVG = "http://www.w3.org/2000/svg";
/** Pixels of a saved PNG for one of the screen. */
const FINENESS = 3;

/** Writes what the style sheets make of each element into the copy, as far as it is not its parent's. */
function keepLooks(from: Element, to: Element, parent: CSSStyleDeclaration | null): void {
  const style = getComputedStyle(from);
  const own = looks.filter((look) =>
    look === "opacity" || parent === null
      ? parent === null || style.opacity !== "1"
      : style.getPropertyValue(look) !== parent.getPropertyValue(look),
  );
  to.removeAttribute("style");
  to.removeAttribute("class");
  if (own.length > 0) to.setAttribute("style", own.map((look) => `${look}:${style.getPropertyValue(look)}`).join(";"));
  for (let i = 0; i < from.children.length; i += 1) {
    const child = from.children[i];
    const copy = to.children[i];
    if (child && copy && !silent.has(child.tagName)) keepLooks(child, copy, style);
  }
}

/**
 * A picture that needs nothing beside it: looks written out, hatches and ground included.
 *
 * @param svg as it stands in the page
 * @returns the text of an SVG file
 */
export function wholePicture(svg: SVGSVGElement): string {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  keepLooks(svg, copy, null);
  copy.setAttribute("xmlns", SVG);
  const hatches = document.getElementById(HATCHES)?.querySelector("defs");
  const ground = document.createElementNS(SVG, "rect");
  const { width, height } = svg.viewBox.baseVal;
  const edge = 16;
  for (const [key, value] of [
    ["x", -edge],
    ["y", -edge],
    ["width", width + 2 * edge],
    ["height", height + 2 * edge],
    ["fill", getComputedStyle(document.documentElement).getPropertyValue("--sheet").trim()],
  ] as const)
    ground.setAttribute(key, `${value}`);
  copy.setAttribute("viewBox", `${-edge} ${-edge} ${width + 2 * edge} ${height + 2 * edge}`);
  copy.setAttribute("width", `${width + 2 * edge}`);
  copy.setAttribute("height", `${height + 2 * edge}`);
  const words = [...copy.children].filter((child) => child.tagName === "title" || child.tagName === "desc");
  if (hatches) {
    const kept = hatches.cloneNode(true) as Element;
    keepLooks(hatches, kept, null);
    copy.prepend(...words, kept, ground);
  } else copy.prepend(...words, ground);
  return new XMLSerializer().serializeToString(copy);
}

async function asPng(text: string): Promise<Blob | null> {
  const address = URL.createObjectURL(new Blob([text], { type: "image/svg+xml" }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = image.naturalWidth * FINENESS;
    canvas.height = image.naturalHeight * FINENESS;
    canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((done) => canvas.toBlob(done, "image/png"));
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** Offers a picture as a file, without any request. */
export async function savePicture(svg: SVGSVGElement, name: string, kind: "svg" | "png"): Promise<void> {
  const text = wholePicture(svg);
  const blob = kind === "svg" ? new Blob([text], { type: "image/svg+xml" }) : await asPng(text);
  if (blob) saveBlob(`${name}.${kind}`, blob);
}
