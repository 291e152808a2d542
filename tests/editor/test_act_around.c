/* What is around a plot, entered and taken away without a terminal: services by their points,
 * houses, shade, what is kept, ties, the drop, the tap; and what the cells then say. */
#include "support/desk.h"
#include "support/plot_check.h"
#include "support/runner.h"

#include "editor/here.h"

#include <stdio.h>
#include <string.h>

#define ROWS (const char *[])

static struct desk *sit(void)
{
	return desk_new(ROWS { "bp.....", ".......", ".......", ".......", ".......", NULL });
}

static const struct surroundings *around(const struct desk *b)
{
	return &b->editor.plot->details.around;
}

static void go(struct desk *b, int x, int y)
{
	b->editor.cursor = (struct place){ x, y };
}

static struct text here_text(struct desk *b)
{
	struct text text = TEXT_EMPTY;

	desk_refresh(b);
	here_words(&b->editor, &text);
	/* blanks that lines are not broken at */
	for (char *tie; text.length && (tie = strstr(text.bytes, "\302\240"));) {
		*tie = ' ';
		memmove(tie + 1, tie + 2, strlen(tie + 1));
	}
	return text;
}

static void check_here(struct desk *b, const char *words)
{
	struct text text = here_text(b);

	ck_assert_msg(strstr(text.bytes, words), "%s", text.bytes);
	text_fini(&text);
}

static void check_here_not(struct desk *b, const char *words)
{
	struct text text = here_text(b);

	ck_assert_msg(!strstr(text.bytes, words), "%s", text.bytes);
	text_fini(&text);
}

static void route_is(const struct route *route, const char *points)
{
	struct text text = TEXT_EMPTY;

	for (int i = 0; i < route->count; i++)
		text_print(&text, "%s%d,%d", i ? " " : "", route->points[i].x, route->points[i].y);
	ck_assert_str_eq(text.bytes, points);
	text_fini(&text);
}

/* ---- Services -------------------------------------------------------------------------------- */

/* Pegged at 0,1, bent at 4,1, as far as 4,3. */
static void bend(struct desk *b)
{
	go(b, 0, 1);
	desk_press(b, PRESS_ENTER);
	go(b, 4, 1);
	desk_do(b, ACT_BEND);
	go(b, 4, 3);
}

START_TEST(a_line_is_laid_from_the_peg_by_its_bends_with_a_card_for_a_new_service)
{
	struct desk *b = sit();
	const struct service *service;

	bend(b);
	desk_answer(b, ROWS { "Lay a service line", "Below and left",
		"Name: Supply; Kind: water; State: existing; Depth: 18; Owner: private; "
		"New note, type it: By hand.", NULL });
	desk_press(b, PRESS_ENTER);
	ck_assert_str_eq(b->offered, "Name: \nKind: water\nState: existing\nDepth: \nOwner: \n"
		"Trench, width: \nTrench, below the top: \n"
		"New note, type it: \n");
	ck_assert_uint_eq(around(b)->services.count, 1);
	service = &around(b)->services.items[0];
	ck_assert_str_eq(service->name, "Supply");
	ck_assert_int_eq(service->kind, SERVICE_WATER);
	ck_assert(!service->is_to_lay);
	ck_assert_int_eq(block_length(&service->block, SERVICE_DEPTH), 18 * NM_PER_INCH);
	ck_assert_int_eq(block_value(&service->block, SERVICE_OWNER)->as.number, OWNER_PRIVATE);
	ck_assert_uint_eq(service->block.notes.count, 1);
	ck_assert_uint_eq(service->routes.count, 1);
	route_is(&service->routes.items[0], "0,2 4,2 4,4");
	desk_says_whole(b, "Supply: a line of 6 ft; Backspace takes it back.");
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	plot_check(b->editor.plot);
	go(b, 2, 1);
	check_here(b, "Water below: Supply, 18 in deep, existing\n");
	go(b, 4, 3);
	check_here(b, "Water left: Supply, 18 in deep, existing\n");
	desk_press(b, PRESS_BACKSPACE);
	desk_says_whole(b, "Taken back: Lay a service line; no more can be.");
	ck_assert_uint_eq(around(b)->services.count, 0);
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(each_side_that_a_way_has_is_offered_with_its_length)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "", "", "", "", NULL });
	bend(b);
	desk_do(b, ACT_SERVICE);
	desk_asked_whole(b, "Along which side of the cells does it go?");
	ck_assert_str_eq(b->offered, "Above and left: 7 ft\nAbove and right: 8 ft\n"
		"Below and left: 6 ft\nBelow and right: 7 ft\n");
	desk_press(b, PRESS_ESCAPE);
	go(b, 1, 1);
	desk_press(b, PRESS_ENTER);
	desk_do(b, ACT_SERVICE);
	ck_assert_str_eq(b->offered, "Above: 1 ft\nBelow: 1 ft\nLeft: 1 ft\nRight: 1 ft\n");
	go(b, 6, 2); /* straightened */
	desk_do(b, ACT_SERVICE);
	ck_assert_str_eq(b->offered, "Above: 6 ft\nBelow: 6 ft\n");
	go(b, 2, 4);
	desk_do(b, ACT_SERVICE);
	ck_assert_str_eq(b->offered, "Left: 4 ft\nRight: 4 ft\n");
	ck_assert_int_eq(editor_state(&b->editor), STATE_PEGGED);
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

