/* Cells of another side under the same plot. What lies where is checked against a plain search
 * for the old cell that holds a middle, and the mirror by counting its faults anew. */
#include "base/memory.h"
#include "plot/edit/lay.h"
#include "plot/edit/rescale.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

static const char *const small[] = {
	"b..",
	"bpp",
	NULL
};

static void rescale_to(struct plot *plot, nm cell)
{
	struct rescale rescale = rescale_of(plot, cell);

	ck_assert(rescale_fits(&rescale));
	rescale_plot(plot, &rescale);
	plot_check(plot);
	ck_assert_int_eq(plot_cell(plot), cell);
}

static void check_ground(const struct plot *plot, int columns, const char *expected)
{
	const struct ground *ground = &plot->ground;

	ck_assert_int_eq(ground->columns, columns);
	ck_assert_uint_eq(strlen(expected), (size_t)ground->columns * (size_t)ground->rows);
	ck_assert_msg(memcmp(ground->cells, expected, strlen(expected)) == 0, "%.*s is not %s",
		ground->columns * ground->rows, ground->cells, expected);
}

START_TEST(halved_cells_make_four_of_each)
{
	struct plot plot;

	plot_from_rows(&plot, small);
	rescale_to(&plot, 6 * NM_PER_INCH);
	check_ground(&plot, 6, "bb...." "bb...." "bbpppp" "bbpppp");
	rescale_to(&plot, NM_PER_FOOT);
	check_ground(&plot, 3, "b.." "bpp");
	plot_fini(&plot);
}
END_TEST

START_TEST(an_edge_goes_to_the_nearest_line_of_the_new_cells)
{
	/* Old lines at 0, 12, 24, 36 in; new ones at every 8 in: 12 lies between 8 and 16 and the
	 * middle 12 counts to the side of the datum. */
	struct plot plot;

	plot_from_rows(&plot, (const char *const[]){ "abc", NULL });
	rescale_to(&plot, 8 * NM_PER_INCH);
	/* Middles at 4, 12, 20, 28, 36: the plan becomes 40 in by 8. */
	check_ground(&plot, 5, "aabcc" "aabcc");
	plot_fini(&plot);
}
END_TEST

/* Middles at 4, 12 and 20 in of a plan of 24: the second is on the axis both ways. In the upper
 * half it takes the cell at its left, in the lower half, which is the upper one turned, that at its
 * right. */
START_TEST(a_middle_on_the_axis_takes_the_cell_that_half_a_turn_gives_it)
{
	struct plot plot;

	plot_from_rows(&plot, (const char *const[]){ "ab", "cd", NULL });
	plot_set(&plot, 0, HEAD_MIRROR, "half-turn");
	rescale_to(&plot, 8 * NM_PER_INCH);
	check_ground(&plot, 3, "aab" "aad" "cdd");
	plot_fini(&plot);
}
END_TEST

START_TEST(a_plan_keeps_at_least_one_cell)
{
	struct plot plot;

	plot_from_rows(&plot, small);
	rescale_to(&plot, 120 * NM_PER_INCH);
	check_ground(&plot, 1, "p");
	plot_fini(&plot);
}
END_TEST

START_TEST(more_than_2048_cells_do_not_fit)
{
	struct plot plot;
	struct rescale rescale;

	plot_from_rows(&plot, small);
	ground_fini(&plot.ground);
	ground_init(&plot.ground, 512, 1);
	rescale = rescale_of(&plot, 3 * NM_PER_INCH);
	ck_assert_int_eq(rescale.across.new_count, 2048);
	ck_assert(rescale_fits(&rescale));
	rescale = rescale_of(&plot, 3 * NM_PER_INCH - 1000000);
	ck_assert_int_gt(rescale.across.new_count, 2048);
	ck_assert(!rescale_fits(&rescale));
	ground_fini(&plot.ground);
	ground_init(&plot.ground, 1, 513);
	rescale = rescale_of(&plot, 3 * NM_PER_INCH);
	ck_assert(!rescale_fits(&rescale));
	plot_fini(&plot);
}
END_TEST

