/* What of a paste is but begun, and how much of one is kept. */
#include "screen/paste.h"
#include "base/memory.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

static struct paste paste;

static void teardown(void)
{
	text_fini(&paste.text);
}

static const struct {
	const char *bytes;
	size_t begun;
} ends[] = {
	/* the end mark */
	{ "", 0 }, { "a", 0 }, { "\033", 1 }, { "a\033", 1 }, { "\033[", 2 }, { "\033[2", 3 },
	{ "\033[20", 4 }, { "\033[201", 5 }, { "a\033[201", 5 }, { "\033[201~", 0 },
	{ "\033[200", 0 }, { "[201", 0 }, { "\033\033[", 2 }, { "\033[2\033", 1 },
	/* characters of two, three and four bytes, at either edge of what begins them */
	{ "\300", 1 }, { "\303", 1 }, { "\337", 1 }, { "a\303", 1 }, { "\303\251", 0 },
	{ "\337\200", 0 }, { "\340", 1 }, { "\340\200", 2 }, { "\357\277", 2 },
	{ "a\342\202", 2 }, { "\342\202\254", 0 }, { "\360", 1 }, { "\360\200", 2 },
	{ "\360\237\214", 3 }, { "a\364\217\277", 3 }, { "\360\237\214\261", 0 },
	/* none: the rest of one, whatever stands before it */
	{ "\251", 0 }, { "\277\277\277", 0 }, { "a\251", 0 }, { "\177\200", 0 }, { "\303a", 0 },
	/* the longer of both */
	{ "\303\033[", 2 }, { "\303\033", 1 },
};

START_TEST(what_is_but_begun_is_kept_back)
{
	const char *bytes = ends[_i].bytes;

	ck_assert_uint_eq(paste_begun((const unsigned char *)bytes, strlen(bytes)), ends[_i].begun);
}
END_TEST

START_TEST(what_comes_after_it_was_handed_over_is_another_part)
{
	paste_start(&paste);
	ck_assert(paste_hand_over(&paste));
	ck_assert(!paste_hand_over(&paste));
	paste_add(&paste, (const unsigned char *)"ab", 2);
	paste_add(&paste, (const unsigned char *)"c", 1);
	ck_assert_str_eq(paste.text.bytes, "abc");
	ck_assert(paste_hand_over(&paste));
	paste_add(&paste, (const unsigned char *)"", 0);
	ck_assert_str_eq(paste.text.bytes, "abc");
	ck_assert(!paste_hand_over(&paste));
	paste_add(&paste, (const unsigned char *)"d", 1);
	ck_assert_str_eq(paste.text.bytes, "d");
	ck_assert(paste_hand_over(&paste));
}
END_TEST

START_TEST(a_megabyte_is_kept)
{
	const size_t megabyte = 1 << 20;
	unsigned char *bytes = memory_new(megabyte, 1);

	memset(bytes, 'a', megabyte);
	paste_start(&paste);
	paste_add(&paste, bytes, megabyte - 1);
	paste_add(&paste, bytes, 2);
	ck_assert_uint_eq(paste.text.length, megabyte - 1);
	paste_add(&paste, bytes, 1);
	ck_assert_uint_eq(paste.text.length, megabyte);
	paste_add(&paste, bytes, 1);
	ck_assert_uint_eq(paste.text.length, megabyte);
	free(bytes);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("paste");
	TCase *tests = suite_case(suite, "paste");

	tcase_add_checked_fixture(tests, NULL, teardown);
	tcase_add_loop_test(tests, what_is_but_begun_is_kept_back, 0, sizeof ends / sizeof *ends);
	tcase_add_test(tests, what_comes_after_it_was_handed_over_is_another_part);
	tcase_add_test(tests, a_megabyte_is_kept);
	return suite;
}