/* Of one service, as what the desk answers says: from (0, 1) to (6, 1), then (3, 1) to (3, 4). */
static void lay_two_lines(struct desk *b)
{
	go(b, 0, 1);
	desk_press(b, PRESS_ENTER);
	go(b, 6, 1);
	desk_do(b, ACT_SERVICE);
	go(b, 3, 1);
	desk_press(b, PRESS_ENTER);
	go(b, 3, 4);
	desk_do(b, ACT_SERVICE);
}

START_TEST(a_further_line_goes_to_the_service_that_is_picked_and_one_alone_can_go_again)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Above", "Name: Lamp; Kind: power; State: to-lay", "Left", "Lamp",
		"Lamp", "The line from 0 in across, 1 ft down", "Right", "A new service",
		"Name: Drain; Kind: drain", "Lamp", "", NULL });
	lay_two_lines(b);
	ck_assert_str_eq(b->first, "Lamp");
	ck_assert_uint_eq(around(b)->services.items[0].routes.count, 2);
	go(b, 3, 2);
	/* NFPA 70, National Electrical Code, 2020, Table 300.5, as quoted: direct burial */
	check_here(b, "Power left: Lamp, 24 in deep, to lay\n");
	desk_do(b, ACT_AROUND_OUT);
	desk_says_whole(b, "Removed: Lamp; Backspace takes it back.");
	ck_assert_uint_eq(around(b)->services.items[0].routes.count, 1);
	route_is(&around(b)->services.items[0].routes.items[0], "3,1 3,5");
	go(b, 6, 0);
	desk_press(b, PRESS_ENTER);
	go(b, 6, 4);
	desk_do(b, ACT_SERVICE);
	ck_assert_uint_eq(around(b)->services.count, 2);
	route_is(&around(b)->services.items[1].routes.items[0], "7,0 7,5");
	plot_check(b->editor.plot);
	desk_do(b, ACT_AROUND_OUT);
	ck_assert_uint_eq(around(b)->services.count, 1);
	ck_assert_str_eq(around(b)->services.items[0].name, "Drain");
	desk_do(b, ACT_AROUND_OUT);
	ck_assert_str_eq(b->offered, "Drain: service\n");
	desk_free(b);
}
END_TEST

START_TEST(without_a_peg_it_is_said_how_a_line_is_laid_and_what_is_left_lays_none)
{
	struct desk *b = sit();

	desk_do(b, ACT_SERVICE);
	desk_says_whole(b, "Peg where the line begins: Enter. Bend it where it turns; where it "
		"ends press Enter again and pick this.");
	go(b, 0, 1);
	desk_press(b, PRESS_ENTER);
	desk_answer(b, ROWS { "", "Above", "", NULL });
	desk_do(b, ACT_SERVICE);
	desk_do(b, ACT_SERVICE);
	desk_asked_whole(b, "A new service");
	ck_assert_uint_eq(around(b)->services.count, 0);
	ck_assert_int_eq(editor_state(&b->editor), STATE_PEGGED);
	desk_free(b);
}
END_TEST

/* As service_values.h has them. */
static const struct { const char *kind, *depth, *trench; } usual[] = {
	{ "water", "18 in", "6 in" },
	{ "gas", "18 in", "6 in" },
	{ "power", "2 ft", "6 in" },
	{ "telecom", "1 ft", "6 in" },
	{ "drain", "1 ft", "1 ft" },
	{ "other", "18 in", "6 in" },
};
enum { USUAL = sizeof usual / sizeof *usual };

