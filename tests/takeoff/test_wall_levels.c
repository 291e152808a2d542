/* How high walls stand on falling ground: by hand, and at random against a naive reading of the
 * ground. Common practice, no published source. */
#include "takeoff/walls/wall_levels.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#define FT NM_PER_FOOT
#define IN NM_PER_INCH
#define CASES runner_count(60, 3000)

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* Imperial, cells of 1 ft. The bed's block is 12 x 8 x 6 in, its embed 4 in, its base 5 in, unless
 * `bed` says otherwise. */
#define HEAD "parterre-plot 1\nunits imperial\ncell 1 ft\n"
#define BED "bed b \"Bed\"\n  block 12 in x 8 in x 6 in\n"

static void make(struct garden *out, const char *bed, const char *ground, const char *lines)
{
	char text[4096];

	snprintf(text, sizeof text, HEAD BED "%s\nground %s%s", bed, ground, lines);
	plot_from_text(&out->plot, text);
	garden_count(out);
}

static void given(const char *bed, const char *ground, const char *lines)
{
	garden_fini(&garden);
	make(&garden, bed, ground, lines);
}

#define USUAL "  courses 3\n  embed 4 in\n  base 5 in\n"
#define GROUND "8 x 8\n  ........\n  .bbbbbb.\n  .bbbbbb.\n  .bbbbbb.\n  .bbbbbb.\n" \
	"  .bbbbbb.\n  .bbbbbb.\n  ........\n"

static const struct wall_level *level(void)
{
	ck_assert_int_eq(garden.takeoff.wall_levels.count, 1);
	return garden.takeoff.wall_levels.list;
}

#define drop_is(actual, inches) \
	ck_assert_int_eq(actual, llround((inches) * (double)NM_PER_INCH))

/* ---- By hand --------------------------------------------------------------------------------- */

/* Drops at the corners of 8 x 8 ft: 2, 6 / 4, 12 in. At 1 ft and 7 ft of 8 each way, with u, v in
 * eighths: 2 + 4u + 2v + 4uv.
 *
 *	1,1   2 + 0.5 + 0.25 + 4 / 64   = 2.8125
 *	7,1   2 + 3.5 + 0.25 + 28 / 64  = 6.1875
 *	7,7   2 + 3.5 + 1.75 + 196 / 64 = 10.3125
 *	1,7   2 + 0.5 + 1.75 + 28 / 64  = 4.6875
 *
 * Base's top 10.3125 + 4 = 14.3125, formation 5 in more: 19.3125, course 1 6 in less: 8.3125, the
 * top of 3 courses 18 in less: -3.6875. Exposed: ground + 3.6875. */
START_TEST(a_wall_is_level_and_has_its_embed_where_the_ground_is_lowest)
{
	static const struct {
		nm x, y;
		double ground, exposed;
	} corners[] = {
		{ 1, 1, 2.8125, 6.5 }, { 7, 1, 6.1875, 9.875 }, { 7, 7, 10.3125, 14 },
		{ 1, 7, 4.6875, 8.375 },
	};
	const struct wall_level *wall;

	given(USUAL, GROUND, "levels 8 ft\n  2 in, 6 in\n  4 in, 12 in\n");
	wall = level();
	ck_assert_int_eq(wall->region, 0);
	drop_is(wall->highest, 2.8125);
	drop_is(wall->lowest, 10.3125);
	drop_is(wall->base, 14.3125);
	drop_is(wall->formation, 19.3125);
	drop_is(wall->first, 8.3125);
	drop_is(wall->top, -3.6875);
	ck_assert_int_eq(wall->corner_count, 4);
	for (int i = 0; i < 4; i++) {
		const struct bed_corner *corner = &wall->corners[i];

		ck_assert_int_eq(corner->at.x, corners[i].x * FT);
		ck_assert_int_eq(corner->at.y, corners[i].y * FT);
		drop_is(corner->ground, corners[i].ground);
		drop_is(corner->exposed, corners[i].exposed);
	}
}
END_TEST

START_TEST(a_cap_is_the_top_of_the_wall)
{
	given(USUAL "  cap 12 in x 8 in x 2 in\n", GROUND,
		"levels 8 ft\n  10 in, 10 in\n  10 in, 10 in\n");
	/* base's top 14, 18 in of wall and 2 of cap */
	drop_is(level()->top, -6);
	drop_is(level()->first, 8);
	drop_is(level()->corners[0].exposed, 16);
}
END_TEST

