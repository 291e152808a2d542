/* Marked ground: carried, turned, flipped, stamped, moved and lifted, without a terminal. */

#include "support/desk.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/random.h"
#include "support/runner.h"

#include "base/memory.h"
#include "plot/format/format.h"
#include "plot/edit/legend.h"

#include <stdio.h>
#include <string.h>

#define ROWS (const char *[])

/* Six cells that are all different under turning and flipping, in the corner of 7 by 5. */
static const char *const start[] = { "bcd....", "bpb....", ".......", ".......", ".......", NULL };

static struct desk *sit(void)
{
	return desk_new(start);
}

static void mark(struct desk *b, struct place from, struct place to)
{
	desk_answer(b, ROWS { "Mark it", NULL });
	b->editor.cursor = from;
	desk_press(b, PRESS_ENTER);
	b->editor.cursor = to;
	desk_press(b, PRESS_ENTER);
	desk_answer(b, NULL);
	ck_assert_int_eq(editor_state(&b->editor), STATE_MARKED);
}

static void mark_piece(struct desk *b)
{
	mark(b, (struct place){ 2, 1 }, (struct place){ 0, 0 });
}

static void go(struct desk *b, int x, int y)
{
	b->editor.cursor = (struct place){ x, y };
}

static size_t strokes(const struct desk *b)
{
	return history_undo_count(b->editor.history);
}

