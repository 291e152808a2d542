#include "takeoff/sun/sun_soil.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/common/basis.h"

#include <limits.h>

struct finding {
	struct sun_soil *out;
	struct arena *arena;
	const struct survey *survey;
	const struct shade_scene *scene;
	const nm *soil; /* by region: how high its soil lies: its lowest cell */
};

static size_t index_of(const struct survey *survey, int x, int y)
{
	return (size_t)y * (size_t)survey->columns + (size_t)x;
}

/* What has no level, under a house, is no soil: higher than any. */
static nm height_at(const struct shade_scene *scene, size_t index)
{
	int level = scene->levels[index];

	return level == SHADE_NO_LEVEL ? INT64_MAX : scene->heights[level];
}

/* By region. */
static const nm *soil_heights(struct arena *arena, const struct survey *survey,
	const struct shade_scene *scene)
{
	nm *soil = arena_new(arena, (size_t)survey->region_count, sizeof *soil);

	for (int y = 0; y < survey->rows && !stop_asked(); y++)
		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
			const struct run *run = &survey->runs[i];

			for (int x = run->left; x < run->right && run->region != NO_REGION; x++) {
				struct place cell = { x, y };
				nm height = height_at(scene, index_of(survey, x, y));
				bool is_first = place_equal(cell,
					survey->regions[run->region].first_cell);

				soil[run->region] = is_first ? height :
					nm_least(soil[run->region], height);
			}
		}
	return soil;
}

static bool is_soil(const struct finding *finding, int region, int x, int y)
{
	const struct survey *survey = finding->survey;

	return x >= 0 && y >= 0 && x < survey->columns && y < survey->rows &&
		height_at(finding->scene, index_of(survey, x, y)) == finding->soil[region] &&
		survey_region_at(survey, x, y) == region;
}

static void pair_add(const struct finding *finding, struct place wall, int x, int y)
{
	struct sun_soil *out = finding->out;
	const struct survey *survey = finding->survey;

	out->items = arena_grow(finding->arena, out->items, out->count, &out->capacity,
		sizeof *out->items);
	out->items[out->count++] = (struct over_wall){ index_of(survey, wall.x, wall.y),
		index_of(survey, x, y) };
}

/* The square of the distance to the nearest soil, in cells, INT_MAX where there is none as far as
 * the wall is wide; those that are as far as wanted are added. */
static int look_around(const struct finding *finding, struct place cell, int region, int wanted)
{
	const struct block *bed = &finding->survey->regions[region].entry->block;
	nm wide = block_effective(bed, BED_BLOCK)->as.size.across;
	int reach = (int)(wide / finding->survey->cell) + 1, nearest = INT_MAX;

	for (int down = -reach; down <= reach; down++)
		for (int across = -reach; across <= reach; across++) {
			int square = across * across + down * down;

			if (!is_soil(finding, region, cell.x + across, cell.y + down))
				continue;
			nearest = least(nearest, square);
			if (square == wanted)
				pair_add(finding, cell, cell.x + across, cell.y + down);
		}
	return nearest;
}

static void row_find(const struct finding *finding, int y)
{
	const struct survey *survey = finding->survey;

	for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1] && !stop_asked(); i++) {
		const struct run *run = &survey->runs[i];

		if (run->region == NO_REGION || !region_is_raised(&survey->regions[run->region]))
			continue;
		for (int x = run->left; x < run->right; x++) {
			struct place cell = { x, y };

			if (!is_soil(finding, run->region, x, y))
				look_around(finding, cell, run->region,
					look_around(finding, cell, run->region, 0));
		}
	}
}

void sun_soil_find(struct sun_soil *out, struct arena *arena, const struct survey *survey,
	const struct shade_scene *scene)
{
	struct finding finding = { out, arena, survey, scene, NULL };

	*out = (struct sun_soil){ 0 };
	if (stop_asked())
		return;
	finding.soil = soil_heights(arena, survey, scene);
	for (int y = 0; y < survey->rows && !stop_asked(); y++)
		row_find(&finding, y);
}

void sun_soil_take(const struct sun_soil *soil, uint16_t *lit)
{
	for (size_t i = 0; i < soil->count; i++) {
		const struct over_wall *pair = &soil->items[i];
		bool is_first = i == 0 || pair[-1].wall != pair->wall;

		if (is_first || lit[pair->soil] < lit[pair->wall])
			lit[pair->wall] = lit[pair->soil];
	}
}
