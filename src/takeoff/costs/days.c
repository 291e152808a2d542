#include "takeoff/costs/days.h"
#include "takeoff/common/work_steps.h"

const struct word day_words[] = {
	[DAY_OTHER] = { "other", "Other goods", NULL },
	[DAY_POSTS] = { "posts", "Posts and concrete", NULL },
	[DAY_DIG] = { "dig", "Hauling", NULL },
	[DAY_STONE] = { "stone", "Stone and fabric", NULL },
	[DAY_WALLS] = { "walls", "Block and adhesive", NULL },
	[DAY_FILL] = { "fill", "Soil and mulch", NULL },
	[DAY_PANELS] = { "panels", "Panels and gates", NULL },
	[DAY_PLANTS] = { "plants", "Plants", NULL },
	[DAY_LAWN] = { "lawn", "Lawn", NULL },
};
_Static_assert(sizeof day_words / sizeof *day_words == DAYS, "each has words");

static const enum section sections[] = {
	[DAY_OTHER] = SECTION_OTHER, [DAY_POSTS] = SECTION_FENCE, [DAY_DIG] = SECTION_DIG,
	[DAY_STONE] = SECTION_STONE, [DAY_WALLS] = SECTION_WALLS, [DAY_FILL] = SECTION_FILL,
	[DAY_PANELS] = SECTION_FENCE,
	[DAY_PLANTS] = SECTION_PLANTS, [DAY_LAWN] = SECTION_LAWN,
};

enum section day_section(enum day day)
{
	return sections[day];
}

enum day day_of(const struct item *item)
{
	switch (work_step_of_good(item->good)) {
	case WORK_POSTS:
		return DAY_POSTS;
	case WORK_HAUL:
	case WORK_TAMP:
		return DAY_DIG;
	case WORK_FABRIC:
	case WORK_BASE:
	case WORK_EDGING:
	case WORK_SURFACE:
		return DAY_STONE;
	case WORK_WALLS:
		return DAY_WALLS;
	case WORK_FILL:
	case WORK_MULCH:
		return DAY_FILL;
	case WORK_PANELS:
		return DAY_PANELS;
	case WORK_PLANTS:
		return DAY_PLANTS;
	case WORK_LAWN:
		return DAY_LAWN;
	default:
		return DAY_OTHER;
	}
}
