/* What is around the plot, and its levels, when the plan under them changes: by hand, as the plot's
 * file says it, and at random against a count side by side. */
#include "plot/edit/levels_move.h"
#include "plot/edit/rescale.h"
#include "plot/edit/resize.h"
#include "plot/edit/strip.h"
#include "plot/format/format.h"
#include "support/details.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

#define CASES runner_count(300, 20000)

/* Open ground in cells of a foot, and what follows it. */
static void plot_begin(struct plot *plot, int columns, int rows, const char *later)
{
	struct text text = TEXT_EMPTY;
	struct diag d = { 0 };

	text_print(&text, "parterre-plot 1\nunits imperial\ncell 1 ft\nground %d x %d\n", columns,
		rows);
	for (int y = 0; y < rows; y++) {
		text_add(&text, "  ");
		text_add_repeat(&text, OPEN_GROUND, (size_t)columns);
		text_add(&text, "\n");
	}
	text_add(&text, later);
	plot_init(plot);
	ck_assert_msg(format_read(text.bytes, text.length, plot, &d), "%d:%d: found %s, expected "
		"%s", d.line, d.column, d.found, d.expected);
	text_fini(&text);
}

static void check_resized(int columns, int rows, const char *later, struct margins margins,
	const char *expected)
{
	struct plot plot;

	plot_begin(&plot, columns, rows, later);
	resize_plot(&plot, &margins);
	plot_check_later(&plot, expected);
	plot_fini(&plot);
}

#define AROUND "service water \"W\" existing\n  depth 30 in\n  line 0,2 6,2 6,4\n" \
	"finish 6,4 2 in\nfall 2 % towards 90\nhouse \"H\"\n  from -3,-2 to 1,0\n" \
	"tie 2,0 \"A\" 12 ft\ntie 6,4 \"B\" 3 ft\nkeep \"Pear\" 6 ft\n  at 3,3\n" \
	"keep \"Wall\"\n  from 5,0 to 6,4\ndrop 0,4\ntap 6,0\n"

START_TEST(all_of_it_moves_where_the_plan_grows)
{
	check_resized(6, 4, AROUND, (struct margins){ 2, 3, 1, 1 },
		"service water \"W\" existing\n  depth 30 in\n  line 2,5 8,5 8,7\n"
		"finish 8,7 2 in\nfall 2 % towards 90\nhouse \"H\"\n  from -1,1 to 3,3\n"
		"tie 4,3 \"A\" 12 ft\ntie 8,7 \"B\" 3 ft\nkeep \"Pear\" 6 ft\n  at 5,6\n"
		"keep \"Wall\"\n  from 7,3 to 8,7\ndrop 2,7\ntap 8,3\n");
	check_resized(6, 4, "house \"H\" 30 ft\n  from -3,-2 to 1,0\n"
		"shade \"Limes\" 42 ft\n  note \"In leaf\"\n  from 7,-2 to 9,1\n",
		(struct margins){ 2, 3, 1, 1 },
		"house \"H\" 30 ft\n  from -1,1 to 3,3\n"
		"shade \"Limes\" 42 ft\n  note \"In leaf\"\n  from 9,1 to 11,4\n");
}
END_TEST

/* What stands on the new edge stays, what is beyond it goes, but for rectangles. */
START_TEST(a_crop_cuts_services_and_takes_points_that_are_beyond)
{
	check_resized(6, 4, AROUND, (struct margins){ -2, 0, 0, -1 },
		"service water \"W\" existing\n  depth 30 in\n  line 0,2 4,2 4,3\n"
		"fall 2 % towards 90\nhouse \"H\"\n  from -5,-2 to -1,0\n"
		"tie 0,0 \"A\" 12 ft\nkeep \"Pear\" 6 ft\n  at 1,3\n"
		"keep \"Wall\"\n  from 3,0 to 4,4\ntap 4,0\n");
	check_resized(6, 4, AROUND, (struct margins){ 0, 0, -4, 0 },
		"service water \"W\" existing\n  depth 30 in\n  line 0,2 2,2\n"
		"fall 2 % towards 90\nhouse \"H\"\n  from -3,-2 to 1,0\n"
		"tie 2,0 \"A\" 12 ft\nkeep \"Wall\"\n  from 5,0 to 6,4\ndrop 0,4\n");
}
END_TEST

START_TEST(a_route_that_is_cut_in_the_middle_becomes_two)
{
	check_resized(6, 4, "service gas \"G\" to-lay\n  line 1,4 1,0 3,0 3,4 5,4\n"
		"  line 0,0 6,0\n", (struct margins){ 0, -1, 0, 0 },
		"service gas \"G\" to-lay\n  line 1,3 1,0\n  line 3,0 3,3 5,3\n");
	check_resized(6, 4, "service gas \"G\" to-lay\n  line 0,0 6,0\n",
		(struct margins){ 0, -1, 0, 0 }, "service gas \"G\" to-lay\n");
}
END_TEST

