import { join } from "node:path";
import { longLog } from "./long-log.mjs";
import { writeLongLog } from "./long-log-file.mjs";

/**
 * What a log of a million rows costs in the app, at a desk and on a phone a quarter as fast.
 *
 * The aim: read in 3 s, no task of the main thread over 50 ms at the desk, no frame over 100 ms on the phone while the plot is
 * moved. Tasks are told in processor time; other work on the machine makes times and frames longer.
 *
 * @returns rows of a name, a figure [ms], and the most it may be; null: told alone
 */
export async function longLogRows(browser, address, folder) {
  const log = join(folder, "long-log.csv");
  writeLongLog(log);
  const desk = await longLog({ browser, address, log, folder, device: "desk" });
  const phone = await longLog({ browser, address, log, folder, device: "phone" });
  return [
    ["log of 1,000,000 rows, chosen to columns shown, desk [ms]", desk.columns, 3000],
    ["taken to events shown, desk [ms]", desk.events, null],
    ["longest task of the main thread while it is read, desk [ms]", desk.read, 50],
    ["longest task while it is kept and debriefed, desk [ms]", desk.taken, 50],
    ["longest task while its plot is zoomed, desk [ms]", desk.zoomed.task, 50],
    ["longest task while its top is dragged, desk [ms]", desk.dragged.task, 50],
    ["slowest frame while its top is dragged, desk [ms]", desk.dragged.frame, null],
    ["longest task while the bench is exported with it, desk [ms]", desk.exported, 50],
    ["the same log, chosen to columns shown, phone [ms]", phone.columns, null],
    ["taken to events shown, phone [ms]", phone.events, null],
    ["longest task while it is read, phone [ms]", phone.read, null],
    ["longest task while it is kept and debriefed, phone [ms]", phone.taken, null],
    ["longest task while the bench is exported with it, phone [ms]", phone.exported, null],
    ["slowest frame while its plot is zoomed, phone [ms]", phone.zoomed.frame, 100],
    ["slowest frame while its top is dragged, phone [ms]", phone.dragged.frame, 100],
  ];
}
