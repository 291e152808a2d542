#include "takeoff/services/by_hand.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/ground/edging.h"

#include <stdlib.h>

/* ---- Ground ---------------------------------------------------------------------------------- */

/* What has been met of each place that is worked. */
struct tally {
	nm2 area;
	struct spot from, to;
	struct place first;
};

struct tallying {
	const struct hand_ground *ground;
	const struct near_cells *cells;
	struct tally *tallies; /* by place */
	nm2 fabric;
};

/* box: what a piece has of a cell. */
static void tally_add(struct tallying *tallying, const struct cover_box *box, struct place cell)
{
	struct tally *tally = &tallying->tallies[box->owner];
	nm2 area = cover_box_area(box);

	if (tally->area == 0) {
		tally->from = (struct spot){ box->left, box->top };
		tally->to = (struct spot){ box->right, box->bottom };
		tally->first = cell;
	}
	if (place_order(cell, tally->first) < 0)
		tally->first = cell;
	tally->area += area;
	tally->from = (struct spot){ nm_least(tally->from.x, box->left),
		nm_least(tally->from.y, box->top) };
	tally->to = (struct spot){ nm_most(tally->to.x, box->right),
		nm_most(tally->to.y, box->bottom) };
	if (tallying->ground->worked->list[box->owner].has_fabric)
		tallying->fabric += area;
}

/* A piece of ground, cell by cell. */
static void tally_piece(struct tallying *tallying, const struct cover_box *piece)
{
	const struct near_cells *cells = tallying->cells;
	const struct rectangle *within = &cells->within;
	nm cell = cells->survey->cell;
	int left = held(piece->left / cell, within->left, within->right + 1);
	int right = held((piece->right - 1) / cell, within->left - 1, within->right);
	int top = held(piece->top / cell, within->top, within->bottom + 1);
	int bottom = held((piece->bottom - 1) / cell, within->top - 1, within->bottom);

	for (int y = top; y <= bottom && !stop_asked(); y++)
		for (int x = left; x <= right; x++) {
			struct cover_box part;

			if (!near_cells_hold(cells, x, y))
				continue;
			part = cover_clip(*piece, &(struct cover_box){ x * cell, y * cell,
				(x + 1) * cell, (y + 1) * cell, 0 });
			tally_add(tallying, &part, (struct place){ x, y });
		}
}

static void tally_all(struct tallying *tallying, const struct cover *cover)
{
	for (size_t i = 0; i < cover->count && !stop_asked(); i++)
		tally_piece(tallying, &cover->pieces[i]);
}

static void list_digs(struct hand *hand, struct tallying *tallying)
{
	const struct worked *worked = tallying->ground->worked;
	struct arena *arena = tallying->ground->basis->arena;
	struct hand_dig *digs = NULL;
	size_t count = 0, capacity = 0;

	for (int i = 0; i < worked->count && !stop_asked(); i++) {
		const struct tally *tally = &tallying->tallies[i];
		const struct work_place *place = &worked->list[i];

		if (tally->area == 0)
			continue;
		digs = arena_grow(arena, digs, count, &capacity, sizeof *digs);
		digs[count++] = (struct hand_dig){ place->kind, i, place->region,
			place->part, place->words, place->line, cover_m2(tally->area),
			tally->from, tally->to,
			tally->first };
	}
	hand->digs = digs;
	hand->dig_count = (int)count;
	hand->fabric = cover_m2(tallying->fabric);
}

static double area_near(const struct near_cells *cells)
{
	const struct rectangle *within = &cells->within;
	int64_t count = 0;

	for (int y = within->top; y <= within->bottom && !stop_asked(); y++)
		for (int x = within->left; x <= within->right; x++)
			count += near_cells_hold(cells, x, y);
	return survey_area(count, cells->survey->cell);
}

/* ---- Holes and spikes ------------------------------------------------------------------------ */

static bool is_near_any(const struct near_thing *things, size_t count, struct spot at, nm across)
{
	for (size_t i = 0; i < count; i++)
		if (near_disc(&things[i], at.x, at.y, across))
			return true;
	return false;
}

static void find_posts(struct hand *hand, const struct hand_ground *ground,
	const struct near_thing *things, size_t count)
{
	struct hand_post *posts = NULL;
	size_t found = 0, capacity = 0;

	for (int f = 0; f < ground->fences->count; f++) {
		const struct fencing *fencing = &ground->fences->list[f];

		for (int i = 0; i < fencing->post_count && !stop_asked(); i++) {
			const struct fence_post *post = &fencing->posts[i];

			if (!is_near_any(things, count, post->at,
				fencing_hole(fencing, post->kind)->across))
				continue;
			posts = arena_grow(ground->basis->arena, posts, found, &capacity,
				sizeof *posts);
			posts[found++] = (struct hand_post){ f, i + 1, fencing->name, post->at };
		}
	}
	hand->posts = posts;
	hand->post_count = (int)found;
}

