export function drawnPlan(seed: number, number: number): Record<string, string>;
