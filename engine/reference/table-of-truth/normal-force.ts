import { finCountFactor, finForce } from "../../src/rocket/normal-force/fins.js";
import { cpOf, normalForceParts, slopeOf } from "../../src/rocket/normal-force/parts.js";
import { finPlanform } from "../../src/rocket/normal-force/planform.js";
import { noseVolumeFraction } from "../../src/rocket/nose-shape.js";
import type { FinShape } from "../../src/rocket/rocket.js";
import { finLift } from "../../src/rocket/supersonic/fin.js";
import { noseFlow } from "../../src/rocket/supersonic/nose-flow.js";
import { exampleA, exampleB, totalRows } from "../barrowman-1967/examples.js";
import { closed, ogives } from "../nose-volumes/rows.js";
import { worstWingDifference } from "../supersonic-wings/closed-forms.js";
import { apart, type TruthPart, told, worst } from "./row.js";

const wing = (shape: FinShape) => {
  const { slopeArea, at } = finLift(shape)(Math.SQRT2);
  return { slope: slopeArea / finPlanform(shape).area, at };
};
const swept = (sweep: number): FinShape => ({ kind: "trapezoid", root: 1, tip: 0.5, span: 1, sweep });
const edges = { leading: "round", trailing: "square", thicknessRatio: 0.02 } as const;

/** Normal force and centre of pressure. */
export const normalForce: TruthPart = {
  title: "Normal force and centre of pressure",
  rows: [
    {
      model: "Slope and centre of pressure at Mach 0, two rockets",
      against: "Barrowman's equations (1967, memory), independent code",
      found: () => {
        const rocketOf = { A: exampleA, B: exampleB };
        return told(
          worst(
            totalRows.flatMap(({ of, slope, at }) => {
              const parts = normalForceParts(rocketOf[of]);
              return [
                [slopeOf(parts, 0), slope],
                [cpOf(parts, 0), at],
              ] as const;
            }),
          ),
        );
      },
      where: "barrowman-1967",
    },
    {
      model: "Volumes of the noses, which place their force",
      against: "closed forms; tangent ogives to nine decimals",
      found: () =>
        told(
          apart([
            ...closed.map(([shape, part]) => [noseVolumeFraction(shape, 5), part] as const),
            ...ogives.map(([fineness, part]) => [noseVolumeFraction({ kind: "ogive" }, fineness), part] as const),
          ]),
        ),
      where: "nose-volumes",
    },
    {
      model: "Fins at Mach 0.6",
      against: "Prandtl-Glauert's rule in Diederich's form: 15.886774 for example A",
      found: () => told(Math.abs((normalForceParts(exampleA)[1]?.slopeAt(0.6) ?? 0) / 15.886774 - 1)),
      where: "barrowman-1967",
    },
    {
      model: "Fins above Mach 1.2, slope",
      against:
        "linear theory's closed forms (memory): rectangles of β AR 1.3 to 8, triangles with edges inside and outside the Mach cone",
      found: () => `at most ${told(worstWingDifference(wing).slope)}`,
      where: "supersonic-wings",
    },
    {
      model: "The same, where it acts",
      against: "the same",
      found: () => `at most ${told(worstWingDifference(wing).at)} of the distance from the leading edge`,
      where: "supersonic-wings",
    },
    {
      model: "A tapered fin and the same flown backwards, Mach 1.3 to 2.5",
      against: "the reverse-flow theorem: equal slopes",
      found: () =>
        told(worst([1.3, 1.6, 2.5].map((m) => [finLift(swept(0.5))(m).slopeArea, finLift(swept(0))(m).slopeArea]))),
      where: "supersonic-wings",
    },
    {
      model: "A wide fin at Mach 3",
      against: "Ackeret's 4/β less the tips' loss",
      found: () => {
        const { slopeAt } = finForce({ kind: "trapezoid", root: 0.1, tip: 0.1, span: 0.3, sweep: 0 }, edges);
        const beta = Math.sqrt(8);
        return told(Math.abs(slopeAt(3) / ((4 / beta) * (1 - 1 / (12 * beta))) - 1));
      },
      where: "`engine/src/rocket/normal-force`",
    },
    {
      model: "Nose above Mach 1.2, ever more slender (fineness 300), no tube",
      against: "slender-body theory (Munk): slope 2",
      found: () => told(Math.abs(noseFlow({ shape: { kind: "ogive" }, length: 300 }, 1, 0)(1.2).slope / 2 - 1)),
      where: "slender-body",
    },
    {
      model: "Ogive of fineness 3 with 8 calibres of tube, Mach 2",
      against: "some 3 per radian in wind-tunnel reports (memory, never the sole check)",
      found: () =>
        `${noseFlow({ shape: { kind: "ogive" }, length: 3 }, 1, 8)(2).slope.toFixed(2)} per radian; subsonic: 2`,
      where: "slender-body",
    },
    {
      model: "More than four fins in a ring",
      against: "one old report's factors (memory)",
      found: () => `not checked; six fins count as ${finCountFactor(6).toFixed(2)} of one`,
      where: "–",
    },
    {
      model: "Bridge, Mach 0.9 to 1.2; fin beside body above Mach 1.2; transitions above Mach 1.2",
      against: "nothing: the bridge only joins value and slope, the body's part keeps slender-body theory",
      found: () => "not known",
      where: "–",
    },
  ],
};
