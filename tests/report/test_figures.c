/* What is declared of figures: keys with their units, words, views. Of every table there is. */

#include "support/garden.h"
#include "support/runner.h"
#include "support/sample_gardens.h"
#include "support/tables.h"
#include "report/panel/page_lines.h"
#include "report/text/print.h"

#include <string.h>

static struct garden garden;
static const struct named_table *tables;
static int table_count;

/* ---- Tables ---------------------------------------------------------------------------------- */

START_TEST(tables_within_tables_are_found_and_none_is_empty)
{
	ck_assert(table_is_declared(&area_table));
	ck_assert(table_is_declared(&fence_post_table));
	ck_assert(table_is_declared(&fabric_row_table));
	ck_assert(table_is_declared(&loads_table));
	ck_assert(table_is_declared(&day_cost_table));
	ck_assert(table_is_declared(&wall_course_table));
	for (int i = 0; i < table_count; i++)
		ck_assert_msg(tables[i].table->count > 0 && tables[i].table->row_size > 0, "%s",
			tables[i].name);
}
END_TEST

/* ---- Keys ------------------------------------------------------------------------------------ */

static bool ends_in(const char *word, const char *end)
{
	size_t length = strlen(word), of_end = strlen(end);

	return length > of_end && strcmp(word + length - of_end, end) == 0;
}

/* The unit at the end of a key; "": none. */
static const char *unit_said(const char *key)
{
	static const char *const units[] = { "_m", "_m2", "_m3", "_kg", "_m3_h" };

	for (size_t i = 0; i < sizeof units / sizeof *units; i++)
		if (ends_in(key, units[i]))
			return units[i];
	return "";
}

static const char *unit_of(enum figure_kind kind)
{
	switch (kind) {
	case FIGURE_LENGTH:
	case FIGURE_INCHES:
	case FIGURE_LENGTHS:
	case FIGURE_SPOT:
	case FIGURE_SIZE:
		return "_m";
	case FIGURE_AREA:
		return "_m2";
	case FIGURE_VOLUME:
	case FIGURE_WATER:
		return "_m3";
	case FIGURE_FLOW:
		return "_m3_h";
	case FIGURE_WEIGHT:
		return "_kg";
	default:
		return "";
	}
}

START_TEST(a_key_ends_in_the_unit_of_its_kind_and_in_none_otherwise)
{
	const struct figure_table *table = tables[_i].table;

	for (int i = 0; i < table->count; i++) {
		const struct figure *figure = &table->figures[i];

		/* A part of a mix has nothing but its volume to be named by: that is the unit. */
		if (!figure->key ||
			(figure->kind == FIGURE_VOLUME && strcmp(figure->key, "m3") == 0))
			continue;
		ck_assert_msg(strcmp(unit_said(figure->key), unit_of(figure->kind)) == 0,
			"%s: %s should end in \"%s\"", tables[_i].name, figure->key,
			unit_of(figure->kind));
	}
}
END_TEST

static bool is_key(const char *key)
{
	static const char inside[] = "abcdefghijklmnopqrstuvwxyz0123456789_";
	size_t length = strlen(key);

	return key[0] >= 'a' && key[0] <= 'z' && strspn(key, inside) == length &&
		key[length - 1] != '_' && !strstr(key, "__");
}

START_TEST(keys_are_lower_case_words_and_distinct_within_a_table)
{
	const struct figure_table *table = tables[_i].table;

	for (int i = 0; i < table->count; i++) {
		const char *key = table->figures[i].key;

		if (!key)
			continue;
		ck_assert_msg(is_key(key), "%s: %s", tables[_i].name, key);
		for (int j = 0; j < i; j++)
			ck_assert_msg(!table->figures[j].key ||
				strcmp(table->figures[j].key, key) != 0,
				"%s: %s twice", tables[_i].name, key);
	}
}
END_TEST

static bool has_json(enum figure_kind kind)
{
	return kind != FIGURE_ENTRY && kind != FIGURE_ALIKE && kind != FIGURE_HEADING;
}

static bool has_words(enum figure_kind kind)
{
	return kind != FIGURE_TRUTH && kind != FIGURE_SPOT && kind != FIGURE_LENGTHS &&
		kind != FIGURE_CUTS && kind != FIGURE_OBJECT;
}

