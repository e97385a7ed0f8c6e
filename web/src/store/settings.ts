import { isKeyed } from "./field.js";
import type { Keeper } from "./keeper.js";
import { Watched } from "./watched.js";

/** What the flyer chose for the app. */
export interface Settings {
  readonly units: "metric" | "imperial";
  readonly theme: "auto" | "light" | "dark" | "sun";
  /** When everything was last exported [ms]; null: never. */
  readonly lastExport: number | null;
  /** The worked example was put on the bench once, and is not put there again unasked. */
  readonly exampleGiven: boolean;
}

const first: Settings = Object.freeze({ units: "metric", theme: "auto", lastExport: null, exampleGiven: false });

const KEY = "settings";
const MIRROR = "delaywright-settings";

/** What of a value are settings; the others stay as they are. */
export function settingsFrom(value: unknown, otherwise: Settings = first): Settings {
  if (!isKeyed(value)) return otherwise;
  const { units, theme, lastExport, exampleGiven } = value;
  return {
    units: units === "metric" || units === "imperial" ? units : otherwise.units,
    theme: theme === "auto" || theme === "light" || theme === "dark" || theme === "sun" ? theme : otherwise.theme,
    lastExport:
      lastExport === null || Number.isFinite(lastExport) ? (lastExport as number | null) : otherwise.lastExport,
    exampleGiven: typeof exampleGiven === "boolean" ? exampleGiven : otherwise.exampleGiven,
  };
}

/** Where the settings are mirrored: the database answers too late for the first paint. */
export type Mirror = Pick<Storage, "getItem" | "setItem">;

/** The browser's own small storage; null where it gives none. */
export function browserMirror(): Mirror | null {
  try {
    return globalThis.localStorage ?? null;
  } catch {
    return null;
  }
}

/** The settings, in the database and in their mirror. */
export class SettingsBox {
  readonly watched: Watched<Settings>;
  private readonly keeper: Keeper;
  private readonly mirror: Mirror | null;

  constructor(keeper: Keeper, mirror: Mirror | null) {
    this.keeper = keeper;
    this.mirror = mirror;
    this.watched = new Watched(this.mirrored());
  }

  /** Reads them from the database: at the start, and when another tab changed them. */
  async read(): Promise<void> {
    const row = await this.keeper.with((database) => database.settings.get(KEY)).catch(() => undefined);
    this.take(settingsFrom(row, this.watched.get()));
  }

  /** A setting that cannot be written is kept in the mirror, and for as long as the page is open. */
  async change(patch: Partial<Settings>): Promise<void> {
    this.take({ ...this.watched.get(), ...patch });
    const put = this.keeper.with(async (database) => {
      await database.transaction("rw", database.settings, async () => {
        const row = settingsFrom(await database.settings.get(KEY), this.watched.get());
        await database.settings.put({ key: KEY, ...row, ...patch });
      });
      this.keeper.tellSettings();
    });
    await put.catch(() => undefined);
  }

  private take(settings: Settings): void {
    this.watched.set(settings);
    try {
      this.mirror?.setItem(MIRROR, JSON.stringify(settings));
    } catch {
      // the mirror only spares a flash of the wrong theme
    }
  }

  private mirrored(): Settings {
    try {
      return settingsFrom(JSON.parse(this.mirror?.getItem(MIRROR) ?? "null"));
    } catch {
      return first;
    }
  }
}
