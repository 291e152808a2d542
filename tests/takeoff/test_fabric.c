/* Fabric: rolls, joins, offcuts and pins; the least of four ways. */
#include "support/garden.h"
#include "support/geos.h"
#include "support/runner.h"
#include "takeoff/ground/strips.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>

enum { RANDOM_PLOTS = 150, PIECES_MOST = 2048 };

static const double EXACT = 1e-9;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct fabric *counted(void)
{
	garden_count(&garden);
	return &garden.takeoff.fabric;
}

static const struct fabric *path_of(int columns, int rows)
{
	garden_rectangle(&garden, 'p', columns, rows);
	return counted();
}

static void row_is(int i, int pieces, int feet)
{
	const struct fabric *fabric = &garden.takeoff.fabric;

	ck_assert_int_lt(i, fabric->row_count);
	ck_assert_int_eq(fabric->rows[i].pieces, pieces);
	ck_assert_int_eq(fabric->rows[i].length, feet * NM_PER_FOOT);
}

static const struct strips_way ways[] = {
	[FABRIC_FROM_TOP] = { false, false }, [FABRIC_FROM_BOTTOM] = { false, true },
	[FABRIC_FROM_LEFT] = { true, false }, [FABRIC_FROM_RIGHT] = { true, true },
};

static struct strips_way way_of(const struct fabric *fabric)
{
	return ways[fabric->way];
}

/* Default: rolls of 6 by 100 ft, laps of 12 in, pins 3 ft apart: common practice, no published
 * source. */

START_TEST(a_path_as_wide_as_the_roll_takes_one_piece)
{
	const struct fabric *fabric = path_of(20, 6);

	ck_assert_int_eq(fabric->rolls, 1);
	ck_assert_int_eq(fabric->joins, 0);
	ck_assert_int_eq(fabric->used, 20 * NM_PER_FOOT);
	ck_assert_int_eq(fabric->row_count, 1);
	row_is(0, 1, 20);
	ck_assert_int_eq(fabric->way, FABRIC_FROM_TOP);
	ck_assert_double_eq_tol(fabric->area / SQUARE_FOOT, 120, EXACT);
	/* Along both edges at 0, 3 .. 18 and 20 ft, and one at the middle of each end. */
	ck_assert_int_eq(fabric->pins, 2 * 8 + 2);
	ck_assert_double_eq_tol(garden_item(&garden, "fabric.roll")->laid, 0.2, EXACT);
	ck_assert_double_eq(garden_item(&garden, "fabric.roll")->order, 1);
	ck_assert_str_eq(garden_note(&garden, garden_item(&garden, "fabric.roll")),
		"whole; 6 ft x 100 ft");
	ck_assert_double_eq(garden_item(&garden, "fabric.pin")->order, 18);
}
END_TEST

/* 12 by 20 ft: upright 3 strips of 20 ft would do (6 + 5 1/2 + 1/2), level 4 of 12 ft are
 * shorter. */
START_TEST(the_direction_that_takes_less_is_laid)
{
	const struct fabric *fabric = path_of(12, 20);

	ck_assert(!way_of(fabric).is_upright);
	row_is(0, 4, 12);
	ck_assert_int_eq(fabric->used, 48 * NM_PER_FOOT);
	/* Five edges with pins at 0, 3, 6, 9 and 12 ft; a pin at the middle of 8 ends. */
	ck_assert_int_eq(fabric->pins, 5 * 5 + 8);
	garden_fini(&garden);
	fabric = path_of(20, 12);
	ck_assert(way_of(fabric).is_upright);
	row_is(0, 4, 12);
}
END_TEST

/* A strip of 6 ft from the bottom leaves the short rest of a row at the top to the second strip. */
START_TEST(the_starting_edge_that_takes_less_is_laid)
{
	garden_rows(&garden, (const char *const[]){ "p.......................",
		"pppppppppppppppppppppppp",
		"pppppppppppppppppppppppp", "pppppppppppppppppppppppp", "pppppppppppppppppppppppp",
		"pppppppppppppppppppppppp", "pppppppppppppppppppppppp", NULL });
	const struct fabric *fabric = counted();

	ck_assert_int_eq(fabric->way, FABRIC_FROM_BOTTOM);
	row_is(0, 1, 24);
	row_is(1, 1, 1);
}
END_TEST

