#include "takeoff/ground/levelling.h"
#include "base/number.h"
#include "base/stop.h"

#include <math.h>

static struct level_point point_at(const struct surface *surface, nm across, nm down, nm dig)
{
	struct level_point point = { .across = across, .down = down, .dig = dig,
		.existing = surface_existing(surface, across, down),
		.finished = surface_finished(surface, across, down),
		.formation = surface_formation(surface, across, down, dig) };

	point.cut = nm_most(0, point.formation - point.existing);
	point.fill = nm_most(0, point.existing - point.formation);
	return point;
}

static void find_points(struct levelling *out, const struct basis *basis,
	const struct surface *surface)
{
	const struct survey *survey = basis->survey;
	const struct levels *levels = surface->levels;
	struct level_point *points = arena_new(basis->arena,
		(size_t)levels->columns * (size_t)levels->rows, sizeof *points);

	for (int y = 0; y < levels->rows && !stop_asked(); y++) {
		for (int x = 0; x < levels->columns; x++) {
			nm across = x * levels->step, down = y * levels->step;

			if (across > survey->columns * survey->cell ||
				down > survey->rows * survey->cell)
				continue;
			points[out->point_count++] = point_at(surface, across, down,
				out->volumes.dig[y * levels->columns + x]);
		}
	}
	out->points = points;
}

void levelling_compute(struct levelling *out, const struct basis *basis,
	const struct cut_ground *ground)
{
	const struct surface surface = surface_of(basis->plot);

	*out = (struct levelling){ .is_told = surface_is_told(&surface),
		.step = surface.has_levels ? surface.levels->step : 0 };
	falls_compute(&out->falls, basis, &surface);
	if (!surface.has_levels)
		return;
	cut_fill_compute(&out->volumes, basis, &surface, ground);
	if (stop_asked())
		return;
	out->apart = fabs(out->volumes.finished.net - out->volumes.by_unit_areas.net);
	find_points(out, basis, &surface);
}

static const struct figure cut_fill_figures[] = {
	{ "cut_m3", NULL, NULL, FIELD(VOLUME, cut_fill, cut) },
	{ "fill_m3", NULL, NULL, FIELD(VOLUME, cut_fill, fill) },
	{ "net_m3", NULL, NULL, FIELD(VOLUME, cut_fill, net) },
};
static const struct figure_table cut_fill_table = FIGURE_TABLE(cut_fill, cut_fill_figures);

static const struct figure levelling_figures[] = {
	{ NULL, NULL, NULL, FIELD(TRUTH, levelling, is_told), .flags = ROW_NEEDED },
	{ "step_m", NULL, "Drops apart", FIELD(LENGTH, levelling, step), .flags = PANEL_OPTIONAL },
	{ "points", NULL, "Drops in the plan", FIELD(COUNT, levelling, point_count),
		.flags = PANEL_OPTIONAL },
	{ "formation", NULL, NULL, FIELD(OBJECT, levelling, volumes.formation),
		.table = &cut_fill_table },
	{ "finished", NULL, NULL, FIELD(OBJECT, levelling, volumes.finished),
		.table = &cut_fill_table },
	{ "finished_by_unit_areas", NULL, NULL, FIELD(OBJECT, levelling, volumes.by_unit_areas),
		.table = &cut_fill_table },
	{ "nets_apart_m3", NULL, NULL, FIELD(VOLUME, levelling, apart) },
};
const struct figure_table levelling_table = FIGURE_TABLE(levelling, levelling_figures);

static const struct figure level_point_figures[] = {
	{ "across_m", "Across", NULL, FIELD(LENGTH, level_point, across),
		.flags = TEXT_WRAPS | ROW_KEY },
	{ "down_m", "Down", NULL, FIELD(LENGTH, level_point, down),
		.flags = TEXT_WRAPS | ROW_KEY },
	{ "existing_m", "Existing", NULL, FIELD(INCHES, level_point, existing) },
	{ "finished_m", "Finished", NULL, FIELD(INCHES, level_point, finished) },
	{ "dig_m", NULL, NULL, FIELD(LENGTH, level_point, dig) },
	{ "formation_m", "Formation", NULL, FIELD(INCHES, level_point, formation) },
	{ "cut_m", "Cut", NULL, FIELD(INCHES, level_point, cut),
		.flags = TEXT_DASHED | TEXT_WRAPS },
	{ "fill_m", "Fill", NULL, FIELD(INCHES, level_point, fill),
		.flags = TEXT_DASHED | TEXT_WRAPS },
};
const struct figure_table level_point_table = FIGURE_TABLE(level_point, level_point_figures);

static const struct figure low_figures[] = {
	{ "across_m", "Across from", NULL, FIELD(LENGTH, low_square, right), .flags = ROW_KEY },
	{ "down_m", "Down from", NULL, FIELD(LENGTH, low_square, down), .flags = ROW_KEY },
	{ "fill_m3", "Fill", NULL, FIELD(VOLUME, low_square, fill), .flags = ROW_NEEDED },
	{ "deepest_m", "Deepest", NULL, FIELD(INCHES, low_square, deepest) },
};
const struct figure_table low_table = FIGURE_TABLE(low_square, low_figures);

static const struct figure path_fall_figures[] = {
	{ "region", "Path", "Path", FIELD(REGION, path_fall, region),
		.flags = PANEL_TITLE | TEXT_WRAPS | ROW_KEY },
	{ "steepest_percent", "Steepest, %", "Steepest, %", FIELD(NUMBER, path_fall, steepest) },
};
const struct figure_table path_fall_table = FIGURE_TABLE(path_fall, path_fall_figures);

static const struct figure house_fall_figures[] = {
	{ "region", NULL, NULL, FIELD(REGION, house_fall, region), .flags = ROW_KEY },
	{ "away_percent", NULL, NULL, FIELD(NUMBER, house_fall, away) },
};
const struct figure_table house_fall_table = FIGURE_TABLE(house_fall, house_fall_figures);
