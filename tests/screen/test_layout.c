/* Where things stand on the screen. */

#include "base/text.h"
#include "screen/layout.h"
#include "support/golden.h"
#include "support/runner.h"

static void check_area(struct area a, int row, int column, int rows, int columns)
{
	ck_assert_int_eq(a.row, row);
	ck_assert_int_eq(a.column, column);
	ck_assert_int_eq(a.rows, rows);
	ck_assert_int_eq(a.columns, columns);
}

static struct layout layout_for(int rows, int columns, enum panel_width panel, int plan, int here)
{
	const struct wanted wanted = { panel, plan, here, false };

	return layout_of(rows, columns, &wanted);
}

/* A plan as wide as the screen, or wider. */
START_TEST(on_24_by_80_the_plan_has_24_by_20_cells)
{
	struct layout l = layout_for(24, 80, PANEL_NORMAL, 80, 0);

	ck_assert(!l.is_too_small);
	check_area(l.status, 0, 0, 1, 80);
	check_area(l.ruler, 1, 5, 1, 48);
	check_area(l.side_ruler, 2, 0, 20, 5);
	check_area(l.plan, 2, 5, 20, 48);
	check_area(l.divider, 1, 53, 21, 1);
	check_area(l.panel, 1, 54, 17, 26);
	check_area(l.here, 18, 54, 4, 26);
	check_area(l.form, 1, 34, 21, 46);
	check_area(l.message, 22, 0, 1, 80);
	check_area(l.keys, 23, 0, 1, 80);
	ck_assert_int_eq(l.second.columns, 0);
}
END_TEST

START_TEST(the_scale_of_the_sun_takes_a_row_above_the_message_where_it_is_wanted)
{
	struct layout l = layout_of(24, 80, &(struct wanted){ PANEL_NORMAL, 80, 0, true });

	check_area(l.plan, 2, 5, 19, 48);
	check_area(l.here, 17, 54, 4, 26);
	check_area(l.form, 1, 34, 20, 46);
	check_area(l.scale, 21, 0, 1, 80);
	check_area(l.message, 22, 0, 1, 80);
	ck_assert_int_eq(layout_for(24, 80, PANEL_NORMAL, 80, 0).scale.rows, 0);
}
END_TEST

START_TEST(what_is_here_has_the_rows_that_its_words_take_and_the_page_the_rest)
{
	static const struct { int words, here; } rows[] = { { 0, 4 }, { 2, 4 }, { 3, 4 }, { 4, 5 },
		{ 9, 10 }, { 10, 10 }, { 99, 10 } };

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct layout l = layout_for(24, 80, PANEL_NORMAL, 80, rows[i].words);

		check_area(l.here, 22 - rows[i].here, 54, rows[i].here, 26);
		check_area(l.panel, 1, 54, 21 - rows[i].here, 26);
	}
}
END_TEST

START_TEST(a_larger_screen_gives_its_room_to_the_plan)
{
	struct layout l = layout_for(40, 120, PANEL_NORMAL, 120, 0);

	check_area(l.plan, 2, 5, 36, 88);
	ck_assert_int_eq(l.panel.columns, 26);
	ck_assert_int_eq(l.panel.column, 94);
}
END_TEST

/* 5 columns are the ruler, one is the plan's end, one the line before the panel. */
START_TEST(the_panel_takes_what_the_plan_does_not_need)
{
	struct layout l = layout_for(40, 120, PANEL_NORMAL, 80, 0);

	ck_assert_int_eq(l.panel.columns, 33);
	ck_assert_int_ge(l.plan.columns, 80);
	l = layout_for(40, 120, PANEL_NORMAL, 40, 0);
	ck_assert_int_eq(l.panel.columns, 48);
	ck_assert_int_eq(l.panel.column, 72);
	ck_assert_int_eq(l.second.columns, 0);
}
END_TEST

START_TEST(a_second_page_stands_beside_the_first_where_80_columns_are_spare)
{
	struct layout l = layout_for(40, 120, PANEL_NORMAL, 120 - 7 - 80, 0);

	check_area(l.panel, 1, 41, 33, 39);
	check_area(l.second, 1, 81, 33, 39);
	check_area(l.here, 34, 41, 4, 79);
	ck_assert_int_eq(layout_for(40, 120, PANEL_NORMAL, 120 - 7 - 79, 0).second.columns, 0);
	l = layout_for(60, 250, PANEL_NORMAL, 60, 0);
	ck_assert_int_eq(l.panel.columns, 48);
	ck_assert_int_eq(l.second.columns, 48);
}
END_TEST

START_TEST(under_18_by_60_nothing_is_laid_out)
{
	ck_assert(layout_for(17, 200, PANEL_NORMAL, 80, 0).is_too_small);
	ck_assert(layout_for(200, 59, PANEL_NORMAL, 80, 0).is_too_small);
	ck_assert(layout_for(1, 1, PANEL_NORMAL, 80, 0).is_too_small);
	ck_assert(!layout_for(18, 60, PANEL_NORMAL, 80, 0).is_too_small);
}
END_TEST

static bool is_inside(struct area a, const struct layout *l)
{
	return a.row >= 0 && a.column >= 0 &&
		a.row + a.rows <= l->screen.rows && a.column + a.columns <= l->screen.columns;
}

