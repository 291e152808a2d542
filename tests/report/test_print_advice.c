/* Advice as it is said: the part of the text, and the page of the panel. */
#include "support/book.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"
#include "support/shapes.h"
#include "report/panel/pages.h"
#include "report/text/print.h"
#include "report/words/advice_words.h"

#include <stdlib.h>
#include <string.h>

#define ROWS (const char *const[])

static struct garden garden;
static struct pages pages;
static char *text;

static void teardown(void)
{
	pages_fini(&pages);
	free(text);
	text = NULL;
	garden_fini(&garden);
}

/* The part, from its heading to its end; "" where there is none. */
static const char *part(void)
{
	struct text out = TEXT_EMPTY;
	struct text_sink sink = text_sink(&out);
	const struct report report = garden_report(&garden, &sink.sink);

	print_advice(&report);
	free(text);
	text = text_take(&out);
	return text;
}

static const struct page *page(void)
{
	int at = 0;

	while (strcmp(page_name(at), "Advice") != 0)
		ck_assert_int_lt(++at, pages_count());
	ck_assert(pages_make(&pages, at, &garden.takeoff, &garden.plot,
		NULL));
	return &pages.pages[at];
}

/* Blocks of 16 in: sides of 8 ft by 4 ft need no cut, those of 5 ft do. */
static void mirrored(void)
{
	garden_rows(&garden, ROWS { "................", ".bbbbb....bbbbb.", ".bbbbb....bbbbb.",
		".bbbbb....bbbbb.", ".bbbbb....bbbbb.", "................", NULL });
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
}

static void corner_moved(void)
{
	garden_rows(&garden, ROWS { "...........", "....bbbbbSS", "....bbbbb..", "....bbbbb..",
		"....bbbbb..", "...........", NULL });
}

static void fenced(void)
{
	fences_ground(&garden.plot, 27, 18);
	fences_run(&garden.plot, "5,5 22,5 22,13 5,13 5,5");
}

static void fenced_and_mirrored(void)
{
	fenced();
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
}

static void wall_to_wall(void)
{
	garden_rows(&garden, ROWS { "aaaaaaaa.aaaaaaaa", "aaaaaaaa.aaaaaaaa",
		"aaaaaaaa.aaaaaaaa", "aaaaaaaa.aaaaaaaa", "bbbbbbbb.bbbbbbbb",
		"bbbbbbbb.bbbbbbbb", "bbbbbbbb.bbbbbbbb", "bbbbbbbb.bbbbbbbb", NULL });
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
	plot_set(&garden.plot, 0, ALLOW_ARM, "4 ft");
}

static void priced(void)
{
	garden_rows(&garden, ROWS { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL });
	book_of(&garden.book, "'goods': ["
		"{'item': 'block.wall', 'block': '16 in x 8 in x 6 in', 'packs': "
		"[{'pack': 'piece', 'size': 1, 'price': 4}]}, "
		"{'item': 'block.wall', 'block': '16 in x 8 in x 9 in', 'packs': "
		"[{'pack': 'piece', 'size': 1, 'price': 5}]}, "
		"{'item': 'adhesive.cartridge', 'packs': "
		"[{'pack': 'piece', 'size': 1, 'price': 0}]}]");
	garden.has_book = true;
}

static void metric(void)
{
	garden_rows(&garden, ROWS { "........", ".bbbbb..", ".bbbbb..", ".bbbbb..", ".bbbbb..",
		"........", NULL });
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, "300 mm");
	plot_set(&garden.plot, 'b', BED_BLOCK, "400 mm x 200 mm x 150 mm");
	plot_set(&garden.plot, 'b', BED_COURSES, "4");
}

static void nothing_to_spare(void)
{
	garden_rows(&garden, ROWS { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL });
}

static void large(void)
{
	shape_long_beds(&garden.plot, 1200);
}

static void half_tried(void)
{
	shape_long_beds(&garden.plot, 600);
}

static void bare(void)
{
	garden_rows(&garden, ROWS { "pp..", "pp..", NULL });
}

#define INTRO "Small changes, each by itself, and what the whole takeoff would then have less\n" \
	"or more.\n"