START_TEST(a_rectangle_stays_however_far_off_it_is)
{
	check_resized(6, 4, "keep \"K\"\n  from 4090,-4096 to 4094,-4090\n",
		(struct margins){ 4, -2, 0, 0 }, "keep \"K\"\n  from 4094,-4096 to 4096,-4092\n");
	check_resized(6, 4, "keep \"K\"\n  from 4090,-4096 to 4094,-4095\n",
		(struct margins){ 40, -2, 0, 0 }, "keep \"K\"\n  from 4095,-4096 to 4096,-4095\n");
}
END_TEST

START_TEST(what_a_crop_would_take_is_told_before)
{
	struct plot plot;
	struct around_loss loss;

	plot_begin(&plot, 6, 4, AROUND);
	loss = resize_around_loss(&plot, &(struct margins){ 1, 1, 1, 1 });
	ck_assert_int_eq(loss.service_sides + loss.circles + loss.ties, 0);
	ck_assert(!loss.has_drop && !loss.has_tap && !loss.has_level);
	loss = resize_around_loss(&plot, &(struct margins){ -4, 0, 0, -1 });
	ck_assert_int_eq(loss.service_sides, 5);
	ck_assert_int_eq(loss.circles, 1);
	ck_assert_int_eq(loss.ties, 2);
	ck_assert(loss.has_drop && loss.has_level);
	loss = resize_around_loss(&plot, &(struct margins){ 0, 0, -1, 0 });
	ck_assert(loss.has_tap && !loss.has_drop);
	plot_check_later(&plot, AROUND);
	plot_fini(&plot);
}
END_TEST

static void check_strip(const char *later, struct strip strip, const char *expected)
{
	struct plot plot;

	plot_begin(&plot, 6, 4, later);
	ck_assert_int_eq(strip_check(&plot, &strip), STRIP_FITS);
	strip_do(&plot, &strip);
	plot_check_later(&plot, expected);
	plot_fini(&plot);
}

START_TEST(a_strip_moves_what_is_beyond_it_and_draws_out_what_crosses_it)
{
	check_strip(AROUND, (struct strip){ .cell = 2, .count = 3 },
		"service water \"W\" existing\n  depth 30 in\n  line 0,2 9,2 9,4\n"
		"finish 9,4 2 in\nfall 2 % towards 90\nhouse \"H\"\n  from -3,-2 to 1,0\n"
		"tie 2,0 \"A\" 12 ft\ntie 9,4 \"B\" 3 ft\nkeep \"Pear\" 6 ft\n  at 6,3\n"
		"keep \"Wall\"\n  from 8,0 to 9,4\ndrop 0,4\ntap 9,0\n");
	check_strip("house \"H\"\n  from 8,1 to 9,2\nhouse \"I\" 9 ft\n  from -5,1 to -1,2\n"
		"shade \"S\" 20 ft\n  from 4,-2 to 7,1\n",
		(struct strip){ .cell = 5, .count = 1 },
		"house \"H\"\n  from 9,1 to 10,2\nhouse \"I\" 9 ft\n  from -5,1 to -1,2\n"
		"shade \"S\" 20 ft\n  from 4,-2 to 8,1\n");
	check_strip(AROUND, (struct strip){ .is_level = true, .cell = 0, .count = 1 },
		"service water \"W\" existing\n  depth 30 in\n  line 0,3 6,3 6,5\n"
		"finish 6,5 2 in\nfall 2 % towards 90\nhouse \"H\"\n  from -3,-2 to 1,0\n"
		"tie 2,0 \"A\" 12 ft\ntie 6,5 \"B\" 3 ft\nkeep \"Pear\" 6 ft\n  at 3,4\n"
		"keep \"Wall\"\n  from 5,0 to 6,5\ndrop 0,5\ntap 6,0\n");
}
END_TEST

/* A leg that loses its length is none, a rectangle keeps one cell. */
START_TEST(a_strip_that_is_taken_out_takes_no_thing_with_it)
{
	check_strip("service gas \"G\" existing\n  line 1,0 1,2 3,2 3,4\n  line 1,1 2,1\n"
		"keep \"Bin\"\n  from 1,1 to 3,2\nkeep \"Pear\" 6 ft\n  at 2,3\n",
		(struct strip){ .is_out = true, .cell = 1, .count = 2 },
		"service gas \"G\" existing\n  line 1,0 1,2 1,4\n"
		"keep \"Bin\"\n  from 1,1 to 2,2\nkeep \"Pear\" 6 ft\n  at 1,3\n");
}
END_TEST