START_TEST(a_set_axis_stays_where_it_is_to_the_nearest_half_cell)
{
	struct plot plot;
	struct place axis;

	plot_from_rows(&plot, (const char *const[]){ "abba..", "abba..", NULL });
	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	plot_set(&plot, 0, HEAD_AXIS, "4,1");
	rescale_to(&plot, 4 * NM_PER_INCH);
	axis = block_value(&plot.details.head, HEAD_AXIS)->as.place;
	ck_assert_int_eq(axis.x, 12);
	ck_assert_int_eq(axis.y, 3);
	rescale_to(&plot, 10 * NM_PER_INCH);
	axis = block_value(&plot.details.head, HEAD_AXIS)->as.place;
	/* 24 in and 6 in in half cells of 5 in: 4.8 and 1.2. */
	ck_assert_int_eq(axis.x, 5);
	ck_assert_int_eq(axis.y, 1);
	plot_fini(&plot);
}
END_TEST

START_TEST(an_unset_axis_stays_unset)
{
	struct plot plot;

	plot_from_rows(&plot, small);
	plot_set(&plot, 0, HEAD_MIRROR, "four-way");
	rescale_to(&plot, 5 * NM_PER_INCH);
	ck_assert(!block_value(&plot.details.head, HEAD_AXIS)->set);
	plot_fini(&plot);
}
END_TEST

START_TEST(the_cell_one_stands_on_is_found_again)
{
	struct plot plot;
	struct rescale rescale;
	struct place at;

	plot_from_rows(&plot, small);
	rescale = rescale_of(&plot, 4 * NM_PER_INCH);
	at = rescale_cell(&rescale, (struct place){ 1, 1 });
	ck_assert_int_eq(at.x, 4);
	ck_assert_int_eq(at.y, 4);
	rescale = rescale_of(&plot, 60 * NM_PER_INCH);
	at = rescale_cell(&rescale, (struct place){ 2, 1 });
	ck_assert_int_eq(at.x, 0);
	ck_assert_int_eq(at.y, 0);
	plot_fini(&plot);
}
END_TEST

/* ---- Laws, on plots at random --------------------------------------------------------------- */

static nm side_at_random(struct random *random)
{
	static const nm round[] = { NM_PER_INCH, 3 * NM_PER_INCH, 6 * NM_PER_INCH, NM_PER_FOOT,
		2 * NM_PER_FOOT, 100 * NM_PER_MM, 300 * NM_PER_MM, NM_PER_M };

	if (random_below(random, 3))
		return round[random_below(random, 8)];
	return NM_PER_INCH + random_below(random, 1000000000);
}

static struct value length_value(nm length)
{
	return (struct value){ .set = true, .as.length = length };
}

/* A drawn plot with a cell, a mirror that everything obeys, and mostly an axis. */
static void mirrored_at_random(struct plot *plot, struct random *random, enum mirror_kind kind)
{
	struct block *head = &plot->details.head;
	int columns, rows;

	plot_at_random(plot, random, 14, "abp.");
	columns = plot->ground.columns;
	rows = plot->ground.rows;
	block_set(head, HEAD_CELL, length_value(side_at_random(random)));
	block_set(head, HEAD_MIRROR, (struct value){ .set = true, .as.number = kind });
	if (random_below(random, 3))
		block_set(head, HEAD_AXIS, (struct value){ .set = true,
			.as.place = { random_between(random, 1, 2 * columns - 1),
				random_between(random, 1, 2 * rows - 1) } });
	for (int y = 0; y < rows; y++)
		for (int x = 0; x < columns; x++)
			lay_rectangle(plot, (struct rectangle){ x, y, x, y },
				ground_cell(&plot->ground, x, y));
}

