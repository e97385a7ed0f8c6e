// The rigid body's step of ../src/flight/rigid once more in C, as a yardstick: same equations, same tables, same steps.
//
//   gcc -O3 -march=native -o rigid rigid.c -lm
//   rigid <prepared inputs> <repeats>
//
// Reads what rigid.ts wrote, flies from the guide's end to the top `repeats` times, and prints the flights a second of each repeat,
// the right-hand sides called and the state at the top. Names follow the TypeScript, which holds the explanations.
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "entries.h"

enum { N = 13, mostSteps = 20000 };

// ---- row-table.ts

typedef struct {
  const double *values;
  double from, perStep;
  int width, count;
} Table;

static Table tableOf(const char *name, const char *rows) {
  const Entry *layout = entry(rows);
  return (Table){array(name), layout->values[0], 1 / layout->values[1], (int)layout->values[3], (int)layout->values[2]};
}

static inline const double *locate(const Table *t, double x, double *w) {
  double place = (x - t->from) * t->perStep;
  double whole = floor(place);
  int cell = whole >= 1 ? (whole > t->count - 3 ? t->count - 3 : (int)whole) : 1;
  double s = place - cell;
  w[0] = 0.5 * s * (s * (2 - s) - 1);
  w[1] = 1 + 0.5 * s * s * (3 * s - 5);
  w[2] = 0.5 * s * (1 + s * (4 - 3 * s));
  w[3] = 0.5 * s * s * (s - 1);
  return t->values + (cell - 1) * t->width;
}

static inline double value(const Table *t, const double *row, const double *w, int column) {
  const double *v = row + column;
  return w[0] * v[0] + w[1] * v[t->width] + w[2] * v[2 * t->width] + w[3] * v[3 * t->width];
}

// ---- loads.ts, drag-rows.ts, rates.ts

typedef struct {
  double area, gravity0, gravity1, gravity2, motorAft, motorLoaded, propellant, totalImpulse, motorCentre, motorGyration;
  double frameMass, frameBalance, frameInertia, rollFrame, rollGyration, liftArea, liftAt;
  double windEast, windNorth, windPerHeight, windExponent, windTop, slowMach;
  int partCount, rollCount, compressibility;
  const double *rolls, *nodes, *weights;
  Table air, aero, burning, coasting, slowBurning, slowCoasting;
  // of a stretch of the thrust curve
  double from, thrust, slope, impulse;
  int thrusting;
  // of a step
  double t, y[N], stage[N], next[N], k[7][N];
} Work;

static inline double windRatio(const Work *w, double z) {
  if (!(z > 0)) return 0;
  return exp(w->windExponent * log((z < w->windTop ? z : w->windTop) * w->windPerHeight));
}

static inline double dragOf(const Work *w, double mach, double logReynolds) {
  const Table *rows = mach > w->slowMach ? (w->thrusting ? &w->burning : &w->coasting)
                                         : (w->thrusting ? &w->slowBurning : &w->slowCoasting);
  double weights[4], x[4];
  const double *row = locate(rows, mach, weights);
  for (int i = 0; i < 4; i++) x[i] = logReynolds - w->nodes[i];
  return x[1] * x[2] * x[3] * w->weights[0] * value(rows, row, weights, 0) +
         x[0] * x[2] * x[3] * w->weights[1] * value(rows, row, weights, 1) +
         x[0] * x[1] * x[3] * w->weights[2] * value(rows, row, weights, 2) +
         x[0] * x[1] * x[2] * w->weights[3] * value(rows, row, weights, 3);
}

