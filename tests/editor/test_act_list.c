/* The two lists of acts: everyday words find the act that is meant, and are answered where there is
 * none. */
#include "editor/acts/act_groups.h"
#include "editor/acts/advice.h"
#include "editor/ask/seek.h"
#include "support/desk.h"
#include "support/runner.h"

#include <ctype.h>
#include <stdio.h>
#include <string.h>

/* ---- Words ----------------------------------------------------------------------------------- */

static const struct {
	const char *word;
	enum act_id act;
} words[] = {
	{ "undo", ACT_TAKE_BACK }, { "redo", ACT_PUT_BACK }, { "quit", ACT_LEAVE },
	{ "exit", ACT_LEAVE }, { "leave", ACT_LEAVE }, { "stop", ACT_STEP_BACK },
	{ "cancel", ACT_STEP_BACK }, { "zoom", ACT_FARTHER }, { "zoom", ACT_NEARER },
	{ "zoom in", ACT_NEARER }, { "zoom out", ACT_FARTHER }, { "bigger", ACT_NEARER },
	{ "bigger", ACT_SIZE }, { "smaller", ACT_FARTHER }, { "smaller", ACT_SIZE },
	{ "delete", ACT_LIFT }, { "erase", ACT_LIFT }, { "clear", ACT_LIFT },
	{ "rotate", ACT_TURN }, { "flip", ACT_FLIP_ACROSS }, { "flip", ACT_FLIP_DOWN },
	{ "select", ACT_MARK }, { "cut", ACT_LIFT_MARKED }, { "copy", ACT_STAMP },
	{ "paste", ACT_STAMP }, { "move", ACT_MOVE_MARKED }, { "move", ACT_ARROW },
	{ "find", ACT_HELP }, { "search", ACT_HELP }, { "help", ACT_HELP },
	{ "line", ACT_RUN }, { "path", ACT_RUN }, { "path", ACT_TAKE }, { "strip", ACT_STRIP_PUT },
	{ "export", ACT_TAKEOFF }, { "print", ACT_TAKEOFF }, { "takeoff", ACT_TAKEOFF },
	{ "svg", ACT_DRAWING }, { "scale", ACT_DRAWING }, { "drawing", ACT_DRAWING },
	{ "list", ACT_TAKEOFF }, { "csv", ACT_TAKEOFF }, { "spreadsheet", ACT_TAKEOFF },
	{ "price", ACT_PRICES }, { "cost", ACT_PRICES },
	{ "cost", ACT_PAGES }, { "price", ACT_PRICE }, { "cheaper", ACT_PRICE },
	{ "colour", ACT_CARDS }, { "color", ACT_CARDS }, { "goto", ACT_PLACE },
	{ "ruler", ACT_MEASURE }, { "measure", ACT_MEASURE },
	{ "snag", ACT_PAGES }, { "warning", ACT_PAGES }, { "page", ACT_NEXT_PAGE },
	{ "snag", ACT_NEXT_SNAG }, { "warning", ACT_NEXT_SNAG }, { "problem", ACT_NEXT_SNAG },
	{ "error", ACT_NEXT_SNAG }, { "center", ACT_CENTRE },
	{ "goto", ACT_GO_THERE }, { "jump", ACT_GO_THERE }, { "go there", ACT_GO_THERE },
	{ "panel", ACT_PANEL }, { "redraw", ACT_REPAINT },
	{ "rename", ACT_NAME }, { "name", ACT_NAME }, { "name", ACT_CARDS },
	{ "title", ACT_CARDS }, { "note", ACT_CARDS }, { "new", ACT_CARDS },
	{ "legend", ACT_CARDS }, { "units", ACT_CARDS }, { "metric", ACT_CARDS },
	{ "drip", ACT_CARDS }, { "drip", ACT_PAGES },
	{ "watering", ACT_CARDS }, { "watering", ACT_PAGES }, { "month", ACT_CARDS },
	{ "month", ACT_PAGES }, { "latitude", ACT_CARDS }, { "compass", ACT_CARDS },
	{ "planting", ACT_CARDS }, { "planting", ACT_PAGES }, { "plants", ACT_PLANT_ADD },
	{ "tap", ACT_TAP }, { "hose", ACT_TAP },
	{ "sun", ACT_SHOW_SUN }, { "shady", ACT_SHOW_SUN },
	{ "shadow", ACT_SHADOWS }, { "shade", ACT_SHADE }, { "north", ACT_CARDS },
	{ "plant", ACT_PLANT_ADD }, { "plant", ACT_DRIFT }, { "flower", ACT_PLANT_ADD },
	{ "herb", ACT_PLANT_ADD }, { "remove plants", ACT_DRIFT_OUT },
	{ "block", ACT_CARDS }, { "courses", ACT_CARDS }, { "bed", ACT_TAKE },
	{ "letter", ACT_TAKE }, { "symmetry", ACT_LEFT_RIGHT }, { "mirror", ACT_LEFT_RIGHT },
	{ "size", ACT_SIZE }, { "resize", ACT_SIZE }, { "narrower", ACT_STRIP_TAKE },
	{ "taller", ACT_SIZE }, { "higher", ACT_SIZE }, { "row", ACT_STRIP_PUT },
	{ "column", ACT_STRIP_PUT }, { "insert", ACT_STRIP_PUT }, { "circle", ACT_DISC },
	{ "round", ACT_DISC }, { "elbow", ACT_BEND },
	{ "replace", ACT_RELETTER }, { "gate", ACT_GATE_SET },
	{ "fence", ACT_FENCE }, { "fill", ACT_FILL }, { "fill", ACT_FLOOD },
	{ "frame", ACT_FRAME }, { "rectangle", ACT_PEG }, { "rectangle", ACT_FILL },
	{ "move bed", ACT_MOVE_MARKED }, { "copy bed", ACT_STAMP },
	{ "wider", ACT_STRIP_PUT }, { "widen", ACT_STRIP_PUT },
	{ "save", ACT_SAVE }, { "backup", ACT_COPY }, { "mouse", ACT_MOUSE },
	{ "changed", ACT_PAGES }, { "pipe", ACT_SERVICE }, { "gas pipe", ACT_SERVICE },
	{ "cable", ACT_SERVICE }, { "water", ACT_SERVICE }, { "drain", ACT_SERVICE },
	{ "electric", ACT_SERVICE }, { "tree", ACT_KEEP_CIRCLE }, { "roots", ACT_KEEP_CIRCLE },
	{ "manhole", ACT_KEEP_RECTANGLE }, { "house", ACT_HOUSE }, { "building", ACT_HOUSE },
	{ "shadow", ACT_SHADE }, { "hedge", ACT_SHADE },
	{ "tie", ACT_TIE }, { "delivery", ACT_DROP }, { "deliveries", ACT_DROP },
	{ "tap", ACT_TAP }, { "faucet", ACT_TAP }, { "irrigation", ACT_TAP },
	{ "slope", ACT_LEVELS }, { "slope", ACT_FINISH }, { "level", ACT_LEVELS },
	{ "fall", ACT_FINISH }, { "show levels", ACT_SHOW_LEVELS },
	{ "remove pipe", ACT_AROUND_OUT }, { "remove tree", ACT_AROUND_OUT },
};
enum { LISTS = 2 };

