/* What the panel shows: figures, stars, what is under the cursor. */

#include "support/fencing.h"
#include "support/desk.h"
#include "report/words/figures.h"
#include "report/words/snag_words.h"
#include "support/plots.h"
#include "support/runner.h"
#include "support/shapes.h"
#include "support/stopper.h"

#include "editor/acts/acts.h"
#include "editor/here.h"
#include "editor/marks.h"
#include "takeoff/takeoff.h"

#include <ctype.h>
#include <stdlib.h>
#include <stdio.h>
#include <string.h>

#define ROWS (const char *[])

static void check(const struct desk *b, const char *page, const char *under, const char *label,
	const char *value)
{
	ck_assert_str_eq(desk_line(b, page, under, label)->value, value);
}

/* 2 by 3 of b, 1 by 3 of p, one S; all figures below by counting. */
static struct desk *garden(void)
{
	return desk_new(ROWS { "bbp.", "bbp.", "bbpS", NULL });
}

START_TEST(areas_name_each_entry_and_open_ground_and_add_up)
{
	struct desk *b = garden();

	check(b, "Areas", "", "In sq ft", "");
	check(b, "Areas", "", "b b", "6.0");
	check(b, "Areas", "", "p p", "3.0");
	check(b, "Areas", "", "S S", "1.0");
	check(b, "Areas", "", ". Open ground", "2.0");
	check(b, "Areas", "", "In all", "12.0");
	desk_free(b);
}
END_TEST

START_TEST(edges_name_pairs_that_meet_and_no_others)
{
	struct desk *b = garden();

	check(b, "Edges", "", "bed, path", "3 ft");
	check(b, "Edges", "", "bed, boundary", "7 ft");
	check(b, "Edges", "", "fixture, open", "1 ft");
	/* Also path- and fixture-boundary, path-fixture, path-open, open-boundary: eight. */
	ck_assert_uint_eq(desk_page(b, "Edges")->count, 8);
	desk_free(b);
}
END_TEST

START_TEST(beds_stand_under_their_names_with_size_area_and_round)
{
	struct desk *b = garden();

	check(b, "Beds", "B1 b b", "Over all", "2 ft x 3 ft");
	check(b, "Beds", "B1 b b", "Area", "6.0 sq ft");
	check(b, "Beds", "B1 b b", "All round", "10 ft");
	desk_free(b);
}
END_TEST

START_TEST(beds_alike_have_their_advice_once_each)
{
	struct desk *b = desk_new(ROWS { "bbbbb.bbbbb", "bbbbb.bbbbb", "bbbbb.bbbbb", NULL });
	const struct page *page = desk_page(b, "Beds");
	int cuts = 0;

	for (size_t i = 0; i < page->count; i++)
		cuts += strncmp(page->lines[i].label, "Cuts ", 5) == 0;
	ck_assert_int_eq(cuts, 2);
	desk_free(b);
}
END_TEST

/* The note that stands under a bed; NULL: none. */
static const char *advice_of(const struct desk *b, const char *bed)
{
	const struct page *page = desk_page(b, "Beds");

	for (size_t i = 0; i < page->count; i++)
		if (page->lines[i].kind == LINE_NOTE && strcmp(page->lines[i].under, bed) == 0)
			return page->lines[i].label;
	return NULL;
}

START_TEST(advice_names_sizes_and_cells_without_a_cut)
{
	struct desk *b = desk_new(ROWS { "bbbbb.bbbbb", "bbbbb.bbbbb", "bbbbb.bb...",
		"bbbbb.bb...", "......bb...", NULL });

	ck_assert_str_eq(advice_of(b, "B1 b b"),
		"Cuts 6 pieces; none at 4 ft x 4 ft or 6 ft x 4 ft, or with cells of 8 in.");
	ck_assert_str_eq(advice_of(b, "B2 b b"), "Cuts 12 pieces; none with cells of 1 ft 4 in.");
	desk_free(b);
}
END_TEST

/* Corners are cut out of 6 by 5 cells, so in size the beds do not differ; the last is the first,
 * flipped. */
START_TEST(advice_is_for_the_shape_of_a_bed)
{
	struct desk *b = desk_new(ROWS { "bbb....bbbb......bbb", "bbb....bbbb......bbb",
		"bbbbbb.bbbb...bbbbbb", "bbbbbb.bbbbbb.bbbbbb", "bbbbbb.bbbbbb.bbbbbb", NULL });

	ck_assert_str_eq(advice_of(b, "B1 b b"), "Cuts 12 pieces; none with cells of 8 in.");
	ck_assert_str_eq(advice_of(b, "B2 b b"), "Cuts 6 pieces; none with cells of 1 ft 4 in.");
	ck_assert_str_eq(advice_of(b, "B3 b b"), advice_of(b, "B1 b b"));
	desk_free(b);
}
END_TEST

