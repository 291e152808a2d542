/* Single strips, as they stand on the page. */
#include "report/text/strip.h"
#include "support/runner.h"

#include <string.h>

enum { PIECES_MOST = 400 };

static struct text page;
static nm pieces[PIECES_MOST];

static void teardown(void)
{
	text_fini(&page);
}

/* Blocks of 16 units; pieces of 12, 8 and 4 are a, b and c. */
static const nm sizes[] = { 12, 8, 4 };

static void print(enum units units, nm unit, const struct strip *given)
{
	nm places[] = { sizes[0] * unit, sizes[1] * unit, sizes[2] * unit };
	const struct cut cut = { places, 3, 1 };
	const struct cutting cutting = { .block = { 16 * unit, 8 * unit, 6 * unit }, .cuts = &cut,
		.cut_count = 1 };
	struct sawn sawn = sawn_make(&cutting);
	struct text_sink sink = text_sink(&page);
	const struct report report = { .out = &sink.sink, .units = units };
	struct strip strip = *given;
	struct strip_scale scale = { strip.from < 0 ? strip.from * unit : 0, 16 * unit };

	strip.from *= unit;
	strip.pieces = pieces;
	strip.block = 16 * unit;
	strip.length = 0;
	for (int i = 0; i < strip.count; i++) {
		pieces[i] *= unit;
		strip.length += pieces[i];
	}
	strip_print(&report, "odd", &strip, &scale, &sawn);
	sawn_fini(&sawn);
}

static void prints(const struct strip *given, const char *expected)
{
	print(UNITS_IMPERIAL, NM_PER_INCH, given);
	ck_assert_str_eq(page.bytes, expected);
}

static void lay(int count, const int *units)
{
	for (int i = 0; i < count; i++)
		pieces[i] = units[i];
}

START_TEST(blocks_are_bars_and_dashes_a_sawn_piece_has_its_letter)
{
	lay(4, (const int[]){ 16, 16, 8, 16 });
	prints(&(struct strip){ .count = 4, .through = { true, false } },
		"  odd  through|-------|-------|bbb|-------|butts\n"
		"              0       16      32  40      56\n");
}
END_TEST

START_TEST(a_run_that_begins_past_the_corner_stands_further_right)
{
	lay(2, (const int[]){ 16, 16 });
	prints(&(struct strip){ .from = 8, .count = 2, .through = { false, true } },
		"  odd        butts|-------|-------|through\n"
		"                  8       24      40\n");
}
END_TEST

START_TEST(a_mark_before_the_corner_has_a_minus)
{
	lay(2, (const int[]){ 16, 12 });
	prints(&(struct strip){ .from = -8, .count = 2, .through = { true, true } },
		"  odd  through|-------|aaaaa|through\n"
		"              -8      8     20\n");
}
END_TEST

/* 4 in are two characters: "16" and "20" do not fit side by side. */
START_TEST(marks_of_sawn_pieces_that_would_touch_go_a_line_down)
{
	lay(3, (const int[]){ 16, 4, 16 });
	prints(&(struct strip){ .count = 3, .through = { true, true } },
		"  odd  through|-------|c|-------|through\n"
		"              0       16        36\n"
		"                        20\n");
}
END_TEST

START_TEST(each_mark_that_would_touch_has_a_line_of_its_own)
{
	lay(4, (const int[]){ 16, 4, 4, 4 });
	prints(&(struct strip){ .from = 8, .count = 4, .through = { false, false } },
		"  odd        butts|-------|c|c|c|butts\n"
		"                  8       24  32\n"
		"                            28  36\n");
}
END_TEST

/* 16 1/16 in a block, drawn at that; marks of five characters and more, at each eighth column. */
START_TEST(marks_are_read_to_a_sixteenth)
{
	lay(3, (const int[]){ 16, 16, 16 });
	print(UNITS_IMPERIAL, NM_PER_INCH + NM_PER_INCH / 256, &(struct strip){ .count = 3,
		.through = { true, true } });
	ck_assert_str_eq(page.bytes, "  odd  through|-------|-------|-------|through\n"
		"              0       16 1/16 32 1/8  48 3/16\n");
}
END_TEST

/* Marks of eight characters leave no blank to the next. */
START_TEST(a_mark_that_would_touch_the_next_is_left_out_where_none_is_sawn)
{
	lay(4, (const int[]){ 16, 16, 16, 16 });
	print(UNITS_IMPERIAL, 8 * NM_PER_INCH + NM_PER_INCH / 256, &(struct strip){ .count = 4,
		.through = { true, true } });
	ck_assert_str_eq(page.bytes, "  odd  through|-------|-------|-------|-------|through\n"
		"              0       128 1/16                512 1/4\n");
}
END_TEST

