// What the TypeScript side wrote for a C yardstick: lines of a name, a count and that many numbers.
#include <stdio.h>
#include <stdlib.h>
#include <string.h>


typedef struct {
  char name[32];
  int count;
  double *values;
} Entry;

static Entry entries[96];
static int entryCount = 0;

static void fail(const char *what, const char *name) {
  fprintf(stderr, "%s: %s\n", what, name);
  exit(2);
}

static void readEntries(const char *path) {
  FILE *file = fopen(path, "r");
  if (!file) fail("cannot read", path);
  Entry e;
  while (fscanf(file, "%31s %d", e.name, &e.count) == 2) {
    if (entryCount == 96) fail("too many entries", path);
    e.values = malloc(sizeof(double) * (size_t)(e.count > 0 ? e.count : 1));
    for (int i = 0; i < e.count; i++)
      if (fscanf(file, "%lf", &e.values[i]) != 1) fail("number missing", e.name);
    entries[entryCount++] = e;
  }
  fclose(file);
}

static const Entry *entry(const char *name) {
  for (int i = 0; i < entryCount; i++)
    if (strcmp(entries[i].name, name) == 0) return &entries[i];
  fail("entry missing", name);
  return NULL;
}

static double number(const char *name) { return entry(name)->values[0]; }
static const double *array(const char *name) { return entry(name)->values; }