static void field_check(const struct card *card, const char *label, const char *unset)
{
	for (int i = 0; i < card->count; i++)
		if (strcmp(card->fields[i].label, label) == 0) {
			ck_assert_str_eq(card->fields[i].unset, unset);
			return;
		}
	ck_abort_msg("no field %s", label);
}

static void pick_in_card(struct card *card, int field, const char *word)
{
	card_type(card, field, word);
	card->changed(card, field);
}

/* Each kind, while it is to be laid and while it exists. */
static bool fill_by_kind_and_state(struct asker *asker, struct card *card)
{
	(void)asker;
	for (int i = 0; i < 2 * USUAL; i++) {
		const int kind = i / 2;

		pick_in_card(card, 1, usual[kind].kind);
		field_check(card, "Depth", i % 2 ? usual[kind].depth : "not known");
		field_check(card, "Trench, width", usual[kind].trench);
		pick_in_card(card, 2, i % 2 ? "existing" : "to-lay");
		field_check(card, "Depth", i % 2 ? "not known" : usual[kind].depth);
		field_check(card, "Trench, width", usual[kind].trench);
	}
	return false;
}

START_TEST(the_card_of_a_service_says_what_holds_for_the_kind_and_state_typed)
{
	struct desk *b = sit();

	b->asker.fill = fill_by_kind_and_state;
	go(b, 0, 1);
	desk_press(b, PRESS_ENTER);
	desk_answer(b, ROWS { "Above", NULL });
	desk_do(b, ACT_SERVICE);
	desk_free(b);
}
END_TEST

/* ---- Houses, and what is kept ---------------------------------------------------------------- */

START_TEST(a_tree_is_kept_by_its_middle_and_radius)
{
	struct desk *b = sit();

	go(b, 3, 2);
	desk_answer(b, ROWS { "Name: Old pear; Radius: 0", "Name: Old pear; Radius: 1 ft 6 in",
		NULL });
	desk_do(b, ACT_KEEP_CIRCLE);
	ck_assert_str_eq(b->offered, "Name: \nMiddle, across: 3 ft\nMiddle, down: 2 ft\n"
		"Radius: \nNew note, type it: \n");
	ck_assert_uint_eq(around(b)->kept.count, 1);
	ck_assert_int_eq(around(b)->kept.items[0].radius, 18 * NM_PER_INCH);
	ck_assert_int_eq(around(b)->kept.items[0].at.x, 3);
	desk_says_whole(b, "Kept: Old pear, 1 ft 6 in about 3 ft across, 2 ft down; Backspace "
		"takes it back.");
	check_here(b, "Kept: Old pear\n");
	go(b, 0, 2);
	desk_refresh(b);
	ck_assert_int_eq(around_map_at(&b->editor.around, 0, 2), 0);
	plot_check(b->editor.plot);
	desk_press(b, PRESS_BACKSPACE);
	desk_says_whole(b, "Taken back: Keep a tree; no more can be.");
	desk_free(b);
}
END_TEST

START_TEST(the_plans_far_edges_are_offered_in_the_last_column_and_row)
{
	struct desk *b = sit();

	go(b, 6, 4);
	desk_answer(b, ROWS { "", "", NULL });
	desk_do(b, ACT_KEEP_CIRCLE);
	ck_assert_str_eq(b->offered, "Name: \nMiddle, across: 7 ft\nMiddle, down: 5 ft\n"
		"Radius: \nNew note, type it: \n");
	desk_do(b, ACT_TIE);
	ck_assert_str_eq(b->offered, "Across from the left: 7 ft\nDown from the top: 5 ft\nName: \n"
		"Length: \n");
	desk_free(b);
}
END_TEST

