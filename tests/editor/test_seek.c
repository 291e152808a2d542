/* Answers found by typing words of theirs. */
#include "editor/ask/seek.h"
#include "support/runner.h"

#include <stdio.h>
#include <string.h>

static const char *const answers[] = { "Axis", "Copy", "Lay", "Lay a fence", "Fence it in", "Leave",
	"Overlay", "p Crushed stone", "Mirror left-right" };
static const char *const also[] = { "say where the mirror stands", "", "lay it here",
	"put up pickets", "", "leave the program", "", "", "symmetry" };
static const char *const notes[] = { "{", "-", "Space", "`", "`", "<", "letter, .", "path", "|" };
enum { ANSWERS = 9 };

static const struct question question = { .answers = answers, .also = also, .notes = notes,
	.count = ANSWERS };

static const struct {
	const char *typed, *found; /* the answers' places, in the order found */
} rows[] = {
	{ "", "012345678" },
	{ "   ", "012345678" },
	{ "lay", "236" },             /* whole, whole, within a word */
	{ "LAY", "236" },
	{ "lay a", "326" },           /* "a" is a word of the first alone */
	{ "a  lay", "326" },
	{ "fence", "34" },
	{ "stone", "7" },
	{ "rush", "7" },
	{ "le", "586" },              /* begins an answer before a note; within no other */
	{ "mirror", "80" },           /* in the answer before what else it goes by */
	{ "pick", "3" },
	{ "ickets", "" },             /* of what else it goes by words must begin so */
	{ "path", "7" },
	{ "stonee", "" },
	{ "copy it", "" },
	{ "lay zz", "" },
	{ "right", "8" },
	{ "left-right", "8" },
	{ "mirror-", "" },
	/* A sign is a word where it stands alone. */
	{ "-", "18" },
	{ "{", "0" },
	{ ".", "6" },
	{ "`", "34" },
	{ "[", "" },
};

/* "0" to "8" for the answers found. */
static void check_found(const struct question *asked, const char *typed, const char *expected)
{
	int found[ANSWERS], count = seek(asked, typed, found);
	char places[ANSWERS + 1] = "";

	for (int i = 0; i < count; i++)
		places[i] = (char)('0' + found[i]);
	ck_assert_msg(strcmp(places, expected) == 0, "\"%s\" finds %s, not %s", typed, places,
		expected);
}

START_TEST(what_has_all_the_words_is_found_best_first)
{
	check_found(&question, rows[_i].typed, rows[_i].found);
}
END_TEST

START_TEST(whole_words_come_before_beginnings_and_these_before_words_within)
{
	static const char *const ranked[] = { "overgates", "gatepost", "a gate", "-", "-", "-" };
	static const char *const others[] = { "", "", "", "floodgate", "gates", "a gate" };
	const struct question asked = { .answers = ranked, .also = others, .count = 6 };

	check_found(&asked, "gate", "25140");
}
END_TEST

START_TEST(what_is_under_one_heading_stays_together_where_the_best_of_it_is)
{
	static const char *const headings[] = { "Draw", "Draw", "Draw", "Fence", "Fence", "Fence",
		"More", "More", "More" };
	struct question asked = question;

	asked.headings = headings;
	check_found(&asked, "", "012345678");
	check_found(&question, "a", "30256");
	check_found(&asked, "a", "35026");
	check_found(&asked, "mirror", "80");
}
END_TEST

START_TEST(answers_that_go_by_nothing_else_are_found_too)
{
	const struct question bare = { .answers = answers, .count = ANSWERS };

	check_found(&bare, "fence", "34");
	check_found(&bare, "path", "");
}
END_TEST

START_TEST(a_word_is_had_whole_or_not_at_all)
{
	ck_assert(seek_has_word("open load", "Load"));
	ck_assert(seek_has_word("open load", "to  open it"));
	ck_assert(!seek_has_word("open load", "ope"));
	ck_assert(!seek_has_word("open load", "opens"));
	ck_assert(!seek_has_word("open load", ""));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("seek");
	TCase *seek = suite_case(suite, "seek");

	tcase_add_loop_test(seek, what_has_all_the_words_is_found_best_first, 0,
		sizeof rows / sizeof *rows);
	tcase_add_test(seek, whole_words_come_before_beginnings_and_these_before_words_within);
	tcase_add_test(seek, what_is_under_one_heading_stays_together_where_the_best_of_it_is);
	tcase_add_test(seek, answers_that_go_by_nothing_else_are_found_too);
	tcase_add_test(seek, a_word_is_had_whole_or_not_at_all);
	return suite;
}