/* 6 % of a foot is 0.72 in. The finished ground counts, not that as it is. */
START_TEST(walls_go_by_the_finished_ground)
{
	given(USUAL, GROUND, "levels 8 ft\n  30 in, 30 in\n  50 in, 50 in\n"
		"finish 0,0 10 in\nfall 6 % towards 90\n");
	drop_is(level()->highest, 10.72);
	drop_is(level()->lowest, 10 + 7 * 0.72);
	drop_is(level()->base, 10 + 7 * 0.72 + 4);
}
END_TEST

/* The ground dips under the middle of a side: 9 in at 4,0 of 8, 2 in all else on that row. At 4,1
 * it is 9 - 7 / 4 = 7.25; row 4 is at 2. */
START_TEST(the_lowest_ground_may_be_between_two_corners)
{
	given(USUAL, GROUND,
		"levels 4 ft\n  2 in, 9 in, 2 in\n  2 in, 2 in, 2 in\n  2 in, 2 in, 2 in\n");
	drop_is(level()->lowest, 7.25);
	drop_is(level()->base, 11.25);
	drop_is(level()->highest, 2);
}
END_TEST

/* 1 in down for each foot across. The mean of an L's ground is that of its own cells: 32 at 4 in,
 * 16 at 2 in, 3 1/3 in; it is lowest at 8 in. Of all 8 x 8 ft it would be 4 in. */
START_TEST(ground_beside_an_l_is_not_in_its_mean)
{
	given(USUAL, "8 x 8\n  bbbbbbbb\n  bbbbbbbb\n  bbbbbbbb\n  bbbbbbbb\n  bbbb....\n"
		"  bbbb....\n  bbbb....\n  bbbb....\n",
		"\nlevels 8 ft\n  0 in, 8 in\n  0 in, 8 in\n");
	drop_is(level()->lowest, 8);
	drop_is(level()->rise, 8 - 10 / 3.0);
}
END_TEST

/* Cells of 4 ft, arms of one: by 1 in a foot, 2 and 10 in thrice and 6 in once. A bed of one cell
 * has its middle at 2 in, and its lowest ground at 4 in. */
START_TEST(cells_that_stand_alone_in_their_rows_are_in_the_mean)
{
	given(USUAL, "3 x 3\n  b.b\n  b.b\n  bbb\n", "levels 12 ft\n  0 in, 12 in\n"
		"  0 in, 12 in\n");
	plot_set(&garden.plot, 0, HEAD_CELL, "4 ft");
	garden_count(&garden);
	drop_is(level()->rise, 12 - 42 / 7.0);
	given(USUAL, "1 x 1\n  b\n", "levels 4 ft\n  0 in, 4 in\n  0 in, 4 in\n");
	plot_set(&garden.plot, 0, HEAD_CELL, "4 ft");
	garden_count(&garden);
	drop_is(level()->rise, 2);
}
END_TEST

/* Round the hole, 4,4 to 8,8 of 12 x 12 ft, the ground is at 0 in, round the bed at 8 in. */
START_TEST(corners_of_holes_count_too)
{
	given(USUAL, "12 x 12\n  bbbbbbbbbbbb\n  bbbbbbbbbbbb\n  bbbbbbbbbbbb\n  bbbbbbbbbbbb\n"
		"  bbbb....bbbb\n  bbbb....bbbb\n  bbbb....bbbb\n  bbbb....bbbb\n"
		"  bbbbbbbbbbbb\n  bbbbbbbbbbbb\n  bbbbbbbbbbbb\n  bbbbbbbbbbbb\n",
		"levels 4 ft\n  8 in, 8 in, 8 in, 8 in\n  8 in, 0 in, 0 in, 8 in\n"
		"  8 in, 0 in, 0 in, 8 in\n  8 in, 8 in, 8 in, 8 in\n");
	ck_assert_int_eq(level()->corner_count, 8);
	drop_is(level()->highest, 0);
	drop_is(level()->lowest, 8);
	ck_assert_int_eq(level()->corners[4].at.x, 4 * FT);
	ck_assert_int_eq(level()->corners[4].at.y, 4 * FT);
	/* top 8 + 4 - 18 = -6 */
	drop_is(level()->corners[4].exposed, 6);
	drop_is(level()->corners[0].exposed, 14);
}
END_TEST

