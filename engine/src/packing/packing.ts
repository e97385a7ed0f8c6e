import { InputError } from "../issues.js";
import { type BayFindings, bayFindings } from "./bay-findings.js";
import { canopyData, descentSpeed } from "./canopy.js";
import type { ClusterCount } from "./canopy-cluster.js";
import { type CanopySize, canopyForSpeed, canopySizes, spillHoleAreaLeft } from "./canopy-size.js";
import { type BaySize, bayVolume } from "./ejection-charge.js";
import { type HarnessCode, harnessCode, usualHarnessLength } from "./harness.js";
import { landingEnergyLimit, type SectionLanding, sectionLandings } from "./landing-energy.js";
import { type OpeningFindings, openingFindings } from "./opening-findings.js";
import type { PackingInputs, PackingOptions } from "./packing-inputs.js";
import { packingIssues } from "./packing-issues.js";
import { defaultSeparationMargin } from "./separation.js";
import { staticPortArea, staticPortDiameter } from "./static-port.js";
import { type OpeningCaveat, openingCaveats } from "./weakest-part.js";

/** Margin and speed: own defaults, no source; the speed lies in `usualLandingSpeeds`. */
export const defaultPackingOptions = Object.freeze({
  separationMargin: defaultSeparationMargin,
  landingSpeed: 5,
  energyLimit: landingEnergyLimit,
});

/** Static ports of one bay. */
export interface StaticPortFindings {
  /** Whose volume they are for. */
  readonly of: "electronicsBay" | "bay";
  /** [m³] */
  readonly volume: number;
  /** Of all holes together [m²]. */
  readonly area: number;
  /** Diameter of each hole [m] for one, three and four of them. */
  readonly holes: readonly { readonly count: number; readonly diameter: number }[];
}

/** The main canopy, and what would land the rocket at the speed aimed at. */
export interface CanopyFindings {
  /** Steady descent under the main at the ground, its spill hole counted [m/s]. */
  readonly descentSpeed: number;
  /** Diameter of a canopy of the main's type, drag coefficient and share of spill hole for the landing speed [m]. */
  readonly diameterForSpeed: number;
  /** Every type, as one canopy, as two and as three. */
  readonly sizes: readonly CanopySize[];
}

export interface HarnessFindings {
  /** Range that flyers choose [m]. */
  readonly usual: { readonly least: number; readonly most: number };
  /** Null where its length is not given. */
  readonly length: number | null;
  readonly code: HarnessCode | null;
}

export interface LandingFindings {
  /** [m/s] */
  readonly speed: number;
  /** A flown touch-down, or the steady descent under the main. */
  readonly speedFrom: "flown" | "steady";
  /** The flyer's own sections, or the whole mass as one. */
  readonly of: "sections" | "whole";
  readonly limit: number;
  readonly sections: readonly SectionLanding[];
}

/** Everything to settle between motor and pad about how a rocket is packed. */
export interface PackingFindings extends OpeningFindings {
  /** Charge, pins and separation; null where the bay is not given. */
  readonly bay: BayFindings | null;
  /** Null where no bay is given. */
  readonly staticPorts: StaticPortFindings | null;
  readonly canopy: CanopyFindings;
  readonly openingCaveats: readonly OpeningCaveat[];
  readonly harness: HarnessFindings;
  readonly landing: LandingFindings;
  readonly options: Required<PackingOptions>;
}

/**
 * Ejection charge, shear pins, static ports, canopy, openings, harness and landing of one rocket on one motor.
 *
 * Each part holds as its own function does. What was not given is null; nothing is guessed for it.
 *
 * @param inputs rocket, motor's charge, openings and landing, in SI units
 * @param options margin, landing speed [m/s] and energy limit [J]
 * @throws {InputError} what `packingIssues` lists
 * @source `bayFindings`, `staticPortDiameter`, `canopySizes`, `openingFindings`, `usualHarnessLength`, `sectionLandings`
 * @example
 * const canopy = { shape: "flat circular", diameter: 0.9144, cd: 0.75 } as const;
 * const recovery = { motorCharge: "primary", lineStretch: 0.5, main: { canopy } } as const;
 * const landing = { density: 1.225, gravity: 9.80665 };
 * packingOf({ rocketLength: 1.5, mass: 1.35, recovery, openings: [], landing }).canopy.descentSpeed; // 6.6246416
 */
export function packingOf(inputs: PackingInputs, options: PackingOptions = {}): PackingFindings {
  const resolved = { ...defaultPackingOptions, ...options };
  const issues = packingIssues(inputs, options);
  if (issues.length > 0) throw new InputError(issues);
  const { bay, motorCharge } = inputs;
  const canopy = canopyFindings(inputs, resolved.landingSpeed);
  return {
    bay: bay === undefined ? null : bayFindings(bay, { motorCharge, margin: resolved.separationMargin }),
    staticPorts: staticPortFindings(inputs),
    canopy,
    ...openingFindings(inputs),
    openingCaveats,
    harness: harnessFindings(inputs),
    landing: landingFindings(inputs, { steady: canopy.descentSpeed, limit: resolved.energyLimit }),
    options: resolved,
  };
}

/**
 * Static ports of the electronics' bay or, where none is given, of the charge's.
 *
 * @returns null where neither is given
 * @source `staticPortArea`, `staticPortDiameter`
 * @example
 * staticPortFindings({ bay: { diameter: 0.0762, length: 0.2032 } })?.holes[2]?.diameter; // 0.00238756
 */
export function staticPortFindings({
  electronicsBay,
  bay,
}: Pick<PackingInputs, "electronicsBay" | "bay">): StaticPortFindings | null {
  const size: BaySize | undefined = electronicsBay ?? bay;
  if (size === undefined) return null;
  const volume = bayVolume(size);
  return {
    of: electronicsBay === undefined ? "bay" : "electronicsBay",
    volume,
    area: staticPortArea(volume),
    holes: [1, 3, 4].map((count) => ({ count, diameter: staticPortDiameter({ volume, count }) })),
  };
}

function canopyFindings({ recovery, mass, landing, spillHole = 0 }: PackingInputs, speed: number): CanopyFindings {
  const { canopy } = recovery.main;
  const { density, gravity } = landing;
  const aim = { mass, density, gravity, speed };
  const areaLeft = spillHoleAreaLeft({ diameter: canopy.diameter, hole: spillHole });
  return {
    descentSpeed: descentSpeed({ mass, density, canopy, gravity }) / Math.sqrt(areaLeft),
    diameterForSpeed: canopyForSpeed(aim, {
      cd: canopy.cd ?? canopyData[canopy.shape].cd,
      holeRatio: spillHole / canopy.diameter,
    }),
    sizes: ([1, 2, 3] as const satisfies readonly ClusterCount[]).flatMap((count) => canopySizes(aim, count)),
  };
}

function harnessFindings({ recovery, rocketLength }: PackingInputs): HarnessFindings {
  const length = recovery.harness?.length;
  return {
    usual: usualHarnessLength(rocketLength),
    length: length ?? null,
    code: length === undefined ? null : harnessCode({ harness: length, rocket: rocketLength }),
  };
}

function landingFindings(
  { landing, sections, mass }: PackingInputs,
  { steady, limit }: { readonly steady: number; readonly limit: number },
): LandingFindings {
  const speed = landing.speed ?? steady;
  const whole = sections === undefined || sections.length === 0;
  return {
    speed,
    speedFrom: landing.speed === undefined ? "steady" : "flown",
    of: whole ? "whole" : "sections",
    limit,
    sections: sectionLandings(whole ? [mass] : sections, { speed, limit }),
  };
}