START_TEST(a_rectangle_is_kept_where_it_is_pegged)
{
	struct desk *b = sit();

	go(b, 1, 1);
	desk_press(b, PRESS_ENTER);
	go(b, 4, 2);
	desk_answer(b, ROWS { "Name: Garden wall; New note, type it: Listed.", NULL });
	desk_do(b, ACT_KEEP_RECTANGLE);
	ck_assert_str_eq(b->offered, "Name: \nLeft edge, across: 1 ft\nTop edge, down: 1 ft\n"
		"Width: 4 ft\nDepth: 2 ft\nNew note, type it: \n");
	ck_assert_int_eq(around(b)->kept.items[0].cells.right, 4);
	ck_assert_int_eq(around(b)->kept.items[0].cells.bottom, 2);
	ck_assert_str_eq(around(b)->kept.items[0].notes.texts[0], "Listed.");
	desk_says_whole(b, "Kept: Garden wall, 4 ft x 2 ft; Backspace takes it back.");
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	check_here(b, "Kept: Garden wall\n");
	plot_check(b->editor.plot);
	desk_free(b);
}
END_TEST

START_TEST(a_house_may_stand_beyond_the_plan)
{
	static const char card[] = "Name: Number 4; Left edge, across: -2 ft; "
		"Top edge, down: -12; Width: 16 ft; Depth: 10";
	struct desk *b = sit();
	const struct rectangle *cells;

	desk_answer(b, ROWS { card, "Number 4", "Depth: 5000 ft", "Depth: 13 ft", NULL });
	desk_do(b, ACT_HOUSE);
	cells = &around(b)->houses.items[0].cells;
	ck_assert_int_eq(cells->left, -2);
	ck_assert_int_eq(cells->top, -12);
	ck_assert_int_eq(cells->right, 13);
	ck_assert_int_eq(cells->bottom, -3);
	desk_says_whole(b, "House: Number 4, 16 ft x 10 ft, above the plan; Backspace takes it "
		"back.");
	plot_check(b->editor.plot);
	desk_type(b, "#");
	desk_asked_whole(b, "A house");
	ck_assert_int_eq(around(b)->houses.items[0].cells.bottom, 0);
	check_here(b, "House: Number 4\n");
	desk_press(b, PRESS_BACKSPACE);
	desk_says_whole(b, "Taken back: Cards (Number 4); 1 more can be.");
	desk_free(b);
}
END_TEST

/* A house may have none; what is changed besides keeps it. */
START_TEST(houses_and_shade_have_a_height)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Name: Number 4", "Number 4", "Height: 20 ft", "Number 4",
		"Width: 3 ft", "Number 4", "Height: ", NULL });
	desk_do(b, ACT_HOUSE);
	ck_assert_int_eq(around(b)->houses.items[0].height, 0);
	desk_type(b, "#");
	ck_assert_int_eq(around(b)->houses.items[0].height, 20 * NM_PER_FOOT);
	desk_type(b, "#");
	ck_assert_int_eq(around(b)->houses.items[0].cells.right, 2);
	ck_assert_int_eq(around(b)->houses.items[0].height, 20 * NM_PER_FOOT);
	desk_type(b, "#");
	ck_assert_int_eq(around(b)->houses.items[0].height, 0);
	desk_answer(b, ROWS { "Name: Limes; Left edge, across: -3 ft; Width: 4; Height: 40 ft",
		NULL });
	desk_do(b, ACT_SHADE);
	ck_assert_int_eq(around(b)->shades.items[0].height, 40 * NM_PER_FOOT);
	desk_says_whole(b, "Shade: Limes, 4 ft x 1 ft; Backspace takes it back.");
	check_here(b, "Shade: Limes\n");
	plot_check(b->editor.plot);
	desk_free(b);
}
END_TEST

START_TEST(shade_without_a_height_is_refused)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Name: Limes", "", NULL });
	desk_do(b, ACT_SHADE);
	ck_assert_msg(strncmp(b->fault, "Height: ", 8) == 0, "%s", b->fault);
	ck_assert_uint_eq(around(b)->shades.count, 0);
	desk_free(b);
}
END_TEST

/* What is wrong with it; "": nothing. */
static const struct { const char *answer, *fault; } far_off[] = {
	{ "Name: Far; Left edge, across: 4095 ft; Width: 2 ft",
		"Width: it would end more than 4096 cells from the plan's corner" },
	{ "Name: Far; Left edge, across: 4095 ft; Width: 1 ft", "" },
	{ "Name: Far; Left edge, across: 4096 ft; Width: 1 ft",
		"Left edge, across: found 4096 ft, expected -4096 ft to 4095 ft, "
		"-4096 to 4095 cells" },
	{ "Name: Far; Left edge, across: -4096 ft; Width: 1 ft", "" },
	{ "Name: Far; Left edge, across: -4097 ft; Width: 1 ft",
		"Left edge, across: found -4097 ft, expected -4096 ft to 4095 ft, "
		"-4096 to 4095 cells" },
};
enum { FAR_OFF = sizeof far_off / sizeof *far_off };

