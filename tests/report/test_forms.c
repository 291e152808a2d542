/* Every form of a takeoff, of sample plots and of gardens at random, by its length and check sum:
 * what is printed changes only where somebody means it to.
 *
 * A row of the golden files says of which plot and form it is. Where rows differ, the forms
 * themselves are had with FORMS set to a folder: each is written there under the name of its row,
 * so that those before a change can be laid beside those after it. */
#include "base/hash.h"
#include "base/memory.h"
#include "plot/edit/levels_move.h"
#include "plot/format/format.h"
#include "report/compare/compare.h"
#include "report/csv/csv.h"
#include "report/json/json.h"
#include "report/json/json_snags.h"
#include "report/json/json_sun.h"
#include "report/panel/pages.h"
#include "report/svg/svg.h"
#include "report/text/print.h"
#include "support/changes.h"
#include "support/details.h"
#include "support/garden.h"
#include "support/golden.h"
#include "support/runner.h"
#include "support/shapes.h"

#include <inttypes.h>
#include <stdlib.h>
#include <string.h>

enum { SIDE = 20, SCATTERED = 10 };

static struct garden gardens[VERSIONS];
static struct arena arena, words;
static struct text rows, form;

static void setup(void)
{
	rows = form = TEXT_EMPTY;
}

static void teardown(void)
{
	for (int i = 0; i < VERSIONS; i++)
		garden_fini(&gardens[i]);
	arena_clear(&arena);
	arena_clear(&words);
	text_fini(&rows);
	text_fini(&form);
}

/* ---- Rows ------------------------------------------------------------------------------------ */

static void write_form(const char *of, const char *name)
{
	const char *folder = getenv("FORMS");
	char path[512];
	FILE *file;

	if (!folder)
		return;
	snprintf(path, sizeof path, "%s/%s %s", folder, of, name);
	file = fopen(path, "w");
	ck_assert_msg(file != NULL, "%s cannot be written", path);
	fwrite(form.bytes, 1, form.length, file);
	ck_assert_int_eq(fclose(file), 0);
}

/* The row of the form that was printed, which is dropped. */
static void add_row(const char *of, const char *name)
{
	write_form(of, name);
	text_print(&rows, "%s %s: %zu %016" PRIx64 "\n", of, name, form.length,
		hash_bytes(HASH_EMPTY, form.bytes, form.length));
	text_clear(&form);
}

static const struct garden *first(void)
{
	return &gardens[OLD];
}

/* ---- Forms ----------------------------------------------------------------------------------- */

static void add_lists(const char *of)
{
	struct text_sink sink = text_sink(&form);
	const struct garden *garden = first();

	report_json(&sink.sink, &garden->plot, &garden->takeoff);
	add_row(of, "json");
	report_csv(&sink.sink, &garden->plot, &garden->takeoff);
	add_row(of, "csv");
	report_text(&sink.sink, &garden->plot, &garden->takeoff, of,
		PARTS_ALL | 1u << PART_SETOUT);
	add_row(of, "text");
	report_snags_json(&sink.sink, &garden->plot, &garden->takeoff);
	add_row(of, "snags");
}

static void add_sun(const char *of)
{
	struct text_sink sink = text_sink(&form);
	const struct date days[] = { { 2026, 3, 21 }, { 2026, 12, 1 } };

	if (!sun_has_site(&first()->takeoff))
		return;
	report_sun_json(&sink.sink, &first()->plot, &first()->takeoff, days, 2);
	add_row(of, "sun");
}

/* All of its sheets and why there is no more, or why it cannot be drawn. */
static void add_drawing(const char *of, struct svg_asked asked)
{
	struct text_sink sink = text_sink(&form);
	const struct garden *garden = first();
	int sheets = 0;
	char name[80];

	snprintf(name, sizeof name, "svg %d %d %d %u %d", asked.paper, asked.turn, asked.scale,
		asked.with, asked.is_plain);
	if (svg_fits(&garden->plot, &garden->takeoff, &asked, &form))
		sheets = svg_sheets(&garden->plot, &garden->takeoff, &asked);
	for (asked.sheet = 1; asked.sheet <= sheets; asked.sheet++)
		report_svg(&sink.sink, &garden->plot, &garden->takeoff, of, &asked);
	if (sheets > 0)
		ck_assert(!svg_fits(&garden->plot, &garden->takeoff, &asked, &form));
	add_row(of, name);
}

