// The hot loop of ../src/flight/fast and ../src/spread once more in C, as a yardstick: same algorithm, same tables, same draws.
//
//   gcc -O3 -march=native -o ensemble ensemble.c -lm
//   ensemble <prepared inputs> <from> <to> <repeats>
//
// Reads what dump.ts wrote, flies draws `from` ... `to` - 1 `repeats` times, prints the flights a second of each repeat and the
// means of everything the flights came to. Names follow the TypeScript, which holds the explanations.
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "entries.h"

// ---- work.ts, slots.ts

enum { rowSize = 10, mostRecords = 1024 };
typedef enum { GUIDE, PITCHING, ALIGNED, COASTING } Phase;

typedef struct {
  double start, length, place[2];
  double c[4][5];
} Record;

typedef struct {
  double from, to, thrust, slope, impulse, thrusting;
} Stretch;

typedef struct {
  // shared by all draws
  double area, gravity0, gravity1, gravity2, motorCentre, motorAft, motorLoaded, propellant, motorGyration;
  double inverseAirStep, windTop, windScale, inverseMachStep, inverseDragHeight, crossFlow, crossFlowAt, travel;
  double lowestShear, settledSwing, totalImpulse, burnEnd;
  int lastAirCell, lastWindCell, lastMachCell, lastDragRow, machCount, aeroStride, partCount;
  int settled, pitching, handOver, stretchCount;
  const double *coasting, *thrustingDrag, *aero, *windKnots;
  int windKnotCount;
  const Stretch *stretches;
  // of a draw
  double halfDragArea, frameMass, frameBalance, frameInertia, guideEast, guideNorth, guideUp;
  double lowShearEast, lowShearNorth;
  double *air, *wind;
  // of a stretch of the thrust curve
  double stretchFrom, stretchTo, thrust, thrustSlope, spent0, spent1, spent2;
  int thrusting;
  double emptyPerMass, emptyPerInertia, emptyBalance, swingFrequency2;
  // of a step
  double y[rowSize], stage[rowSize], next[rowSize], k[7 * rowSize], place[2];
  Record records[mostRecords + 1];
} Work;

static inline int whole(double x) { return x < 2147483647.0 ? (int)x : x > 0 ? 2147483647 : 0; }

// ---- rates.ts

static inline double dragOf(const Work *w, double z, int machCell, double machPart) {
  const double *table = w->thrusting ? w->thrustingDrag : w->coasting;
  if (w->lastDragRow < 0)
    return w->halfDragArea * (table[machCell] + machPart * (table[machCell + 1] - table[machCell]));
  double place = z > 0 ? z * w->inverseDragHeight : 0;
  int row = whole(place);
  if (row > w->lastDragRow) row = w->lastDragRow;
  double rowPart = place - row;
  const double *near = table + row * w->machCount + machCell;
  const double *far = near + w->machCount;
  double low = near[0] + machPart * (near[1] - near[0]);
  double high = far[0] + machPart * (far[1] - far[0]);
  return w->halfDragArea * (low + rowPart * (high - low));
}

static void pitchingRates(const Work *w, double t, const double *y, double *k) {
  double z = y[0], vx = y[1], vy = y[2], vz = y[3];
  double ax = y[4], ay = y[5], az = y[6], dx = y[7], dy = y[8], dz = y[9];

  double dt = t - w->stretchFrom;
  double motorMass = w->motorLoaded - w->propellant * (w->spent0 + dt * (w->spent1 + dt * w->spent2));
  double perMass = 1 / (w->frameMass + motorMass);
  double apart = w->motorCentre - w->frameBalance;
  double balance = w->frameBalance + motorMass * perMass * apart;
  double inertia = w->frameInertia + motorMass * w->motorGyration + w->frameMass * motorMass * perMass * apart * apart;

  double airPlace = z > 0 ? z * w->inverseAirStep : 0;
  int cell = whole(airPlace);
  if (cell > w->lastAirCell) cell = w->lastAirCell;
  double part = airPlace - cell;
  const double *air = w->air + 2 * cell;
  double density = air[0] + part * (air[2] - air[0]);
  double perSound = air[1] + part * (air[3] - air[1]);

  double windPlace = z > 0 ? (z < w->windTop ? sqrt(sqrt(z)) * w->windScale : w->lastWindCell + 1) : 0;
  cell = whole(windPlace);
  if (cell > w->lastWindCell) cell = w->lastWindCell;
  part = windPlace - cell;
  const double *wind = w->wind + 2 * cell;
  double ux = vx - (wind[0] + part * (wind[2] - wind[0]));
  double uy = vy - (wind[1] + part * (wind[3] - wind[1]));
  double uz = vz;

  double speed2 = ux * ux + uy * uy + uz * uz;
  double along = ux * ax + uy * ay + uz * az;
  double tx = ux - along * ax, ty = uy - along * ay, tz = uz - along * az;
  double across2 = tx * tx + ty * ty + tz * tz;
  double mixed = 2 * (tx * dx + ty * dy + tz * dz);
  double turn2 = dx * dx + dy * dy + dz * dz;
  double along2 = along * along;
  double pressureArea = 0.5 * density * speed2 * w->area;

  double machPlace = sqrt(speed2) * perSound * w->inverseMachStep;
  int machCell = whole(machPlace);
  if (machCell > w->lastMachCell) machCell = w->lastMachCell;
  double machPart = machPlace - machCell;
  double axial = dragOf(w, z, machCell, machPart) * density * speed2;
  const double *node = w->aero + machCell * w->aeroStride + 3;
  const double *nextNode = node + w->aeroStride;
  double s0 = 0, s1 = 0, s2 = 0;
  for (int i = 0; i < w->partCount; i++) {
    double slope = node[2 * i] + machPart * (nextNode[2 * i] - node[2 * i]);
    double arm = balance - (node[2 * i + 1] + machPart * (nextNode[2 * i + 1] - node[2 * i + 1]));
    double strength = slope / sqrt(across2 + arm * (mixed + arm * turn2) + along2);
    s0 += strength;
    s1 += strength * arm;
    s2 += strength * arm * arm;
  }
  if (w->crossFlow > 0) {
    double arm = balance - w->crossFlowAt;
    double here2 = across2 + arm * (mixed + arm * turn2);
    double strength = (w->crossFlow * sqrt(here2 > 0 ? here2 : 0)) / (here2 + along2);
    s0 += strength;
    s1 += strength * arm;
    s2 += strength * arm * arm;
  }

  double push = (w->thrust + dt * w->thrustSlope - (along > 0 ? axial : -axial)) * perMass;
  double side = -pressureArea * perMass;
  k[0] = vz;
  k[1] = push * ax + side * (s0 * tx + s1 * dx);
  k[2] = push * ay + side * (s0 * ty + s1 * dy);
  k[3] = push * az + side * (s0 * tz + s1 * dz) - (w->gravity0 + z * (w->gravity1 + z * w->gravity2));
  k[4] = dx;
  k[5] = dy;
  k[6] = dz;
  double jetArm = w->motorAft - balance;
  double flow = w->propellant * (w->spent1 + 2 * dt * w->spent2);
  double turnBack = (-pressureArea * s1) / inertia;
  double damp = -(pressureArea * s2 + flow * jetArm * jetArm) / inertia;
  k[7] = turnBack * tx + damp * dx - turn2 * ax;
  k[8] = turnBack * ty + damp * dy - turn2 * ay;
  k[9] = turnBack * tz + damp * dz - turn2 * az;
}

