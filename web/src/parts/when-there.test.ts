import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { whenThere } from "./when-there.js";

beforeEach(() => {
  vi.stubGlobal("requestAnimationFrame", (then: () => void) => setTimeout(then, 16));
  vi.stubGlobal("cancelAnimationFrame", clearTimeout);
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

  test("gives up in the end, and when it is told to", () => {
    const look = vi.fn(() => null);
    whenThere(look, () => undefined, 100);
    vi.advanceTimersByTime(1000);
    const times = look.mock.calls.length;
    vi.advanceTimersByTime(1000);
    expect(look).toHaveBeenCalledTimes(times);
    whenThere(look, () => undefined, 100)();
    vi.advanceTimersByTime(1000);
    expect(look).toHaveBeenCalledTimes(times + 1);
  });
});
