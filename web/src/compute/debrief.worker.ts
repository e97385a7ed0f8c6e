import { DebriefDesk } from "./debrief/debrief-desk.js";
import type { FromDebrief, ToDebrief } from "./debrief/protocol.js";
import { ticker } from "./desk/tick.js";
import { DRAWS } from "./draws.js";

/** Draws of the first, rough odds. */
const ROUGH = 400;

const desk = new DebriefDesk({
  post: (message: FromDebrief) => self.postMessage(message),
  tick: ticker(),
  draws: [ROUGH, DRAWS],
});

self.addEventListener("message", ({ data }: MessageEvent<ToDebrief>) => desk.take(data));
