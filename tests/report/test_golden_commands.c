/* What each command answers: its status, how what it prints begins and how long that is, and all
 * that it complains of. */
#include "support/golden.h"
#include "support/program.h"
#include "support/runner.h"

#include <string.h>

enum { WORDS_MOST = 6 };

#define COURT "plots/court.plot"
#define SUN "tests/plots/sun.plot"

static const char *const asked[][WORDS_MOST] = {
	{ "takeoff", COURT }, { "takeoff", "--json", COURT }, { "takeoff", COURT, "--csv" },
	{ "takeoff", "--pages", COURT }, { "takeoff", "--only", "walls", COURT },
	{ "takeoff", "--only", "front,assumed", "--pages", COURT }, { "takeoff", "--only=list" },
	{ "takeoff", "--only", "list", "--pages" }, { "takeoff", "--only", "list", COURT, COURT },
	{ "takeoff", "--prices", "plots/prices.json", COURT }, { "takeoff", "-o", "-", COURT },
	{ "plan", COURT }, { "plan", "--prices=plots/prices.json", COURT }, { "setout", COURT },
	{ "drawing", COURT }, { "drawing", COURT, "--paper", "a3", "--plain" },
	{ "drawing", "--sheet", "1", COURT }, { "sun", SUN }, { "sun", "--json", SUN },
	{ "sun", "--on", "2026-03-01", SUN }, { "sun", "--on=2026-03-01", "--on=2026-02-28", SUN },
	{ "snags", COURT }, { "snags", "plots/snags.plot" },
	{ "snags", "--json", "plots/snags.plot" }, { "compare", COURT, COURT },
	{ "compare", COURT, "plots/ring.plot" }, { "compare", "--json", COURT, "plots/ring.plot" },
	{ "prices", "new", COURT }, { "prices", "new", COURT, "-o", "-" },

	{ "takeoff" }, { "plan" }, { "setout" }, { "drawing" }, { "sun" }, { "snags" },
	{ "compare" }, { "prices" }, { "prices", "new" }, { "prices", "old", COURT },
	{ "takeoff", COURT, COURT }, { "compare", COURT }, { "compare", COURT, COURT, COURT },
	{ "compare", "-", "-" }, { "prices", "new", COURT, COURT },

	{ "takeoff", "--what", COURT }, { "plan", "-x", COURT }, { "setout", "-xo", COURT },
	{ "drawing", "--json", COURT }, { "sun", "--csv", SUN }, { "snags", "--only", "x", COURT },
	{ "compare", "--on", "2026-01-01", COURT, COURT }, { "compare", "--csv", COURT, COURT },
	{ "prices", "new", "--prices", "x", COURT }, { "prices", "new", "--json", COURT },
	{ "plan", "--pages", COURT }, { "takeoff", "--on", "2026-01-01", COURT },
	{ "takeoff", "--plain", COURT }, { "plan", "--paper", "a4", COURT },
	{ "plan", "--turn", "portrait", COURT }, { "plan", "--scale", "1:50", COURT },
	{ "plan", "--sheet", "1", COURT }, { "plan", "--with", "sun", COURT },

	{ "takeoff", COURT, "-o" }, { "takeoff", COURT, "--output" },
	{ "takeoff", COURT, "--prices" }, { "takeoff", COURT, "--only" }, { "sun", SUN, "--on" },
	{ "drawing", COURT, "--paper" }, { "drawing", COURT, "--turn" },
	{ "drawing", COURT, "--scale" }, { "drawing", COURT, "--sheet" },
	{ "drawing", COURT, "--with" }, { "takeoff", COURT, "--json=yes" },

	{ "takeoff", "--json", "--csv", COURT }, { "takeoff", "--json", "--only", "dig", COURT },
	{ "takeoff", "--csv", "--pages", COURT }, { "takeoff", "--only", "dig,", COURT },
	{ "takeoff", "--only", "", COURT }, { "takeoff", "--only", "digs,walls", COURT },
	{ "takeoff", "--only", "walls,list", COURT }, { "sun", "--on", "2026-02-29", SUN },
	{ "sun", "--on", "1582-01-01", SUN }, { "sun", "--on=x", "--on=2026-01-01", SUN },
	{ "sun", COURT }, { "drawing", "--paper", "a5", COURT },
	{ "drawing", "--paper", "", COURT }, { "drawing", "--turn", "port", COURT },
	{ "drawing", "--scale", "1:10001", COURT }, { "drawing", "--sheet", "0", COURT },
	{ "drawing", "--sheet", "-1", COURT }, { "drawing", "--sheet", "1x", COURT },
	{ "drawing", "--sheet", "2", COURT }, { "drawing", "--sheet", "9999", COURT },
	{ "drawing", "--sheet", "10000", COURT }, { "drawing", "--with", "sun,rain", COURT },
	{ "drawing", "--with", "", COURT }, { "drawing", "--with", "levels,,sun", COURT },
	{ "drawing", "--paper", "a5", "--turn", "x", COURT },

	{ "takeoff", "tests/plots/none.plot" }, { "takeoff", "plots" },
	{ "takeoff", "--prices", "none.json", COURT }, { "takeoff", "plots/prices.json" },
	{ "compare", COURT, "none.plot" }, { "compare", "none.plot", COURT },
	{ "prices", "new", "none.plot" }, { "snags", "none.plot" }, { "sun", "none.plot" },
	{ "plan", COURT, "-o", "plots" },
};
enum { ASKED = sizeof asked / sizeof *asked };

static int lines_of(const char *text)
{
	int lines = 0;

	for (; *text; text++)
		lines += *text == '\n';
	return lines;
}

/* Writes into no file that is there: what a command does with one, tests/report/test_command.c
 * tries in a folder of its own. */
static void add_answer(struct text *answers, const char *const row[static WORDS_MOST])
{
	const char *words[WORDS_MOST + 1] = { NULL };
	struct program_result result;

	text_add(answers, "$ parterre");
	for (int i = 0; i < WORDS_MOST && row[i]; i++) {
		words[i] = row[i];
		text_print(answers, *row[i] ? " %s" : " \"\"", row[i]);
	}
	result = program_run(words, NULL);
	text_print(answers, "\n%d", result.status);
	if (result.output.length > 0)
		text_print(answers, ", %d lines: %.*s", lines_of(result.output.bytes),
			(int)strcspn(result.output.bytes, "\n"), result.output.bytes);
	text_print(answers, "\n%s\n", result.errors.bytes);
	program_free(&result);
}

START_TEST(commands_answer_as_they_did)
{
	struct text answers = TEXT_EMPTY;

	for (int i = 0; i < ASKED; i++)
		add_answer(&answers, asked[i]);
	golden_check("commands.txt", answers.bytes);
	text_fini(&answers);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("golden commands");

	tcase_add_test(suite_case(suite, "answers"), commands_answer_as_they_did);
	return suite;
}