START_TEST(marking_carries_the_piece_and_changes_nothing)
{
	struct desk *b = sit();

	mark_piece(b);
	desk_says_whole(b, "Marked: 3 ft x 2 ft. Go on; Space stamps it there, Enter moves it.");
	ck_assert(b->editor.cursor.x == 0 && b->editor.cursor.y == 0);
	desk_check(b, start);
	ck_assert_uint_eq(strokes(b), 0);
	desk_type(b, " ");
	desk_says_whole(b, "It lies there already.");
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(a_stamp_is_a_copy_and_one_step_as_often_as_wanted)
{
	struct desk *b = sit();

	mark_piece(b);
	go(b, 4, 3);
	desk_type(b, " ");
	desk_says_whole(b, "Stamped; it is still carried.");
	desk_check(b, ROWS { "bcd....", "bpb....", ".......", "....bcd", "....bpb", NULL });
	go(b, 1, 1);
	desk_type(b, " ");
	desk_check(b, ROWS { "bcd....", "bbcd...", ".bpb...", "....bcd", "....bpb", NULL });
	ck_assert_uint_eq(strokes(b), 2);
	desk_press(b, PRESS_BACKSPACE);
	ck_assert_int_eq(editor_state(&b->editor), STATE_MARKED);
	desk_press(b, PRESS_BACKSPACE);
	desk_check(b, start);
	desk_free(b);
}
END_TEST

START_TEST(open_ground_is_stamped_too)
{
	struct desk *b = sit();

	mark(b, (struct place){ 3, 0 }, (struct place){ 4, 0 });
	go(b, 1, 0);
	desk_type(b, " ");
	desk_check(b, ROWS { "b......", "bpb....", ".......", ".......", ".......", NULL });
	desk_free(b);
}
END_TEST

struct carried {
	const char *keys, *says;
	const char *rows[6]; /* stamped at 3,2 */
};

/* By hand. A turn is clockwise: the left column becomes the top row. */
static const struct carried pieces[] = {
	{ "}", "Turned a quarter clockwise: 2 ft x 3 ft.",
		{ "bcd....", "bpb....", "...bb..", "...pc..", "...bd.." } },
	{ "}}", "3 ft x 2 ft", { "bcd....", "bpb....", "...bpb.", "...dcb.", "......." } },
	{ "}}}}", "3 ft x 2 ft", { "bcd....", "bpb....", "...bcd.", "...bpb.", "......." } },
	{ "[", "Flipped, left for right: 3 ft x 2 ft.",
		{ "bcd....", "bpb....", "...dcb.", "...bpb.", "......." } },
	{ "]", "Flipped, top for bottom: 3 ft x 2 ft.",
		{ "bcd....", "bpb....", "...bpb.", "...bcd.", "......." } },
	{ "[[", "left for right", { "bcd....", "bpb....", "...bcd.", "...bpb.", "......." } },
	{ "}[", "left for right", { "bcd....", "bpb....", "...bb..", "...cp..", "...db.." } },
};

START_TEST(turns_and_flips_change_what_is_carried_and_not_the_ground)
{
	const struct carried *piece = &pieces[_i];
	struct desk *b = sit();

	mark_piece(b);
	desk_type(b, piece->keys);
	desk_says(b, piece->says);
	desk_check(b, start);
	ck_assert_uint_eq(strokes(b), 0);
	go(b, 3, 2);
	desk_type(b, " ");
	desk_check(b, piece->rows);
	desk_free(b);
}
END_TEST

START_TEST(a_turned_piece_can_be_laid_where_it_was)
{
	struct desk *b = sit();

	mark_piece(b);
	desk_type(b, "[ ");
	desk_check(b, ROWS { "dcb....", "bpb....", ".......", ".......", ".......", NULL });
	ck_assert_uint_eq(strokes(b), 1);
	desk_free(b);
}
END_TEST

START_TEST(moving_lifts_there_and_stamps_here_in_one_step_also_onto_itself)
{
	struct desk *b = sit();

	mark_piece(b);
	desk_answer(b, ROWS { "Move it here", NULL });
	go(b, 1, 1);
	desk_press(b, PRESS_ENTER);
	desk_asked_whole(b, "Carried, 3 ft x 2 ft:");
	ck_assert_str_eq(b->offered, "Move it here: \nStamp it here: Space\nTurn it a quarter: }\n"
		"Flip it across: [\nFlip it down: ]\nLift it: Delete\n"
		"Swap a letter: \nCrop the plan to it: \nDrop the mark: \n");
	desk_check(b, ROWS { ".......", ".bcd...", ".bpb...", ".......", ".......", NULL });
	desk_says_whole(b, "Moved; Backspace takes it back. It leaves open ground where it stood.");
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	ck_assert_uint_eq(strokes(b), 1);
	desk_press(b, PRESS_BACKSPACE);
	desk_check(b, start);
	desk_free(b);
}
END_TEST

START_TEST(a_move_over_the_edge_is_refused_and_a_stamp_is_cut_there)
{
	struct desk *b = sit();

	mark_piece(b);
	desk_answer(b, ROWS { "Move it here", "Move it here", "Stamp it here", NULL });
	go(b, 5, 0);
	desk_press(b, PRESS_ENTER);
	desk_says_whole(b, "Moved here it would reach over the plan's edge, and lose cells there.");
	go(b, 0, 4);
	desk_press(b, PRESS_ENTER);
	desk_says_whole(b, "Moved here it would reach over the plan's edge, and lose cells there.");
	desk_check(b, start);
	ck_assert_int_eq(editor_state(&b->editor), STATE_MARKED);
	go(b, 5, 4);
	desk_press(b, PRESS_ENTER);
	desk_says_whole(b, "Stamped as far as the plan reaches.");
	desk_check(b, ROWS { "bcd....", "bpb....", ".......", ".......", ".....bc", NULL });
	desk_free(b);
}
END_TEST

START_TEST(lifting_leaves_open_ground_and_the_piece_still_carried)
{
	struct desk *b = sit();

	mark_piece(b);
	go(b, 4, 3);
	desk_press(b, PRESS_DELETE);
	desk_says_whole(b, "Lifted, and still carried: Space stamps it.");
	desk_check(b, ROWS { ".......", ".......", ".......", ".......", ".......", NULL });
	desk_press(b, PRESS_DELETE);
	desk_says_whole(b, "Open ground already.");
	desk_type(b, " ");
	desk_check(b, ROWS { ".......", ".......", ".......", "....bcd", "....bpb", NULL });
	ck_assert_uint_eq(strokes(b), 2);
	desk_free(b);
}
END_TEST

START_TEST(esc_drops_the_mark_and_never_a_cell)
{
	struct desk *b = sit();

	mark_piece(b);
	go(b, 4, 3);
	desk_type(b, "} ");
	desk_press(b, PRESS_ESCAPE);
	desk_says_whole(b, "The mark is dropped; the ground stays as it is.");
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	desk_check(b, ROWS { "bcd....", "bpb....", ".......", "....bb.", "....pc.", NULL });
	desk_press(b, PRESS_ESCAPE);
	desk_says_whole(b, "There is nothing to go back from. < leaves, ? helps.");
	desk_free(b);
}
END_TEST

START_TEST(a_letter_taken_in_hand_drops_the_mark_and_what_would_lay_one_unseen_waits)
{
	struct desk *b = sit();

	mark_piece(b);
	desk_type(b, "*");
	desk_says_whole(b, "A piece of ground is carried: Space stamps it, Esc drops it.");
	desk_type(b, "=");
	desk_says_whole(b, "A piece of ground is carried: Space stamps it, Esc drops it.");
	ck_assert_int_eq(editor_state(&b->editor), STATE_MARKED);
	desk_check(b, start);
	desk_type(b, "q");
	ck_assert_int_eq(editor_state(&b->editor), STATE_MARKED);
	desk_type(b, "p");
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	desk_type(b, " ");
	desk_check(b, ROWS { "pcd....", "bpb....", ".......", ".......", ".......", NULL });
	desk_free(b);
}
END_TEST

START_TEST(what_is_marked_already_is_said_to_be)
{
	struct desk *b = sit();

	mark_piece(b);
	desk_do(b, ACT_MARK);
	desk_says_whole(b, "It is marked already; Esc drops the mark.");
	ck_assert_int_eq(editor_state(&b->editor), STATE_MARKED);
	desk_check(b, start);
	desk_free(b);
}
END_TEST

START_TEST(without_a_mark_there_is_nothing_to_turn_stamp_move_or_lift)
{
	static const char *const names[] = { "Stamp what is marked", "Move what is marked",
		"Lift what is marked", "Turn what is marked", "Flip across", "Flip down",
		"Crop to the mark", "Swap a letter" };
	struct desk *b = sit();

	desk_type(b, "}");
	desk_says_whole(b, "Nothing is marked: pick Mark this region from !, or peg two corners "
		"with Enter and pick Mark it.");
	for (size_t i = 0; i < sizeof names / sizeof *names; i++) {
		desk_answer(b, ROWS { names[i], NULL });
		desk_type(b, "!");
		desk_answer(b, NULL);
		desk_says_whole(b, "Nothing is marked: pick Mark this region from !, or peg two "
			"corners with Enter and pick Mark it.");
	}
	desk_check(b, start);
	desk_free(b);
}
END_TEST

static struct desk *sit_at_l(void)
{
	struct desk *b = desk_new(ROWS { "bp....", "bp....", "bbb...", "pppppp", "......", NULL });

	names_add(&editor_edit(&b->editor)->details.names, (struct place){ 0, 1 },
		memory_string("Sage"));
	names_add(&editor_edit(&b->editor)->details.names, (struct place){ 1, 0 },
		memory_string("Walk"));
	editor_stroke(&b->editor);
	b->editor.cursor = (struct place){ 2, 2 };
	desk_do(b, ACT_MARK_REGION);
	return b;
}

START_TEST(a_region_is_marked_and_moved_with_its_name_and_nothing_around_it)
{
	struct desk *b = sit_at_l();

	desk_says_whole(b, "Marked: 3 ft x 3 ft. Go on; Space stamps it there, Enter moves it.");
	ck_assert(b->editor.cursor.x == 0 && b->editor.cursor.y == 0);
	b->editor.cursor = (struct place){ 3, 2 };
	desk_do(b, ACT_MOVE_MARKED);
	desk_check(b, ROWS { ".p....", ".p....", "...b..", "pppbpp", "...bbb", NULL });
	ck_assert_uint_eq(b->editor.plot->details.names.count, 2);
	ck_assert_str_eq(b->editor.plot->details.names.items[1].text, "Sage");
	ck_assert_int_eq(b->editor.plot->details.names.items[1].at.x, 3);
	ck_assert_int_eq(b->editor.plot->details.names.items[1].at.y, 3);
	desk_press(b, PRESS_BACKSPACE);
	desk_check(b, ROWS { "bp....", "bp....", "bbb...", "pppppp", "......", NULL });
	desk_free(b);
}
END_TEST

START_TEST(a_region_is_turned_lifted_and_stamped_without_what_is_around_it)
{
	struct desk *b = sit_at_l();

	desk_type(b, "}");
	b->editor.cursor = (struct place){ 3, 1 };
	desk_type(b, " ");
	desk_check(b, ROWS { "bp....", "bp.bbb", "bbbb..", "pppbpp", "......", NULL });
	desk_press(b, PRESS_DELETE);
	desk_check(b, ROWS { ".p....", ".p.bbb", "...b..", "pppbpp", "......", NULL });
	desk_free(b);
}
END_TEST

START_TEST(another_region_is_marked_in_place_of_the_first)
{
	struct desk *b = sit_at_l();

	b->editor.cursor = (struct place){ 5, 3 };
	desk_do(b, ACT_MARK_REGION);
	desk_says_whole(b, "Marked: 6 ft x 1 ft. Go on; Space stamps it there, Enter moves it.");
	b->editor.cursor = (struct place){ 0, 4 };
	desk_type(b, " ");
	desk_check(b, ROWS { "bp....", "bp....", "bbb...", "pppppp", "pppppp", NULL });
	desk_free(b);
}
END_TEST

START_TEST(open_ground_is_no_region_to_be_marked)
{
	struct desk *b = sit();

	b->editor.cursor = (struct place){ 4, 4 };
	desk_do(b, ACT_MARK_REGION);
	desk_says_whole(b, "Open ground is no region: go to a bed, a path, a lawn or a fixture.");
	ck_assert(!b->editor.is_marked);
	desk_free(b);
}
END_TEST

START_TEST(one_letter_is_swapped_for_another_in_what_is_marked_alone)
{
	struct desk *b = sit_at_l();

	desk_answer(b, ROWS { "p p", NULL });
	desk_do(b, ACT_RELETTER); /* the region has one letter, which is not asked for */
	desk_asked_whole(b, "What shall it be?");
	ck_assert_str_eq(b->offered, "p p\n. open ground\n");
	desk_check(b, ROWS { "pp....", "pp....", "ppp...", "pppppp", "......", NULL });
	desk_says_whole(b, "p p for b b: 5 cells.");
	desk_press(b, PRESS_BACKSPACE);
	desk_press(b, PRESS_ESCAPE);
	desk_type(b, "|");
	mark(b, (struct place){ 0, 2 }, (struct place){ 1, 3 });
	desk_answer(b, ROWS { "p p", ". open ground", NULL });
	desk_do(b, ACT_RELETTER);
	desk_check(b, ROWS { "bp....", "bp....", "bbb...", "..pp..", "......", NULL });
	b->editor.cursor = (struct place){ 4, 3 };
	desk_type(b, "|");
	desk_type(b, " ");
	desk_check(b, ROWS { "bp....", "bp....", "bbb...", "..ppbb", "......", NULL });
	desk_free(b);
}
END_TEST

START_TEST(every_act_on_the_mark_is_in_the_list_by_name)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Mark", "Flip down", "Flip across", "Turn what is marked",
		"Turn what is marked", "Stamp what is marked", "Lift what is marked",
		"Move what is marked", NULL });
	desk_press(b, PRESS_ENTER);
	go(b, 2, 1);
	desk_type(b, "!"); /* marked */
	desk_type(b, "!!!!"); /* once round: as it was */
	go(b, 4, 0);
	desk_type(b, "!");
	desk_check(b, ROWS { "bcd.bcd", "bpb.bpb", ".......", ".......", ".......", NULL });
	desk_type(b, "!");
	desk_check(b, ROWS { "....bcd", "....bpb", ".......", ".......", ".......", NULL });
	go(b, 0, 3);
	desk_type(b, "!");
	desk_check(b, ROWS { "....bcd", "....bpb", ".......", "bcd....", "bpb....", NULL });
	ck_assert_uint_eq(strokes(b), 3);
	desk_free(b);
}
END_TEST

