/* A table with every kind of figure, declared here alone, as text, as JSON and on the panel: a new
 * trade's figures need no more than their declaration. */

#include "support/garden.h"
#include "support/runner.h"
#include "prices/book_json.h"
#include "report/json/json_rows.h"
#include "report/panel/page_lines.h"
#include "report/text/print.h"

#include <string.h>

/* ---- Made-up results of a made-up trade ------------------------------------------------------ */

enum glaze { GLAZE_NONE, GLAZE_SALT };

struct shard {
	nm length;
	int count;
};

struct pot {
	/* measures */
	int64_t count;
	nm rim, hole;
	double area, volume, weight, share;
	money price;
	/* words */
	enum glaze glaze;
	const char *maker;
	char mark;
	const struct entry *plant;
	int bed;
	struct place at;
	struct size crate;
	/* in JSON alone */
	bool is_sound;
	struct spot middle;
	const nm *cracks;
	int crack_count;
	const struct cut *cuts;
	int cut_count;
	const struct shard *shards;
	int shard_count;
	struct shard largest;
};

static const struct word glaze_words[] = {
	[GLAZE_NONE] = { "none", "unglazed", "Unglazed" },
	[GLAZE_SALT] = { .key = "salt" },
};

static const struct figure measure_figures[] = {
	{ "count", "Pots", "Pots", FIELD(COUNT, pot, count) },
	{ "rim_m", "Rim", "Rim", FIELD(LENGTH, pot, rim) },
	{ "hole_m", "Hole", "Hole", FIELD(INCHES, pot, hole), .flags = TEXT_DASHED },
	{ "glazed_m2", "Glazed", "Glazed", FIELD(AREA, pot, area) },
	{ "soil_m3", "Soil", "Soil", FIELD(VOLUME, pot, volume) },
	{ "weight_kg", "Weight", "Weight", FIELD(WEIGHT, pot, weight), .flags = PANEL_OPTIONAL },
	{ "share", "Share", "Share", FIELD(NUMBER, pot, share) },
	{ "price", "Price", "Price", FIELD(MONEY, pot, price) },
};
static const struct figure_table measures = FIGURE_TABLE(pot, measure_figures);

static const struct figure word_figures[] = {
	{ "glaze", "Glaze", "Glaze", FIELD(WORD, pot, glaze), .words = glaze_words },
	{ "maker", "Maker", "", FIELD(TEXT, pot, maker), .flags = TEXT_WRAPS | PANEL_TITLE },
	{ "mark", "Mark", "Mark", FIELD(LETTER, pot, mark) },
	{ NULL, "For", "For", FIELD(ENTRY, pot, plant) },
	{ "bed", "Bed", "", FIELD(REGION, pot, bed), .flags = PANEL_TITLE },
	{ "at", "At", "At", FIELD(PLACE, pot, at) },
	{ "crate_m", "Crate", "Crate", FIELD(SIZE, pot, crate) },
};
static const struct figure_table words = FIGURE_TABLE(pot, word_figures);

static const struct figure shard_figures[] = {
	{ "length_m", NULL, "length", FIELD(LENGTH, shard, length) },
	{ "count", NULL, NULL, FIELD(COUNT, shard, count), .flags = ROW_NEEDED },
};
static const struct figure_table shard_table = FIGURE_TABLE(shard, shard_figures);

static const struct figure inner_figures[] = {
	{ "shards_after", NULL, NULL, FIELDS(ROWS, pot, shards, shard_count),
		.table = &shard_table, .flags = JSON_SPACED },
	{ "sawn", NULL, NULL, FIELDS(CUTS, pot, cuts, cut_count), .flags = JSON_LINES },
	{ "sound", NULL, NULL, FIELD(TRUTH, pot, is_sound), .flags = ROW_NEEDED },
	{ "middle_m", NULL, NULL, FIELD(SPOT, pot, middle) },
	{ "cracks_m", NULL, NULL, FIELDS(LENGTHS, pot, cracks, crack_count) },
	{ .label = "Broken", .kind = FIGURE_HEADING },
	{ "shards", NULL, "Shard", FIELDS(ROWS, pot, shards, shard_count), .table = &shard_table },
	{ "largest", NULL, NULL, FIELD(OBJECT, pot, largest), .table = &shard_table },
	{ "bed", NULL, NULL, SAME_ROW, .table = &words },
};
static const struct figure_table inner = FIGURE_TABLE(pot, inner_figures);

