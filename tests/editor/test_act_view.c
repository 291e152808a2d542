/* The acts that change what is seen, and what is measured, without a terminal. */

#include "screen/bracket.h"
#include "support/desk.h"
#include "support/plots.h"
#include "support/runner.h"

#include "editor/here.h"

#include <string.h>

#define ROWS (const char *[])

/* As the screen does before it draws. */
static void look(struct desk *b)
{
	const struct wanted wanted = { b->editor.panel, 80, 0, false };
	struct layout layout = layout_of(24, 80, &wanted);
	struct mirror mirror = mirror_of(b->editor.plot);

	desk_refresh(b);
	view_fit(&b->editor.view, &mirror, layout.plan.rows, layout.plan.columns);
	view_follow(&b->editor.view, &b->editor.plot->ground, b->editor.cursor);
}

static void press(struct desk *b, int key)
{
	desk_press(b, key);
	look(b);
}

/* Open ground of 200 by 100 cells; the cursor on 100,50. */
static struct desk *sit(void)
{
	struct desk *b = desk_new(ROWS { "b.", NULL });

	ground_fini(&editor_edit(&b->editor)->ground);
	ground_init(&editor_edit(&b->editor)->ground, 200, 100);
	editor_stroke(&b->editor);
	b->editor.cursor = (struct place){ 100, 50 };
	look(b);
	return b;
}

START_TEST(farther_and_nearer_go_step_by_step_and_end_at_the_whole_plan)
{
	struct desk *b = sit();

	press(b, '\\');
	desk_says_whole(b, "Four columns and two rows a cell.");
	press(b, '\\');
	desk_says_whole(b, "This is the nearest view.");
	press(b, '/');
	desk_says_whole(b, "Two columns a cell.");
	press(b, '/');
	desk_says_whole(b, "One column a cell.");
	press(b, '/');
	desk_says_whole(b, "A character stands for 1 x 2 cells, 1 ft x 2 ft: what most of them "
		"are.");
	for (int i = 0; i < 20; i++)
		press(b, '/');
	desk_says_whole(b, "The whole plan is in view.");
	ck_assert_int_eq(b->editor.view.zoom, view_whole(&b->editor.view, &b->editor.plot->ground));
	for (int i = 0; i < 20; i++)
		press(b, '\\');
	ck_assert_int_eq(b->editor.view.zoom, ZOOM_NEAREST);
	ck_assert(b->editor.cursor.x == 100 && b->editor.cursor.y == 50);
	desk_free(b);
}
END_TEST

START_TEST(the_overview_goes_back_to_the_zoom_it_came_from)
{
	struct desk *b = sit();

	press(b, '/');
	press(b, '_');
	ck_assert_int_eq(b->editor.view.zoom, view_whole(&b->editor.view, &b->editor.plot->ground));
	ck_assert(b->editor.view.first.x == 0 && b->editor.view.first.y == 0);
	press(b, '_');
	ck_assert_int_eq(b->editor.view.zoom, 1);
	desk_free(b);
}
END_TEST

START_TEST(a_plan_that_is_seen_whole_has_no_overview)
{
	struct desk *b = desk_new(ROWS { "b.", NULL });

	look(b);
	press(b, '_');
	desk_says_whole(b, "The whole plan is in view.");
	press(b, '/');
	desk_says_whole(b, "The whole plan is in view.");
	ck_assert_int_eq(b->editor.view.zoom, 0);
	desk_free(b);
}
END_TEST

START_TEST(centring_puts_the_cursor_in_the_middle_and_leaves_it_where_it_is)
{
	struct desk *b = sit();

	desk_do(b, ACT_CENTRE);
	ck_assert_int_eq(b->editor.view.first.x, 100 - 12);
	ck_assert_int_eq(b->editor.view.first.y, 50 - 10);
	ck_assert(b->editor.cursor.x == 100 && b->editor.cursor.y == 50);
	desk_free(b);
}
END_TEST

/* Where the plan's edge keeps it from the middle one way, that it moved the other is enough. */
START_TEST(centring_says_where_it_could_do_nothing)
{
	static const struct { struct place at; bool moves; } rows[] = {
		{ { 0, 0 }, false }, { { 0, 50 }, true }, { { 100, 0 }, true },
		{ { 199, 99 }, false }, { { 199, 50 }, true }, { { 100, 99 }, true },
	};

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct desk *b = sit();

		b->editor.cursor = rows[i].at;
		look(b);
		desk_do(b, ACT_CENTRE);
		desk_says_whole(b, rows[i].moves ? "" :
			"The cursor is as near the middle as the plan lets it be.");
		desk_free(b);
	}
}
END_TEST

struct scroll {
	int key, x, y;
};

