/* Taking back and putting back: what was done is named. */
#include "support/desk.h"
#include "support/runner.h"

#include <stdio.h>
#include <string.h>

#define ROWS (const char *const[])

/* A bed, a path and a fixture in the legend, the cursor on open ground. */
static struct desk *garden(void)
{
	struct desk *b = desk_new(ROWS { "b.....p", ".......", ".......", "......S", NULL });

	b->editor.cursor = (struct place){ 1, 1 };
	return b;
}

static void check_said(struct desk *b, const char *what, const char *name, size_t left)
{
	char number[24], words[120];

	snprintf(number, sizeof number, "%zu", left);
	snprintf(words, sizeof words, "%s: %s; %s more can be.", what, name, left ? number : "no");
	ck_assert_str_eq(b->editor.message.bytes, words);
}

static void check_named(struct desk *b, const char *name)
{
	desk_press(b, PRESS_BACKSPACE);
	check_said(b, "Taken back", name, history_undo_count(b->editor.history));
	desk_type(b, "+");
	check_said(b, "Put back", name, history_redo_count(b->editor.history));
}

/* ---- Acts ------------------------------------------------------------------------------------ */

static const struct {
	const char *name;
	const char *keys; /* > is right, v down, ~ Enter, ^ Delete */
	const char *const answers[4];
} strokes[] = {
	{ "Lay (p p)", "p ", { NULL } },
	{ "Lay (. open ground)", "p . ", { NULL } },
	{ "Lift", "p ^", { NULL } },
	{ "Trail (S S)", "S=", { NULL } },
	{ "Trail (b b)", "p=b>", { NULL } },
	{ "Flood (b b)", "*", { NULL } },
	{ "Fill (p p)", "p~>v~", { "Fill it", NULL } },
	{ "Frame (p p)", "p~>v~", { "Frame it", "Thickness: 1 cell", NULL } },
	{ "Straight run (p p)", "p~>>~", { "Lay a straight run", "Width: 1 cell", NULL } },
	{ "Stamp what is marked", "p ~~> ", { "Mark it", NULL } },
	{ "Move what is marked", "p ~~>~", { "Mark it", "Move it here", NULL } },
	{ "Lift what is marked", "p ~~^", { "Mark it", NULL } },
	{ "Lay a fence", ":", { "Lay a fence", "Top", NULL } },
	{ "Mirror left-right", "|", { NULL } },
	{ "Fold", "|&", { NULL } },
	{ "Cards (b b)", "#", { "b b", "Courses: 5", NULL } },
	{ "Cards (The plot itself)", "#", { "The plot itself", "Title: Court", NULL } },
	{ "Cards (Remove an entry)", "#", { "Remove an entry", "p p", ". open ground", NULL } },
};
enum { STROKES = sizeof strokes / sizeof *strokes };

static void press_all(struct desk *b, const char *keys)
{
	static const struct {
		char sign;
		int key;
	} keys_of[] = {
		{ '>', PRESS_RIGHT }, { 'v', PRESS_DOWN }, { '~', PRESS_ENTER },
		{ '^', PRESS_DELETE },
	};

	for (; *keys; keys++) {
		int key = (unsigned char)*keys;

		for (size_t i = 0; i < sizeof keys_of / sizeof *keys_of; i++)
			if (keys_of[i].sign == *keys)
				key = keys_of[i].key;
		desk_press(b, key);
	}
}

START_TEST(what_is_taken_back_and_put_back_has_the_name_of_its_act)
{
	struct desk *b = garden();

	desk_answer(b, strokes[_i].answers);
	press_all(b, strokes[_i].keys);
	check_named(b, strokes[_i].name);
	desk_free(b);
}
END_TEST

/* ---- More than one --------------------------------------------------------------------------- */

START_TEST(each_step_has_its_own_name_and_keeps_it)
{
	static const char *const names[] = { "Lay (b b)", "Lift", "Trail (p p)" };
	struct desk *b = garden();

	press_all(b, "b ^vp=");
	for (int round = 0; round < 2; round++) {
		for (int i = 2; i >= 0; i--) {
			desk_press(b, PRESS_BACKSPACE);
			desk_says(b, names[i]);
		}
		for (int i = 0; i < 3; i++) {
			desk_type(b, "+");
			desk_says(b, names[i]);
		}
	}
	desk_press(b, PRESS_BACKSPACE);
	desk_type(b, "=S ");
	check_named(b, "Lay (S S)");
	desk_free(b);
}
END_TEST

START_TEST(where_there_is_nothing_it_says_so)
{
	struct desk *b = garden();

	desk_press(b, PRESS_BACKSPACE);
	desk_says_whole(b, "There is no stroke to take back.");
	desk_type(b, "+");
	desk_says_whole(b, "Nothing was taken back that could be put back.");
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act_end");
	TCase *names = suite_case(suite, "names");

	tcase_add_loop_test(names, what_is_taken_back_and_put_back_has_the_name_of_its_act, 0,
		STROKES);
	tcase_add_test(names, each_step_has_its_own_name_and_keeps_it);
	tcase_add_test(names, where_there_is_nothing_it_says_so);
	return suite;
}
