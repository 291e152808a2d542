/* Strips put in and taken out. What is expected is made cell by cell: a list of the old columns, to
 * which one at a time is added, or which one at a time leaves. */
#include "plot/edit/fence_lay.h"
#include "plot/edit/strip.h"
#include "plot/format/format.h"
#include "plot/history/history.h"
#include "support/details.h"
#include "support/fences.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define CASES runner_count(400, 20000)

static void mirror_set(struct plot *plot, enum mirror_kind kind)
{
	plot_set(plot, 0, HEAD_MIRROR, mirror_word(kind));
}

static void check_ground(const struct plot *plot, int columns, const char *expected)
{
	const struct ground *ground = &plot->ground;

	plot_check(plot);
	ck_assert_int_eq(ground->columns, columns);
	ck_assert_uint_eq(strlen(expected), ground_count(ground));
	ck_assert_msg(strncmp(ground->cells, expected, strlen(expected)) == 0,
		"%.*s is not %s", (int)ground_count(ground), ground->cells, expected);
}

static void check_rows(const char *const *rows, enum mirror_kind kind, struct strip strip,
	int columns, const char *expected)
{
	struct plot plot;

	plot_from_rows(&plot, rows);
	mirror_set(&plot, kind);
	ck_assert_int_eq(strip_check(&plot, &strip), STRIP_FITS);
	strip_do(&plot, &strip);
	check_ground(&plot, columns, expected);
	plot_fini(&plot);
}

static const char *const court[] = { "bpSpb", "bpppb", NULL };
static const char *const even[] = { ".bppb.", NULL };

START_TEST(what_stands_at_the_cursor_gets_wider)
{
	check_rows(court, MIRROR_OFF, (struct strip){ .cell = 1, .count = 2 }, 7,
		"bpppSpb" "bpppppb");
	check_rows(court, MIRROR_OFF, (struct strip){ .is_level = true, .cell = 1, .count = 1 }, 5,
		"bpSpb" "bpppb" "bpppb");
	check_rows(court, MIRROR_OFF, (struct strip){ .cell = 4, .count = 1 }, 6,
		"bpSpbb" "bpppbb");
}
END_TEST

START_TEST(with_the_mirror_both_sides_do)
{
	check_rows(court, MIRROR_LEFT_RIGHT, (struct strip){ .cell = 1, .count = 1 }, 7,
		"bppSppb" "bpppppb");
	check_rows(court, MIRROR_LEFT_RIGHT, (struct strip){ .cell = 4, .count = 1 }, 7,
		"bbpSpbb" "bbpppbb");
	check_rows(court, MIRROR_LEFT_RIGHT, (struct strip){ .is_level = true, .count = 1 }, 5,
		"bpSpb" "bpSpb" "bpppb");
	check_rows(court, MIRROR_TOP_BOTTOM, (struct strip){ .is_level = true, .count = 1 }, 5,
		"bpSpb" "bpSpb" "bpppb" "bpppb");
}
END_TEST

START_TEST(on_the_axis_it_gets_wider_by_so_much_in_all)
{
	check_rows(court, MIRROR_LEFT_RIGHT, (struct strip){ .cell = 2, .count = 1 }, 6,
		"bpSSpb" "bppppb");
	check_rows(even, MIRROR_LEFT_RIGHT, (struct strip){ .is_on_axis = true, .count = 1 }, 7,
		".bpppb.");
	check_rows(even, MIRROR_LEFT_RIGHT, (struct strip){ .is_on_axis = true, .count = 2 }, 8,
		".bppppb.");
	check_rows(even, MIRROR_LEFT_RIGHT, (struct strip){ .cell = 2, .count = 1 }, 8,
		".bppppb.");
}
END_TEST

