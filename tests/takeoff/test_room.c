/* Where walls have room, held against plain search and GEOS. */

#include "takeoff/walls/room.h"

#include "support/beds.h"
#include "support/plots.h"
#include "support/runner.h"

#include <math.h>

#define INCH NM_PER_INCH

static struct arena arena;
static struct survey survey;
static struct plot plot;
static struct outline outline;
static struct room room;

/* Looks at the plot's first bed. */
static void look(int region)
{
	outline_trace(&outline, &arena, &plot, &survey, region);
	room = (struct room){ &survey, region, &outline };
}

static void look_at_rows(const char *const *rows)
{
	plot_from_rows(&plot, rows);
	survey_plot(&survey, &arena, &plot);
	look(0);
}

static void finish(void)
{
	plot_fini(&plot);
	arena_clear(&arena);
}

static bool is_bed(int x, int y)
{
	return ground_holds(&plot.ground, x, y) &&
		survey_region_at(&survey, x, y) == room.region;
}

/* ---- Sides ----------------------------------------------------------------------------------- */

/* Whether cell n of a line of cells lies along a stretch of it, given by its ends. */
static bool is_along(int n, int from, int to)
{
	return from < to ? n >= from && n < to : n >= to && n < from;
}

static bool touches(int x, int y, const struct corner *a, const struct corner *b)
{
	if (a->y == b->y)
		return (y == a->y || y == a->y - 1) && is_along(x, a->x, b->x);
	return (x == a->x || x == a->x - 1) && is_along(y, a->y, b->y);
}

/* The first cell of the bed, in reading order, that touches the side. */
static struct place first_cell_along(const struct corner *a, const struct corner *b)
{
	for (int y = 0; y < survey.rows; y++)
		for (int x = 0; x < survey.columns; x++)
			if (touches(x, y, a, b) && is_bed(x, y))
				return (struct place){ x, y };
	return (struct place){ -1, -1 };
}

/* Those cells are all that touch it: in the rectangle, and as many as it has. */
static void check_cells_along(struct rectangle cells, const struct corner *a,
	const struct corner *b)
{
	int count = 0;

	for (int y = 0; y < survey.rows; y++)
		for (int x = 0; x < survey.columns; x++) {
			if (!touches(x, y, a, b) || !is_bed(x, y))
				continue;
			ck_assert(x >= cells.left && x <= cells.right);
			ck_assert(y >= cells.top && y <= cells.bottom);
			count++;
		}
	ck_assert_int_eq((cells.right - cells.left + 1) * (cells.bottom - cells.top + 1), count);
}

static void check_side_cells(int loop)
{
	const struct loop *of = &outline.loops[loop];

	for (int s = 0; s < of->count; s++) {
		const struct corner *a = &of->corners[s], *b = &of->corners[(s + 1) % of->count];
		struct side_place place = { loop, s };
		struct place cell = room_side_cell(&outline, place);
		struct place first = first_cell_along(a, b);

		ck_assert_int_eq(cell.x, first.x);
		ck_assert_int_eq(cell.y, first.y);
		check_cells_along(room_side_cells(&outline, place), a, b);
	}
}

START_TEST(the_cells_of_a_side_are_those_of_the_bed_that_touch_it)
{
	struct random random = { 71 };

	for (int n = 0; n < 60; n++) {
		plot_at_random(&plot, &random, 14, "b.");
		survey_plot(&survey, &arena, &plot);
		for (int i = 0; i < survey.region_count; i++) {
			look(i);
			for (int l = 0; l < outline.count; l++)
				check_side_cells(l);
		}
		finish();
	}
}
END_TEST

START_TEST(short_sides_are_found_loop_by_loop_and_side_by_side)
{
	struct side_place place = { 0, 0 };

	look_at_rows((const char *const[]){ "bbbbbb", "bb..bb", "bb..bb", "bbbbb.", "bbbbb.",
		NULL });
	ck_assert(!room_short_side(&outline, survey.cell, 12 * INCH, &place));
	place = (struct side_place){ 0, 0 };
	ck_assert(room_short_side(&outline, survey.cell, 24 * INCH, &place));
	ck_assert_int_eq(place.loop, 0);
	ck_assert_int_eq(place.side, 2); /* the notch at the right, one cell of a foot */
	place.side++;
	ck_assert(!room_short_side(&outline, survey.cell, 24 * INCH, &place));
	place = (struct side_place){ 0, 3 };
	ck_assert(room_short_side(&outline, survey.cell, 24 * INCH + 1, &place));
	ck_assert_int_eq(place.side, 3);
	place.side++;
	ck_assert(room_short_side(&outline, survey.cell, 24 * INCH + 1, &place));
	ck_assert_int_eq(place.loop, 1); /* the hole, two by two cells */
	ck_assert_int_eq(place.side, 0);
	finish();
}
END_TEST

