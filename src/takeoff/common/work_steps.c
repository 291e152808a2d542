#include "takeoff/common/work_steps.h"

enum work_step work_step_of_good(enum good good)
{
	switch (good) {
	case GOOD_EXTRA:
		return WORK_SERVICES;
	case GOOD_FENCE_POST:
	case GOOD_FENCE_CONCRETE:
	case GOOD_FENCE_GRAVEL:
		return WORK_POSTS;
	case GOOD_SPOIL:
		return WORK_HAUL;
	case GOOD_FABRIC:
	case GOOD_FABRIC_PIN:
		return WORK_FABRIC;
	case GOOD_STONE_BASE:
		return WORK_BASE;
	case GOOD_BLOCK_WALL:
	case GOOD_BLOCK_CAP:
	case GOOD_ADHESIVE:
		return WORK_WALLS;
	case GOOD_LINER:
	case GOOD_COMPOST:
	case GOOD_SOIL:
		return WORK_FILL;
	case GOOD_EDGING:
	case GOOD_EDGING_SPIKE:
		return WORK_EDGING;
	case GOOD_STONE_FINES:
	case GOOD_STONE_CLEAN:
		return WORK_SURFACE;
	case GOOD_FENCE_PANEL:
	case GOOD_FENCE_GATE:
	case GOOD_FENCE_BRACKET:
	case GOOD_FENCE_HINGE:
	case GOOD_FENCE_LATCH:
	case GOOD_FENCE_BOLT:
		return WORK_PANELS;
	case GOOD_MULCH:
		return WORK_MULCH;
	case GOOD_LAWN_TOPSOIL:
	case GOOD_TURF:
	case GOOD_SEED:
		return WORK_LAWN;
	case GOODS:
		break;
	}
	return WORK_CLEAR_UP;
}

const char *work_step_word(enum work_step step)
{
	static const char *const words[] = {
		[WORK_SERVICES] = "services", [WORK_STRIP] = "strip", [WORK_SET_OUT] = "set-out",
		[WORK_DIG] = "dig", [WORK_POSTS] = "posts", [WORK_SLEEVES] = "sleeves",
		[WORK_SET_ASIDE] = "set-aside", [WORK_HAUL] = "haul", [WORK_TAMP] = "tamp",
		[WORK_FABRIC] = "fabric", [WORK_BASE] = "base",
		[WORK_FIXTURES_INSIDE] = "fixtures-inside", [WORK_WALLS] = "walls",
		[WORK_BACKFILL] = "backfill", [WORK_FILL] = "fill", [WORK_FIXTURES] = "fixtures",
		[WORK_EDGING] = "edging", [WORK_SURFACE] = "surface", [WORK_PANELS] = "panels",
		[WORK_MULCH] = "mulch", [WORK_LAWN] = "lawn", [WORK_CLEAR_UP] = "clear-up",
	};
	_Static_assert(sizeof words / sizeof *words == WORK_STEPS, "each step has its word");

	return words[step];
}