START_TEST(a_metric_tape_is_in_whole_millimetres_even_past_a_metre)
{
	lay(3, (const int[]){ 16, 16, 16 });
	print(UNITS_METRIC, 25 * NM_PER_MM + NM_PER_MM / 100, &(struct strip){ .count = 3,
		.through = { true, true } });
	ck_assert_str_eq(page.bytes, "  odd  through|-------|-------|-------|through\n"
		"              0       400     800     1200\n");
}
END_TEST

START_TEST(seven_blocks_are_one_row)
{
	lay(7, (const int[]){ 16, 16, 16, 16, 16, 16, 16 });
	prints(&(struct strip){ .count = 7, .through = { true, true } },
		"  odd  through|-------|-------|-------|-------|-------|-------|-------|through\n"
		"              0       16      32      48      64      80      96      112\n");
}
END_TEST

/* A row takes what begins in its 49 columns. */
START_TEST(a_longer_run_goes_on_at_a_joint)
{
	lay(8, (const int[]){ 16, 16, 16, 16, 16, 16, 16, 4 });
	prints(&(struct strip){ .count = 8, .through = { true, false } },
		"  odd  through|-------|-------|-------|-------|-------|-------|-------|\n"
		"              0       16      32      48      64      80      96      112\n"
		"                     |c|butts\n"
		"                     112\n"
		"                       116\n");
}
END_TEST

START_TEST(rows_of_whole_blocks_between_the_first_and_the_last_are_counted)
{
	for (int i = 0; i < 31; i++)
		pieces[i] = 16;
	prints(&(struct strip){ .count = 31, .through = { true, true } },
		"  odd  through|-------|-------|-------|-------|-------|-------|-------|\n"
		"              0       16      32      48      64      80      96      112\n"
		"              then 18 whole, to 400\n"
		"                  |-------|-------|-------|-------|-------|-------|through\n"
		"                  400     416     432     448     464     480     496\n");
}
END_TEST

START_TEST(a_row_with_a_sawn_piece_is_drawn_wherever_it_is)
{
	for (int i = 0; i < 40; i++)
		pieces[i] = i == 20 ? 12 : 16;
	prints(&(struct strip){ .count = 40, .through = { true, true } },
		"  odd  through|-------|-------|-------|-------|-------|-------|-------|\n"
		"              0       16      32      48      64      80      96      112\n"
		"              then 12 whole, to 304\n"
		"                   |-------|aaaaa|-------|-------|-------|-------|\n"
		"                   304     320   332     348     364     380     396\n"
		"              then 12 whole, to 588\n"
		"              |-------|-------|-------|through\n"
		"              588     604     620     636\n");
}
END_TEST

/* 100,000 1/2 in and more, at the last column. */
START_TEST(no_mark_runs_over_the_page)
{
	static const struct { nm unit; const char *last; } rows[] = {
		{ 1000 * NM_PER_INCH + NM_PER_INCH / 224, " 112000 1/2\n" },
		{ 1000 * NM_PER_INCH + 15 * NM_PER_INCH / (16 * 112), " 112000 15/16\n" },
	};

	lay(7, (const int[]){ 16, 16, 16, 16, 16, 16, 16 });
	print(UNITS_IMPERIAL, rows[_i].unit, &(struct strip){ .count = 7,
		.through = { true, true } });
	for (const char *line = page.bytes; *line; line += strcspn(line, "\n") + 1)
		ck_assert_uint_le(strcspn(line, "\n"), 80);
	ck_assert_ptr_nonnull(strstr(page.bytes, rows[_i].last));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("strip");
	TCase *row = suite_case(suite, "row"), *rows = suite_case(suite, "rows");

	tcase_add_checked_fixture(row, NULL, teardown);
	tcase_add_test(row, blocks_are_bars_and_dashes_a_sawn_piece_has_its_letter);
	tcase_add_test(row, a_run_that_begins_past_the_corner_stands_further_right);
	tcase_add_test(row, a_mark_before_the_corner_has_a_minus);
	tcase_add_test(row, marks_of_sawn_pieces_that_would_touch_go_a_line_down);
	tcase_add_test(row, each_mark_that_would_touch_has_a_line_of_its_own);
	tcase_add_test(row, marks_are_read_to_a_sixteenth);
	tcase_add_test(row, a_mark_that_would_touch_the_next_is_left_out_where_none_is_sawn);
	tcase_add_test(row, a_metric_tape_is_in_whole_millimetres_even_past_a_metre);
	tcase_add_loop_test(row, no_mark_runs_over_the_page, 0, 2);

	tcase_add_checked_fixture(rows, NULL, teardown);
	tcase_add_test(rows, seven_blocks_are_one_row);
	tcase_add_test(rows, a_longer_run_goes_on_at_a_joint);
	tcase_add_test(rows, rows_of_whole_blocks_between_the_first_and_the_last_are_counted);
	tcase_add_test(rows, a_row_with_a_sawn_piece_is_drawn_wherever_it_is);
	return suite;
}