START_TEST(a_piece_whose_letter_left_the_legend_is_not_laid)
{
	struct desk *b = sit();

	mark_piece(b);
	legend_remove(editor_edit(&b->editor), 'p', 'b');
	editor_stroke(&b->editor);
	go(b, 3, 3);
	desk_type(b, " ");
	desk_says_whole(b, "p is no longer in the legend: drop the mark and mark anew.");
	desk_answer(b, ROWS { "Move it here", NULL });
	desk_press(b, PRESS_ENTER);
	desk_says_whole(b, "p is no longer in the legend: drop the mark and mark anew.");
	desk_check(b, ROWS { "bcd....", "bbb....", ".......", ".......", ".......", NULL });
	desk_free(b);
}
END_TEST

START_TEST(a_mark_beyond_the_plan_as_it_was_before_is_dropped)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Each side by measure", "Right: 2 cells", NULL });
	desk_do(b, ACT_SIZE);
	mark(b, (struct place){ 8, 4 }, (struct place){ 6, 3 });
	desk_press(b, PRESS_BACKSPACE);
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	desk_check(b, start);
	desk_free(b);
}
END_TEST

/* ---- In the mirror --------------------------------------------------------------------------- */

struct mirrored {
	const char *kind;
	const char *stamped[6], *moved[6], *lifted[6];
};

