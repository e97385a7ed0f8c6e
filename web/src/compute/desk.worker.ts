import { Desk } from "./desk/desk.js";
import { holdLock, reportUncaught } from "./desk/lifeline.js";
import { type FlyerPort, Share } from "./desk/share.js";
import { ticker } from "./desk/tick.js";
import { warmUp } from "./desk/warm-up.js";
import type { Flown, FromDesk, Held, HiredDesk, ToDesk } from "./protocol.js";

const tick = ticker();
const now = () => performance.now();
const pause = (time: number) => new Promise<void>((resolve) => setTimeout(resolve, time));
const post = (message: FromDesk | Held) => self.postMessage(message);

/** A flyer at the other end of a port. */
function flyerAt(port: MessagePort): FlyerPort {
  return {
    post: (message, transfer = []) => port.postMessage(message, [...transfer]),
    listen(listener) {
      port.onmessage = ({ data }: MessageEvent<Flown>) => listener(data);
    },
  };
}

function beDesk({ flyers, lock }: HiredDesk<MessagePort>): (message: ToDesk) => void {
  holdLock(lock, post);
  const share = new Share(flyers.map(flyerAt), { tick, now });
  const desk = new Desk({ post, share, tick, now, pause });
  return (message) => {
    if (message.kind === "ask") warmedUp();
    desk.take(message);
  };
}

reportUncaught();
const warmedUp = warmUp(tick);

let desk: ((message: ToDesk) => void) | null = null;

self.addEventListener("message", ({ data }: MessageEvent<HiredDesk<MessagePort> | ToDesk>) => {
  if (data.kind === "hired") desk = beDesk(data);
  else desk?.(data);
});