/* What is as one that has advice has the same; of a fourth kind it is not looked for. */
START_TEST(three_kinds_of_beds_have_advice)
{
	static const char *const beds[] = { "B1 b b", "B2 b b", "B3 b b", "B4 b b", "B5 b b",
		"B6 b b" };
	static const char *const begins[] = { "Cuts 6 pieces; none at 2 ft x 2 ft or 4 ft x 2 ft",
		"Cuts 12 pieces; none at 2 ft x 2 ft or 2 ft x 4 ft",
		"Cuts 6 pieces; none at 4 ft x 2 ft or 6 ft x 2 ft", NULL,
		"Cuts 6 pieces; none at 2 ft x 2 ft or 4 ft x 2 ft", NULL };
	struct desk *b = desk_new(ROWS { "bbb.bbb.bbbbb.bbbb.bbb.bb", "bbb.bbb.bbbbb.bbbb.bbb.bb",
		"....bbb.......bbbb.....bb", NULL });

	for (int i = 0; i < 6; i++) {
		const char *advice = advice_of(b, beds[i]);

		if (begins[i])
			ck_assert_int_eq(strncmp(advice, begins[i], strlen(begins[i])), 0);
		else
			ck_assert_ptr_null(advice);
	}
	desk_free(b);
}
END_TEST

START_TEST(walls_and_fill_show_what_the_takeoff_says)
{
	struct desk *b = desk_new(ROWS { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL });
	const struct takeoff *t = &b->editor.takeoff;
	struct text value = TEXT_EMPTY;

	ck_assert_int_eq(t->cuttings.count, 1);
	text_print(&value, "%lld",
		(long long)(t->cuttings.list[0].bought + t->cuttings.list[0].breakage));
	check(b, "Walls", "Block 16 in x 8 in x 6 in", "To order", value.bytes);
	text_clear(&value);
	text_print(&value, "%lld", (long long)t->walls.list[0].whole_blocks);
	check(b, "Walls", "B1 b b", "Whole blocks", value.bytes);
	check(b, "Walls", "B1 b b", "Courses", "3");
	/* Three courses of 6 in, less 1 1/2 in of freeboard, 2 in of mulch and 2 in below ground;
	 * over base 2 in past the wall, 80 x 32 less 76 x 28 in, they are filled too. */
	check(b, "Fill", "B1 b b", "Soil depth", "1 ft 1/2 in");
	check(b, "Fill", "B1 b b", "Over the base", "3.0 sq ft");
	check(b, "Fill", "B1 b b", "There deeper by", "2 in");
	ck_assert_ptr_nonnull(desk_line(b, "Fill", "To order, all beds", "Topsoil"));
	text_fini(&value);
	desk_free(b);
}
END_TEST

/* 51 blocks at 2.50 are 127.50, in one drop at 80. */
START_TEST(costs_stand_day_by_day_and_what_has_no_price_apart)
{
	struct desk *b = desk_new(ROWS { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL });
	char path[4096];
	FILE *file;

	ck_assert_uint_eq(desk_page(b, "Costs")->count, 2);
	desk_line(b, "Costs", "", "No price book: > names one.");
	desk_line(b, "Costs", "", "Price of an item, in the list !, makes one.");
	snprintf(path, sizeof path, "%s/book.json", b->folder);
	file = fopen(path, "w");
	ck_assert_ptr_nonnull(file);
	fputs("{\"format\": \"parterre-prices\", \"version\": 1, \"currency\": \"USD\", "
		"\"suppliers\": "
		"[{\"name\": \"Yard\", \"delivery\": 80}], \"goods\": [{\"item\": \"block.wall\", "
		"\"block\": \"16 in x 8 in x 6 in\", \"packs\": [{\"pack\": \"piece\", \"size\": "
		"1, \"price\": 2.5, \"supplier\": \"Yard\"}]}]}", file);
	ck_assert_int_eq(fclose(file), 0);
	plot_set(editor_edit(&b->editor), 0, HEAD_PRICES, "\"book.json\"");
	editor_stroke(&b->editor);
	desk_refresh(b);
	check(b, "Costs", "In USD", "Goods", "127.50");
	check(b, "Costs", "In USD", "Delivery", "80.00");
	check(b, "Costs", "In USD", "Total of the priced", "207.50");
	check(b, "Costs", "Block and adhesive", "Wall block", "127.50");
	check(b, "Costs", "Block and adhesive", "51 pieces, Yard", "");
	check(b, "Costs", "Block and adhesive", "Delivery", "80.00");
	desk_line(b, "Costs", "Without a price", "Price of an item, in the list !, puts one in.");
	desk_line(b, "Costs", "Without a price", "Topsoil");
	desk_free(b);
}
END_TEST

