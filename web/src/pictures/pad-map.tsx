import type { FieldZones, UnitSystem } from "@delaywright/documents";
import type { ReactNode } from "react";
import type { LandingProps } from "./landing.js";
import { boundaryPoints, cloudPoints, withReach, zonePoints } from "./map-frame.js";
import {
  BoundaryLine,
  CloudMarks,
  CloudTints,
  fitsInside,
  NorthArrow,
  PadMark,
  Rings,
  ScaleBar,
  WindArrow,
  Zones,
} from "./map-ground.js";
import { ellipsePoints, type MapPlace, type MapView, mapView, middleOf } from "./map-view.js";
import { cloudOf, keepOffWords, type MapCloud, mapSentences, middleWords, reachOf, roundly } from "./map-words.js";
import { type Drawing, Picture, type PictureRoom } from "./picture.js";
import { type Box, type Label, placeLabels, type Spot, textWidth } from "./place-labels.js";
import "./landing.css";
import "./pad-map.css";

export type PadMapProps = LandingProps;

/** Nothing closer to the pad than this is drawn larger [m]. */
const LEAST_REACH = 80;
/** Zones and edges this many times as far as the farthest landing are left out of the square. */
const FAR = 2;

/** The pad view's map, a square without dots, with its words beside it. */
export function PadMap(props: PadMapProps): ReactNode {
  const { opened, unopened, zones, wind, units, state } = props;
  const [openedCloud, unopenedCloud] = [cloudOf(opened), cloudOf(unopened)];
  return (
    <div className={`pad-map pad-map-${state}`}>
      <Picture
        name="pad-map"
        title="Where it lands"
        description={mapSentences(opened, unopened, zones, wind, units)}
        draw={(room) => drawPadMap(props, room)}
        saves={false}
        firstWidth={224}
      />
      <div>
        {unopenedCloud.middle && (
          <p>
            <span className="hatch grounded" />
            unopened
            <b>{farWords(unopenedCloud, units)}</b>
            <small>{besideUnopened(unopenedCloud, keepOffWords(unopened, zones))}</small>
          </p>
        )}
        {openedCloud.middle && (
          <p>
            <span className="hatch clean" />
            opened
            <b>{middleWords(openedCloud, units)}</b>
            <small>{besideOpened(openedCloud, keepOffWords(opened, zones))}</small>
          </p>
        )}
      </div>
    </div>
  );
}

/** How far from the pad unopened rockets come down: `120 m NW`, or `210 m` where they come down all round. */
function farWords(cloud: MapCloud, units: UnitSystem): string {
  const reach = reachOf(cloud);
  if (reach === null || cloud.outer === null) return middleWords(cloud, units);
  const far = roundly(reach.far, units);
  return reach.oneSide ? `${far} ${middleWords(cloud, units).split(" ").at(-1) ?? ""}` : far;
}

function besideUnopened(cloud: MapCloud, kept: string): string {
  const first =
    cloud.outer === null ? "one flight" : reachOf(cloud)?.oneSide ? "at most, 19 in 20" : "at most all round, 19 in 20";
  return kept === "" ? first : `${first}; ${kept}`;
}

function besideOpened(cloud: MapCloud, kept: string): string {
  const first = cloud.outer === null ? "one flight" : "their middle";
  return kept === "" ? first : `${first}; ${kept}`;
}

/** The landings with what lies near them. */
function nearPlaces({ opened, unopened, zones }: PadMapProps): readonly MapPlace[] {
  const landings = cloudPoints(
    [cloudOf(opened), cloudOf(unopened)].map((cloud) => (cloud.outer ? { ...cloud, points: [] } : cloud)),
  );
  const far = Math.max(LEAST_REACH, ...landings.map(({ east, north }) => Math.hypot(east, north)));
  const near = [...zonePoints(zones), ...boundaryPoints(zones)].filter(
    ({ east, north }) => Math.hypot(east, north) < far * FAR,
  );
  return withReach([...landings, ...near], LEAST_REACH);
}