static const struct figure alike_figures[] = {
	{ "bed", "Beds", NULL, FIELD(REGION, pot, bed) },
	{ .heading = "Pots", .kind = FIGURE_ALIKE },
	{ "rim_m", "Rim each", NULL, FIELD(LENGTH, pot, rim) },
};
static const struct figure_table alike = FIGURE_TABLE(pot, alike_figures);

static const nm cracks[] = { 20 * NM_PER_MM, 5 * NM_PER_MM };
static const nm pieces[] = { 300 * NM_PER_MM, 100 * NM_PER_MM };
static const struct cut cuts[] = { { pieces, 2, 2 }, { pieces, 1, 1 } };
static const struct shard shards[] = { { 3 * NM_PER_INCH, 1 }, { NM_PER_INCH, 0 },
	{ 2 * NM_PER_INCH, 4 } };

static struct pot pots[3];

static void make_pots(const struct plot *plot)
{
	pots[0] = (struct pot){ .count = 1200, .rim = 15 * NM_PER_INCH, .hole = 15 * NM_PER_INCH,
		.area = 10 * SQUARE_FOOT, .volume = 2 * CUBIC_YARD, .weight = 0.45359237 * 40,
		.share = 0.125, .price = 123450, .glaze = GLAZE_NONE, .maker = "East kiln",
		.mark = 'K', .plant = plot_entry(plot, 'b'), .bed = 0, .at = { 3, 4 },
		.crate = { 16 * NM_PER_INCH, 8 * NM_PER_INCH, 4 * NM_PER_INCH },
		.is_sound = true, .middle = { NM_PER_MM, 1 }, .cracks = cracks, .crack_count = 2,
		.cuts = cuts, .cut_count = 2, .shards = shards, .shard_count = 3,
		.largest = shards[0] };
	pots[1] = (struct pot){ .rim = 15 * NM_PER_INCH, .glaze = GLAZE_SALT, .maker = "Kiln",
		.mark = 'L', .plant = plot_entry(plot, 'c'), .bed = 1, .is_sound = false };
	pots[2] = pots[0];
	pots[2].bed = NO_REGION;
	pots[2].rim = 24 * NM_PER_INCH;
}

/* ---- Its views ------------------------------------------------------------------------------- */

static struct garden garden;
static struct arena arena;
static struct text out;
static struct text_sink sink;
static struct report report;
static struct page page;

static void setup(void)
{
	out = TEXT_EMPTY;
	sink = text_sink(&out);
	page = (struct page){ .is_made = false };
	garden_rows(&garden, (const char *const[]){ "b.c", NULL });
	garden_count(&garden);
	make_pots(&garden.plot);
	report = (struct report){ .out = &sink.sink, .words = &arena, .plot = &garden.plot,
		.takeoff = &garden.takeoff, .units = UNITS_IMPERIAL };
}

static void teardown(void)
{
	text_fini(&out);
	arena_clear(&arena);
	garden_fini(&garden);
}

static void prints(const char *expected)
{
	ck_assert_str_eq(out.bytes ? out.bytes : "", expected);
}

START_TEST(measures_are_columns_to_the_right)
{
	print_rows(&report, &measures, pots, 2, 0, NULL);
	prints(" Pots        Rim   Hole      Glazed        Soil   Weight  Share     Price\n"
		"1,200  1 ft 3 in  15 in  10.0 sq ft  2.00 cu yd  40.0 lb   0.13  1,234.50\n"
		"    0  1 ft 3 in      -   0.0 sq ft   0.0 cu ft   0.0 lb   0.00      0.00\n");
}
END_TEST

