/* Where ground is narrow, against squares tried one by one. */
#include "survey/narrow.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

static struct arena arena;
static struct plot plot;
static struct survey survey;

static void teardown(void)
{
	arena_clear(&arena);
	plot_fini(&plot);
}

static void given(const char *const *rows)
{
	plot_from_rows(&plot, rows);
	survey_plot(&survey, &arena, &plot);
}

enum { FOUND_MOST = 200 };
struct all_found {
	struct narrow list[FOUND_MOST];
	int count;
};

/* All of paths, by a square of that side; those found by a smaller one left out, if there is. */
static struct all_found found_by(int side, int smaller)
{
	struct all_found all = { .count = 0 };
	struct narrow_search search, within;
	struct narrow found;

	if (smaller > 0) {
		narrow_begin(&within, &survey, CLASS_PATH, smaller);
		while (narrow_next(&within, &found))
			continue;
	}
	narrow_begin(&search, &survey, CLASS_PATH, side);
	search.within = smaller > 0 ? &within : NULL;
	while (narrow_next(&search, &all.list[all.count]))
		all.count++;
	narrow_end(&search);
	if (smaller > 0)
		narrow_end(&within);
	return all;
}

static void check_only(const struct all_found *all, struct rectangle cells)
{
	ck_assert_int_eq(all->count, 1);
	ck_assert_msg(memcmp(&all->list[0].cells, &cells, sizeof cells) == 0, "%d,%d to %d,%d",
		all->list[0].cells.left, all->list[0].cells.top, all->list[0].cells.right,
		all->list[0].cells.bottom);
}

/* ---- Examples -------------------------------------------------------------------------------- */

START_TEST(a_path_as_wide_as_the_square_is_not_narrow_and_one_less_wide_is_all_along)
{
	struct all_found all;

	given((const char *const[]){ "......", ".ppppp", ".ppppp", "......", NULL });
	all = found_by(2, 0);
	ck_assert_int_eq(all.count, 0);
	all = found_by(3, 0);
	check_only(&all, (struct rectangle){ 1, 1, 5, 2 });
	ck_assert_int_eq(all.list[0].first.x, 1);
	ck_assert_int_eq(all.list[0].first.y, 1);
}
END_TEST

START_TEST(letters_of_one_class_are_one_path)
{
	given((const char *const[]){ "ppppp", "qqqqq", "sssss", NULL });
	ck_assert_int_eq(found_by(3, 0).count, 0);
}
END_TEST

START_TEST(a_gap_between_wide_places_is_narrow_however_short_it_is)
{
	struct all_found all;

	given((const char *const[]){ "pppbppp", "ppppppp", "pppbppp", NULL });
	all = found_by(3, 0);
	check_only(&all, (struct rectangle){ 3, 1, 3, 1 });
}
END_TEST

START_TEST(a_bay_is_not_but_a_dead_end_as_deep_as_the_square_is)
{
	struct all_found all;

	given((const char *const[]){ "ppppp", "ppppp", "ppppp", "..p..", "..p..", NULL });
	ck_assert_int_eq(found_by(3, 0).count, 0);
	plot_fini(&plot);
	given((const char *const[]){ "ppppp", "ppppp", "ppppp", "..p..", "..p..", "..p..", NULL });
	all = found_by(3, 0);
	check_only(&all, (struct rectangle){ 2, 3, 2, 5 });
}
END_TEST

START_TEST(wide_places_that_a_square_cannot_be_moved_between_have_a_neck)
{
	struct all_found all;

	/* Every cell is covered by a square of 3, but only one of 2 gets round. */
	given((const char *const[]){ "ppp..", "ppp..", "ppppp", "..ppp", "..ppp", NULL });
	all = found_by(3, 0);
	check_only(&all, (struct rectangle){ 2, 2, 2, 2 });
	ck_assert_int_eq(found_by(2, 0).count, 1);
	plot_fini(&plot);
	given((const char *const[]){ "ppp..", "ppp..", "ppp..", "..ppp", "..ppp", "..ppp", NULL });
	all = found_by(3, 0);
	check_only(&all, (struct rectangle){ 2, 2, 2, 3 });
	plot_fini(&plot);
	given((const char *const[]){ "ppp.", "pppp", "pppp", ".ppp", NULL });
	all = found_by(3, 0);
	check_only(&all, (struct rectangle){ 1, 1, 2, 2 });
	ck_assert_int_eq(found_by(2, 0).count, 0);
}
END_TEST