/* Of the piece "bc" on 0,0 and its images in a plan of 7 by 5: a stamp on 1,1, a move there, a
 * lift. */
static const struct mirrored mirrored[] = {
	{ "off", { "bc.....", ".bc....", ".......", ".......", "......." },
		{ ".......", ".bc....", ".......", ".......", "......." },
		{ ".......", ".......", ".......", ".......", "......." } },
	{ "left-right", { "bc...cb", ".bc.cb.", ".......", ".......", "......." },
		{ ".......", ".bc.cb.", ".......", ".......", "......." },
		{ ".......", ".......", ".......", ".......", "......." } },
	{ "four-way", { "bc...cb", ".bc.cb.", ".......", ".bc.cb.", "bc...cb" },
		{ ".......", ".bc.cb.", ".......", ".bc.cb.", "......." },
		{ ".......", ".......", ".......", ".......", "......." } },
	{ "half-turn", { "bc.....", ".bc....", ".......", "....cb.", ".....cb" },
		{ ".......", ".bc....", ".......", "....cb.", "......." },
		{ ".......", ".......", ".......", ".......", "......." } },
};

START_TEST(stamps_moves_and_lifts_have_their_images)
{
	const struct mirrored *m = &mirrored[_i];
	struct desk *b = desk_new(ROWS { "bc.....", ".......", ".......", ".......", ".......",
		NULL });

	plot_set(editor_edit(&b->editor), 0, HEAD_MIRROR, m->kind);
	if (strcmp(m->kind, "off") != 0)
		lay_fold(editor_edit(&b->editor), 0, 0);
	editor_stroke(&b->editor);
	mark(b, (struct place){ 0, 0 }, (struct place){ 1, 0 });
	go(b, 1, 1);
	desk_type(b, " ");
	desk_check(b, m->stamped);
	desk_press(b, PRESS_BACKSPACE);
	desk_press(b, PRESS_DELETE);
	desk_check(b, m->lifted);
	desk_press(b, PRESS_BACKSPACE);
	go(b, 1, 1);
	desk_answer(b, ROWS { "Move it here", NULL });
	desk_press(b, PRESS_ENTER);
	desk_check(b, m->moved);
	ck_assert_int_eq(b->editor.faults, 0);
	desk_free(b);
}
END_TEST

