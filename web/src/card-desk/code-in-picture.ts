/** What is used of the browser's own reader; not every browser has one. */
interface Detector {
  detect(source: ImageBitmapSource): Promise<readonly { readonly rawValue: string }[]>;
}
type DetectorMaker = new (options: { readonly formats: readonly string[] }) => Detector;

/** The browser's reader of codes; null where it has none. */
function browserReader(): Detector | null {
  const { BarcodeDetector } = globalThis as unknown as { readonly BarcodeDetector?: DetectorMaker };
  try {
    return BarcodeDetector === undefined ? null : new BarcodeDetector({ formats: ["qr_code"] });
  } catch {
    return null;
  }
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
    const found = await browserReader()
      ?.detect(bitmap)
      .then(firstText, () => null);
    if (found != null) return found;
    const decode = await decoder();
    const longest = Math.max(bitmap.width, bitmap.height);
    for (const side of new Set(SIDES.map((each) => Math.min(each, longest)))) {
      const text = decode(bitmap, bitmap, side);
      if (text !== null) return text;
    }
    return null;
  } finally {
    bitmap.close();
  }
}

/** Looks at a camera's picture as it is now; null where there is no code in it. */
export type Look = (video: HTMLVideoElement) => Promise<string | null>;

/** Looks one after the other, each at one size: the camera moves meanwhile. The browser's own reader where it has one that works. */
export async function codeInSight(): Promise<Look> {
  let reader = browserReader();
  let decode = reader === null ? await decoder() : null;
  let looks = 0;
  return async (video) => {
    const own = reader;
    if (own !== null) {
      try {
        return firstText(await own.detect(video));
      } catch {
        reader = null;
      }
    }
    decode ??= await decoder();
    const side = SIDES[looks % SIDES.length] ?? SIDES[0];
    looks += 1;
    const size = { width: video.videoWidth, height: video.videoHeight };
    return decode(video, size, Math.min(side, Math.max(size.width, size.height)));
  };
}

function firstText([found]: readonly { readonly rawValue: string }[]): string | null {
  return found === undefined || found.rawValue === "" ? null : found.rawValue;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** A reader of its own, which is loaded only once a picture is to be read. */
async function decoder() {
  const { default: decode } = await import("jsqr");
  const canvas = document.createElement("canvas");
  const drawn = canvas.getContext("2d", { willReadFrequently: true });
  return (picture: CanvasImageSource, { width, height }: Size, side: number): string | null => {
    const scale = side / Math.max(width, height);
    const [across, down] = [Math.round(width * scale), Math.round(height * scale)];
    if (drawn === null || !across || !down) return null;
    [canvas.width, canvas.height] = [across, down];
    drawn.drawImage(picture, 0, 0, across, down);
    const found = decode(drawn.getImageData(0, 0, across, down).data, across, down);
    return found === null || found.data === "" ? null : found.data;
  };
}
