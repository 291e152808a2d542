#include "takeoff/sun/plant_sun.h"
#include "base/stop.h"
#include "takeoff/planting/planting_snags.h"
#include "takeoff/sun/sun_usual.h"

#include <math.h>

/* What a kind needs, in minutes a day; 0: nothing is told, or it thrives in shade. */
static int64_t needed(const struct takeoff *takeoff, const struct plant_sum *sum)
{
	return sum->light >= NEEDS_NO_SUN || sum->count == 0 ? 0 :
		llround(60 * sun_class_from(takeoff, (enum sun_class)sum->light));
}

static bool any_needs(const struct takeoff *takeoff)
{
	const struct planting *planting = &takeoff->planting;
	bool any = false;

	for (int i = 0; i < planting->plant_count; i++)
		any = any || needed(takeoff, &planting->plants[i]) > 0;
	return any;
}

static void check_row(struct takeoff *takeoff, const struct planting_row *row)
{
	int64_t least = needed(takeoff, &takeoff->planting.plants[row->kind]), has = least;
	struct place at = { 0, 0 };

	for (int i = 0; i < row->spot_count && least > 0; i++) {
		struct place cell = planting_cell(&takeoff->survey, row->spots[i].at);
		uint16_t here = takeoff->sun->steps[(size_t)cell.y *
			(size_t)takeoff->survey.columns + (size_t)cell.x];
		int64_t minutes = llround(60 * sun_usual_mean(here));

		if (here == SUN_NO_STEPS || minutes >= has)
			continue;
		has = minutes;
		at = cell;
	}
	if (has < least)
		snag_put(snag_add(&takeoff->snags, SNAG_PLANT_SUN, row->region,
			SNAG_FIGURES_OF(row->kind, has, least)), at);
}

bool takeoff_add_sun(struct takeoff *takeoff, struct arena *arena)
{
	if (!sun_has_site(takeoff) || !any_needs(takeoff))
		return true;
	takeoff->sun = sun_usual(takeoff, arena);
	if (!takeoff->sun)
		return false;
	for (int i = 0; i < takeoff->planting.count && !stop_asked(); i++)
		check_row(takeoff, &takeoff->planting.list[i]);
	snag_sort(&takeoff->snags);
	return !stop_asked();
}

bool takeoff_with_sun(struct takeoff *out, struct arena *arena, const struct plot *plot,
	const struct book *book)
{
	return takeoff_compute(out, arena, plot, book) && takeoff_add_sun(out, arena);
}
