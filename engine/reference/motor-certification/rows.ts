/** The invented curve: times [s] and thrusts [N]. */
export const curve = {
  times: [0, 0.05, 0.2, 0.6, 1, 1.4, 1.6, 1.75],
  thrusts: [0, 320, 380, 360, 320, 260, 110, 0],
};