START_TEST(what_matched_its_image_still_does)
{
	struct random random = { 20 + (uint64_t)_i };
	struct mirror mirror;

	for (int turn = 0; turn < 3000; turn++) {
		struct plot plot;
		struct rescale rescale;

		mirrored_at_random(&plot, &random, (enum mirror_kind)_i);
		mirror = mirror_of(&plot);
		ck_assert_int_eq(mirror_faults(&mirror, &plot.ground), 0);
		rescale = rescale_of(&plot, side_at_random(&random));
		if (rescale_fits(&rescale) &&
			rescale.across.new_count * rescale.down.new_count < 40000) {
			rescale_plot(&plot, &rescale);
			plot_check(&plot);
			mirror = mirror_of(&plot);
			ck_assert_msg(mirror_faults(&mirror, &plot.ground) == 0,
				"mirror %d, turn %d", _i, turn);
		}
		plot_fini(&plot);
	}
}
END_TEST

/* The old cell that holds a place, counted in half nanometres from the datum; the earlier one for a
 * place on a line. */
static int holds(nm doubled, nm cell, int count)
{
	for (int i = 0; i < count; i++)
		if (doubled <= 2 * (i + 1) * cell)
			return i;
	return count - 1;
}

START_TEST(each_cell_has_the_letter_that_lay_under_its_middle)
{
	struct random random = { 31 };

	for (int turn = 0; turn < 2000; turn++) {
		struct plot plot;
		struct rescale rescale;
		struct ground old;
		nm from, to;

		mirrored_at_random(&plot, &random, MIRROR_OFF);
		from = plot_cell(&plot);
		to = from * random_between(&random, 2, 9) / random_between(&random, 2, 9);
		old = plot.ground;
		plot.ground.cells = memcpy(malloc((size_t)(old.columns * old.rows)), old.cells,
			(size_t)(old.columns * old.rows));
		rescale = rescale_of(&plot, to);
		rescale_plot(&plot, &rescale);
		for (int y = 0; y < plot.ground.rows; y++)
			for (int x = 0; x < plot.ground.columns; x++)
				ck_assert_int_eq(ground_cell(&plot.ground, x, y), ground_cell(&old,
					holds((2 * x + 1) * to, from, old.columns),
					holds((2 * y + 1) * to, from, old.rows)));
		ground_fini(&old);
		plot_fini(&plot);
	}
}
END_TEST

/* |a - b| in half nanometres is no more than `quarters` of a cell. */
static void check_near(nm a, nm b, nm cell, int quarters, int turn)
{
	ck_assert_msg(2 * llabs(a - b) <= quarters * cell, "turn %d: %lld is not near %lld", turn,
		(long long)a, (long long)b);
}

/* Where a patch from column `from` to `until` lies afterwards. */
static bool patch_find(const struct ground *ground, char letter, int *from, int *until)
{
	const char *row = ground->cells;
	const char *first = memchr(row, letter, (size_t)ground->columns);
	const char *last = memrchr(row, letter, (size_t)ground->columns);

	if (!first)
		return false;
	*from = (int)(first - row);
	*until = (int)(last - row) + 1;
	return true;
}

/* The axis is in the middle; near the plan's edge it may have to give way further. */
START_TEST(an_edge_moves_by_half_a_cell_and_across_a_mirror_by_three_quarters)
{
	struct random random = { 8 };

	for (int turn = 0; turn < 3000; turn++) {
		struct plot plot;
		int columns = random_between(&random, 6, 40), left, right, first, until;
		int is_mirrored = turn % 2, quarters = is_mirrored ? 3 : 2;
		nm from, to;
		struct rescale rescale;

		plot_from_rows(&plot, (const char *const[]){ "b", NULL });
		ground_fini(&plot.ground);
		ground_init(&plot.ground, columns, 1);
		plot_set(&plot, 0, HEAD_MIRROR, is_mirrored ? "left-right" : "off");
		left = random_below(&random, columns / 2);
		right = is_mirrored ? columns - 1 - left :
			random_between(&random, left, columns - 1);
		lay_rectangle(&plot, (struct rectangle){ left, 0, right, 0 }, 'b');
		from = plot_cell(&plot);
		to = from * random_between(&random, 1, 20) / random_between(&random, 7, 20);
		rescale = rescale_of(&plot, to);
		rescale_plot(&plot, &rescale);
		check_near(2 * columns * from, 2 * plot.ground.columns * to, to, quarters, turn);
		if (patch_find(&plot.ground, 'b', &first, &until)) {
			check_near(2 * left * from, 2 * first * to, to, quarters, turn);
			check_near(2 * (right + 1) * from, 2 * until * to, to, quarters, turn);
		}
		plot_fini(&plot);
	}
}
END_TEST