START_TEST(what_is_taken_out_begins_at_the_cursor)
{
	check_rows(court, MIRROR_OFF, (struct strip){ .is_out = true, .cell = 1, .count = 2 }, 3,
		"bpb" "bpb");
	check_rows(court, MIRROR_OFF, (struct strip){ .is_out = true, .is_level = true,
		.cell = 0, .count = 1 }, 5, "bpppb");
	check_rows(court, MIRROR_LEFT_RIGHT, (struct strip){ .is_out = true, .cell = 0,
		.count = 1 }, 3, "pSp" "ppp");
	check_rows(court, MIRROR_LEFT_RIGHT, (struct strip){ .is_out = true, .cell = 4,
		.count = 1 }, 3, "pSp" "ppp");
}
END_TEST

START_TEST(on_the_axis_the_middle_column_stays_where_it_can)
{
	check_rows(court, MIRROR_LEFT_RIGHT, (struct strip){ .is_out = true, .is_on_axis = true,
		.count = 2 }, 3, "bSb" "bpb");
	check_rows(court, MIRROR_LEFT_RIGHT, (struct strip){ .is_out = true, .is_on_axis = true,
		.count = 1 }, 4, "bppb" "bppb");
	check_rows(even, MIRROR_LEFT_RIGHT, (struct strip){ .is_out = true, .is_on_axis = true,
		.count = 1 }, 5, ".bpb.");
	check_rows(even, MIRROR_LEFT_RIGHT, (struct strip){ .is_out = true, .is_on_axis = true,
		.count = 2 }, 4, ".bb.");
}
END_TEST

START_TEST(what_does_not_fit_is_told_apart)
{
	struct plot plot;

	plot_from_rows(&plot, even);
	ck_assert_int_eq(strip_check(&plot, &(struct strip){ .count = SIDE_MOST - 6 }),
		STRIP_FITS);
	ck_assert_int_eq(strip_check(&plot, &(struct strip){ .count = SIDE_MOST - 5 }),
		STRIP_TOO_LARGE);
	ck_assert_int_eq(strip_check(&plot, &(struct strip){ .is_out = true, .cell = 1,
		.count = 5 }), STRIP_FITS);
	ck_assert_int_eq(strip_check(&plot, &(struct strip){ .is_out = true, .cell = 2,
		.count = 5 }), STRIP_TOO_FEW);
	ck_assert_int_eq(strip_check(&plot, &(struct strip){ .is_out = true, .count = 6 }),
		STRIP_TOO_FEW);
	mirror_set(&plot, MIRROR_HALF_TURN);
	ck_assert_int_eq(strip_check(&plot, &(struct strip){ .is_on_axis = true, .count = 1 }),
		STRIP_UNEVEN);
	ck_assert_int_eq(strip_check(&plot, &(struct strip){ .is_on_axis = true, .count = 2 }),
		STRIP_FITS);
	mirror_set(&plot, MIRROR_LEFT_RIGHT);
	ck_assert_int_eq(strip_check(&plot, &(struct strip){ .count = SIDE_MOST / 2 - 3 }),
		STRIP_FITS);
	ck_assert_int_eq(strip_check(&plot, &(struct strip){ .count = SIDE_MOST / 2 - 2 }),
		STRIP_TOO_LARGE);
	ck_assert_int_eq(strip_check(&plot, &(struct strip){ .is_out = true, .count = 3 }),
		STRIP_TOO_FEW);
	plot_fini(&plot);
}
END_TEST

/* ---- Fences and axis ------------------------------------------------------------------------- */

static void check_fence(enum mirror_kind kind, struct strip strip, const char *runs,
	const char *gates)
{
	static const char *const rows[] = { "........", "........", NULL };
	struct plot plot;
	struct fence *fence;

	plot_from_rows(&plot, rows);
	mirror_set(&plot, kind);
	fence = fence_from(&plot, "0,0 8,0 8,2 0,2 0,0; 3,0 3,2; 5,0 5,2",
		"0,0 2,0; 8,0 6,0; 3,2 5,2");
	strip_do(&plot, &strip);
	plot_check(&plot);
	fence_is(fence, runs, gates);
	plot_fini(&plot);
}

