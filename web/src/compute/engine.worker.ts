import { Desk } from "./desk/desk.js";
import { flyer } from "./desk/flyer.js";
import { type FlyerPort, Share } from "./desk/share.js";
import { ticker } from "./desk/tick.js";
import type { Flown, FromDesk, Held, Hired, ToDesk, ToFlyer } from "./protocol.js";

const tick = ticker();
const now = () => performance.now();
const pause = (time: number) => new Promise<void>((resolve) => setTimeout(resolve, time));
const post = (message: FromDesk | Held) => self.postMessage(message);

/** A flyer at the other end of a port. */
function flyerAt(port: MessagePort): FlyerPort {
  return {
    post: (message) => port.postMessage(message),
    listen(listener) {
      port.onmessage = ({ data }: MessageEvent<Flown>) => listener(data);
    },
  };
}

function beDesk(ports: readonly MessagePort[]): (message: ToDesk) => void {
  const share = new Share(ports.map(flyerAt), { tick, now });
  const desk = new Desk({ post, share, tick, now, pause });
  desk.warmUp();
  return (message) => desk.take(message);
}

function beFlyer(port: MessagePort): void {
  const take = flyer((flown, transfer = []) => port.postMessage(flown, [...transfer]), tick);
  port.onmessage = ({ data }: MessageEvent<ToFlyer>) => take(data);
}

/** Holds a lock as long as this worker lives: whoever waits for it hears of its end. */
function hold(lock: string): void {
  navigator.locks.request(lock, () => {
    post({ kind: "held" });
    return new Promise(() => undefined);
  });
}

// what nobody caught must reach the page, which starts new workers
self.addEventListener("unhandledrejection", (event) => self.reportError(event.reason));

let desk: ((message: ToDesk) => void) | null = null;

self.addEventListener("message", ({ data }: MessageEvent<Hired<MessagePort> | ToDesk>) => {
  if (data.kind === "desk" || data.kind === "flyer") {
    if (data.lock !== null) hold(data.lock);
    if (data.kind === "desk") desk = beDesk(data.flyers);
    else beFlyer(data.desk);
  } else desk?.(data);
});
