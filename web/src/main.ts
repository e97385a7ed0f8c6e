import { spawnAhead } from "./compute/spawned.js";

// the workers first: their code is the longest way to the first decision
spawnAhead();
void import("./start.js");