START_TEST(a_rectangle_ends_no_farther_off_than_the_format_lets_it)
{
	struct desk *b = sit();
	const char *fault = far_off[_i].fault;

	desk_answer(b, ROWS { far_off[_i].answer, *fault ? "" : NULL, NULL });
	desk_do(b, ACT_HOUSE);
	ck_assert_str_eq(b->fault, fault);
	ck_assert_uint_eq(around(b)->houses.count, *fault ? 0 : 1);
	desk_free(b);
}
END_TEST

/* Its card has a kind and a state from the start; neither can be taken out. */
START_TEST(a_service_without_kind_or_state_is_refused)
{
	static const char *const typed[][2] = {
		{ "Name: Supply; Kind: ", "Kind: " }, { "Name: Supply; State: ", "State: " },
	};
	struct desk *b = sit();

	bend(b);
	desk_answer(b, ROWS { "Lay a service line", "Below and left", typed[_i][0], "", NULL });
	desk_press(b, PRESS_ENTER);
	ck_assert_msg(strncmp(b->fault, typed[_i][1], strlen(typed[_i][1])) == 0, "%s", b->fault);
	ck_assert_uint_eq(around(b)->services.count, 0);
	desk_free(b);
}
END_TEST

/* ---- Ties, the drop -------------------------------------------------------------------------- */

START_TEST(a_place_is_tied_and_deliveries_are_put_down)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Name: Gate pier; Length: 20' 6", NULL });
	desk_do(b, ACT_TIE);
	desk_says_whole(b, "Tied: 0 in across, 0 in down to Gate pier, 20 ft 6 in; Backspace "
		"takes it back.");
	ck_assert_int_eq(around(b)->ties.items[0].length, 246 * NM_PER_INCH);
	check_here(b, "Tied to Gate pier, 20 ft 6 in\n");
	go(b, 2, 3);
	check_here_not(b, "Tied");
	desk_do(b, ACT_DROP);
	desk_says_whole(b, "Deliveries are put down at 2 ft across, 3 ft down; Backspace takes "
		"it back.");
	check_here(b, "Deliveries are put down here\n");
	desk_do(b, ACT_DROP);
	desk_says_whole(b, "Nothing was changed.");
	desk_press(b, PRESS_BACKSPACE);
	desk_says_whole(b, "Taken back: Deliveries here; 1 more can be.");
	ck_assert(!around(b)->has_drop);
	desk_free(b);
}
END_TEST

START_TEST(water_comes_from_a_grid_point)
{
	struct desk *b = sit();

	go(b, 2, 3);
	desk_do(b, ACT_TAP);
	desk_says_whole(b, "Water comes from 2 ft across, 3 ft down; Backspace takes it back.");
	check_here(b, "Water comes from a tap here\n");
	go(b, 3, 3);
	desk_do(b, ACT_TAP);
	ck_assert_int_eq(around(b)->tap.x, 3);
	desk_press(b, PRESS_BACKSPACE);
	desk_says_whole(b, "Taken back: Tap here; 1 more can be.");
	ck_assert_int_eq(around(b)->tap.x, 2);
	desk_press(b, PRESS_BACKSPACE);
	ck_assert(!around(b)->has_tap);
	desk_free(b);
}
END_TEST

/* ---- All ------------------------------------------------------------------------------------- */

/* One of each. */
static void add_all(struct desk *b)
{
	desk_answer(b, ROWS { "Above", "Name: Main; Kind: gas", "Name: Pear; Radius: 2 ft",
		"Name: Wall", "Name: Number 4", "Name: Limes; Height: 40 ft",
		"Name: Pier; Length: 9 ft", NULL });
	go(b, 0, 4);
	desk_press(b, PRESS_ENTER);
	go(b, 6, 4);
	desk_do(b, ACT_SERVICE);
	desk_do(b, ACT_KEEP_CIRCLE);
	desk_do(b, ACT_KEEP_RECTANGLE);
	desk_do(b, ACT_HOUSE);
	desk_do(b, ACT_SHADE);
	desk_do(b, ACT_TIE);
	desk_do(b, ACT_DROP);
	desk_do(b, ACT_TAP);
	desk_answered(b);
}

