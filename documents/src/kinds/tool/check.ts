import type { RawView } from "../raw.js";

/** A tool has ends or a depth stop, and its seconds need a depth. */
export function checkTool(tool: RawView): void {
  const [ends, stop] = [tool.has("ends"), tool.has("stop")];
  if (ends && stop) tool.at("stop").report("one-of-two", "either ends or a stop");
  if (!ends && !stop)
    tool.at("ends").report("missing", "ends with depthPerSecond, or a stop", '[{ "name": "A", "removes": "6 s" }]');
  if (ends && !tool.has("depthPerSecond"))
    tool.at("depthPerSecond").report("missing", "the depth of grain for one second", '"1/32 in"');
  if (tool.has("spacers") && stop && !ends) tool.at("spacers").report("does-not-belong", "only with ends");
  names(tool.at("ends"));
  names(tool.at("spacers"));
  const [from, to] = [tool.at("stop").at("from").si("length"), tool.at("stop").at("to").si("length")];
  if (from !== undefined && to !== undefined && to < from)
    tool.at("stop").at("to").report("out-of-range", "no less than from");
}

function names(list: RawView): void {
  const seen = new Set<string>();
  for (const each of list.list) {
    const name = each.at("name").text;
    if (name !== undefined && seen.has(name)) each.at("name").report("name-twice", "a name of its own");
    if (name !== undefined) seen.add(name);
  }
}
