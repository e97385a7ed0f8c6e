export type { SavedBrief } from "./brief-box.js";
export { DRAWS } from "./draws.js";
export { warmUp } from "./the-computer.js";
export type {
  Brief,
  ElementFacts,
  Ellipses,
  LandingShares,
  PictureData,
  PlanAnswer,
  PlanFacts,
  PlanWindow,
  Progress,
  Told,
  ToolFacts,
  WindowAnswer,
  WindowData,
} from "./told.js";
export { useBrief } from "./use-brief.js";
export { usePlanAnswer } from "./use-plan-answer.js";
export { useWindow } from "./use-window.js";
