/* Pointing, without a terminal: reports in, the editor's moves and strokes out. */

#include "screen/pointer.h"
#include "support/desk.h"
#include "support/plots.h"
#include "support/runner.h"
#include "support/shown.h"

#include <string.h>

#define ROWS (const char *[])

/* Open ground of 8 by 4 with a legend of b and p, b in hand, the cursor on 0,0. */
static struct desk *sit(void)
{
	struct desk *b = desk_new(ROWS { "bp......", "........", "........", "........", NULL });

	memset(editor_edit(&b->editor)->ground.cells, OPEN_GROUND, 32);
	editor_stroke(&b->editor);
	b->editor.saved_position = b->editor.position;
	desk_refresh(b);
	return b;
}

static void point_at(struct desk *b, enum point_kind kind, int row, int column)
{
	const struct wanted wanted = { b->editor.panel, 80, 0, false };
	struct layout layout = layout_of(24, 80, &wanted);
	struct mirror mirror = mirror_of(b->editor.plot);
	struct point point = { kind, row, column };

	view_fit(&b->editor.view, &mirror, layout.plan.rows, layout.plan.columns);
	view_follow(&b->editor.view, &b->editor.plot->ground, b->editor.cursor);
	pointer_take(&b->editor, &layout, &point);
}

/* Over a cell. */
static void point_on(struct desk *b, enum point_kind kind, int x, int y)
{
	/* over its letter or its mark: either will do */
	point_at(b, kind, PLAN_TOP + y, PLAN_LEFT + 2 * x + (x & 1));
}

static void click(struct desk *b, int x, int y)
{
	point_on(b, POINT_PRESS, x, y);
	point_on(b, POINT_RELEASE, x, y);
}

static void check_cursor(const struct desk *b, int x, int y)
{
	ck_assert_int_eq(b->editor.cursor.x, x);
	ck_assert_int_eq(b->editor.cursor.y, y);
}

static const char *const nothing[] = { "........", "........", "........", "........", NULL };

START_TEST(a_click_goes_there_and_lays_nothing)
{
	struct desk *b = sit();

	click(b, 3, 2);
	check_cursor(b, 3, 2);
	click(b, 7, 3);
	check_cursor(b, 7, 3);
	desk_check(b, nothing);
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(a_click_on_the_cursor_lays_what_is_in_hand)
{
	struct desk *b = sit();

	click(b, 3, 2);
	click(b, 3, 2);
	desk_check(b, ROWS { "........", "........", "...b....", "........", NULL });
	desk_press(b, PRESS_BACKSPACE);
	desk_check(b, nothing);
	desk_free(b);
}
END_TEST

START_TEST(a_press_that_is_let_go_elsewhere_lays_nothing)
{
	struct desk *b = sit();

	point_on(b, POINT_PRESS, 0, 0);
	point_at(b, POINT_RELEASE, 2, 60);
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	point_on(b, POINT_PRESS, 5, 0);
	desk_press(b, PRESS_ESCAPE);
	point_on(b, POINT_DRAG, 6, 0);
	point_on(b, POINT_RELEASE, 6, 0);
	check_cursor(b, 5, 0);
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	click(b, 0, 0);
	desk_check(b, nothing);
	desk_free(b);
}
END_TEST

START_TEST(a_drag_pegs_where_it_began_and_asks_where_it_ends)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Fill it", "Frame it", "Thickness: 1 cell", NULL });
	point_on(b, POINT_PRESS, 1, 1);
	point_on(b, POINT_DRAG, 2, 1);
	ck_assert_int_eq(editor_state(&b->editor), STATE_PEGGED);
	ck_assert(b->editor.peg.x == 1 && b->editor.peg.y == 1);
	point_on(b, POINT_DRAG, 3, 2);
	desk_check(b, nothing);
	ck_assert_uint_eq(b->editor.message.length, 0);
	point_on(b, POINT_RELEASE, 3, 2);
	desk_check(b, ROWS { "........", ".bbb....", ".bbb....", "........", NULL });
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	desk_type(b, "p");
	point_on(b, POINT_PRESS, 7, 3);
	point_on(b, POINT_RELEASE, 5, 1); /* no report came on the way */
	desk_check(b, ROWS { "........", ".bbb.ppp", ".bbb.p.p", ".....ppp", NULL });
	desk_free(b);
}
END_TEST