/* Looks the word up in the list that is asked, and picks nothing. */
struct seeker {
	const char *typed;
	const struct act *act;
	int place; /* of the act among what was found, from 0; -1: it was not */
};
static struct seeker seeker;

/* In the list by name a state may stand behind it. */
static bool is_called(const char *answer, const char *name)
{
	size_t length = strlen(name);

	return strncmp(answer, name, length) == 0 && strchr(":", answer[length]) != NULL;
}

static int look_up(struct asker *asker, const struct question *question)
{
	int found[ACTS], count = seek(question, seeker.typed, found);

	(void)asker;
	seeker.place = -1;
	for (int i = count - 1; i >= 0; i--)
		if (is_called(question->answers[found[i]], seeker.act->name) ||
		    strcmp(question->answers[found[i]], seeker.act->wish) == 0)
			seeker.place = i;
	return ANSWER_NONE;
}

START_TEST(an_everyday_word_finds_the_act_that_is_meant_first_or_second)
{
	static const enum act_id lists[LISTS] = { ACT_ALL, ACT_HELP };
	struct desk *b = desk_new((const char *const[]){ "b.", "..", NULL });

	b->asker.choose = look_up;
	seeker.act = acts_get(words[_i].act);
	seeker.typed = words[_i].word;
	for (int i = 0; i < LISTS; i++) {
		desk_do(b, lists[i]);
		ck_assert_msg(seeker.place == 0 || seeker.place == 1,
			"\"%s\" finds \"%s\" at place %d of \"%s\"", seeker.typed,
			seeker.act->name, seeker.place, acts_get(lists[i])->name);
	}
	desk_free(b);
}
END_TEST