static struct svg_asked asked_at_random(struct random *random)
{
	static const int scales[] = { 0, 0, 0, 30, 48, 100, 250 };

	return (struct svg_asked){ .paper = random_between(random, AS_FITS, PAPERS - 1),
		.turn = random_between(random, AS_FITS, PAPER_TURNS - 1),
		.scale = scales[random_below(random, (int)(sizeof scales / sizeof *scales))],
		.sheet = 1, .with = (unsigned)random_below(random, 8),
		.is_plain = random_below(random, 4) == 0 };
}

static void add_drawings(const char *of, struct random *random)
{
	struct svg_asked asked = SVG_AS_FITS;

	asked.with = DRAW_LEVELS | (sun_has_site(&first()->takeoff) ? DRAW_SUN : 0);
	add_drawing(of, asked);
	asked.paper = PAPER_A3;
	asked.with = DRAW_STRINGS;
	add_drawing(of, asked);
	add_drawing(of, asked_at_random(random));
}

static void add_page(const struct page *page)
{
	for (size_t i = 0; i < page->count; i++) {
		const struct line *line = &page->lines[i];

		text_print(&form, "%d %d,%d%s %s | %s | %s\n", (int)line->kind, line->at.x,
			line->at.y, line->is_changed ? " *" : "", line->under, line->label,
			line->value);
	}
}

static void make_pages(struct pages *pages, const struct garden *garden,
	const struct saved *saved)
{
	for (int i = 0; i < pages_count(); i++)
		ck_assert(pages_make(pages, i, &garden->takeoff, &garden->plot, saved));
}

/* Those of the first garden, then of the second, with what has changed. */
static void add_pages(const char *of)
{
	const struct compared counted = { &first()->plot, &first()->takeoff, of };
	const struct saved none = { NULL, "Invented." }, saved = { &counted, NULL };
	struct pages pages = { 0 };

	for (int version = 0; version < VERSIONS; version++) {
		make_pages(&pages, &gardens[version], version == OLD ? &none : &saved);
		for (int i = 0; i < pages_count(); i++)
			add_page(&pages.pages[i]);
		add_row(of, version == OLD ? "pages" : "pages changed");
		pages_renew(&pages);
	}
	pages_fini(&pages);
}

static void add_comparison(const char *of)
{
	struct text_sink sink = text_sink(&form);
	struct comparison comparison;

	comparison_make(&comparison, &arena, &words, (struct compared[]){
		{ &gardens[OLD].plot, &gardens[OLD].takeoff, "old.plot" },
		{ &gardens[NEW].plot, &gardens[NEW].takeoff, "new.plot" } });
	compare_text(&sink.sink, &comparison);
	add_row(of, "compared");
	compare_json(&sink.sink, &comparison);
	add_row(of, "compared json");
	arena_clear(&arena);
	arena_clear(&words);
}

static void take_book(struct garden *garden)
{
	garden_book(garden, plot_units(&garden->plot) == UNITS_METRIC ?
		"plots/prices-metric.json" : "plots/prices.json");
}

static void name_some(struct plot *plot, struct random *random)
{
	static const char *const names[] = { "Ash", "Long border", "\xc3\x89t\xc3\xa9",
		"Nook" };

	for (size_t i = 0; i < sizeof names / sizeof *names; i++)
		names_add(&plot->details.names, (struct place){
			random_below(random, plot->ground.columns),
			random_below(random, plot->ground.rows) }, memory_string(names[i]));
}

