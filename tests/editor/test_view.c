/* Which cells are in view: every zoom, held against the plain way of saying it. */

#include "editor/view.h"
#include "support/plots.h"
#include "support/random.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

enum { SEVERAL = 20000 };

static struct view view_of(int zoom, int rows, int columns)
{
	return (struct view){ .zoom = zoom, .rows = rows, .columns = columns };
}

static struct place random_cell(struct random *r, const struct ground *ground)
{
	return (struct place){ random_below(r, ground->columns), random_below(r, ground->rows) };
}

/* A view and a ground at random, the view at rest on a cursor, which is returned. */
static struct place view_at_random(struct random *r, struct view *view, struct ground *ground)
{
	struct place cursor;

	*ground = (struct ground){ random_between(r, 1, SIDE_MOST), random_between(r, 1, SIDE_MOST),
		NULL };
	*view = view_of(random_below(r, GRAINS), random_between(r, 12, 57),
		2 * random_between(r, 12, 97));
	cursor = random_cell(r, ground);
	view_follow(view, ground, cursor);
	return cursor;
}

/* The view starts at a block, and leaves no room unused that the ground could fill. */
static void check_view(const struct view *view, const struct ground *ground)
{
	const struct grain *grain = view_grain(view);
	struct place blocks = view_blocks(view, ground);
	int across = view->columns / grain->columns, down = view->rows;

	ck_assert_int_ge(view->first.x, 0);
	ck_assert_int_ge(view->first.y, 0);
	ck_assert_int_eq(view->first.x % grain->across, 0);
	ck_assert_int_eq(view->first.y % grain->down, 0);
	ck_assert(blocks.x == across || (blocks.x < across && view->first.x == 0 &&
		blocks.x == (ground->columns + grain->across - 1) / grain->across));
	ck_assert(blocks.y == down || (blocks.y < down && view->first.y == 0 &&
		blocks.y == (ground->rows + grain->down - 1) / grain->down));
}

static bool is_in_view(const struct view *view, const struct ground *ground, struct place cell)
{
	const struct grain *grain = view_grain(view);
	struct place blocks = view_blocks(view, ground), first = view->first;

	return cell.x >= first.x && cell.x < first.x + blocks.x * grain->across &&
		cell.y >= first.y && cell.y < first.y + blocks.y * grain->down;
}

/* ---- Zooms ----------------------------------------------------------------------------------- */

START_TEST(the_nearest_zoom_has_two_columns_a_cell_and_the_next_has_one)
{
	struct view view = view_of(0, 20, 48);
	struct ground ground = { 100, 100, NULL };

	ck_assert_int_eq(view_blocks(&view, &ground).x, 24);
	ck_assert_int_eq(view_blocks(&view, &ground).y, 20);
	view.zoom = 1;
	ck_assert_int_eq(view_blocks(&view, &ground).x, 48);
	ck_assert_int_eq(view_blocks(&view, &ground).y, 20);
	view.zoom = 2;
	ck_assert_int_eq(view_blocks(&view, &ground).x, 48);
	ck_assert_int_eq(view_blocks(&view, &ground).y, 20);
	ck_assert_int_eq(view_grain(&view)->down, 2);
}
END_TEST

START_TEST(each_zoom_shows_more_and_blocks_keep_the_proportions)
{
	for (int zoom = 1; zoom < GRAINS; zoom++) {
		struct view near = view_of(zoom - 1, 20, 48), far = view_of(zoom, 20, 48);
		const struct grain *a = view_grain(&near), *b = view_grain(&far);

		ck_assert(b->across * a->columns >= a->across * b->columns);
		ck_assert_int_ge(b->down, a->down);
		ck_assert(b->down > a->down || b->columns < a->columns);
		ck_assert(zoom == 1 || b->down == 2 * b->across);
	}
}
END_TEST

START_TEST(the_largest_plan_is_seen_whole_on_the_smallest_screen)
{
	struct view view = view_of(0, 12, 24);
	struct ground ground = { SIDE_MOST, SIDE_MOST, NULL };
	struct place blocks;

	view.zoom = view_whole(&view, &ground);
	blocks = view_blocks(&view, &ground);
	ck_assert(blocks.x * view_grain(&view)->across >= SIDE_MOST);
	ck_assert(blocks.y * view_grain(&view)->down >= SIDE_MOST);
}
END_TEST