START_TEST(images_outside_the_plan_are_said_and_left_out)
{
	struct desk *b = sit();

	plot_set(editor_edit(&b->editor), 0, HEAD_MIRROR, "left-right");
	plot_set(editor_edit(&b->editor), 0, HEAD_AXIS, "3,5");
	editor_stroke(&b->editor);
	mark(b, (struct place){ 0, 1 }, (struct place){ 0, 0 });
	go(b, 4, 3);
	desk_type(b, " ");
	desk_says_whole(b, "Some images fall outside the plan; they are left out.");
	desk_check(b, ROWS { "bcd....", "bpb....", ".......", "....b..", "....b..", NULL });
	desk_free(b);
}
END_TEST

/* The image of what is lifted, or of what is stamped, is beyond the left edge. */
START_TEST(a_move_says_so_where_images_of_either_place_are_outside)
{
	static const struct { int from, to; bool is_outside; } rows[] = {
		{ 0, 1, false }, { 0, 5, true }, { 5, 0, true }, { 5, 6, true },
	};

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct desk *b = desk_new(ROWS { "b....b.", "bb.....", NULL });

		plot_set(editor_edit(&b->editor), 0, HEAD_MIRROR, "left-right");
		plot_set(editor_edit(&b->editor), 0, HEAD_AXIS, "2,1");
		editor_stroke(&b->editor);
		mark(b, (struct place){ rows[i].from, 0 }, (struct place){ rows[i].from, 0 });
		go(b, rows[i].to, 0);
		desk_do(b, ACT_MOVE_MARKED);
		desk_says(b, rows[i].is_outside ?
			"Some images fall outside the plan; they are left out." : "Moved; ");
		desk_free(b);
	}
}
END_TEST

