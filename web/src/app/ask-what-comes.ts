import { inOrder, placed } from "../bench/order.js";
import { isPlan } from "../bench/which-plans.js";
import { askAhead } from "../compute/index.js";
import { dayOf } from "../standing/day.js";
import { documentSource } from "../store/index.js";
import { routeOf } from "./router.js";

/** Asks for the answers that the page of this address is going to show, in the order it shows them. */
export function askWhatComes(): void {
  const route = routeOf(location.hash);
  if (route.page === "plan" || route.page === "pad") askAhead("plan", route.path);
  if (route.page !== "bench") return;
  const plans = documentSource.entries().filter(isPlan).map(placed);
  for (const { path } of inOrder(plans, dayOf(new Date()))) askAhead("brief", path);
}