/* Lengths and counts by arithmetic: 20 ft at 8 ft with a gate of 4 ft between posts of 3 1/2 in. */
START_TEST(a_fence_stands_under_its_name_with_what_it_takes)
{
	struct desk *b = garden();
	struct plot plot;
	struct arena arena = ARENA_EMPTY;
	struct takeoff takeoff;
	const struct saved unsaved = { .note = "Not saved." };

	fences_ground(&plot, 30, 20);
	fences_run(&plot, "1,5 25,5");
	fences_gate(&plot, "21,5 25,5");
	takeoff_compute(&takeoff, &arena, &plot, NULL);
	pages_renew(&b->editor.pages);
	for (int i = 0; i < pages_count(); i++)
		ck_assert(pages_make(&b->editor.pages, i, &takeoff, &plot, &unsaved));
	check(b, "Fence", "To order, all fences", "Fence post", "5");
	check(b, "Fence", "To order, all fences", "Fence panel", "3");
	check(b, "Fence", "Pickets", "Length", "24 ft");
	check(b, "Fence", "Pickets", "Posts", "5");
	check(b, "Fence", "Pickets", "Panels whole", "2");
	check(b, "Fence", "Pickets", "Panels narrower", "1");
	check(b, "Fence", "Pickets", "Panels cut up", "1");
	check(b, "Fence", "Pickets", "Gate 1 clear", "3 ft 8 1/2 in");
	check(b, "Fence", "Pickets", "Hole across", "10 1/2 in");
	check(b, "Fence", "Pickets", "Bags for one", "1.72");
	arena_clear(&arena);
	plot_fini(&plot);
	desk_free(b);
}
END_TEST

/* Round 4 by 2 ft: two pieces of 8 ft give two of 4 ft and two of 2 ft. */
START_TEST(edging_stands_with_its_length_runs_and_what_is_cut_up)
{
	struct desk *b = desk_new(ROWS { "pppp..", "pppp..", "......", NULL });

	check(b, "Stone", "Edging", "Length", "12 ft");
	check(b, "Stone", "Edging", "Straight runs", "4");
	check(b, "Stone", "Edging", "Pieces cut up", "2");
	desk_free(b);
}
END_TEST

START_TEST(what_is_dug_stands_by_purpose_by_kind_and_as_loads)
{
	/* 12 sq ft of path 6 in deep, 16 of lawn 4 3/4 in: 6 and 6.33 cu ft, of them 4.67 of sod;
	 * a quarter more loose, 15.42 cu ft, 1,370 lb at 2,400 lb/cu yd. */
	struct desk *b = desk_new(ROWS { "ppppllll", "ppppllll", "ppppllll", "....llll", NULL });

	check(b, "Dig", "In the ground", "Paths", "6.0 cu ft");
	check(b, "Dig", "In the ground", "Lawns", "6.3 cu ft");
	check(b, "Dig", "In the ground", "All", "12.3 cu ft");
	check(b, "Dig", "Dug, loose", "Sod", "5.8 cu ft");
	check(b, "Dig", "Dug, loose", "Subsoil", "9.6 cu ft");
	check(b, "Dig", "Dug, loose", "Topsoil reused", "0.0 cu ft");
	check(b, "Dig", "Spoil to haul away", "Loose", "15.4 cu ft");
	check(b, "Dig", "Spoil to haul away", "Weight", "1,370 lb");
	check(b, "Dig", "Spoil to haul away", "Barrows", "5");
	check(b, "Dig", "Spoil to haul away", "or pickup loads", "1");
	check(b, "Dig", "Spoil to haul away", "or truck loads", "1");
	check(b, "Dig", "Spoil to haul away", "Have services marked before any digging.", "");
	desk_free(b);
}
END_TEST

/* 8 x 4 ft, half of it path; 3 in are cut to the finished ground on the left, and 3 in filled on
 * the right, where the path is dug 6 in. */
