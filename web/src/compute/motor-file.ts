/** A motor's file by its name, whether or not it can be read. */
export function isMotorFile(path: string): boolean {
  return path.endsWith(".motor.json");
}
