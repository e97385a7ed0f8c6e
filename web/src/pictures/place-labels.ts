/** A rectangle in the picture's pixels, y down. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export type Anchor = "start" | "middle" | "end";

/** One line of a label: its words, their size in pixels and whether they are strong. */
export interface LabelLine {
  readonly words: string;
  readonly size: number;
  readonly strong?: boolean;
}

/** A place a label may stand: the baseline of its first line. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly anchor: Anchor;
}

export interface Label {
  readonly lines: readonly LabelLine[];
  /** In order of liking. */
  readonly spots: readonly Spot[];
}

/** Something a label should not cover; `weight` says how little. */
export interface Obstacle {
  readonly box: Box;
  readonly weight: number;
}

const narrow = new Set("iljtfrI.,:;'|! \u202f\u00a0()[]-");
const wide = new Set("mwMWOQ@%");

/**
 * About how wide words are in a system face set to the app's x-height.
 *
 * @param size font size [px]
 * @returns [px], never too little for the faces that systems bring
 * @example
 * textWidth("ceiling 900 m", 13, true); // about 100
 */
export function textWidth(words: string, size: number, strong = false): number {
  let ems = 0;
  for (const letter of words) ems += narrow.has(letter) ? 0.36 : wide.has(letter) ? 0.92 : 0.6;
  return ems * size * (strong ? 1.1 : 1);
}

/** Distance between the baselines of two lines of a label [px]. */
export function lineStep(size: number): number {
  return size * 1.25;
}

/** The rectangle that a label fills at a spot. */
export function labelBox(lines: readonly LabelLine[], { x, y, anchor }: Spot): Box {
  const width = Math.max(0, ...lines.map((line) => textWidth(line.words, line.size, line.strong)));
  const first = lines[0]?.size ?? 0;
  const rest = lines.slice(1).reduce((sum, line) => sum + lineStep(line.size), 0);
  const left = anchor === "start" ? x : anchor === "end" ? x - width : x - width / 2;
  return { left, right: left + width, top: y - first * 0.85, bottom: y + rest + first * 0.25 };
}

/** Area that two rectangles share [px²]. */
export function overlap(a: Box, b: Box): number {
  const width = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const height = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return width > 0 && height > 0 ? width * height : 0;
}

const area = (box: Box): number => Math.max(0, box.right - box.left) * Math.max(0, box.bottom - box.top);

/** Weight of ground that a label must not cover: outside the picture, or another label. */
const FORBIDDEN = 50;
/** Room around a label that keeps it from reading on into the next [px]. */
const APART = 4;
/** What one step down the list of spots costs, as a share of the label's own area. */
const DISLIKE = 0.04;

/**
 * Gives each label the spot where it covers least, one after the other; earlier labels keep their place.
 *
 * @param bounds the picture
 * @returns one spot for each label, in the same order
 * @example
 * placeLabels([{ lines: [{ words: "pad", size: 13 }], spots: [{ x: 60, y: 50, anchor: "start" }] }], [], bounds);
 */
export function placeLabels(labels: readonly Label[], obstacles: readonly Obstacle[], bounds: Box): readonly Spot[] {
  const taken: Obstacle[] = [...obstacles];
  return labels.map(({ lines, spots }) => {
    let best: Spot = spots[0] ?? { x: bounds.left, y: bounds.bottom, anchor: "start" };
    let least = Number.POSITIVE_INFINITY;
    spots.forEach((spot, i) => {
      const box = labelBox(lines, spot);
      const outside = area(box) - overlap(box, bounds);
      const cost =
        FORBIDDEN * outside +
        DISLIKE * i * area(box) +
        taken.reduce((sum, each) => sum + each.weight * overlap(box, each.box), 0);
      if (cost < least) {
        least = cost;
        best = spot;
      }
    });
    const { left, right, top, bottom } = labelBox(lines, best);
    taken.push({
      box: { left: left - APART, right: right + APART, top: top - APART, bottom: bottom + APART },
      weight: FORBIDDEN,
    });
    return best;
  });
}
