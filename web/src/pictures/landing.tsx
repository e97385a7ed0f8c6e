import type { FieldZones, UnitSystem } from "@delaywright/documents";
import type { ReactNode } from "react";
import { amount } from "./figures.js";
import { type LabelSizes, type MapLabel, mapLabels } from "./landing-labels.js";
import { boundaryPoints, cloudPoints, framed, heightOf, withReach, zonePoints } from "./map-frame.js";
import {
  BoundaryLine,
  CloudMarks,
  CloudTints,
  distanceUnit,
  NorthArrow,
  PadMark,
  Rings,
  ringRadii,
  ScaleBar,
  WindArrow,
  Zones,
} from "./map-ground.js";
import { cloudOf, type MapLandings, mapSentences, windWords } from "./map-words.js";
import { type Drawing, Picture, type PictureRoom } from "./picture.js";
import { type Box, lineStep, textWidth } from "./place-labels.js";
import "./landing.css";

export interface LandingProps {
  /** Null where nothing ever opens, or not known yet. */
  readonly opened: MapLandings | null;
  readonly unopened: MapLandings | null;
  /** Null without a field: then rings show the distance. */
  readonly zones: FieldZones | null;
  /** Speed [m/s] and where it blows from [rad]; null in a calm. */
  readonly wind: { readonly speed: number; readonly from: number | null } | null;
  readonly units: UnitSystem;
  readonly state: "settling" | "settled" | "stale";
}

/** Nothing closer to the pad than this is drawn larger [m]. */
const LEAST_REACH = 60;
/** A map is not drawn larger than this [px]. */
const MOST = 600;

/** The field from above with where the rocket comes down: north up, to one scale. */
export function Landing(props: LandingProps): ReactNode {
  const { opened, unopened, zones, wind, units } = props;
  return (
    <Picture
      name="landing"
      title="Where it lands"
      description={mapSentences(opened, unopened, zones, wind, units)}
      draw={(room) => drawLanding(props, room)}
    />
  );
}

/** What stands in the corners: wind and north above, the field and the scale below. */
function cornersOf(
  side: number,
  height: number,
  sizes: LabelSizes,
  wind: readonly string[],
  field: string,
): readonly Box[] {
  const windWide = Math.max(textWidth(wind[0] ?? "", sizes.value, true), textWidth(wind[1] ?? "", sizes.tick)) + 4;
  const below = height - sizes.tick * 1.4;
  return [
    { left: 0, top: 0, right: windWide, bottom: sizes.value + lineStep(sizes.tick) + 6 },
    { left: 0, top: 0, right: 52, bottom: sizes.value + lineStep(sizes.tick) + 52 },
    { left: side - 30, top: 0, right: side, bottom: 32 },
    { left: 0, top: below, right: textWidth(field, sizes.tick) + 6, bottom: height },
    { left: side * 0.78 - 6, top: below - 10, right: side, bottom: height },
  ];
}

function drawLanding({ opened, unopened, zones, wind, units, state }: LandingProps, room: PictureRoom): Drawing {
  const side = Math.min(MOST, room.width);
  const sizes = { tick: 12 * room.grow, value: 13 * room.grow };
  const clouds = { opened: cloudOf(opened), unopened: cloudOf(unopened) };
  const blows = wind === null ? [] : windWords(wind, units);
  const seen = [...boundaryPoints(zones), ...zonePoints(zones), ...cloudPoints([clouds.opened, clouds.unopened])];
  const places = zones?.boundary ? seen : withReach(seen, LEAST_REACH);
  const field = zones?.boundary?.kind === "circle" ? `field ${amount(zones.boundary.radius, "distance", units)}` : "";
  const strip = { left: 8, top: 50 * room.grow, right: 8, bottom: 28 * room.grow };
  const height = heightOf(places, side, strip);
  const corners = cornersOf(side, height, sizes, blows, field);
  const { view, strips } = framed(places, side, height, corners, strip);
  const windWide = textWidth(blows[0] ?? "", sizes.value, true);
  const arrow = strips ? { x: windWide + 40, y: 24 } : { x: 26, y: sizes.value + lineStep(sizes.tick) + 28 };
  const rings = field === "" && zones?.boundary == null;
  const step = ringRadii(view, units)[0] ?? distanceUnit(units);
  const words = rings ? `rings each ${amount(step, "distance", units, step < 10 ? 1 : 0)}` : field;
  const labels = mapLabels(view, zones, clouds.opened, clouds.unopened, units, sizes, corners);
  const marks = (
    <g className={`landing-${state}`}>
      <clipPath id={room.id("map")}>
        <rect x={0} y={0} width={side} height={height} />
      </clipPath>
      <g clipPath={`url(#${room.id("map")})`}>
        {rings && <Rings view={view} units={units} size={sizes.tick} corners={corners} />}
        {zones && <BoundaryLine view={view} zones={zones} />}
        <g className="map-clouds">
          <CloudTints view={view} {...clouds} glance={false} />
        </g>
        {zones && <Zones view={view} zones={zones} />}
        <g className="map-clouds">
          <CloudMarks view={view} {...clouds} glance={false} />
        </g>
      </g>
      <PadMark view={view} />
      {labels.map((label) => (
        <MapWords key={label.key} label={label} />
      ))}
      {wind !== null && (
        <>
          <text x={2} y={sizes.value} className="value halo">
            {blows[0]}
          </text>
          <text x={2} y={sizes.value + lineStep(sizes.tick)} className="tick halo">
            {blows[1]}
          </text>
          <WindArrow from={wind.from} {...arrow} />
        </>
      )}
      <NorthArrow x={side - 8} y={0} />
      <ScaleBar view={view} units={units} x={side - 2} y={height - 5} />
      <text x={2} y={height - 4} className="tick halo">
        {words}
      </text>
    </g>
  );
  return { height, marks };
}

function MapWords({ label }: { label: MapLabel }): ReactNode {
  const { lines, spot, look, turn } = label;
  const n = (value: number): string => value.toFixed(1);
  const step = lineStep(lines[1]?.size ?? 0);
  return (
    <g {...(turn === undefined ? {} : { transform: `rotate(${n(turn)} ${n(spot.x)} ${n(spot.y)})` })}>
      {lines.map((line, i) => (
        <text
          key={line.words}
          x={n(spot.x)}
          y={n(spot.y + i * step)}
          className={i === 0 ? look : "tick halo"}
          textAnchor={spot.anchor}
        >
          {line.words}
        </text>
      ))}
    </g>
  );
}