static void alignedRates(const Work *w, double t, const double *y, double *k) {
  double z = y[0], vz = y[3];
  double dt = t - w->stretchFrom;
  double motorMass = w->motorLoaded - w->propellant * (w->spent0 + dt * (w->spent1 + dt * w->spent2));
  double perMass = 1 / (w->frameMass + motorMass);

  double airPlace = z > 0 ? z * w->inverseAirStep : 0;
  int cell = whole(airPlace);
  if (cell > w->lastAirCell) cell = w->lastAirCell;
  double part = airPlace - cell;
  const double *air = w->air + 2 * cell;
  double density = air[0] + part * (air[2] - air[0]);
  double perSound = air[1] + part * (air[3] - air[1]);

  double shearEast = 0, shearNorth = 0, windEast, windNorth;
  if (z < w->windTop) {
    double windPlace = z > 0 ? sqrt(sqrt(z)) * w->windScale : 0;
    cell = whole(windPlace);
    if (cell > w->lastWindCell) cell = w->lastWindCell;
    part = windPlace - cell;
    const double *wind = w->wind + 2 * cell;
    double riseEast = wind[2] - wind[0];
    double riseNorth = wind[3] - wind[1];
    windEast = wind[0] + part * riseEast;
    windNorth = wind[1] + part * riseNorth;
    if (z > w->lowestShear) {
      double perHeight = windPlace / (4 * z);
      shearEast = riseEast * perHeight;
      shearNorth = riseNorth * perHeight;
    } else {
      shearEast = w->lowShearEast;
      shearNorth = w->lowShearNorth;
    }
  } else {
    windEast = w->wind[2 * (w->lastWindCell + 1)];
    windNorth = w->wind[2 * (w->lastWindCell + 1) + 1];
  }
  double ux = y[1] - windEast, uy = y[2] - windNorth;
  double speed2 = ux * ux + uy * uy + vz * vz;
  double speed = sqrt(speed2);
  double perSpeed = speed > 1e-9 ? 1 / speed : 0;

  double machPlace = speed * perSound * w->inverseMachStep;
  int machCell = whole(machPlace);
  if (machCell > w->lastMachCell) machCell = w->lastMachCell;
  double machPart = machPlace - machCell;
  double thrust = w->thrust + dt * w->thrustSlope;
  double push = (thrust * perSpeed - dragOf(w, z, machCell, machPart) * density * speed) * perMass;
  double gravity = w->gravity0 + z * (w->gravity1 + z * w->gravity2);
  double east = push * ux, north = push * uy, up = push * vz - gravity;

  if (w->settled && speed > 1e-6) {
    const double *node = w->aero + machCell * w->aeroStride;
    const double *nextNode = node + w->aeroStride;
    double slope = node[0] + machPart * (nextNode[0] - node[0]);
    double first = node[1] + machPart * (nextNode[1] - node[1]);
    double second = node[2] + machPart * (nextNode[2] - node[2]);
    double apart = w->motorCentre - w->frameBalance;
    double balance = w->frameBalance + motorMass * perMass * apart;
    double moment = first - slope * balance;
    if (moment > 0) {
      double halfArea = 0.5 * density * w->area;
      double perInertia =
          1 / (w->frameInertia + motorMass * (w->motorGyration + w->frameMass * perMass * apart * apart));
      double jetArm = w->motorAft - balance;
      double jet = w->propellant * (w->spent1 + 2 * dt * w->spent2) * jetArm * jetArm;
      double damping = halfArea * speed * (second - balance * (2 * first - balance * slope)) + jet;
      double growth = (2 * gravity * vz * perSpeed - push * speed) * perSpeed;
      double answer = damping * perInertia + (growth > 0 ? growth : 0);
      double lag = answer / (halfArea * speed2 * moment * perInertia + (growth > 0 ? growth * answer : 0));
      double ratio = (thrust * lag * perSpeed + halfArea * (speed * slope * lag - moment)) * perMass;
      double slow = ratio / (1 + ratio);
      double gx = -shearEast * vz, gy = -shearNorth * vz;
      double alongPath = (gx * ux + gy * uy - gravity * vz) * perSpeed * perSpeed;
      east -= slow * (gx - alongPath * ux);
      north -= slow * (gy - alongPath * uy);
      up += slow * (gravity + alongPath * vz);
    }
  }
  k[0] = vz;
  k[1] = east;
  k[2] = north;
  k[3] = up;
}

static void coastRates(const Work *w, const double *y, double *k) {
  double z = y[0], vz = y[3];
  double airPlace = z > 0 ? z * w->inverseAirStep : 0;
  int airCell = whole(airPlace);
  if (airCell > w->lastAirCell) airCell = w->lastAirCell;
  double airPart = airPlace - airCell;
  const double *air = w->air + 2 * airCell;
  double density = air[0] + airPart * (air[2] - air[0]);
  double perSound = air[1] + airPart * (air[3] - air[1]);

  double shearEast = 0, shearNorth = 0, windEast, windNorth;
  if (z < w->windTop) {
    double place = z > 0 ? sqrt(sqrt(z)) * w->windScale : 0;
    int cell = whole(place);
    if (cell > w->lastWindCell) cell = w->lastWindCell;
    double part = place - cell;
    const double *wind = w->wind + 2 * cell;
    double riseEast = wind[2] - wind[0];
    double riseNorth = wind[3] - wind[1];
    windEast = wind[0] + part * riseEast;
    windNorth = wind[1] + part * riseNorth;
    if (z > w->lowestShear) {
      double perHeight = place / (4 * z);
      shearEast = riseEast * perHeight;
      shearNorth = riseNorth * perHeight;
    } else {
      shearEast = w->lowShearEast;
      shearNorth = w->lowShearNorth;
    }
  } else {
    windEast = w->wind[2 * (w->lastWindCell + 1)];
    windNorth = w->wind[2 * (w->lastWindCell + 1) + 1];
  }
  double ux = y[1] - windEast, uy = y[2] - windNorth;
  double speed2 = ux * ux + uy * uy + vz * vz;
  double speed = sqrt(speed2);
  double machPlace = speed * perSound * w->inverseMachStep;
  int machCell = whole(machPlace);
  if (machCell > w->lastMachCell) machCell = w->lastMachCell;
  double machPart = machPlace - machCell;
  double perMass = w->emptyPerMass;
  double slowing = dragOf(w, z, machCell, machPart) * density * speed * perMass;
  double gravity = w->gravity0 + z * (w->gravity1 + z * w->gravity2);
  double east = -slowing * ux, north = -slowing * uy, up = -slowing * vz - gravity;

  if (w->settled && speed > 1e-6) {
    const double *node = w->aero + machCell * w->aeroStride;
    const double *nextNode = node + w->aeroStride;
    double slope = node[0] + machPart * (nextNode[0] - node[0]);
    double first = node[1] + machPart * (nextNode[1] - node[1]);
    double second = node[2] + machPart * (nextNode[2] - node[2]);
    double balance = w->emptyBalance;
    double moment = first - slope * balance;
    if (moment > 0) {
      double halfArea = 0.5 * density * w->area;
      double perInertia = w->emptyPerInertia;
      double perSpeed = 1 / speed;
      double damping = halfArea * speed * (second - balance * (2 * first - balance * slope)) * perInertia;
      double turning = 2 * gravity * vz * perSpeed * perSpeed + slowing;
      double growth = turning > 0 ? turning : 0;
      double answer = damping + growth;
      double lag = answer / (halfArea * speed2 * moment * perInertia + growth * answer);
      double ratio = halfArea * (speed * slope * lag - moment) * perMass;
      double slow = ratio / (1 + ratio);
      double gx = -shearEast * vz, gy = -shearNorth * vz;
      double alongPath = (gx * ux + gy * uy - gravity * vz) * perSpeed * perSpeed;
      east -= slow * (gx - alongPath * ux);
      north -= slow * (gy - alongPath * uy);
      up += slow * (gravity + alongPath * vz);
    }
  }
  k[0] = vz;
  k[1] = east;
  k[2] = north;
  k[3] = up;
}

static void guideRates(const Work *w, double t, const double *y, double *k) {
  double speed = y[1];
  double z = y[0] * w->guideUp;
  double dt = t - w->stretchFrom;
  double spent = w->spent0 + dt * (w->spent1 + dt * w->spent2);
  double mass = w->frameMass + w->motorLoaded - w->propellant * spent;
  double machPlace = fabs(speed) * w->air[1] * w->inverseMachStep;
  int machCell = whole(machPlace);
  double drag = dragOf(w, z, machCell, machPlace - machCell) * w->air[0] * speed * fabs(speed);
  k[0] = speed;
  k[1] = (w->thrust + dt * w->thrustSlope - drag) / mass - w->gravity0 * w->guideUp;
}

// ---- settle.ts

