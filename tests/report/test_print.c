#include "support/runner.h"
#include "support/garden.h"
#include "support/golden.h"
#include "support/lines.h"
#include "support/quantity.h"
#include "support/sample_gardens.h"
#include "report/text/print.h"
#include "report/words/first_line.h"

#include <ctype.h>
#include <locale.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static struct garden garden;
static struct text page;

static void print_parts(const char *name, unsigned parts)
{
	garden_count(&garden);
	text_clear(&page);
	garden_print(&garden, &page, name, parts);
}

static void print(const char *name)
{
	print_parts(name, PARTS_ALL);
}

/* All that is explained where parts are printed by themselves, the front apart. */
static void print_explained_parts(const char *name)
{
	print_parts(name, PARTS_ALL & ~(1u << PART_FRONT));
}

static void open_file(const char *name)
{
	char path[80];

	snprintf(path, sizeof path, "plots/%s.plot", name);
	garden_file(&garden, path);
	snprintf(path, sizeof path, "%s.plot", name);
	print(path);
}

static void setup(void)
{
	page = TEXT_EMPTY;
	/* For wcwidth, the reference for widths; the page itself goes by no locale. */
	ck_assert_ptr_nonnull(setlocale(LC_CTYPE, "C.UTF-8"));
}

static void teardown(void)
{
	text_fini(&page);
	garden_fini(&garden);
}

static bool shows(const char *words)
{
	return strstr(page.bytes, words) != NULL;
}

static const char *find(const char *words)
{
	const char *found = strstr(page.bytes, words);

	ck_assert_msg(found, "\"%s\" is not there", words);
	return found;
}

/* Where lines are broken and how far they are indented does not matter. */
static void join_lines(void)
{
	char *to = page.bytes;

	for (const char *c = page.bytes; *c; c++) {
		bool is_end = *c == '\n';

		*to++ = is_end ? ' ' : *c;
		if (is_end)
			c += strspn(c + 1, " ");
	}
	*to = '\0';
}

static int occurrences(const char *words)
{
	int count = 0;

	for (const char *at = page.bytes; (at = strstr(at, words)) != NULL; at++)
		count++;
	return count;
}

/* ---- Pages as a whole ------------------------------------------------------------------------ */

START_TEST(the_sample_plots_print_as_they_did)
{
	char golden[80];

	open_file(sample_gardens[_i]);
	snprintf(golden, sizeof golden, "%s.txt", sample_gardens[_i]);
	golden_check(golden, page.bytes);
}
END_TEST

START_TEST(no_line_of_a_sample_exceeds_80_columns_or_ends_in_a_blank)
{
	open_file(sample_gardens[_i]);
	lines_check(page.bytes, sample_gardens[_i]);
}
END_TEST

START_TEST(all_but_the_users_own_texts_is_ascii)
{
	open_file(sample_gardens[_i]);
	for (const char *c = page.bytes; *c; c++)
		ck_assert_msg((*c >= ' ' && *c <= '~') || *c == '\n', "%.20s", c);
}
END_TEST

START_TEST(the_first_line_marks_a_takeoff)
{
	open_file(sample_gardens[_i]);
	ck_assert_int_eq(strncmp(page.bytes, "parterre takeoff 1\n", 19), 0);
	ck_assert(report_is_takeoff(page.bytes, page.length));
}
END_TEST

START_TEST(two_runs_give_the_same_bytes)
{
	struct text first;

	open_file(sample_gardens[_i]);
	first = page;
	page = TEXT_EMPTY;
	garden_fini(&garden);
	open_file(sample_gardens[_i]);
	ck_assert_str_eq(first.bytes, page.bytes);
	text_fini(&first);
}
END_TEST

START_TEST(a_plot_of_open_ground_has_its_page_too)
{
	garden_rows(&garden, (const char *[]){ "..", NULL });
	print("empty.plot");
	lines_check(page.bytes, "open ground");
	find("Nothing: there is nothing to build, to fill or to lay.");
	find("\nSnags: none found.\n");
	ck_assert(!shows("Programme"));
	ck_assert(!shows("Dig"));
	ck_assert(!shows("Laying sheets"));
	ck_assert(!shows("Cutting"));
	ck_assert(!shows("Filling"));
	ck_assert(!shows("Assumed"));
}
END_TEST

/* ---- Names of any length --------------------------------------------------------------------- */

/* A text of so many characters, drawn from narrow, wide and combining ones and blanks. */
static char *random_text(struct random *random, int characters)
{
	static const char *const pieces[] = { "w", "\xC3\xA9", "\xE8\x8A\xB1", "e\xCC\x81", " ",
		"-",
		"\xF0\x9F\x8C\xB3", "\xE0\xA4\x95\xE0\xA4\xBF" };
	struct text text = TEXT_EMPTY;
	bool has_blanks = random_below(random, 2) == 0;

	text_add(&text, "x");
	for (int i = 1; i < characters; i++) {
		const char *piece = pieces[random_below(random, 8)];

		text_add(&text, *piece == ' ' && !has_blanks ? "m" : piece);
	}
	return text.bytes;
}

