#include "takeoff/takeoff.h"
#include "base/stop.h"
#include "prices/in_force.h"
#include "takeoff/fence/fence_holes.h"
#include "takeoff/ground/slender.h"
#include "takeoff/planting/planting_holes.h"
#include "takeoff/planting/planting_snags.h"
#include "takeoff/planting/planting_soil.h"
#include "takeoff/services/trench_holes.h"
#include "takeoff/walks/walks.h"

#include <string.h>

static void dig_compute(struct takeoff *t, struct arena *arena)
{
	struct dig_list list = { .arena = arena, .allow = t->allow };

	dig_zones(&list, &t->zones, &t->embeds, &t->levelling.volumes);
	fences_dig(&list, &t->fences);
	dig_finish(&t->earthwork, &list, &(struct earth_wanted){
		.mixes = fill_topsoil(&t->fills), .lawns = lawn_topsoil(&t->lawns),
		.backfill = t->over_bases.backfill, .loosened = t->over_bases.loosened });
	fill_reuse(&t->fills, t->earthwork.mixes_share);
	lawn_reuse(&t->lawns, t->earthwork.lawns_share);
}

/* What is built on the ground, by the survey. */
static void build_compute(struct takeoff *t, const struct basis *basis)
{
	embeds_find(&t->embeds, basis);
	areas_count(&t->areas, basis);
	walls_lay(&t->walls, basis);
	if (!stop_asked())
		cutting_plan(&t->cuttings, basis, &t->walls);
	wall_levels_find(&t->wall_levels, basis, &t->walls, &t->embeds);
	slender_check(basis, &t->walls, &t->embeds);
	fences_compute(&t->fences, basis);
}

/* Those that walls are dug in by: where no levels are measured all ground counts as level. */
static const struct wall_levels *levels_to_dig(const struct takeoff *takeoff)
{
	static const struct wall_levels none = { .count = 0 };

	return takeoff->levelling.step > 0 ? &takeoff->wall_levels : &none;
}

/* What is dug and laid in the ground, near lines that are there and kept things, and where posts
 * would be dug through it. */
static void services_find(struct takeoff *t, const struct basis *basis,
	const struct zones_ground *ground)
{
	struct arena arena = ARENA_EMPTY;
	struct work_ground worked = { .zones = &t->zones, .cover = &ground->cover,
		.is_graded = cut_fills_grade_others(&t->levelling.volumes),
		.header = &t->watering.legs, .header_width = t->watering.trench_width };

	worked.holes = planting_holes(&t->planting, basis, &arena, &worked.holes_count);
	service_lines_find(&t->services, basis, &worked, &t->fences);
	trench_holes_warn(basis, &t->fences, &worked);
	arena_clear(&arena);
}

/* What is dug, by survey, walls, fences and plants. What looks at the ground of the zones
 * comes right after them, so that it can be let go of. */
static void zones_find(struct takeoff *t, const struct basis *basis, bool is_supply_measured)
{
	struct zones_ground ground;

	zones_compute(&t->zones, &ground, basis, &t->walls);
	if (!stop_asked())
		fences_warn_holes(&t->fences, basis, &t->zones, &ground.cover);
	if (!stop_asked())
		fabric_compute(&t->fabric, basis, &t->zones, &ground);
	if (!stop_asked())
		levelling_compute(&t->levelling, basis, &(struct cut_ground){ &t->zones,
			&ground.cover, &t->embeds, &t->wall_levels });
	if (!stop_asked())
		over_bases_find(&t->over_bases, basis, &t->zones, &ground.cover,
			&(struct over_ground){ &t->walls, &t->embeds, levels_to_dig(t) });
	if (!stop_asked())
		watering_find(&t->watering, basis, &(struct water_ground){ is_supply_measured,
			&t->walls, &t->fences, &t->zones, &ground.cover });
	if (!stop_asked())
		services_find(t, basis, &ground);
	arena_clear(&ground.arena);
}

/* Whether the plot or the price book says what is allowed for. */
static bool is_told(const struct plot *plot, const struct book *book, enum attribute a)
{
	return block_value(&plot->details.allow, a)->set ||
		(book && block_value(&book->allow, a)->set);
}