/* ---- Lines, points and corners -------------------------------------------------------------- */

/* Half nanometres from what is laid on what: of a line of the old grid, of one of the new. */
static nm old_line(const struct scale *scale, int line)
{
	return (2 * line - scale->old_axis) * scale->old_cell;
}

static nm new_line(const struct scale *scale, int line)
{
	return (2 * line - scale->new_axis) * scale->new_cell;
}

/* Whether a line of the new grid is nearer than another, or as near and farther out. */
static bool is_nearer(const struct scale *scale, nm at, int line, int other)
{
	nm one = llabs(new_line(scale, line) - at), two = llabs(new_line(scale, other) - at);

	return one < two || (one == two && llabs(new_line(scale, line)) >=
		llabs(new_line(scale, other)));
}

/* Where an old line or corner goes, by trying each of the new lines on its side of the plan. The
 * last edge is the new one's. */
static int line_expected(const struct scale *scale, int line)
{
	int low = line < 0 ? -200 : 0, high = line < 0 ? 0 : scale->new_count, best;

	if (line >= scale->old_count)
		low = scale->new_count;
	if (line > scale->old_count)
		high = scale->new_count + 200;
	best = low;
	for (int i = low + 1; i <= high; i++)
		if (is_nearer(scale, old_line(scale, line), i, best))
			best = i;
	return best;
}

static struct place point_expected(const struct rescale *rescale, struct place old)
{
	return (struct place){ line_expected(&rescale->across, old.x),
		line_expected(&rescale->down, old.y) };
}

static bool keeps_expected(const struct scale *scale, int line)
{
	return old_line(scale, line) == new_line(scale, line_expected(scale, line));
}

static bool keeps_point(const struct rescale *rescale, struct place old)
{
	return keeps_expected(&rescale->across, old.x) && keeps_expected(&rescale->down, old.y);
}

/* The new cell over the middle of an old one; of two that meet there the later, or that on the
 * axis' side, on the axis the first. */
static int over_expected(const struct scale *scale, int cell, bool is_later)
{
	nm at = old_line(scale, cell) + scale->old_cell;
	int over = 0;

	while (over + 1 < scale->new_count && (new_line(scale, over + 1) < at ||
		(new_line(scale, over + 1) == at && (is_later || at < 0))))
		over++;
	return over;
}

/* Whether all the old cells that a stretch of the new grid lies over are there. */
static bool is_inside(const struct scale *scale, int cell)
{
	return new_line(scale, cell) >= old_line(scale, 0) &&
		new_line(scale, cell + 1) <= old_line(scale, scale->old_count);
}

static bool lies_over(const struct scale *scale, int cell, int old)
{
	return new_line(scale, cell) < old_line(scale, old + 1) &&
		old_line(scale, old) < new_line(scale, cell + 1);
}

static bool is_rounded(const struct rescale *rescale, const struct ground *ground, int x, int y)
{
	char met = 0;

	if (!is_inside(&rescale->across, x) || !is_inside(&rescale->down, y))
		return true;
	for (int i = 0; i < ground->columns * ground->rows; i++) {
		char letter = ground->cells[i];

		if (!lies_over(&rescale->across, x, i % ground->columns) ||
			!lies_over(&rescale->down, y, i / ground->columns))
			continue;
		if (met && letter != met)
			return true;
		met = letter;
	}
	return false;
}

static int64_t rounded_expected(const struct rescale *rescale, const struct ground *ground)
{
	int64_t rounded = 0;

	for (int y = 0; y < rescale->down.new_count; y++)
		for (int x = 0; x < rescale->across.new_count; x++)
			rounded += is_rounded(rescale, ground, x, y);
	return rounded;
}

