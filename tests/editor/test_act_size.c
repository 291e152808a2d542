/* Growing and cropping the plan, without a terminal. */

#include "support/desk.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/random.h"
#include "support/runner.h"

#include "base/memory.h"
#include "plot/format/format.h"
#include "plot/edit/resize.h"

#include <stdio.h>
#include <string.h>

#define ROWS (const char *[])

static const char *const start[] = { "bbb..", "bp...", "..S..", NULL };

static struct desk *sit(void)
{
	struct desk *b = desk_new(start);

	b->editor.cursor = (struct place){ 2, 1 };
	return b;
}

START_TEST(each_side_grows_or_is_cropped_by_a_length_or_by_cells_in_one_step)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Each side by measure",
		"Left: 1 ft; Top: 2 cells; Right: -24 in; Bottom: ", NULL });
	desk_do(b, ACT_SIZE);
	ck_assert_str_eq(b->offered, "Left: \nTop: \nRight: \nBottom: \n");
	desk_check(b, ROWS { "....", "....", ".bbb", ".bp.", "...S", NULL });
	ck_assert(b->editor.cursor.x == 3 && b->editor.cursor.y == 3);
	desk_says_whole(b, "The plan is 4 ft x 5 ft now, 4 x 5 cells.");
	ck_assert_uint_eq(history_undo_count(b->editor.history), 1);
	desk_press(b, PRESS_BACKSPACE);
	desk_check(b, start);
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(what_would_go_is_said_and_asked_before)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Each side by measure", "Left: -2 ft", "Leave the plan as it is",
		"Each side by measure", "Left: -2 ft", "Crop it all the same", NULL });
	desk_do(b, ACT_SIZE);
	desk_asked_whole(b, "3 cells of bed, 1 of path would go.");
	ck_assert_str_eq(b->offered, "Leave the plan as it is\nCrop it all the same\n");
	desk_check(b, start);
	desk_says_whole(b, "The plan is left as it is.");
	desk_do(b, ACT_SIZE);
	desk_check(b, ROWS { "b..", "...", "S..", NULL });
	ck_assert(b->editor.cursor.x == 0 && b->editor.cursor.y == 1);
	desk_press(b, PRESS_BACKSPACE);
	desk_check(b, start);
	desk_free(b);
}
END_TEST

START_TEST(what_is_around_and_would_go_is_said_too)
{
	struct desk *b = sit();
	struct surroundings *around = &editor_edit(&b->editor)->details.around;
	struct finish *finish = &editor_edit(&b->editor)->details.finish;
	struct route *route = routes_add(&services_add(&around->services, SERVICE_WATER, false,
		memory_string("Supply"))->routes);

	route_add(route, (struct place){ 0, 0 });
	route_add(route, (struct place){ 5, 0 });
	ties_add(&around->ties, (struct place){ 5, 3 }, memory_string("Corner"), NM_PER_M);
	obstacles_add(&around->kept, memory_string("Pear"))->radius = NM_PER_M;
	around->kept.items[0].at = (struct place){ 4, 0 };
	around->has_drop = true;
	around->drop = (struct place){ 5, 0 };
	around->has_tap = true;
	around->tap = (struct place){ 5, 1 };
	*finish = (struct finish){ .has_level = true, .at = { 4, 3 } };
	editor_stroke(&b->editor);
	desk_answer(b, ROWS { "Crop all right of the cursor", "Leave the plan as it is",
		"Each side by measure", "Right: -1 cell", "Crop it all the same", NULL });
	desk_do(b, ACT_SIZE);
	desk_asked_whole(b, "2 ft of services, 1 thing kept, 1 tie, the drop, the tap, the "
		"finished level would go.");
	ties_add(&editor_edit(&b->editor)->details.around.ties, (struct place){ 5, 3 },
		memory_string("Pier"), NM_PER_M);
	editor_stroke(&b->editor);
	desk_do(b, ACT_SIZE);
	desk_asked_whole(b, "1 ft of services, 2 ties, the drop, the tap would go.");
	ck_assert_uint_eq(b->editor.plot->details.around.kept.count, 1);
	ck_assert_uint_eq(b->editor.plot->details.around.ties.count, 0);
	desk_press(b, PRESS_BACKSPACE);
	ck_assert_uint_eq(b->editor.plot->details.around.ties.count, 2);
	desk_free(b);
}
END_TEST

struct crop {
	const char *answer, *asked;
	const char *rows[4];
	int x, y;
};

/* With the cursor on 2,1. */
static const struct crop crops[] = {
	{ "Crop all left of the cursor", "3 cells of bed, 1 of path ",
		{ "b..", "...", "S.." }, 0, 1 },
	{ "Crop all above the cursor", "3 cells of bed ", { "bp...", "..S.." }, 2, 0 },
	{ "Crop all right of the cursor", NULL, { "bbb", "bp.", "..S" }, 2, 1 },
	{ "Crop all below the cursor", "1 cell of fixture ", { "bbb..", "bp..." }, 2, 1 },
};