/* ---- Width ----------------------------------------------------------------------------------- */

START_TEST(a_bed_is_as_wide_as_its_cells_and_not_a_nanometre_wider)
{
	struct place at;

	look_at_rows((const char *const[]){ "bbbb", "bbbb", NULL });
	ck_assert(room_is_wide(&room, 24 * INCH, &at));
	ck_assert(!room_is_wide(&room, 24 * INCH + 1, &at));
	ck_assert(room_is_wide(&room, 12 * INCH + 1, &at));
	ck_assert(room_is_wide(&room, 0, &at));
	finish();
}
END_TEST

START_TEST(a_bed_exactly_two_walls_wide_has_no_room)
{
	struct place at = { -1, -1 };

	look_at_rows((const char *const[]){ "bbbb", "bbbb", "bb..", "bb..", NULL });
	ck_assert(room_for_walls(&room, 12 * INCH - 1, &at));
	ck_assert(!room_for_walls(&room, 12 * INCH, &at));
	ck_assert_int_eq(at.x, 0);
	ck_assert_int_eq(at.y, 0);
	finish();
}
END_TEST

/* ---- Corners that face each other ------------------------------------------------------------ */

/* Every cell lies in a square of 6 by 6 cells, but the two corners face each other 3 across, 2
 * down. */
static const char *const facing[] = {
	"bbbbbb...", "bbbbbb...", "bbbbbb...", "bbbbbb...", "bbbbbb...", "bbbbbbbbb", "bbbbbbbbb",
	"...bbbbbb", "...bbbbbb", "...bbbbbb", "...bbbbbb", "...bbbbbb", NULL };

START_TEST(corners_that_face_each_other_need_two_depths_one_way)
{
	struct place at = { -1, -1 };

	look_at_rows(facing);
	ck_assert(room_is_wide(&room, 72 * INCH, &at));
	ck_assert(room_for_walls(&room, 18 * INCH, &at));     /* 3 ft across: they just touch */
	ck_assert(!room_for_walls(&room, 18 * INCH + 1, &at));
	ck_assert_int_eq(at.x, 5); /* the cell within the upper corner */
	ck_assert_int_eq(at.y, 5);
	finish();
}
END_TEST

struct nook {
	int x, y, out_x, out_y;
};

/* Reflex corners by the four cells around each grid point: three of the bed, one not. */
static int nooks_of(struct nook *nooks)
{
	int count = 0;

	for (int y = 1; y < survey.rows; y++) {
		for (int x = 1; x < survey.columns; x++) {
			int out = -1, inside = 0;

			for (int i = 0; i < 4; i++) {
				if (is_bed(x - i % 2, y - i / 2))
					inside++;
				else
					out = i;
			}
			if (inside == 3)
				nooks[count++] = (struct nook){ x, y, out % 2 ? -1 : 1,
					out / 2 ? -1 : 1 };
		}
	}
	return count;
}

static bool any_clash(nm depth)
{
	static struct nook nooks[10000];
	int count = nooks_of(nooks);

	for (int i = 0; i < count; i++) {
		for (int j = 0; j < count; j++) {
			const struct nook *a = &nooks[i], *b = &nooks[j];
			nm across = survey.cell * a->out_x * (a->x - b->x);
			nm down = survey.cell * a->out_y * (a->y - b->y);

			if (a->out_x == -b->out_x && a->out_y == -b->out_y && across >= 0 &&
				across < 2 * depth && down >= 0 && down < 2 * depth)
				return true;
		}
	}
	return false;
}

/* ---- GEOS ------------------------------------------------------------------------------------ */

