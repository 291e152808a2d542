/* The sheets that are printed by themselves: the plan, the set-out, the snags, the sun. */
#include "report/text/print.h"
#include "report/text/print_sun.h"
#include "support/garden.h"
#include "support/golden.h"
#include "support/runner.h"

#include <stdio.h>
#include <string.h>

/* A little of everything; falling ground; many sides; drip lines; lines in the ground; sheets that
 * go on; what is wrong; what is not. */
static const char *const gardens[] = { "tests/plots/gallery", "tests/plots/falling",
	"tests/plots/sides", "tests/plots/months", "plots/well-yard", "tests/plots/sheets",
	"plots/snags", "plots/growing-court", "tests/plots/sun", "plots/ring" };
enum { GARDENS = sizeof gardens / sizeof *gardens, DAYS_ASKED = 15 };

static struct garden garden;
static struct text paper;

static void setup(void)
{
	paper = TEXT_EMPTY;
}

static void teardown(void)
{
	text_fini(&paper);
	garden_fini(&garden);
}

/* Of one day, of as many as one table has room for, of one more, and of more than two have. */
static void add_sun(struct sink *out, const char *file)
{
	static const int counts[] = { 1, 7, 8, DAYS_ASKED };
	struct date days[DAYS_ASKED];

	for (int i = 0; i < DAYS_ASKED; i++)
		days[i] = (struct date){ 2026, i % 12 + 1, 2 * i + 1 };
	for (size_t i = 0; i < sizeof counts / sizeof *counts; i++)
		report_sun(out, &garden.plot, &garden.takeoff, file, days, counts[i]);
}

START_TEST(sheets_print_as_they_did)
{
	struct text_sink sink = text_sink(&paper);
	const char *name = strrchr(gardens[_i], '/') + 1;
	char file[80], golden[80];

	snprintf(file, sizeof file, "%s.plot", gardens[_i]);
	garden_file(&garden, file);
	garden_count(&garden);
	report_plan(&sink.sink, &garden.plot, &garden.takeoff, name);
	report_setout(&sink.sink, &garden.plot, &garden.takeoff, name);
	report_snags(&sink.sink, &garden.plot, &garden.takeoff, name);
	if (sun_has_site(&garden.takeoff))
		add_sun(&sink.sink, name);
	snprintf(golden, sizeof golden, "sheets-%s.txt", name);
	golden_check(golden, paper.bytes);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("golden sheets");
	TCase *sheets = suite_case(suite, "sheets");

	tcase_add_checked_fixture(sheets, setup, teardown);
	tcase_add_loop_test(sheets, sheets_print_as_they_did, 0, GARDENS);
	return suite;
}
