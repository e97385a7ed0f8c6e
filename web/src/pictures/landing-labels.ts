import type { FieldZones, UnitSystem } from "@delaywright/documents";
import { boundaryPoints } from "./map-frame.js";
import { fitsInside } from "./map-ground.js";
import { ellipsePoints, type MapPlace, type MapView, middleOf } from "./map-view.js";
import { type MapCloud, middleWords, unopenedWords } from "./map-words.js";
import {
  type Box,
  type Label,
  type LabelLine,
  type Obstacle,
  placeLabels,
  type Spot,
  textWidth,
} from "./place-labels.js";

/** A label with its place and the look of its lines. */
export interface MapLabel {
  readonly key: string;
  readonly lines: readonly LabelLine[];
  readonly spot: Spot;
  /** Classes of the first line; the others are `tick halo`. */
  readonly look: string;
  /** Degrees about its spot. */
  readonly turn?: number;
}

export interface LabelSizes {
  readonly tick: number;
  readonly value: number;
}

interface Wanted extends Label {
  readonly key: string;
  readonly look: string;
}

const boxAround = (x: number, y: number, half: number): Box => ({
  left: x - half,
  right: x + half,
  top: y - half,
  bottom: y + half,
});

function boxOf(view: MapView, places: readonly MapPlace[]): Box {
  const xs = places.map((place) => view.x(place.east));
  const ys = places.map((place) => view.y(place.north));
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** Spots around a box: above and below it first, then beside it, then farther out. */
function around(box: Box, lines: readonly LabelLine[], order: "above" | "below"): readonly Spot[] {
  const first = lines[0]?.size ?? 0;
  const rest = (lines.length - 1) * first * 1.25;
  const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  const spots: Spot[] = [];
  for (const gap of [0, 14, 34, 60]) {
    const above: Spot[] = [-40, 0, 40].map((aside) => ({
      x: x + aside,
      y: box.top - 7 - gap - rest,
      anchor: "middle",
    }));
    const below: Spot[] = [-40, 0, 40].map((aside) => ({
      x: x + aside,
      y: box.bottom + 4 + gap + first,
      anchor: "middle",
    }));
    const [near, far] = order === "above" ? [above, below] : [below, above];
    spots.push(...[near[1], near[0], near[2]].filter((spot) => spot !== undefined));
    spots.push({ x: box.right + 7 + gap, y, anchor: "start" }, { x: box.left - 7 - gap, y, anchor: "end" });
    spots.push(...[far[1], far[0], far[2]].filter((spot) => spot !== undefined));
    if (gap === 0) spots.push({ x, y: box.top + (box.bottom - box.top) * 0.15 + first, anchor: "middle" });
  }
  return spots;
}

function zoneLabels(view: MapView, zones: FieldZones, size: number): readonly Wanted[] {
  return zones.keepOff
    .filter(({ name, points }) => name !== "" && points.length > 0)
    .map(({ name, points }, i): Wanted => {
      const lines = [{ words: name, size, strong: true }];
      const middle = middleOf(points);
      const on: Spot = { x: view.x(middle.east), y: view.y(middle.north) + size * 0.35, anchor: "middle" };
      const inside = fitsInside(view, points, textWidth(name, size, true), size);
      return {
        key: `keep-off-${i.toString()}`,
        lines,
        spots: inside ? [on] : around(boxOf(view, points), lines, "below"),
        look: inside ? "keep-word" : "tick mine halo",
      };
    });
}

/** Words that run along a line of people, or stand by them. */
function peopleLabel(
  view: MapView,
  { name, points }: FieldZones["people"][number],
  size: number,
  key: string,
): MapLabel | Wanted {
  const lines = [{ words: name === "" ? "people" : name, size }];
  const [first, last] = [points[0], points.at(-1)];
  if (first !== undefined && last !== undefined) {
    const [dx, dy] = [view.x(last.east) - view.x(first.east), view.y(last.north) - view.y(first.north)];
    if (points.length === 2 && Math.hypot(dx, dy) > textWidth(lines[0]?.words ?? "", size)) {
      let turn = (Math.atan2(dy, dx) * 180) / Math.PI;
      if (turn > 90) turn -= 180;
      if (turn <= -90) turn += 180;
      const radians = (turn * Math.PI) / 180;
      const [x, y] = [(view.x(first.east) + view.x(last.east)) / 2, (view.y(first.north) + view.y(last.north)) / 2];
      const spot: Spot = { x: x + 8 * Math.sin(radians), y: y - 8 * Math.cos(radians), anchor: "middle" };
      return { key, lines, spot, look: "tick halo", turn };
    }
  }
  return { key, lines, spots: around(boxOf(view, points), lines, "below"), look: "tick halo" };
}

function cloudLabel(
  view: MapView,
  cloud: MapCloud,
  key: string,
  words: string,
  second: string,
  sizes: LabelSizes,
): readonly Wanted[] {
  if (cloud.middle === null) return [];
  const lines: LabelLine[] = [
    { words, size: sizes.value, strong: true },
    { words: second, size: sizes.tick },
  ];
  const places = cloud.outer === null ? cloud.points : ellipsePoints(cloud.outer);
  const away = cloud.middle.north >= 0 ? "above" : "below";
  return [{ key, lines, spots: around(boxOf(view, places), lines, away), look: "value halo" }];
}

function obstaclesOf(
  view: MapView,
  zones: FieldZones | null,
  clouds: readonly { readonly cloud: MapCloud; readonly weight: number }[],
): readonly Obstacle[] {
  const at = (places: readonly MapPlace[], half: number, weight: number): Obstacle[] =>
    places.map(({ east, north }) => ({ box: boxAround(view.x(east), view.y(north), half), weight }));
  return [
    ...at(boundaryPoints(zones), 4, 0.7),
    ...(zones?.keepOff ?? []).map(({ points }) => ({ box: boxOf(view, points), weight: 3 })),
    ...(zones?.people ?? []).flatMap(({ points }) => at(points, 8, 2)),
    ...clouds.flatMap(({ cloud: { points, outer }, weight }) => [
      ...at(points.slice(0, 300), 2, 2),
      ...(outer === null
        ? []
        : [1, 0.66, 0.33].flatMap((share) =>
            at(ellipsePoints({ ...outer, major: outer.major * share, minor: outer.minor * share }, 40), 5, weight),
          )),
    ]),
  ];
}

/** Words on the things of the map, each where it covers least. */
export function mapLabels(
  view: MapView,
  zones: FieldZones | null,
  opened: MapCloud,
  unopened: MapCloud,
  units: UnitSystem,
  sizes: LabelSizes,
  corners: readonly Box[],
): readonly MapLabel[] {
  const [x, y] = [view.x(0), view.y(0)];
  const pad: Wanted = {
    key: "pad",
    lines: [{ words: "pad", size: sizes.value, strong: true }],
    spots: [
      { x: x + 11, y: y - 4, anchor: "start" },
      { x: x - 11, y: y - 4, anchor: "end" },
      { x: x - 11, y: y + 13, anchor: "end" },
      { x: x + 11, y: y + 13, anchor: "start" },
      { x, y: y - 13, anchor: "middle" },
      { x, y: y + 21, anchor: "middle" },
    ],
    look: "value halo",
  };
  const people = (zones?.people ?? [])
    .filter(({ points }) => points.length > 0)
    .map((line, i) => peopleLabel(view, line, sizes.tick, `people-${i.toString()}`));
  const turned = people.filter((label): label is MapLabel => "spot" in label);
  const wanted: readonly Wanted[] = [
    ...(zones === null ? [] : zoneLabels(view, zones, sizes.tick)),
    ...cloudLabel(view, unopened, "unopened", "unopened", unopenedWords(unopened, units), sizes),
    ...cloudLabel(view, opened, "opened", "opened", middleWords(opened, units), sizes),
    pad,
    ...people.filter((label): label is Wanted => !("spot" in label)),
  ];
  const obstacles: readonly Obstacle[] = [
    { box: boxAround(x, y - 1, 8), weight: 20 },
    ...corners.map((box) => ({ box, weight: 50 })),
    ...turned.map(({ spot, lines }) => ({
      box: boxAround(spot.x, spot.y, textWidth(lines[0]?.words ?? "", sizes.tick) / 2),
      weight: 2,
    })),
    // words must not lie on the hatch, which would seem to be theirs
    ...obstaclesOf(view, zones, [
      { cloud: opened, weight: 0.8 },
      { cloud: unopened, weight: 4 },
    ]),
  ];
  const spots = placeLabels(wanted, obstacles, { left: 0, top: 0, right: view.width, bottom: view.height });
  const placed = wanted.map(({ key, lines, look }, i) => ({ key, lines, look, spot: spots[i] as Spot }));
  return [...placed, ...turned];
}