START_TEST(levels_stand_with_cut_fill_and_falls)
{
	struct desk *b = desk_new(ROWS { "....pp..", "....pp..", NULL });

	plot_add_lines(editor_edit(&b->editor), "levels 4 ft\n  0 in, 0 in, 6 in\n"
		"  0 in, 0 in, 6 in\nfinish 0,0 3 in\nhouse \"Home\"\n  from 4,-9 to 8,0\n");
	editor_stroke(&b->editor);
	desk_refresh(b);
	check(b, "Levels", "", "Drops apart", "4 ft");
	check(b, "Levels", "", "Drops in the plan", "3");
	/* 8 cells of 9 ... 3 in less their slope of 1 1/2 in a foot */
	check(b, "Levels", "To finished ground, by cells", "Cut", "2.5 cu ft");
	check(b, "Levels", "To finished ground, by cells", "Fill", "0.5 cu ft");
	check(b, "Levels", "The same, by unit areas", "Cut", "3.0 cu ft");
	check(b, "Levels", "The same, by unit areas", "Fill", "1.0 cu ft");
	check(b, "Levels", "The same, by unit areas", "Nets apart", "0.0 cu ft");
	desk_line(b, "Levels", "Low ground, filled",
		"From 4 ft across, 0 in down: 0.5 cu ft, up to 2 1/4 in deep.");
	check(b, "Levels", "P1 p p", "Steepest, %", "0.00");
	check(b, "Levels", "Near a house, least fall away", "P1 p", "0.00 %");
	check(b, "Levels", "Near a house, least fall away", "open ground", "0.00 %");
	desk_free(b);
}
END_TEST

START_TEST(where_no_drops_are_measured_levels_say_so)
{
	struct desk *b = desk_new(ROWS { "....pp..", "....pp..", NULL });

	plot_add_lines(editor_edit(&b->editor), "finish 0,0 3 in\n");
	editor_stroke(&b->editor);
	desk_refresh(b);
	desk_line(b, "Levels", "", "No drops are measured: all is dug as on level ground.");
	desk_free(b);
}
END_TEST

/* 6 x 4 ft at ground level: four lines of six emitters; an inch on 24 sq ft is 14.96 gal. */
START_TEST(watering_stands_with_its_supply_zones_and_months)
{
	struct desk *b = desk_new(ROWS { "bbbbbb..", "bbbbbb..", "bbbbbb..", "bbbbbb..", NULL });

	ck_assert_str_eq(desk_page(b, "Watering")->lines[0].label,
		"No bed is watered by drip lines yet.");
	plot_set(editor_edit(&b->editor), 'b', BED_BUILD, "level");
	plot_set(editor_edit(&b->editor), 'b', BED_WATER, "drip");
	plot_set(editor_edit(&b->editor), 0, ALLOW_WATER_JULY, "2 in");
	editor_stroke(&b->editor);
	desk_refresh(b);
	check(b, "Watering", "", "Supply, assumed", "240 gal/h");
	check(b, "Watering", "", "Asked for, a week", "15.0 gal");
	desk_line(b, "Watering", "", "No tap is set: of the header only what lies in beds is "
		"counted.");
	check(b, "Watering", "To order", "Tube end cap", "4");
	check(b, "Watering", "Zone 1", "Flow", "14.4 gal/h");
	check(b, "Watering", "B1 b b", "Emitters", "24");
	check(b, "Watering", "In a week, all beds", "June", "15.4 gal, 64 min");
	check(b, "Watering", "In a week, all beds", "July", "30.2 gal, 126 min");
	desk_line(b, "Watering", "In a week, all beds", "New plants: water in by hand, then let "
		"the timer run 3 times a week, not 2, for two weeks, as many minutes each time.");
	desk_free(b);
}
END_TEST

START_TEST(watering_lists_no_months_where_none_asks_for_water)
{
	struct desk *b = desk_new(ROWS { "bbbb", "bbbb", NULL });

	plot_set(editor_edit(&b->editor), 'b', BED_BUILD, "level");
	plot_set(editor_edit(&b->editor), 'b', BED_WATER, "drip");
	plot_set(editor_edit(&b->editor), 0, ALLOW_WATER_WEEK, "0 in");
	editor_stroke(&b->editor);
	desk_refresh(b);
	desk_line(b, "Watering", "In a week, all beds", "No month asks for water: the timer does "
		"not run.");
	desk_line(b, "Watering", "In a week, all beds", "New plants: water in; then every second "
		"or third day for two weeks where it does not rain, all by hand.");
	for (size_t i = 0; i < desk_page(b, "Watering")->count; i++)
		for (int month = 0; month < MONTHS; month++)
			ck_assert_str_ne(desk_page(b, "Watering")->lines[i].label,
				word_label(&month_words[month]));
	desk_free(b);
}
END_TEST

START_TEST(planting_says_that_no_need_of_sun_is_checked_without_a_latitude)
{
	struct desk *b = desk_new(ROWS { "bbbb", "bbbb", NULL });

	plot_add_lines(editor_edit(&b->editor), "plant x \"Yew\"\n  sun full\n  at 1,1\n");
	editor_stroke(&b->editor);
	desk_refresh(b);
	desk_line(b, "Planting", "", "Not checked: whether plants have the sun they need. The plot "
		"tells no latitude.");
	desk_free(b);
}
END_TEST