static int handOver(Work *w, double t) {
  double *y = w->y;
  double z = y[0], vz = y[3];
  double dt = t - w->stretchFrom;
  double spent = w->spent0 + dt * (w->spent1 + dt * w->spent2);
  double motorMass = w->motorLoaded - w->propellant * spent;
  double mass = w->frameMass + motorMass;
  double apart = w->motorCentre - w->frameBalance;
  double balance = w->frameBalance + (motorMass / mass) * apart;
  double inertia =
      w->frameInertia + motorMass * w->motorGyration + ((w->frameMass * motorMass) / mass) * apart * apart;

  int airCell = whole(fmin(fmax(z, 0) * w->inverseAirStep, w->lastAirCell));
  double density = w->air[2 * airCell];
  int cell = w->lastWindCell;
  double part = 1;
  if (z > 0 && z < w->windTop) {
    double place = sqrt(sqrt(z)) * w->windScale;
    if (whole(place) < cell) cell = whole(place);
    part = place - cell;
  }
  const double *wind = w->wind + 2 * cell;
  double riseEast = wind[2] - wind[0];
  double riseNorth = wind[3] - wind[1];
  double ux = y[1] - wind[0] - part * riseEast;
  double uy = y[2] - wind[1] - part * riseNorth;
  double speed2 = ux * ux + uy * uy + vz * vz;
  double speed = sqrt(speed2);

  const double *node =
      w->aero + whole(fmin(speed * w->air[2 * airCell + 1] * w->inverseMachStep, w->lastMachCell)) * w->aeroStride;
  double slope = node[0];
  double moment = node[1] - slope * balance;
  double pressureArea = 0.5 * density * speed2 * w->area;
  w->swingFrequency2 = 0;
  if (!(moment > 0 && pressureArea > 0)) return 0;
  double damping = node[2] - balance * (2 * node[1] - balance * slope);
  double jetArm = w->motorAft - balance;
  double jet = w->propellant * (w->spent1 + 2 * dt * w->spent2) * jetArm * jetArm;
  double lag = damping / (speed * moment) + jet / (pressureArea * moment);
  double thrust = w->thrust + dt * w->thrustSlope;
  double resistance = (thrust * lag + pressureArea * (slope * lag - moment / speed)) / mass;
  double frequency2 = (pressureArea * moment) / inertia;
  w->swingFrequency2 = frequency2;

  int aloft = z > w->lowestShear && z < w->windTop;
  double perHeight = aloft ? (cell + part) / (4 * z) : 0;
  double gx = -vz * (aloft ? riseEast * perHeight : z <= w->lowestShear ? w->lowShearEast : 0);
  double gy = -vz * (aloft ? riseNorth * perHeight : z <= w->lowestShear ? w->lowShearNorth : 0);
  double gz = -(w->gravity0 + z * w->gravity1);
  double alongPath = (gx * ux + gy * uy + gz * vz) / speed2;
  double perTurn = 1 / (speed + resistance);
  double nx = (gx - alongPath * ux) * perTurn;
  double ny = (gy - alongPath * uy) * perTurn;
  double nz = (gz - alongPath * vz) * perTurn;
  double ex = y[4] - ux / speed + lag * nx;
  double ey = y[5] - uy / speed + lag * ny;
  double ez = y[6] - vz / speed + lag * nz;
  double rx = y[7] - nx, ry = y[8] - ny, rz = y[9] - nz;
  double swing2 = ex * ex + ey * ey + ez * ez + (rx * rx + ry * ry + rz * rz) / frequency2;
  if (!(swing2 < w->settledSwing * w->settledSwing)) return 0;
  double swingDamping = (lag * pressureArea * moment) / inertia;
  double perAngle = (thrust + pressureArea * slope) / mass;
  double perRate = (pressureArea * moment) / (mass * speed);
  double all = 1 + (perAngle * swingDamping) / (frequency2 * speed) - perRate / speed;
  double ofRate = perAngle / (frequency2 * all);
  double ofAngle = ofRate * swingDamping - perRate / all;
  y[1] = y[1] + ofRate * rx + ofAngle * ex;
  y[2] = y[2] + ofRate * ry + ofAngle * ey;
  y[3] = vz + ofRate * rz + ofAngle * ez;
  return 1;
}

// ---- step.ts

static inline void rates(Work *w, Phase phase, double t, const double *y, int row) {
  if (phase == COASTING) coastRates(w, y, w->k + row);
  else if (phase == ALIGNED) alignedRates(w, t, y, w->k + row);
  else if (phase == PITCHING) pitchingRates(w, t, y, w->k + row);
  else guideRates(w, t, y, w->k + row);
}

enum { R1 = rowSize, R2 = 2 * rowSize, R3 = 3 * rowSize, R4 = 4 * rowSize, R5 = 5 * rowSize, R6 = 6 * rowSize };

static const double guideScales[2] = {1, 10};
static const double pitchingScales[10] = {100, 10, 10, 10, 1, 1, 1, 1, 1, 1};
static const double alignedScales[4] = {100, 10, 10, 10};

static const double a21 = 1.0 / 5, a31 = 3.0 / 40, a32 = 9.0 / 40;
static const double a41 = 44.0 / 45, a42 = -56.0 / 15, a43 = 32.0 / 9;
static const double a51 = 19372.0 / 6561, a52 = -25360.0 / 2187, a53 = 64448.0 / 6561, a54 = -212.0 / 729;
static const double a61 = 9017.0 / 3168, a62 = -355.0 / 33, a63 = 46732.0 / 5247, a64 = 49.0 / 176, a65 = -5103.0 / 18656;
static const double b1 = 35.0 / 384, b3 = 500.0 / 1113, b4 = 125.0 / 192, b5 = -2187.0 / 6784, b6 = 11.0 / 84;
static const double c2 = 1.0 / 5, c3 = 3.0 / 10, c4 = 4.0 / 5, c5 = 8.0 / 9;
static const double e1 = 71.0 / 57600, e3 = -71.0 / 16695, e4 = 71.0 / 1920, e5 = -17253.0 / 339200, e6 = 22.0 / 525,
                    e7 = -1.0 / 40;
static const double d1 = -12715105075.0 / 11282082432, d3 = 87487479700.0 / 32700410799,
                    d4 = -10690763975.0 / 1880347072, d5 = 701980252875.0 / 199316789632,
                    d6 = -1453857185.0 / 822651844, d7 = 69997945.0 / 29380423;

// `n` and `scales` are constants where it is called, so that the compiler unrolls the loops for each phase
static inline double stepOf(Work *w, Phase phase, int n, const double *scales, double t, double h, double tolerance) {
  double *k = w->k, *y = w->y, *stage = w->stage, *next = w->next;
  for (int i = 0; i < n; i++) stage[i] = y[i] + h * a21 * k[i];
  rates(w, phase, t + c2 * h, stage, R1);
  for (int i = 0; i < n; i++) stage[i] = y[i] + h * (a31 * k[i] + a32 * k[R1 + i]);
  rates(w, phase, t + c3 * h, stage, R2);
  for (int i = 0; i < n; i++) stage[i] = y[i] + h * (a41 * k[i] + a42 * k[R1 + i] + a43 * k[R2 + i]);
  rates(w, phase, t + c4 * h, stage, R3);
  for (int i = 0; i < n; i++)
    stage[i] = y[i] + h * (a51 * k[i] + a52 * k[R1 + i] + a53 * k[R2 + i] + a54 * k[R3 + i]);
  rates(w, phase, t + c5 * h, stage, R4);
  for (int i = 0; i < n; i++)
    stage[i] = y[i] + h * (a61 * k[i] + a62 * k[R1 + i] + a63 * k[R2 + i] + a64 * k[R3 + i] + a65 * k[R4 + i]);
  rates(w, phase, t + h, stage, R5);
  for (int i = 0; i < n; i++)
    next[i] = y[i] + h * (b1 * k[i] + b3 * k[R2 + i] + b4 * k[R3 + i] + b5 * k[R4 + i] + b6 * k[R5 + i]);
  rates(w, phase, t + h, next, R6);
  double squares = 0;
  for (int i = 0; i < n; i++) {
    double error = e1 * k[i] + e3 * k[R2 + i] + e4 * k[R3 + i] + e5 * k[R4 + i] + e6 * k[R5 + i] + e7 * k[R6 + i];
    double scale = scales[i];
    double size = fabs(next[i]);
    if (size > scale) scale = size;
    double relative = error / scale;
    squares += relative * relative;
  }
  return (h * sqrt(squares / n)) / tolerance;
}

static double tryStep(Work *w, Phase phase, double t, double h, double tolerance) {
  if (phase == COASTING) return stepOf(w, COASTING, 4, alignedScales, t, h, tolerance);
  if (phase == ALIGNED) return stepOf(w, ALIGNED, 4, alignedScales, t, h, tolerance);
  if (phase == PITCHING) return stepOf(w, PITCHING, 10, pitchingScales, t, h, tolerance);
  return stepOf(w, GUIDE, 2, guideScales, t, h, tolerance);
}

static void carryPlace(Work *w, double h) {
  for (int i = 0; i < 2; i++) {
    int v = i + 1;
    w->place[i] += 0.5 * h * (w->y[v] + w->next[v]) + ((h * h) / 12) * (w->k[v] - w->k[R6 + v]);
  }
}

