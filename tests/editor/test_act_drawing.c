/* Writing the plan to scale from the editor, without a terminal. */
#include "base/file.h"
#include "support/desk.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdio.h>
#include <string.h>

#define ROWS (const char *[])

static struct desk *sit(void)
{
	return desk_new(ROWS { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "pppppppp", NULL });
}

/* Whether the desk's file "garden.svg" has the words. */
static bool has(const struct desk *b, const char *words)
{
	char path[4300];
	struct text bytes = TEXT_EMPTY;
	struct file_error error;
	bool found;

	snprintf(path, sizeof path, "%s/garden.svg", b->folder);
	ck_assert_msg(file_read(path, 1 << 24, &bytes, &error), "%s", error.sentence);
	ck_assert_int_eq(strncmp(bytes.bytes, "<?xml", 5), 0);
	found = strstr(bytes.bytes, words) != NULL;
	text_fini(&bytes);
	return found;
}

START_TEST(it_goes_beside_the_plot_as_the_card_says)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Paper: a4; Turned: landscape", NULL });
	desk_do(b, ACT_DRAWING);
	desk_asked_whole(b, "Write the plan to scale to a file");
	ck_assert(strstr(b->offered, "/garden.svg\n"));
	desk_says_whole(b, "Drawing written to FOLDER/garden.svg: sheet 1 of 1.");
	ck_assert(has(b, "width=\"297mm\" height=\"210mm\""));
	ck_assert(!has(b, "string of the set-out"));
	desk_answer(b, ROWS { "Scale: 1:60; Black on white: yes; With strings: yes; "
		"With levels: yes", NULL });
	desk_do(b, ACT_DRAWING);
	ck_assert(has(b, "Scale 1 in = 5 ft (1:60)"));
	ck_assert(has(b, "string of the set-out"));
	ck_assert(!has(b, "#cfa77c"));
	desk_free(b);
}
END_TEST

START_TEST(what_cannot_be_drawn_is_refused_in_its_field)
{
	static const char *const rows[][2] = {
		{ "Scale: large", "Scale: not understood. Such as 1:48" },
		{ "Sheet: 3", "Not so: the drawing has 1 sheet, so there is no sheet 3." },
		{ "Paper: letter; Scale: 1:10", "Not so: the plan is too large for Letter" },
		{ "Paper: b5", "Paper" }, { "Sheet: 0", "Sheet" },
		{ "With levels: perhaps", "levels" },
		{ "With the sun: yes", "Not so: hours of sun need the latitude" },
		{ "Turned: round", "Turned" }, { "File: ", "File: needed here" },
	};
	struct desk *b = sit();

	desk_answer(b, ROWS { rows[_i][0], "", NULL });
	desk_do(b, ACT_DRAWING);
	ck_assert_msg(strstr(b->fault, rows[_i][1]), "%s", b->fault);
	desk_free(b);
}
END_TEST

START_TEST(what_is_given_up_or_is_another_file_is_not_written)
{
	struct desk *b = sit();
	char path[4300];
	FILE *other;

	b->gives_up = true;
	desk_answer(b, ROWS { "Paper: a4", "", NULL });
	desk_do(b, ACT_DRAWING);
	ck_assert_msg(strstr(b->fault, "Given up: nothing is written."), "%s", b->fault);
	b->gives_up = false;
	snprintf(path, sizeof path, "%s/garden.svg", b->folder);
	other = fopen(path, "w");
	ck_assert(other && fputs("<?xml version=\"1.0\"?><svg/>", other) >= 0);
	fclose(other);
	desk_answer(b, ROWS { "Paper: a4", "Leave that file alone", "", NULL });
	desk_do(b, ACT_DRAWING);
	ck_assert(!has(b, "parterre drawing"));
	desk_answer(b, ROWS { "Paper: a4", "Write over it", NULL });
	desk_do(b, ACT_DRAWING);
	ck_assert(has(b, "parterre drawing"));
	desk_free(b);
}
END_TEST

/* What was counted last says that it cannot be drawn so: it is not asked. */
START_TEST(what_is_not_counted_is_not_looked_at)
{
	struct desk *b = desk_in_sun(NULL);

	plot_set(editor_edit(&b->editor), 0, HEAD_SITE, "45");
	editor_stroke(&b->editor);
	b->gives_up = true;
	desk_answer(b, ROWS { "With the sun: yes", "", NULL });
	desk_do(b, ACT_DRAWING);
	ck_assert_str_eq(b->fault, "Given up: nothing is written.");
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act: drawing");
	TCase *drawing = suite_case(suite, "drawing");

	tcase_add_test(drawing, it_goes_beside_the_plot_as_the_card_says);
	tcase_add_loop_test(drawing, what_cannot_be_drawn_is_refused_in_its_field, 0, 8);
	tcase_add_test(drawing, what_is_not_counted_is_not_looked_at);
	tcase_add_test(drawing, what_is_given_up_or_is_another_file_is_not_written);
	return suite;
}