START_TEST(the_overview_is_the_nearest_zoom_that_shows_all)
{
	struct random r = { 41 };

	for (int i = 0; i < SEVERAL; i++) {
		struct ground ground;
		struct view view;
		int whole;

		view_at_random(&r, &view, &ground);
		whole = view_whole(&view, &ground);
		for (int zoom = 0; zoom <= whole; zoom++) {
			const struct grain *grain;
			bool is_whole;

			view.zoom = zoom;
			grain = view_grain(&view);
			is_whole = view.columns / grain->columns * grain->across >=
				ground.columns &&
				view.rows * grain->down >= ground.rows;
			ck_assert_msg(is_whole == (zoom == whole), "%d x %d, zoom %d",
				ground.columns, ground.rows, zoom);
		}
	}
}
END_TEST

START_TEST(zooming_leaves_the_cursor_in_view_and_mostly_where_it_was)
{
	struct ground ground = { 2000, 2000, NULL };
	struct random r = { 42 };

	for (int i = 0; i < SEVERAL; i++) {
		struct view view = view_of(random_below(&r, 6), 20, 48);
		struct place cursor = { random_between(&r, 900, 1100),
			random_between(&r, 900, 1100) };
		struct place was, is;

		view_centre(&view, &ground, cursor);
		view_scroll(&view, &ground, random_between(&r, -1, 1), random_between(&r, -1, 1));
		was = view_character(&view, cursor);
		view_zoom(&view, &ground, cursor, random_below(&r, 6));
		is = view_character(&view, cursor);
		check_view(&view, &ground);
		/* two columns a cell stand on even ones */
		ck_assert(is.x == was.x || is.x == was.x - 1);
		ck_assert_int_eq(is.y, was.y);
	}
}
END_TEST

/* ---- Following, scrolling, centring ---------------------------------------------------------- */

START_TEST(wherever_the_cursor_goes_it_is_in_view)
{
	struct random r = { 43 };

	for (int i = 0; i < SEVERAL; i++) {
		struct ground ground;
		struct view view;
		struct place cursor = view_at_random(&r, &view, &ground);

		check_view(&view, &ground);
		ck_assert(is_in_view(&view, &ground, cursor));
		cursor = random_cell(&r, &ground);
		view_centre(&view, &ground, cursor);
		check_view(&view, &ground);
		ck_assert(is_in_view(&view, &ground, cursor));
		view_zoom(&view, &ground, cursor, random_below(&r, GRAINS));
		check_view(&view, &ground);
		ck_assert(is_in_view(&view, &ground, cursor));
	}
}
END_TEST

START_TEST(the_view_stays_while_the_cursor_is_anywhere_in_it)
{
	struct random r = { 44 };

	for (int i = 0; i < SEVERAL; i++) {
		struct ground ground;
		struct view view, was;
		struct place cursor;

		view_at_random(&r, &view, &ground);
		cursor = random_cell(&r, &ground);
		was = view;
		view_follow(&view, &ground, cursor);
		ck_assert(is_in_view(&was, &ground, cursor) ==
			(view.first.x == was.first.x && view.first.y == was.first.y));
	}
}
END_TEST

START_TEST(over_an_edge_the_view_moves_by_a_third_at_every_zoom)
{
	struct ground ground = { 2048, 2048, NULL };

	for (int zoom = 0; zoom < 4; zoom++) {
		struct view view = view_of(zoom, 20, 48);
		const struct grain *grain = view_grain(&view);
		int shown = 48 / grain->columns, third = shown / 3;
		struct place right = { 100 * grain->across + shown * grain->across,
			50 * grain->down };

		view.first = (struct place){ 100 * grain->across, 40 * grain->down };
		view_follow(&view, &ground, right);
		ck_assert_int_eq(view.first.x / grain->across, 100 + third + 1);
		ck_assert_int_eq(view.first.y / grain->down, 40);
		view.first = (struct place){ 100 * grain->across, 40 * grain->down };
		view_follow(&view, &ground, (struct place){ 99 * grain->across, 39 * grain->down });
		ck_assert_int_eq(view.first.x / grain->across, 99 - third);
		ck_assert_int_eq(view.first.y / grain->down, 39 - 6);
	}
}
END_TEST

