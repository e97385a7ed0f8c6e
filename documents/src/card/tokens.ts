/**
 * Pieces of text that stand in nearly every plan. Their order is part of the card code's first version: a piece keeps its place
 * for ever, new ones go to the end.
 */
const pieces: readonly string[] = Object.freeze([
  // the first 28 take one byte
  ' mm"',
  ' m"',
  ' kg"',
  ' g"',
  ' s"',
  ' m/s"',
  ' deg"',
  ' in"',
  '{"kind":"plan","version":1,"name":"',
  '{"kind":"rocket","version":1,"name":"',
  '{"kind":"motor","version":1,"name":"',
  '{"kind":"motor-in-hand","version":1,"name":"',
  '{"kind":"tool","version":1,"name":"',
  '{"kind":"field","version":1,"name":"',
  '"diameter":"',
  '"length":"',
  '"at":"',
  '{"shape":"',
  '"delay":',
  '"strength":"',
  '"wind":"',
  '"temperature":"',
  '"removes":"',
  '"depthPerSecond":"',
  '"fittings":[{"kind":"rail button","at":"',
  ',{"kind":"rail button","at":"',
  '"mass":"',
  '"name":"',
  // the others take two
  '"rocket":',
  '"motor":',
  '"tool":',
  '"field":',
  '"date":"',
  '"weather":{',
  '"pressure":"',
  '"seaLevelPressure":"',
  '"humidity":',
  '"motorTemperature":"',
  '"windFrom":"',
  '"measuredAt":"',
  '"terrain":"',
  '"open"',
  '"rough"',
  '"wooded"',
  '"water"',
  '"gradientHeight":"',
  '"aloft":[{"height":"',
  '"from":"',
  '"taken":"',
  '"weatherRange":{',
  '"guide":{',
  '"travel":"',
  '"rail":"',
  '"stop":"',
  '"tilt":"',
  '"toward":"',
  '"ballast":{',
  '"limits":{',
  '"openingSpeed":"',
  '"openingHeight":"',
  '"leastClean":',
  '"leastHolds":',
  '"choice":{',
  '"reason":"',
  '"spread":',
  '"none"',
  '"dragScale":',
  '"totalImpulse":',
  '"massWithoutMotor":"',
  '"balanceWithoutMotor":"',
  '"inertiaWithoutMotor":',
  '"massReady":"',
  '"balanceReady":"',
  '"readyWith":',
  '"nose":',
  '"ogive"',
  '"cone"',
  '"parabola"',
  '"ellipsoid"',
  '"haack"',
  '"sections":[{"shape":"transition","at":"',
  '"aftDiameter":"',
  '"fins":[{',
  '"trapezoid"',
  '"ellipse"',
  '"polygon"',
  '"count":',
  '"root":"',
  '"tip":"',
  '"span":"',
  '"sweep":"',
  '"thickness":"',
  '"leadingEdge":"',
  '"trailingEdge":"',
  '"round"',
  '"square"',
  '"sharp"',
  '"roughness":"',
  '"mount":{',
  '"motorAftAt":"',
  '"retention":"',
  '"positive"',
  '"friction"',
  '"drag":{"from":"',
  'build-up"',
  'constant","cd":',
  '"scale":',
  '"bay":{',
  '"shearPins":[{"size":"',
  '"recovery":{',
  '"motorCharge":"',
  '"primary"',
  '"backup"',
  '"lineStretch":"',
  '"electronics":{"fires":"apogee"',
  '"drogue":',
  '"main":',
  '"canopy":{"shape":"',
  'hemispherical"',
  'flat circular"',
  '"opensAt":"',
  '"harness":{',
  '"statedCp":"',
  '"maker":"',
  '"designation":"',
  '"loadedMass":"',
  '"propellantMass":"',
  '"thrust":{"time":[',
  '],"newtons":[',
  '{"kind":"adjustable","longest":"',
  '{"kind":"fixed","seconds":"',
  '{"kind":"none"}',
  '"mostRemoved":"',
  '"leastLeft":"',
  '"clock":"burnout"',
  '"clock":"ignition"',
  '"instructions":{"allowCutting":true',
  '"charge":"',
  '"wellHolds":"',
  '"type":',
  '"label":"',
  '"lot":"',
  '"made":"',
  '"readings":[{"when":"',
  '"before":"',
  '"after":"',
  '"end":"',
  '"spacers":[',
  '"ends":[{',
  '"keepsBack":"',
  '"depthError":"',
  '"elevation":"',
  '"latitude":"',
  '"ceiling":',
  '{"height":"',
  '"above":"ground"',
  '"boundary":{"shape":"',
  'circle","radius":"',
  '"pad":{"east":"',
  '"north":"',
  '"keepOff":[{',
  '"points":[["',
  '"],["',
  '"tiltSector":{"from":"',
  '"to":"',
  ' degC"',
  ' hPa"',
  ' kg m2"',
  ' um"',
  ' kN"',
  ' N"',
  ' psi"',
  ' mph"',
  ' ft"',
  ' lb"',
  ' oz"',
  ' degF"',
  ' inHg"',
]);

/** JSON never holds letters below the space as they are, so they can stand for pieces: alone, or the first of them before another. */
const ALONE = 0x04;
const ALONE_COUNT = 28;
const SECOND = 0x20;
const SECOND_COUNT = 95;

function signOf(index: number): string {
  if (index < ALONE_COUNT) return String.fromCharCode(ALONE + index);
  const rest = index - ALONE_COUNT;
  return String.fromCharCode(1 + Math.floor(rest / SECOND_COUNT), SECOND + (rest % SECOND_COUNT));
}

const signs = new Map(pieces.map((piece, index) => [piece, signOf(index)]));
const meanings = new Map(pieces.map((piece, index) => [signOf(index), piece]));
/** Longest first, so that the longest that fits is taken. */
const anyPiece = new RegExp(
  [...pieces]
    .sort((a, b) => b.length - a.length)
    .map((piece) => piece.replace(/[.*+?^$(){}|[\]\\]/g, "\\$&"))
    .join("|"),
  "g",
);
// biome-ignore lint/suspicious/noControlCharactersInRegex: they stand for the pieces
const anySign = /[\u0001\u0002][\u0020-\u007e]|[\u0004-\u001f]/g;

/**
 * A document's JSON with a letter or two for each usual piece.
 *
 * @param json without white space between its parts
 * @example
 * toSigns('{"mass":"50 g"}').length; // 7
 */
export function toSigns(json: string): string {
  return json.replace(anyPiece, (piece) => signs.get(piece) ?? piece);
}

/** The text that `toSigns` was given. Letters that stand for nothing are left for the JSON reader to refuse. */
export function fromSigns(text: string): string {
  return text.replace(anySign, (sign) => meanings.get(sign) ?? sign);
}
