/* What comes from outside, made fit to be shown. */
#include "base/spell.h"
#include "support/random.h"
#include "support/runner.h"

#include <locale.h>
#include <string.h>

static struct text out;

static void setup(void)
{
	out = TEXT_EMPTY;
}

static void teardown(void)
{
	text_fini(&out);
}

static const struct {
	const char *given, *spelled;
} texts[] = {
	{ "", "" },
	{ "court.plot", "court.plot" },
	{ "G\303\244rten \346\272\220", "G\303\244rten \346\272\220" },
	{ "\360\237\214\261", "\360\237\214\261" },
	{ "a\tb\nc", "a<09>b<0A>c" },
	{ "\033]0;x\007", "<1B>]0;x<07>" },
	{ "\302\233" "31m", "<C2><9B>31m" },
	{ "\233" "31m", "<9B>31m" },
	{ "\342\200\256" "abc", "<E2><80><AE>abc" },
	{ "\363\240\201\201", "<F3><A0><81><81>" },
	{ "cut \342\200", "cut <E2><80>" },
	{ "<1B>", "<1B>" },
};

START_TEST(what_is_no_text_is_spelled_byte_by_byte)
{
	spell(&out, texts[_i].given);
	ck_assert_str_eq(out.bytes, texts[_i].spelled);
}
END_TEST

START_TEST(what_is_spelled_once_stays_so)
{
	struct random random = { 41 };
	struct text again = TEXT_EMPTY;

	for (int i = 0; i < 2000; i++) {
		char bytes[40];
		int length = random_below(&random, 39);

		for (int at = 0; at < length; at++)
			bytes[at] = (char)random_between(&random, 1, 255);
		bytes[length] = '\0';
		text_clear(&out);
		text_clear(&again);
		spell(&out, bytes);
		spell(&again, out.bytes);
		ck_assert_str_eq(again.bytes, out.bytes);
		for (const char *c = out.bytes; *c; c++)
			ck_assert((unsigned char)*c >= ' ' && *c != 0x7f);
	}
	text_fini(&again);
}
END_TEST

START_TEST(beyond_ascii_all_is_spelled_where_the_locale_has_no_utf_8)
{
	const char *name = "G\303\244rten";

	setlocale(LC_CTYPE, "C");
	spell_for_locale(&out, name);
	ck_assert_str_eq(out.bytes, "G<C3><A4>rten");
	setlocale(LC_CTYPE, "C.UTF-8");
	text_clear(&out);
	spell_for_locale(&out, name);
	ck_assert_str_eq(out.bytes, name);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("spell");
	TCase *all = suite_case(suite, "spell");

	tcase_add_checked_fixture(all, setup, teardown);
	tcase_add_loop_test(all, what_is_no_text_is_spelled_byte_by_byte, 0,
		sizeof texts / sizeof *texts);
	tcase_add_test(all, what_is_spelled_once_stays_so);
	tcase_add_test(all, beyond_ascii_all_is_spelled_where_the_locale_has_no_utf_8);
	return suite;
}