static void check_rescaled(const char *later, nm cell, bool is_kept, const char *expected)
{
	struct rescale rescale;
	struct plot plot;

	plot_begin(&plot, 6, 4, later);
	rescale = rescale_of(&plot, cell);
	ck_assert_int_eq(rescale_keeps_around(&rescale, &plot), is_kept);
	rescale_plot(&plot, &rescale);
	plot_check_later(&plot, expected);
	plot_fini(&plot);
}

START_TEST(other_cells_have_it_at_the_nearest_points_and_lengths_stay)
{
	check_rescaled(AROUND, NM_PER_FOOT / 2, true,
		"service water \"W\" existing\n  depth 30 in\n  line 0,4 12,4 12,8\n"
		"finish 12,8 2 in\nfall 2 % towards 90\nhouse \"H\"\n  from -6,-4 to 2,0\n"
		"tie 4,0 \"A\" 12 ft\ntie 12,8 \"B\" 3 ft\nkeep \"Pear\" 6 ft\n  at 6,6\n"
		"keep \"Wall\"\n  from 10,0 to 12,8\ndrop 0,8\ntap 12,0\n");
	check_rescaled("tie 2,3 \"A\" 12 ft\nkeep \"K\"\n  from -3,1 to 7,2\nkeep \"Bin\"\n"
		"  from 0,0 to 1,1\ndrop 4,0\n", 3 * NM_PER_FOOT, false,
		"tie 1,1 \"A\" 12 ft\nkeep \"K\"\n  from -1,0 to 2,1\nkeep \"Bin\"\n"
		"  from 0,0 to 1,1\ndrop 1,0\n");
}
END_TEST

/* Each kind of thing is asked for. */
START_TEST(a_point_between_the_new_ones_is_noticed)
{
	static const char *const off[] = { "service gas \"G\" existing\n  line 0,0 1,0\n",
		"service gas \"G\" existing\n  line 0,0 0,2 1,2\n", "finish 2,1 0 in\n",
		"house \"H\"\n  from -1,0 to 2,2\n", "keep \"K\"\n  from 0,0 to 2,7\n",
		"keep \"K\" 1 ft\n  at 1,2\n", "tie 0,3 \"A\" 1 ft\n", "drop 1,0\n",
		"tap 1,0\n" };
	struct rescale rescale;
	struct plot plot;

	for (size_t i = 0; i < sizeof off / sizeof *off; i++) {
		plot_begin(&plot, 6, 4, off[i]);
		rescale = rescale_of(&plot, 2 * NM_PER_FOOT);
		ck_assert_msg(!rescale_keeps_around(&rescale, &plot), "%s", off[i]);
		rescale = rescale_of(&plot, NM_PER_FOOT / 3);
		ck_assert_msg(rescale_keeps_around(&rescale, &plot), "%s", off[i]);
		plot_fini(&plot);
	}
}
END_TEST

/* ---- At random ------------------------------------------------------------------------------- */

/* How often services lie along each side of a cell: [upright][y][x], from grid point x,y on. */
enum { GRID = 64 };
static int sides[2][2][GRID][GRID];

static void count_sides(const struct plot *plot, int (*counts)[GRID][GRID])
{
	struct legs legs = LEGS_EMPTY;

	memset(counts, 0, 2 * sizeof *counts);
	services_legs(&plot->details.around.services, &legs);
	for (size_t i = 0; i < legs.count; i++) {
		struct leg leg = leg_forward(legs.items[i]);
		bool is_upright = leg_is_upright(leg);

		for (int j = 0; j < leg_length(leg); j++)
			counts[is_upright][leg.from.y + (is_upright ? j : 0)]
				[leg.from.x + (is_upright ? 0 : j)]++;
	}
	legs_fini(&legs);
}

static int64_t legs_of_all(const struct plot *plot)
{
	struct legs legs = LEGS_EMPTY;
	int64_t length;

	services_legs(&plot->details.around.services, &legs);
	length = legs_length(&legs);
	legs_fini(&legs);
	return length;
}

/* None so far off that it could not be moved. */
static void obstacles_near(struct obstacles *obstacles)
{
	for (size_t i = 0; i < obstacles->count; i++) {
		struct rectangle *r = &obstacles->items[i].cells;

		r->left %= 100, r->top %= 100;
		r->right = r->left + 3, r->bottom = r->top + 7;
	}
}

static struct margins margins_at_random(struct random *random, const struct ground *ground)
{
	int left = random_between(random, 1 - ground->columns, 8);
	int top = random_between(random, 1 - ground->rows, 8);
	int columns = ground->columns + left, rows = ground->rows + top;

	return (struct margins){ left, top, random_between(random, 1 - (columns > 0 ? columns : 0),
		8), random_between(random, 1 - (rows > 0 ? rows : 0), 8) };
}