START_TEST(scrolling_goes_a_third_on_and_stops_where_the_ground_ends)
{
	struct view view = view_of(0, 20, 48);
	struct ground ground = { 50, 41, NULL };

	ck_assert(view_scroll(&view, &ground, 1, 0));
	ck_assert_int_eq(view.first.x, 8);
	ck_assert(view_scroll(&view, &ground, 0, 1));
	ck_assert_int_eq(view.first.y, 6);
	ck_assert(view_scroll(&view, &ground, -1, -1));
	ck_assert(view.first.x == 0 && view.first.y == 0);
	ck_assert(!view_scroll(&view, &ground, -1, 0));
	ck_assert(!view_scroll(&view, &ground, 0, -1));
	for (int i = 0; i < 5; i++)
		view_scroll(&view, &ground, 1, 1);
	ck_assert(view.first.x == 26 && view.first.y == 21);
	ck_assert(!view_scroll(&view, &ground, 1, 1));
}
END_TEST

START_TEST(the_cursor_comes_along_no_farther_than_it_must)
{
	struct random r = { 45 };

	for (int i = 0; i < SEVERAL; i++) {
		struct ground ground;
		struct view view, was;
		struct place cursor = view_at_random(&r, &view, &ground), near;

		view_scroll(&view, &ground, random_between(&r, -1, 1), random_between(&r, -1, 1));
		near = view_nearest(&view, &ground, cursor);
		ck_assert(ground_holds(&ground, near.x, near.y));
		was = view;
		view_follow(&view, &ground, near);
		ck_assert(view.first.x == was.first.x && view.first.y == was.first.y);
		if (is_in_view(&view, &ground, cursor))
			ck_assert(near.x == cursor.x && near.y == cursor.y);
	}
}
END_TEST

/* Held against the plain way of saying it: each direction for itself, block by block. */
START_TEST(the_view_moves_no_farther_than_what_is_to_be_seen_needs)
{
	struct random r = { 47 };

	for (int i = 0; i < SEVERAL; i++) {
		struct ground ground;
		struct view view, was;
		struct place cursor = view_at_random(&r, &view, &ground), other, at, more;
		const struct grain *grain = view_grain(&view);
		int rows = random_between(&r, 1, view.rows);
		int columns = random_between(&r, 1, view.columns);
		int across = columns / grain->columns, most_columns = view.columns;

		was = view;
		other = random_below(&r, 2) ? random_cell(&r, &ground) : cursor;
		view_clear(&view, &ground, (struct rectangle){
			cursor.x < other.x ? cursor.x : other.x,
			cursor.y < other.y ? cursor.y : other.y,
			cursor.x > other.x ? cursor.x : other.x,
			cursor.y > other.y ? cursor.y : other.y }, cursor, rows, columns);
		at = view_character(&view, cursor);
		more = view_character(&view, other);
		ck_assert(at.x >= 0 && at.y >= 0 && at.y < rows);
		ck_assert(at.x < columns || across == 0);
		if (columns == most_columns)
			ck_assert_int_eq(view.first.x, was.first.x);
		if (abs(at.x - more.x) / grain->columns < across && columns < most_columns)
			ck_assert(more.x >= 0 && more.x < columns);
		at = view_character(&was, cursor);
		more = view_character(&was, other);
		if (at.x >= 0 && at.x / grain->columns < across && more.x >= 0 &&
		    more.x / grain->columns < across)
			ck_assert_int_eq(view.first.x, was.first.x);
	}
}
END_TEST

/* ---- Characters and cells -------------------------------------------------------------------- */