/* ---- At random ------------------------------------------------------------------------------- */

static struct text written(const struct plot *plot)
{
	struct text bytes = TEXT_EMPTY;

	format_write(plot, &bytes);
	return bytes;
}

static int64_t faults(const struct plot *plot)
{
	struct mirror mirror = mirror_of(plot);

	return mirror_faults(&mirror, &plot->ground);
}

/* How thick a frame of the pegged rectangle may be, in cells of a foot: half of it. */
static int thickest(const struct desk *b)
{
	struct rectangle r = editor_pegged(&b->editor);
	int columns = r.right - r.left + 1, rows = r.bottom - r.top + 1;

	return columns < 4 || rows < 4 ? 1 : 2;
}

/* One act on marked or pegged ground, as people may press them. */
static void act_at_random(struct desk *b, struct random *r)
{
	static const char *const pegged[] = { "Fill it", "Frame it", "Lay a straight run",
		"Mark it",
		"Take the peg out" };
	static const char *const marked[] = { "Move it here", "Stamp it here", "Turn it a quarter",
		"Flip it across", "Flip it down", "Lift it", "Drop the mark" };
	static const char *const sizes[] = { "1 cell", "2 ft", "40 in" };
	static const int keys[] = { PRESS_ENTER, ' ', PRESS_DELETE, '}', '[', ']', '*', '=', '&',
		'\'', PRESS_BACKSPACE, '+', 'b', 'p', PRESS_ESCAPE };
	char card[64];
	const char *answers[4] = { NULL };
	int key = random_below(r, 3) ? PRESS_ENTER :
		keys[random_below(r, sizeof keys / sizeof *keys)];

	go(b, random_below(r, b->editor.plot->ground.columns),
		random_below(r, b->editor.plot->ground.rows));
	if (key == PRESS_ENTER && b->editor.is_pegged) {
		answers[0] = pegged[random_below(r, 5)];
		if (strcmp(answers[0], "Frame it") == 0)
			snprintf(card, sizeof card, "Thickness: %s",
				sizes[random_below(r, thickest(b))]);
		else
			snprintf(card, sizeof card, "Width: %s", sizes[random_below(r, 3)]);
		if (strcmp(answers[0], "Frame it") == 0 ||
		    strcmp(answers[0], "Lay a straight run") == 0)
			answers[1] = card;
		/* A run at the axis may become wider than it was asked to be. */
		if (strcmp(answers[0], "Lay a straight run") == 0)
			answers[2] = "Lay it so";
	} else if (key == PRESS_ENTER && b->editor.is_marked) {
		answers[0] = marked[random_below(r, 7)];
	}
	desk_answer(b, answers);
	desk_press(b, key);
	ck_assert(!b->answers || !*b->answers || strcmp(*b->answers, "Lay it so") == 0);
	desk_answer(b, NULL);
}