START_TEST(where_there_is_another_way_round_a_neck_is_none)
{
	given((const char *const[]){ "pppppppp", "pppppppp", "pp.ppppp", "pp..pppp", "ppp..ppp",
		"pppp..pp", "pppppppp", "pppppppp", NULL });
	ck_assert_int_eq(found_by(2, 0).count, 0);
}
END_TEST

START_TEST(what_is_all_too_narrow_for_a_smaller_square_is_left_out)
{
	struct all_found all;

	given((const char *const[]){ "pppp.pp", "....bpp", "pp.bbpp", "pp.bb..", "pp.bbpp",
		"pp.bbpb", NULL });
	ck_assert_int_eq(found_by(2, 0).count, 2); /* the bent one's end is as deep as the square */
	ck_assert_int_eq(found_by(3, 0).count, 4);
	all = found_by(3, 2);
	ck_assert_int_eq(all.count, 2);
	ck_assert_int_eq(all.list[0].first.x, 5);
	ck_assert_int_eq(all.list[1].first.y, 2);
}
END_TEST

/* ---- The same, tried one by one -------------------------------------------------------------- */

enum { MOST = 12, LABELS = 1 + MOST * MOST };

struct tried {
	int side;
	int squares[MOST][MOST]; /* by top left cell, what can be moved to each other; 0: none */
	bool covers[MOST][MOST][LABELS];
	int kinds[MOST][MOST], one[MOST][MOST];
	bool narrow[MOST][MOST], neck[MOST][MOST], seen[MOST][MOST], told[MOST][MOST];
};

static bool is_path(int x, int y)
{
	return ground_holds(&plot.ground, x, y) &&
		plot_class_of(&plot, ground_cell(&plot.ground, x, y)) == CLASS_PATH;
}

static void try_squares(struct tried *t)
{
	bool changes = true;
	int next = 1;

	for (int y = 0; y < plot.ground.rows; y++)
		for (int x = 0; x < plot.ground.columns; x++) {
			bool fits = true;

			for (int i = 0; i < t->side * t->side; i++)
				fits = fits && is_path(x + i % t->side, y + i / t->side);
			t->squares[y][x] = fits ? next++ : 0;
		}
	while (changes) {
		changes = false;
		for (int i = 0; i < MOST * MOST; i++) {
			int x = i % MOST, y = i / MOST, *here = &t->squares[y][x];
			int *beside[] = { x + 1 < MOST ? &t->squares[y][x + 1] : here,
				y + 1 < MOST ? &t->squares[y + 1][x] : here };

			for (int j = 0; *here && j < 2; j++) {
				if (!*beside[j] || *beside[j] == *here)
					continue;
				*here = *beside[j] = *here < *beside[j] ? *here : *beside[j];
				changes = true;
			}
		}
	}
}

static void try_covers(struct tried *t)
{
	for (int i = 0; i < MOST * MOST; i++) {
		int x = i % MOST, y = i / MOST, label = t->squares[y][x];

		for (int j = 0; label && j < t->side * t->side; j++) {
			bool *covers = t->covers[y + j / t->side][x + j % t->side];

			if (!covers[label]) {
				t->kinds[y + j / t->side][x + j % t->side]++;
				t->one[y + j / t->side][x + j % t->side] = label;
			}
			covers[label] = true;
		}
	}
}

static void try_cells(struct tried *t)
{
	static const int steps[4][2] = { { 1, 0 }, { -1, 0 }, { 0, 1 }, { 0, -1 } };

	for (int i = 0; i < MOST * MOST; i++) {
		int x = i % MOST, y = i / MOST;

		if (!is_path(x, y))
			continue;
		t->neck[y][x] = t->kinds[y][x] > 1;
		for (int d = 0; d < 4 && t->kinds[y][x] == 1; d++) {
			int to_x = x + steps[d][0], to_y = y + steps[d][1];

			if (is_path(to_x, to_y) && t->kinds[to_y][to_x] == 1 &&
				t->one[to_y][to_x] != t->one[y][x])
				t->neck[y][x] = true;
		}
		t->narrow[y][x] = t->neck[y][x] || t->kinds[y][x] == 0;
	}
}

struct walked {
	struct narrow found;
	bool opens[4], has_neck, cells[MOST][MOST];
};