START_TEST(a_drag_that_ends_beyond_the_plan_ends_where_it_left_it)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Fill it", NULL });
	point_on(b, POINT_PRESS, 5, 3);
	point_on(b, POINT_DRAG, 7, 3);
	point_on(b, POINT_DRAG, 9, 3);
	point_at(b, POINT_RELEASE, 2, 70);
	desk_check(b, ROWS { "........", "........", "........", ".....bbb", NULL });
	desk_free(b);
}
END_TEST

START_TEST(a_question_that_is_left_keeps_the_peg)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "", "Fill it", NULL });
	point_on(b, POINT_PRESS, 1, 1);
	point_on(b, POINT_DRAG, 2, 1);
	point_on(b, POINT_RELEASE, 2, 1);
	ck_assert_int_eq(editor_state(&b->editor), STATE_PEGGED);
	click(b, 1, 2); /* another corner */
	ck_assert_int_eq(editor_state(&b->editor), STATE_PEGGED);
	click(b, 1, 2);
	desk_check(b, ROWS { "........", ".b......", ".b......", "........", NULL });
	desk_free(b);
}
END_TEST

START_TEST(a_drag_carries_on_from_a_peg_that_stands)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Fill it", NULL });
	desk_press(b, PRESS_ENTER);
	point_on(b, POINT_PRESS, 4, 1);
	point_on(b, POINT_DRAG, 2, 1);
	point_on(b, POINT_RELEASE, 2, 1);
	desk_check(b, ROWS { "bbb.....", "bbb.....", "........", "........", NULL });
	desk_free(b);
}
END_TEST

START_TEST(with_the_trail_on_a_drag_lays_all_the_way)
{
	struct desk *b = sit();

	desk_type(b, "=");
	desk_check(b, ROWS { "b.......", "........", "........", "........", NULL });
	point_on(b, POINT_PRESS, 2, 3);
	desk_check(b, ROWS { "b.......", "........", "........", "..b.....", NULL });
	point_on(b, POINT_DRAG, 5, 0);
	point_on(b, POINT_RELEASE, 7, 0);
	desk_check(b, ROWS { "b....bbb", "....b...", "...b....", "..b.....", NULL });
	ck_assert_int_eq(editor_state(&b->editor), STATE_TRAIL);
	desk_free(b);
}
END_TEST

START_TEST(all_that_a_drag_lays_is_one_stroke)
{
	struct desk *b = sit();
	size_t before;

	desk_type(b, "=");
	before = history_undo_count(b->editor.history);
	point_on(b, POINT_PRESS, 2, 3);
	b->editor.saved_position = b->editor.position;
	ck_assert(!editor_is_saved(&b->editor)); /* it has laid, though it is no stroke yet */
	for (int x = 3; x < 8; x++)
		point_on(b, POINT_DRAG, x, 3);
	point_on(b, POINT_RELEASE, 7, 3);
	desk_check(b, ROWS { "b.......", "........", "........", "..bbbbbb", NULL });
	ck_assert_uint_eq(history_undo_count(b->editor.history), before + 1);
	desk_press(b, PRESS_BACKSPACE);
	desk_check(b, ROWS { "b.......", "........", "........", "........", NULL });
	ck_assert(editor_is_saved(&b->editor));
	desk_type(b, "+");
	desk_check(b, ROWS { "b.......", "........", "........", "..bbbbbb", NULL });
	desk_free(b);
}
END_TEST