static void name_at_random(struct random *random)
{
	struct details *details = &garden.plot.details;

	for (size_t i = 0; i < details->legend_count; i++) {
		free(details->legend[i].name);
		details->legend[i].name = random_text(random, random_between(random, 1, NAME_MOST));
		notes_add(&details->legend[i].block.notes, random_text(random, 200));
	}
	block_set(&details->head, HEAD_TITLE,
		(struct value){ .set = true, .as.text = random_text(random, 120) });
	notes_add(&details->head.notes, random_text(random, NOTE_MOST));
	notes_add(&details->allow.notes, random_text(random, NOTE_MOST));
}

START_TEST(regions_with_names_are_listed_and_a_bed_has_its_name_beside_it)
{
	static const char *const rows[] = { "bb.", "...", "bb.", "ppp", NULL };

	garden_rows(&garden, rows);
	print("rows.plot");
	ck_assert(!shows("\nNames\n"));
	names_add(&garden.plot.details.names, (struct place){ 2, 3 }, memory_string("Long walk"));
	names_add(&garden.plot.details.names, (struct place){ 0, 2 }, memory_string("Sage"));
	names_add(&garden.plot.details.names, (struct place){ 1, 2 }, memory_string("Thyme"));
	print("rows.plot");
	find("\nNames\n-----\nRegion  Letter  Name\nB2      b       Sage\n"
		"P1      p       Long walk\n");
	find("\nAs B1: B2 Sage at 0 in, 2 ft.\n");
	ck_assert(!shows("Thyme"));
}
END_TEST

START_TEST(long_and_wide_names_stay_within_80_columns)
{
	static const char longest_mix[] =
		"wwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwww 1000, topsoil 0.001";

	for (int seed = 1; seed <= 60; seed++) {
		struct random random = { (uint64_t)seed };
		char what[24], *name = random_text(&random, 150);

		snprintf(what, sizeof what, "seed %d", seed);
		garden = (struct garden){ .arena = ARENA_EMPTY };
		plot_at_random(&garden.plot, &random, 30, "abbcd.pplS");
		name_at_random(&random);
		plot_set(&garden.plot, 'b', BED_MIX, longest_mix);
		plot_set(&garden.plot, 'c', BED_BUILD, "level");
		plot_set(&garden.plot, 'd', BED_CAP, "400.000001 mm x 123.456789 mm x 50.5 mm");
		if (seed % 2)
			plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
		plot_set(&garden.plot, 0, HEAD_CELL, seed % 3 ? "1 ft" : "119 63/64 in");
		print(name);
		lines_check(page.bytes, what);
		print_explained_parts(name);
		lines_check(page.bytes, what);
		free(name);
		if (seed < 60)
			garden_fini(&garden);
	}
}
END_TEST

START_TEST(a_file_name_that_is_no_text_is_made_one)
{
	garden_rectangle(&garden, 'b', 6, 6);
	print("evil\x1B[2J\n\xFF.plot");
	find("\nPlan     evil<1B>[2J<0A><FF>.plot: 6 ft x 6 ft, 6 x 6 cells of 1 ft\n");
	find("\nWalls ------------------------------------------------- "
		"evil<1B>[2J<0A><FF>.plot\n");
	lines_check(page.bytes, "file name");
}
END_TEST

/* ---- Figures --------------------------------------------------------------------------------- */

/* The words stand at *at and a quantity after them; *at is moved behind it. */
static void says_quantity(const char **at, const char *words, double expected)
{
	ck_assert_msg(strncmp(*at, words, strlen(words)) == 0, "\"%s\" is not next: %.60s", words,
		*at);
	*at += strlen(words);
	quantity_is(at, expected);
}