/* Rows within a row have no cell of the text, but lines on the panel. */
START_TEST(a_kind_is_declared_only_for_views_that_can_show_it)
{
	const struct figure_table *table = tables[_i].table;

	for (int i = 0; i < table->count; i++) {
		const struct figure *f = &table->figures[i];

		ck_assert_msg(!f->key || has_json(f->kind), "%s: %s", tables[_i].name, f->key);
		ck_assert_msg(!f->label || has_words(f->kind), "%s: %s", tables[_i].name, f->label);
		ck_assert_msg(!f->heading || (has_words(f->kind) && f->kind != FIGURE_ROWS &&
			f->kind != FIGURE_HEADING), "%s: %s", tables[_i].name, f->heading);
		ck_assert_msg((f->kind == FIGURE_ROWS || f->kind == FIGURE_OBJECT) == !!f->table,
			"%s: figure %d", tables[_i].name, i);
		ck_assert_msg((f->kind == FIGURE_WORD) == !!f->words, "%s: figure %d",
			tables[_i].name, i);
	}
}
END_TEST

/* Stars on the panel go by a figure's label under the last heading. */
START_TEST(no_label_is_twice_under_a_heading)
{
	const struct figure_table *table = tables[_i].table;

	for (int i = 0; i < table->count; i++) {
		const struct figure *f = &table->figures[i];

		if (!f->label || f->kind == FIGURE_HEADING || (f->flags & PANEL_TITLE))
			continue;
		for (int j = i - 1; j >= 0 && table->figures[j].kind != FIGURE_HEADING; j--)
			ck_assert_msg(!table->figures[j].label ||
				strcmp(table->figures[j].label, f->label) != 0,
				"%s: %s twice", tables[_i].name, f->label);
	}
}
END_TEST

/* ---- Words ----------------------------------------------------------------------------------- */

static int words_seen;

static void words_are_there(const struct figure_table *table, const char *rows, int count);

static void figure_words_are_there(const struct figure *figure, const char *row)
{
	const struct word *word;
	const char *rows;
	int count;

	if (figure->kind == FIGURE_OBJECT)
		words_are_there(figure->table, figure_field(figure, row), 1);
	if (figure->kind == FIGURE_ROWS) {
		rows = figure_rows(figure, row, &count);
		words_are_there(figure->table, rows, count);
	}
	if (!figure->words)
		return;
	word = &figure->words[figure_whole(figure, row)];
	ck_assert(!figure->key || (word->key && word->key[0]));
	ck_assert(!figure->heading || (word_heading(word) && word_heading(word)[0]));
	ck_assert(!figure->label || (word_label(word) && word_label(word)[0]));
	ck_assert(word->key || word->heading || word->label);
	words_seen++;
}

static void words_are_there(const struct figure_table *table, const char *rows, int count)
{
	for (int i = 0; i < count; i++)
		for (int j = 0; j < table->count; j++)
			figure_words_are_there(&table->figures[j],
				rows + (size_t)i * table->row_size);
}

START_TEST(every_value_in_a_sample_has_its_words)
{
	const struct takeoff *t = &garden.takeoff;
	char path[80];

	snprintf(path, sizeof path, "plots/%s.plot", sample_gardens[_i]);
	garden_file(&garden, path);
	garden_count(&garden);
	for (int i = 0; i < takeoff_shown_count; i++) {
		const struct shown *shown = &takeoff_shown[i];
		int count;

		if (!shown->table)
			continue;
		const char *rows = shown_rows(shown, t, &count);

		words_are_there(shown->table, rows, count);
	}
	words_are_there(&costs_table, (const char *)&t->costs, 1);
	words_are_there(&stone_layer_table, (const char *)t->stones.layers, t->stones.layer_count);
	/* Sections of the costs, kinds of stone, the way of the fabric: at least. */
	ck_assert_int_gt(words_seen, SECTIONS + STONE_KINDS);
	garden_fini(&garden);
}
END_TEST

static void all_have_keys(const struct word *words, int count)
{
	for (int i = 0; i < count; i++) {
		ck_assert(words[i].key && is_key(words[i].key));
		for (int j = 0; j < i; j++)
			ck_assert_str_ne(words[j].key, words[i].key);
	}
}

START_TEST(words_of_a_whole_enum_are_all_there_and_differ)
{
	all_have_keys(section_words, SECTIONS);
	all_have_keys(dig_words, DIG_PARTS);
	all_have_keys(post_words, POST_KINDS);
	for (int i = 0; i < FILL_WAYS; i++)
		ck_assert(word_heading(&fill_words[i])[0]);
}
END_TEST