START_TEST(a_leg_that_is_crossed_grows_and_a_gate_keeps_its_width)
{
	check_fence(MIRROR_OFF, (struct strip){ .cell = 1, .count = 3 },
		"0,0 11,0 11,2 0,2 0,0; 6,0 6,2; 8,0 8,2", "0,0 2,0; 11,0 9,0; 6,2 8,2");
	check_fence(MIRROR_OFF, (struct strip){ .cell = 7, .count = 3 },
		"0,0 11,0 11,2 0,2 0,0; 3,0 3,2; 5,0 5,2", "0,0 2,0; 8,0 6,0; 3,2 5,2");
	check_fence(MIRROR_LEFT_RIGHT, (struct strip){ .cell = 7, .count = 2 },
		"0,0 12,0 12,2 0,2 0,0; 5,0 5,2; 7,0 7,2", "0,0 2,0; 12,0 10,0; 5,2 7,2");
	check_fence(MIRROR_LEFT_RIGHT, (struct strip){ .is_on_axis = true, .count = 2 },
		"0,0 10,0 10,2 0,2 0,0; 3,0 3,2; 7,0 7,2", "0,0 2,0; 10,0 8,0; 4,2 6,2");
	check_fence(MIRROR_OFF, (struct strip){ .is_level = true, .cell = 1, .count = 2 },
		"0,0 8,0 8,4 0,4 0,0; 3,0 3,4; 5,0 5,4", "0,0 2,0; 8,0 6,0; 3,4 5,4");
}
END_TEST

START_TEST(legs_that_come_to_lie_on_each_other_are_one)
{
	check_fence(MIRROR_OFF, (struct strip){ .is_out = true, .cell = 3, .count = 2 },
		"3,0 3,2; 0,0 6,0 6,2 0,2 0,0", "0,0 2,0; 4,0 6,0; 3,2 5,2");
	check_fence(MIRROR_OFF, (struct strip){ .is_out = true, .cell = 7, .count = 1 },
		"0,0 7,0 7,2 0,2 0,0; 3,0 3,2; 5,0 5,2", "0,0 2,0; 7,0 5,0; 3,2 5,2");
}
END_TEST

START_TEST(an_axis_moves_with_its_ground_and_stays_between_images)
{
	struct plot plot;
	struct strip left = { .cell = 0, .count = 2 }, on = { .is_on_axis = true, .count = 3 },
		out = { .is_out = true, .cell = 0, .count = 2 };

	plot_from_rows(&plot, court);
	plot_set(&plot, 0, HEAD_AXIS, "3,2");
	strip_do(&plot, &left);
	ck_assert_int_eq(mirror_of(&plot).across, 7);
	ck_assert_int_eq(mirror_of(&plot).down, 2);
	mirror_set(&plot, MIRROR_LEFT_RIGHT);
	strip_do(&plot, &on);
	ck_assert_int_eq(mirror_of(&plot).across, 10);
	strip_do(&plot, &left);
	ck_assert_int_eq(mirror_of(&plot).across, 14);
	mirror_set(&plot, MIRROR_OFF);
	for (int i = 0; i < 4; i++)
		strip_do(&plot, &out);
	ck_assert(!block_value(&plot.details.head, HEAD_AXIS)->set);
	plot_check(&plot);
	plot_fini(&plot);
}
END_TEST

/* ---- At random ------------------------------------------------------------------------------- */

/* The old columns, or rows, that are there afterwards, in order. */
struct list {
	int items[8 * 64], count;
};

static void list_insert(struct list *list, int at)
{
	ck_assert_int_lt(list->count, 8 * 64);
	memmove(list->items + at + 1, list->items + at,
		(size_t)(list->count++ - at) * sizeof *list->items);
}

static void list_remove(struct list *list, int at)
{
	memmove(list->items + at, list->items + at + 1,
		(size_t)(--list->count - at) * sizeof *list->items);
}

static int list_find(const struct list *list, int item)
{
	for (int i = 0; i < list->count; i++)
		if (list->items[i] == item)
			return i;
	return -1;
}

static void list_double(struct list *list, int item)
{
	int at = list_find(list, item);

	if (at < 0)
		return;
	list_insert(list, at);
	list->items[at] = item;
}