START_TEST(ground_may_stand_over_a_wall)
{
	given("  courses 1\n  embed 4 in\n  base 5 in\n", GROUND,
		"levels 8 ft\n  0 in, 8 in\n  0 in, 8 in\n");
	/* 1 and 7 in along it: base's top 11 in, wall's top 5 in */
	drop_is(level()->top, 5);
	drop_is(level()->corners[0].exposed, -4);
	drop_is(level()->corners[1].exposed, 2);
}
END_TEST

/* ---- The rule's edge ------------------------------------------------------------------------- */

static const struct snag *step(void)
{
	return garden_snag(&garden, SNAG_WALL_STEP, 0);
}

/* 8 in over 8 ft are 6 in over the 6 ft of the bed: a course. */
START_TEST(a_fall_of_a_course_has_the_wall_step)
{
	given(USUAL, GROUND, "levels 8 ft\n  2 in, 10 in\n  2 in, 10 in\n");
	ck_assert_ptr_nonnull(step());
	ck_assert_int_eq(step()->region, 0);
	ck_assert_str_eq(garden_sentence(&garden, step()), "The ground along this wall falls by "
		"6 in, a course of 6 in or more: the wall must step.");
}
END_TEST

START_TEST(a_fall_of_less_has_not)
{
	given(USUAL, GROUND, "levels 8 ft\n  2 in, 9 63/64 in\n  2 in, 9 63/64 in\n");
	ck_assert_ptr_null(step());
	plot_set(&garden.plot, 'b', BED_BLOCK, "12 in x 8 in x 5 7/8 in");
	garden_count(&garden);
	ck_assert_ptr_nonnull(step());
}
END_TEST

/* ---- Where there is nothing to tell ---------------------------------------------------------- */

START_TEST(without_levels_there_is_nothing_to_tell)
{
	given(USUAL, GROUND, "");
	ck_assert_int_eq(garden.takeoff.wall_levels.count, 0);
	ck_assert_int_eq(garden.takeoff.wall_levels.corner_count, 0);
	ck_assert_ptr_null(wall_level_of(&garden.takeoff.wall_levels, 0));
	/* nor of a fall away from a house that is not there */
	given(USUAL, GROUND, "fall 5 % away\n");
	ck_assert_int_eq(garden.takeoff.wall_levels.count, 0);
}
END_TEST

START_TEST(a_wall_that_is_not_laid_out_has_no_levels)
{
	given(USUAL, "8 x 4\n  b.bbbbbb\n  ..bbbbbb\n  ..bbbbbb\n  ..bbbbbb\n",
		"levels 8 ft\n  0 in, 1 in\n  0 in, 1 in\n");
	ck_assert_int_eq(garden.takeoff.walls.not_laid_count, 1);
	ck_assert_int_eq(level()->region, 1);
	ck_assert_ptr_null(wall_level_of(&garden.takeoff.wall_levels, 0));
	ck_assert_ptr_eq(wall_level_of(&garden.takeoff.wall_levels, 1), level());
}
END_TEST

static bool are_items_equal(const struct item_list *a, const struct item_list *b)
{
	bool is_equal = a->count == b->count;

	for (size_t i = 0; is_equal && i < a->count; i++)
		is_equal = a->list[i].good == b->list[i].good &&
			a->list[i].laid == b->list[i].laid &&
			a->list[i].order == b->list[i].order;
	return is_equal;
}

START_TEST(on_level_ground_all_is_as_without_levels)
{
	struct garden flat = { .has_book = false };

	make(&flat, USUAL, GROUND, "levels 8 ft\n  7 in, 7 in\n  7 in, 7 in\n");
	given(USUAL, GROUND, "");
	ck_assert(are_items_equal(&garden.takeoff.items, &flat.takeoff.items));
	ck_assert_uint_eq(garden.takeoff.snags.count, flat.takeoff.snags.count);
	for (int i = 0; i < 4; i++) /* 18 in less the embed */
		drop_is(flat.takeoff.wall_levels.corners[i].exposed, 14);
	garden_fini(&flat);
}
END_TEST

/* ---- At random ------------------------------------------------------------------------------- */

enum { CELLS = 16, DROPS = 5 }; /* levels every 4 cells */

/* A plan of 16 x 16 cells with beds in rectangles, and 5 x 5 drops. */
struct falling {
	char ground[CELLS][CELLS + 1];
	int drops[DROPS][DROPS]; /* in */
};