static void record(Work *w, int index, double t, double h) {
  const double *k = w->k;
  Record *r = &w->records[index];
  r->start = t;
  r->length = h;
  r->place[0] = w->place[0];
  r->place[1] = w->place[1];
  for (int i = 0; i < 4; i++) {
    double difference = w->next[i] - w->y[i];
    double bend = h * k[i] - difference;
    r->c[i][0] = w->y[i];
    r->c[i][1] = difference;
    r->c[i][2] = bend;
    r->c[i][3] = difference - h * k[R6 + i] - bend;
    r->c[i][4] = h * (d1 * k[i] + d3 * k[R2 + i] + d4 * k[R3 + i] + d5 * k[R4 + i] + d6 * k[R5 + i] + d7 * k[R6 + i]);
  }
}

static void acceptStep(Work *w, Phase phase) {
  int n = phase == GUIDE ? 2 : phase == PITCHING ? 10 : 4;
  for (int i = 0; i < n; i++) {
    w->y[i] = w->next[i];
    w->k[i] = w->k[R6 + i];
  }
}

// ---- step-control.ts

static const double swingShare = 0.62, turnShare = 0.3, landingHeight = 60, landingSlack = 100;
static const double bentFrom = 0.82, bentStep = 0.05, knotReach = 2, shortOfKnot = 0.96;

static double timeToKnot(const Work *w) {
  double z = w->y[0], climb = w->y[3], bend = w->k[3];
  for (int i = 0; i < w->windKnotCount; i++) {
    double way = w->windKnots[climb > 0 ? i : w->windKnotCount - 1 - i] - z;
    if (climb > 0 ? way < knotReach : way > -knotReach) continue;
    double reach = climb * climb + 2 * bend * way;
    double sign = climb > 0 ? 1 : climb < 0 ? -1 : 0;
    return reach > 0 ? (shortOfKnot * 2 * way) / (climb + sign * sqrt(reach)) : INFINITY;
  }
  return INFINITY;
}

static double longestStep(const Work *w, Phase phase) {
  const double *y = w->y;
  if (phase == GUIDE) return INFINITY;
  double longest = INFINITY;
  if (phase == PITCHING && w->swingFrequency2 > 0) longest = swingShare / sqrt(w->swingFrequency2);
  double climb = y[3];
  longest = fmin(longest, timeToKnot(w));
  if (climb <= 0) return longest;
  double speed = sqrt(y[1] * y[1] + y[2] * y[2] + climb * climb);
  if (phase == COASTING) longest = fmin(longest, (turnShare * (speed + 2)) / w->gravity0);
  double perSound = w->air[1];
  if (speed * perSound > bentFrom) longest = fmin(longest, bentStep / (perSound * (fabs(w->k[3]) + 1)));
  return longest;
}

static double allowedError(const Work *w) { return w->next[0] < landingHeight ? landingSlack : 1; }

static double stepFactor(double error) {
  if (!(error < 1e300)) return 0.2;
  if (error < 1e-4) return 4;
  return fmin(4, fmax(0.2, 0.87 / sqrt(sqrt(error))));
}

// ---- fast-flight.ts

typedef struct {
  int flew, recordCount;
  double burnout, guideExitSpeed, apogeeTime, apogeeHeight, landingTime, landingEast, landingNorth;
} Outcome;

static void setStretch(Work *w, int index, double impulse, double time) {
  const Stretch *s = &w->stretches[index];
  w->stretchFrom = s->from * time;
  w->stretchTo = index == w->stretchCount - 1 ? s->to : s->to * time;
  w->thrust = (s->thrust * impulse) / time;
  w->thrustSlope = (s->slope * impulse) / (time * time);
  w->spent0 = s->impulse / w->totalImpulse;
  w->spent1 = s->thrust / (w->totalImpulse * time);
  w->spent2 = (0.5 * s->slope) / (w->totalImpulse * time * time);
  w->thrusting = s->thrusting > 0;
  if (w->thrusting) return;
  double empty = w->motorLoaded - w->propellant;
  double perMass = 1 / (w->frameMass + empty);
  double apart = w->motorCentre - w->frameBalance;
  w->emptyPerMass = perMass;
  w->emptyBalance = w->frameBalance + empty * perMass * apart;
  w->emptyPerInertia = 1 / (w->frameInertia + empty * (w->motorGyration + w->frameMass * perMass * apart * apart));
}

static Phase alignedPhase(const Work *w) { return w->thrusting ? ALIGNED : COASTING; }

static inline double recorded(const Record *r, int component, double share) {
  const double *c = r->c[component];
  double rest = 1 - share;
  return c[0] + share * (c[1] + rest * (c[2] + share * (c[3] + rest * c[4])));
}

static double recordedFall(const Record *r, int component, double level) {
  double low = 0, high = 1;
  double valueLow = recorded(r, component, 0) - level;
  double valueHigh = recorded(r, component, 1) - level;
  for (int i = 0; i < 60 && high - low > 1e-9; i++) {
    double guess = i % 3 == 2 ? 0.5 * (low + high) : low + ((high - low) * valueLow) / (valueLow - valueHigh);
    double share = guess > low && guess < high ? guess : 0.5 * (low + high);
    double value = recorded(r, component, share) - level;
    if (value == 0) return share;
    if (value > 0) {
      low = share;
      valueLow = value;
      if (i % 3 == 0) valueHigh *= 0.5;
    } else {
      high = share;
      valueHigh = value;
    }
  }
  return 0.5 * (low + high);
}

static double guideWay(const Work *w, double h, double s) {
  double r = 1 - s;
  return r * r * ((1 + 2 * s) * w->y[0] + s * h * w->y[1]) + s * s * ((1 + 2 * r) * w->next[0] - r * h * w->next[1]);
}

static double guideSpeed(const Work *w, double h, double s) {
  double r = 1 - s;
  return r * r * ((1 + 2 * s) * w->y[1] + s * h * w->k[1]) +
         s * s * ((1 + 2 * r) * w->next[1] - r * h * w->k[R6 + 1]);
}

static double guideSpeed(const Work *w, double h, double s);

static double guideExitShare(const Work *w, double h) {
  double share = (w->travel - w->y[0]) / (w->next[0] - w->y[0]);
  for (int i = 0; i < 6; i++) {
    double off = guideWay(w, h, share) - w->travel;
    double speed = guideSpeed(w, h, share);
    if (!(speed > 0) || fabs(off) < 1e-12) break;
    share = fmin(1, fmax(0, share - off / (h * speed)));
  }
  return share;
}

static double placeAt(const Record *r, int axis, double share) {
  double half = 0.5 * share;
  double reach = half * sqrt(0.6);
  double sum = (5 * recorded(r, 1 + axis, half - reach) + 8 * recorded(r, 1 + axis, half) +
                5 * recorded(r, 1 + axis, half + reach)) /
               18;
  return r->place[axis] + sum * share * r->length;
}

static void noteApogee(const Record *r, Outcome *out) {
  double share = recorded(r, 3, 0) > 0 ? recordedFall(r, 3, 0) : 0;
  out->apogeeTime = r->start + share * r->length;
  out->apogeeHeight = recorded(r, 0, share);
}

static double pull(const Work *w, double dt) {
  return w->thrust + dt * w->thrustSlope -
         (w->frameMass + w->motorLoaded - w->propellant * (w->spent0 + dt * (w->spent1 + dt * w->spent2))) *
             w->gravity0 * w->guideUp;
}