static void rates(const Work *w, double t, const double *y, double *k) {
  double z = y[2];
  double dt = t - w->from;
  double thrust = w->thrust + w->slope * dt;
  double spent = (w->impulse + dt * (w->thrust + 0.5 * w->slope * dt)) / w->totalImpulse;
  double motorMass = w->motorLoaded - w->propellant * (spent < 1 ? spent : 1);
  double flow = w->propellant * thrust / w->totalImpulse;
  double mass = w->frameMass + motorMass;
  double share = w->frameMass / mass;
  double apart = w->motorCentre - w->frameBalance;
  double balance = w->frameBalance + motorMass / mass * apart;
  double inertia = w->frameInertia + motorMass * (w->motorGyration + share * apart * apart);
  double inertiaRate = -flow * (w->motorGyration + share * share * apart * apart);

  double qw = y[6], qx = y[7], qy = y[8], qz = y[9];
  double s = 2 / (qw * qw + qx * qx + qy * qy + qz * qz);
  double xe = 1 - s * (qy * qy + qz * qz), xn = s * (qx * qy + qw * qz), xu = s * (qx * qz - qw * qy);
  double ye = s * (qx * qy - qw * qz), yn = 1 - s * (qx * qx + qz * qz), yu = s * (qy * qz + qw * qx);
  double ze = s * (qx * qz + qw * qy), zn = s * (qy * qz - qw * qx), zu = 1 - s * (qx * qx + qy * qy);
  double p = y[10], q = y[11], r = y[12];

  double weights[4];
  const double *row = locate(&w->air, z, weights);
  double density = value(&w->air, row, weights, 0);
  double perSound = value(&w->air, row, weights, 1);
  double logReynolds = value(&w->air, row, weights, 2);
  double ratio = windRatio(w, z);
  double ue = y[3] - w->windEast * ratio, un = y[4] - w->windNorth * ratio, uu = y[5];
  double speed = sqrt(ue * ue + un * un + uu * uu);
  double mach = speed * perSound;
  double pressureArea = 0.5 * density * speed * speed * w->area;
  double along = ue * xe + un * xn + uu * xu;
  double uy = ue * ye + un * yn + uu * yu;
  double uz = ue * ze + un * zn + uu * zu;
  double cd = dragOf(w, mach, logReynolds);
  double drag = along > 0 ? pressureArea * cd : along < 0 ? -pressureArea * cd : 0;
  double fy = 0, fz = 0, roll = 0, mq = 0, mr = 0;

  row = locate(&w->aero, w->compressibility ? mach : 0, weights);
  int last = w->liftArea > 0 ? w->partCount + 1 : w->partCount;
  for (int i = 0; i < last; i++) {
    double arm = balance - (i < w->partCount ? value(&w->aero, row, weights, 2 * i + 1) : w->liftAt);
    double change = windRatio(w, z + arm * xu) - ratio;
    double e = w->windEast * change, n = w->windNorth * change;
    double vx = along - (e * xe + n * xn);
    double vy = uy + r * arm - (e * ye + n * yn);
    double vz = uz - q * arm - (e * ze + n * zn);
    double across2 = vy * vy + vz * vz;
    double flow2 = vx * vx + across2;
    if (flow2 == 0) continue;
    double push = i < w->partCount ? -pressureArea * value(&w->aero, row, weights, 2 * i) / sqrt(flow2)
                                   : -(pressureArea / w->area) * w->liftArea * sqrt(across2) / flow2;
    fy += push * vy;
    fz += push * vz;
    mq -= arm * push * vz;
    mr += arm * push * vy;
  }
  for (int i = 0; i < w->rollCount; i++)
    roll += 0.5 * density * speed * w->area * value(&w->aero, row, weights, 2 * w->partCount + i) *
            (w->rolls[2 * i] * along - w->rolls[2 * i + 1] * p);
  double lever = w->motorAft - balance;
  double swing = flow * lever * lever + inertiaRate;
  mq -= swing * q;
  mr -= swing * r;
  double fx = thrust - drag;
  double rollInertia = w->rollFrame + motorMass * w->rollGyration;

  double perMass = 1 / mass;
  k[0] = y[3];
  k[1] = y[4];
  k[2] = y[5];
  k[3] = (fx * xe + fy * ye + fz * ze) * perMass;
  k[4] = (fx * xn + fy * yn + fz * zn) * perMass;
  k[5] = (fx * xu + fy * yu + fz * zu) * perMass - (w->gravity0 + z * (w->gravity1 + z * w->gravity2));
  k[6] = -0.5 * (qx * p + qy * q + qz * r);
  k[7] = 0.5 * (qw * p + qy * r - qz * q);
  k[8] = 0.5 * (qw * q + qz * p - qx * r);
  k[9] = 0.5 * (qw * r + qx * q - qy * p);
  double gyro = (inertia - rollInertia) * p;
  k[10] = roll / rollInertia;
  k[11] = (mq + gyro * r) / inertia;
  k[12] = (mr - gyro * q) / inertia;
}

