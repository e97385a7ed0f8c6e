/** Largest file that is unpacked [bytes]: what is larger was made to harm. */
const LARGEST_UNPACKED = 400_000_000;

/** Bytes made smaller. */
export function gzipped(bytes: Uint8Array<ArrayBuffer>): Promise<Blob> {
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream("gzip"));
  return new Response(stream).blob();
}

/** The bytes as they were; null where they cannot be unpacked. */
export async function gunzipped(gzip: Blob, most = LARGEST_UNPACKED): Promise<Uint8Array<ArrayBuffer> | null> {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let size = 0;
  try {
    const reader = gzip.stream().pipeThrough(new DecompressionStream("gzip")).getReader();
    for (let read = await reader.read(); !read.done; read = await reader.read()) {
      const part = new Uint8Array(read.value);
      parts.push(part);
      size += part.length;
      if (size > most) {
        await reader.cancel();
        return null;
      }
    }
  } catch {
    return null;
  }
  return new Uint8Array(await new Blob(parts).arrayBuffer());
}