static const struct scroll scrolls[] = {
	{ PRESS_VIEW_LEFT, -8, 0 }, { PRESS_VIEW_RIGHT, 8, 0 }, { PRESS_VIEW_UP, 0, -6 },
	{ PRESS_VIEW_DOWN, 0, 6 },
};

START_TEST(scrolling_goes_each_way_and_keeps_the_cursor_in_sight)
{
	const struct scroll *scroll = &scrolls[_i];
	struct desk *b = sit();
	struct place was;

	desk_do(b, ACT_CENTRE);
	was = b->editor.view.first;
	press(b, scroll->key);
	ck_assert_int_eq(b->editor.view.first.x, was.x + scroll->x);
	ck_assert_int_eq(b->editor.view.first.y, was.y + scroll->y);
	ck_assert(b->editor.cursor.x == 100 && b->editor.cursor.y == 50);
	for (int i = 0; i < 30; i++)
		press(b, scroll->key);
	desk_says_whole(b, "The plan ends here.");
	ck_assert(scroll->x == 0 || b->editor.view.first.x == (scroll->x < 0 ? 0 : 176));
	ck_assert(scroll->y == 0 || b->editor.view.first.y == (scroll->y < 0 ? 0 : 80));
	desk_free(b);
}
END_TEST

START_TEST(a_trail_is_not_laid_by_scrolling)
{
	struct desk *b = sit();

	desk_type(b, "b=");
	for (int i = 0; i < 10; i++)
		press(b, PRESS_VIEW_RIGHT);
	ck_assert_int_gt(b->editor.cursor.x, 100);
	ck_assert_int_eq(b->editor.takeoff.survey.region_count, 1);
	ck_assert_int_eq(b->editor.takeoff.survey.regions[0].cells, 1);
	desk_free(b);
}
END_TEST

START_TEST(the_panel_is_wide_then_hidden_then_back_and_pages_bring_it_back)
{
	enum { PANEL = PRESS_NOTHING }; /* the act, which has no key */
	struct desk *b = sit();
	static const struct {
		int key;
		enum panel_width panel;
	} presses[] = { { PANEL, PANEL_WIDE }, { PANEL, PANEL_HIDDEN }, { PANEL, PANEL_NORMAL },
		{ PANEL, PANEL_WIDE }, { PANEL, PANEL_HIDDEN }, { PRESS_TAB, PANEL_NORMAL },
		{ PANEL, PANEL_WIDE }, { PRESS_TAB, PANEL_WIDE } };

	for (size_t i = 0; i < sizeof presses / sizeof *presses; i++) {
		if (presses[i].key == PANEL)
			desk_do(b, ACT_PANEL);
		else
			press(b, presses[i].key);
		ck_assert_int_eq(b->editor.panel, presses[i].panel);
	}
	ck_assert_str_eq(page_name(b->editor.page), "Beds"); /* two further */
	desk_free(b);
}
END_TEST

/* ---- Measures -------------------------------------------------------------------------------- */

/* No-break spaces count as blanks. */
static void check_here(struct desk *b, const char *words, bool is_there)
{
	struct text here = TEXT_EMPTY;
	char *held;

	desk_refresh(b);
	here_words(&b->editor, &here);
	while ((held = strstr(here.bytes, "\302\240"))) {
		*held = ' ';
		memmove(held + 1, held + 2, strlen(held + 2) + 1);
	}
	ck_assert_msg((strstr(here.bytes, words) != NULL) == is_there, "%s", here.bytes);
	text_fini(&here);
}

/* 3, 4, 5: the builder's triangle (Euclid, Elements I.47). */
START_TEST(here_tells_how_far_the_peg_is_across_down_and_straight)
{
	struct desk *b = sit();

	check_here(b, "From the peg", false);
	press(b, PRESS_ENTER);
	check_here(b, "From the peg 0 in across, 0 in down, 0 in straight", true);
	desk_type(b, "4");
	press(b, PRESS_LEFT);
	desk_type(b, "3");
	press(b, PRESS_DOWN);
	check_here(b, "From the peg 4 ft across, 3 ft down, 5 ft straight", true);
	desk_type(b, "3");
	press(b, PRESS_DOWN);
	/* The root of 16 + 36 is 7.2111 ft: 7 ft 2.533 in, and 0.533 in are 8.53 sixteenths. */
	check_here(b, "From the peg 4 ft across, 6 ft down, 7 ft 2 9/16 in straight", true);
	desk_free(b);
}
END_TEST