/* What is laid and filled there. */
static void ground_compute(struct takeoff *t, const struct basis *basis)
{
	const struct fill_ground ground = { &t->walls, &t->embeds, &t->over_bases,
		levels_to_dig(t) };

	fill_compute(&t->fills, basis, &ground);
	bed_snags_add(basis, &ground, &t->fills);
	lawn_compute(&t->lawns, basis, &t->over_bases);
	dig_compute(t, basis->arena);
	stone_compute(&t->stones, basis, &t->zones);
	liner_compute(&t->liners, basis, &t->walls, &t->fills);
	edging_compute(&t->edging, basis);
	fixtures_count(&t->fixtures, basis);
	planting_soil_find(&t->planting, basis, &t->fills);
	planting_snags_add(basis, &t->planting);
}

static void items_compute(struct takeoff *t, struct arena *arena, const struct details *details)
{
	t->items = (struct item_list){ .arena = arena, .allow = t->allow };
	dig_items(&t->items, &t->earthwork);
	stone_items(&t->items, &t->stones);
	fabric_items(&t->items, &t->fabric);
	liner_items(&t->items, &t->liners);
	edging_items(&t->items, &t->edging);
	cutting_items(&t->items, &t->cuttings);
	walls_items(&t->items, &t->walls);
	fill_items(&t->items, &t->fills);
	lawn_items(&t->items, &t->lawns);
	fences_items(&t->items, &t->fences);
	service_lines_items(&t->items, &t->services);
	planting_items(&t->items, &t->planting);
	watering_items(&t->items, &t->watering);
	items_add_extras(&t->items, details);
}

bool takeoff_compute(struct takeoff *out, struct arena *arena, const struct plot *plot,
	const struct book *book)
{
	struct takeoff *t = out;
	struct basis basis = { .arena = arena, .plot = &t->plot, .survey = &t->survey,
		.allow = &t->plot.details.allow, .snags = &t->snags };

	*t = (struct takeoff){ .plot = plot_in_force(arena, plot, book), .book = book,
		.allow = basis.allow, .snags = { .arena = arena, .survey = &t->survey } };
	survey_plot(&t->survey, arena, &t->plot);
	if (stop_asked())
		return false;
	build_compute(t, &basis);
	if (stop_asked())
		return false;
	planting_find(&t->planting, &basis);
	zones_find(t, &basis, is_told(plot, book, ALLOW_SUPPLY));
	if (!stop_asked())
		ground_compute(t, &basis);
	planting_end(&t->planting);
	if (stop_asked())
		return false;
	items_compute(t, arena, &plot->details);
	t->complete = t->walls.not_laid_count == 0 && t->walls.caps_not_laid == 0 &&
		!t->planting.is_cut;
	costs_compute(&t->costs, &t->items, book, plot_units(plot), t->complete);
	heaps_find(&t->heaps, &t->items, plot);
	walks_find(&t->barrow_ways, &basis);
	if (stop_asked())
		return false;
	work_plan(&t->work, t, plot, arena);
	snag_names(&t->snags, plot);
	snag_mirror(&t->snags, plot);
	snag_sort(&t->snags);
	return !stop_asked();
}

/* ---- What is shown --------------------------------------------------------------------------- */

#define ROWS_OF(key_, table_, rows, count_, subject_, title_) .key = (key_), .table = &(table_), \
	.at = offsetof(struct takeoff, rows), .count_at = offsetof(struct takeoff, count_) * \
		(FIGURE_IS_REGION(FIGURE_FIELD_OF(takeoff, count_)) > 0), \
	.subject = SUBJECT_##subject_, .title = (title_)
#define OBJECT_OF(key_, table_, row) .key = (key_), .table = &(table_), \
	.at = offsetof(struct takeoff, row), .count = 1, .is_object = true
#define ROWS(...) { ROWS_OF(__VA_ARGS__) }
#define OBJECT(...) { OBJECT_OF(__VA_ARGS__) }
#define WITHIN(key_, table_, rows, count_, subject_) { .key = (key_), .table = &(table_), \
	.at = offsetof(struct takeoff, rows), .count = (count_), .subject = SUBJECT_##subject_ }
#define OPTIONAL(...) { ROWS_OF(__VA_ARGS__, NULL), .is_optional = true }
#define BY_HAND(key_) { .key = (key_) }