START_TEST(of_services_all_sides_stay_that_are_on_the_new_plan)
{
	for (uint64_t seed = 0; seed < (uint64_t)CASES; seed++) {
		struct random random = { seed };
		struct plot plot;
		struct margins m;
		int64_t before = 0, after = 0;
		struct around_loss loss;

		whole_plot_at_random(&plot, &random, 20);
		m = margins_at_random(&random, &plot.ground);
		loss = resize_around_loss(&plot, &m);
		count_sides(&plot, sides[0]);
		resize_plot(&plot, &m);
		plot_check(&plot);
		count_sides(&plot, sides[1]);
		for (int i = 0; i < 2 * GRID * GRID; i++) {
			int up = i / GRID / GRID, y = i / GRID % GRID, x = i % GRID;
			int to_x = x + m.left, to_y = y + m.top;
			bool stays = to_x >= 0 && to_y >= 0 &&
				to_x + !up <= plot.ground.columns && to_y + up <= plot.ground.rows;

			before += sides[0][up][y][x];
			after += sides[1][up][y][x];
			if (stays && to_x < GRID && to_y < GRID)
				ck_assert_msg(sides[1][up][to_y][to_x] == sides[0][up][y][x],
					"seed %d at %d,%d", (int)seed, x, y);
			else
				after += sides[0][up][y][x];
		}
		ck_assert_msg(before == after, "seed %d", (int)seed);
		ck_assert_msg(loss.service_sides == before - legs_of_all(&plot), "seed %d",
			(int)seed);
		plot_fini(&plot);
	}
}
END_TEST

/* Nothing is cut then; how levels come back is looked at in test_levels_move.c. */
START_TEST(growing_and_cropping_again_gives_it_all_back)
{
	for (uint64_t seed = 0; seed < (uint64_t)CASES; seed++) {
		struct random random = { seed };
		struct margins m = { random_below(&random, 9), random_below(&random, 9),
			random_below(&random, 9), random_below(&random, 9) };
		struct plot plot, grown;

		whole_plot_at_random(&plot, &random, 20);
		obstacles_near(&plot.details.around.houses);
		obstacles_near(&plot.details.around.shades);
		obstacles_near(&plot.details.around.kept);
		levels_fini(&plot.details.levels);
		grown = (struct plot){ details_copy(&plot.details), ground_copy(&plot.ground) };
		resize_plot(&grown, &m);
		plot_check(&grown);
		resize_plot(&grown, &(struct margins){ -m.left, -m.top, -m.right, -m.bottom });
		ck_assert_msg(surroundings_equal(&plot.details.around, &grown.details.around) &&
			finish_equal(&plot.details.finish, &grown.details.finish), "seed %d",
			(int)seed);
		plot_fini(&plot);
		plot_fini(&grown);
	}
}
END_TEST

START_TEST(strips_and_other_cells_leave_a_plot_that_can_be_saved)
{
	for (uint64_t seed = 0; seed < (uint64_t)CASES; seed++) {
		struct random random = { seed };
		struct plot plot;
		struct strip strip;
		struct rescale rescale;

		whole_plot_at_random(&plot, &random, 20);
		strip = (struct strip){ random_below(&random, 2), random_below(&random, 2),
			random_below(&random, 4) == 0, 0, random_between(&random, 1, 4) };
		strip.cell = random_below(&random,
			strip.is_level ? plot.ground.rows : plot.ground.columns);
		if (strip_check(&plot, &strip) == STRIP_FITS)
			strip_do(&plot, &strip);
		plot_check(&plot);
		rescale = rescale_of(&plot, random_between(&random, 1, 120) * NM_PER_INCH);
		if (rescale_fits(&rescale))
			rescale_plot(&plot, &rescale);
		plot_check(&plot);
		plot_fini(&plot);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("surroundings move");
	TCase *hand = suite_case(suite, "by hand"), *random = suite_case(suite, "at random");

	tcase_add_test(hand, all_of_it_moves_where_the_plan_grows);
	tcase_add_test(hand, a_crop_cuts_services_and_takes_points_that_are_beyond);
	tcase_add_test(hand, a_route_that_is_cut_in_the_middle_becomes_two);
	tcase_add_test(hand, a_rectangle_stays_however_far_off_it_is);
	tcase_add_test(hand, what_a_crop_would_take_is_told_before);
	tcase_add_test(hand, a_strip_moves_what_is_beyond_it_and_draws_out_what_crosses_it);
	tcase_add_test(hand, a_strip_that_is_taken_out_takes_no_thing_with_it);
	tcase_add_test(hand, other_cells_have_it_at_the_nearest_points_and_lengths_stay);
	tcase_add_test(hand, a_point_between_the_new_ones_is_noticed);
	tcase_add_test(random, of_services_all_sides_stay_that_are_on_the_new_plan);
	tcase_add_test(random, growing_and_cropping_again_gives_it_all_back);
	tcase_add_test(random, strips_and_other_cells_leave_a_plot_that_can_be_saved);
	return suite;
}