START_TEST(an_empty_plan_has_a_sentence_on_each_page)
{
	struct desk *b = desk_new(ROWS { ".", NULL });

	ck_assert_str_eq(desk_page(b, "Beds")->lines[0].label, "No beds yet.");
	ck_assert_str_eq(desk_page(b, "Walls")->lines[0].label, "No raised beds yet.");
	ck_assert_str_eq(desk_page(b, "Fill")->lines[0].label, "Nothing to fill yet.");
	ck_assert_str_eq(desk_page(b, "Dig")->lines[0].label, "Nothing to dig yet.");
	ck_assert_str_eq(desk_page(b, "Levels")->lines[0].label,
		"No levels and no finished ground are told.");
	ck_assert_uint_eq(desk_page(b, "Levels")->count, 1);
	ck_assert_str_eq(desk_page(b, "Fence")->lines[0].label, "No fence yet.");
	ck_assert_str_eq(desk_page(b, "Snags")->lines[0].label, "None found.");
	ck_assert_uint_eq(desk_page(b, "Edges")->count, 1);
	desk_free(b);
}
END_TEST

START_TEST(snags_of_a_code_are_counted_and_the_first_twenty_told)
{
	struct desk *b = desk_new(ROWS { "b.....................................................",
		NULL });
	const struct page *page;

	b->editor.cursor = (struct place){ 0, 0 };
	b->editor.step = 12;
	desk_type(b, "=");
	desk_press(b, PRESS_RIGHT);
	desk_press(b, PRESS_RIGHT);
	desk_type(b, "|");
	page = desk_page(b, "Snags");
	check(b, "Snags", "", "Mirror broken", "25");
	ck_assert_str_eq(page->lines[page->count - 1].label, "Rule: The plot's own mirror.");
	ck_assert_str_eq(page->lines[page->count - 2].label, "and 5 more.");
	ck_assert_str_eq(page->lines[page->count - 3].label, "at 19 ft, 0 in: This cell and its "
		"images in the mirror are not all alike. Cure: change the plan, or Mirror on the "
		"card The plot itself.");
	desk_free(b);
}
END_TEST

START_TEST(each_snag_is_counted_and_few_are_all_told)
{
	struct desk *b = desk_new(ROWS { "bbb.bb", "bbb.bb", "b.....", "b.pp..", NULL });
	const struct snag_list *snags = &b->editor.takeoff.snags;
	size_t counted = 0, told = 0;
	const struct page *page;

	desk_refresh(b);
	page = desk_page(b, "Snags");
	for (size_t i = 0; i < page->count; i++) {
		const struct line *line = &page->lines[i];

		if (line->kind == LINE_FIGURE)
			counted += (size_t)atoi(line->value);
		else
			told += strncmp(line->label, "Rule: ", 6) != 0;
	}
	ck_assert_uint_gt(snags->count, 1);
	ck_assert_uint_eq(counted, snags->count);
	ck_assert_uint_eq(told, snags->count);
	desk_free(b);
}
END_TEST

START_TEST(figures_that_the_last_stroke_changed_have_a_star)
{
	struct desk *b = garden();

	ck_assert(!desk_line(b, "Areas", "", "b b")->is_changed);
	b->editor.cursor = (struct place){ 0, 0 };
	desk_type(b, "p ");
	ck_assert(desk_line(b, "Areas", "", "b b")->is_changed);
	ck_assert(desk_line(b, "Areas", "", "p p")->is_changed);
	ck_assert(!desk_line(b, "Areas", "", "S S")->is_changed);
	ck_assert(!desk_line(b, "Areas", "", "In all")->is_changed);
	desk_press(b, PRESS_RIGHT);
	ck_assert(desk_line(b, "Areas", "", "b b")->is_changed);
	desk_type(b, "S ");
	ck_assert(!desk_line(b, "Areas", "", "p p")->is_changed);
	ck_assert(desk_line(b, "Areas", "", "S S")->is_changed);
	desk_free(b);
}
END_TEST

START_TEST(a_figure_is_compared_with_its_own_under_the_same_heading)
{
	struct desk *b = desk_new(ROWS { "bb.b", "bb..", NULL });

	b->editor.cursor = (struct place){ 3, 1 };
	desk_type(b, " ");
	ck_assert(!desk_line(b, "Beds", "B1 b b", "Area")->is_changed);
	ck_assert(desk_line(b, "Beds", "B2 b b", "Area")->is_changed);
	desk_free(b);
}
END_TEST

/* ---- Long pages, and pages that are stopped -------------------------------------------------- */

static struct plot large;
static struct arena figures;
static struct takeoff counted;
static struct pages made;

/* 140 x 140 cells, each a bed. */
static void large_setup(void)
{
	shape_named("checkerboard")->draw(&large, 140);
	ck_assert(takeoff_compute(&counted, &figures, &large, NULL));
}