START_TEST(what_lies_beyond_the_cursor_is_cropped)
{
	const struct crop *crop = &crops[_i];
	struct desk *b = sit();

	desk_answer(b, crop->asked ? (const char *[]){ crop->answer, "Crop it all the same",
		NULL } : (const char *[]){ crop->answer, NULL });
	desk_do(b, ACT_SIZE);
	desk_asked(b, crop->asked ? crop->asked : "5 ft x 3 ft");
	desk_check(b, crop->rows);
	ck_assert(b->editor.cursor.x == crop->x && b->editor.cursor.y == crop->y);
	desk_free(b);
}
END_TEST

START_TEST(at_the_edge_there_is_nothing_to_crop)
{
	struct desk *b = sit();

	b->editor.cursor = (struct place){ 0, 0 };
	desk_answer(b, ROWS { "Crop all left of the cursor", "Each side by measure", "", NULL });
	desk_do(b, ACT_SIZE);
	desk_says_whole(b, "The plan has that size already.");
	desk_do(b, ACT_SIZE);
	desk_check(b, start);
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(the_plan_is_cropped_to_the_mark_from_either_list)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Mark it", "Crop to the mark", "Crop it all the same", "Mark it",
		"Crop the plan to it", "Crop it all the same", "Crop to the mark", NULL });
	desk_press(b, PRESS_ENTER);
	b->editor.cursor = (struct place){ 1, 0 };
	desk_press(b, PRESS_ENTER);
	desk_do(b, ACT_SIZE);
	desk_asked_whole(b, "2 cells of bed, 1 of fixture would go.");
	desk_check(b, ROWS { "bb", "p.", NULL });
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	desk_press(b, PRESS_ENTER);
	desk_press(b, PRESS_ENTER);
	desk_press(b, PRESS_ENTER);
	ck_assert_int_eq(b->editor.plot->ground.columns, 1);
	desk_type(b, "!");
	desk_says_whole(b, "Nothing is marked: pick Mark this region from !, or peg two corners "
		"with Enter and pick Mark it.");
	desk_free(b);
}
END_TEST

START_TEST(a_plan_of_nothing_or_of_too_much_is_refused_in_words)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Each side by measure", "Left: -3 ft; Right: -2 ft",
		"Left: 2047 cells",
		"Left: ; Right: 4", "Right: 4 cells", NULL });
	desk_do(b, ACT_SIZE);
	desk_check(b, ROWS { "bbb......", "bp.......", "..S......", NULL });
	desk_answer(b, ROWS { "Each side by measure", "Top: -3 cells", "", NULL });
	desk_do(b, ACT_SIZE);
	ck_assert_str_eq(b->fault, "The plan would be 9 x 0 cells; it has 1 to 2048 each way.");
	desk_answer(b, ROWS { "Each side by measure", "Bottom: 2046 cells", "", NULL });
	desk_do(b, ACT_SIZE);
	ck_assert_str_eq(b->fault, "The plan would be 9 x 2049 cells; it has 1 to 2048 each way.");
	desk_answer(b, ROWS { "Each side by measure", "Bottom: two", "", NULL });
	desk_do(b, ACT_SIZE);
	ck_assert_ptr_nonnull(strstr(b->fault, "Bottom: found two, expected a length"));
	desk_free(b);
}
END_TEST

START_TEST(a_set_axis_moves_with_the_ground_and_its_loss_is_said)
{
	struct desk *b = sit();

	plot_set(editor_edit(&b->editor), 0, HEAD_MIRROR, "left-right");
	plot_set(editor_edit(&b->editor), 0, HEAD_AXIS, "2,3");
	editor_stroke(&b->editor);
	desk_answer(b, ROWS { "Each side by measure", "Left: 2 cells; Bottom: 1 cell",
		"Each side by measure", "Left: -4 cells", "Crop it all the same", NULL });
	desk_do(b, ACT_SIZE);
	ck_assert_int_eq(mirror_of(b->editor.plot).across, 6);
	ck_assert_int_eq(mirror_of(b->editor.plot).down, 3);
	desk_says_whole(b, "The plan is 7 ft x 4 ft now, 7 x 4 cells. The mirror has 3 faults.");
	desk_do(b, ACT_SIZE);
	desk_says_whole(b, "The plan is 3 ft x 4 ft now, 3 x 4 cells. The axis fell outside; "
		"both stand in the middle. The mirror has 2 faults.");
	ck_assert(!block_value(&b->editor.plot->details.head, HEAD_AXIS)->set);
	desk_free(b);
}
END_TEST

START_TEST(sizing_ends_peg_mark_and_trail)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Each side by measure", "Top: 1 cell", "Each side by measure",
		"Top: 1 cell", NULL });
	desk_press(b, PRESS_ENTER);
	desk_do(b, ACT_SIZE);
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	desk_type(b, "=");
	desk_do(b, ACT_SIZE);
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	desk_free(b);
}
END_TEST

