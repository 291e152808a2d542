#include "takeoff/common/work_steps.h"

static const enum work_step steps[] = {
	[GOOD_EXTRA] = WORK_SERVICES,
	[GOOD_FENCE_POST] = WORK_POSTS,
	[GOOD_FENCE_CONCRETE] = WORK_POSTS,
	[GOOD_FENCE_GRAVEL] = WORK_POSTS,
	[GOOD_SLEEVE] = WORK_SLEEVES,
	[GOOD_SPOIL] = WORK_HAUL,
	[GOOD_FILL] = WORK_TAMP,
	[GOOD_FABRIC] = WORK_FABRIC,
	[GOOD_FABRIC_PIN] = WORK_FABRIC,
	[GOOD_STONE_BASE] = WORK_BASE,
	[GOOD_BLOCK_WALL] = WORK_WALLS,
	[GOOD_BLOCK_CAP] = WORK_WALLS,
	[GOOD_ADHESIVE] = WORK_WALLS,
	[GOOD_LINER] = WORK_FILL,
	[GOOD_COMPOST] = WORK_FILL,
	[GOOD_SOIL] = WORK_FILL,
	[GOOD_EDGING] = WORK_EDGING,
	[GOOD_EDGING_SPIKE] = WORK_EDGING,
	[GOOD_STONE_FINES] = WORK_SURFACE,
	[GOOD_STONE_CLEAN] = WORK_SURFACE,
	[GOOD_FENCE_PANEL] = WORK_PANELS,
	[GOOD_FENCE_GATE] = WORK_PANELS,
	[GOOD_FENCE_BRACKET] = WORK_PANELS,
	[GOOD_FENCE_HINGE] = WORK_PANELS,
	[GOOD_FENCE_LATCH] = WORK_PANELS,
	[GOOD_FENCE_BOLT] = WORK_PANELS,
	[GOOD_PLANT] = WORK_PLANTS,
	[GOOD_WATER_SLEEVE] = WORK_SLEEVES,
	[GOOD_HEADER_TUBE] = WORK_SLEEVES,
	[GOOD_DRIP_TUBE] = WORK_WATER,
	[GOOD_WATER_TEE] = WORK_WATER,
	[GOOD_WATER_END] = WORK_WATER,
	[GOOD_WATER_STAKE] = WORK_WATER,
	[GOOD_WATER_VALVE] = WORK_WATER,
	[GOOD_WATER_TIMER] = WORK_WATER,
	[GOOD_WATER_FILTER] = WORK_WATER,
	[GOOD_WATER_REGULATOR] = WORK_WATER,
	[GOOD_WATER_BACKFLOW] = WORK_WATER,
	[GOOD_MULCH] = WORK_MULCH,
	[GOOD_LAWN_TOPSOIL] = WORK_LAWN,
	[GOOD_TURF] = WORK_LAWN,
	[GOOD_SEED] = WORK_LAWN,
};

enum work_step work_step_of_good(enum good good)
{
	_Static_assert(sizeof steps / sizeof *steps == GOODS, "each good has its step");

	return steps[good];
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
		[WORK_PLANTS] = "plants",
		[WORK_WATER] = "water", [WORK_MULCH] = "mulch", [WORK_LAWN] = "lawn",
		[WORK_CLEAR_UP] = "clear-up",
	};
	_Static_assert(sizeof words / sizeof *words == WORK_STEPS, "each step has its word");

	return words[step];
}