static void large_teardown(void)
{
	pages_fini(&made);
	arena_clear(&figures);
	plot_fini(&large);
}

static int page_of(const char *name)
{
	for (int i = 0; i < pages_count(); i++)
		if (strcmp(page_name(i), name) == 0)
			return i;
	ck_abort_msg("no page %s", name);
}

static int count_headings(const struct page *page)
{
	int count = 0;

	for (size_t i = 0; i < page->count; i++)
		count += page->lines[i].kind == LINE_HEADING;
	return count;
}

START_TEST(a_page_without_end_has_its_first_ten_thousand_rows_and_says_so)
{
	static const char more[] = "and 9,600 more. The takeoff written to a file has them all.";
	const struct page *page = &made.pages[page_of("Beds")];
	size_t at;

	ck_assert(pages_make(&made, page_of("Beds"), &counted, &large, NULL));
	ck_assert_int_eq(count_headings(page), PAGE_ROWS_MOST);
	at = page->count;
	while (at > 0 && strcmp(page->lines[at - 1].label, more) != 0)
		at--;
	ck_assert_uint_gt(at, 0);
	ck_assert(pages_make(&made, page_of("Snags"), &counted, &large, NULL));
	ck_assert_uint_lt(made.pages[page_of("Snags")].count, 200);
}
END_TEST

/* All asks of it would take long: those at the start, and some further on. */
START_TEST(a_page_that_is_stopped_is_not_there_until_it_is_made_again)
{
	static const char *const names[] = { "Beds", "Walls", "Fill", "Set-out", "Areas" };
	struct stopper stopper;

	pages_renew(&made);
	for (int i = 0; i < 5; i++) {
		int page = page_of(names[i]);
		int64_t asks;

		stopper_begin(&stopper, 0);
		ck_assert(pages_make(&made, page, &counted, &large, NULL));
		asks = stopper.asks;
		pages_renew(&made); /* so that there is a page to compare with */
		for (int64_t at = 1; at <= asks; at = at < 20 ? at + 1 : 2 * at) {
			stopper_begin(&stopper, at);
			ck_assert(!pages_make(&made, page, &counted, &large, NULL));
			ck_assert(!made.pages[page].is_made);
			ck_assert_uint_eq(made.pages[page].count, 0);
		}
		stopper_end();
		ck_assert(pages_make(&made, page, &counted, &large, NULL));
		for (size_t j = 0; j < made.pages[page].count; j++)
			ck_assert(!made.pages[page].lines[j].is_changed);
	}
}
END_TEST

START_TEST(a_page_is_compared_with_the_takeoff_before_and_none_earlier)
{
	int page = page_of("Areas");

	ck_assert(pages_make(&made, page, &counted, &large, NULL));
	pages_renew(&made);
	ck_assert(made.before[page].is_made);
	pages_renew(&made); /* nobody has asked for it between */
	ck_assert(!made.before[page].is_made);
	ck_assert(pages_make(&made, page, &counted, &large, NULL));
	ck_assert(!made.pages[page].lines[1].is_changed);
}
END_TEST

/* ---- Here ------------------------------------------------------------------------------------ */

#define HELD "\302\240" /* a no-break space: no line ends between a figure and its unit */

static void check_here(struct desk *b, int x, int y, const char *words)
{
	struct text out = TEXT_EMPTY;

	b->editor.cursor = (struct place){ x, y };
	here_words(&b->editor, &out);
	ck_assert_str_eq(out.bytes, words);
	text_fini(&out);
}

START_TEST(here_tells_region_size_area_and_place)
{
	struct desk *b = desk_new(ROWS { "pp.", "ppS", NULL });

	check_here(b, 1, 1, "1 ft across, 1 ft down\nP1 p p\n2 ft x 2 ft, "
		"4.0" HELD "sq" HELD "ft\n");
	check_here(b, 2, 1, "2 ft across, 1 ft down\nF1 S S\n1 ft x 1 ft, "
		"1.0" HELD "sq" HELD "ft\n");
	check_here(b, 2, 0, "2 ft across, 0 in down\n. open ground\n");
	desk_free(b);
}
END_TEST

START_TEST(here_tells_what_the_images_are_where_the_mirror_is_broken)
{
	struct desk *b = desk_new(ROWS { "p..l", "..p.", NULL });

	desk_type(b, "|-");
	check_here(b, 0, 0, "0 in across, 0 in down\nP1 p p\n1 ft x 1 ft, 1.0" HELD "sq" HELD "ft\n"
		"Fault, its images: l . .\n"
		"Snag: Less than 2 ft of clear width: no barrow gets through. "
		"Cure: change the plan.\n");
	desk_free(b);
}
END_TEST

