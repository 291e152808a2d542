/* A text table asks for its rows twice, to be measured and to be printed, and holds none. */

#include "support/garden.h"
#include "support/runner.h"
#include "report/text/print.h"

#include <malloc.h>
#include <string.h>

enum { ROWS = 100000 };

/* ---- Rows made up as they are asked for ------------------------------------------------------ */

/* Each row is put where the last one was: a table that held one would print another. */
struct counting_table {
	struct table table; /* first */
	int rows, next;
	int asked, ended;   /* how often for a row; how often there was none left */
	char cells[2][12];
	size_t used_most;   /* bytes allocated at a time, at most */
};

/* Bytes allocated, those of large blocks too. */
static size_t used(void)
{
	struct mallinfo2 now = mallinfo2();

	return now.uordblks + now.hblkhd;
}

static bool next_row(struct table *table, const char *cells[])
{
	struct counting_table *counting = (struct counting_table *)table;
	size_t now = used();

	counting->used_most = now > counting->used_most ? now : counting->used_most;
	counting->asked++;
	memset(counting->cells, 'x', sizeof counting->cells);
	if (counting->next == counting->rows) {
		counting->next = 0;
		counting->ended++;
		return false;
	}
	counting->next++;
	for (int i = 0; i < 2; i++) {
		snprintf(counting->cells[i], sizeof counting->cells[i], "%d",
			i ? ROWS - counting->next : counting->next);
		cells[i] = counting->cells[i];
	}
	return true;
}

static const struct table_column columns[] = { { "Row", COLUMN_LEFT }, { "Left", COLUMN_RIGHT } };

static struct counting_table counting_table(int rows)
{
	return (struct counting_table){ .table = { columns, 2, 0, next_row, 0 }, .rows = rows };
}

/* ---- A sink that looks at what it is given and keeps only the last line ---------------------- */

struct line_sink {
	struct sink sink; /* first */
	char line[PAGE_COLUMNS + 1];
	size_t length;
	int lines;
	int out_of_order; /* lines that are not the row that is due */
};

static void end_line(struct line_sink *out)
{
	char due[PAGE_COLUMNS + 1];

	snprintf(due, sizeof due, "%-6d  %5d", out->lines, ROWS - out->lines);
	out->line[out->length] = '\0';
	out->out_of_order += out->lines > 0 && strcmp(out->line, due) != 0;
	out->lines++;
	out->length = 0;
}

static void write_line(struct sink *sink, const char *bytes, size_t length)
{
	struct line_sink *out = (struct line_sink *)sink;

	for (size_t i = 0; i < length; i++) {
		if (bytes[i] == '\n')
			end_line(out);
		else if (out->length < PAGE_COLUMNS)
			out->line[out->length++] = bytes[i];
	}
}

START_TEST(many_rows_are_asked_for_twice_and_none_is_held)
{
	struct counting_table table = counting_table(ROWS);
	struct line_sink out = { .sink = { write_line } };
	size_t before = used();

	table_print(&table.table, &out.sink);
	ck_assert_int_eq(table.asked, 2 * (ROWS + 1));
	ck_assert_int_eq(table.ended, 2);
	ck_assert_int_eq(out.lines, ROWS + 1);
	ck_assert_int_eq(out.out_of_order, 0);
	/* A line and no more; the rows come to over a megabyte. */
	ck_assert_uint_lt(table.used_most - before, 4096);
	ck_assert_uint_eq(used(), before);
}
END_TEST

START_TEST(no_rows_are_asked_for_once)
{
	struct counting_table table = counting_table(0);
	struct counting_sink out = counting_sink();

	table_print(&table.table, &out.sink);
	ck_assert_int_eq(table.asked, 1);
	ck_assert_uint_eq(out.length, 0);
}
END_TEST

START_TEST(a_table_can_be_printed_again)
{
	struct counting_table table = counting_table(3);
	struct counting_sink out = counting_sink();
	size_t once;

	table_print(&table.table, &out.sink);
	once = out.length;
	table_print(&table.table, &out.sink);
	ck_assert_int_eq(table.asked, 4 * (3 + 1));
	ck_assert_uint_gt(once, 0);
	ck_assert_uint_eq(out.length, 2 * once);
}
END_TEST

/* ---- Declared rows --------------------------------------------------------------------------- */

static size_t words_most; /* bytes allocated at a time, at most, while rows are printed */

/* A cell by hand, for a look at what is allocated. */
static const char *watch(const struct report *report, const void *row, const void *context)
{
	size_t now = used();

	(void)report;
	(void)row;
	words_most = now > words_most ? now : words_most;
	return context;
}

START_TEST(words_of_declared_rows_last_no_longer_than_their_row)
{
	static const struct last_column last = { "Note", watch, "of many" };
	struct liner *liners = memory_new(ROWS, sizeof *liners);
	struct arena words = ARENA_EMPTY;
	struct counting_sink out = counting_sink();
	const struct report report = { .out = &out.sink, .words = &words };
	size_t before;

	for (int i = 0; i < ROWS; i++)
		liners[i] = (struct liner){ .region = NO_REGION, .length = (i + 1) * NM_PER_MM,
			.height = 100 * NM_PER_MM, .area = i / 10.0 };
	before = used();
	print_rows(&report, &liner_table, liners, ROWS, 0, &last);
	ck_assert_uint_gt(out.length, (size_t)ROWS * 30);
	/* A chunk of the arena, not the megabytes that are printed. */
	ck_assert_uint_lt(words_most - before, 128 * 1024);
	free(liners);
	arena_clear(&words);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("table rows");
	TCase *rows = suite_case(suite, "rows");

	tcase_add_test(rows, many_rows_are_asked_for_twice_and_none_is_held);
	tcase_add_test(rows, no_rows_are_asked_for_once);
	tcase_add_test(rows, a_table_can_be_printed_again);
	tcase_add_test(rows, words_of_declared_rows_last_no_longer_than_their_row);
	return suite;
}