/* 120 ft: a whole roll and 21 ft of the next, 12 in of it lap. */
START_TEST(a_piece_longer_than_a_roll_goes_on_with_an_end_lap)
{
	const struct fabric *fabric = path_of(120, 6);

	ck_assert_int_eq(fabric->rolls, 2);
	ck_assert_int_eq(fabric->joins, 1);
	ck_assert_int_eq(fabric->used, 121 * NM_PER_FOOT);
	row_is(0, 1, 120);
	/* Edges 41 each, a pin at each end, 3 across the lap. */
	ck_assert_int_eq(fabric->pins, 2 * 41 + 2 + 3);
}
END_TEST

/* Two paths of so many feet, one strip wide each: 6 ft and, 5 ft farther down, 5 ft. */
static const struct fabric *two_paths(int columns)
{
	char *cells;

	garden_rectangle(&garden, 'p', columns, 16);
	cells = garden.plot.ground.cells;
	for (int i = 6 * columns; i < 11 * columns; i++)
		cells[i] = OPEN_GROUND;
	return counted();
}

/* Two strips of 60 ft: what is left of the first roll, 40 ft, begins the second. */
START_TEST(what_is_left_on_a_roll_begins_the_next_piece)
{
	const struct fabric *fabric = two_paths(60);

	row_is(0, 2, 60);
	ck_assert_int_eq(fabric->rolls, 2);
	ck_assert_int_eq(fabric->joins, 1);
	ck_assert_int_eq(fabric->used, 121 * NM_PER_FOOT);
}
END_TEST

/* Two strips of 98 ft leave 2 ft of a roll: under 3 ft it is not used. */
START_TEST(an_offcut_too_short_to_keep_is_waste)
{
	const struct fabric *fabric = two_paths(98);

	ck_assert_int_eq(fabric->rolls, 2);
	ck_assert_int_eq(fabric->joins, 0);
	ck_assert_int_eq(fabric->used, 196 * NM_PER_FOOT);
	plot_set(&garden.plot, 0, ALLOW_FABRIC_OFFCUT, "2 ft");
	fabric = counted();
	ck_assert_int_eq(fabric->joins, 1);
	ck_assert_int_eq(fabric->used, 197 * NM_PER_FOOT);
}
END_TEST

/* Paths 6 ft wide with a gap of so many feet in a row of 20 ft. */
static const struct fabric *path_with_a_gap(int feet)
{
	garden_rectangle(&garden, 'p', 20, 6);
	for (int y = 0; y < 6; y++)
		for (int x = 8; x < 8 + feet; x++)
			garden.plot.ground.cells[20 * y + x] = OPEN_GROUND;
	return counted();
}

/* Offcuts of 3 ft and more are kept: common practice, no published source. */
START_TEST(a_gap_shorter_than_an_offcut_worth_keeping_is_run_through)
{
	const struct fabric *fabric = path_with_a_gap(2);

	row_is(0, 1, 20);
	ck_assert_int_eq(fabric->row_count, 1);
	ck_assert_int_eq(fabric->used, 20 * NM_PER_FOOT);
	ck_assert_double_eq_tol(fabric->area / SQUARE_FOOT, 18 * 6, EXACT);
	ck_assert_int_eq(fabric->pins, 2 * 8 + 2);
	plot_set(&garden.plot, 0, ALLOW_FABRIC_OFFCUT, "2 ft");
	counted();
	row_is(0, 1, 10);
	row_is(1, 1, 8);
	garden_fini(&garden);
	fabric = path_with_a_gap(3);
	row_is(0, 1, 9);
	row_is(1, 1, 8);
	ck_assert_int_eq(fabric->used, 17 * NM_PER_FOOT);
}
END_TEST

