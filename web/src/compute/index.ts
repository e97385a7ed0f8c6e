export { warmUp } from "./the-computer.js";
export type {
  ElementFacts,
  LandingShares,
  PictureData,
  PlanAnswer,
  PlanFacts,
  PlanWindow,
  Told,
} from "./told.js";
export { useAsideAnswer } from "./use-aside.js";
export { useBrief } from "./use-brief.js";
export { usePlanAnswer } from "./use-plan-answer.js";
export { useProgress } from "./use-progress.js";
export { useWindow } from "./use-window.js";
