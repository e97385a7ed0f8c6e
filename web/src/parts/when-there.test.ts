import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { goWhenThere, whenThere } from "./when-there.js";

let busy = false;
let window = new EventTarget();

beforeEach(() => {
  busy = false;
  window = new EventTarget();
  vi.stubGlobal("requestAnimationFrame", (then: () => void) => setTimeout(then, 16));
  vi.stubGlobal("cancelAnimationFrame", clearTimeout);
  vi.stubGlobal("addEventListener", window.addEventListener.bind(window));
  vi.stubGlobal("document", { querySelector: () => (busy ? {} : null) });
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe("whenThere()", () => {
  test("finds at once what is there", () => {
    const found = vi.fn();
    whenThere(() => "it", found);
    expect(found).toHaveBeenCalledExactlyOnceWith("it");
  });

  test("waits for what is drawn later, and tells of it once", () => {
    let there: string | null = null;
    const found = vi.fn();
    whenThere(() => there, found);
    vi.advanceTimersByTime(500);
    expect(found).not.toHaveBeenCalled();
    there = "it";
    vi.advanceTimersByTime(500);
    expect(found).toHaveBeenCalledExactlyOnceWith("it");
  });

  test("gives up in the end, but not while the page is busy", () => {
    const look = vi.fn(() => null);
    busy = true;
    whenThere(look, () => undefined);
    vi.advanceTimersByTime(30_000);
    let times = look.mock.calls.length;
    vi.advanceTimersByTime(1000);
    expect(look.mock.calls.length).toBeGreaterThan(times);
    busy = false;
    vi.advanceTimersByTime(100);
    times = look.mock.calls.length;
    vi.advanceTimersByTime(1000);
    expect(look).toHaveBeenCalledTimes(times);
  });

  test("gives up when it is told to", () => {
    const look = vi.fn(() => null);
    whenThere(look, () => undefined)();
    vi.advanceTimersByTime(1000);
    expect(look).toHaveBeenCalledOnce();
  });
});

describe("goWhenThere()", () => {
  test("goes where the reader asked to go, once it is drawn", () => {
    let there: string | null = null;
    const found = vi.fn();
    goWhenThere(() => there, found);
    vi.advanceTimersByTime(500);
    there = "it";
    vi.advanceTimersByTime(500);
    expect(found).toHaveBeenCalledExactlyOnceWith("it");
  });

  test("takes nobody away who has moved on meanwhile", () => {
    for (const move of ["wheel", "touchmove", "pointerdown", "keydown"]) {
      let there: string | null = null;
      const found = vi.fn();
      goWhenThere(() => there, found);
      vi.advanceTimersByTime(500);
      window.dispatchEvent(new Event(move));
      there = "it";
      vi.advanceTimersByTime(20_000);
      expect(found, move).not.toHaveBeenCalled();
    }
  });
});