START_TEST(peg_and_bends_stay_on_the_plan_when_its_size_is_taken_back)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Each side by measure", "Right: 3 cells; Bottom: 2 cells", NULL });
	desk_do(b, ACT_SIZE);
	b->editor.cursor = (struct place){ 8, 4 };
	desk_press(b, PRESS_ENTER);
	b->editor.cursor = (struct place){ 7, 1 };
	desk_do(b, ACT_BEND);
	b->editor.cursor = (struct place){ 1, 3 };
	desk_do(b, ACT_BEND);
	desk_press(b, PRESS_BACKSPACE);
	desk_check(b, start);
	ck_assert_int_eq(b->editor.bend_count, 2);
	ck_assert(place_equal(b->editor.peg, (struct place){ 4, 2 }));
	ck_assert(place_equal(b->editor.bends[0], (struct place){ 4, 1 }));
	ck_assert(place_equal(b->editor.bends[1], (struct place){ 1, 2 }));
	desk_free(b);
}
END_TEST

/* Sizes each side at random, and answers what is asked about it. */
static struct margins size_at_random(struct desk *b, struct random *r)
{
	struct margins m = { random_between(r, -2, 3), random_between(r, -2, 3),
		random_between(r, -2, 3), random_between(r, -2, 3) };
	int64_t lost[CLASSES];
	char sides[120];
	const char *answers[] = { "Each side by measure", sides, NULL, NULL };

	if (!resize_fits(&b->editor.plot->ground, &m))
		return (struct margins){ 0, 0, 0, 0 };
	snprintf(sides, sizeof sides, "Left: %d cells; Top: %d ft; Right: %d cells; Bottom: %d ft",
		m.left, m.top, m.right, m.bottom);
	if (resize_loss(b->editor.plot, &m, lost))
		answers[2] = "Crop it all the same";
	desk_answer(b, answers);
	desk_do(b, ACT_SIZE);
	ck_assert_ptr_null(*b->answers);
	desk_answer(b, NULL);
	return m;
}

static void check_moved(const struct ground *old, const struct ground *now, struct margins m)
{
	ck_assert_int_eq(now->columns, old->columns + m.left + m.right);
	ck_assert_int_eq(now->rows, old->rows + m.top + m.bottom);
	for (int y = 0; y < now->rows; y++)
		for (int x = 0; x < now->columns; x++)
			ck_assert_int_eq(ground_cell(now, x, y),
				ground_holds(old, x - m.left, y - m.top) ?
				ground_cell(old, x - m.left, y - m.top) : OPEN_GROUND);
}

START_TEST(sizes_at_random_keep_what_stays_inside_and_taken_back_give_the_first_bytes)
{
	for (uint64_t seed = 0; seed < 60; seed++) {
		struct random r = { seed };
		struct desk *b = sit();
		struct text first = TEXT_EMPTY, now = TEXT_EMPTY;

		plot_set(editor_edit(&b->editor), 0, HEAD_AXIS, "4,3");
		editor_stroke(&b->editor);
		format_write(b->editor.plot, &first);
		for (int i = 0; i < 30; i++) {
			struct ground old = ground_copy(&b->editor.plot->ground);
			struct margins m = size_at_random(b, &r);

			plot_check(b->editor.plot);
			check_moved(&old, &b->editor.plot->ground, m);
			ground_fini(&old);
		}
		while (history_undo_count(b->editor.history) > 1)
			desk_press(b, PRESS_BACKSPACE);
		format_write(b->editor.plot, &now);
		ck_assert_str_eq(now.bytes, first.bytes);
		text_fini(&first);
		text_fini(&now);
		desk_free(b);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act_size");
	TCase *sizing = suite_case(suite, "sizing");

	tcase_add_test(sizing, each_side_grows_or_is_cropped_by_a_length_or_by_cells_in_one_step);
	tcase_add_test(sizing, what_would_go_is_said_and_asked_before);
	tcase_add_test(sizing, what_is_around_and_would_go_is_said_too);
	tcase_add_loop_test(sizing, what_lies_beyond_the_cursor_is_cropped, 0,
		sizeof crops / sizeof *crops);
	tcase_add_test(sizing, at_the_edge_there_is_nothing_to_crop);
	tcase_add_test(sizing, the_plan_is_cropped_to_the_mark_from_either_list);
	tcase_add_test(sizing, a_plan_of_nothing_or_of_too_much_is_refused_in_words);
	tcase_add_test(sizing, a_set_axis_moves_with_the_ground_and_its_loss_is_said);
	tcase_add_test(sizing, sizing_ends_peg_mark_and_trail);
	tcase_add_test(sizing, peg_and_bends_stay_on_the_plan_when_its_size_is_taken_back);
	tcase_add_test(sizing,
		sizes_at_random_keep_what_stays_inside_and_taken_back_give_the_first_bytes);
	return suite;
}