static void fastFlight(Work *w, double impulse, double time, double tolerance, Outcome *out) {
  double *y = w->y;
  out->flew = 0;
  out->recordCount = 0;
  out->burnout = w->burnEnd * time;

  int index = 0;
  double t = 0;
  for (; index < w->stretchCount; index++) {
    setStretch(w, index, impulse, time);
    double span = w->stretchTo - w->stretchFrom;
    if (pull(w, 0) > 0) {
      t = w->stretchFrom;
      break;
    }
    if (pull(w, span) > 0) {
      double low = 0, high = span;
      for (int i = 0; i < 40; i++) {
        double middle = 0.5 * (low + high);
        if (pull(w, middle) > 0) high = middle;
        else low = middle;
      }
      t = w->stretchFrom + high;
      break;
    }
  }
  if (index == w->stretchCount) return;

  Phase phase = GUIDE;
  int pastApogee = 0, recordCount = 0, recording = 0, toTop = 0;
  y[0] = 0;
  y[1] = 0;
  w->place[0] = 0;
  w->place[1] = 0;
  rates(w, phase, t, y, 0);
  double h = 0.02;
  for (int steps = 0; steps < 20000; steps++) {
    double to = w->stretchTo;
    double rest = to - t;
    if (!toTop) h = fmin(h, longestStep(w, phase));
    int last = h * 1.01 >= rest;
    double length = last ? rest : h * 2 > rest && !toTop ? 0.5 * rest : h;
    double error = tryStep(w, phase, t, length, tolerance) / (pastApogee ? allowedError(w) : 1);
    double nextH = length * stepFactor(error);
    if (!(error <= 1)) {
      h = nextH;
      toTop = 0;
      if (h < 1e-13) break;
      continue;
    }
    if (phase == GUIDE) {
      if (w->next[0] >= w->travel) {
        double share = guideExitShare(w, length);
        double speed = guideSpeed(w, length, share);
        t += share * length;
        out->guideExitSpeed = speed;
        y[0] = w->travel * w->guideUp;
        w->place[0] = w->travel * w->guideEast;
        w->place[1] = w->travel * w->guideNorth;
        y[1] = speed * w->guideEast;
        y[2] = speed * w->guideNorth;
        y[3] = speed * w->guideUp;
        y[4] = w->guideEast;
        y[5] = w->guideNorth;
        y[6] = w->guideUp;
        y[7] = 0;
        y[8] = 0;
        y[9] = 0;
        phase = w->pitching && !(w->handOver && handOver(w, t)) ? PITCHING : alignedPhase(w);
        h = fmin(0.03, fmax(1e-4, to - t));
        if (to - t < 1e-12) {
          index += 1;
          setStretch(w, index, impulse, time);
        }
        rates(w, phase, t, y, 0);
        continue;
      }
      if (w->next[1] < 0) break;
    } else {
      if (phase == PITCHING && !pastApogee && !toTop && w->next[3] < 0 && recordCount < mostRecords) {
        record(w, recordCount, t, length);
        h = length * recordedFall(&w->records[recordCount], 3, 0);
        toTop = 1;
        continue;
      }
      if (recording) {
        if (recordCount >= mostRecords) break;
        record(w, recordCount, t, length);
        recordCount += 1;
      }
      if (w->next[0] < 0) {
        if (!recording) break;
        const Record *r = &w->records[recordCount - 1];
        double share = recordedFall(r, 0, 0);
        out->landingTime = t + share * length;
        out->landingEast = placeAt(r, 0, share);
        out->landingNorth = placeAt(r, 1, share);
        out->flew = 1;
        if (!pastApogee) noteApogee(r, out);
        break;
      }
      carryPlace(w, length);
    }
    int turned = !pastApogee && phase != GUIDE && (toTop || w->next[3] < 0);
    toTop = 0;
    if (turned) {
      pastApogee = 1;
      if (recording) noteApogee(&w->records[recordCount - 1], out);
      else {
        out->apogeeTime = t + length;
        out->apogeeHeight = w->next[0];
      }
    }
    t = last ? to : t + length;
    acceptStep(w, phase);
    h = nextH;
    if (last) {
      index += 1;
      if (index >= w->stretchCount) break;
      setStretch(w, index, impulse, time);
      recording = recording || t >= out->burnout - 1e-12;
      h = fmin(nextH, fmax(h, 1e-3));
      if (phase == PITCHING && (pastApogee || (w->handOver && handOver(w, t)))) phase = alignedPhase(w);
      else if (phase == ALIGNED) phase = alignedPhase(w);
      rates(w, phase, t, y, 0);
    } else if (phase == PITCHING && (turned || (w->handOver && handOver(w, t)))) {
      phase = alignedPhase(w);
      rates(w, phase, t, y, 0);
    }
  }
  out->recordCount = recordCount;
}

// ---- draws.ts, scramble.ts, sobol.ts, normal.ts, drawn-values.ts

enum { inputsDrawn = 14, drawSize = 15, scrambleCount = 16 };

static uint32_t directions[drawSize][32];

static uint32_t sobolInteger(uint32_t index, int dimension) {
  const uint32_t *v = directions[dimension];
  uint32_t gray = index ^ (index >> 1);
  uint32_t x = 0;
  for (int bit = 0; gray != 0; bit++, gray >>= 1)
    if (gray & 1) x ^= v[bit];
  return x;
}

static uint32_t reverseBits(uint32_t r) {
  r = ((r >> 1) & 0x55555555) | ((r & 0x55555555) << 1);
  r = ((r >> 2) & 0x33333333) | ((r & 0x33333333) << 2);
  r = ((r >> 4) & 0x0f0f0f0f) | ((r & 0x0f0f0f0f) << 4);
  r = ((r >> 8) & 0x00ff00ff) | ((r & 0x00ff00ff) << 8);
  return (r >> 16) | (r << 16);
}

static uint32_t scramble(uint32_t x, uint32_t seed) {
  uint32_t r = reverseBits(x) + seed;
  r ^= r * 0x6c50b47c;
  r ^= r * 0xb82f1e52;
  r ^= r * 0xc7afe638;
  r ^= r * 0x8d22f6e6;
  return reverseBits(r);
}

static uint32_t mixSeed(uint32_t seed, uint32_t set, uint32_t dimension) {
  const uint32_t values[3] = {seed, set, dimension};
  uint32_t h = 0x9e3779b9;
  for (int i = 0; i < 3; i++) {
    h = (h ^ values[i]) * 0x85ebca6b;
    h ^= h >> 13;
    h *= 0xc2b2ae35;
    h ^= h >> 16;
  }
  return h;
}

static double normalQuantile(double p) {
  double q = p - 0.5;
  if (fabs(q) <= 0.425) {
    double r = 0.180625 - q * q;
    return (q * (((((((2509.0809287301226727 * r + 33430.575583588128105) * r + 67265.770927008700853) * r +
                     45921.953931549871457) * r + 13731.693765509461125) * r + 1971.5909503065514427) * r +
                  133.14166789178437745) * r + 3.387132872796366608)) /
           (((((((5226.495278852854561 * r + 28729.085735721942674) * r + 39307.89580009271061) * r +
                21213.794301586595867) * r + 5394.1960214247511077) * r + 687.1870074920579083) * r +
             42.313330701600911252) * r + 1);
  }
  double edge = q < 0 ? p : 1 - p;
  if (edge <= 0) return q < 0 ? -INFINITY : INFINITY;
  double r = sqrt(-log(edge));
  double z;
  if (r <= 5) {
    r -= 1.6;
    z = (((((((7.7454501427834140764e-4 * r + 0.0227238449892691845833) * r + 0.24178072517745061177) * r +
             1.27045825245236838258) * r + 3.64784832476320460504) * r + 5.7694972214606914055) * r +
          4.6303378461565452959) * r + 1.42343711074968357734) /
        (((((((1.05075007164441684324e-9 * r + 5.475938084995344946e-4) * r + 0.0151986665636164571966) * r +
             0.14810397642748007459) * r + 0.68976733498510000455) * r + 1.6763848301838038494) * r +
          2.05319162663775882187) * r + 1);
  } else {
    r -= 5;
    z = (((((((2.01033439929228813265e-7 * r + 2.71155556874348757815e-5) * r + 0.0012426609473880784386) * r +
             0.026532189526576123093) * r + 0.29656057182850489123) * r + 1.7848265399172913358) * r +
          5.4637849111641143699) * r + 6.6579046435011037772) /
        (((((((2.04426310338993978564e-15 * r + 1.4215117583164458887e-7) * r + 1.8463183175100546818e-5) * r +
             7.868691311456132591e-4) * r + 0.0148753612908506148525) * r + 0.13692988092273580531) * r +
          0.59983220655588793769) * r + 1);
  }
  return q < 0 ? -z : z;
}

static double normalCdf(double z) {
  double x = z < 0 ? -z : z;
  if (x > 38) return z > 0 ? 1 : 0;
  double e = exp(-0.5 * x * x);
  double tail;
  if (x < 7.07106781186547) {
    double above = ((((((0.0352624965998911 * x + 0.700383064443688) * x + 6.37396220353165) * x + 33.912866078383) * x +
                      112.079291497871) * x + 221.213596169931) * x + 220.206867912376) * e;
    double below = ((((((0.0883883476483184 * x + 1.75566716318264) * x + 16.064177579207) * x + 86.7807322029461) * x +
                      296.564248779674) * x + 637.333633378831) * x + 793.826512519948) * x + 440.413735824752;
    tail = above / below;
  } else {
    tail = e / (x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))))) / 2.506628274631;
  }
  return z > 0 ? 1 - tail : tail;
}

static void drawNormals(uint32_t seed, uint32_t draw, double *out) {
  uint32_t set = draw % scrambleCount;
  uint32_t index = (draw - set) / scrambleCount;
  for (int d = 0; d < drawSize; d++) {
    double u = (scramble(sobolInteger(index, d), mixSeed(seed, set, (uint32_t)d)) + 0.5) / 4294967296.0;
    out[d] = d < inputsDrawn ? normalQuantile(u) : u;
  }
}

