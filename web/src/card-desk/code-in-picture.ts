/** What is used of the browser's own reader; not every browser has one. */
interface Detector {
  detect(source: ImageBitmapSource): Promise<readonly { readonly rawValue: string }[]>;
}
type DetectorMaker = new (options: { readonly formats: readonly string[] }) => Detector;

/** The browser's reader of codes; null where it has none. */
export function codeReader(): Detector | null {
  const { BarcodeDetector } = globalThis as unknown as { readonly BarcodeDetector?: DetectorMaker };
  return BarcodeDetector === undefined ? null : new BarcodeDetector({ formats: ["qr_code"] });
}

/** Longer sides that a picture is looked at in [px]: fine dots first, then with less noise. */
const SIDES = [2400, 1400, 800] as const;

/**
 * The text of the code in a picture.
 *
 * @param picture as a camera or a screen gave it
 * @returns null where no code is found
 */
export async function codeInPicture(picture: Blob): Promise<string | null> {
  const bitmap = await createImageBitmap(picture);
  try {
    const [found] = (await codeReader()?.detect(bitmap)) ?? [];
    return found?.rawValue ?? (await decoded(bitmap));
  } finally {
    bitmap.close();
  }
}

/** As above, with a reader of its own, which is loaded only here. */
async function decoded(bitmap: ImageBitmap): Promise<string | null> {
  const { default: decode } = await import("jsqr");
  const longest = Math.max(bitmap.width, bitmap.height);
  const sides = new Set(SIDES.map((side) => Math.min(side, longest)));
  for (const side of sides) {
    const [width, height] = [bitmap.width, bitmap.height].map((each) => Math.round((each * side) / longest));
    if (!width || !height) return null;
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [width, height];
    const drawn = canvas.getContext("2d", { willReadFrequently: true });
    if (drawn === null) return null;
    drawn.drawImage(bitmap, 0, 0, width, height);
    const found = decode(drawn.getImageData(0, 0, width, height).data, width, height);
    if (found !== null && found.data !== "") return found.data;
  }
  return null;
}