START_TEST(a_character_stands_for_a_cell_of_its_own_block)
{
	struct random r = { 46 };

	for (int i = 0; i < SEVERAL; i++) {
		struct ground ground;
		struct view view;
		struct place at, cell, back;

		view_at_random(&r, &view, &ground);
		at = (struct place){ random_below(&r, view.columns), random_below(&r, view.rows) };
		if (!view_cell(&view, &ground, at, &cell)) {
			struct place blocks = view_blocks(&view, &ground);

			ck_assert(at.x / view_grain(&view)->columns >= blocks.x ||
				at.y >= blocks.y);
			continue;
		}
		ck_assert(ground_holds(&ground, cell.x, cell.y));
		back = view_character(&view, cell);
		ck_assert_int_eq(back.x, at.x - at.x % view_grain(&view)->columns);
		ck_assert_int_eq(back.y, at.y);
	}
}
END_TEST

START_TEST(left_of_and_above_the_plan_there_is_no_cell)
{
	struct view view = view_of(0, 20, 48);
	struct ground ground = { 50, 50, NULL };
	struct place cell;

	ck_assert(!view_cell(&view, &ground, (struct place){ -1, 0 }, &cell));
	ck_assert(!view_cell(&view, &ground, (struct place){ 0, -1 }, &cell));
	ck_assert(view_cell(&view, &ground, (struct place){ 0, 0 }, &cell));
}
END_TEST

struct patch {
	int zoom;
	const char *rows[5];
	char letter;
};

/* Zooms 3 and 2: blocks of 2 x 4 and 1 x 2 cells. */
static const struct patch patches[] = {
	{ 3, { "bb", "bp", "pp", "b." }, 'b' },   /* 4 of b, 3 of p */
	{ 3, { "pb", "bb", "pp", ".." }, 'b' },   /* 3 of each, and so in the mirror */
	{ 3, { "bp", "bb", "pp", ".." }, 'b' },
	{ 3, { "..", "..", "..", ".p" }, 'p' },   /* open ground gives way to any letter */
	{ 3, { "..", "..", "..", ".." }, '.' },
	{ 3, { "bc", "dd", "cl", "ll" }, 'l' },
	{ 3, { "b", "p", "p" }, 'p' },            /* the block hangs over the ground's end */
	{ 2, { "bp", "pp" }, 'b' },
	{ 2, { ".p", "bp" }, 'b' },
	{ 1, { ".b", "bb" }, '.' },
	{ 0, { "pb", "bb" }, 'p' },
};

START_TEST(a_block_has_its_commonest_letter_and_of_equals_the_first)
{
	const struct patch *patch = &patches[_i];
	struct view view = view_of(patch->zoom, 20, 48);
	struct plot plot;

	plot_from_rows(&plot, patch->rows);
	ck_assert_int_eq(view_letter(&plot.ground, view_block(&view, &plot.ground,
		(struct place){ 0, 0 })), patch->letter);
	plot_fini(&plot);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("view");
	TCase *zooms = suite_case(suite, "zooms"), *moves = suite_case(suite, "moves");
	TCase *characters = suite_case(suite, "characters");

	tcase_add_test(zooms, the_nearest_zoom_has_two_columns_a_cell_and_the_next_has_one);
	tcase_add_test(zooms, each_zoom_shows_more_and_blocks_keep_the_proportions);
	tcase_add_test(zooms, the_largest_plan_is_seen_whole_on_the_smallest_screen);
	tcase_add_test(zooms, the_overview_is_the_nearest_zoom_that_shows_all);
	tcase_add_test(zooms, zooming_leaves_the_cursor_in_view_and_mostly_where_it_was);
	tcase_add_test(moves, wherever_the_cursor_goes_it_is_in_view);
	tcase_add_test(moves, the_view_stays_while_the_cursor_is_anywhere_in_it);
	tcase_add_test(moves, over_an_edge_the_view_moves_by_a_third_at_every_zoom);
	tcase_add_test(moves, scrolling_goes_a_third_on_and_stops_where_the_ground_ends);
	tcase_add_test(moves, the_cursor_comes_along_no_farther_than_it_must);
	tcase_add_test(moves, the_view_moves_no_farther_than_what_is_to_be_seen_needs);
	tcase_add_test(characters, a_character_stands_for_a_cell_of_its_own_block);
	tcase_add_test(characters, left_of_and_above_the_plan_there_is_no_cell);
	tcase_add_loop_test(characters, a_block_has_its_commonest_letter_and_of_equals_the_first, 0,
		(int)(sizeof patches / sizeof *patches));
	return suite;
}