START_TEST(measures_are_in_the_units_of_the_plot)
{
	report.units = UNITS_METRIC;
	print_rows(&report, &measures, pots, 1, 2, NULL);
	prints("   Pots     Rim    Hole   Glazed     Soil   Weight  Share     Price\n"
		"  1,200  381 mm  381 mm  0.93 m2  1.53 m3  18.1 kg   0.13  1,234.50\n");
}
END_TEST

START_TEST(words_are_columns_to_the_left)
{
	print_rows(&report, &words, pots, 3, 0, NULL);
	prints("Glaze     Maker      Mark  For  Bed  At                        Crate\n"
		"unglazed  East kiln  K     b b  B1   3 ft, 4 ft  16 in x 8 in x 4 in\n"
		"salt      Kiln       L     c c  B2   0 in, 0 in   0 in x 0 in x 0 in\n"
		"unglazed  East kiln  K     b b       3 ft, 4 ft  16 in x 8 in x 4 in\n");
}
END_TEST

static const char *crack_words(const struct report *r, const void *row, const void *context)
{
	const struct pot *pot = row;

	return pot->crack_count ? plain_length(r, pot->cracks[*(const int *)context]) : "none";
}

START_TEST(a_last_column_may_be_made_by_hand)
{
	static const int second = 1;
	static const struct last_column last = { "Second crack", crack_words, &second };

	report.units = UNITS_METRIC;
	print_rows(&report, &alike, pots, 2, 0, &last);
	prints("Beds  Pots  Rim each  Second crack\n"
		"B1       1    381 mm  5 mm\n"
		"B2       1    381 mm  none\n");
}
END_TEST

START_TEST(rows_that_are_alike_are_one)
{
	print_alike(&report, &alike, pots, 3);
	prints("Beds       Pots   Rim each\n"
		"B1 and B2     2  1 ft 3 in\n"
		"              1       2 ft\n");
}
END_TEST

START_TEST(without_rows_there_is_no_table)
{
	print_rows(&report, &measures, pots, 0, 0, NULL);
	print_alike(&report, &alike, pots, 0);
	prints("");
}
END_TEST

static void print_json(const struct figure_table *table, int count)
{
	struct json_rows rows = json_top_open(report.out, "pots");

	json_start();
	for (int i = 0; i < count; i++)
		json_rows_print(&rows, report.takeoff, table, &pots[i], NULL);
	json_top_close(&rows);
}

START_TEST(measures_in_json_are_in_si_units_and_exact)
{
	print_json(&measures, 1);
	prints(",\n"
		"  \"pots\": [\n"
		"    {\"count\":1200,\"rim_m\":0.381,\"hole_m\":0.381,"
		"\"glazed_m2\":0.9290304,\"soil_m3\":1.529109716,"
		"\"weight_kg\":18.1436948,\"share\":0.125,\"price\":1234.5}\n"
		"  ]");
}
END_TEST

START_TEST(words_in_json_are_those_for_programs)
{
	print_json(&words, 3);
	prints(",\n"
		"  \"pots\": [\n"
		"    {\"glaze\":\"none\",\"maker\":\"East kiln\",\"mark\":\"K\","
		"\"bed\":\"B1\",\"at\":[3,4],"
		"\"crate_m\":[0.4064,0.2032,0.1016]},\n"
		"    {\"glaze\":\"salt\",\"maker\":\"Kiln\",\"mark\":\"L\","
		"\"bed\":\"B2\",\"at\":[0,0],"
		"\"crate_m\":[0,0,0]},\n"
		"    {\"glaze\":\"none\",\"maker\":\"East kiln\",\"mark\":\"K\","
		"\"bed\":null,\"at\":[3,4],"
		"\"crate_m\":[0.4064,0.2032,0.1016]}\n"
		"  ]");
}
END_TEST