/* One at a time, from the axis outwards: left and right in turn, the middle one first where the
 * number is odd. What is put in goes beside the axis. */
static void list_about_axis(struct list *list, int axis, const struct strip *strip)
{
	bool is_through = axis % 2, has_middle = is_through && strip->count % 2;
	int left = axis / 2 - 1, right = axis - 1 - left;

	for (int i = 0; i < strip->count; i++) {
		int turn = i - has_middle, item = turn % 2 ? right + turn / 2 : left - turn / 2;

		if (turn < 0)
			item = axis / 2;
		if (!strip->is_out)
			list_double(list, is_through ? axis / 2 : i % 2 ? right : left);
		else if (list_find(list, item) >= 0)
			list_remove(list, list_find(list, item));
	}
}

static void list_change(struct list *list, const struct plot *plot, const struct strip *strip)
{
	struct mirror mirror = mirror_of(plot);
	int axis = strip->is_level ? mirror.down : mirror.across;
	bool has_axis = mirror_has_axis(&mirror, strip->is_level);

	list->count = strip->is_level ? plot->ground.rows : plot->ground.columns;
	for (int i = 0; i < list->count; i++)
		list->items[i] = i;
	if (strip->is_on_axis) {
		list_about_axis(list, axis, strip);
		return;
	}
	for (int i = 0; i < strip->count; i++) {
		int item = strip->cell + (strip->is_out ? i : 0), image = axis - 1 - item;

		for (int j = 0; j < 1 + has_axis; j++, item = image)
			if (!strip->is_out)
				list_double(list, item);
			else if (list_find(list, item) >= 0)
				list_remove(list, list_find(list, item));
	}
}

static void check_against_list(const struct plot *before, const struct plot *after,
	const struct strip *strip, const struct list *list, int seed)
{
	const struct ground *ground = &after->ground;

	ck_assert_int_eq(strip->is_level ? ground->rows : ground->columns, list->count);
	for (int y = 0; y < ground->rows; y++)
		for (int x = 0; x < ground->columns; x++)
			ck_assert_msg(ground_cell(ground, x, y) == ground_cell(&before->ground,
				strip->is_level ? x : list->items[x],
				strip->is_level ? list->items[y] : y), "seed %d: %d,%d", seed, x,
				y);
}

static int64_t letter_area(const struct ground *ground, const struct strip *strip,
	const struct list *list, char letter)
{
	int64_t cells = 0;

	for (int i = 0; i < list->count; i++)
		for (int j = 0; j < (strip->is_level ? ground->columns : ground->rows); j++)
			cells += letter == ground_cell(ground, strip->is_level ? j : list->items[i],
				strip->is_level ? list->items[i] : j);
	return cells;
}

static bool is_middle(const struct mirror *mirror, const struct strip *strip)
{
	return mirror_has_axis(mirror, strip->is_level) &&
		2 * strip->cell + 1 == (strip->is_level ? mirror->down : mirror->across);
}

static struct strip strip_at_random(const struct plot *plot, struct random *random)
{
	struct mirror mirror = mirror_of(plot);
	struct strip strip = { .is_level = random_below(random, 2), .is_out =
		random_below(random, 2), .count = random_between(random, 1, 5) };

	strip.is_on_axis = mirror_has_axis(&mirror, strip.is_level) && random_below(random, 2);
	strip.cell = random_below(random, strip.is_level ? plot->ground.rows :
		plot->ground.columns);
	strip.is_on_axis = strip.is_on_axis || is_middle(&mirror, &strip);
	return strip;
}