static const struct {
	const char *name, *answer, *card, *same; /* same: what it says already */
} cards[] = {
	{ "Main", "Name: Main 2; Kind: drain; State: to-lay; Depth: 3 ft", "A service",
		"Kind: gas" },
	{ "Number 4", "Width: 3 ft; Height: 20 ft", "A house", "Width: 12 in" },
	{ "Limes", "Height: 30 ft", "Shade", "Height: 480 in" },
	{ "Pier, 9 ft", "Length: 3 ft; Across from the left: 1 ft", "A tie", "Length: 108 in" },
	{ "Pear", "Radius: 4", "Kept: a tree, or what else is round",
		"Radius: 24 in" },
	{ "Wall", "Name: Old wall; New note, type it: Dry.", "Kept: a wall or a cover",
		"Depth: 1 cell" },
	{ "Where deliveries are put down", "Across from the left: 0", "Deliveries are put down",
		"Down from the top: 5" },
	{ "Where water comes from", "Across from the left: 0", "Water comes from",
		"Down from the top: 5" },
};
enum { CARDS = sizeof cards / sizeof *cards };

START_TEST(each_is_changed_by_its_card_and_taken_back)
{
	struct desk *b = sit();

	add_all(b);
	desk_answer(b, ROWS { cards[_i].name, cards[_i].answer, cards[_i].name, "", NULL });
	desk_type(b, "#");
	desk_asked(b, cards[_i].card);
	desk_says_whole(b, "Set; Backspace takes it back.");
	plot_check(b->editor.plot);
	desk_press(b, PRESS_BACKSPACE);
	desk_says(b, "Taken back: Cards (");
	desk_type(b, "#");
	plot_check(b->editor.plot);
	desk_free(b);
}
END_TEST

START_TEST(a_card_taken_as_it_stands_changes_nothing)
{
	struct desk *b = sit();

	add_all(b);
	desk_answer(b, ROWS { cards[_i].name, cards[_i].same, NULL });
	desk_type(b, "#");
	desk_says_whole(b, "Nothing was changed.");
	desk_free(b);
}
END_TEST

START_TEST(of_a_service_of_several_lines_it_is_asked_how_much)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Above", "Name: Lamp; Kind: power", "Left", "Lamp", "Name: Number 4",
		"Lamp", "", "Number 4", "Lamp", "All of it", NULL });
	lay_two_lines(b);
	go(b, 6, 4);
	desk_do(b, ACT_HOUSE);
	desk_do(b, ACT_AROUND_OUT);
	ck_assert_str_eq(b->offered, "All of it\nThe line from 0 in across, 1 ft down\n"
		"The line from 3 ft across, 1 ft down\n");
	ck_assert_uint_eq(around(b)->services.items[0].routes.count, 2);
	ck_assert_str_eq(b->editor.message.bytes, "");
	desk_do(b, ACT_AROUND_OUT);
	ck_assert_uint_eq(around(b)->houses.count, 0);
	ck_assert_uint_eq(around(b)->services.items[0].routes.count, 2);
	desk_do(b, ACT_AROUND_OUT);
	ck_assert_uint_eq(around(b)->services.count, 0);
	desk_free(b);
}
END_TEST

/* A level at each corner, and the ground that is to be. */
static void add_levels(struct desk *b)
{
	struct details *details = &editor_edit(&b->editor)->details;

	levels_init(&details->levels, 7 * NM_PER_FOOT, 2, 2);
	details->finish = (struct finish){ .has_level = true, .drop = 6 * NM_PER_INCH };
	editor_stroke(&b->editor);
}

START_TEST(what_is_removed_is_that_alone)
{
	static const char all[] = "Main: service\nLevels, 7 ft apart: levels\n"
		"The finished ground: finish\nNumber 4: house\nLimes: shade\nPier, 9 ft: tie\n"
		"Pear: keep\nWall: keep\nWhere deliveries are put down: drop\n"
		"Where water comes from: tap\n";
	static const char *const names[] = { "Main", "Levels, 7 ft apart", "The finished ground",
		"Number 4", "Limes", "Pier, 9 ft", "Pear", "Wall",
		"Where deliveries are put down", "Where water comes from" };
	const char *name = names[_i], *gone = strstr(all, name);
	struct desk *b = sit();
	char left[sizeof all];

	snprintf(left, sizeof left, "%.*s%s", (int)(gone - all), all, strchr(gone, '\n') + 1);
	add_all(b);
	add_levels(b);
	desk_answer(b, ROWS { name, "", NULL });
	desk_do(b, ACT_AROUND_OUT);
	ck_assert_str_eq(b->offered, all);
	desk_do(b, ACT_AROUND_OUT);
	ck_assert_str_eq(b->offered, left);
	desk_free(b);
}
END_TEST

