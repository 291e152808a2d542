/* Distances typed as lengths or in cells, and the card that asks for one. */

#include "editor/cards/cells.h"
#include "support/desk.h"
#include "support/runner.h"

#include <string.h>

#define ROWS (const char *[])

struct typed {
	const char *typed;
	nm cell;
	int least, count;
	bool is_rounded;
};

static const nm foot = NM_PER_FOOT;

/* Counts by hand; halves go up. */
static const struct typed good[] = {
	{ "3 cells", NM_PER_FOOT, 1, 3, false },
	{ "1 cell", NM_PER_FOOT, 1, 1, false },
	{ " 12 cells ", NM_PER_FOOT, 1, 12, false },
	{ "3 ft", NM_PER_FOOT, 1, 3, false },
	{ "36 in", NM_PER_FOOT, 1, 3, false },
	{ "40 in", NM_PER_FOOT, 1, 3, true },
	{ "41 in", NM_PER_FOOT, 1, 3, true },
	{ "42 in", NM_PER_FOOT, 1, 4, true },
	{ "3 ft", NM_PER_FOOT / 2, 1, 6, false },
	{ "1 m", 300 * NM_PER_MM, 1, 3, true },
	{ "1 in", NM_PER_FOOT, 1, 1, true },
	{ "1 in", NM_PER_FOOT, -9, 0, true },
	{ "2048 cells", NM_PER_FOOT, 1, 2048, false },
	{ "0 cells", NM_PER_FOOT, -9, 0, false },
	{ "", NM_PER_FOOT, -9, 0, false },
	{ "  ", NM_PER_FOOT, 0, 0, false },
	{ "-3 ft", NM_PER_FOOT, -9, -3, false },
	{ "- 3 cells", NM_PER_FOOT, -9, -3, false },
	{ "-40 in", NM_PER_FOOT, -9, -3, true },
	{ "-9 cells", NM_PER_FOOT, -9, -9, false },
	/* A number alone is in feet. */
	{ "3", NM_PER_FOOT, 1, 3, false },
	{ "3", NM_PER_FOOT / 2, 1, 6, false },
	{ "-3", NM_PER_FOOT / 2, -9, -6, false },
	{ ".5", NM_PER_FOOT / 2, 1, 1, false },
	{ "7 ft 6", NM_PER_FOOT / 2, 1, 15, false },
};

static void card_open(struct card *card, const char *typed)
{
	card_init(card, 1);
	card->units = UNITS_IMPERIAL;
	card->fields[0].label = "Width";
	card->fields[0].rule = &cells_rule;
	card->fields[0].is_cells = true;
	card->fields[0].span = SPAN_PLAN;
	card_type(card, 0, typed);
}

START_TEST(a_length_or_cells_are_read_as_whole_cells)
{
	const struct typed *row = &good[_i];
	struct cells cells = { .least = row->least, .most = SIDE_MOST, .count = 77,
		.is_rounded = !row->is_rounded };
	struct fault fault = { .field = 0 };
	struct card card;

	card_open(&card, row->typed);
	ck_assert_msg(cells_read(&card, 0, row->cell, &cells, &fault), "%s: %s", row->typed,
		fault.words.bytes);
	ck_assert_msg(cells.count == row->count, "%s is %d cells, not %d", row->typed, cells.count,
		row->count);
	ck_assert_msg(cells.is_rounded == row->is_rounded, "%s", row->typed);
	fault_fini(&fault);
	card_fini(&card);
}
END_TEST

struct refused {
	const char *typed;
	int least;
	const char *words;
};

static const struct refused bad[] = {
	{ "0 cells", 1, "Width: found 0 cells, expected 1 ft to 2048 ft, 1 to 2048 cells: the " },
	{ "0 ft", 1, "Width: found 0 ft, expected 1 ft to 2048 ft, 1 to 2048 cells: the most" },
	{ "2049", 1, "Width: found 2049 ft, expected 1 ft to 2048 ft, 1 to 2048 cells: the most" },
	{ "2049 cells", 1, "Width: found 2049 cells, expected 1 ft to 2048 ft" },
	{ "900000000000000000 cells", 1, "1 to 2048 cells" },
	{ "-10", -9, "Width: found -10 ft, expected -9 ft to 2048 ft, -9 to 2048 cells" },
	{ "-3 ft", 1, "Width: found -3, expected a length with its unit, such as 6 1/2 in, or "
		"cells, such as 3 cells" },
	{ "-3 ft", 0, "Width: found -3, expected" },
	{ "3 bricks", 1, "Width: bricks is no unit of length; ft, in, m, cm and mm are" },
	{ "3 cells more", 1, "Width: more is no unit of length" },
	{ "3 ft wide", 1, "Width: wide is no unit of length" },
	{ "1,250", 1, "Width: 1,250 can be read in two ways" },
	{ "3 ft 2 m", 1, "one system of units" },
	{ "some", 1, "expected a length" },
	{ "-", -9, "expected a length" },
};