/* Ground that matches its images, and half the time an axis off the middle. */
static void symmetric_at_random(struct plot *plot, struct random *random)
{
	struct mirror mirror;
	char axis[32];
	int x, y;

	plot_at_random(plot, random, 24, ".bcpqlS");
	if (random_below(random, 2)) {
		snprintf(axis, sizeof axis, "%d,%d",
			random_between(random, 1, 2 * plot->ground.columns - 1),
			random_between(random, 1, 2 * plot->ground.rows - 1));
		plot_set(plot, 0, HEAD_AXIS, axis);
	}
	mirror_set(plot, (enum mirror_kind)random_between(random, 1, 4));
	mirror = mirror_of(plot);
	for (int i = 0; i < 20; i++) {
		x = random_below(random, plot->ground.columns);
		y = random_below(random, plot->ground.rows);
		if (mirror_has_side(&mirror, x, y))
			lay_fold(plot, x, y);
	}
	/* Where there is no side a plan is too small: it is made of one letter. */
	if (mirror_faults(&mirror, &plot->ground))
		memset(plot->ground.cells, 'b', ground_count(&plot->ground));
}

START_TEST(areas_are_those_of_an_expansion_cell_by_cell)
{
	for (int seed = 0; seed < CASES; seed++) {
		struct random random = { (uint64_t)seed };
		struct plot plot, before;
		struct strip strip;
		struct list list;

		symmetric_at_random(&plot, &random);
		strip = strip_at_random(&plot, &random);
		if (strip_check(&plot, &strip) == STRIP_FITS) {
			before = (struct plot){ details_copy(&plot.details),
				ground_copy(&plot.ground) };
			list_change(&list, &plot, &strip);
			ck_assert_int_eq(strip_side(&plot, &strip), list.count);
			strip_do(&plot, &strip);
			plot_check(&plot);
			check_against_list(&before, &plot, &strip, &list, seed);
			for (const char *letter = ".bcpqlS"; *letter; letter++) {
				int64_t cells = 0;

				for (size_t i = 0; i < ground_count(&plot.ground); i++)
					cells += plot.ground.cells[i] == *letter;
				ck_assert_int_eq(cells, letter_area(&before.ground, &strip, &list,
					*letter));
			}
			plot_fini(&before);
		}
		plot_fini(&plot);
	}
}
END_TEST

START_TEST(what_matched_its_images_does_so_again)
{
	int done = 0;

	for (int seed = 0; seed < CASES; seed++) {
		struct random random = { (uint64_t)seed };
		struct plot plot;
		struct mirror mirror;
		bool has_axis;

		symmetric_at_random(&plot, &random);
		has_axis = block_value(&plot.details.head, HEAD_AXIS)->set;
		for (int i = 0; i < 3; i++) {
			struct strip strip = strip_at_random(&plot, &random);

			if (strip_check(&plot, &strip) != STRIP_FITS)
				continue;
			strip_do(&plot, &strip);
			if (has_axis != block_value(&plot.details.head, HEAD_AXIS)->set)
				break;
			mirror = mirror_of(&plot);
			ck_assert_msg(mirror_faults(&mirror, &plot.ground) == 0,
				"seed %d: %s", seed, mirror_word(mirror.kind));
			done++;
		}
		plot_fini(&plot);
	}
	ck_assert_int_gt(done, CASES);
}
END_TEST

/* Sides of cells that legs cover, counted as often as the list has what they cross. */
static int64_t sides_after(const struct legs *legs, const struct strip *strip,
	const struct list *list)
{
	int64_t sides = 0;

	for (size_t i = 0; i < legs->count; i++) {
		struct leg leg = leg_forward(legs->items[i]);
		int from = strip->is_level ? leg.from.y : leg.from.x;
		int to = strip->is_level ? leg.to.y : leg.to.x;

		if (leg_is_upright(leg) != strip->is_level)
			sides += leg_length(leg);
		else
			for (int j = 0; j < list->count; j++)
				sides += list->items[j] >= from && list->items[j] < to;
	}
	return sides;
}

static struct text plot_text(const struct plot *plot)
{
	struct text text = TEXT_EMPTY;

	format_write(plot, &text);
	return text;
}

static void check_same(const struct plot *plot, const struct text *expected, int seed)
{
	struct text text = plot_text(plot);

	if (strcmp(text.bytes, expected->bytes) != 0)
		ck_abort_msg("seed %d", seed); /* the texts may be too long for a message */
	text_fini(&text);
}