START_TEST(what_an_act_has_set_stands_behind_its_name)
{
	struct desk *b = desk_new((const char *const[]){ "b.", "..", NULL });

	desk_answer(b, (const char *const[]){ "Mouse: off", "Mouse: on", "Panel width: normal",
		"Panel width: wide", "Panel width: hidden", "Panel width: normal", NULL });
	desk_type(b, "!");
	ck_assert(b->editor.is_pointing);
	desk_type(b, "!!!");
	ck_assert_int_eq(b->editor.panel, PANEL_HIDDEN);
	desk_type(b, "!!");
	ck_assert_int_eq(b->editor.panel, PANEL_WIDE);
	desk_free(b);
}
END_TEST

START_TEST(words_are_plain_and_none_is_there_twice)
{
	for (enum act_id id = ACT_FIRST; id < ACTS; id++) {
		const char *of = acts_get(id)->words, *word = of;

		ck_assert_msg(of && *of, "\"%s\" has no words", acts_get(id)->name);
		while (*word) {
			size_t length = strcspn(word, " ");
			char one[40];

			for (size_t i = 0; i < length; i++)
				ck_assert_msg(islower((unsigned char)word[i]), "%s", word);
			snprintf(one, sizeof one, "%.*s", (int)length, word);
			ck_assert(length > 0);
			word += length + (word[length] == ' ');
			ck_assert_msg(!seek_has_word(word, one), "%s: %s is there twice", of, one);
		}
	}
}
END_TEST

/* ---- Advice ---------------------------------------------------------------------------------- */

START_TEST(what_no_act_is_there_for_is_answered)
{
	static const char *const told[][2] = {
		{ "open", "Leave, then name the other file: parterre FILE" },
		{ "Open file", "Leave, then name the other file: parterre FILE" },
		{ "load", "Leave, then" }, { "new", "For a new plot leave" },
		{ "curve", "square cells" }, { "oval", "square cells" },
		{ "colour", "NO_COLOR=1" }, { "color", "NO_COLOR=1" },
		{ "print", "lp FILE" },
		{ "grass", "l is turf" }, { "pond", "A fixture" },
		{ "spreadsheet", "NAME.csv" }, { "json", ".json for" },
	};

	for (size_t i = 0; i < sizeof told / sizeof *told; i++) {
		const char *advice = advice_for(told[i][0]);

		ck_assert_msg(advice && strstr(advice, told[i][1]), "%s: %s", told[i][0], advice);
	}
	ck_assert_ptr_null(advice_for(""));
	ck_assert_ptr_null(advice_for("ope"));
	ck_assert_ptr_null(advice_for("undo"));
}
END_TEST

/* ---- Headings -------------------------------------------------------------------------------- */

static int check_headings(struct asker *asker, const struct question *question)
{
	const char *last = "";

	(void)asker;
	ck_assert_int_eq(question->count, ACTS - ACT_FIRST);
	for (int i = 0; i < question->count; i++) {
		if (strcmp(question->headings[i], last) == 0)
			continue;
		last = question->headings[i];
		for (int before = 0; before < i; before++)
			ck_assert_str_ne(question->headings[before], last);
	}
	ck_assert_str_eq(question->headings[0], "Go");
	ck_assert_str_eq(last, "Program");
	return ANSWER_NONE;
}

START_TEST(acts_stand_under_headings_each_of_which_is_there_once)
{
	struct desk *b = desk_new((const char *const[]){ "b.", "..", NULL });

	b->asker.choose = check_headings;
	desk_do(b, ACT_ALL);
	desk_do(b, ACT_HELP);
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act_list");
	TCase *list = suite_case(suite, "list");

	tcase_add_loop_test(list, an_everyday_word_finds_the_act_that_is_meant_first_or_second, 0,
		sizeof words / sizeof *words);
	tcase_add_test(list, what_an_act_has_set_stands_behind_its_name);
	tcase_add_test(list, words_are_plain_and_none_is_there_twice);
	tcase_add_test(list, what_no_act_is_there_for_is_answered);
	tcase_add_test(list, acts_stand_under_headings_each_of_which_is_there_once);
	return suite;
}
