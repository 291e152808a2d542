/* Each part of the takeoff by itself, as it is handed over. */
#include "report/panel/pages.h"
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

static void open_file(const char *folder, const char *name)
{
	char path[80];

	snprintf(path, sizeof path, "%s/%s.plot", folder, name);
	garden_file(&garden, path);
}

static void add_part(const char *name, unsigned parts)
{
	char file[80];

	snprintf(file, sizeof file, "%s.plot", name);
	garden_print(&garden, &papers, file, parts);
}

/* Each part but the front by itself. */
static void check_parts(const char *folder, const char *name)
{
	char golden[80];

	open_file(folder, name);
	garden_count(&garden);
	for (int part = PART_SHOPPING; part < PARTS; part++)
		add_part(name, 1u << part);
	snprintf(golden, sizeof golden, "%s-parts.txt", name);
	golden_check(golden, papers.bytes);
}

START_TEST(the_parts_of_the_samples_print_as_they_did)
{
	check_parts("plots", sample_gardens[_i]);
}
END_TEST

/* A little of everything; falling ground; curves in metres; a bed in all its turns; water by month;
 * beds with many sides and holes. */
static const char *const others[] = { "gallery", "falling", "rounds", "turned", "months",
	"sides" };
enum { OTHERS = sizeof others / sizeof *others };

START_TEST(the_parts_of_other_gardens_print_as_they_did)
{
	check_parts("tests/plots", others[_i]);
}
END_TEST

/* What the panel shows of a garden in which everything is told, page by page. */
START_TEST(pages_of_the_panel_are_as_they_were)
{
	struct pages pages = { .pages = { { .lines = NULL } } };

	open_file("plots", "growing-court");
	garden_book(&garden, "plots/prices.json");
	garden_count(&garden);
	for (int i = 0; i < pages_count(); i++) {
		if (page_is_of_saved(i))
			continue;
		ck_assert(pages_make(&pages, i, &garden.takeoff, &garden.plot, NULL));
		text_print(&papers, "---- %s\n", page_name(i));
		for (size_t j = 0; j < pages.pages[i].count; j++) {
			const struct line *line = &pages.pages[i].lines[j];

			text_print(&papers, "%d %d,%d %s|%s\n", (int)line->kind, line->at.x,
				line->at.y, line->label, line->value);
		}
	}
	pages_fini(&pages);
	golden_check("growing-court-panel.txt", papers.bytes);
}
END_TEST

/* Totals and shopping by a price book. */
START_TEST(papers_with_prices_print_as_they_did)
{
	open_file("plots", "court");
	garden_book(&garden, "plots/prices.json");
	garden_count(&garden);
	add_part("court", 1u << PART_FRONT | 1u << PART_SHOPPING);
	golden_check("court-prices.txt", papers.bytes);
}
END_TEST

/* As a printer puts them on sheets. */
START_TEST(pages_print_as_they_did)
{
	open_file("plots", "court");
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
	tcase_add_loop_test(parts, the_parts_of_other_gardens_print_as_they_did, 0, OTHERS);
	tcase_add_test(parts, pages_of_the_panel_are_as_they_were);
	tcase_add_test(parts, papers_with_prices_print_as_they_did);
	tcase_add_test(parts, pages_print_as_they_did);
	return suite;
}