START_TEST(a_path_without_fabric_and_a_pad_without_base_have_none)
{
	garden_rows(&garden, (const char *const[]){ "pppS", NULL });
	plot_set(&garden.plot, 'p', PATH_FABRIC, "no");
	plot_set(&garden.plot, 'S', FIXTURE_BASE, "0 in");
	ck_assert_int_eq(counted()->rolls, 0);
	ck_assert_int_eq(garden.takeoff.fabric.row_count, 0);
	ck_assert_ptr_null(garden_item(&garden, "fabric.roll"));
	ck_assert_ptr_null(garden_item(&garden, "fabric.pin"));
	plot_set(&garden.plot, 'S', FIXTURE_BASE, "4 in");
	ck_assert_double_eq_tol(counted()->area / SQUARE_FOOT, 1, EXACT);
}
END_TEST

/* Outside 8 x 4 ft, blocks 8 in deep, reach 6 in and 2 in: the base of the wall is 9 x 5 ft less
 * the 6 1/3 x 2 1/3 ft between, or all of it where the inside stands on base too. */
START_TEST(it_lies_under_the_base_of_a_wall_and_of_the_inside)
{
	static const char *const rows[] = { "..........", ".bbbbbbbb.", ".bbbbbbbb.", ".bbbbbbbb.",
		".bbbbbbbb.", "..........", NULL };

	garden_rows(&garden, rows);
	ck_assert_double_eq_tol(counted()->area / SQUARE_FOOT, 45 - 19.0 / 3 * 7 / 3, EXACT);
	plot_set(&garden.plot, 'b', BED_INSIDE, "filled");
	ck_assert_double_eq_tol(counted()->area / SQUARE_FOOT, 45 - 19.0 / 3 * 7 / 3, EXACT);
	plot_set(&garden.plot, 'b', BED_INSIDE, "base");
	ck_assert_double_eq_tol(counted()->area / SQUARE_FOOT, 45, EXACT);
	row_is(0, 1, 9);
	plot_set(&garden.plot, 'b', BED_BASE, "0 in");
	ck_assert_double_eq(counted()->area, 0);
}
END_TEST

/* A lap as wide as the roll would get nowhere. */
START_TEST(a_lap_counts_as_half_the_width_at_most)
{
	path_of(20, 6);
	plot_set(&garden.plot, 0, ALLOW_FABRIC_WIDTH, "1 ft");
	plot_set(&garden.plot, 0, ALLOW_FABRIC_LAP, "3 ft");
	ck_assert_int_eq(counted()->lap, 6 * NM_PER_INCH);
	/* 1 ft and ten times 6 in. */
	row_is(0, 11, 20);
}
END_TEST

/* ---- Laws ------------------------------------------------------------------------------------ */

/* All pieces of a way, in order. */
static struct {
	struct strips_sink sink; /* first */
	bool is_upright;
	nm lengths[PIECES_MOST];
	struct geos_box boxes[PIECES_MOST];
	struct cover_box last;
	nm keep;  /* the shortest offcut that is kept */
	int count;
} pieces;

static double metres(nm length)
{
	return (double)length / (double)NM_PER_M;
}

/* From the piece before, where they are of one strip. */
static nm gap_to(const struct cover_box *piece)
{
	return pieces.count == 0 || pieces.last.owner != piece->owner ? INT64_MAX :
		pieces.is_upright ? piece->top - pieces.last.bottom :
		piece->left - pieces.last.right;
}

/* Each stretch of ground by itself comes in; it goes on with the one before where no offcut worth
 * keeping would come of the gap. */
static void take_piece(struct strips_sink *sink, const struct cover_box *stretch)
{
	struct cover_box joined = *stretch, *piece = &joined;

	(void)sink;
	if (gap_to(piece) < pieces.keep) {
		pieces.count--;
		piece->left = pieces.is_upright ? piece->left : pieces.last.left;
		piece->top = pieces.is_upright ? pieces.last.top : piece->top;
	}
	ck_assert_int_lt(pieces.count, PIECES_MOST);
	pieces.last = *piece;
	pieces.lengths[pieces.count] = pieces.is_upright ? piece->bottom - piece->top :
		piece->right - piece->left;
	pieces.boxes[pieces.count++] = (struct geos_box){ metres(piece->left), metres(piece->top),
		metres(piece->right), metres(piece->bottom) };
}