/* A side that often has lines in common with cells of another. */
static nm side_alike(struct random *random, nm cell)
{
	return cell / random_between(random, 1, 6) * random_between(random, 1, 6);
}

/* A rescaling of a small plot with any mirror, to a side that is often a simple part of the old. */
static struct rescale rescale_at_random(struct plot *plot, struct random *random)
{
	struct rescale rescale;

	mirrored_at_random(plot, random, (enum mirror_kind)random_below(random, 5));
	block_set(&plot->details.head, HEAD_CELL, length_value(NM_PER_INCH * 60));
	do
		rescale = rescale_of(plot, side_alike(random, plot_cell(plot)));
	while (rescale.across.new_count > 90 || rescale.down.new_count > 90);
	return rescale;
}

START_TEST(new_cells_over_several_letters_or_the_edge_are_counted)
{
	struct random random = { 40 };
	int none = 0;

	for (int turn = 0; turn < 1500; turn++) {
		struct plot plot;
		struct rescale rescale = rescale_at_random(&plot, &random);
		int64_t rounded = rounded_expected(&rescale, &plot.ground);

		ck_assert_msg(rescale_rounded(&rescale, &plot.ground) == rounded, "turn %d", turn);
		none += rounded == 0;
		plot_fini(&plot);
	}
	ck_assert_int_gt(none, 100);
}
END_TEST

static struct place place_at_random(struct random *random, const struct ground *ground, int over)
{
	return (struct place){ random_between(random, -over, ground->columns - 1 + over),
		random_between(random, -over, ground->rows - 1 + over) };
}

START_TEST(points_and_corners_go_to_the_nearest_lines)
{
	struct random random = { 41 };

	for (int turn = 0; turn < 3000; turn++) {
		struct plot plot;
		struct rescale rescale = rescale_at_random(&plot, &random);
		struct surroundings *around = &plot.details.around;
		struct place from = place_at_random(&random, &plot.ground, 9), to, end;
		struct place tie = { random_between(&random, 0, plot.ground.columns),
			random_between(&random, 0, plot.ground.rows) };
		struct rectangle r = { from.x, from.y, from.x + random_below(&random, 9),
			from.y + random_below(&random, 9) };

		ties_add(&around->ties, tie, memory_string("Post"), NM_PER_M);
		ck_assert_int_eq(rescale_keeps_around(&rescale, &plot), keeps_point(&rescale, tie));
		obstacles_add(&around->kept, memory_string("Wall"))->cells = r;
		end = (struct place){ r.right + 1, r.bottom + 1 };
		ck_assert_int_eq(rescale_keeps_around(&rescale, &plot),
			keeps_point(&rescale, tie) && keeps_point(&rescale, from) &&
			keeps_point(&rescale, end));
		rescale_plot(&plot, &rescale);
		tie = point_expected(&rescale, tie);
		ck_assert_msg(place_equal(around->ties.items[0].at, tie), "turn %d", turn);
		to = point_expected(&rescale, from), end = point_expected(&rescale, end);
		r = around->kept.items[0].cells;
		ck_assert_msg(r.left == to.x && r.top == to.y, "turn %d", turn);
		/* It keeps a cell. */
		ck_assert_msg(r.right + 1 == (end.x > to.x ? end.x : to.x + 1), "turn %d", turn);
		ck_assert_msg(r.bottom + 1 == (end.y > to.y ? end.y : to.y + 1), "turn %d", turn);
		plot_fini(&plot);
	}
}
END_TEST

