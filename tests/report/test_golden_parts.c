/* Each part of the takeoff by itself, as it is handed over. */
#include "report/text/print.h"
#include "support/garden.h"
#include "support/golden.h"
#include "support/runner.h"
#include "support/sample_gardens.h"

#include <stdio.h>

static struct garden garden;
static struct text papers;

static void setup(void)
{
	papers = TEXT_EMPTY;
}

static void teardown(void)
{
	text_fini(&papers);
	garden_fini(&garden);
}

static void open_file(const char *name)
{
	char path[80];

	snprintf(path, sizeof path, "plots/%s.plot", name);
	garden_file(&garden, path);
}

static void add_part(const char *name, unsigned parts)
{
	struct text_sink sink = text_sink(&papers);
	char file[80];

	snprintf(file, sizeof file, "%s.plot", name);
	report_text(&sink.sink, &garden.plot, &garden.takeoff, file, parts);
}


START_TEST(the_parts_of_the_samples_print_as_they_did)
{
	char golden[80];

	open_file(sample_gardens[_i]);
	garden_count(&garden);
	for (int part = PART_SHOPPING; part < PARTS; part++)
		add_part(sample_gardens[_i], 1u << part);
	snprintf(golden, sizeof golden, "%s-parts.txt", sample_gardens[_i]);
	golden_check(golden, papers.bytes);
}
END_TEST

/* Totals and shopping by a price book. */
START_TEST(papers_with_prices_print_as_they_did)
{
	open_file("court");
	garden_book(&garden, "plots/prices.json");
	garden_count(&garden);
	add_part("court", 1u << PART_FRONT | 1u << PART_SHOPPING);
	golden_check("court-prices.txt", papers.bytes);
}
END_TEST

/* As a printer puts them on sheets. */
START_TEST(pages_print_as_they_did)
{
	open_file("court");
	garden_count(&garden);
	add_part("court", PARTS_ALL | PARTS_PAGED);
	golden_check("court-pages.txt", papers.bytes);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("golden parts");
	TCase *parts = suite_case(suite, "parts");

	tcase_add_checked_fixture(parts, setup, teardown);
	tcase_add_loop_test(parts, the_parts_of_the_samples_print_as_they_did, 0,
		SAMPLE_GARDENS);
	tcase_add_test(parts, papers_with_prices_print_as_they_did);
	tcase_add_test(parts, pages_print_as_they_did);
	return suite;
}