START_TEST(each_is_taken_away_and_put_back)
{
	struct desk *b = sit();
	int count;

	desk_do(b, ACT_AROUND_OUT);
	desk_says_whole(b, "There is nothing around the plot yet.");
	add_all(b);
	desk_answer(b, ROWS { cards[_i].name, "", NULL });
	desk_do(b, ACT_AROUND_OUT);
	ck_assert_str_eq(b->offered, "Main: service\nNumber 4: house\nLimes: shade\n"
		"Pier, 9 ft: tie\n"
		"Pear: keep\nWall: keep\nWhere deliveries are put down: drop\n"
		"Where water comes from: tap\n");
	desk_says(b, cards[_i].name);
	plot_check(b->editor.plot);
	desk_do(b, ACT_AROUND_OUT);
	ck_assert_ptr_null(strstr(b->offered, cards[_i].name));
	desk_press(b, PRESS_BACKSPACE);
	desk_says_whole(b, "Taken back: Remove what is around; 8 more can be.");
	for (count = 0; editor_take_back(&b->editor); count++)
		;
	ck_assert_int_eq(count, CARDS);
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(with_the_mirror_on_it_is_said_that_nothing_of_it_is_mirrored)
{
	struct desk *b = sit();

	desk_type(b, "|");
	add_all(b);
	desk_says_whole(b, "Water comes from 7 ft across, 5 ft down; Backspace takes it back. "
		"What is around is not mirrored.");
	ck_assert_uint_eq(around(b)->services.items[0].routes.count, 1);
	ck_assert_uint_eq(around(b)->kept.count, 2);
	ck_assert_uint_eq(around(b)->houses.count, 1);
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act_around");
	TCase *services = suite_case(suite, "services"), *things = suite_case(suite, "things");
	TCase *all = suite_case(suite, "all");

	tcase_add_test(services,
		a_line_is_laid_from_the_peg_by_its_bends_with_a_card_for_a_new_service);
	tcase_add_test(services, each_side_that_a_way_has_is_offered_with_its_length);
	tcase_add_test(services,
		a_further_line_goes_to_the_service_that_is_picked_and_one_alone_can_go_again);
	tcase_add_test(services,
		without_a_peg_it_is_said_how_a_line_is_laid_and_what_is_left_lays_none);
	tcase_add_test(services,
		the_card_of_a_service_says_what_holds_for_the_kind_and_state_typed);
	tcase_add_test(things, a_tree_is_kept_by_its_middle_and_radius);
	tcase_add_test(things, the_plans_far_edges_are_offered_in_the_last_column_and_row);
	tcase_add_test(things, a_rectangle_is_kept_where_it_is_pegged);
	tcase_add_test(things, a_house_may_stand_beyond_the_plan);
	tcase_add_test(things, houses_and_shade_have_a_height);
	tcase_add_test(things, shade_without_a_height_is_refused);
	tcase_add_loop_test(things, a_service_without_kind_or_state_is_refused, 0, 2);
	tcase_add_loop_test(things, a_rectangle_ends_no_farther_off_than_the_format_lets_it, 0,
		FAR_OFF);
	tcase_add_test(things, a_place_is_tied_and_deliveries_are_put_down);
	tcase_add_test(things, water_comes_from_a_grid_point);
	tcase_add_loop_test(all, each_is_changed_by_its_card_and_taken_back, 0, CARDS);
	tcase_add_loop_test(all, a_card_taken_as_it_stands_changes_nothing, 0, CARDS);
	tcase_add_test(all, of_a_service_of_several_lines_it_is_asked_how_much);
	tcase_add_loop_test(all, what_is_removed_is_that_alone, 0, 10);
	tcase_add_loop_test(all, each_is_taken_away_and_put_back, 0, CARDS);
	tcase_add_test(all, with_the_mirror_on_it_is_said_that_nothing_of_it_is_mirrored);
	return suite;
}