START_TEST(a_word_that_a_view_lacks_is_the_one_in_json)
{
	static const struct word full = { "key", "Heading", "Label" }, bare = { .key = "key" };

	ck_assert_str_eq(word_heading(&full), "Heading");
	ck_assert_str_eq(word_label(&full), "Label");
	ck_assert_str_eq(word_heading(&bare), "key");
	ck_assert_str_eq(word_label(&bare), "key");
}
END_TEST

/* ---- Views ----------------------------------------------------------------------------------- */

static struct text out;
static struct text_sink sink;
static struct report report;
static struct page page;

static void setup(void)
{
	out = TEXT_EMPTY;
	sink = text_sink(&out);
	page = (struct page){ .is_made = false };
	garden_rows(&garden, (const char *const[]){ "b.l", NULL });
	garden_count(&garden);
	report = (struct report){ .out = &sink.sink, .words = &garden.words,
		.plot = &garden.plot, .takeoff = &garden.takeoff, .units = UNITS_IMPERIAL };
}

static void teardown(void)
{
	text_fini(&out);
	garden_fini(&garden);
}

static void page_is(const struct figure_table *table, const void *row, const char *expected)
{
	struct page_maker maker = { .report = report, .page = &page };

	maker.report.wording = WORDING_PANEL;
	page_row(&maker, table, row);
	for (size_t i = 0; i < page.count; i++)
		text_print(&out, "%s%s;", page.lines[i].label, page.lines[i].value);
	ck_assert_str_eq(out.bytes, expected);
}

START_TEST(a_lawn_of_turf_has_a_dash_for_its_seed)
{
	const struct lawn lawns[] = {
		{ .region = 1, .cover = COVER_TURF, .area = SQUARE_FOOT },
		{ .region = 1, .cover = COVER_SEED, .area = SQUARE_FOOT, .seed = 2 * 0.45359237 },
	};

	print_rows(&report, &lawn_table, lawns, 2, 0, NULL);
	ck_assert_str_eq(out.bytes,
		"Lawn  Cover  Area each  Seed each  Topsoil   In place  Soil to order\n"
		"L1    turf   1.0 sq ft          -     0 in  0.0 cu ft      0.0 cu ft\n"
		"L1    seed   1.0 sq ft     2.0 lb     0 in  0.0 cu ft      0.0 cu ft\n");
}
END_TEST

START_TEST(a_bed_with_mulch_alone_has_no_line_of_soil)
{
	const struct fill fill = { .region = 0, .mulch = CUBIC_FOOT };

	page_is(&fill_table, &fill, "B1 b b;Mulch1.0 cu ft;");
}
END_TEST

START_TEST(blocks_are_under_a_title_of_what_they_are_for_and_their_size)
{
	const struct cutting cutting = { .use = USE_CAP, .order = 9, .breakage = 1, .whole = 8,
		.block = { 16 * NM_PER_INCH, 8 * NM_PER_INCH, 2 * NM_PER_INCH } };

	page_is(&cutting_table, &cutting,
		"Cap 16 in x 8 in x 2 in;To order9;of them spare1;Laid whole8;Cut up0;");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("figures");
	TCase *keys = suite_case(suite, "keys");
	TCase *words = suite_case(suite, "words");
	TCase *views = suite_case(suite, "views");

	tables = tables_all(&table_count);
	tcase_add_test(keys, tables_within_tables_are_found_and_none_is_empty);
	tcase_add_loop_test(keys, a_key_ends_in_the_unit_of_its_kind_and_in_none_otherwise, 0,
		table_count);
	tcase_add_loop_test(keys, keys_are_lower_case_words_and_distinct_within_a_table, 0,
		table_count);
	tcase_add_loop_test(keys, a_kind_is_declared_only_for_views_that_can_show_it, 0,
		table_count);
	tcase_add_loop_test(keys, no_label_is_twice_under_a_heading, 0, table_count);

	tcase_add_loop_test(words, every_value_in_a_sample_has_its_words, 0, SAMPLE_GARDENS);
	tcase_add_test(words, words_of_a_whole_enum_are_all_there_and_differ);
	tcase_add_test(words, a_word_that_a_view_lacks_is_the_one_in_json);

	tcase_add_checked_fixture(views, setup, teardown);
	tcase_add_test(views, a_lawn_of_turf_has_a_dash_for_its_seed);
	tcase_add_test(views, a_bed_with_mulch_alone_has_no_line_of_soil);
	tcase_add_test(views, blocks_are_under_a_title_of_what_they_are_for_and_their_size);
	return suite;
}
