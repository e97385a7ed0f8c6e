import { flyer } from "./desk/flyer.js";
import { holdLock, reportUncaught } from "./desk/lifeline.js";
import { ticker } from "./desk/tick.js";
import type { Held, HiredFlyer, ToFlyer } from "./protocol.js";

reportUncaught();

self.addEventListener("message", ({ data: { desk, lock } }: MessageEvent<HiredFlyer<MessagePort>>) => {
  holdLock(lock, (message: Held) => self.postMessage(message));
  const take = flyer((flown, transfer = []) => desk.postMessage(flown, [...transfer]), ticker());
  desk.onmessage = ({ data }: MessageEvent<ToFlyer>) => take(data);
});