// ---- integrate.ts

static const double scales[N] = {100, 100, 100, 10, 10, 10, 1, 1, 1, 1, 10, 10, 10};
static long calls = 0;
static double *dense;

static double tryStep(Work *w, double h, double tolerance) {
  double(*k)[N] = w->k;
  double *y = w->y, *stage = w->stage, *next = w->next;
  for (int c = 0; c < N; c++) stage[c] = y[c] + h * (1.0 / 5 * k[0][c]);
  rates(w, w->t + h / 5, stage, k[1]);
  for (int c = 0; c < N; c++) stage[c] = y[c] + h * (3.0 / 40 * k[0][c] + 9.0 / 40 * k[1][c]);
  rates(w, w->t + 3.0 / 10 * h, stage, k[2]);
  for (int c = 0; c < N; c++) stage[c] = y[c] + h * (44.0 / 45 * k[0][c] + -56.0 / 15 * k[1][c] + 32.0 / 9 * k[2][c]);
  rates(w, w->t + 4.0 / 5 * h, stage, k[3]);
  for (int c = 0; c < N; c++)
    stage[c] = y[c] + h * (19372.0 / 6561 * k[0][c] + -25360.0 / 2187 * k[1][c] + 64448.0 / 6561 * k[2][c] +
                           -212.0 / 729 * k[3][c]);
  rates(w, w->t + 8.0 / 9 * h, stage, k[4]);
  for (int c = 0; c < N; c++)
    stage[c] = y[c] + h * (9017.0 / 3168 * k[0][c] + -355.0 / 33 * k[1][c] + 46732.0 / 5247 * k[2][c] +
                           49.0 / 176 * k[3][c] + -5103.0 / 18656 * k[4][c]);
  rates(w, w->t + h, stage, k[5]);
  for (int c = 0; c < N; c++)
    next[c] = y[c] + h * (35.0 / 384 * k[0][c] + 500.0 / 1113 * k[2][c] + 125.0 / 192 * k[3][c] +
                          -2187.0 / 6784 * k[4][c] + 11.0 / 84 * k[5][c]);
  rates(w, w->t + h, next, k[6]);
  calls += 6;
  double squares = 0;
  for (int c = 0; c < N; c++) {
    double error = 71.0 / 57600 * k[0][c] + -71.0 / 16695 * k[2][c] + 71.0 / 1920 * k[3][c] +
                   -17253.0 / 339200 * k[4][c] + 22.0 / 525 * k[5][c] + -1.0 / 40 * k[6][c];
    double part = h * error / (tolerance * fmax(scales[c], fmax(fabs(y[c]), fabs(next[c]))));
    squares += part * part;
  }
  return sqrt(squares / N);
}

static void denseStep(const Work *w, double h, double *out) {
  const double(*k)[N] = w->k;
  for (int c = 0; c < N; c++, out += 5) {
    double difference = w->next[c] - w->y[c];
    double bend = h * k[0][c] - difference;
    out[0] = w->y[c];
    out[1] = difference;
    out[2] = bend;
    out[3] = difference - h * k[6][c] - bend;
    out[4] = h * (-12715105075.0 / 11282082432 * k[0][c] + 87487479700.0 / 32700410799 * k[2][c] +
                  -10690763975.0 / 1880347072 * k[3][c] + 701980252875.0 / 199316789632 * k[4][c] +
                  -1453857185.0 / 822651844 * k[5][c] + 69997945.0 / 29380423 * k[6][c]);
  }
}

static double climbAt(const double *step, double share) {
  const double *c = step + 25;
  double rest = 1 - share;
  return c[0] + share * (c[1] + rest * (c[2] + share * (c[3] + rest * c[4])));
}

/** Share of a step at which the climb ends. */
static double topShare(const double *step) {
  double low = 0, high = 1;
  for (int i = 0; i < 60; i++) {
    double middle = 0.5 * (low + high);
    if (climbAt(step, middle) > 0) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high);
}

