/** Examples that stand under each command's help. */
export const examples: Readonly<
  Record<
    | "all"
    | "decide"
    | "fly"
    | "shortlist"
    | "cut"
    | "window"
    | "charge"
    | "prep"
    | "card"
    | "debrief"
    | "check"
    | "app",
    string
  >
> = Object.freeze({
  all: `
Examples:
  delaywright decide plan.json
  delaywright cut two-collar.tool.json --longest 14s --to 9s
  delaywright check *.json
  delaywright app

Exit codes: 0 done; 2 wrong input or usage; 3 done, but no setting reaches the plan's least odds, a
check says stop, or the answer is no: each command's help says when; 1 a defect of ours.`,
  decide: `
Examples:
  delaywright decide plan.json
  delaywright decide plan.json --json > decision.json
  delaywright decide plan.json --draws 20000 --seed 7 --workers 4
  delaywright decide plan.json --flights flights

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
nothing does. The trajectory is in SI units and ends at the opening. A flight that never lifts off,
never leaves the guide or never lands ends with exit code 3.`,
  cut: `
Examples:
  delaywright cut two-collar.tool.json --longest 14s
  delaywright cut two-collar.tool.json --longest 14s --most-removed 8s --to 9s
  delaywright cut two-collar.tool.json --longest 14s --before 22.2mm --after 25.4mm --to 10s

Quantities are written with their unit and without a space, or in quotes: 14s, "1/32 in". With
--before and --after the depths read become the delay that is left, which is held against --to and
the limits. A delay that the tool does not make ends with exit code 3 and the nearest that it makes;
a reading past --most-removed or --least-left ends with 3, too.`,
  shortlist: `
Examples:
  delaywright shortlist plan.json --motors motors --aim best-odds
  delaywright shortlist plan.json --motors motors --height 800m
  delaywright shortlist plan.json --motors motors --aim cheapest --json > shortlist.json

Aims: nearest-height (with --height), highest, best-odds (unless given), gentlest, cheapest. The
motor, the choice and the cut of PLAN play no part; its tool, field, weather, guide and flyer do.
What is refused stands by its reason, with value and limit. No motor left ends with exit code 3.`,
  window: `
Examples:
  delaywright window plan.json
  delaywright window plan.json --cut 10s
  delaywright window plan.json --json > window.json

Without --cut the delay is as the motor in hand is cut, else as the plan chooses, else the delay to
cut. The figures are those of the app's map. It is good up to where the odds fall below their least
or a check of wind or lean says stop, whichever is nearer. Good in no wind ends with exit code 3.`,
  charge: `
Examples:
  delaywright charge demo.rocket.json
  delaywright charge demo.rocket.json --motor demo-h150.motor.json
  delaywright charge demo.rocket.json --json > charge.json

The rocket names its bay: inner diameter, free length, shear pins, friction, and the pressure that
you want. Every figure is a starting point for a ground test. A motor's charge that does not part
the joint, or that its well does not hold, ends with exit code 3.`,
  prep: `
Examples:
  delaywright prep plan.json > prep.txt
  delaywright prep plan.json --flight flight.json
  delaywright prep plan.json --units imperial --json > prep.json

The steps stand in the order in which they are done, each with its reason and the hazard that it
has; the columns at the right are for initials and time. With --flight the sheet stands as it was
signed there. Lines are 88 letters wide: in a fixed font of 10 points they fit on A4 and Letter.
Exit code 3 where no setting reaches the plan's least odds, or a check says stop.`,
  card: `
Examples:
  delaywright card plan.json -o card.html
  delaywright card plan.json --paper letter --units imperial -o card.html
  delaywright card --read code.txt -o plan.json

One page in black ink that needs nothing else: open it in a browser and print it at 100 %. Its QR
code holds the plan with all its documents; --read turns the text of such a code back into a plan.
Where a check says stop the card says so at its head, and the exit code is 3.`,
  debrief: `
Examples:
  delaywright debrief plan.json flight.csv --set 10s
  delaywright debrief plan.json flight.csv --flights flights -o flights/third.flight.json
  delaywright debrief plan.json flights/third.flight.json --flights flights --json > debrief.json
  delaywright debrief plan.json flight.csv --column time=1:s --column height=3:ft

LOG is a table of figures: one row a moment, any delimiter, decimal points or commas. What its
columns hold is told from headings and figures; --column says otherwise. A log document or a flight
document may stand in its place. Without --set the delay counts as written, read or chosen in the
documents; where nobody says, nothing is learned of it. With --flights it learns from that folder
too, and a mapping that was typed once is remembered for equal headings. PLAN is the plan as flown
for a record, and the plan whose next odds are asked about. Nothing changes a plan but you. Where no
setting is good enough next time the exit code is 3.`,
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