static void take_edge(struct strips_sink *sink, nm length)
{
	(void)sink;
	(void)length;
}

/* What fabric has to cover, from the zones, by the plain rule. The caller frees. */
static struct cover_box *ground_of(size_t *count)
{
	struct zones_ground ground = garden_ground(&garden);
	struct cover_box *boxes = calloc(ground.cover.count + 1, sizeof *boxes);

	*count = 0;
	for (size_t i = 0; i < ground.cover.count; i++) {
		const struct cover_box *piece = &ground.cover.pieces[i];
		const struct zone *zone = &garden.takeoff.zones.list[piece->owner];
		char letter = garden.takeoff.survey.regions[zone->region].entry->letter;

		if (zone->part == DIG_PATH ? letter == 'p' :
			zone->part == DIG_WALL || zone->part == DIG_PAD)
			boxes[(*count)++] = *piece;
	}
	arena_clear(&ground.arena);
	return boxes;
}

static const int lengths_at_random[] = { 40, 70, 300, 1200 };

static void garden_at_random(int seed)
{
	struct random random = { (uint64_t)seed };
	char words[32];

	garden = (struct garden){ .arena = ARENA_EMPTY };
	plot_at_random(&garden.plot, &random, 30, "ppqbbS..");
	plot_set(&garden.plot, 'q', PATH_FABRIC, "no");
	plot_set(&garden.plot, 'b', BED_BLOCK, "8 in x 4 in x 4 in");
	snprintf(words, sizeof words, "%d in", lengths_at_random[random_below(&random, 4)]);
	plot_set(&garden.plot, 0, ALLOW_FABRIC_LENGTH, words);
	snprintf(words, sizeof words, "%d in", random_between(&random, 12, 90));
	plot_set(&garden.plot, 0, ALLOW_FABRIC_WIDTH, words);
	snprintf(words, sizeof words, "%d in", random_between(&random, 0, 36));
	plot_set(&garden.plot, 0, ALLOW_FABRIC_END_LAP, words);
	snprintf(words, sizeof words, "%d in", random_between(&random, 1, 40));
	plot_set(&garden.plot, 0, ALLOW_FABRIC_OFFCUT, words);
	garden_count(&garden);
}

static void lay(struct strips_way way, const struct cover_box *boxes, size_t count)
{
	const struct fabric *fabric = &garden.takeoff.fabric;
	struct strips strips = { boxes, count, fabric->width, fabric->lap, 0 };

	pieces.sink = (struct strips_sink){ take_piece, take_edge };
	pieces.is_upright = way.is_upright;
	pieces.keep = block_length(garden.takeoff.allow, ALLOW_FABRIC_OFFCUT);
	pieces.count = 0;
	strips_lay(&strips, way, &pieces.sink);
}

/* Roll after roll, one cut at a time. */
struct use {
	int64_t rolls, joins;
	nm used;
};

static struct use unroll(void)
{
	const struct fabric *fabric = &garden.takeoff.fabric;
	nm keep = block_length(garden.takeoff.allow, ALLOW_FABRIC_OFFCUT), left = 0;
	struct use use = { 0, 0, 0 };

	for (int i = 0; i < pieces.count; i++) {
		nm missing = pieces.lengths[i];

		if (left < missing && left <= fabric->end_lap)
			left = 0;
		while (missing > 0) {
			nm cut;

			if (left == 0) {
				left = fabric->roll;
				use.rolls++;
			}
			cut = left < missing ? left : missing;
			use.used += cut;
			left -= cut;
			missing -= cut;
			if (missing > 0) {
				use.joins++;
				missing += fabric->end_lap;
			}
		}
		if (left < keep)
			left = 0;
	}
	return use;
}