static const struct {
	void (*draw)(void);
	const char *text;
} said[] = {
	{ mirrored, INTRO
		"  B1 and B2 4 ft x 4 ft instead of 5 ft x 4 ft: 12 pieces fewer to saw,\n"
		"    13 blocks fewer to buy, 1,437 lb less to carry.\n"
		"  B1 and B2 6 ft x 4 ft instead of 5 ft x 4 ft: 12 pieces fewer to saw, 6 blocks\n"
		"    more to buy, 2,767 lb more to carry.\n" },
	{ corner_moved, INTRO
		"  B1 4 ft x 4 ft instead of 5 ft x 4 ft, B1 from 5 ft across, 1 ft down:\n"
		"    6 pieces fewer to saw, 6 blocks fewer to buy, 760 lb less to carry.\n"
		"  B1 6 ft x 4 ft instead of 5 ft x 4 ft, B1 from 3 ft across, 1 ft down:\n"
		"    6 pieces fewer to saw, 3 blocks more to buy, 732 lb more to carry.\n" },
	{ fenced, INTRO
		"  Fence Pickets from 5 ft, 5 ft to 5 ft, 13 ft moved 1 ft right: 4 panels fewer\n"
		"    to saw, 2 panels fewer to buy, 624 lb less to carry.\n"
		"  Fence Pickets from 22 ft, 5 ft to 22 ft, 13 ft moved 1 ft left: 4 panels fewer\n"
		"    to saw, 2 panels fewer to buy, 624 lb less to carry.\n" },
	{ fenced_and_mirrored, INTRO
		"  Fence Pickets from 5 ft, 5 ft to 5 ft, 13 ft moved 2 ft left, with its image:\n"
		"    2 panels fewer to saw.\n" },
	{ wall_to_wall, INTRO
		"  B1 and B3, B2 and B4 as one bed each of a a: 63 blocks fewer to buy, 4,070 lb\n"
		"    less to carry.\n" },
	{ priced, INTRO
		"  b b in 2 courses of block 16 in x 8 in x 9 in instead of 3 of 16 in x 8 in x\n"
		"    6 in: 17 blocks fewer to buy, 34.00 USD less.\n" },
	{ metric, INTRO
		"  B1 1.2 m x 1.2 m instead of 1.5 m x 1.2 m: 8 pieces fewer to saw, 9 blocks\n"
		"    fewer to buy, 545 kg less to carry.\n"
		"  B1 1.8 m x 1.2 m instead of 1.5 m x 1.2 m: 8 pieces fewer to saw, 4 blocks\n"
		"    more to buy, 639 kg more to carry.\n"
		"  b b of 3 courses instead of 4: 2 pieces fewer to saw, 13 blocks fewer to buy,\n"
		"    491 kg less to carry.\n" },
	{ nothing_to_spare, "No small change that was tried would spare anything.\n" },
	{ large,
		"Small changes were not tried: on a plan of this size that takes too long.\n" },
	{ half_tried, INTRO
		"  B4 596 ft x 4 ft instead of 597 ft x 4 ft: 6 pieces fewer to saw, 4 blocks\n"
		"    fewer to buy, 368 lb less to carry.\n"
		"  B8 592 ft x 4 ft instead of 593 ft x 4 ft: 6 pieces fewer to saw, 4 blocks\n"
		"    fewer to buy, 368 lb less to carry.\n"
		"  B12 588 ft x 4 ft instead of 589 ft x 4 ft: 6 pieces fewer to saw, 4 blocks\n"
		"    fewer to buy, 368 lb less to carry.\n"
		"Not all that could be changed was tried: that would take too long.\n" },
	{ bare, "" },
};

START_TEST(advice_is_said_in_plain_words)
{
	said[_i].draw();
	garden_count(&garden);
	ck_assert_str_eq(part(), said[_i].text);
}
END_TEST

/* The same words, one note each, without the text's line ends; each leads to the plan. */
START_TEST(the_page_says_what_the_text_says)
{
	struct text flat = TEXT_EMPTY;
	const struct page *advice;
	const char *at;

	said[_i].draw();
	garden_count(&garden);
	for (const char *c = part(); *c; c++) {
		bool is_blank = *c == ' ' || *c == '\n';

		if (!is_blank)
			text_add_bytes(&flat, c, 1);
		else if (flat.length && flat.bytes[flat.length - 1] != ' ')
			text_add(&flat, " ");
	}
	advice = page();
	at = flat.bytes;
	for (size_t i = 0; i < advice->count && *said[_i].text; i++) {
		const char *label = advice->lines[i].label;

		at = strstr(at, label);
		ck_assert_msg(at != NULL, "%s: %s", label, flat.bytes);
		at += strlen(label);
		ck_assert((advice->lines[i].at.x >= 0) == (strstr(label, " fewer ") != NULL));
	}
	ck_assert(!*said[_i].text || strcmp(at, " ") == 0);
	ck_assert_uint_gt(advice->count, 0);
	text_fini(&flat);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print_advice");
	TCase *words = suite_case(suite, "words");
	int count = (int)(sizeof said / sizeof *said);

	tcase_add_checked_fixture(words, NULL, teardown);
	tcase_add_loop_test(words, advice_is_said_in_plain_words, 0, count);
	tcase_add_loop_test(words, the_page_says_what_the_text_says, 0, count);
	return suite;
}
