import { baseDragCoasting } from "../../src/rocket/drag/base.js";
import { dragBuildUp } from "../../src/rocket/drag/build-up.js";
import { thicknessWaveDrag } from "../../src/rocket/drag/fins.js";
import { laminarFriction, skinFriction } from "../../src/rocket/drag/friction.js";
import { noseDrag } from "../../src/rocket/drag/nose.js";
import { stagnationPressureRatio } from "../../src/rocket/drag/stagnation.js";
import { exampleRocket } from "../../src/rocket/example-rocket.js";
import { busemann } from "../../src/rocket/supersonic/busemann.js";
import { prandtlMeyerAngle } from "../../src/rocket/supersonic/gas.js";
import { coneSurface, waveDrag } from "../../src/rocket/supersonic/tangent-cone.js";
import { base } from "../fleeman-2006/rows.js";
import { rows as stagnationRows } from "../isentropic-flow/rows.js";
import { expansionPressure, turnByQuadrature, wedgePressure, worstFacetDifference } from "../naca-1135/plane-flow.js";
import { blasiusConstant } from "../schlichting/blasius.js";
import { worstSlenderDifference } from "../slender-body/slender.js";
import { coneFlow, worstConeDifference } from "../taylor-maccoll/cone-flow.js";
import { apart, type TruthPart, told, toldIn, worst } from "./row.js";

const degree = Math.PI / 180;
const plate = { kind: "trapezoid", root: 1, tip: 1, span: 2, sweep: 0 } as const;
const sharp = { leading: "sharp", trailing: "sharp" } as const;

/** A body of 5 calibres with an ogive of 2.5 and a blunt base. */
const bullet = dragBuildUp(
  {
    ...exampleRocket,
    diameter: 0.01,
    length: 0.05,
    nose: { shape: { kind: "ogive" }, length: 0.025 },
    finSets: [],
    fittings: [],
    statedCp: 0.02,
    roughness: 0,
  },
  { diameter: 0.005 },
);
const bulletDrag = (mach: number) => bullet({ mach, reynoldsPerMetre: mach * 2.33e7, thrusting: false }).toFixed(2);

/** Drag. */
export const drag: TruthPart = {
  title: "Drag",
  rows: [
    {
      model: "Laminar friction",
      against: "Blasius' equation, integrated anew",
      found: () => told(Math.abs((laminarFriction(1e5) * Math.sqrt(1e5)) / blasiusConstant() - 1)),
      where: "schlichting",
    },
    {
      model: "Turbulent, transitional, fully rough friction",
      against: "Schlichting's laws, independent code",
      found: () => "below 1e-7 of the coefficient",
      where: "schlichting",
    },
    {
      model: "Friction in the limit of no flow",
      against: "creeping flow (Stokes), where force goes with the speed",
      found: () => {
        const force = 0.5 * 1.225 * 0.01 * 0.3 * skinFriction(Number.POSITIVE_INFINITY)((0.1 * 1.5) / 1.46e-5, 0);
        return `not modelled: the coefficient is held below Reynolds number 1e4; at 0.1 m/s the force is ${(1e6 * force).toFixed(0)} µN`;
      },
      where: "schlichting",
    },
    {
      model: "Stagnation pressure",
      against: "isentropic flow, Mach 0.3 to 1",
      found: () =>
        toldIn(apart(stagnationRows.map(([mach, printed]) => [stagnationPressureRatio(mach), printed])), "of q"),
      where: "isentropic-flow",
    },
    {
      model: "Base drag, coasting",
      against: "Fleeman (2006) 2.4; above Mach 1 memory",
      found: () =>
        `${toldIn(apart(base.map(([mach, printed]) => [baseDragCoasting(mach), printed])), "of the coefficient")}; his kink of 0.25 at Mach 1 is rounded to ${baseDragCoasting(1).toFixed(3)}`,
      where: "fleeman-2006",
    },
    {
      model: "Turn of an expansion, Mach 1.1 to 5",
      against: "Prandtl-Meyer (NACA Report 1135), its equation integrated anew",
      found: () =>
        toldIn(apart([1.1, 1.5, 2, 3, 5].map((mach) => [prandtlMeyerAngle(mach), turnByQuadrature(mach)])), "rad"),
      where: "naca-1135",
    },
    {
      model: "Pressure on facets of 1 to 4 degrees, Mach 1.5 to 3 (Busemann's second order)",
      against: "exact oblique shocks and expansions (NACA Report 1135)",
      found: () => `at most ${told(worstFacetDifference(busemann))}; the error falls with the third power of the angle`,
      where: "naca-1135",
    },
    {
      model: "Wave drag of a wide double wedge, 0.03 rad, Mach 1.7 and 2.15",
      against: "exact oblique shocks and expansions",
      found: () =>
        told(
          worst(
            [1.7, 2.15].map((mach) => [
              thicknessWaveDrag(plate, sharp, 0.03)(mach),
              0.03 * (wedgePressure(mach, 0.03) - expansionPressure(mach, 0.03)),
            ]),
          ),
        ),
      where: "naca-1135",
    },
    {
      model: "Wave drag of a cone, 4 to 20 degrees, Mach 1.2 to 3",
      against: "Taylor and Maccoll's cone flow, integrated anew",
      found: () =>
        `at most ${told(worstConeDifference(waveDrag))} (a handbook's law, kept since it also holds where the shock stands off)`,
      where: "taylor-maccoll",
    },
    {
      model: "Mach number on a cone's surface, 5 to 20 degrees, Mach 1.5 to 3",
      against: "the same",
      found: () =>
        told(
          worst(
            [1.5, 2, 3].flatMap((mach) =>
              [5, 10, 15, 20].map(
                (angle) => [coneSurface(mach, angle * degree).mach, coneFlow(mach, angle * degree)?.mach ?? 0] as const,
              ),
            ),
          ),
        ),
      where: "taylor-maccoll",
    },
    {
      model: "Wave drag of Haack's two noses, fineness 6, Mach 1.2 to 2",
      against: "slender-body theory: (1 + 9 c²/8)/f² at every Mach number",
      found: () =>
        `at most ${told(worstSlenderDifference((c, fineness, mach) => noseDrag({ shape: { kind: "haack", c }, length: fineness }, 1)(mach)))}; ours falls with the Mach number, as it should`,
      where: "slender-body",
    },
    {
      model: "A bullet: ogive-cylinder with a blunt base",
      against: "0.295 within 10 % on an educational page (NASA Glenn), which names neither length nor speed",
      found: () =>
        `${bulletDrag(0.2)} at Mach 0.2, ${bulletDrag(2)} at Mach 2 for 5 calibres with 2.5 of ogive; below the speed of sound the figure is not met and not explained`,
      where: "–",
    },
    {
      model: "The whole build-up",
      against: "nothing measured on a rocket",
      found: () => "not known; the scale that flights teach stands for it",
      where: "–",
    },
    {
      model: "Drag rise, Mach 0.8 to 1.2; fins' round and square edges; fittings above Mach 1",
      against: "nothing: joined in value and slope, or laws from memory",
      found: () => "not known",
      where: "–",
    },
  ],
};
