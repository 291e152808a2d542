#include "takeoff/sun/sun_usual.h"
#include "base/stop.h"

static const uint16_t *steps_of(const struct sun_hours *sun, struct arena *arena)
{
	size_t columns = (size_t)sun->scene.columns, rows = (size_t)sun->scene.rows;
	uint16_t *steps = arena_new(arena, columns * rows, sizeof *steps);

	for (size_t y = 0; y < rows && !stop_asked(); y++)
		for (size_t i = y * columns; i < (y + 1) * columns; i++)
			steps[i] = sun->scene.levels[i] == SHADE_NO_LEVEL ? SUN_NO_STEPS :
				(uint16_t)sun->steps[i];
	return steps;
}

static const struct sun_region *regions_of(const struct sun_hours *sun, struct arena *arena)
{
	struct sun_region *regions = arena_new(arena, (size_t)sun->region_count, sizeof *regions);

	for (int i = 0; i < sun->region_count && !stop_asked(); i++) {
		regions[i] = sun->regions[i];
		regions[i].hours = NULL;
	}
	return regions;
}

static bool count(struct sun_hours *sun, struct arena *arena, const struct takeoff *takeoff)
{
	struct date days[SUN_USUAL_DAYS];

	sun_usual_days(sun_latitude(takeoff), days);
	sun_begin(sun, arena, takeoff, days, SUN_USUAL_DAYS);
	while (sun->counted < SUN_USUAL_DAYS)
		if (!sun_count(sun))
			return false;
	return sun_finish(sun);
}

static struct sun_usual *keep(const struct sun_hours *sun, struct arena *arena)
{
	struct sun_usual *usual = arena_new(arena, 1, sizeof *usual);

	*usual = (struct sun_usual){ .steps = steps_of(sun, arena),
		.cells = (size_t)sun->scene.columns * (size_t)sun->scene.rows,
		.regions = regions_of(sun, arena), .region_count = sun->region_count,
		.boxes = sun->scene.occluder_count };
	for (int i = 0; i < SUN_CLASSES; i++)
		usual->class_cells[i] = sun->class_cells[i];
	return usual;
}

const struct sun_usual *sun_usual(const struct takeoff *takeoff, struct arena *arena)
{
	const struct sun_usual *usual = takeoff->sun;
	struct arena counting = ARENA_EMPTY;
	struct sun_hours sun;

	if (usual)
		return usual;
	if (count(&sun, &counting, takeoff))
		usual = keep(&sun, arena);
	arena_clear(&counting);
	return stop_asked() ? NULL : usual;
}

double sun_usual_mean(int steps)
{
	return sun_steps_mean((uint32_t)steps, SUN_USUAL_DAYS);
}