static void walk(struct tried *t, struct walked *walked, int x, int y)
{
	static const int steps[4][2] = { { 1, 0 }, { -1, 0 }, { 0, 1 }, { 0, -1 } };
	struct rectangle *r = &walked->found.cells;

	t->seen[y][x] = walked->cells[y][x] = true;
	walked->has_neck |= t->neck[y][x];
	r->left = x < r->left ? x : r->left;
	r->right = x > r->right ? x : r->right;
	r->top = y < r->top ? y : r->top;
	r->bottom = y > r->bottom ? y : r->bottom;
	for (int d = 0; d < 4; d++) {
		int to_x = x + steps[d][0], to_y = y + steps[d][1];

		if (!is_path(to_x, to_y))
			continue;
		if (!t->narrow[to_y][to_x])
			walked->opens[d] = true;
		else if (!t->seen[to_y][to_x])
			walk(t, walked, to_x, to_y);
	}
}

/* Tells all cells of a place; returns whether the smaller square has told each of them too. */
static bool tell(struct tried *t, const struct tried *smaller, const struct walked *walked)
{
	bool is_known = smaller;

	for (int i = 0; i < MOST * MOST; i++) {
		int x = i % MOST, y = i / MOST;

		if (!walked->cells[y][x])
			continue;
		t->told[y][x] = true;
		is_known = is_known && smaller->told[y][x];
	}
	return is_known;
}

/* smaller: what a smaller square has told already; NULL: nothing. */
static struct all_found try_all(struct tried *t, const struct tried *smaller)
{
	struct all_found all = { .count = 0 };

	try_squares(t);
	try_covers(t);
	try_cells(t);
	for (int i = 0; i < MOST * MOST; i++) {
		int x = i % MOST, y = i / MOST, openings = 0;
		struct walked walked = { .found = { { x, y }, { x, y, x, y } } };
		const struct rectangle *r = &walked.found.cells;

		if (!t->narrow[y][x] || t->seen[y][x])
			continue;
		walk(t, &walked, x, y);
		for (int d = 0; d < 4; d++)
			openings += walked.opens[d];
		if (!walked.has_neck && openings == 1 && r->right - r->left < t->side - 1 &&
			r->bottom - r->top < t->side - 1)
			continue;
		if (!tell(t, smaller, &walked))
			all.list[all.count++] = walked.found;
	}
	return all;
}

static struct all_found tried_by(int side, int smaller)
{
	struct tried *t = calloc(2, sizeof *t);
	struct all_found all;

	t[0].side = smaller;
	t[1].side = side;
	if (smaller > 0)
		try_all(&t[0], NULL);
	all = try_all(&t[1], smaller > 0 ? &t[0] : NULL);
	free(t);
	return all;
}

START_TEST(what_is_narrow_is_what_squares_tried_one_by_one_do_not_get_through)
{
	int narrow = 0;

	for (int seed = 0; seed < runner_count(600, 20000); seed++) {
		struct random random = { (uint64_t)seed };
		struct all_found all, tried;
		int side = 1 + seed % 5, smaller = seed % 2 ? random_below(&random, side) : 0;

		plot_at_random(&plot, &random, MOST, seed % 3 ? "pppqb" : "pppppppq.");
		survey_plot(&survey, &arena, &plot);
		all = found_by(side, smaller);
		tried = tried_by(side, smaller);
		narrow += all.count;
		ck_assert_msg(all.count == tried.count, "seed %d: %d, not %d", seed, all.count,
			tried.count);
		ck_assert_msg(memcmp(all.list, tried.list,
			(size_t)all.count * sizeof *all.list) == 0, "seed %d", seed);
		arena_clear(&arena);
		plot_fini(&plot);
	}
	ck_assert_int_gt(narrow, 200);
	plot_init(&plot);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("narrow");
	TCase *narrow = suite_case(suite, "narrow");

	tcase_add_checked_fixture(narrow, NULL, teardown);
	tcase_add_test(narrow,
		a_path_as_wide_as_the_square_is_not_narrow_and_one_less_wide_is_all_along);
	tcase_add_test(narrow, letters_of_one_class_are_one_path);
	tcase_add_test(narrow, a_gap_between_wide_places_is_narrow_however_short_it_is);
	tcase_add_test(narrow, a_bay_is_not_but_a_dead_end_as_deep_as_the_square_is);
	tcase_add_test(narrow, wide_places_that_a_square_cannot_be_moved_between_have_a_neck);
	tcase_add_test(narrow, where_there_is_another_way_round_a_neck_is_none);
	tcase_add_test(narrow, what_is_all_too_narrow_for_a_smaller_square_is_left_out);
	tcase_add_test(narrow,
		what_is_narrow_is_what_squares_tried_one_by_one_do_not_get_through);
	return suite;
}
