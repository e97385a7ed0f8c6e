/** Stretches of NaN bridged by straight lines, the ends held; gives the stretches as [first, last] indices. */
export function bridged(time: Float64Array, values: Float64Array): [number, number][] {
  const stretches: [number, number][] = [];
  const n = values.length;
  for (let i = 0; i < n; i++) {
    if (Number.isFinite(values[i]!)) continue;
    let j = i;
    while (j < n && !Number.isFinite(values[j]!)) j++;
    const before = i > 0 ? values[i - 1]! : values[j]!;
    const after = j < n ? values[j]! : before;
    const from = i > 0 ? time[i - 1]! : time[i]!;
    const to = j < n ? time[j]! : time[n - 1]!;
    for (let k = i; k < j; k++)
      values[k] = to > from ? before + ((after - before) * (time[k]! - from)) / (to - from) : before;
    stretches.push([i, j - 1]);
    i = j;
  }
  return stretches;
}

/**
 * A slow channel beside a fast one repeats its last figure on most rows: the repeats are taken out, to be bridged.
 *
 * Only where more than half of the rows repeat while ten rows move by 30 steps of the figures or more.
 */
export function withoutHeld(values: Float64Array): void {
  let step = Number.POSITIVE_INFINITY;
  for (let i = 1; i < values.length; i++) {
    const change = Math.abs(values[i]! - values[i - 1]!);
    if (change > 1e-9 && change < step) step = change;
  }
  let moving = 0;
  let held = 0;
  for (let i = 10; i < values.length; i++) {
    if (!(Math.abs(values[i]! - values[i - 10]!) > Math.max(30 * step, 3))) continue;
    moving++;
    if (values[i] === values[i - 1]) held++;
  }
  if (moving < 10 || held < moving / 2) return;
  let kept = values[0]!;
  for (let i = 1; i < values.length; i++) {
    if (values[i] === kept && i + 1 < values.length) values[i] = Number.NaN;
    else kept = values[i]!;
  }
}
