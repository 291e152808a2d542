/* How snags are told: those that are images of one another in one line, of many the first. */
#include "report/words/snag_lines.h"
#include "support/garden.h"
#include "support/runner.h"

static struct garden garden;
static struct snag_lines lines;

static void teardown(void)
{
	garden_fini(&garden);
}

/* The lines of one code. */
static void find(enum snag_code code)
{
	const struct snag_list *snags = &garden.takeoff.snags;
	const struct report report = { .words = &garden.words, .plot = &garden.plot,
		.takeoff = &garden.takeoff };
	size_t first = 0;

	while (first < snags->count && snags->list[first].code != code)
		first++;
	snag_lines_find(&lines, &report, snags->list + first,
		first == snags->count ? 0 : snag_next_code(snags, first) - first);
}

static const char *images_of(int line)
{
	const struct report report = { .words = &garden.words };

	return snag_images_words(&report, &lines.list[line]);
}

/* Beds of two cells, each too narrow for its wall; the last is no image of another. */
static const char *const six[] = { "bb..bb", "......", "bb.bbb", ".b..b.", "......", "bb..bb",
	NULL };

START_TEST(images_are_one_line)
{
	garden_rows(&garden, six);
	plot_set(&garden.plot, 0, HEAD_MIRROR, "four-way");
	garden_count(&garden);
	find(SNAG_WALL_NARROW);
	ck_assert_int_eq(lines.count, 3);
	ck_assert_int_eq(lines.more, 0);
	ck_assert_int_eq(lines.list[0].snag->region, 0);
	ck_assert_int_eq(lines.list[0].images, 3);
	ck_assert_str_eq(images_of(0), " and 3 images");
	ck_assert_int_eq(lines.list[1].images, 0);
	ck_assert_str_eq(images_of(1), "");
}
END_TEST

START_TEST(without_a_mirror_each_has_its_line)
{
	garden_rows(&garden, six);
	garden_count(&garden);
	find(SNAG_WALL_NARROW);
	ck_assert_int_eq(lines.count, 6);
	ck_assert_int_eq(lines.list[0].images, 0);
}
END_TEST

START_TEST(two_beds_with_cards_of_their_own_are_two_lines)
{
	garden_rows(&garden, (const char *const[]){ "bb..cc", NULL });
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
	garden_count(&garden);
	find(SNAG_WALL_NARROW);
	ck_assert_int_eq(lines.count, 2);
}
END_TEST

START_TEST(a_broken_mirror_is_told_cell_by_cell)
{
	garden_rows(&garden, (const char *const[]){ "b...", "b...", NULL });
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
	garden_count(&garden);
	find(SNAG_MIRROR_BROKEN);
	ck_assert_int_eq(lines.count, 2);
	ck_assert_int_eq(lines.list[0].images, 0);
}
END_TEST

START_TEST(of_many_the_first_have_lines_and_their_images_are_not_left_over)
{
	char top[64] = "", *const rows[] = { top, top, NULL };

	/* 24 single cells, mirrored left to right and above each other: 12 lines of one image,
	 * twice. */
	for (int i = 0; i < 24; i++) {
		top[2 * i + (i >= 12)] = 'b';
		top[2 * i + (i < 12)] = '.';
	}
	garden_rows(&garden, (const char *const[]){ rows[0],
		"................................................", rows[1], NULL });
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
	garden_count(&garden);
	find(SNAG_WALL_NARROW);
	ck_assert_int_eq(lines.count, SNAG_LINES_MOST);
	ck_assert_int_eq(lines.more, 48 - 2 * SNAG_LINES_MOST);
	for (int i = 0; i < lines.count; i++)
		ck_assert_int_eq(lines.list[i].images, 1);
}
END_TEST

/* Snags of no region, at single cells of the first row. */
static void find_made(const nm *const figures[3], const int cells[3])
{
	static struct snag snags[3];
	const struct report report = { .words = &garden.words, .plot = &garden.plot,
		.takeoff = &garden.takeoff };

	garden_rows(&garden, (const char *const[]){ "......", NULL });
	for (int i = 0; i < 3; i++) {
		snags[i] = (struct snag){ .code = SNAG_BED_THIN, .region = NO_REGION,
			.figures = figures[i] };
		snag_put(&snags[i], (struct place){ cells[i], 0 });
	}
	snag_lines_find(&lines, &report, snags, 3);
}

START_TEST(lines_with_one_sentence_come_together)
{
	static const nm one[SNAG_FIGURES] = { 1 }, two[SNAG_FIGURES] = { 2 };

	find_made((const nm *const[]){ one, two, one }, (const int[]){ 0, 1, 2 });
	ck_assert_int_eq(lines.count, 3);
	ck_assert_int_eq(lines.list[0].snag->cell.x, 0);
	ck_assert_int_eq(lines.list[1].snag->cell.x, 2);
	ck_assert_int_eq(lines.list[2].snag->cell.x, 1);
}
END_TEST

START_TEST(two_at_one_place_are_no_images)
{
	static const nm one[SNAG_FIGURES] = { 1 };

	find_made((const nm *const[]){ one, one, one }, (const int[]){ 3, 3, 4 });
	ck_assert_int_eq(lines.count, 3);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("snag lines");
	TCase *told = suite_case(suite, "lines");

	tcase_add_checked_fixture(told, NULL, teardown);
	tcase_add_test(told, images_are_one_line);
	tcase_add_test(told, without_a_mirror_each_has_its_line);
	tcase_add_test(told, two_beds_with_cards_of_their_own_are_two_lines);
	tcase_add_test(told, a_broken_mirror_is_told_cell_by_cell);
	tcase_add_test(told, lines_with_one_sentence_come_together);
	tcase_add_test(told, two_at_one_place_are_no_images);
	tcase_add_test(told, of_many_the_first_have_lines_and_their_images_are_not_left_over);
	return suite;
}
