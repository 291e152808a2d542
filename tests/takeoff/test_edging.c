/* Edging: which edges it follows, its runs, spikes and pieces; laws against GEOS and a plain
 * count. */
#include "support/garden.h"
#include "support/geos.h"
#include "support/runner.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { RANDOM_PLOTS = 200 };

static const double EXACT = 1e-9;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct edging *edging_of(const char *const *rows)
{
	garden_rows(&garden, rows);
	garden_count(&garden);
	return &garden.takeoff.edging;
}

static const struct edging *counted(void)
{
	garden_count(&garden);
	return &garden.takeoff.edging;
}

static void length_is_feet(const struct edging *edging, int feet)
{
	ck_assert_int_eq(edging->length, feet * NM_PER_FOOT);
}

/* ---- Which edges ----------------------------------------------------------------------------- */

START_TEST(a_path_in_open_ground_is_edged_all_round)
{
	length_is_feet(edging_of((const char *const[]){ "....", ".pp.", "....", NULL }), 6);
	ck_assert_int_eq(garden.takeoff.edging.runs, 4);
}
END_TEST

START_TEST(a_path_against_turf_is_edged_and_against_another_path_not)
{
	length_is_feet(edging_of((const char *const[]){ "lll", "ppp", "qqq", "lll", NULL }), 10);
}
END_TEST

START_TEST(a_raised_wall_and_a_fixture_hold_the_edge)
{
	edging_of((const char *const[]){ "bbb", "ppp", "SSS", NULL });
	plot_set(&garden.plot, 0, ALLOW_HELD, "left, right");
	length_is_feet(counted(), 0);
	ck_assert_int_eq(garden.takeoff.edging.runs, 0);
	ck_assert_int_eq(garden.takeoff.edging.row_count, 0);
	ck_assert_int_eq(garden.takeoff.edging.bought, 0);
	ck_assert_ptr_null(garden_item(&garden, "edging.piece"));
}
END_TEST

START_TEST(a_side_of_the_plan_is_edged_unless_it_is_held)
{
	static const struct { const char *held; int feet; } sides[] = {
		{ "none", 10 }, { "left", 8 }, { "right", 8 }, { "top", 7 }, { "bottom", 7 },
		{ "left, top, right, bottom", 0 },
	};

	edging_of((const char *const[]){ "ppp", "ppp", NULL });
	for (size_t i = 0; i < sizeof sides / sizeof *sides; i++) {
		plot_set(&garden.plot, 0, ALLOW_HELD, sides[i].held);
		length_is_feet(counted(), sides[i].feet);
	}
}
END_TEST