typedef struct {
  double dragScale, windSpeed, tiltEast, tiltNorth, totalImpulse, windExponent, windEast, windNorth, windFrom, mass;
  double burnTime, inertia, balance, temperature;
} Drawn;

// `spread` in the order of the draw's dimensions
static void drawnValues(const double *spread, const double *z, Drawn *out) {
  out->dragScale = exp(spread[0] * z[0]);
  out->windSpeed = exp(spread[1] * z[1]);
  out->tiltEast = spread[2] * z[2];
  out->tiltNorth = spread[3] * z[3];
  out->totalImpulse = exp(spread[4] * z[4]);
  out->windExponent = spread[5] * z[5];
  out->windEast = spread[6] * z[6];
  out->windNorth = spread[7] * z[7];
  out->windFrom = spread[8] * z[8];
  out->mass = exp(spread[9] * z[9]);
  out->burnTime = exp(spread[10] * z[10]);
  out->inertia = exp(spread[11] * z[11]);
  out->balance = spread[12] * z[12];
  out->temperature = spread[13] * z[13];
}

// ---- draw.ts

typedef struct {
  double rocketMass, rocketBalance, rocketInertia, ballastMass, ballastAt, tilt, toward;
  int airCount, windCount, windPower;
  double windEast, windNorth, windExponent;
  const double *density, *densityPerKelvin, *densityPerKelvin2;
  const double *soundSpeed, *soundSpeedPerKelvin, *soundSpeedPerKelvin2;
  const double *windLogRatios, *windEasts, *windNorths;
} Base;

static void fillAir(Work *w, const Base *b, double change) {
  for (int i = 0; i < b->airCount; i++) {
    w->air[2 * i] = b->density[i] * (1 + change * (b->densityPerKelvin[i] + change * b->densityPerKelvin2[i]));
    w->air[2 * i + 1] =
        1 / (b->soundSpeed[i] * (1 + change * (b->soundSpeedPerKelvin[i] + change * b->soundSpeedPerKelvin2[i])));
  }
}

static void fillWind(Work *w, const Base *b, const Drawn *drawn) {
  double cosine = drawn->windSpeed * cos(drawn->windFrom);
  double sine = drawn->windSpeed * sin(drawn->windFrom);
  if (b->windPower) {
    double east = b->windEast * cosine + b->windNorth * sine + drawn->windEast;
    double north = b->windNorth * cosine - b->windEast * sine + drawn->windNorth;
    double exponent = fmax(0, b->windExponent + drawn->windExponent);
    w->wind[0] = 0;
    w->wind[1] = 0;
    for (int i = 1; i <= b->windCount; i++) {
      double grown = exp(exponent * b->windLogRatios[i]);
      w->wind[2 * i] = east * grown;
      w->wind[2 * i + 1] = north * grown;
    }
    return;
  }
  for (int i = 0; i <= b->windCount; i++) {
    w->wind[2 * i] = b->windEasts[i] * cosine + b->windNorths[i] * sine + drawn->windEast;
    w->wind[2 * i + 1] = b->windNorths[i] * cosine - b->windEasts[i] * sine + drawn->windNorth;
  }
}

static void setLowShear(Work *w) {
  double place = sqrt(sqrt(w->lowestShear)) * w->windScale;
  int cell = whole(place) < w->lastWindCell ? whole(place) : w->lastWindCell;
  double perHeight = w->lowestShear < w->windTop ? place / (4 * w->lowestShear) : 0;
  w->lowShearEast = (w->wind[2 * cell + 2] - w->wind[2 * cell]) * perHeight;
  w->lowShearNorth = (w->wind[2 * cell + 3] - w->wind[2 * cell + 1]) * perHeight;
}

static void setDraw(Work *w, const Base *b, const Drawn *drawn) {
  w->halfDragArea = 0.5 * w->area * drawn->dragScale;
  double mass = b->rocketMass * drawn->mass;
  double balance = b->rocketBalance + drawn->balance;
  double inertia = b->rocketInertia * drawn->inertia;
  w->frameMass = mass + b->ballastMass;
  w->frameBalance =
      w->frameMass == 0 ? balance : (mass * balance + b->ballastMass * b->ballastAt) / w->frameMass;
  double forward = balance - w->frameBalance, aft = b->ballastAt - w->frameBalance;
  w->frameInertia = inertia + mass * forward * forward + b->ballastMass * aft * aft;
  double east = sin(b->tilt) * sin(b->toward) + sin(drawn->tiltEast);
  double north = sin(b->tilt) * cos(b->toward) + sin(drawn->tiltNorth);
  double flat = east * east + north * north;
  double shrink = flat > 0.99 ? sqrt(0.99 / flat) : 1;
  w->guideEast = east * shrink;
  w->guideNorth = north * shrink;
  w->guideUp = sqrt(1 - flat * shrink * shrink);
  fillAir(w, b, drawn->temperature);
  fillWind(w, b, drawn);
  setLowShear(w);
}

// ---- crossings.ts

typedef struct {
  double delay, sd;
} Setting;

typedef struct {
  int settingCount, samples, ignitionClock, hasElectronics;
  const Setting *settings;
  double lineStretch, speedLimit, strengthSpeed, floor, fillDistance, electronicsDelay;
} Opening;

enum { mostNodes = 8 * mostRecords, mostCrossings = 8, mostEdges = 2 * mostCrossings + 5, samplesNearTop = 6 };
enum { CLEAN, EARLY_FAST, LATE_FAST, LEAN_FAST, LOW, GROUNDED, HOLDS, FIRES_FIRST, judgedSize };
enum { sampleSize = 3 };

typedef struct {
  int count;
  double times[mostNodes], squares[mostNodes];
  int records[mostNodes];
} Nodes;

typedef struct {
  Nodes nodes;
  double limitCrossings[mostCrossings], strengthCrossings[mostCrossings], edges[mostEdges];
  int classes[mostEdges + 1], holding[mostEdges + 1], edgeCount;
} Judge;

static double airspeed2(const Work *w, const Record *r, double share) {
  double z = recorded(r, 0, share);
  double place = z > 0 ? (z < w->windTop ? sqrt(sqrt(z)) * w->windScale : w->lastWindCell + 1) : 0;
  int cell = whole(place);
  if (cell > w->lastWindCell) cell = w->lastWindCell;
  double part = place - cell;
  const double *wind = w->wind + 2 * cell;
  double ux = recorded(r, 1, share) - wind[0] - part * (wind[2] - wind[0]);
  double uy = recorded(r, 2, share) - wind[1] - part * (wind[3] - wind[1]);
  double uz = recorded(r, 3, share);
  return ux * ux + uy * uy + uz * uz;
}

static int recordAt(const Record *records, int count, double time) {
  int low = 0, high = count - 1;
  while (low < high) {
    int middle = (low + high + 1) >> 1;
    if (records[middle].start <= time) low = middle;
    else high = middle - 1;
  }
  return low;
}

static void refineLeast(const Work *w, Nodes *nodes, int least) {
  double *times = nodes->times, *squares = nodes->squares;
  if (least <= 0 || least >= nodes->count - 1 || nodes->records[least - 1] != nodes->records[least]) return;
  double t0 = times[least - 1], t1 = times[least], t2 = times[least + 1];
  double left = (squares[least] - squares[least - 1]) / (t1 - t0);
  double right = (squares[least + 1] - squares[least]) / (t2 - t1);
  double vertex = 0.5 * (t0 + t1) - (left * (t2 - t0)) / (2 * (right - left));
  if (!(vertex > t0 && vertex < t2)) return;
  const Record *r = &w->records[nodes->records[least]];
  double square = airspeed2(w, r, (vertex - r->start) / r->length);
  if (square >= squares[least]) return;
  times[least] = vertex;
  squares[least] = square;
}

static void noteNodes(const Work *w, const Outcome *flight, Nodes *nodes) {
  int n = 0, least = -1;
  for (int i = 0; i < flight->recordCount; i++) {
    const Record *r = &w->records[i];
    double end = r->start + r->length;
    int inner = !(r->start > flight->apogeeTime + 3 || end < flight->apogeeTime - 3);
    for (int s = 0; s < (inner ? samplesNearTop : 1); s++) {
      double share = (double)s / samplesNearTop;
      nodes->times[n] = r->start + share * r->length;
      nodes->squares[n] = airspeed2(w, r, share);
      nodes->records[n] = i;
      if (least < 0 || nodes->squares[n] < nodes->squares[least]) least = n;
      n += 1;
    }
  }
  const Record *last = &w->records[flight->recordCount - 1];
  while (n > 0 && nodes->times[n - 1] >= flight->landingTime) n -= 1;
  if (least >= n) least = n - 1;
  nodes->times[n] = flight->landingTime;
  nodes->squares[n] = airspeed2(w, last, (flight->landingTime - last->start) / last->length);
  nodes->records[n] = flight->recordCount - 1;
  if (least < 0 || nodes->squares[n] < nodes->squares[least]) least = n;
  nodes->count = n + 1;
  refineLeast(w, nodes, least);
}

