/* Naming the region under the cursor, without a terminal. */

#include "support/desk.h"
#include "support/runner.h"

#include "base/memory.h"
#include "editor/here.h"

#include <string.h>

#define ROWS (const char *[])

static struct desk *sit(int x, int y)
{
	struct desk *b = desk_new(ROWS { "bb.", "pp.", NULL });

	b->editor.cursor = (struct place){ x, y };
	return b;
}

static void check_here(struct desk *b, const char *words)
{
	struct text text = TEXT_EMPTY;

	desk_refresh(b);
	editor_draw(&b->editor);
	here_words(&b->editor, &text);
	ck_assert_msg(strstr(text.bytes, words), "%s", text.bytes);
	text_fini(&text);
}

START_TEST(a_region_is_named_and_the_name_changed_and_taken_away)
{
	struct desk *b = sit(1, 0);

	desk_answer(b, ROWS { "Name: Sage \"grey\"", "Name: Thyme", "Name: ", NULL });
	desk_do(b, ACT_NAME);
	desk_asked_whole(b, "This place: b b");
	ck_assert_str_eq(b->offered, "Name: \n");
	desk_says_whole(b, "Named: Sage \"grey\". Backspace takes it back.");
	check_here(b, "B1 b b\nSage \"grey\"\n");
	b->editor.cursor.x = 0;
	desk_do(b, ACT_NAME);
	ck_assert_str_eq(b->offered, "Name: Sage \"grey\"\n");
	ck_assert_uint_eq(b->editor.plot->details.names.count, 1);
	ck_assert_int_eq(b->editor.plot->details.names.items[0].at.x, 1);
	desk_do(b, ACT_NAME);
	ck_assert_uint_eq(b->editor.plot->details.names.count, 0);
	desk_says_whole(b, "It has no name of its own now.");
	for (int i = 0; i < 3; i++)
		desk_press(b, PRESS_BACKSPACE);
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(open_ground_gets_no_name_but_may_have_one_taken_away)
{
	struct desk *b = sit(2, 0);

	desk_do(b, ACT_NAME);
	desk_says_whole(b, "Open ground has no name: go to a bed, a path, a lawn or a fixture.");
	names_add(&editor_edit(&b->editor)->details.names, b->editor.cursor,
		memory_string("Lost"));
	editor_stroke(&b->editor);
	check_here(b, "Snag: A name stands here on open ground");
	desk_answer(b, ROWS { "Name: ", NULL });
	desk_do(b, ACT_NAME);
	ck_assert_uint_eq(b->editor.plot->details.names.count, 0);
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act_name");
	TCase *acts = suite_case(suite, "acts");

	tcase_add_test(acts, a_region_is_named_and_the_name_changed_and_taken_away);
	tcase_add_test(acts, open_ground_gets_no_name_but_may_have_one_taken_away);
	return suite;
}