/* Nothing stands between: what there is none of is not said. */
START_TEST(sums_of_the_dig_are_the_figures_of_the_takeoff)
{
	open_file(sample_gardens[_i]);
	const struct earthwork *work = &garden.takeoff.earthwork;
	const struct { const char *words; double bank, loose; } kinds[] = {
		{ "sod ", work->bank.sod, work->loose.sod },
		{ "topsoil ", work->bank.topsoil, work->loose.topsoil },
		{ "subsoil ", work->bank.subsoil, work->loose.subsoil },
	};
	const char *at;

	join_lines();
	at = strstr(find("Dig and stone "), "In all ");
	ck_assert_ptr_nonnull(at);
	says_quantity(&at, "In all ", earth_sum(&work->bank));
	says_quantity(&at, " in the ground, loose ", earth_sum(&work->loose));
	ck_assert_int_eq(*at, ':');
	for (int i = 0; i < 3; i++) {
		if (kinds[i].loose <= 0)
			continue;
		at += 2; /* ": " or "; " */
		says_quantity(&at, kinds[i].words, kinds[i].bank);
		says_quantity(&at, ", loose ", kinds[i].loose);
	}
	if (work->backfill_loose > 0) {
		says_quantity(&at, ". Put back outside walls and tamped: ", work->backfill);
		says_quantity(&at, ", loose ", work->backfill_loose);
	}
	if (work->fill_loose > 0) {
		says_quantity(&at, ". Filled in low ground: ", work->fill - work->fill_short);
		says_quantity(&at, ", loose ", work->fill_loose);
	}
	if (work->reused > 0)
		says_quantity(&at, ". Topsoil reused: loose ", work->reused);
	says_quantity(&at, ". Spoil to haul away: loose ", work->spoil);
	ck_assert_int_eq(strncmp(at, ". The spoil weighs", 18), 0);
}
END_TEST

/* Paths of 11 sq ft, 6 in deep, and a wall; 12 in of topsoil under no sod. Half of what the bed is
 * filled with is topsoil: 32 x 32 in, 12 1/2 in deep, and 2 in more over 240 sq in of base; with a
 * fifth for settlement 15,936 cu in, of which half are 4.6 cu ft. */
START_TEST(what_is_dug_alike_is_told_once_and_reuse_where_it_goes)
{
	garden_rows(&garden, (const char *[]){ "pp..pp.....", "pp..pp.bbbb", ".......bbbb",
		"qqq....bbbb",
		".......bbbb", NULL });
	plot_set(&garden.plot, 0, ALLOW_SOD, "0 in");
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, "12 in");
	print("dug.plot");
	find("\nP1 and P2: path, each 4.0 sq ft, 6 in deep, 2.0 cu ft\n");
	find("\nP3: path, 3.0 sq ft, 6 in deep, 1.5 cu ft\n");
	join_lines();
	find(" Topsoil reused: loose 4.6 cu ft.");
	find(" (4.6 cu ft of it dug here)");
	print_explained_parts("dug.plot");
	ck_assert(!shows("No topsoil is counted"));
}
END_TEST

START_TEST(loads_name_what_each_vehicle_takes)
{
	garden_rectangle(&garden, 'p', 12, 6);
	print("path.plot");
	/* 72 sq ft 6 in deep are 36 cu ft, 45 loose, 4,000 lb at 2,400 lb/cu yd. */
	find("The spoil weighs about 4,000 lb: 14 barrows (6.0 cu ft or 300 lb),\n3 pickup loads "
		"(1,500 lb) or 1 truck load (10.00 cu yd or 20,000 lb).\n");
	ck_assert(!shows("No topsoil is counted"));
	print_explained_parts("path.plot");
	find("No topsoil is counted: dig a test hole");
}
END_TEST

START_TEST(of_stone_without_fabric_no_fabric_is_told)
{
	garden_rectangle(&garden, 'p', 8, 4);
	print("path.plot");
	find("\nFabric ");
	plot_set(&garden.plot, 'p', PATH_FABRIC, "no");
	print("path.plot");
	find(" Base stone ");
	ck_assert(!shows("\nFabric "));
}
END_TEST

/* 12 sq ft under 2 in of mulch. */
START_TEST(a_bed_that_nothing_is_dug_into_says_so)
{
	garden_rectangle(&garden, 'b', 4, 3);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_AMEND, "0 in");
	print("mulch.plot");
	find("\nB1: Nothing is dug in. Mulch 2 in deep, 2.0 cu ft.\n");
	plot_set(&garden.plot, 'b', BED_AMEND, "2 in");
	print("mulch.plot");
	ck_assert(!shows("Nothing is dug in"));
}
END_TEST

/* A bed in the open, and one with a frame of turf: see test_over_base.c, test_fill.c and
 * test_lawn.c for the figures. */
