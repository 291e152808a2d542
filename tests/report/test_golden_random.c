/* Takeoffs of gardens drawn at random, as they are handed over: with what nobody would draw, and so
 * what hand-made gardens do not have. */
#include "report/csv/csv.h"
#include "report/text/print.h"
#include "support/details.h"
#include "support/garden.h"
#include "support/golden.h"
#include "support/runner.h"

#include <stdio.h>

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

static void add_parts(unsigned parts)
{
	garden_print(&garden, &paper, "random.plot", parts);
}

/* The list of all that is bought, with its notes. */
static void add_table(void)
{
	struct text_sink sink = text_sink(&paper);

	report_csv(&sink.sink, &garden.plot, &garden.takeoff);
}

/* By the seed in one piece or part by part, with a price book or without. */
static const struct { int seed; bool is_whole, has_book; } gardens[] = {
	{ 104, true, false }, { 107, false, false }, { 122, true, false },
	{ 145, false, true }, { 267, false, false }, { 277, false, true },
	{ 286, true, true }, { 298, true, true }, { 366, true, false }, { 389, false, false },
	{ 403, false, true }, { 556, true, true }, { 584, true, false },
};
enum { GARDENS = sizeof gardens / sizeof *gardens };

START_TEST(takeoffs_of_random_gardens_print_as_they_did)
{
	struct random random = { (uint64_t)gardens[_i].seed };
	char golden[40];

	garden = (struct garden){ .arena = ARENA_EMPTY };
	whole_plot_at_random(&garden.plot, &random, 7);
	if (gardens[_i].has_book)
		garden_book(&garden, plot_units(&garden.plot) == UNITS_METRIC ?
			"plots/prices-metric.json" : "plots/prices.json");
	garden_count(&garden);
	if (gardens[_i].is_whole)
		add_parts(PARTS_ALL);
	for (int part = 0; part < PARTS && !gardens[_i].is_whole; part++)
		add_parts(1u << part);
	add_table();
	snprintf(golden, sizeof golden, "random-%d.txt", gardens[_i].seed);
	golden_check(golden, paper.bytes);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("golden random");
	TCase *texts = suite_case(suite, "texts");

	tcase_add_checked_fixture(texts, setup, teardown);
	tcase_add_loop_test(texts, takeoffs_of_random_gardens_print_as_they_did, 0, GARDENS);
	return suite;
}
