/**
 * A vector in the world frame: x east, y north, z up, origin at the pad.
 *
 * Azimuths are degrees true in documents and radians here, clockwise from north: east = sin, north = cos.
 * Wind vectors point where the air goes; the guide leans towards its azimuth.
 */
export type Vec3 = readonly [east: number, north: number, up: number];
