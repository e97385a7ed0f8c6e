/** Examples that stand under each command's help. */
export const examples: Readonly<Record<"all" | "decide" | "fly" | "cut" | "check" | "app", string>> = Object.freeze({
  all: `
Examples:
  delaywright decide plan.json
  delaywright cut two-collar.tool.json --longest 14s --to 9s
  delaywright check *.json
  delaywright app

Exit codes: 0 done; 2 wrong input or usage; 3 done, but no setting reaches the plan's least odds, or a
check says stop; 1 a defect of ours.`,
  decide: `
Examples:
  delaywright decide plan.json
  delaywright decide plan.json --json > decision.json
  delaywright decide plan.json --draws 20000 --seed 7 --workers 4

PLAN names the rocket, the motor, the tool, the field and the weather. The answer comes first: the
delay to cut, how it is cut, how good its odds are, and what to look out for. The same plan, seed
and number of draws give the same figures, however many workers fly them.`,
  fly: `
Examples:
  delaywright fly plan.json
  delaywright fly plan.json --delay 10s
  delaywright fly plan.json --csv --every 0.05s > flight.csv
  delaywright fly plan.json --draw 17 --json

Without --delay the plan's own choice or the motor's fixed delay opens the rocket; without those
nothing does. The trajectory is in SI units and ends at the opening.`,
  cut: `
Examples:
  delaywright cut two-collar.tool.json --longest 14s
  delaywright cut two-collar.tool.json --longest 14s --most-removed 8s --to 9s
  delaywright cut two-collar.tool.json --longest 14s --before 22.2mm --after 25.4mm

Quantities are written with their unit and without a space, or in quotes: 14s, "1/32 in". With
--before and --after the depths read become the delay that is left. A delay that the tool does not
make ends with exit code 3 and the nearest that it makes.`,
  check: `
Examples:
  delaywright check plan.json
  delaywright check *.json --json

Every issue of every file is told at once: where, what was found, what is accepted, an example.
Unlikely values are told too, and block nothing.`,
  app: `
Examples:
  delaywright app
  delaywright app --port 5000

Open the address that it prints. After the first visit the bench works without this command and without
a network; export from its Back-up what you would not lose.`,
});