START_TEST(the_longest_way_on_the_largest_plan_is_told_right)
{
	struct desk *b = desk_new(ROWS { "b.", NULL });

	ground_fini(&editor_edit(&b->editor)->ground);
	ground_init(&editor_edit(&b->editor)->ground, SIDE_MOST, SIDE_MOST);
	plot_set(editor_edit(&b->editor), 0, HEAD_UNITS, "metric");
	plot_set(editor_edit(&b->editor), 0, HEAD_CELL, "1 m");
	editor_stroke(&b->editor);
	look(b);
	press(b, PRESS_ENTER);
	press(b, PRESS_END);
	press(b, PRESS_PAGE_DOWN);
	/* 2047 times the root of 2, 1.41421356: 2894.895 m. */
	check_here(b, "2047 m across, 2047 m down, 2894.895 m straight", true);
	desk_free(b);
}
END_TEST

START_TEST(the_rulers_measure_the_region_under_the_cursor)
{
	struct desk *b = desk_new(ROWS {
		"......",
		".bb...",
		".b.pp.",
		".bb...", NULL });
	struct measure m;

	look(b);
	press(b, '"');
	ck_assert(!measure_of(&b->editor).is_shown);
	b->editor.cursor = (struct place){ 2, 3 };
	m = measure_of(&b->editor);
	ck_assert(m.is_shown);
	ck_assert(m.across.first == 2 && m.across.last == 5); /* two characters a cell */
	ck_assert(m.down.first == 1 && m.down.last == 3);
	ck_assert_int_eq(m.across.length, 2 * NM_PER_FOOT);
	ck_assert_int_eq(m.down.length, 3 * NM_PER_FOOT);
	ck_assert(!m.across.goes_before && !m.across.goes_after);
	ck_assert(!m.down.goes_before && !m.down.goes_after);
	press(b, '"');
	ck_assert(!measure_of(&b->editor).is_shown);
	desk_free(b);
}
END_TEST

START_TEST(while_pegged_the_rulers_measure_the_rectangle)
{
	struct desk *b = desk_new(ROWS { ".....", ".....", NULL });
	struct measure m;

	look(b);
	press(b, '"');
	press(b, PRESS_END);
	press(b, PRESS_ENTER);
	press(b, PRESS_LEFT);
	press(b, PRESS_DOWN);
	m = measure_of(&b->editor);
	ck_assert(m.is_shown);
	ck_assert_int_eq(m.across.first, 6);
	ck_assert_int_eq(m.across.length, 2 * NM_PER_FOOT);
	ck_assert_int_eq(m.down.length, 2 * NM_PER_FOOT);
	desk_free(b);
}
END_TEST

START_TEST(what_reaches_out_of_view_is_measured_whole_and_said_to_go_on)
{
	struct desk *b = sit();
	struct measure m;

	memset(editor_edit(&b->editor)->ground.cells, 'b', (size_t)200 * 100);
	editor_stroke(&b->editor);
	press(b, '"');
	desk_do(b, ACT_CENTRE);
	m = measure_of(&b->editor);
	ck_assert(m.across.first == 0 && m.across.last == 47);
	ck_assert(m.down.first == 0 && m.down.last == 19);
	ck_assert(m.across.goes_before && m.across.goes_after);
	ck_assert(m.down.goes_before && m.down.goes_after);
	ck_assert_int_eq(m.across.length, 200 * NM_PER_FOOT);
	press(b, PRESS_HOME);
	ck_assert(!measure_of(&b->editor).across.goes_before);
	press(b, PRESS_PAGE_DOWN);
	ck_assert(!measure_of(&b->editor).down.goes_after);
	press(b, '_');
	m = measure_of(&b->editor);
	ck_assert(!m.across.goes_after && !m.down.goes_before);
	ck_assert_int_eq(m.down.length, 100 * NM_PER_FOOT);
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act view");
	TCase *view = suite_case(suite, "view"), *measures = suite_case(suite, "measures");

	tcase_add_test(view, farther_and_nearer_go_step_by_step_and_end_at_the_whole_plan);
	tcase_add_test(view, the_overview_goes_back_to_the_zoom_it_came_from);
	tcase_add_test(view, a_plan_that_is_seen_whole_has_no_overview);
	tcase_add_test(view, centring_puts_the_cursor_in_the_middle_and_leaves_it_where_it_is);
	tcase_add_test(view, centring_says_where_it_could_do_nothing);
	tcase_add_loop_test(view, scrolling_goes_each_way_and_keeps_the_cursor_in_sight, 0, 4);
	tcase_add_test(view, a_trail_is_not_laid_by_scrolling);
	tcase_add_test(view, the_panel_is_wide_then_hidden_then_back_and_pages_bring_it_back);
	tcase_add_test(measures, here_tells_how_far_the_peg_is_across_down_and_straight);
	tcase_add_test(measures, the_longest_way_on_the_largest_plan_is_told_right);
	tcase_add_test(measures, the_rulers_measure_the_region_under_the_cursor);
	tcase_add_test(measures, while_pegged_the_rulers_measure_the_rectangle);
	tcase_add_test(measures, what_reaches_out_of_view_is_measured_whole_and_said_to_go_on);
	return suite;
}
