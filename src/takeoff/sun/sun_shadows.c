#include "takeoff/sun/sun_shadows.h"
#include "base/stop.h"
#include "takeoff/sun/sun_hours.h"

bool sun_shadows_begin(struct sun_shadows *out, struct arena *arena, const struct takeoff *takeoff,
	struct date date)
{
	*out = (struct sun_shadows){ .north = (double)block_number(&takeoff->plot.details.head,
		HEAD_NORTH) / MILLION, .day = sun_day_of(sun_latitude(takeoff), date),
		.lit = arena_new(arena, ground_count(&takeoff->plot.ground), sizeof *out->lit) };
	sun_scene_make(&out->scene, arena, takeoff);
	if (stop_asked())
		return false;
	out->shade = shade_new(arena, &out->scene);
	return !stop_asked();
}

bool sun_shadows_cast(struct sun_shadows *shadows, double hour)
{
	struct ray ray;

	shadows->sun = sun_place(&shadows->day, hour);
	ray = ray_from(shadows->sun.height, shadows->sun.azimuth, shadows->north);
	shade_count(shadows->shade, &ray, 1, shadows->lit);
	return !stop_asked();
}

static size_t index_of(const struct sun_shadows *shadows, struct place cell)
{
	return (size_t)cell.y * (size_t)shadows->scene.columns + (size_t)cell.x;
}

bool sun_shadows_has_cell(const struct sun_shadows *shadows, struct place cell)
{
	return shadows->scene.levels[index_of(shadows, cell)] != SHADE_NO_LEVEL;
}

bool sun_shadows_is_lit(const struct sun_shadows *shadows, struct place cell)
{
	return shadows->lit[index_of(shadows, cell)] != 0;
}