/* The second pot is not sound and the second shard is of no pot: neither is there. */
START_TEST(rows_within_a_row_are_nested_or_follow_it)
{
	print_json(&inner, 2);
	prints(",\n"
		"  \"pots\": [\n"
		"    {\"sound\":true,\"middle_m\":[0.001,0.000000001],\"cracks_m\":[0.02,0.005],"
		"\"shards\":[{\"length_m\":0.0762,\"count\":1},{\"length_m\":0.0508,\"count\":4}],"
		"\"largest\":{\"length_m\":0.0762,\"count\":1},"
		"\"bed\":{\"glaze\":\"none\",\"maker\":\"East kiln\",\"mark\":\"K\","
		"\"bed\":\"B1\",\"at\":[3,4],"
		"\"crate_m\":[0.4064,0.2032,0.1016]},"
		" \"shards_after\": [{\"length_m\":0.0762,\"count\":1}"
		",{\"length_m\":0.0508,\"count\":4}],"
		" \"sawn\": [\n"
		"      {\"pieces_m\":[0.3,0.1]},\n"
		"      {\"pieces_m\":[0.3,0.1]},\n"
		"      {\"pieces_m\":[0.3]}\n"
		"      ]}\n"
		"  ]");
}
END_TEST

static void page_is(const struct figure_table *table, int count, const char *expected)
{
	struct page_maker maker = { .report = report, .page = &page };

	maker.report.wording = WORDING_PANEL;
	page_rows(&maker, table, pots, count);
	for (size_t i = 0; i < page.count; i++) {
		const struct line *line = &page.lines[i];

		text_print(&out, line->kind == LINE_HEADING ? "# %s%s\n" : "%s: %s\n", line->label,
			line->value);
	}
	prints(expected);
}

START_TEST(measures_on_the_panel_are_lines_but_for_optional_ones)
{
	page_is(&measures, 2, "Pots: 1,200\n"
		"Rim: 1 ft 3 in\n"
		"Hole: 15 in\n"
		"Glazed: 10.0 sq ft\n"
		"Soil: 2.00 cu yd\n"
		"Weight: 40.0 lb\n"
		"Share: 0.13\n"
		"Price: 1,234.50\n"
		"Pots: 0\n"
		"Rim: 1 ft 3 in\n"
		"Hole: 0 in\n"
		"Glazed: 0.0 sq ft\n"
		"Soil: 0.0 cu ft\n"
		"Share: 0.00\n"
		"Price: 0.00\n");
}
END_TEST

START_TEST(titles_on_the_panel_are_one_heading)
{
	page_is(&words, 2, "# East kiln B1 b b\n"
		"Glaze: Unglazed\n"
		"Mark: K\n"
		"For: b b\n"
		"At: 3 ft, 4 ft\n"
		"Crate: 16 in x 8 in x 4 in\n"
		"# Kiln B2 c c\n"
		"Glaze: salt\n"
		"Mark: L\n"
		"For: c c\n"
		"At: 0 in, 0 in\n"
		"Crate: 0 in x 0 in x 0 in\n");
}
END_TEST

START_TEST(rows_within_a_row_are_numbered_lines_of_the_panel)
{
	page_is(&inner, 2, "# Broken\n"
		"Shard 1 length: 3 in\n"
		"Shard 3 length: 2 in\n");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("made-up table");
	TCase *text = suite_case(suite, "text");
	TCase *json = suite_case(suite, "json");
	TCase *panel = suite_case(suite, "panel");

	tcase_add_checked_fixture(text, setup, teardown);
	tcase_add_test(text, measures_are_columns_to_the_right);
	tcase_add_test(text, measures_are_in_the_units_of_the_plot);
	tcase_add_test(text, words_are_columns_to_the_left);
	tcase_add_test(text, a_last_column_may_be_made_by_hand);
	tcase_add_test(text, rows_that_are_alike_are_one);
	tcase_add_test(text, without_rows_there_is_no_table);

	tcase_add_checked_fixture(json, setup, teardown);
	tcase_add_test(json, measures_in_json_are_in_si_units_and_exact);
	tcase_add_test(json, words_in_json_are_those_for_programs);
	tcase_add_test(json, rows_within_a_row_are_nested_or_follow_it);

	tcase_add_checked_fixture(panel, setup, teardown);
	tcase_add_test(panel, measures_on_the_panel_are_lines_but_for_optional_ones);
	tcase_add_test(panel, titles_on_the_panel_are_one_heading);
	tcase_add_test(panel, rows_within_a_row_are_numbered_lines_of_the_panel);
	return suite;
}