START_TEST(a_cell_and_what_stands_in_it_go_to_the_cell_over_its_middle)
{
	struct random random = { 42 };

	for (int turn = 0; turn < 3000; turn++) {
		struct plot plot;
		struct rescale rescale = rescale_at_random(&plot, &random);
		const struct scale *across = &rescale.across, *down = &rescale.down;
		struct place at = place_at_random(&random, &plot.ground, 0), to;
		struct place stood = { over_expected(across, at.x, false),
			over_expected(down, at.y, false) };
		struct plant *plant = plants_add(&plot.details.plants, 'r', memory_string("Rose"));
		bool is_middle = old_line(across, at.x) + across->old_cell ==
				new_line(across, stood.x) + across->new_cell &&
			old_line(down, at.y) + down->old_cell ==
				new_line(down, stood.y) + down->new_cell;

		to = rescale_cell(&rescale, at);
		ck_assert_msg(to.x == over_expected(across, at.x, true) &&
			to.y == over_expected(down, at.y, true), "turn %d", turn);
		plant_add_specimen(plant, at);
		ck_assert_int_eq(rescale_keeps_plants(&rescale, &plot), is_middle);
		rescale_plot(&plot, &rescale);
		ck_assert_msg(place_equal(plant->specimens[0], stood), "turn %d", turn);
		plot_fini(&plot);
	}
}
END_TEST

/* Half cells from the datum: the nearest, but within the plan. */
START_TEST(a_set_axis_goes_to_the_nearest_half_cell_within_the_plan)
{
	struct random random = { 43 };

	for (int turn = 0; turn < 3000; turn++) {
		struct plot plot;
		struct rescale rescale = rescale_at_random(&plot, &random);
		const struct value *axis = block_value(&plot.details.head, HEAD_AXIS);
		struct place was = axis->as.place;

		if (!axis->set || was.x >= 2 * plot.ground.columns - 2 ||
			was.y >= 2 * plot.ground.rows - 2) {
			plot_fini(&plot);
			continue;
		}
		rescale_plot(&plot, &rescale);
		axis = block_value(&plot.details.head, HEAD_AXIS);
		ck_assert(axis->as.place.x >= 1 && axis->as.place.x < 2 * plot.ground.columns);
		ck_assert(axis->as.place.y >= 1 && axis->as.place.y < 2 * plot.ground.rows);
		if (axis->as.place.x > 1 && axis->as.place.x < 2 * plot.ground.columns - 1)
			check_near(axis->as.place.x * rescale.across.new_cell,
				was.x * rescale.across.old_cell, rescale.across.new_cell, 1, turn);
		if (axis->as.place.y > 1 && axis->as.place.y < 2 * plot.ground.rows - 1)
			check_near(axis->as.place.y * rescale.down.new_cell,
				was.y * rescale.down.old_cell, rescale.down.new_cell, 1, turn);
		plot_fini(&plot);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("rescale");
	TCase *ground = suite_case(suite, "ground"), *laws = suite_case(suite, "laws"),
		*lines = suite_case(suite, "lines");

	tcase_add_test(ground, halved_cells_make_four_of_each);
	tcase_add_test(ground, an_edge_goes_to_the_nearest_line_of_the_new_cells);
	tcase_add_test(ground,
		a_middle_on_the_axis_takes_the_cell_that_half_a_turn_gives_it);
	tcase_add_test(ground, a_plan_keeps_at_least_one_cell);
	tcase_add_test(ground, more_than_2048_cells_do_not_fit);
	tcase_add_test(ground, a_set_axis_stays_where_it_is_to_the_nearest_half_cell);
	tcase_add_test(ground, an_unset_axis_stays_unset);
	tcase_add_test(ground, the_cell_one_stands_on_is_found_again);
	tcase_add_loop_test(laws, what_matched_its_image_still_does, MIRROR_OFF,
		MIRROR_HALF_TURN + 1);
	tcase_add_test(laws, each_cell_has_the_letter_that_lay_under_its_middle);
	tcase_add_test(laws, an_edge_moves_by_half_a_cell_and_across_a_mirror_by_three_quarters);
	tcase_add_test(lines, new_cells_over_several_letters_or_the_edge_are_counted);
	tcase_add_test(lines, points_and_corners_go_to_the_nearest_lines);
	tcase_add_test(lines, a_cell_and_what_stands_in_it_go_to_the_cell_over_its_middle);
	tcase_add_test(lines, a_set_axis_goes_to_the_nearest_half_cell_within_the_plan);
	return suite;
}