function drawPadMap(props: PadMapProps, room: PictureRoom): Drawing {
  const { opened, unopened, zones, wind, units } = props;
  const clouds = { opened: cloudOf(opened), unopened: cloudOf(unopened) };
  const side = room.width;
  const size = 12 * room.grow;
  const corners: readonly Box[] = [
    { left: 0, top: 0, right: 56, bottom: 56 },
    { left: side - 40, top: 0, right: side, bottom: 40 },
    { left: side * 0.7, top: side - 34, right: side, bottom: side },
  ];
  const inset = 22;
  const view = mapView(nearPlaces(props), side, side, { left: inset, top: inset, right: inset, bottom: inset });
  const marks = (
    <>
      <clipPath id={room.id("square")}>
        <rect x={1} y={1} width={side - 2} height={side - 2} />
      </clipPath>
      <g clipPath={`url(#${room.id("square")})`}>
        {zones?.boundary ? (
          <BoundaryLine view={view} zones={zones} />
        ) : (
          <Rings view={view} units={units} size={size} corners={corners} />
        )}
        <g className="map-clouds">
          <CloudTints view={view} {...clouds} glance={true} />
        </g>
        {zones && <Zones view={view} zones={zones} />}
        <g className="map-clouds">
          <CloudMarks view={view} {...clouds} glance={true} />
        </g>
        <PadMark view={view} />
        {zones && <ZoneWords view={view} zones={zones} unopened={clouds.unopened} size={size} corners={corners} />}
      </g>
      {wind && <WindArrow from={wind.from} x={30} y={30} />}
      <NorthArrow x={side - 16} y={8} />
      <ScaleBar view={view} units={units} x={side - 10} y={side - 12} />
      <rect x={0.75} y={0.75} width={side - 1.5} height={side - 1.5} className="pad-map-edge" />
    </>
  );
  return { height: side, marks };
}

/** A zone's name, white on it where it fits, else beside it; a long one stands beside the map only. */
function ZoneWords(props: {
  view: MapView;
  zones: FieldZones;
  unopened: MapCloud;
  size: number;
  corners: readonly Box[];
}): ReactNode {
  const { view, zones, unopened, size, corners } = props;
  const named = zones.keepOff.filter(({ points }) => points.length > 0);
  const fits = named.map(({ name, points }) => fitsInside(view, points, textWidth(name, size, true), size));
  const shown = named.filter(({ name }, i) => fits[i] || textWidth(name, size, true) < view.width * 0.36);
  const labels = shown.map(({ name, points }): Label => {
    const middle = middleOf(points);
    const [x, y] = [view.x(middle.east), view.y(middle.north)];
    const reach = Math.max(...points.map((point) => Math.abs(view.y(point.north) - y)));
    const aside = Math.max(...points.map((point) => Math.abs(view.x(point.east) - x)));
    const spots: readonly Spot[] = fits[named.findIndex((each) => each.points === points)]
      ? [{ x, y: y + size * 0.35, anchor: "middle" }]
      : [
          { x, y: y + reach + size + 2, anchor: "middle" },
          { x: x + aside + 5, y: y + size * 0.35, anchor: "start" },
          { x, y: y - reach - 5, anchor: "middle" },
          { x: x - aside - 5, y: y + size * 0.35, anchor: "end" },
        ];
    return { lines: [{ words: name, size, strong: true }], spots };
  });
  const hatch = unopened.outer === null ? unopened.points : ellipsePoints(unopened.outer, 24);
  const taken = [{ east: 0, north: 0 }, ...hatch].map(({ east, north }) => {
    const [x, y] = [view.x(east), view.y(north)];
    return { box: { left: x - 8, right: x + 8, top: y - 8, bottom: y + 8 }, weight: 3 };
  });
  const bounds: Box = { left: 3, top: 3, right: view.width - 3, bottom: view.height - 3 };
  const spots = placeLabels(labels, [...taken, ...corners.map((box) => ({ box, weight: 20 }))], bounds);
  return shown.map(({ name }, i) => {
    const spot = spots[i];
    const inside = labels[i]?.spots.length === 1;
    return (
      spot && (
        <text
          key={name}
          x={spot.x.toFixed(1)}
          y={spot.y.toFixed(1)}
          className={inside ? "keep-word" : "tick mine halo"}
          textAnchor={spot.anchor}
        >
          {name}
        </text>
      )
    );
  });
}