static void find_plants(struct hand *hand, const struct hand_ground *ground,
	const struct near_thing *things, size_t count)
{
	struct hand_plant *plants = NULL;
	size_t found = 0, capacity = 0;

	for (int i = 0; i < ground->holes_count; i++) {
		const struct plant_holes *holes = &ground->holes[i];

		for (int j = 0; j < holes->count && !stop_asked(); j++) {
			if (!is_near_any(things, count, holes->spots[j], holes->across))
				continue;
			plants = arena_grow(ground->basis->arena, plants, found, &capacity,
				sizeof *plants);
			plants[found++] = (struct hand_plant){ holes->kind, holes->region,
				holes->letter, holes->name, holes->spots[j] };
		}
	}
	hand->plants = plants;
	hand->plant_count = (int)found;
}

/* Whether any of a run is near at all, so that its spikes are to be looked at. */
static bool is_run_near(const struct near_thing *things, size_t count, const struct near_thing *run)
{
	const struct cover_box box = { run->left, run->top, run->right, run->bottom, 0 };

	for (size_t i = 0; i < count; i++)
		if (near_box(&things[i], &box))
			return true;
	return false;
}

static int64_t spikes_of_run(const struct near_thing *things, size_t count,
	const struct near_thing *run, nm spacing)
{
	bool is_upright = run->left == run->right;
	nm length = is_upright ? run->bottom - run->top : run->right - run->left;
	int64_t spikes = edging_spikes(length, spacing), near = 0;

	for (int64_t i = 0; i < spikes && !stop_asked(); i++) {
		nm along = length * i / (spikes - 1);

		near += is_near_any(things, count, (struct spot){
			run->left + (is_upright ? 0 : along), run->top + (is_upright ? along : 0) },
			0);
	}
	return near;
}

static int64_t find_spikes(const struct hand_ground *ground, const struct near_thing *things,
	size_t count)
{
	nm spacing = block_length(ground->basis->allow, ALLOW_EDGING_SPIKE);
	int64_t spikes = 0;

	for (size_t i = 0; i < ground->edging->count && !stop_asked(); i++) {
		struct near_thing run = near_leg(ground->edging->items[i],
			ground->basis->survey->cell, 0);

		if (is_run_near(things, count, &run))
			spikes += spikes_of_run(things, count, &run, spacing);
	}
	return spikes;
}

struct hand hand_find(const struct hand_ground *ground, struct near_cells *cells,
	const struct near_thing *things, size_t count)
{
	struct tallying tallying = { .ground = ground, .cells = cells,
		.tallies = memory_new((size_t)ground->worked->count, sizeof *tallying.tallies) };
	struct hand hand = { .area = 0 };

	for (size_t i = 0; i < count && !stop_asked(); i++)
		near_cells_add(cells, &things[i]);
	hand.area = area_near(cells);
	tally_all(&tallying, &ground->worked->ground);
	tally_all(&tallying, &ground->worked->trenches);
	list_digs(&hand, &tallying);
	free(tallying.tallies);
	find_posts(&hand, ground, things, count);
	find_plants(&hand, ground, things, count);
	hand.spikes = find_spikes(ground, things, count);
	return hand;
}

static const struct figure dig_figures[] = {
	{ "region", NULL, NULL, FIELD(REGION, hand_dig, region), .flags = ROW_KEY },
	{ "part", NULL, NULL, FIELD(TEXT, hand_dig, part), .flags = ROW_KEY },
	{ "line", NULL, NULL, FIELD(TEXT, hand_dig, line), .flags = ROW_KEY },
	{ "area_m2", NULL, NULL, FIELD(AREA, hand_dig, area) },
	{ "from_m", NULL, NULL, FIELD(SPOT, hand_dig, from) },
	{ "to_m", NULL, NULL, FIELD(SPOT, hand_dig, to) },
};
static const struct figure_table dig_rows_table = FIGURE_TABLE(hand_dig, dig_figures);

static const struct figure post_figures[] = {
	{ "fence", NULL, NULL, FIELD(TEXT, hand_post, name), .flags = ROW_KEY },
	{ "post", NULL, NULL, FIELD(COUNT, hand_post, number), .flags = ROW_KEY },
	{ "at_m", NULL, NULL, FIELD(SPOT, hand_post, at) },
};
static const struct figure_table post_rows_table = FIGURE_TABLE(hand_post, post_figures);

static const struct figure plant_figures[] = {
	{ "letter", NULL, NULL, FIELD(LETTER, hand_plant, letter), .flags = ROW_KEY },
	{ "name", NULL, NULL, FIELD(TEXT, hand_plant, name) },
	{ "region", NULL, NULL, FIELD(REGION, hand_plant, region) },
	{ "at_m", NULL, NULL, FIELD(SPOT, hand_plant, at), .flags = ROW_KEY },
};
static const struct figure_table plant_rows_table = FIGURE_TABLE(hand_plant, plant_figures);

static const struct figure figures[] = {
	{ "area_m2", NULL, NULL, FIELD(AREA, hand, area) },
	{ "digs", NULL, "By hand", FIELDS(ROWS, hand, digs, dig_count),
		.table = &dig_rows_table },
	{ "posts", NULL, "Post hole", FIELDS(ROWS, hand, posts, post_count),
		.table = &post_rows_table },
	{ "plants", NULL, "Planting hole", FIELDS(ROWS, hand, plants, plant_count),
		.table = &plant_rows_table },
	{ "spikes", NULL, NULL, FIELD(COUNT, hand, spikes) },
	{ "fabric_m2", NULL, NULL, FIELD(AREA, hand, fabric) },
};
const struct figure_table by_hand_table = FIGURE_TABLE(hand, figures);