START_TEST(what_is_neither_is_refused_in_words)
{
	const struct refused *row = &bad[_i];
	struct cells cells = { .least = row->least, .most = SIDE_MOST, .limit = "the most" };
	struct fault fault = { .field = 7 };
	struct card card;

	card_open(&card, row->typed);
	ck_assert_msg(!cells_read(&card, 0, foot, &cells, &fault), "%s", row->typed);
	ck_assert_msg(strstr(fault.words.bytes, row->words) != NULL, "\"%s\": %s", row->typed,
		fault.words.bytes);
	ck_assert_int_eq(fault.field, 0);
	fault_fini(&fault);
	card_fini(&card);
}
END_TEST

START_TEST(without_a_reason_the_range_is_all_that_is_said)
{
	struct cells cells = { .least = 1, .most = 9 };
	struct fault fault = { .field = 7 };
	struct card card;

	card_open(&card, "12 cells");
	ck_assert(!cells_read(&card, 0, NM_PER_FOOT, &cells, &fault));
	ck_assert_str_eq(fault.words.bytes,
		"Width: found 12 cells, expected 1 ft to 9 ft, 1 to 9 cells");
	fault_fini(&fault);
	card_fini(&card);
}
END_TEST

static const struct cells_question how_deep = { .title = "How deep", .label = "Depth" };

START_TEST(the_card_shows_the_last_number_as_a_length_and_is_filled_in_again_when_wrong)
{
	struct desk *b = desk_new(ROWS { "b.", NULL });
	struct cells cells = { .least = 1, .most = 9, .count = 2 };

	desk_answer(b, ROWS { "Depth: 10", "Depth: 4", NULL });
	ck_assert(cells_ask(&b->editor, &how_deep, &cells));
	ck_assert_str_eq(b->asked, "How deep");
	ck_assert_str_eq(b->offered, "Depth: 2 ft\n");
	ck_assert_int_eq(cells.count, 4);
	desk_answer(b, ROWS { "", NULL });
	ck_assert(!cells_ask(&b->editor, &how_deep, &cells));
	desk_free(b);
}
END_TEST

/* What is off the plan in metres is taken in centimetres. */
START_TEST(a_number_alone_that_is_too_many_metres_is_in_centimetres)
{
	struct desk *b = desk_new(ROWS { "b.", NULL });
	struct cells cells = { .least = 1, .most = 9, .count = 2 };

	block_set(&editor_edit(&b->editor)->details.head, HEAD_UNITS,
		(struct value){ .set = true, .as.number = UNITS_METRIC });
	block_set(&editor_edit(&b->editor)->details.head, HEAD_CELL,
		(struct value){ .set = true, .as.length = 250 * NM_PER_MM });
	desk_answer(b, ROWS { "Depth: 50", NULL });
	ck_assert(cells_ask(&b->editor, &how_deep, &cells));
	ck_assert_int_eq(cells.count, 2);
	desk_answer(b, ROWS { "Depth: 1", NULL });
	ck_assert(cells_ask(&b->editor, &how_deep, &cells));
	ck_assert_int_eq(cells.count, 4);
	desk_answer(b, ROWS { "Depth: 500", "", NULL });
	ck_assert(!cells_ask(&b->editor, &how_deep, &cells));
	ck_assert_msg(strstr(b->fault, "Depth: found 500 m, expected 250 mm to 2250 mm"), "%s",
		b->fault);
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("cells");
	TCase *reading = suite_case(suite, "reading");

	tcase_add_loop_test(reading, a_length_or_cells_are_read_as_whole_cells, 0,
		sizeof good / sizeof *good);
	tcase_add_loop_test(reading,
		what_is_neither_is_refused_in_words, 0,
		sizeof bad / sizeof *bad);
	tcase_add_test(reading, without_a_reason_the_range_is_all_that_is_said);
	tcase_add_test(reading,
		the_card_shows_the_last_number_as_a_length_and_is_filled_in_again_when_wrong);
	tcase_add_test(reading, a_number_alone_that_is_too_many_metres_is_in_centimetres);
	return suite;
}