START_TEST(legs_are_as_long_as_the_ground_they_cross)
{
	for (int seed = 0; seed < CASES; seed++) {
		struct random random = { (uint64_t)seed };
		struct plot plot;
		struct strip strip;
		struct list list;
		struct legs legs = LEGS_EMPTY, gates = LEGS_EMPTY;
		int64_t expected;

		plot_at_random(&plot, &random, 12, ".bp");
		mirror_set(&plot, (enum mirror_kind)random_below(&random, 5));
		fence_at_random(&plot, &random);
		strip = strip_at_random(&plot, &random);
		strip.is_out = false;
		if (strip_check(&plot, &strip) == STRIP_FITS) {
			struct fence *fence = &plot.details.fences[0];

			list_change(&list, &plot, &strip);
			fence_legs(fence, &legs);
			legs_add_all(&gates, &fence->gates);
			expected = sides_after(&legs, &strip, &list);
			strip_do(&plot, &strip);
			plot_check(&plot);
			ck_assert_msg(fence_length(fence) == expected, "seed %d", seed);
			ck_assert_uint_eq(fence->gates.count, gates.count);
			for (size_t i = 0; i < gates.count; i++)
				if (leg_is_upright(gates.items[i]) == strip.is_level)
					ck_assert_int_eq(leg_length(fence->gates.items[i]),
						leg_length(gates.items[i]));
		}
		legs_fini(&legs);
		legs_fini(&gates);
		plot_fini(&plot);
	}
}
END_TEST

static bool has_leg(const struct legs *legs, struct leg leg)
{
	for (size_t i = 0; i < legs->count; i++)
		if (leg_equal(leg_forward(legs->items[i]), leg))
			return true;
	return false;
}

/* Every image of every leg and gate, where it lies within the plan, is there too. */
static void check_fence_symmetric(const struct plot *plot, int seed)
{
	const struct fence *fence = &plot->details.fences[0];
	struct mirror mirror = mirror_of(plot);
	struct legs legs = LEGS_EMPTY;
	struct leg images[IMAGES_MOST], within;
	int count;

	fence_legs(fence, &legs);
	legs_join(&legs);
	for (size_t i = 0; i < legs.count + fence->gates.count; i++) {
		bool is_gate = i >= legs.count;

		count = mirror_legs(&mirror, is_gate ? fence->gates.items[i - legs.count] :
			legs.items[i], images);
		for (int j = 0; j < count; j++)
			if (leg_clip(images[j], plot->ground.columns, plot->ground.rows, &within))
				ck_assert_msg(is_gate ? has_leg(&fence->gates, images[j]) :
					legs_cover(&legs, within), "seed %d: %s", seed,
					is_gate ? "gate" : "leg");
	}
	legs_fini(&legs);
}

static void fence_symmetric_at_random(struct plot *plot, struct random *random)
{
	struct fence *fence;

	fence_at_random(plot, random);
	fence = &plot->details.fences[0];
	for (int i = 0; i < 6; i++) {
		struct place from = { random_below(random, plot->ground.columns + 1),
			random_below(random, plot->ground.rows + 1) }, to = from;

		*(i % 2 ? &to.x : &to.y) = random_below(random, (i % 2 ? plot->ground.columns :
			plot->ground.rows) + 1);
		if (leg_is_straight((struct leg){ from, to }))
			fence_lay(plot, fence, (struct leg){ from, to });
		if (leg_is_straight((struct leg){ from, to }) && random_below(random, 2))
			fence_set_gate(plot, fence, (struct leg){ from, to });
	}
}