static int speedCrossings(const Work *w, const Nodes *nodes, double level, double *out) {
  double square = level * level;
  int count = 0;
  for (int i = 0; i + 1 < nodes->count && count < mostCrossings; i++) {
    int below = nodes->squares[i] < square;
    if (below == (nodes->squares[i + 1] < square)) continue;
    const Record *r = &w->records[nodes->records[i]];
    double low = (nodes->times[i] - r->start) / r->length;
    double high = (nodes->times[i + 1] - r->start) / r->length;
    double atLow = nodes->squares[i] - square;
    double atHigh = nodes->squares[i + 1] - square;
    for (int k = 0; k < 40 && high - low > 1e-8; k++) {
      double guess = low + ((high - low) * atLow) / (atLow - atHigh);
      double share = k % 4 != 3 && guess > low && guess < high ? guess : 0.5 * (low + high);
      double value = airspeed2(w, r, share) - square;
      if (fabs(value) < 1e-9 * square) {
        low = share;
        high = share;
        break;
      }
      if ((value < 0) == (atLow < 0)) {
        low = share;
        atLow = value;
        atHigh *= 0.5;
      } else {
        high = share;
        atHigh = value;
        atLow *= 0.5;
      }
    }
    out[count] = r->start + 0.5 * (low + high) * r->length;
    count += 1;
  }
  return count;
}

// ---- judge.ts

static int isBelow(double time, int startsBelow, const double *crossings, int count) {
  int below = startsBelow;
  for (int i = 0; i < count && crossings[i] <= time; i++) below = !below;
  return below;
}

static double floorRise(const Work *w, const Outcome *flight, double floor) {
  if (flight->apogeeHeight < floor) return INFINITY;
  if (w->records[0].c[0][0] >= floor) return -INFINITY;
  for (int i = 0; i < flight->recordCount; i++) {
    const Record *r = &w->records[i];
    if (recorded(r, 0, 1) < floor) continue;
    double low = 0, high = 1;
    if (r->start + r->length > flight->apogeeTime) high = (flight->apogeeTime - r->start) / r->length;
    for (int k = 0; k < 40; k++) {
      double middle = 0.5 * (low + high);
      if (recorded(r, 0, middle) < floor) low = middle;
      else high = middle;
    }
    return r->start + high * r->length;
  }
  return flight->apogeeTime;
}

static double spare(const Work *w, const Record *r, double share, const Opening *o) {
  double height = recorded(r, 0, share);
  double above = height - o->floor;
  if (o->fillDistance <= 0.5 * o->floor) return above;
  double speed = sqrt(airspeed2(w, r, share));
  double gravity = 9.80665;
  double fill = (sqrt(speed * speed + 2 * gravity * o->fillDistance) - speed) / gravity;
  double full = height + fill * (recorded(r, 3, share) - 0.5 * gravity * fill);
  return fmin(above, full - 0.5 * o->floor);
}

static double floorFall(const Work *w, const Outcome *flight, const Opening *o) {
  for (int i = recordAt(w->records, flight->recordCount, flight->apogeeTime); i < flight->recordCount; i++) {
    const Record *r = &w->records[i];
    if (spare(w, r, 1, o) >= 0) continue;
    double start = r->start < flight->apogeeTime ? (flight->apogeeTime - r->start) / r->length : 0;
    if (spare(w, r, start, o) < 0) return i == 0 || start > 0 ? -INFINITY : r->start;
    double low = start, high = 1;
    for (int k = 0; k < 40; k++) {
      double middle = 0.5 * (low + high);
      if (spare(w, r, middle, o) < 0) high = middle;
      else low = middle;
    }
    return r->start + low * r->length;
  }
  return flight->landingTime;
}

static int addEdge(double *edges, int n, double time, double start, double landing) {
  if (!(time > start && time < landing)) return n;
  int i = n;
  for (; i > 0 && edges[i - 1] > time; i--) edges[i] = edges[i - 1];
  edges[i] = time;
  return n + 1;
}

static void cutIntoClasses(Judge *j, const Opening *o, const Work *w, const Outcome *flight) {
  Nodes *nodes = &j->nodes;
  double *edges = j->edges;
  noteNodes(w, flight, nodes);
  double start = flight->burnout + o->lineStretch;
  int limitCount = speedCrossings(w, nodes, o->speedLimit, j->limitCrossings);
  int strengthCount = speedCrossings(w, nodes, o->strengthSpeed, j->strengthCrossings);
  int slowAtFirst = nodes->squares[0] < o->speedLimit * o->speedLimit;
  int boreAtFirst = nodes->squares[0] < o->strengthSpeed * o->strengthSpeed;
  double rise = floorRise(w, flight, o->floor);
  double fall = rise == INFINITY ? -INFINITY : floorFall(w, flight, o);

  int n = 0;
  double landing = flight->landingTime;
  for (int i = 0; i < limitCount; i++) n = addEdge(edges, n, j->limitCrossings[i], start, landing);
  for (int i = 0; i < strengthCount; i++) n = addEdge(edges, n, j->strengthCrossings[i], start, landing);
  n = addEdge(edges, n, rise, start, landing);
  n = addEdge(edges, n, fall, start, landing);
  n = addEdge(edges, n, flight->apogeeTime, start, landing);
  edges[n] = landing;
  j->edgeCount = n + 1;

  int everSlow = 0;
  for (int i = 0; i <= n; i++)
    if (isBelow(0.5 * ((i == 0 ? start : edges[i - 1]) + edges[i]), slowAtFirst, j->limitCrossings, limitCount))
      everSlow = 1;
  for (int i = 0; i <= n; i++) {
    double middle = 0.5 * ((i == 0 ? start : edges[i - 1]) + edges[i]);
    int high = middle > rise && middle < fall;
    int outcome = LOW;
    if (high) {
      if (isBelow(middle, slowAtFirst, j->limitCrossings, limitCount)) outcome = CLEAN;
      else if (!everSlow) outcome = LEAN_FAST;
      else outcome = middle < flight->apogeeTime ? EARLY_FAST : LATE_FAST;
    }
    j->classes[i] = outcome;
    j->holding[i] = high && isBelow(middle, boreAtFirst, j->strengthCrossings, strengthCount);
  }
  j->classes[n + 1] = GROUNDED;
  j->holding[n + 1] = 0;
}

static double openingTime(const Opening *o, const Outcome *flight, double nominalBurnout, double delay) {
  return (o->ignitionClock ? nominalBurnout : flight->burnout) + delay + o->lineStretch;
}

static void sampleOpenings(const Opening *o, const Work *w, const Outcome *flight, double nominalBurnout, double strata,
                           double *samples) {
  double start = flight->burnout + o->lineStretch;
  for (int k = 0; k < o->samples; k++) {
    double z = normalQuantile((k + strata) / o->samples);
    for (int s = 0; s < o->settingCount; s++) {
      double time = fmax(start, openingTime(o, flight, nominalBurnout, o->settings[s].delay) + o->settings[s].sd * z);
      double *out = samples + (s * o->samples + k) * sampleSize;
      if (time >= flight->landingTime) {
        out[0] = out[1] = out[2] = NAN;
        continue;
      }
      const Record *r = &w->records[recordAt(w->records, flight->recordCount, time)];
      double share = (time - r->start) / r->length;
      out[0] = sqrt(airspeed2(w, r, share));
      out[1] = recorded(r, 0, share);
      out[2] = time - flight->apogeeTime;
    }
  }
}

