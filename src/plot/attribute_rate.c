/* How long a piece of work takes one person. */
#include "plot/attribute_rows.h"

#define AT(name) [RATE_##name - RATE_STRIP]
#define HOURS(by) { .kind = VALUE_AMOUNT, .least = 1, .most = 1000 * MILLION, \
	.quantity = QUANTITY_HOURS_##by }
#define NO_HOURS "none: in no hours"
#define USUAL "the usual rate"
#define BY_SUBSOIL "the usual rate, by the subsoil"

/* In the order of the work. */
static const struct attribute_row rows[] = {
	AT(STRIP) = { "strip", "Strip sod", HOURS(AREA), .derived = BY_SUBSOIL },
	AT(DIG) = { "dig", "Dig", HOURS(VOLUME), .derived = BY_SUBSOIL },
	AT(HOLE) = { "hole", "Dig a post hole", HOURS(EACH), .derived = NO_HOURS },
	AT(POST) = { "post", "Set a post", HOURS(EACH), .derived = NO_HOURS },
	AT(LOAD) = { "load", "Load spoil", HOURS(VOLUME), .derived = BY_SUBSOIL },
	AT(TAMP) = { "tamp", "Tamp the ground", HOURS(AREA), .derived = NO_HOURS },
	AT(FABRIC) = { "fabric", "Lay fabric", HOURS(AREA), .derived = NO_HOURS },
	AT(BASE) = { "base", "Lay the base", HOURS(VOLUME), .derived = USUAL },
	AT(FIXTURE) = { "fixture", "Set a fixture", HOURS(EACH), .derived = NO_HOURS },
	AT(BLOCK) = { "block", "Lay a wall block", HOURS(EACH), .derived = NO_HOURS },
	AT(CAP) = { "cap", "Lay a cap block", HOURS(EACH), .derived = NO_HOURS },
	AT(CUT) = { "cut", "Saw a piece", HOURS(EACH), .derived = NO_HOURS },
	AT(BACKFILL) = { "backfill", "Backfill", HOURS(VOLUME), .derived = USUAL },
	AT(LOOSEN) = { "loosen", "Loosen inside walls", HOURS(AREA), .derived = NO_HOURS },
	AT(PREPARE) = { "prepare", "Dig over level beds", HOURS(AREA), .derived = BY_SUBSOIL },
	AT(LINER) = { "liner", "Line the walls", HOURS(LENGTH), .derived = NO_HOURS },
	AT(FILL) = { "fill", "Fill beds", HOURS(VOLUME), .derived = USUAL },
	AT(EDGING) = { "edging", "Set edging", HOURS(LENGTH), .derived = NO_HOURS },
	AT(SURFACE) = { "surface", "Lay the surface", HOURS(AREA), .derived = USUAL },
	AT(PANEL) = { "panel", "Hang a panel", HOURS(EACH), .derived = NO_HOURS },
	AT(GATE) = { "gate", "Hang a gate", HOURS(EACH), .derived = NO_HOURS },
	AT(MULCH) = { "mulch", "Spread mulch", HOURS(VOLUME), .derived = USUAL },
	AT(TOPSOIL) = { "topsoil", "Spread lawn topsoil", HOURS(VOLUME), .derived = USUAL },
	AT(TURF) = { "turf", "Lay turf", HOURS(AREA), .derived = NO_HOURS },
	AT(SEED) = { "seed", "Sow", HOURS(AREA), .derived = NO_HOURS },
};

const struct attribute_table rate_attributes = ATTRIBUTE_TABLE("rate", RATE_STRIP, rows);