/* Walls have room where the ring takes exactly its depth times its runs, nothing lapping over, and
 * where squares a little over two depths wide, run inside the bed, sweep all of it. */
static bool room_by_geos(GEOSContextHandle_t geos, nm depth)
{
	double w = (double)depth / (double)NM_PER_M, more = w + 1e-4;
	double perimeter = (double)(survey.regions[room.region].perimeter * survey.cell) /
		(double)NM_PER_M;
	GEOSGeometry *bed = beds_shape(geos, &survey, room.region);
	GEOSGeometry *inner = geos_offset(geos, bed, -w);
	GEOSGeometry *core = geos_offset(geos, bed, -more), *swept = geos_offset(geos, core, more);
	double ring = w * (perimeter - 4 * w * (2 - outline.count));
	bool has_room = fabs(geos_area(geos, bed) - geos_area(geos, inner) - ring) < 1e-7 &&
		geos_apart(geos, bed, swept) < 1e-6;

	geos_free(geos, bed);
	geos_free(geos, inner);
	geos_free(geos, core);
	geos_free(geos, swept);
	return has_room;
}

/* A bed 20 by 20 cells with a corner at the top right and one at the bottom left taken away, or
 * turned over, so that the two face each other near the middle. */
static void facing_at_random(struct random *random)
{
	int x = random_between(random, 8, 12), y = random_between(random, 8, 12);
	int other_x = x + random_between(random, -5, 2),
		other_y = y + random_between(random, -1, 5);
	bool is_turned = random_below(random, 2);

	beds_at_random(&plot, random, 20, 1);
	ground_fini(&plot.ground);
	ground_init(&plot.ground, 20, 20);
	for (int i = 0; i < 400; i++) {
		int across = is_turned ? 19 - i % 20 : i % 20, down = i / 20;

		if (!(across >= x && down < y) && !(across < other_x && down >= other_y))
			plot.ground.cells[i] = 'b';
	}
}

static bool has_side_within(nm depth)
{
	struct side_place place = { 0, 0 };

	return room_short_side(&outline, survey.cell, depth + 1, &place);
}

/* What was seen on beds at random. */
struct seen {
	int with, without, clashes;
};

static void check_room(GEOSContextHandle_t geos, nm depth, struct seen *seen)
{
	struct place at = { -1, -1 };
	bool has_room = room_for_walls(&room, depth, &at);

	ck_assert_int_eq(has_room, room_by_geos(geos, depth));
	if (has_room) {
		seen->with++;
		ck_assert(!any_clash(depth));
		return;
	}
	seen->without++;
	ck_assert(is_bed(at.x, at.y));
	if (room_is_wide(&room, 2 * depth + 1, &at)) {
		seen->clashes++;
		ck_assert(any_clash(depth));
	}
}

START_TEST(walls_have_room_exactly_where_geos_says_they_do)
{
	GEOSContextHandle_t geos = geos_start();
	struct random random = { 72 };
	struct seen seen = { 0, 0, 0 };

	for (int n = 0; n < 150; n++) {
		if (n % 2)
			beds_at_random(&plot, &random, 3, 5);
		else
			facing_at_random(&random);
		survey_plot(&survey, &arena, &plot);
		for (int i = 0; i < survey.region_count; i++) {
			nm depth = random_between(&random, 4, 35) * INCH;

			look(i);
			if (!has_side_within(depth))
				check_room(geos, depth, &seen);
		}
		finish();
	}
	geos_end(geos);
	ck_assert_int_gt(seen.with, 30);
	ck_assert_int_gt(seen.without, 30);
	ck_assert_int_gt(seen.clashes, 5);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("room");
	TCase *sides = suite_case(suite, "sides");
	TCase *width = suite_case(suite, "width");

	tcase_add_test(sides, the_cells_of_a_side_are_those_of_the_bed_that_touch_it);
	tcase_add_test(sides, short_sides_are_found_loop_by_loop_and_side_by_side);
	tcase_add_test(width, a_bed_is_as_wide_as_its_cells_and_not_a_nanometre_wider);
	tcase_add_test(width, a_bed_exactly_two_walls_wide_has_no_room);
	tcase_add_test(width, corners_that_face_each_other_need_two_depths_one_way);
	tcase_add_test(width, walls_have_room_exactly_where_geos_says_they_do);
	return suite;
}