/* The level axis is in the middle of the first row. */
START_TEST(here_tells_of_no_image_beyond_the_plan)
{
	struct desk *b = desk_new(ROWS { "....", "p..l", NULL });
	struct text out = TEXT_EMPTY;

	plot_set(editor_edit(&b->editor), 0, HEAD_MIRROR, "four-way");
	plot_set(editor_edit(&b->editor), 0, HEAD_AXIS, "4,1");
	editor_stroke(&b->editor);
	b->editor.cursor = (struct place){ 0, 1 };
	here_words(&b->editor, &out);
	ck_assert_msg(strstr(out.bytes, "Fault, its images: l\n") != NULL, "%s", out.bytes);
	text_fini(&out);
	desk_free(b);
}
END_TEST

START_TEST(here_tells_the_snag_of_its_first_cell)
{
	struct desk *b = desk_new(ROWS { "bb", "bb", NULL });
	struct arena words = ARENA_EMPTY;
	const struct report report = { .words = &words, .takeoff = &b->editor.takeoff };
	struct text out = TEXT_EMPTY;

	here_words(&b->editor, &out);
	ck_assert_uint_gt(b->editor.takeoff.snags.count, 0);
	ck_assert_ptr_nonnull(strstr(out.bytes,
		snag_sentence(&report, &b->editor.takeoff.snags.list[0])));
	text_fini(&out);
	arena_clear(&words);
	desk_free(b);
}
END_TEST

/* ---- Marks ----------------------------------------------------------------------------------- */

/* The marks of all cells, row by row. */
static void check_marks(struct desk *b, const char *const *rows)
{
	struct mirror mirror = mirror_of(b->editor.plot);

	for (int y = 0; rows[y]; y++)
		for (int x = 0; rows[y][x]; x++) {
			char sign = mark_sign(mark_at(&b->editor, &mirror, x, y)).plain;

			ck_assert_msg(sign == rows[y][x], "%d,%d is marked '%c', not '%c'", x, y,
				sign, rows[y][x]);
		}
}

START_TEST(the_axis_goes_through_a_cell_or_along_its_far_edge_and_the_cursor_has_images)
{
	struct desk *b = desk_new(ROWS { "......", "......", "......", NULL });

	desk_type(b, "|");
	check_marks(b, ROWS { "  |  i", "  |   ", "  |   ", NULL });
	desk_type(b, "-");
	check_marks(b, ROWS { "  |  i", "--|---", "i |  i", NULL });
	desk_type(b, "|");
	check_marks(b, ROWS { "      ", "------", "i     ", NULL });
	desk_type(b, "%");
	check_marks(b, ROWS { "      ", "  c   ", "     i", NULL });
	plot_set(editor_edit(&b->editor), 0, HEAD_AXIS, "5,2");
	check_marks(b, ROWS { "  c   ", "    i ", "      ", NULL });
	desk_type(b, "%");
	check_marks(b, ROWS { "      ", "      ", "      ", NULL });
	desk_free(b);
}
END_TEST

START_TEST(a_peg_goes_first_then_an_image_a_snag_a_fault_and_the_axis)
{
	struct desk *b = desk_new(ROWS { "bb.", "bbp", NULL });

	check_marks(b, ROWS { "s  ", "  s", NULL });
	desk_type(b, "|");
	check_marks(b, ROWS { "s|i", "x|s", NULL });
	desk_press(b, PRESS_ENTER);
	check_marks(b, ROWS { "o|i", "x|s", NULL });
	desk_press(b, PRESS_RIGHT);
	check_marks(b, ROWS { "o|x", "x|s", NULL });
	desk_press(b, PRESS_RIGHT);
	check_marks(b, ROWS { "o|x", "x|s", NULL });
	desk_free(b);

	b = desk_new(ROWS { "bb", "bb", NULL });
	plot_set(editor_edit(&b->editor), 0, HEAD_AXIS, "1,2");
	desk_type(b, "|");
	check_marks(b, ROWS { "s ", "| ", NULL });
	desk_free(b);
}
END_TEST

/* 24 in one plan and 25 in the other. */
START_TEST(faults_are_marked_while_they_are_few)
{
	static const char *const plans[] = {
		"pppppppppppppppppppppppp........................",
		"ppppppppppppppppppppppppp.........................",
	};

	for (int i = 0; i < 2; i++) {
		struct desk *b = desk_new(ROWS { plans[i], NULL });
		struct mirror mirror;

		plot_set(editor_edit(&b->editor), 0, HEAD_MIRROR, "left-right");
		editor_stroke(&b->editor);
		desk_refresh(b);
		mirror = mirror_of(b->editor.plot);
		ck_assert_int_eq(b->editor.faults, 24 + i);
		ck_assert_int_eq(mark_at(&b->editor, &mirror, 30, 0) == MARK_FAULT, i == 0);
		desk_free(b);
	}
}
END_TEST