START_TEST(of_the_four_ways_none_takes_fewer_rolls_or_a_shorter_length_of_as_many)
{
	struct cover_box *boxes;
	size_t count;
	bool is_met = false;

	garden_at_random(_i);
	const struct fabric *fabric = &garden.takeoff.fabric;

	boxes = ground_of(&count);
	for (int i = 0; i < 4; i++) {
		bool is_laid = (enum fabric_way)i == fabric->way;
		struct use use;

		lay(ways[i], boxes, count);
		use = unroll();
		if (is_laid) {
			ck_assert_msg(use.rolls == fabric->rolls, "seed %d", _i);
			ck_assert_msg(use.joins == fabric->joins, "seed %d", _i);
			ck_assert_msg(use.used == fabric->used, "seed %d", _i);
		}
		ck_assert_msg(use.rolls > fabric->rolls || (use.rolls == fabric->rolls &&
			(use.used > fabric->used || (use.used == fabric->used &&
			(is_met || is_laid)))),
			"seed %d way %d", _i, i);
		is_met = is_met || is_laid;
	}
	free(boxes);
}
END_TEST

START_TEST(the_pieces_laid_back_cover_the_ground_and_are_those_listed)
{
	GEOSContextHandle_t geos = geos_start();
	struct cover_box *boxes;
	struct geos_box *copies;
	size_t count;
	nm length = 0;
	int64_t listed = 0;

	garden_at_random(_i);
	const struct fabric *fabric = &garden.takeoff.fabric;

	boxes = ground_of(&count);
	copies = calloc(count + 1, sizeof *copies);
	for (size_t i = 0; i < count; i++)
		copies[i] = (struct geos_box){ metres(boxes[i].left), metres(boxes[i].top),
			metres(boxes[i].right), metres(boxes[i].bottom) };
	lay(way_of(fabric), boxes, count);
	GEOSGeometry *ground = geos_union(geos, copies, count);
	GEOSGeometry *laid = geos_union(geos, pieces.boxes, (size_t)pieces.count);
	GEOSGeometry *bare = geos_difference(geos, ground, laid);

	ck_assert_msg(geos_area(geos, bare) < 1e-6, "seed %d", _i);
	ck_assert_msg(fabs(geos_area(geos, ground) - fabric->area) < 1e-6, "seed %d", _i);
	for (int i = 0; i < fabric->row_count; i++) {
		listed += fabric->rows[i].pieces;
		length += fabric->rows[i].pieces * fabric->rows[i].length;
		ck_assert(i == 0 || fabric->rows[i].length < fabric->rows[i - 1].length);
	}
	ck_assert_int_eq(listed, pieces.count);
	ck_assert_int_eq(listed, fabric->pieces);
	ck_assert_int_eq(length + fabric->joins * fabric->end_lap, fabric->used);
	ck_assert_int_le(fabric->used, fabric->rolls * fabric->roll);
	geos_free(geos, ground);
	geos_free(geos, laid);
	geos_free(geos, bare);
	geos_end(geos);
	free(boxes);
	free(copies);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("fabric");
	TCase *rolls = suite_case(suite, "rolls"), *laws = suite_case(suite, "laws");

	tcase_add_checked_fixture(rolls, NULL, teardown);
	tcase_add_test(rolls, a_path_as_wide_as_the_roll_takes_one_piece);
	tcase_add_test(rolls, the_direction_that_takes_less_is_laid);
	tcase_add_test(rolls, the_starting_edge_that_takes_less_is_laid);
	tcase_add_test(rolls, a_piece_longer_than_a_roll_goes_on_with_an_end_lap);
	tcase_add_test(rolls, what_is_left_on_a_roll_begins_the_next_piece);
	tcase_add_test(rolls, an_offcut_too_short_to_keep_is_waste);
	tcase_add_test(rolls, a_gap_shorter_than_an_offcut_worth_keeping_is_run_through);
	tcase_add_test(rolls, a_path_without_fabric_and_a_pad_without_base_have_none);
	tcase_add_test(rolls, it_lies_under_the_base_of_a_wall_and_of_the_inside);
	tcase_add_test(rolls, a_lap_counts_as_half_the_width_at_most);
	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws,
		of_the_four_ways_none_takes_fewer_rolls_or_a_shorter_length_of_as_many, 0,
		RANDOM_PLOTS);
	tcase_add_loop_test(laws, the_pieces_laid_back_cover_the_ground_and_are_those_listed, 0,
		RANDOM_PLOTS);
	return suite;
}