static void make_changed(struct random *random)
{
	struct text plot = TEXT_EMPTY;

	gardens[NEW] = (struct garden){ .arena = ARENA_EMPTY };
	format_write(&first()->plot, &plot);
	plot_from_text(&gardens[NEW].plot, plot.bytes);
	text_fini(&plot);
	for (int i = random_between(random, 1, 6); i > 0; i--)
		change_at_random(&gardens[NEW].plot, random);
	if (random_below(random, 6) == 0)
		plot_set(&gardens[NEW].plot, 0, HEAD_UNITS, "metric");
	if (random_below(random, 6) == 0)
		plot_set(&gardens[NEW].plot, 0, HEAD_CELL, "14 in");
	if (random_below(random, 3) == 0)
		name_some(&gardens[NEW].plot, random);
	if (first()->has_book)
		take_book(&gardens[NEW]);
	garden_count(&gardens[NEW]);
}

/* The first garden in every form, and compared with a second, which is that one changed. */
static void add_forms(const char *of, struct random *random)
{
	garden_count(&gardens[OLD]);
	add_lists(of);
	add_sun(of);
	add_drawings(of, random);
	make_changed(random);
	add_pages(of);
	add_comparison(of);
	for (int i = 0; i < VERSIONS; i++)
		garden_fini(&gardens[i]);
}

/* ---- Gardens --------------------------------------------------------------------------------- */

/* What people set, of letters that are in the legend. */
static const struct { char letter; enum attribute attribute; const char *value; } usual[] = {
	{ 'a', BED_BUILD, "level" }, { 'a', BED_WATER, "drip" }, { 'a', BED_REPLACE, "yes" },
	{ 'b', BED_BLOCK, "1 ft x 6 in x 4 in" }, { 'b', BED_COURSES, "5" },
	{ 'b', BED_WATER, "drip" }, { 'b', BED_INSIDE, "filled" },
	{ 'c', BED_CAP, "2 ft x 8 in x 2 in" }, { 'c', BED_EMBED, "3 in" },
	{ 'c', BED_MULCH, "0 in" }, { 'd', BED_BLOCK, "400 mm x 200 mm x 100 mm" },
	{ 'd', BED_CAP, "400 mm x 220 mm x 50 mm" }, { 'd', BED_LINER, "no" },
	{ 'p', PATH_EDGING, "yes" }, { 'p', PATH_STONE, "clean" }, { 'q', PATH_FABRIC, "no" },
	{ 'l', LAWN_COVER, "seed" }, { 'm', LAWN_COVER, "none" },
	{ 'S', FIXTURE_HEIGHT, "3 ft" }, { 'U', FIXTURE_DIAL, "yes" },
	{ 0, HEAD_UNITS, "metric" }, { 0, HEAD_CELL, "400 mm" }, { 0, HEAD_CELL, "18 in" },
	{ 0, HEAD_NORTH, "283.120917" }, { 0, HEAD_TITLE, "\"Garth\"" },
	{ 0, HEAD_MIRROR, "half-turn" },
	{ 0, ALLOW_SUBSOIL, "clay" }, { 0, ALLOW_FROST, "2 ft" }, { 0, ALLOW_SUPPLY, "60 gal/h" },
	{ 0, ALLOW_SUN_FULL, "6.123456" }, { 0, ALLOW_SUN_PART, "3.987654" },
	{ 0, HEAD_PRICES, "\"none.json\"" },
};

/* As gardens are drawn. */
static void draw(struct random *random)
{
	struct plot *plot = &gardens[OLD].plot;

	gardens[OLD] = (struct garden){ .arena = ARENA_EMPTY };
	plot_at_random(plot, random, SIDE, "abcdlmpqSU..");
	for (size_t i = 0; i < sizeof usual / sizeof *usual; i++)
		if (random_below(random, 3) == 0)
			plot_set(plot, usual[i].letter, usual[i].attribute, usual[i].value);
	if (random_below(random, 2))
		name_some(plot, random);
	for (int i = random_below(random, 3); i > 0; i--)
		fence_at_random(plot, random);
	plants_at_random(plot, random);
	for (int i = random_below(random, 3); i > 0; i--)
		around_at_random(plot, random);
	if (random_below(random, 2))
		block_set(&plot->details.head, HEAD_SITE, value_at_random(random, HEAD_SITE,
			&plot->ground));
	if (random_below(random, 2))
		take_book(&gardens[OLD]);
}