START_TEST(a_key_or_a_rescue_ends_a_drag_with_what_it_has_laid)
{
	struct desk *b = sit();
	struct text said = TEXT_EMPTY;

	b->editor.has_begun = true;
	desk_type(b, "=");
	point_on(b, POINT_PRESS, 2, 3);
	point_on(b, POINT_DRAG, 3, 3);
	desk_press(b, PRESS_BACKSPACE); /* takes back the drag, not the stroke before it */
	desk_check(b, ROWS { "b.......", "........", "........", "........", NULL });
	point_on(b, POINT_DRAG, 6, 3); /* the button is still down, but the drag is over */
	desk_check(b, ROWS { "b.......", "........", "........", "........", NULL });
	point_on(b, POINT_RELEASE, 6, 3);

	point_on(b, POINT_PRESS, 2, 3);
	point_on(b, POINT_DRAG, 3, 3);
	b->editor.saved_position = b->editor.position;
	editor_rescue(&b->editor, &said);
	ck_assert_int_eq(b->editor.position, b->editor.saved_position + 1);
	point_on(b, POINT_RELEASE, 3, 3);
	ck_assert_int_eq(b->editor.position, b->editor.saved_position + 1);
	text_fini(&said);
	desk_free(b);
}
END_TEST

START_TEST(a_drag_that_lays_nothing_new_is_no_stroke)
{
	struct desk *b = sit();
	int64_t before;

	desk_type(b, "=");
	before = b->editor.position;
	point_on(b, POINT_PRESS, 0, 0);
	point_on(b, POINT_RELEASE, 0, 0);
	ck_assert_int_eq(b->editor.position, before);
	ck_assert_int_eq(editor_state(&b->editor), STATE_TRAIL);
	desk_free(b);
}
END_TEST

START_TEST(what_a_drag_changed_keeps_its_star_when_it_ends)
{
	struct desk *b = sit();

	desk_type(b, "=");
	point_on(b, POINT_PRESS, 2, 3);
	point_on(b, POINT_DRAG, 3, 3);
	desk_refresh(b);
	point_on(b, POINT_RELEASE, 3, 3);
	desk_refresh(b);
	ck_assert(desk_line(b, "Areas", "", "b b")->is_changed);
	desk_free(b);
}
END_TEST

START_TEST(a_way_has_no_gaps_and_its_images)
{
	struct desk *b = sit();

	plot_set(editor_edit(&b->editor), 0, HEAD_MIRROR, "left-right");
	editor_stroke(&b->editor);
	desk_type(b, "=");
	point_on(b, POINT_PRESS, 0, 0);
	point_on(b, POINT_DRAG, 1, 3);
	desk_check(b, ROWS { "b......b", "b......b", ".b....b.", ".b....b.", NULL });
	desk_free(b);
}
END_TEST

START_TEST(who_may_only_look_may_point_but_lays_nothing)
{
	struct desk *b = sit();

	b->editor.is_looking = true;
	b->editor.store.access = STORE_LOOKS;
	click(b, 3, 1);
	check_cursor(b, 3, 1);
	click(b, 3, 1);
	desk_says(b, "Looking only");
	point_on(b, POINT_PRESS, 3, 1);
	point_on(b, POINT_DRAG, 5, 2);
	point_on(b, POINT_RELEASE, 5, 2);
	desk_says(b, "Looking only");
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	desk_check(b, nothing);
	desk_free(b);
}
END_TEST

START_TEST(beyond_the_ground_on_rulers_and_rows_pointing_does_nothing)
{
	struct desk *b = sit();
	static const struct {
		int row, column;
	} places[] = { { 0, 10 }, { 1, 10 }, { 2, 4 }, { 3, 0 }, { 6, 6 }, { 2, 21 }, { 2, 53 },
		{ 5, 60 }, { 15, 60 }, { 22, 5 }, { 23, 5 }, { 400, 5 }, { 2, 400 } };

	for (size_t i = 0; i < sizeof places / sizeof *places; i++) {
		point_at(b, POINT_PRESS, places[i].row, places[i].column);
		point_at(b, POINT_RELEASE, places[i].row, places[i].column);
		check_cursor(b, 0, 0);
	}
	desk_check(b, nothing);
	desk_free(b);
}
END_TEST

START_TEST(the_panels_name_lists_the_pages_and_its_wheel_turns_the_page)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Walls", NULL });
	point_at(b, POINT_PRESS, 1, 60);
	ck_assert_str_eq(b->asked, "Which page?");
	ck_assert_str_eq(page_name(b->editor.page), "Walls");
	b->editor.page_rows = 7;
	point_at(b, POINT_WHEEL_DOWN, 5, 60);
	ck_assert_int_eq(b->editor.page_top, 6);
	point_at(b, POINT_WHEEL_UP, 5, 60);
	ck_assert_int_eq(b->editor.page_top, 0);
	desk_free(b);
}
END_TEST