/** Ends the flight at its top by real steps, as `integrate` does. */
static void endAtTop(Work *w, double length, double tolerance, double *step) {
  double span = topShare(step) * length;
  double nudge = fmin(1e-6, 0.01 * span);
  for (int i = 0; i < 3; i++) {
    tryStep(w, span, tolerance);
    double here = w->next[5];
    tryStep(w, span - nudge, tolerance);
    double slope = (here - w->next[5]) / nudge;
    double better = span - here / slope;
    if (!(better > 0 && better <= length)) break;
    span = better;
  }
  tryStep(w, span, tolerance);
  denseStep(w, span, step);
  w->t += span;
  memcpy(w->y, w->next, sizeof w->y);
}

static void fly(Work *w, double tolerance) {
  const Entry *stretches = entry("stretches");
  w->t = number("start");
  memcpy(w->y, array("state"), sizeof w->y);
  int steps = 0;
  for (int i = 0; i < stretches->count; i += 6) {
    const double *s = stretches->values + i;
    double to = s[1];
    if (to <= w->t) continue;
    w->from = s[0];
    w->thrust = s[2];
    w->slope = s[3];
    w->impulse = s[4];
    w->thrusting = s[5] > 0;
    double h = fmin((to - w->t) / 8, 0.01), lastError = 1e-4;
    rates(w, w->t, w->y, w->k[0]);
    calls += 1;
    while (w->t < to) {
      int last = w->t + h * 1.000001 >= to;
      double length = last ? to - w->t : h;
      double error = tryStep(w, length, tolerance);
      if (error > 1) {
        h = length * fmax(0.2, 0.9 * pow(error, -0.2));
        continue;
      }
      if (steps == mostSteps) fail("too many steps", "rigid");
      double *step = dense + 5 * N * steps++;
      denseStep(w, length, step);
      if (w->y[5] > 0 && w->next[5] <= 0) {
        endAtTop(w, length, tolerance, step);
        return;
      }
      w->t = last ? to : w->t + length;
      memcpy(w->y, w->next, sizeof w->y);
      memcpy(w->k[0], w->k[6], sizeof w->k[0]);
      double grow = 0.9 * pow(fmax(error, 1e-10), -0.17) * pow(lastError, 0.04);
      h = length * fmin(5, fmax(0.2, grow));
      lastError = fmax(error, 1e-4);
    }
  }
}

static double processorTime(void) {
  struct timespec now;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return (double)now.tv_sec + 1e-9 * (double)now.tv_nsec;
}

int main(int argc, char **argv) {
  if (argc != 3) fail("usage", "rigid <prepared inputs> <repeats>");
  readEntries(argv[1]);
  const double *body = array("body"), *wind = array("wind");
  static Work w;
  w = (Work){
      .area = body[0], .gravity0 = body[1], .gravity1 = body[2], .gravity2 = body[3], .motorAft = body[4],
      .motorLoaded = body[5], .propellant = body[6], .totalImpulse = body[7], .motorCentre = body[8],
      .motorGyration = body[9], .frameMass = body[10], .frameBalance = body[11], .frameInertia = body[12],
      .rollFrame = body[13], .rollGyration = body[14], .liftArea = body[15], .liftAt = body[16],
      .compressibility = body[17] > 0, .slowMach = body[18], .windEast = wind[0], .windNorth = wind[1],
      .windPerHeight = wind[2], .windExponent = wind[3], .windTop = wind[4], .partCount = (int)number("partCount"),
      .rollCount = entry("rolls")->count / 2, .rolls = array("rolls"), .nodes = array("dragNodes"),
      .weights = array("dragWeights"), .air = tableOf("air", "airRows"), .aero = tableOf("aero", "aeroRows"),
      .burning = tableOf("burning", "dragRows"), .coasting = tableOf("coasting", "dragRows"),
      .slowBurning = tableOf("slowBurning", "slowRows"), .slowCoasting = tableOf("slowCoasting", "slowRows"),
  };
  double tolerance = number("tolerance");
  dense = malloc(sizeof(double) * 5 * N * mostSteps);
  int repeats = atoi(argv[2]);
  printf("rates %d", repeats);
  for (int i = 0; i < repeats; i++) {
    calls = 0;
    double start = processorTime();
    fly(&w, tolerance);
    printf(" %.17g", 1 / (processorTime() - start));
  }
  printf("\ncalls 1 %ld\ntop %d %.17g", calls, N + 1, w.t);
  for (int c = 0; c < N; c++) printf(" %.17g", w.y[c]);
  printf("\n");
  return 0;
}
