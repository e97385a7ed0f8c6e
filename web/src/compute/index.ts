export { askAhead, progressOf, warmUp } from "./the-computer.js";
export type {
  ElementFacts,
  LandingShares,
  PictureData,
  PlanAnswer,
  PlanFacts,
  PlanWindow,
  SteadinessAnswer,
  Told,
  WindowAnswer,
} from "./told.js";
export { useAsideAnswer } from "./use-aside.js";
export { useBrief } from "./use-brief.js";
export { isSettling, usePlanAnswer } from "./use-plan-answer.js";
export { useSteadiness } from "./use-steadiness.js";
export { useWindow } from "./use-window.js";
