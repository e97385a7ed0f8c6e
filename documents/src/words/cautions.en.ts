/** Where a caution belongs: it is shown where the hazard is. */
export type CautionTopic = "cutting" | "charge" | "late-charge" | "retention" | "igniter" | "authority";

/** The usual cautions. They come before what the tool has to say, not after it. */
export const cautions: Readonly<Record<CautionTopic, readonly string[]>> = Object.freeze({
  cutting: [
    "Whether a delay may be cut at all is the motor's own instructions' to say, and how, and with which tool.",
    "Wear eye protection. No sparks, flames or heat near. By hand only, only with the tool named for that motor.",
    "Shavings are propellant: gather them and deal with them as the maker's instructions say.",
    "What is cut cannot be put back. Measure the depth before and after.",
  ],
  charge: [
    "Load the ejection charge late and point it away from people. Ground-test it.",
    "Electronics stay off while hands are near.",
  ],
  "late-charge": [
    "A late charge can fire on the ground or in a hand: approach from the side and assume that it is live.",
    "Power down the electronics first.",
  ],
  retention: [
    "The ejection charge pushes the motor out of the tube too: check its retention, the fit of the nose and the vent hole.",
    "Drag can part the rocket at burnout: check that it holds together then.",
  ],
  igniter: [
    "The igniter goes in at the pad only, with the launch circuit safed, radios and children away.",
    "After a misfire wait as the safety code says.",
  ],
  authority: [
    "The motor maker's instructions, the safety code, the certifying association, the range safety officer and local law come before anything said here.",
  ],
});