START_TEST(a_bed_at_ground_level_is_edged_and_its_edge_with_a_path_only_once)
{
	edging_of((const char *const[]){ ".....", ".bpc.", ".....", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'c', BED_BUILD, "level");
	length_is_feet(counted(), 10);
}
END_TEST

START_TEST(two_beds_at_ground_level_have_edging_between_them)
{
	edging_of((const char *const[]){ "bbcc", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'c', BED_BUILD, "level");
	plot_set(&garden.plot, 0, ALLOW_HELD, "left, top, right, bottom");
	length_is_feet(counted(), 1);
}
END_TEST

START_TEST(a_path_that_says_no_has_no_edging_along_it)
{
	edging_of((const char *const[]){ "bppl", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'p', PATH_EDGING, "no");
	/* The bed's three sides on the boundary. */
	length_is_feet(counted(), 3);
}
END_TEST

START_TEST(turf_and_open_ground_need_no_edging)
{
	length_is_feet(edging_of((const char *const[]){ "l..m", NULL }), 0);
}
END_TEST

/* ---- Runs, spikes, pieces -------------------------------------------------------------------- */

/* A spike each 2 ft on walks: common practice, no published source. 60 ft take 31 by arithmetic. */
START_TEST(sixty_feet_of_edging_take_31_spikes)
{
	garden_rectangle(&garden, 'p', 60, 3);
	plot_set(&garden.plot, 0, ALLOW_HELD, "left, right, bottom");
	const struct edging *edging = counted();

	ck_assert_int_eq(edging->row_count, 1);
	ck_assert_int_eq(edging->rows[0].length, 60 * NM_PER_FOOT);
	ck_assert_int_eq(edging->rows[0].spikes, 31);
	ck_assert_int_eq(edging->spikes, 31);
	ck_assert_double_eq(garden_item(&garden, "edging.spike")->order, 31);
	/* Seven pieces of 8 ft and 4 ft of an eighth. */
	ck_assert_int_eq(edging->whole, 7);
	ck_assert_int_eq(edging->cut_up, 1);
	ck_assert_double_eq(garden_item(&garden, "edging.piece")->order, 8);
	ck_assert_int_eq(garden_item(&garden, "edging.piece")->section, SECTION_STONE);
}
END_TEST

/* 5 ft at 2 ft: 3 spaces at most 2 ft apart. */
START_TEST(a_rest_has_a_spike_at_its_end)
{
	garden_rectangle(&garden, 'p', 5, 3);
	plot_set(&garden.plot, 0, ALLOW_HELD, "left, right, bottom");
	ck_assert_int_eq(counted()->spikes, 4);
}
END_TEST

START_TEST(a_run_goes_on_whatever_lies_beside_it)
{
	const struct edging *edging = edging_of((const char *const[]){ "ll..", "pppp", NULL });

	ck_assert_int_eq(edging->runs, 4);
	ck_assert_int_eq(edging->rows[0].length, 4 * NM_PER_FOOT);
	ck_assert_int_eq(edging->rows[0].runs, 2);
	ck_assert_int_eq(edging->rows[1].length, NM_PER_FOOT);
	ck_assert_int_eq(edging->rows[1].runs, 2);
}
END_TEST

START_TEST(a_run_ends_where_the_edge_on_its_line_is_held)
{
	edging_of((const char *const[]){ "llbll", "ppppp", "ppppp", NULL });
	plot_set(&garden.plot, 0, ALLOW_HELD, "left, right, bottom");
	const struct edging *edging = counted();

	ck_assert_int_eq(edging->row_count, 1);
	ck_assert_int_eq(edging->rows[0].length, 2 * NM_PER_FOOT);
	ck_assert_int_eq(edging->rows[0].runs, 2);
}
END_TEST

START_TEST(an_upright_run_goes_on_through_rows_and_ends_where_it_is_held)
{
	edging_of((const char *const[]){ "lp", "lp", "Sp", ".p", NULL });
	plot_set(&garden.plot, 0, ALLOW_HELD, "top, right, bottom");
	const struct edging *edging = counted();

	ck_assert_int_eq(edging->runs, 2);
	ck_assert_int_eq(edging->rows[0].length, 2 * NM_PER_FOOT);
	ck_assert_int_eq(edging->rows[1].length, NM_PER_FOOT);
}
END_TEST

/* Rests of 6, 6, 2 and 2 ft come out of two pieces of 8 ft. */
START_TEST(what_is_cut_off_serves_for_other_rests)
{
	const struct edging *edging = edging_of((const char *const[]){ "......", "pppppp", "pppppp",
		"......", NULL });

	ck_assert_int_eq(edging->whole, 0);
	ck_assert_int_eq(edging->cut_up, 2);
	ck_assert_int_eq(edging->cut_count, 1);
	ck_assert_int_eq(edging->cuts[0].blocks, 2);
	ck_assert_int_eq(edging->cuts[0].pieces[0], 6 * NM_PER_FOOT);
	ck_assert_int_eq(edging->cuts[0].pieces[1], 2 * NM_PER_FOOT);
}
END_TEST

/* Places of 5, 2 and 1 ft in a piece of 8 ft: three pieces sawn short leave room for two cuts where
 * 2 x kerf is not more than 3 x fit. */
static const struct { const char *kerf, *fit; int pieces; } saws[] = {
	{ "1/8 in", "1/8 in", 1 }, { "1/8 in", "0 in", 2 }, { "0 in", "0 in", 1 },
	{ "1/8 in", "3/32 in", 1 }, { "1/8 in", "5/64 in", 2 }, { "1/4 in", "1/8 in", 2 },
	{ "3/16 in", "1/8 in", 1 },
};

START_TEST(cuts_take_room_and_pieces_are_sawn_short)
{
	/* Along the top of each: the sides are held. */
	edging_of((const char *const[]){ "pppppbppbp", NULL });
	plot_set(&garden.plot, 0, ALLOW_HELD, "left, right, bottom");
	plot_set(&garden.plot, 0, ALLOW_KERF, saws[_i].kerf);
	plot_set(&garden.plot, 0, ALLOW_FIT, saws[_i].fit);
	const struct edging *edging = counted();

	ck_assert_int_eq(edging->runs, 3);
	ck_assert_int_eq(edging->cut_up, saws[_i].pieces);
}
END_TEST

START_TEST(each_run_is_whole_pieces_and_a_rest)
{
	garden_rectangle(&garden, 'p', 20, 3);
	plot_set(&garden.plot, 0, ALLOW_HELD, "left, right, bottom");
	const struct edging *edging = counted();

	ck_assert_int_eq(edging->rows[0].whole, 2);
	ck_assert_int_eq(edging->rows[0].rest, 4 * NM_PER_FOOT);
	plot_set(&garden.plot, 0, ALLOW_EDGING_PIECE, "10 ft");
	edging = counted();
	ck_assert_int_eq(edging->rows[0].whole, 2);
	ck_assert_int_eq(edging->rows[0].rest, 0);
	ck_assert_int_eq(edging->cut_count, 0);
}
END_TEST

/* Two pieces of 9 ft 11 15/16 in leave 1/8 in of 20 ft open, as much as a sawn piece may be short.
 * */
START_TEST(a_rest_within_the_tolerance_is_left_open)
{
	garden_rectangle(&garden, 'p', 20, 3);
	plot_set(&garden.plot, 0, ALLOW_HELD, "left, right, bottom");
	plot_set(&garden.plot, 0, ALLOW_EDGING_PIECE, "119 15/16 in");
	ck_assert_int_eq(counted()->rows[0].rest, 0);
	ck_assert_int_eq(counted()->bought, 2);
	plot_set(&garden.plot, 0, ALLOW_FIT, "1/16 in");
	ck_assert_int_eq(counted()->rows[0].rest, NM_PER_INCH / 8);
	ck_assert_int_eq(counted()->bought, 3);
}
END_TEST

/* ---- Laws ------------------------------------------------------------------------------------ */

/* a and b raised or level, p edged and q not, and some sides held, all by the seed. */
static const struct edging *edging_at_random(int seed)
{
	static const char *const held[] = { "none", "left", "top, right",
		"left, top, right, bottom" };
	struct random random = { (uint64_t)seed };

	garden = (struct garden){ .arena = ARENA_EMPTY };
	plot_at_random(&garden.plot, &random, 24, "abcpqlS..");
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'c', BED_BUILD, "level");
	plot_set(&garden.plot, 'q', PATH_EDGING, "no");
	plot_set(&garden.plot, 0, ALLOW_HELD, held[random_below(&random, 4)]);
	return counted();
}

/* Those of the letters; '#' stands for what lies beyond the sides that are not held. */
static GEOSGeometry *shape_of(GEOSContextHandle_t geos, const char *letters)
{
	const struct ground *ground = &garden.plot.ground;
	int w = ground->columns, h = ground->rows;
	int64_t held = block_number(&garden.plot.details.allow, ALLOW_HELD);
	struct geos_box *boxes = calloc((size_t)(w * h) + 4, sizeof *boxes);
	size_t count = 0;
	GEOSGeometry *shape;

	for (int y = 0; y < h; y++)
		for (int x = 0; x < w; x++)
			if (strchr(letters, ground_cell(ground, x, y)))
				boxes[count++] = (struct geos_box){ x, y, x + 1, y + 1 };
	if (strchr(letters, '#')) {
		if (!(held & SIDE_LEFT))
			boxes[count++] = (struct geos_box){ -1, 0, 0, h };
		if (!(held & SIDE_RIGHT))
			boxes[count++] = (struct geos_box){ w, 0, w + 1, h };
		if (!(held & SIDE_TOP))
			boxes[count++] = (struct geos_box){ 0, -1, w, 0 };
		if (!(held & SIDE_BOTTOM))
			boxes[count++] = (struct geos_box){ 0, h, w, h + 1 };
	}
	shape = geos_union(geos, boxes, count);
	free(boxes);
	return shape;
}

/* Two sets of letters without one in common: what both outlines have and their union's has not. */
static double shared(GEOSContextHandle_t geos, const char *a, const char *b)
{
	char both[16] = "";
	GEOSGeometry *one = shape_of(geos, a), *other = shape_of(geos, b), *all;
	double length;

	strcat(strcat(both, a), b);
	all = shape_of(geos, both);
	length = (geos_perimeter(geos, one) + geos_perimeter(geos, other) -
		geos_perimeter(geos, all)) / 2;
	geos_free(geos, one);
	geos_free(geos, other);
	geos_free(geos, all);
	return length;
}

START_TEST(lengths_are_those_that_the_shapes_share)
{
	GEOSContextHandle_t geos = geos_start();
	const struct edging *edging = edging_at_random(_i);
	double feet = shared(geos, "pbc", "l.#") + shared(geos, "p", "bc") + shared(geos, "b", "c");

	ck_assert_msg(fabs((double)edging->length / (double)NM_PER_FOOT - feet) < EXACT,
		"seed %d: %.9g, not %.9g", _i, (double)edging->length / (double)NM_PER_FOOT, feet);
	geos_end(geos);
}
END_TEST

/* The same by the plain rule, cell by cell. */
static bool holds(char letter)
{
	return letter == 'a' || letter == 'S' || letter == 'q' || letter == '!';
}

static bool bed_or_path(char letter)
{
	return letter == 'b' || letter == 'c' || letter == 'p';
}

static char letter_at(int x, int y)
{
	const struct ground *ground = &garden.plot.ground;
	int64_t held = block_number(&garden.plot.details.allow, ALLOW_HELD);

	if (x < 0 || x >= ground->columns)
		return held & (x < 0 ? SIDE_LEFT : SIDE_RIGHT) ? '!' : '#';
	if (y < 0 || y >= ground->rows)
		return held & (y < 0 ? SIDE_TOP : SIDE_BOTTOM) ? '!' : '#';
	return ground_cell(ground, x, y);
}

static bool plainly_edged(char a, char b)
{
	return a != b && !holds(a) && !holds(b) && (bed_or_path(a) || bed_or_path(b));
}

/* Counts the runs of the line before column (or row) `line` into runs[length]. */
static void count_line(int line, int length, bool is_upright, int64_t *runs)
{
	int run = 0;

	for (int i = 0; i <= length; i++) {
		bool edged = i < length && (is_upright ?
			plainly_edged(letter_at(line - 1, i), letter_at(line, i)) :
			plainly_edged(letter_at(i, line - 1), letter_at(i, line)));

		if (!edged && run > 0)
			runs[run]++;
		run = edged ? run + 1 : 0;
	}
}

START_TEST(runs_are_those_of_a_plain_count_line_by_line)
{
	const struct edging *edging = edging_at_random(_i);
	const struct ground *ground = &garden.plot.ground;
	int64_t runs[64] = { 0 }, total = 0;

	for (int x = 0; x <= ground->columns; x++)
		count_line(x, ground->rows, true, runs);
	for (int y = 0; y <= ground->rows; y++)
		count_line(y, ground->columns, false, runs);
	for (int i = 0; i < 64; i++)
		total += runs[i];
	ck_assert_msg(edging->runs == total, "seed %d", _i);
	for (int i = 0; i < edging->row_count; i++) {
		const struct edging_row *row = &edging->rows[i];

		ck_assert_msg(row->runs == runs[row->length / NM_PER_FOOT], "seed %d", _i);
		ck_assert_msg(i == 0 || row->length < row[-1].length, "seed %d", _i);
		/* Spikes stand no farther apart than allowed, and one fewer would. */
		ck_assert_int_le(row->length, (row->spikes - 1) * edging->spacing);
		ck_assert_int_gt(row->length, (row->spikes - 2) * edging->spacing);
	}
}
END_TEST

START_TEST(pieces_give_every_run_its_length_and_few_are_bought)
{
	const struct edging *edging = edging_at_random(_i);
	nm laid = edging->whole * edging->piece, runs = 0, least;

	for (int i = 0; i < edging->row_count; i++)
		runs += edging->rows[i].runs * (edging->rows[i].whole * edging->piece +
			edging->rows[i].rest);
	ck_assert_int_eq(runs, edging->length);
	for (int i = 0; i < edging->cut_count; i++) {
		const struct cut *cut = &edging->cuts[i];
		nm places = 0;

		for (int j = 0; j < cut->piece_count; j++)
			places += cut->pieces[j];
		/* What is sawn and the cuts between come out of one piece. */
		ck_assert_int_le(places - cut->piece_count * edging->fit +
			(cut->piece_count - 1) * edging->kerf, edging->piece);
		laid += places * cut->blocks;
	}
	least = (edging->length + edging->piece - 1) / edging->piece;
	ck_assert_int_eq(laid, edging->length);
	ck_assert_int_ge(edging->bought, least);
	/* By the way they are cut no two pieces are half used or less. */
	ck_assert_msg(edging->bought <= least * 2, "seed %d", _i);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("edging");
	TCase *edges = suite_case(suite, "edges"), *runs = suite_case(suite, "runs");
	TCase *laws = suite_case(suite, "laws");

	tcase_add_checked_fixture(edges, NULL, teardown);
	tcase_add_test(edges, a_path_in_open_ground_is_edged_all_round);
	tcase_add_test(edges, a_path_against_turf_is_edged_and_against_another_path_not);
	tcase_add_test(edges, a_raised_wall_and_a_fixture_hold_the_edge);
	tcase_add_test(edges, a_side_of_the_plan_is_edged_unless_it_is_held);
	tcase_add_test(edges, a_bed_at_ground_level_is_edged_and_its_edge_with_a_path_only_once);
	tcase_add_test(edges, two_beds_at_ground_level_have_edging_between_them);
	tcase_add_test(edges, a_path_that_says_no_has_no_edging_along_it);
	tcase_add_test(edges, turf_and_open_ground_need_no_edging);
	tcase_add_checked_fixture(runs, NULL, teardown);
	tcase_add_test(runs, sixty_feet_of_edging_take_31_spikes);
	tcase_add_test(runs, a_rest_has_a_spike_at_its_end);
	tcase_add_test(runs, a_run_goes_on_whatever_lies_beside_it);
	tcase_add_test(runs, a_run_ends_where_the_edge_on_its_line_is_held);
	tcase_add_test(runs, an_upright_run_goes_on_through_rows_and_ends_where_it_is_held);
	tcase_add_test(runs, what_is_cut_off_serves_for_other_rests);
	tcase_add_loop_test(runs, cuts_take_room_and_pieces_are_sawn_short, 0, 7);
	tcase_add_test(runs, each_run_is_whole_pieces_and_a_rest);
	tcase_add_test(runs, a_rest_within_the_tolerance_is_left_open);
	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, lengths_are_those_that_the_shapes_share, 0, RANDOM_PLOTS);
	tcase_add_loop_test(laws, runs_are_those_of_a_plain_count_line_by_line, 0, RANDOM_PLOTS);
	tcase_add_loop_test(laws, pieces_give_every_run_its_length_and_few_are_bought, 0,
		RANDOM_PLOTS);
	return suite;
}