START_TEST(acts_at_random_keep_the_mirror_where_it_held_and_taken_back_give_the_first_bytes)
{
	static const char *const kinds[] = { "off", "left-right", "top-bottom", "four-way",
		"half-turn" };

	for (uint64_t seed = 0; seed < 60; seed++) {
		struct random r = { seed * 5 + (uint64_t)_i };
		struct desk *b = desk_new(ROWS { "b.p....", ".......", ".......", "......S",
			".......", NULL });
		struct text first, last;
		char axis[16];

		plot_set(editor_edit(&b->editor), 0, HEAD_MIRROR, kinds[_i]);
		snprintf(axis, sizeof axis, "%d,%d", random_between(&r, 1, 13),
			random_between(&r, 1, 9));
		if (seed % 2)
			plot_set(editor_edit(&b->editor), 0, HEAD_AXIS, axis);
		memset(editor_edit(&b->editor)->ground.cells, OPEN_GROUND, 35);
		history_free(b->editor.history);
		b->editor.history = history_new(b->editor.plot);
		first = written(b->editor.plot);
		for (int i = 0; i < 80; i++) {
			act_at_random(b, &r);
			plot_check(b->editor.plot);
			ck_assert_msg(faults(b->editor.plot) == 0, "seed %d, act %d", (int)seed, i);
		}
		while (history_redo_count(b->editor.history))
			desk_press(b, '+');
		last = written(b->editor.plot);
		while (history_undo_count(b->editor.history))
			desk_press(b, PRESS_BACKSPACE);
		struct text now = written(b->editor.plot);
		ck_assert_str_eq(now.bytes, first.bytes);
		text_fini(&now);
		while (history_redo_count(b->editor.history))
			desk_press(b, '+');
		now = written(b->editor.plot);
		ck_assert_str_eq(now.bytes, last.bytes);
		text_fini(&now);
		text_fini(&first);
		text_fini(&last);
		desk_free(b);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act_mark");
	TCase *marking = suite_case(suite, "marking"), *mirror = suite_case(suite, "mirror");

	tcase_add_test(marking, marking_carries_the_piece_and_changes_nothing);
	tcase_add_test(marking, a_stamp_is_a_copy_and_one_step_as_often_as_wanted);
	tcase_add_test(marking, open_ground_is_stamped_too);
	tcase_add_loop_test(marking, turns_and_flips_change_what_is_carried_and_not_the_ground, 0,
		sizeof pieces / sizeof *pieces);
	tcase_add_test(marking, a_turned_piece_can_be_laid_where_it_was);
	tcase_add_test(marking, moving_lifts_there_and_stamps_here_in_one_step_also_onto_itself);
	tcase_add_test(marking, a_move_over_the_edge_is_refused_and_a_stamp_is_cut_there);
	tcase_add_test(marking, lifting_leaves_open_ground_and_the_piece_still_carried);
	tcase_add_test(marking, esc_drops_the_mark_and_never_a_cell);
	tcase_add_test(marking,
		a_letter_taken_in_hand_drops_the_mark_and_what_would_lay_one_unseen_waits);
	tcase_add_test(marking, what_is_marked_already_is_said_to_be);
	tcase_add_test(marking, without_a_mark_there_is_nothing_to_turn_stamp_move_or_lift);
	tcase_add_test(marking,
		a_region_is_marked_and_moved_with_its_name_and_nothing_around_it);
	tcase_add_test(marking,
		a_region_is_turned_lifted_and_stamped_without_what_is_around_it);
	tcase_add_test(marking, another_region_is_marked_in_place_of_the_first);
	tcase_add_test(marking, open_ground_is_no_region_to_be_marked);
	tcase_add_test(marking, one_letter_is_swapped_for_another_in_what_is_marked_alone);
	tcase_add_test(marking, every_act_on_the_mark_is_in_the_list_by_name);
	tcase_add_test(marking, a_piece_whose_letter_left_the_legend_is_not_laid);
	tcase_add_test(marking, a_mark_beyond_the_plan_as_it_was_before_is_dropped);
	tcase_add_loop_test(mirror, stamps_moves_and_lifts_have_their_images, 0,
		sizeof mirrored / sizeof *mirrored);
	tcase_add_test(mirror, images_outside_the_plan_are_said_and_left_out);
	tcase_add_test(mirror, a_move_says_so_where_images_of_either_place_are_outside);
	tcase_add_loop_test(mirror,
		acts_at_random_keep_the_mirror_where_it_held_and_taken_back_give_the_first_bytes, 0,
		5);
	return suite;
}