static void judgeFlight(Judge *j, const Opening *o, const Work *w, const Outcome *flight, double nominalBurnout,
                        double strata, double *judged, double *samples) {
  memset(judged, 0, sizeof(double) * (size_t)(o->settingCount * judgedSize));
  if (!flight->flew) {
    for (int s = 0; s < o->settingCount; s++) judged[s * judgedSize + GROUNDED] = 1;
    for (int i = 0; i < o->settingCount * o->samples * sampleSize; i++) samples[i] = NAN;
    return;
  }
  cutIntoClasses(j, o, w, flight);
  for (int s = 0; s < o->settingCount; s++) {
    double mean = openingTime(o, flight, nominalBurnout, o->settings[s].delay);
    double perSd = 1 / fmax(o->settings[s].sd, 1e-9);
    double *out = judged + s * judgedSize;
    double before = 0;
    for (int i = 0; i <= j->edgeCount; i++) {
      double upTo = i == j->edgeCount ? 1 : normalCdf((j->edges[i] - mean) * perSd);
      double share = upTo - before;
      before = upTo;
      out[j->classes[i]] += share;
      if (j->holding[i]) out[HOLDS] += share;
    }
    if (o->hasElectronics) {
      double opened = flight->apogeeTime + o->electronicsDelay + o->lineStretch;
      out[FIRES_FIRST] = normalCdf((opened - mean + o->lineStretch) * perSd);
    }
  }
  sampleOpenings(o, w, flight, nominalBurnout, strata, samples);
}

// ---- ensemble.ts

enum { COAST, APOGEE_TIME, APOGEE_HEIGHT, APOGEE_AIRSPEED, LANDING_EAST, LANDING_NORTH, GUIDE_EXIT_SPEED, FLEW, flightSize };

static Work work;
static Judge judge;
static Base base;
static Opening opening;

static void prepare(void) {
  work.area = number("area");
  work.gravity0 = array("gravity")[0];
  work.gravity1 = array("gravity")[1];
  work.gravity2 = array("gravity")[2];
  work.motorCentre = number("motorCentre");
  work.motorAft = number("motorAft");
  work.motorLoaded = number("motorLoaded");
  work.propellant = number("propellant");
  work.motorGyration = number("motorGyration");
  work.inverseAirStep = number("inverseAirStep");
  work.lastAirCell = (int)number("lastAirCell");
  work.windTop = number("windTop");
  work.windScale = number("windScale");
  work.lastWindCell = (int)number("lastWindCell");
  work.inverseMachStep = number("inverseMachStep");
  work.lastMachCell = (int)number("lastMachCell");
  work.inverseDragHeight = number("inverseDragHeight");
  work.lastDragRow = (int)number("lastDragRow");
  work.crossFlow = number("crossFlow");
  work.crossFlowAt = number("crossFlowAt");
  work.travel = number("travel");
  work.lowestShear = number("lowestShear");
  work.settledSwing = number("settledSwing");
  work.totalImpulse = number("totalImpulse");
  work.burnEnd = number("burnEnd");
  work.machCount = (int)number("machCount");
  work.aeroStride = (int)number("aeroStride");
  work.partCount = (int)number("partCount");
  work.settled = number("settled") > 0;
  work.pitching = number("pitching") > 0;
  work.handOver = number("handOver") > 0;
  work.coasting = array("coasting");
  work.thrustingDrag = array("thrusting");
  work.aero = array("aero");
  work.windKnots = array("windKnots");
  work.windKnotCount = entry("windKnots")->count;
  work.stretches = (const Stretch *)array("stretches");
  work.stretchCount = entry("stretches")->count / 6;

  base.rocketMass = array("rocket")[0];
  base.rocketBalance = array("rocket")[1];
  base.rocketInertia = array("rocket")[2];
  base.ballastMass = array("ballast")[0];
  base.ballastAt = array("ballast")[1];
  base.tilt = array("guide")[0];
  base.toward = array("guide")[1];
  base.density = array("density");
  base.densityPerKelvin = array("densityPerKelvin");
  base.densityPerKelvin2 = array("densityPerKelvin2");
  base.soundSpeed = array("soundSpeed");
  base.soundSpeedPerKelvin = array("soundSpeedPerKelvin");
  base.soundSpeedPerKelvin2 = array("soundSpeedPerKelvin2");
  base.airCount = entry("density")->count;
  base.windCount = work.lastWindCell + 1;
  base.windPower = number("windPower") > 0;
  if (base.windPower) {
    base.windEast = array("windProfile")[0];
    base.windNorth = array("windProfile")[1];
    base.windExponent = array("windProfile")[2];
    base.windLogRatios = array("windLogRatios");
  } else {
    base.windEasts = array("windEasts");
    base.windNorths = array("windNorths");
  }
  work.air = malloc(sizeof(double) * 2 * (size_t)base.airCount);
  work.wind = malloc(sizeof(double) * 2 * (size_t)(base.windCount + 1));

  opening.settings = (const Setting *)array("settings");
  opening.settingCount = entry("settings")->count / 2;
  opening.samples = (int)number("samples");
  opening.ignitionClock = number("ignitionClock") > 0;
  opening.lineStretch = number("lineStretch");
  opening.speedLimit = number("speedLimit");
  opening.strengthSpeed = number("strengthSpeed");
  opening.floor = number("floor");
  opening.fillDistance = number("fillDistance");
  opening.hasElectronics = entry("electronicsDelay")->count > 0;
  if (opening.hasElectronics) opening.electronicsDelay = number("electronicsDelay");

  const double *rows = array("directions");
  for (int d = 0; d < drawSize; d++)
    for (int bit = 0; bit < 32; bit++) directions[d][bit] = (uint32_t)rows[32 * d + bit];
}

static void flyDraws(int from, int to, double *flights, double *judged, double *samples) {
  uint32_t seed = (uint32_t)(int64_t)number("seed");
  double tolerance = number("tolerance");
  const double *spread = array("spread");
  int judgedPerDraw = opening.settingCount * judgedSize;
  int samplesPerDraw = opening.settingCount * opening.samples * sampleSize;
  for (int i = 0; i < to - from; i++) {
    double normals[drawSize];
    Drawn drawn;
    Outcome flight = {0};
    drawNormals(seed, (uint32_t)(from + i), normals);
    drawnValues(spread, normals, &drawn);
    setDraw(&work, &base, &drawn);
    fastFlight(&work, drawn.totalImpulse, drawn.burnTime, tolerance, &flight);
    judgeFlight(&judge, &opening, &work, &flight, work.burnEnd, normals[drawSize - 1], judged + i * judgedPerDraw,
                samples + i * samplesPerDraw);
    double *row = flights + i * flightSize;
    memset(row, 0, sizeof(double) * flightSize);
    row[FLEW] = flight.flew;
    if (!flight.flew) continue;
    row[COAST] = flight.apogeeTime - flight.burnout;
    row[APOGEE_TIME] = flight.apogeeTime;
    row[APOGEE_HEIGHT] = flight.apogeeHeight;
    const Record *r = &work.records[recordAt(work.records, flight.recordCount, flight.apogeeTime)];
    row[APOGEE_AIRSPEED] = sqrt(airspeed2(&work, r, (flight.apogeeTime - r->start) / r->length));
    row[LANDING_EAST] = flight.landingEast;
    row[LANDING_NORTH] = flight.landingNorth;
    row[GUIDE_EXIT_SPEED] = flight.guideExitSpeed;
  }
}

// time of the processor, so that waiting for other work does not count
static double now(void) {
  struct timespec t;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
  return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

// means of columns, NaN left out
static void printMeans(const char *name, const double *values, int rows, int columns) {
  printf("%s %d", name, columns);
  for (int c = 0; c < columns; c++) {
    double sum = 0;
    int count = 0;
    for (int r = 0; r < rows; r++) {
      double value = values[r * columns + c];
      if (isnan(value)) continue;
      sum += value;
      count += 1;
    }
    printf(" %.17g", count > 0 ? sum / count : 0);
  }
  printf("\n");
}

int main(int argc, char **argv) {
  if (argc != 5) fail("usage", "ensemble <prepared inputs> <from> <to> <repeats>");
  readEntries(argv[1]);
  prepare();
  int from = atoi(argv[2]), to = atoi(argv[3]), repeats = atoi(argv[4]);
  int draws = to - from;
  int judgedPerDraw = opening.settingCount * judgedSize;
  int samplesPerDraw = opening.settingCount * opening.samples * sampleSize;
  double *flights = malloc(sizeof(double) * (size_t)(draws * flightSize));
  double *judged = malloc(sizeof(double) * (size_t)(draws * judgedPerDraw));
  double *samples = malloc(sizeof(double) * (size_t)(draws * samplesPerDraw + 1));
  printf("rates %d", repeats);
  for (int i = 0; i < repeats; i++) {
    double start = now();
    flyDraws(from, to, flights, judged, samples);
    printf(" %.6g", draws / (now() - start));
  }
  printf("\n");
  printMeans("flights", flights, draws, flightSize);
  printMeans("judged", judged, draws, judgedPerDraw);
  printMeans("samples", samples, draws, samplesPerDraw);
  return 0;
}