static void falling_at_random(struct falling *falling, struct random *random)
{
	int most = random_between(random, 2, 30);

	memset(falling, 0, sizeof *falling);
	for (int y = 0; y < CELLS; y++) {
		memset(falling->ground[y], '.', CELLS);
		falling->ground[y][CELLS] = '\0';
	}
	for (int i = random_between(random, 1, 4); i > 0; i--) {
		int left = random_below(random, CELLS - 4), top = random_below(random, CELLS - 4);
		int right = left + random_between(random, 3, 7);
		int bottom = top + random_between(random, 3, 7);

		for (int y = top; y <= bottom && y < CELLS; y++)
			for (int x = left; x <= right && x < CELLS; x++)
				falling->ground[y][x] = 'b';
	}
	for (int y = 0; y < DROPS; y++)
		for (int x = 0; x < DROPS; x++)
			falling->drops[y][x] = random_below(random, most);
}

static void count_falling(struct garden *out, const struct falling *falling)
{
	char text[4096];
	int n = snprintf(text, sizeof text, HEAD BED USUAL "ground 16 x 16\n");

	for (int y = 0; y < CELLS; y++)
		n += snprintf(text + n, sizeof text - (size_t)n, "  %s\n", falling->ground[y]);
	n += snprintf(text + n, sizeof text - (size_t)n, "levels 4 ft\n");
	for (int y = 0; y < DROPS; y++)
		for (int x = 0; x < DROPS; x++)
			n += snprintf(text + n, sizeof text - (size_t)n, "%s%d in%s",
				x ? ", " : "  ", falling->drops[y][x], x == DROPS - 1 ? "\n" : "");
	plot_from_text(&out->plot, text);
	garden_count(out);
}

/* In inches, between the four drops around. */
static double naive_drop(const struct falling *falling, int x, int y)
{
	int column = x / 4 < DROPS - 1 ? x / 4 : DROPS - 2;
	int row = y / 4 < DROPS - 1 ? y / 4 : DROPS - 2;
	double u = (x - 4 * column) / 4.0, v = (y - 4 * row) / 4.0;
	const int *above = &falling->drops[row][column], *below = &falling->drops[row + 1][column];

	return (1 - v) * ((1 - u) * above[0] + u * above[1]) +
		v * ((1 - u) * below[0] + u * below[1]);
}

static bool is_of(const struct garden *at, int region, int x, int y)
{
	return x >= 0 && y >= 0 && x < CELLS && y < CELLS &&
		survey_region_at(&at->takeoff.survey, x, y) == region;
}

/* Looks at every grid point of the bed that has other ground beside it: where drops are at every
 * fourth, ground bends nowhere else along sides of cells. */
static void check_naively(const struct garden *at, const struct falling *falling,
	const struct wall_level *wall, int seed)
{
	double lowest = -1, highest = 1000;

	for (int y = 0; y <= CELLS; y++)
		for (int x = 0; x <= CELLS; x++) {
			int around = is_of(at, wall->region, x - 1, y - 1) +
				is_of(at, wall->region, x, y - 1) +
				is_of(at, wall->region, x - 1, y) + is_of(at, wall->region, x, y);

			if (around == 0 || around == 4)
				continue;
			lowest = fmax(lowest, naive_drop(falling, x, y));
			highest = fmin(highest, naive_drop(falling, x, y));
		}
	ck_assert_msg(fabs((double)wall->lowest / (double)IN - lowest) < 1e-6 &&
		fabs((double)wall->highest / (double)IN - highest) < 1e-6, "seed %d", seed);
	ck_assert_msg(wall->base == wall->lowest + 4 * IN && wall->top == wall->base - 18 * IN &&
		wall->formation == wall->base + 5 * IN, "seed %d", seed);
	for (int i = 0; i < wall->corner_count; i++) {
		const struct bed_corner *corner = &wall->corners[i];
		double drop = naive_drop(falling, (int)(corner->at.x / FT),
			(int)(corner->at.y / FT));

		ck_assert_msg(fabs((double)corner->ground / (double)IN - drop) < 1e-6 &&
			corner->exposed == corner->ground - wall->top &&
			corner->exposed <= 14 * IN, "seed %d", seed);
	}
}

static bool has_step(const struct garden *at, int region)
{
	const struct snag *snag;

	for (int i = 0; (snag = garden_snag(at, SNAG_WALL_STEP, i)) != NULL; i++)
		if (snag->region == region)
			return true;
	return false;
}