static bool is_empty(struct area a)
{
	return a.rows == 0 || a.columns == 0;
}

static bool is_apart(struct area a, struct area b)
{
	return is_empty(a) || is_empty(b) || a.row + a.rows <= b.row || b.row + b.rows <= a.row ||
		a.column + a.columns <= b.column || b.column + b.columns <= a.column;
}

static void check_layout(const struct layout *l)
{
	const struct area areas[] = { l->status, l->ruler, l->side_ruler, l->plan, l->divider,
		l->panel, l->second, l->here, l->message, l->keys };
	const int count = sizeof areas / sizeof *areas;
	bool is_whole = is_inside(l->form, l) && is_inside(l->list, l) && !is_empty(l->form) &&
		!is_empty(l->plan) && !is_empty(l->here) && l->plan.columns % 2 == 0;

	for (int i = 0; i < count; i++) {
		is_whole = is_whole && is_inside(areas[i], l);
		for (int j = 0; j < i; j++)
			is_whole = is_whole && is_apart(areas[i], areas[j]);
	}
	ck_assert_msg(is_whole, "at %d x %d", l->screen.rows, l->screen.columns);
}

/* No strip of a page is left beside it that nobody could read. */
static void check_covers(const struct area *front, const struct layout *l)
{
	int edge = is_empty(l->second) ? l->divider.column : l->second.column - 1;

	ck_assert_msg(is_empty(l->panel) || front->column <= edge, "at %d x %d: %d",
		l->screen.rows, l->screen.columns, front->column);
	ck_assert_int_eq(front->column + front->columns, l->screen.columns);
}

START_TEST(on_every_size_all_areas_are_on_the_screen_apart_and_pages_covered_whole)
{
	for (int rows = 18; rows < 80; rows++)
		for (int columns = 60; columns < 260; columns++)
			for (int plan = 2; plan <= 128; plan *= 4) {
				struct layout l = layout_for(rows, columns, (enum panel_width)_i,
					plan, rows % 20);

				check_layout(&l);
				check_covers(&l.form, &l);
				check_covers(&l.list, &l);
			}
}
END_TEST

/* ---- As they were looked at ------------------------------------------------------------------ */

static void add_areas(struct text *out, const struct layout *l)
{
	const struct {
		const char *name;
		struct area area;
	} areas[] = {
		{ "status", l->status }, { "ruler", l->ruler }, { "side", l->side_ruler },
		{ "plan", l->plan }, { "divider", l->divider }, { "panel", l->panel },
		{ "second", l->second }, { "here", l->here }, { "list", l->list },
		{ "form", l->form }, { "scale", l->scale }, { "message", l->message },
		{ "keys", l->keys },
	};

	for (size_t i = 0; i < sizeof areas / sizeof *areas; i++)
		text_print(out, "  %s %d,%d %dx%d", areas[i].name, areas[i].area.row,
			areas[i].area.column, areas[i].area.rows, areas[i].area.columns);
	text_add(out, "\n");
}

/* Each width with each panel and plan, and by turns with each height, foot and scale. */
START_TEST(everything_is_where_it_was_looked_at)
{
	static const int heights[] = { 18, 19, 24, 41, 60 }, feet[] = { 0, 5, 4, 99 };
	static const int widths[] = { 60, 61, 73, 79, 80, 81, 101, 120, 167, 168, 250 };
	static const int plans[] = { 2, 44, 128 };
	struct text out = TEXT_EMPTY;
	int turn = 0;

	for (size_t i = 0; i < sizeof widths / sizeof *widths; i++)
		for (int panel = PANEL_NORMAL; panel <= PANEL_HIDDEN; panel++)
			for (size_t j = 0; j < sizeof plans / sizeof *plans; j++, turn++) {
				const struct wanted wanted = { (enum panel_width)panel, plans[j],
					feet[turn % 4], turn % 7 == 0 };
				struct layout l = layout_of(heights[turn % 5], widths[i], &wanted);

				text_print(&out, "%d x %d, panel %d, plan %d, here %d%s\n",
					heights[turn % 5], widths[i], panel, plans[j],
					wanted.here, wanted.scale ? ", scale" : "");
				add_areas(&out, &l);
			}
	golden_check("screen/layouts.txt", out.bytes);
	text_fini(&out);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen layout");
	TCase *areas = suite_case(suite, "areas");

	tcase_add_test(areas, on_24_by_80_the_plan_has_24_by_20_cells);
	tcase_add_test(areas,
		the_scale_of_the_sun_takes_a_row_above_the_message_where_it_is_wanted);
	tcase_add_test(areas, what_is_here_has_the_rows_that_its_words_take_and_the_page_the_rest);
	tcase_add_test(areas, a_larger_screen_gives_its_room_to_the_plan);
	tcase_add_test(areas, the_panel_takes_what_the_plan_does_not_need);
	tcase_add_test(areas, a_second_page_stands_beside_the_first_where_80_columns_are_spare);
	tcase_add_test(areas, under_18_by_60_nothing_is_laid_out);
	tcase_add_loop_test(areas,
		on_every_size_all_areas_are_on_the_screen_apart_and_pages_covered_whole,
		PANEL_NORMAL, PANEL_HIDDEN + 1);
	tcase_add_test(areas, everything_is_where_it_was_looked_at);
	return suite;
}