START_TEST(what_is_marked_has_pegs_at_its_corners)
{
	struct desk *b = desk_new(ROWS { ".......", ".......", ".......", ".......", NULL });

	b->editor.peg = (struct place){ 3, 2 };
	b->editor.cursor = (struct place){ 0, 0 };
	b->editor.is_pegged = true;
	editor_mark(&b->editor);
	check_marks(b, ROWS { "o  o   ", "       ", "o  o   ", "       ", NULL });
	desk_free(b);
}
END_TEST

/* Axes alone look like the keys that turn them. */
START_TEST(no_mark_is_a_key_at_rest_but_the_axes)
{
	for (enum mark mark = MARK_NONE + 1; mark < MARKS; mark++) {
		struct sign sign = mark_sign(mark);

		ck_assert(sign.code && sign.plain);
		if (mark == MARK_UPRIGHT || mark == MARK_LEVEL)
			continue;
		ck_assert(sign.code >= 128 || !acts_find((int)sign.code));
		ck_assert_msg(!acts_find(sign.plain) || isalpha((unsigned char)sign.plain),
			"mark %d is the key %c", mark, sign.plain);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("pages");
	TCase *pages = suite_case(suite, "pages"), *here = suite_case(suite, "here");
	TCase *long_pages = suite_case(suite, "long");

	tcase_add_test(pages, areas_name_each_entry_and_open_ground_and_add_up);
	tcase_add_test(pages, edges_name_pairs_that_meet_and_no_others);
	tcase_add_test(pages, beds_stand_under_their_names_with_size_area_and_round);
	tcase_add_test(pages, beds_alike_have_their_advice_once_each);
	tcase_add_test(pages, advice_names_sizes_and_cells_without_a_cut);
	tcase_add_test(pages, advice_is_for_the_shape_of_a_bed);
	tcase_add_test(pages, three_kinds_of_beds_have_advice);
	tcase_add_test(pages, walls_and_fill_show_what_the_takeoff_says);
	tcase_add_test(pages, costs_stand_day_by_day_and_what_has_no_price_apart);
	tcase_add_test(pages, edging_stands_with_its_length_runs_and_what_is_cut_up);
	tcase_add_test(pages, what_is_dug_stands_by_purpose_by_kind_and_as_loads);
	tcase_add_test(pages, a_fence_stands_under_its_name_with_what_it_takes);
	tcase_add_test(pages, levels_stand_with_cut_fill_and_falls);
	tcase_add_test(pages, where_no_drops_are_measured_levels_say_so);
	tcase_add_test(pages, watering_stands_with_its_supply_zones_and_months);
	tcase_add_test(pages, watering_lists_no_months_where_none_asks_for_water);
	tcase_add_test(pages, planting_says_that_no_need_of_sun_is_checked_without_a_latitude);
	tcase_add_test(pages, an_empty_plan_has_a_sentence_on_each_page);
	tcase_add_test(pages, snags_of_a_code_are_counted_and_the_first_twenty_told);
	tcase_add_test(pages, each_snag_is_counted_and_few_are_all_told);
	tcase_add_test(pages, figures_that_the_last_stroke_changed_have_a_star);
	tcase_add_test(pages, a_figure_is_compared_with_its_own_under_the_same_heading);
	tcase_add_checked_fixture(long_pages, large_setup, large_teardown);
	tcase_add_test(long_pages,
		a_page_without_end_has_its_first_ten_thousand_rows_and_says_so);
	tcase_add_test(long_pages, a_page_that_is_stopped_is_not_there_until_it_is_made_again);
	tcase_add_test(long_pages, a_page_is_compared_with_the_takeoff_before_and_none_earlier);
	tcase_add_test(here, here_tells_region_size_area_and_place);
	tcase_add_test(here, here_tells_what_the_images_are_where_the_mirror_is_broken);
	tcase_add_test(here, here_tells_of_no_image_beyond_the_plan);
	tcase_add_test(here, here_tells_the_snag_of_its_first_cell);
	tcase_add_test(here,
		the_axis_goes_through_a_cell_or_along_its_far_edge_and_the_cursor_has_images);
	tcase_add_test(here, a_peg_goes_first_then_an_image_a_snag_a_fault_and_the_axis);
	tcase_add_test(here, faults_are_marked_while_they_are_few);
	tcase_add_test(here, what_is_marked_has_pegs_at_its_corners);
	tcase_add_test(here, no_mark_is_a_key_at_rest_but_the_axes);
	return suite;
}