START_TEST(levels_are_as_the_ground_read_naively)
{
	int walls = 0, steps = 0;

	for (int seed = 0; seed < CASES; seed++) {
		struct random random = { (uint64_t)seed };
		const struct wall_levels *levels = &garden.takeoff.wall_levels;
		struct falling falling;

		garden_fini(&garden);
		falling_at_random(&falling, &random);
		count_falling(&garden, &falling);
		ck_assert_int_eq(levels->count, garden.takeoff.walls.count);
		for (int i = 0; i < levels->count; i++, walls++) {
			const struct wall_level *wall = &levels->list[i];

			check_naively(&garden, &falling, wall, seed);
			ck_assert_msg(has_step(&garden, wall->region) ==
				(wall->lowest - wall->highest >= 6 * IN), "seed %d", seed);
			steps += has_step(&garden, wall->region);
		}
	}
	ck_assert(steps > 0 && steps < walls);
}
END_TEST

static void turn_round(struct falling *to, const struct falling *from)
{
	for (int y = 0; y < CELLS; y++) {
		for (int x = 0; x < CELLS; x++)
			to->ground[y][x] = from->ground[y][CELLS - 1 - x];
		to->ground[y][CELLS] = '\0';
	}
	for (int y = 0; y < DROPS; y++)
		for (int x = 0; x < DROPS; x++)
			to->drops[y][x] = from->drops[y][DROPS - 1 - x];
}

/* The levels of a bed in the other plan that holds the image of this one's first cell. */
static const struct wall_level *image_of(const struct garden *at, const struct garden *mirrored,
	const struct wall_level *wall)
{
	struct place cell = at->takeoff.survey.regions[wall->region].first_cell;

	return wall_level_of(&mirrored->takeoff.wall_levels, survey_region_at(
		&mirrored->takeoff.survey, CELLS - 1 - cell.x, cell.y));
}

START_TEST(images_in_a_mirror_have_the_same_levels)
{
	for (int seed = 0; seed < CASES; seed++) {
		struct random random = { (uint64_t)seed };
		struct garden mirrored = { .has_book = false };
		struct falling falling, image;

		garden_fini(&garden);
		falling_at_random(&falling, &random);
		turn_round(&image, &falling);
		count_falling(&garden, &falling);
		count_falling(&mirrored, &image);
		for (int i = 0; i < garden.takeoff.wall_levels.count; i++) {
			const struct wall_level *one = &garden.takeoff.wall_levels.list[i];
			const struct wall_level *two = image_of(&garden, &mirrored, one);

			ck_assert_msg(two && one->lowest == two->lowest && one->top == two->top &&
				one->highest == two->highest && one->formation == two->formation &&
				one->corner_count == two->corner_count, "seed %d", seed);
		}
		garden_fini(&mirrored);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("wall_levels");
	TCase *hand = suite_case(suite, "hand");
	TCase *random = suite_case(suite, "random");

	tcase_add_checked_fixture(hand, NULL, teardown);
	tcase_add_test(hand, a_wall_is_level_and_has_its_embed_where_the_ground_is_lowest);
	tcase_add_test(hand, a_cap_is_the_top_of_the_wall);
	tcase_add_test(hand, walls_go_by_the_finished_ground);
	tcase_add_test(hand, the_lowest_ground_may_be_between_two_corners);
	tcase_add_test(hand, ground_beside_an_l_is_not_in_its_mean);
	tcase_add_test(hand, cells_that_stand_alone_in_their_rows_are_in_the_mean);
	tcase_add_test(hand, corners_of_holes_count_too);
	tcase_add_test(hand, ground_may_stand_over_a_wall);
	tcase_add_test(hand, a_fall_of_a_course_has_the_wall_step);
	tcase_add_test(hand, a_fall_of_less_has_not);
	tcase_add_test(hand, without_levels_there_is_nothing_to_tell);
	tcase_add_test(hand, a_wall_that_is_not_laid_out_has_no_levels);
	tcase_add_test(hand, on_level_ground_all_is_as_without_levels);
	tcase_add_checked_fixture(random, NULL, teardown);
	tcase_add_test(random, levels_are_as_the_ground_read_naively);
	tcase_add_test(random, images_in_a_mirror_have_the_same_levels);
	return suite;
}