START_TEST(a_fence_that_matched_does_so_again)
{
	for (int seed = 0; seed < CASES; seed++) {
		struct random random = { (uint64_t)seed };
		struct plot plot;
		struct strip strip;

		plot_at_random(&plot, &random, 12, ".bp");
		mirror_set(&plot, (enum mirror_kind)random_between(&random, 1, 4));
		details_add_fence(&plot.details, text_at_random(&random, 1, 9));
		fence_symmetric_at_random(&plot, &random);
		strip = strip_at_random(&plot, &random);
		strip.is_out = false;
		strip.count *= 2; /* of an odd number half a cell can lie on neither side */
		if (strip_check(&plot, &strip) == STRIP_FITS) {
			strip_do(&plot, &strip);
			plot_check(&plot);
			check_fence_symmetric(&plot, seed);
		}
		plot_fini(&plot);
	}
}
END_TEST

static bool are_near(const struct obstacles *obstacles)
{
	for (size_t i = 0; i < obstacles->count; i++)
		if (abs(obstacles->items[i].cells.right) > CORNER_MOST / 2 ||
			abs(obstacles->items[i].cells.bottom) > CORNER_MOST / 2)
			return false;
	return true;
}

/* Levels are measured anew each time, and what is as far off as can be cannot move farther. */
static bool comes_back(const struct details *details)
{
	return !details->levels.step && are_near(&details->around.houses) &&
		are_near(&details->around.shades) &&
		are_near(&details->around.kept);
}

START_TEST(what_is_put_in_can_be_taken_out_and_taken_back)
{
	for (int seed = 0; seed < CASES; seed++) {
		struct random random = { (uint64_t)seed };
		struct plot plot;
		struct strip strip;
		struct history *history;
		struct text before;
		struct place at;
		bool is_exact;

		whole_plot_at_random(&plot, &random, 12);
		is_exact = comes_back(&plot.details);
		strip = strip_at_random(&plot, &random);
		strip.is_out = false;
		/* Of an odd number a gate's middle may come to lie half a cell off its axis. */
		strip.count *= strip.is_on_axis ? 2 : 1;
		before = plot_text(&plot);
		if (strip_check(&plot, &strip) == STRIP_FITS) {
			history = history_new(&plot);
			at = strip_cell(&plot, &strip, (struct place){ strip.is_level ? 0 :
				strip.cell, strip.is_level ? strip.cell : 0 });
			strip_do(&plot, &strip);
			ck_assert(history_record(history, &plot, ""));
			strip.is_out = true;
			strip.cell = strip.is_level ? at.y : at.x;
			if (strip_check(&plot, &strip) == STRIP_FITS) {
				strip_do(&plot, &strip);
				if (is_exact)
					check_same(&plot, &before, seed);
				ck_assert(history_record(history, &plot, ""));
				ck_assert(history_undo(history, &plot, &at));
			}
			ck_assert(history_undo(history, &plot, &at));
			check_same(&plot, &before, seed);
			history_free(history);
		}
		text_fini(&before);
		plot_fini(&plot);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("strip");
	TCase *ground = suite_case(suite, "ground"), *fences = suite_case(suite, "fences"),
		*any = suite_case(suite, "random");

	tcase_add_test(ground, what_stands_at_the_cursor_gets_wider);
	tcase_add_test(ground, with_the_mirror_both_sides_do);
	tcase_add_test(ground, on_the_axis_it_gets_wider_by_so_much_in_all);
	tcase_add_test(ground, what_is_taken_out_begins_at_the_cursor);
	tcase_add_test(ground, on_the_axis_the_middle_column_stays_where_it_can);
	tcase_add_test(ground, what_does_not_fit_is_told_apart);
	tcase_add_test(fences, a_leg_that_is_crossed_grows_and_a_gate_keeps_its_width);
	tcase_add_test(fences, legs_that_come_to_lie_on_each_other_are_one);
	tcase_add_test(fences, an_axis_moves_with_its_ground_and_stays_between_images);
	tcase_add_test(any, areas_are_those_of_an_expansion_cell_by_cell);
	tcase_add_test(any, what_matched_its_images_does_so_again);
	tcase_add_test(any, legs_are_as_long_as_the_ground_they_cross);
	tcase_add_test(any, a_fence_that_matched_does_so_again);
	tcase_add_test(any, what_is_put_in_can_be_taken_out_and_taken_back);
	return suite;
}
