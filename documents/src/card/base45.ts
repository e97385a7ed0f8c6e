const LETTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

/**
 * Bytes as letters of the alphanumeric mode of a QR code.
 *
 * @source RFC 9285, The Base45 Data Encoding
 * @example
 * toBase45(new Uint8Array([65, 66])); // "BB8"
 */
export function toBase45(bytes: Uint8Array): string {
  let text = "";
  for (let i = 0; i < bytes.length; i += 2) {
    const [first = 0, second] = [bytes[i], bytes[i + 1]];
    const value = second === undefined ? first : 256 * first + second;
    text += letter(value) + letter(Math.floor(value / 45));
    if (second !== undefined) text += letter(Math.floor(value / 2025));
  }
  return text;
}

function letter(value: number): string {
  return LETTERS.charAt(value % 45);
}

/**
 * The bytes that letters stand for.
 *
 * @returns undefined where a letter is not of the alphabet, or a group stands for more than its bytes hold
 * @source RFC 9285, The Base45 Data Encoding
 * @example
 * fromBase45("BB8"); // bytes 65, 66
 */
export function fromBase45(text: string): Uint8Array | undefined {
  if (text.length % 3 === 1) return undefined;
  const bytes: number[] = [];
  for (let i = 0; i < text.length; i += 3) {
    const group = [...text.slice(i, i + 3)].map((sign) => LETTERS.indexOf(sign));
    if (group.includes(-1)) return undefined;
    const value = group.reduceRight((sum, digit) => 45 * sum + digit, 0);
    if (value > (group.length === 3 ? 0xffff : 0xff)) return undefined;
    if (group.length === 3) bytes.push(value >> 8);
    bytes.push(value & 0xff);
  }
  return new Uint8Array(bytes);
}