START_TEST(a_hidden_panel_takes_no_clicks)
{
	struct desk *b = sit();

	b->editor.panel = PANEL_HIDDEN;
	point_at(b, POINT_PRESS, 1, 60);
	ck_assert_str_eq(b->asked, "");
	desk_free(b);
}
END_TEST

/* 100 columns and 60 rows of open ground. */
static void grow(struct desk *b)
{
	ground_fini(&editor_edit(&b->editor)->ground);
	ground_init(&editor_edit(&b->editor)->ground, 100, 60);
	editor_stroke(&b->editor);
	desk_refresh(b);
}

START_TEST(the_wheel_scrolls_and_the_cursor_comes_along)
{
	struct desk *b = sit();

	grow(b);
	point_on(b, POINT_WHEEL_DOWN, 3, 3);
	ck_assert_int_eq(b->editor.view.first.y, 6);
	check_cursor(b, 0, 6);
	point_on(b, POINT_WHEEL_UP, 3, 3);
	ck_assert_int_eq(b->editor.view.first.y, 0);
	check_cursor(b, 0, 6);
	desk_free(b);
}
END_TEST

START_TEST(far_off_a_character_is_the_middle_of_its_block_or_the_cursors_cell)
{
	struct desk *b = sit();

	grow(b);
	b->editor.view.zoom = 3; /* 2 x 4 cells */
	point_at(b, POINT_PRESS, 2 + 3, 5 + 10);
	point_at(b, POINT_RELEASE, 2 + 3, 5 + 10);
	check_cursor(b, 21, 12);
	b->editor.cursor.x = 20; /* of the same block */
	point_at(b, POINT_PRESS, 2 + 3, 5 + 10);
	point_at(b, POINT_RELEASE, 2 + 3, 5 + 10);
	check_cursor(b, 20, 12);
	ck_assert_int_eq(ground_cell(&b->editor.plot->ground, 20, 12), 'b');
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("pointer");
	TCase *plan = suite_case(suite, "plan"), *elsewhere = suite_case(suite, "elsewhere");

	tcase_add_test(plan, a_click_goes_there_and_lays_nothing);
	tcase_add_test(plan, a_click_on_the_cursor_lays_what_is_in_hand);
	tcase_add_test(plan, a_press_that_is_let_go_elsewhere_lays_nothing);
	tcase_add_test(plan, a_drag_pegs_where_it_began_and_asks_where_it_ends);
	tcase_add_test(plan, a_drag_that_ends_beyond_the_plan_ends_where_it_left_it);
	tcase_add_test(plan, a_question_that_is_left_keeps_the_peg);
	tcase_add_test(plan, a_drag_carries_on_from_a_peg_that_stands);
	tcase_add_test(plan, with_the_trail_on_a_drag_lays_all_the_way);
	tcase_add_test(plan, all_that_a_drag_lays_is_one_stroke);
	tcase_add_test(plan, a_key_or_a_rescue_ends_a_drag_with_what_it_has_laid);
	tcase_add_test(plan, a_drag_that_lays_nothing_new_is_no_stroke);
	tcase_add_test(plan, what_a_drag_changed_keeps_its_star_when_it_ends);
	tcase_add_test(plan, a_way_has_no_gaps_and_its_images);
	tcase_add_test(plan, who_may_only_look_may_point_but_lays_nothing);
	tcase_add_test(plan, the_wheel_scrolls_and_the_cursor_comes_along);
	tcase_add_test(plan, far_off_a_character_is_the_middle_of_its_block_or_the_cursors_cell);
	tcase_add_test(elsewhere, beyond_the_ground_on_rulers_and_rows_pointing_does_nothing);
	tcase_add_test(elsewhere, the_panels_name_lists_the_pages_and_its_wheel_turns_the_page);
	tcase_add_test(elsewhere, a_hidden_panel_takes_no_clicks);
	return suite;
}