/* With anything that a plot may say. */
static void scatter(struct random *random)
{
	gardens[OLD] = (struct garden){ .arena = ARENA_EMPTY };
	whole_plot_at_random(&gardens[OLD].plot, random, SCATTERED);
	levels_cover(&gardens[OLD].plot.details.levels, &gardens[OLD].plot.ground,
		plot_cell(&gardens[OLD].plot));
}

static const struct {
	const char *golden;
	void (*make)(struct random *random);
	int count;
} kinds[] = { { "forms-drawn.txt", draw, 32 }, { "forms-scattered.txt", scatter, 18 } };
enum { KINDS = sizeof kinds / sizeof *kinds };

START_TEST(gardens_at_random_are_printed_as_they_were)
{
	for (int i = 0; i < kinds[_i].count; i++) {
		struct random random = { (uint64_t)i };
		char of[32];

		snprintf(of, sizeof of, "garden %d", i);
		kinds[_i].make(&random);
		add_forms(of, &random);
	}
	golden_check(kinds[_i].golden, rows.bytes);
}
END_TEST

START_TEST(sample_plots_are_printed_as_they_were)
{
	static const char *const samples[] = { "plots/court", "plots/elbow", "plots/growing-court",
		"plots/ring", "plots/rope-walk", "plots/slope", "plots/snags", "plots/well-yard",
		"tests/plots/around", "tests/plots/drawn", "tests/plots/falling",
		"tests/plots/figures", "tests/plots/gallery", "tests/plots/inches",
		"tests/plots/planted", "tests/plots/rounds", "tests/plots/sheets",
		"tests/plots/sun", "tests/plots/watered" };

	for (size_t i = 0; i < sizeof samples / sizeof *samples; i++) {
		struct random random = { i };
		char path[64];

		snprintf(path, sizeof path, "%s.plot", samples[i]);
		garden_file(&gardens[OLD], path);
		add_forms(strrchr(samples[i], '/') + 1, &random);
	}
	golden_check("forms-samples.txt", rows.bytes);
}
END_TEST

/* Beds of one cell, ground with nothing on it, and a bed that water cannot be led to. */
START_TEST(the_most_and_the_least_are_printed_as_they_were)
{
	struct random random = { 1 };

	gardens[OLD] = (struct garden){ .arena = ARENA_EMPTY };
	shape_checkerboard(&gardens[OLD].plot, 18);
	add_forms("checkerboard", &random);
	garden_rectangle(&gardens[OLD], OPEN_GROUND, 3, 5);
	details_add_entry(&gardens[OLD].plot.details, CLASS_PATH, 'p', memory_string("Sand"));
	add_forms("nothing", &random);
	garden_rows(&gardens[OLD], (const char *const[]){ "..........", ".SSSSS.bbb", ".SbbbS.bbb",
		".SbbbS.bbb", ".SSSSS....", NULL });
	plot_set(&gardens[OLD].plot, 'b', BED_BUILD, "level");
	plot_set(&gardens[OLD].plot, 'b', BED_WATER, "drip");
	plot_add_lines(&gardens[OLD].plot, "tap 0,0\n");
	add_forms("cut off", &random);
	golden_check("forms-extremes.txt", rows.bytes);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("forms");
	TCase *forms = suite_case(suite, "forms");

	tcase_add_checked_fixture(forms, setup, teardown);
	tcase_add_loop_test(forms, gardens_at_random_are_printed_as_they_were, 0, KINDS);
	tcase_add_test(forms, the_most_and_the_least_are_printed_as_they_were);
	tcase_add_test(forms, sample_plots_are_printed_as_they_were);
	return suite;
}