START_TEST(what_lies_over_bases_is_told_where_it_goes)
{
	garden_rows(&garden, (const char *[]){ "..........llllllllll", ".bbbbbbbb.lbbbbbbbbl",
		".bbbbbbbb.lbbbbbbbbl", ".bbbbbbbb.lbbbbbbbbl", ".bbbbbbbb.lbbbbbbbbl",
		"..........llllllllll", NULL });
	print_explained_parts("bases.plot");
	find("B1   b  1 ft, 1 ft    8 ft x 4 ft  16 in       2 in  17.8 sq ft  12 1/2 in\n");
	find("B2   b  11 ft, 1 ft   8 ft x 4 ft  15 in       3 in  17.8 sq ft  11 1/2 in\n");
	/* 15 sq ft of 4 in and 13 of 2 1/4. */
	find("\nL1    turf   28.0 sq ft     4 in  7.4 cu ft      8.6 cu ft\n");
	join_lines();
	find(" Put back outside walls and tamped: 0.08 cu yd, loose 0.11 cu yd.");
	find("What is dug outside a wall and has no path, turf or lawn soil over it is put back");
	/* Turf with 10 %, as on a small lawn. */
	find("To order in all: Lawn topsoil 8.6 cu ft (15 % settlement); Turf 30.8 sq ft (10 % "
		"trimming).");
	/* Twice 76 x 28 in. */
	find("29.6 sq ft of ground within beds is only loosened");
	find("B1: Soil 12 1/2 in deep, over 3.0 sq ft of base within the wall 2 in more, "
		"19.0 cu ft in place. Order 22.8 cu ft:");
	find("B2: Soil 11 1/2 in deep, over 3.0 sq ft of base within the wall 3 in more, "
		"17.8 cu ft in place. Order 21.3 cu ft:");
	find(" b (b): Embed below ground up to 3 in (by height");
	/* 18 2/3 ft and a lap. */
	find("1 roll of 4 ft x 50 ft, of which 0.34 is used:");
	find("Cut 2 of 19 ft 8 in x 20 1/2 in;");
}
END_TEST

/* 3 x 6 in and a cap of 2 in, 4 in of them in the ground; then the same without a cap. */
START_TEST(what_stands_above_the_ground_is_told_with_its_cap)
{
	open_file("rope-walk");
	find("  Sides              Above  In ground      Inside       Soil\n"
		"B1   b  6 ft, 6 ft    10 ft, 4 ft,       16 in       4 in  29.8 sq ft  ");
	garden_fini(&garden);
	garden_file(&garden, "plots/rope-walk.plot");
	plot_set(&garden.plot, 'b', BED_CAP, "none");
	print("rope-walk.plot");
	find("10 ft, 4 ft,       14 in       4 in ");
}
END_TEST

START_TEST(an_embed_that_is_the_same_everywhere_is_said_as_it_is)
{
	garden_rectangle(&garden, 'b', 8, 4);
	print("same.plot");
	find("  b (b): Embed below ground 2 in (by height");
	ck_assert(!shows("up to 2 in"));
	ck_assert(!shows("Put back"));
}
END_TEST

