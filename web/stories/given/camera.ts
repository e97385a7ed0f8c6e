import type { Locator, Page } from "@playwright/test";
import decode from "jsqr";

/** The pixels of a picture, as a camera would see them. */
async function pixelsOf(
  page: Page,
  picture: Buffer,
): Promise<{ data: Uint8ClampedArray; width: number; height: number }> {
  const { bytes, ...size } = await page.evaluate(async (encoded) => {
    const file = new Blob([Uint8Array.from(atob(encoded), (letter) => letter.charCodeAt(0))], { type: "image/png" });
    const bitmap = await createImageBitmap(file);
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height).getContext("2d");
    canvas?.drawImage(bitmap, 0, 0);
    const found = canvas?.getImageData(0, 0, bitmap.width, bitmap.height).data ?? [];
    return { bytes: Array.from(found), width: bitmap.width, height: bitmap.height };
  }, picture.toString("base64"));
  return { data: Uint8ClampedArray.from(bytes), ...size };
}

/** A part of the page as a camera sees it from near, with many pixels to each dot of a printer. */
export async function closeUp(page: Page, part: Locator): Promise<Buffer> {
  const place = await part.evaluate(async (element) => {
    element.scrollIntoView({ block: "center" });
    // what comes into view only now has its place two frames later
    await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
    const { x, y, width, height } = element.getBoundingClientRect();
    return { x: x + scrollX, y: y + scrollY, width, height };
  });
  const session = await page.context().newCDPSession(page);
  const { data } = await session.send("Page.captureScreenshot", {
    clip: { ...place, scale: 6 },
  });
  await session.detach();
  return Buffer.from(data, "base64");
}

/** Frames of a recording: the first ones show nothing, as a camera that is still being turned to the code. */
const FRAMES = { empty: 2, all: 8 } as const;

/** Light and dark in a picture by luma weights of ITU-R BT.601, even in both directions, on a white table. */
function lumaOf({ data, width, height }: Awaited<ReturnType<typeof pixelsOf>>) {
  const [across, down] = [width + (width % 2), height + (height % 2)];
  const luma = Buffer.alloc(across * down, 235);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const [red = 0, green = 0, blue = 0] = data.subarray(4 * (y * width + x));
      luma[y * across + x] = 16 + (0.257 * red + 0.504 * green + 0.098 * blue);
    }
  return { luma, across, down };
}

/** A picture as an uncompressed recording (YUV4MPEG2), which Chromium plays in place of a camera. */
export async function recordingOf(page: Page, picture: Buffer): Promise<Buffer> {
  const { luma, across, down } = lumaOf(await pixelsOf(page, picture));
  const grey = Buffer.alloc((across * down) / 2, 128);
  const frames = Array.from({ length: FRAMES.all }, (_, i) => [
    Buffer.from("FRAME\n"),
    i < FRAMES.empty ? Buffer.alloc(luma.length, 60) : luma,
    grey,
  ]);
  return Buffer.concat([Buffer.from(`YUV4MPEG2 W${across} H${down} F8:1 Ip A1:1 C420jpeg\n`), ...frames.flat()]);
}

/** What a camera reads in a picture; empty where it finds no code. */
export async function codeIn(page: Page, picture: Buffer): Promise<string> {
  const { data, width, height } = await pixelsOf(page, picture);
  const read = decode(data, width, height);
  return new TextDecoder().decode(new Uint8Array(read?.binaryData ?? []));
}
