/* The page of what has changed since a plot was saved. */

#include "report/panel/page_changed.h"
#include "report/compare/compare.h"
#include "support/details.h"
#include "support/garden.h"
#include "support/json.h"
#include "support/runner.h"
#include "support/stopper.h"

#include <stdio.h>
#include <string.h>

static struct garden gardens[VERSIONS];
static struct pages pages;

static void dump(void) { const struct page *p=&pages.pages[pages_count()-1]; for(size_t i=0;i<p->count;i++) printf("%d %-28s|%20s| %d,%d\n",p->lines[i].kind,p->lines[i].label,p->lines[i].value,p->lines[i].at.x,p->lines[i].at.y);}
START_TEST(x)
{
	const struct compared c = { &gardens[OLD].plot, &gardens[OLD].takeoff, NULL };
	const struct saved saved = { &c, NULL };
	garden_file(&gardens[OLD], "tests/plots/compare-old.plot");
	garden_file(&gardens[NEW], "tests/plots/compare-new.plot");
	garden_count(&gardens[OLD]);
	garden_count(&gardens[NEW]);
	ck_assert(pages_make(&pages, pages_count()-1, &gardens[NEW].takeoff, &gardens[NEW].plot, &saved));
	dump();
}
END_TEST
Suite *test_suite(void)
{
	Suite *suite = suite_create("page_changed");
	TCase *all = suite_case(suite, "page_changed");
	tcase_add_test(all, x);
	return suite;
}