const struct shown takeoff_shown[] = {
	ROWS("areas", area_table, areas.list, areas.count, ANY, NULL),
	BY_HAND("edges"),
	BY_HAND("regions"),
	ROWS("walls", wall_table, walls.list, walls.count, ANY, NULL),
	ROWS("walls_not_laid", wall_not_laid_table, walls.not_laid, walls.not_laid_count, ANY,
		NULL),
	OPTIONAL("wall_levels", wall_level_table, wall_levels.list, wall_levels.count, ANY),
	ROWS("cutting", cutting_table, cuttings.list, cuttings.count, ANY, NULL),
	ROWS("dig", dig_table, earthwork.rows, earthwork.count, ANY, NULL),
	OBJECT("dig_sums", earthwork_table, earthwork),
	OPTIONAL("dig_fills", dig_fill_table, earthwork.fills, earthwork.fill_count, ANY),
	{ OBJECT_OF("levels", levelling_table, levelling), .subject = SUBJECT_LEVELS,
		.is_optional = true },
	OPTIONAL("level_points", level_point_table, levelling.points, levelling.point_count, ANY),
	OPTIONAL("low_ground", low_table, levelling.volumes.squares,
		levelling.volumes.square_count, ANY),
	OPTIONAL("path_falls", path_fall_table, levelling.falls.paths,
		levelling.falls.path_count, ANY),
	OPTIONAL("house_falls", house_fall_table, levelling.falls.houses,
		levelling.falls.house_count, ANY),
	ROWS("fills", fill_table, fills.list, fills.count, ANY, NULL),
	ROWS("fence", fencing_table, fences.list, fences.count, FENCE, NULL),
	OPTIONAL("fence_levels", fence_level_table, fences.levels.list, fences.levels.count,
		FENCE_LEVELS),
	OPTIONAL("services", service_line_table, services.list, services.count, SERVICE),
	OPTIONAL("keeps", kept_table, services.kept, services.kept_count, ANY),
	ROWS("stone", stone_table, stones.list, stones.count, STONE, NULL),
	WITHIN("stone_orders", stone_total_table, stones.totals, STONE_KINDS, ANY),
	WITHIN("fabric", fabric_table, fabric, 1, FABRIC),
	ROWS("liners", liner_table, liners.list, liners.count, LINER, NULL),
	WITHIN("liner_rolls", liners_table, liners, 1, ANY),
	ROWS("edging", edging_row_table, edging.rows, edging.row_count, EDGING, NULL),
	ROWS("edging_cuts", edging_cut_table, edging.cuts, edging.cut_count, ANY, NULL),
	ROWS("lawn", lawn_table, lawns.list, lawns.count, LAWN, NULL),
	OPTIONAL("planting", planting_table, planting.list, planting.count, PLANTS),
	OPTIONAL("plants", plant_table, planting.plants, planting.plant_count, ANY),
	OPTIONAL("watering", watered_table, watering.list, watering.count, WATER),
	OPTIONAL("watering_zones", water_zone_table, watering.zones, watering.zone_count, ANY),
	OPTIONAL("watering_weeks", water_week_table, watering.weeks, watering.week_count, ANY),
	OPTIONAL("watering_zone_weeks", zone_week_table, watering.zone_weeks,
		watering.zone_week_count, ANY),
	OPTIONAL("watering_months", water_month_table, watering.months, watering.month_count,
		ANY),
	{ OBJECT_OF("watering_sums", watering_table, watering), .is_optional = true },
	BY_HAND("items"),
	WITHIN("loads", day_load_table, costs.days, DAYS, ANY),
	OPTIONAL("heaps", heap_table, heaps.list, heaps.count, ANY),
	BY_HAND("costs"),
	BY_HAND("work"),
	OBJECT("work_sums", work_sum_table, work.sum),
	OPTIONAL("barrow_ways", barrow_way_table, barrow_ways.list, barrow_ways.count, ANY),
	OPTIONAL("barrow_ways_to_fences", barrow_fence_table, barrow_ways.fence_list,
		barrow_ways.fence_count, ANY),
	BY_HAND("snags"),
};
const int takeoff_shown_count = sizeof takeoff_shown / sizeof *takeoff_shown;

const void *shown_rows(const struct shown *shown, const struct takeoff *takeoff, int *count)
{
	const char *base = (const char *)takeoff, *at = base + shown->at;

	*count = shown->count;
	if (shown->count_at == 0)
		return at;
	memcpy(count, base + shown->count_at, sizeof *count);
	memcpy(&at, base + shown->at, sizeof at);
	return at;
}

bool shown_has_any(const struct shown *shown, const struct takeoff *takeoff)
{
	int count;
	const char *row = shown_rows(shown, takeoff, &count);

	for (int i = 0; i < count; i++, row += shown->table->row_size)
		if (!row_is_left_out(shown->table, row))
			return true;
	return false;
}

bool takeoff_has(const struct takeoff *takeoff, enum subject subject)
{
	for (int i = 0; i < takeoff_shown_count; i++) {
		const struct shown *shown = &takeoff_shown[i];

		if (shown->table && shown->subject == subject && shown_has_any(shown, takeoff))
			return true;
	}
	return false;
}