/* A hole two cells wide is, as its bed, across before it is down. */
START_TEST(one_hole_or_two_are_told_by_their_sides_and_more_are_counted)
{
	garden_rows(&garden, (const char *[]){ "bbbbbbbbb.bbb", "b.bb..bbb.b.b", "bbbbbbbbb.bbb",
		".............", "bbbbbbb.bbbbb", "b.b.b.b.b.b.b", "bbbbbbb.bbbbb", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	print("holes.plot");
	find("  9 ft x 3 ft; hole  ");
	find("\n                      1 ft x 1 ft; hole\n                      2 ft x 1 ft\nB2 ");
	find("  3 ft x 3 ft; hole  ");
	find("  7 ft x 3 ft; 3 holes  ");
	find("  5 ft x 3 ft; hole  ");
	ck_assert_int_eq(occurrences(" ft; hole"), 5);
}
END_TEST

/* 28 ft are 3 x 8 and 4 ft; what is sawn is 1/8 in short of its place. */
START_TEST(edging_is_whole_pieces_and_a_rest_that_is_sawn_short)
{
	garden_rectangle(&garden, 'p', 28, 3);
	plot_set(&garden.plot, 0, ALLOW_HELD, "left, right, bottom");
	print("edged.plot");
	join_lines();
	find(": 28 ft in 1 run: 1 of 28 ft: 3 pieces and 48 in, 15 spikes. ");
	find(", 15 spikes. 15 spikes: at the ends of a run and no more than 24 in apart.");
	find("4 pieces of 8 ft, 3 laid whole, 1 cut up, each sawn 1/8 in shorter than its "
		"place, a saw cut taking 1/8 in: 1 into 1 of 47 7/8 in.");
}
END_TEST

/* Pieces of 8 ft, of which runs of 5 ft take one each, sawn. */
START_TEST(edging_of_which_nothing_is_laid_whole_is_all_cut_up)
{
	garden_rows(&garden, (const char *[]){ "ppppp", ".....", "ppppp", NULL });
	plot_set(&garden.plot, 0, ALLOW_HELD, "left, right, top, bottom");
	print("edged.plot");
	join_lines();
	find("2 pieces of 8 ft, all cut up, each sawn 1/8 in shorter than its place, a saw cut "
		"taking 1/8 in: 2 into 1 of 59 7/8 in.");
}
END_TEST

/* 0.5 mm would be rounded up: no piece is longer than its place less the tolerance. */
START_TEST(lengths_to_saw_are_rounded_down)
{
	const struct report metric = { .units = UNITS_METRIC };
	const struct report imperial_report = { .units = UNITS_IMPERIAL };

	ck_assert_int_eq(saw_length(&metric, 112 * NM_PER_MM + NM_PER_MM / 2, 3 * NM_PER_MM),
		109 * NM_PER_MM);
	ck_assert_int_eq(saw_length(&metric, 112 * NM_PER_MM, 3 * NM_PER_MM), 109 * NM_PER_MM);
	/* Half a place at least. */
	ck_assert_int_eq(saw_length(&metric, 4 * NM_PER_MM, 3 * NM_PER_MM), 2 * NM_PER_MM);
	ck_assert_int_eq(saw_length(&imperial_report, 4 * NM_PER_INCH + NM_PER_64TH * 3, 0),
		4 * NM_PER_INCH);
	ck_assert_int_eq(saw_length(&imperial_report, 4 * NM_PER_INCH, NM_PER_INCH / 8),
		NM_PER_INCH * 31 / 8);
	garden_rectangle(&garden, 'p', 1, 1);
}
END_TEST

START_TEST(cut_lists_are_the_figures_of_the_takeoff)
{
	open_file(sample_gardens[_i]);
	const char *at = page.bytes;

	for (int i = 0; i < garden.takeoff.cuttings.count; i++) {
		const struct cutting *cutting = &garden.takeoff.cuttings.list[i];

		at = strstr(at, "Bought ");
		ck_assert_ptr_nonnull(at);
		at += strlen("Bought ");
		quantity_is(&at, (double)cutting->bought);
		if (cutting->cut_blocks == 0) {
			ck_assert_int_eq(strncmp(at, " blocks, none cut up; ", 22), 0);
			continue;
		}
		at = strstr(at, ": ") + 1;
		quantity_is(&at, (double)cutting->whole);
		at = strstr(at, ", ") + 1;
		quantity_is(&at, (double)cutting->cut_blocks);
	}
	ck_assert_ptr_null(strstr(at, "Bought "));
}
END_TEST

START_TEST(areas_are_the_figures_of_the_takeoff)
{
	open_file(sample_gardens[_i]);
	for (int i = 0; i < garden.takeoff.areas.count; i++) {
		const struct area_row *area = &garden.takeoff.areas.list[i];
		const char *name = area->entry ? area->entry->name : "Open ground, ";
		const char *at = strstr(find("\n   Ground "), name) + strlen(name);

		if (!area->entry)
			at += strcspn(at, "0123456789") - 1;
		quantity_is(&at, (double)area->cells);
		quantity_is(&at, area->area);
	}
}
END_TEST

/* ---- What is said ---------------------------------------------------------------------------- */

START_TEST(beds_laid_alike_share_one_sheet)
{
	garden_rows(&garden, (const char *[]){
		"bbbbb.bbbbb.bbbbbb.ccccc", "bbbbb.bbbbb.bbbbbb.ccccc", "bbbbb.bbbbb.bbbbbb.ccccc",
		"bbbbb.bbbbb.bbbbbb.ccccc", NULL });
	plot_set(&garden.plot, 'c', BED_COURSES, "4");
	print("alike.plot");
	find("\nB1 and B2: 2 beds, alike piece for piece\n");
	find("\nB3\n");
	find("\nB4\n");
	ck_assert_int_eq(occurrences("  Side 1 "), 3);
}
END_TEST

START_TEST(images_of_a_bed_are_named_on_its_sheet_with_how_they_are_turned)
{
	garden_rows(&garden, (const char *[]){
		"bbbbbbbbb.bbbbbbbbb.bbb..", "bbbbbbbbb.bbbbbbbbb.bbb..",
		"bbbbbbbbb.bbbbbbbbb.bbb..", "bbbbb.........bbbbb.bbb..",
		"bbbbb.........bbbbb.bbbbb", "....................bbbbb",
		"bbbbb...............bbbbb", "bbbbb...............bbbbb",
		"bbbbbbbbb...........bbbbb", "bbbbbbbbb................",
		"bbbbbbbbb................", NULL });
	print("images.plot");
	find("\nB1\n"
		"  B2: B1, left for right.\n"
		"  B4: B1, top for bottom.\n"
		"  B3: B1, turned a quarter to the left.\n"
		"  3 courses of block");
	find("One bed takes");
	ck_assert_int_eq(occurrences("  Side 1 "), 1);
	print_explained_parts("images.plot");
	find("turned or seen in a mirror as it says.");
}
END_TEST

START_TEST(beds_of_one_laying_but_another_stone_have_sheets_of_their_own)
{
	garden_rows(&garden, (const char *[]){
		"bbbbb.ccccc", "bbbbb.ccccc", "bbbbb.ccccc", "bbbbb.ccccc", NULL });
	plot_set(&garden.plot, 'c', BED_DENSITY, "100 lb/cu ft");
	print("alike.plot");
	ck_assert_int_eq(occurrences("  Side 1 "), 2);
}
END_TEST

START_TEST(a_bed_that_is_not_laid_out_says_so_and_totals_are_marked)
{
	open_file("snags");
	find("INCOMPLETE  2 beds are not laid out, 1 bed has no cap laid out");
	find("\nShopping (INCOMPLETE) -");
	find("\nProgramme (INCOMPLETE) -");
	find("\nDig and stone (INCOMPLETE) -");
	find("\nWalls (INCOMPLETE) -");
	find("\nFilling the beds (INCOMPLETE) -");
	/* Nothing of these rests on a wall. */
	find("\nLawn -");
	find("\nAreas and edges -");
	find("\nAssumed -");
	find("B1: not laid out, about 44 blocks, in no total.");
}
END_TEST

START_TEST(a_cap_that_is_not_laid_out_leaves_the_filling_complete)
{
	garden_rectangle(&garden, 'b', 4, 4);
	plot_set(&garden.plot, 'b', BED_CAP, "3 ft x 3 ft x 2 in");
	print("cap.plot");
	find("INCOMPLETE  1 bed has no cap laid out");
	find("\nShopping (INCOMPLETE) -");
	find("\nWalls (INCOMPLETE) -");
	find("\nDig and stone -");
	find("\nFilling the beds -");
}
END_TEST

START_TEST(a_complete_takeoff_says_nothing_of_incomplete)
{
	open_file("rope-walk");
	ck_assert(!shows("INCOMPLETE"));
}
END_TEST

/* A paragraph of what is assumed on one line, without its indent. */
static void join_paragraphs(void)
{
	char *to = page.bytes;

	for (const char *c = page.bytes; *c; c++) {
		bool is_end = *c == '\n';

		*to++ = is_end && strncmp(c + 1, "    ", 4) == 0 ? ' ' : *c;
		if (is_end)
			c += strspn(c + 1, " ");
	}
	*to = '\0';
}

/* How many values of the block the list from here up to there has: each has its label behind a
 * heading, a semicolon or the end of a line. */
static int values_of(enum block_kind kind, const char *from, const char *to)
{
	int count = 0;

	for (enum attribute a = block_first(kind); a <= block_last(kind); a++) {
		const char *label = attribute_row(a)->label;
		size_t length = strlen(label);

		for (const char *at = from; (at = strstr(at, label)) && at < to; at += length)
			count += at[length] == ' ' && (at[-1] == '\n' ||
				strncmp(at - 2, "; ", 2) == 0 || strncmp(at - 2, ": ", 2) == 0);
	}
	return count;
}

static int values_between(const char *from, const char *to)
{
	return values_of(BLOCK_ALLOW, from, to) + values_of(BLOCK_BED, from, to);
}

START_TEST(every_default_in_force_is_told_from_what_is_set)
{
	const char *set, *most, *usual;

	garden_rectangle(&garden, 'b', 6, 6);
	plot_set(&garden.plot, 'b', BED_COURSES, "2");
	plot_set(&garden.plot, 0, ALLOW_KERF, "1/4 in");
	print_parts("set.plot", 1u << PART_ASSUMED);
	join_paragraphs();
	set = find("\nSet in the plot or the price book:\nSaw kerf 1/4 in.\nb (b): Courses 2.\n");
	most = find("\nUsual values that matter most, to check (common practice, no published "
		"source):\n");
	usual = find("\nAll else as usual: common practice, no published source, unless one is "
		"named.\n");
	ck_assert(set < most && most < usual);
	ck_assert(strstr(most, "\nb (b): Embed below ground 2 in (by height, paths and turf): walls"
		", dig.\n") < usual);
	ck_assert_ptr_nonnull(strstr(usual, "\nCutting tolerance 1/8 in; "));
	ck_assert_ptr_nonnull(strstr(usual, "; Wall from its footing 4 ft (International Code "));
	/* Stone, fabric and liner are needed, edging, lawn and fence not. */
	ck_assert_int_eq(values_between(set, most), 2);
	ck_assert_int_eq(values_between(most, usual), 6 + 2);
	ck_assert_int_eq(values_between(usual, usual + strlen(usual)), 51 + 14 - 8);
}
END_TEST

START_TEST(values_that_the_kind_of_bed_does_not_use_are_left_out)
{
	garden_rectangle(&garden, 'b', 6, 6);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	print_parts("level.plot", 1u << PART_ASSUMED);
	find("Amendment dug in");
	ck_assert(!shows("Courses"));
	ck_assert(!shows("Left free at the top"));
	ck_assert(!shows("Blocks are square-ended"));
}
END_TEST

/* In full once, before all that is measured out. */
START_TEST(cautions_stand_at_the_front)
{
	open_file("court");
	const char *start = find("\nBefore you start: "), *shopping = find("\nShopping -");
	static const char *const once[] = { "have services marked", "silica dust: saw wet",
		"public lines only", "burns skin and eyes", "test it for lead" };

	find("measure on site before buying");
	for (size_t i = 0; i < sizeof once / sizeof *once; i++) {
		const char *found = find(once[i]);

		ck_assert(start < found && found < shopping);
		ck_assert_ptr_null(strstr(found + 1, once[i]));
	}
	print_explained_parts("court.plot");
	find(" as laid, face plus joint: measure one.");
}
END_TEST

/* 16 x 8 x 6 in at 135 lb/cu ft weigh 60 lb; 12 x 4 x 4 in weigh 15 lb. */
START_TEST(heavy_blocks_ask_for_two_people)
{
	open_file("rope-walk");
	find("block 16 in x 8 in x\n  6 in 60.0 lb.");
	garden_fini(&garden);
	open_file("court");
	ck_assert(!shows("in 15.0 lb"));
}
END_TEST

/* The rope walk saws blocks and caps alike, dry laid. */
START_TEST(how_blocks_are_sawn_is_said_once_until_it_changes)
{
	open_file("rope-walk");
	ck_assert_int_eq(garden.takeoff.cuttings.count, 2);
	ck_assert_int_eq(occurrences("\n  Each piece is sawn 1/8 in shorter than its place; "), 1);
	ck_assert(find("\n  Each piece is") < find("\n  Blocks  Saw each into"));
	plot_set(&garden.plot, 'b', BED_JOINT, "1/4 in");
	print("rope-walk.plot");
	find("\n  Each piece is sawn 1/4 in shorter than its place; ");
	find("in of stone.");
}
END_TEST

START_TEST(no_saw_is_warned_of_where_nothing_is_cut)
{
	open_file("ring");
	find("Bought 64 blocks, none cut up; 864 kg. On top, to spare: 5.");
	ck_assert(!shows("Sawing block"));
}
END_TEST

START_TEST(the_first_twenty_snags_of_a_code_are_printed_and_the_rest_counted)
{
	open_file("snags");
	const char *code = find("Mirror broken, 110 places."),
		*end = strstr(code, "  and 90 more\n");
	int places = 0;

	ck_assert_ptr_nonnull(end);
	for (const char *c = strchr(code, '\n'); c < end; c++)
		places += *c == ';';
	ck_assert_int_eq(places + 1, 20);
}
END_TEST

START_TEST(twenty_snags_of_a_code_are_all_printed)
{
	static const char *const rows[] = { "b.b.b.b.b.b.b.b.b.b.", "....................",
		"b.b.b.b.b.b.b.b.b.b.", NULL };

	garden_rows(&garden, rows);
	print("twenty.plot");
	find("Wall narrow, 20 places.");
	find("B20 at 18 ft, 2 ft: Too narrow");
	ck_assert(!shows("  and "));
	find("B19 and B20: not laid out, about 3 blocks each, in no total.");
}
END_TEST

START_TEST(snags_name_hole_and_side_from_one)
{
	open_file("snags");
	find("B5 at 5 ft, 9 ft side 2; B5 at 6 ft, 10 ft side 3: A side of 1 ft is too short");
}
END_TEST

START_TEST(saw_lengths_are_places_less_the_play)
{
	open_file("rope-walk");
	find("     Pieces  Place     Saw to  Goes to\n"
		"  a      12  12 in  11 7/8 in  each of B1 and 3 like it: 2 each on side 3 odd,\n"
		"                               1 each on side 3 even\n"
		"  b      12   4 in   3 7/8 in  each of B1 and 3 like it: 2 each on side 5 odd,\n"
		"                               1 each on side 5 even\n"
		"  Blocks  Saw each into\n");
	find("      12  1 of 11 7/8 in + 1 of 3 7/8 in\n");
}
END_TEST

/* Whether a number of inches is shown: "1.31 m3 in place" is none. */
static bool shows_inches(void)
{
	for (const char *in = page.bytes; (in = strstr(in, " in")); in++) {
		const char *number = in;

		while (number > page.bytes && strchr("0123456789/.", number[-1]))
			number--;
		if (!isalpha((unsigned char)in[3]) && number < in && number[-1] == ' ')
			return true;
	}
	return false;
}

START_TEST(a_plot_shows_its_own_units)
{
	open_file("court");
	ck_assert(shows_inches());
	garden_fini(&garden);
	open_file("elbow");
	find("400 mm x 200 mm x 150 mm");
	/* Behind it the sources of defaults speak their own units. */
	*strstr(page.bytes, "\nAssumed -") = '\0';
	ck_assert(!shows(" ft"));
	ck_assert(!shows_inches());
	ck_assert(!shows(" lb"));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print");
	TCase *pages = suite_case(suite, "pages");
	TCase *wide = suite_case(suite, "wide");
	TCase *figures = suite_case(suite, "figures");
	TCase *words = suite_case(suite, "words");

	tcase_add_checked_fixture(pages, setup, teardown);
	tcase_add_loop_test(pages, the_sample_plots_print_as_they_did, 0, SAMPLE_GARDENS);
	tcase_add_loop_test(pages, no_line_of_a_sample_exceeds_80_columns_or_ends_in_a_blank, 0,
		SAMPLE_GARDENS);
	tcase_add_loop_test(pages, all_but_the_users_own_texts_is_ascii, 0, SAMPLE_GARDENS);
	tcase_add_loop_test(pages, the_first_line_marks_a_takeoff, 0, SAMPLE_GARDENS);
	tcase_add_loop_test(pages, two_runs_give_the_same_bytes, 0, SAMPLE_GARDENS);
	tcase_add_test(pages, a_plot_of_open_ground_has_its_page_too);

	tcase_add_checked_fixture(wide, setup, teardown);
	tcase_add_test(wide, regions_with_names_are_listed_and_a_bed_has_its_name_beside_it);
	tcase_add_test(wide, long_and_wide_names_stay_within_80_columns);
	tcase_add_test(wide, a_file_name_that_is_no_text_is_made_one);

	tcase_add_checked_fixture(figures, setup, teardown);
	tcase_add_loop_test(figures, sums_of_the_dig_are_the_figures_of_the_takeoff, 0,
		SAMPLE_GARDENS);
	tcase_add_test(figures, what_is_dug_alike_is_told_once_and_reuse_where_it_goes);
	tcase_add_test(figures, loads_name_what_each_vehicle_takes);
	tcase_add_test(figures, of_stone_without_fabric_no_fabric_is_told);
	tcase_add_test(figures, a_bed_that_nothing_is_dug_into_says_so);
	tcase_add_test(figures, what_lies_over_bases_is_told_where_it_goes);
	tcase_add_test(figures, what_stands_above_the_ground_is_told_with_its_cap);
	tcase_add_test(figures, an_embed_that_is_the_same_everywhere_is_said_as_it_is);
	tcase_add_test(figures, one_hole_or_two_are_told_by_their_sides_and_more_are_counted);
	tcase_add_test(figures, edging_is_whole_pieces_and_a_rest_that_is_sawn_short);
	tcase_add_test(figures, edging_of_which_nothing_is_laid_whole_is_all_cut_up);
	tcase_add_test(figures, lengths_to_saw_are_rounded_down);
	tcase_add_loop_test(figures, cut_lists_are_the_figures_of_the_takeoff, 0, SAMPLE_GARDENS);
	tcase_add_loop_test(figures, areas_are_the_figures_of_the_takeoff, 0, SAMPLE_GARDENS);

	tcase_add_checked_fixture(words, setup, teardown);
	tcase_add_test(words, beds_laid_alike_share_one_sheet);
	tcase_add_test(words, images_of_a_bed_are_named_on_its_sheet_with_how_they_are_turned);
	tcase_add_test(words, beds_of_one_laying_but_another_stone_have_sheets_of_their_own);
	tcase_add_test(words, a_bed_that_is_not_laid_out_says_so_and_totals_are_marked);
	tcase_add_test(words, a_cap_that_is_not_laid_out_leaves_the_filling_complete);
	tcase_add_test(words, a_complete_takeoff_says_nothing_of_incomplete);
	tcase_add_test(words, every_default_in_force_is_told_from_what_is_set);
	tcase_add_test(words, values_that_the_kind_of_bed_does_not_use_are_left_out);
	tcase_add_test(words, cautions_stand_at_the_front);
	tcase_add_test(words, heavy_blocks_ask_for_two_people);
	tcase_add_test(words, how_blocks_are_sawn_is_said_once_until_it_changes);
	tcase_add_test(words, no_saw_is_warned_of_where_nothing_is_cut);
	tcase_add_test(words, the_first_twenty_snags_of_a_code_are_printed_and_the_rest_counted);
	tcase_add_test(words, twenty_snags_of_a_code_are_all_printed);
	tcase_add_test(words, snags_name_hole_and_side_from_one);
	tcase_add_test(words, saw_lengths_are_places_less_the_play);
	tcase_add_test(words, a_plot_shows_its_own_units);
	return suite;
}
