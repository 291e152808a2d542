#include "support/runner.h"
#include "support/garden.h"
#include "takeoff/ground/fill.h"
#include "takeoff/takeoff.h"

#include <math.h>
#include <string.h>

enum { PLOTS = 150, SIDE = 24 };

static const double EXACT = 1e-9;

static struct garden garden;
static int seed; /* for messages */

static void teardown(void)
{
	garden_fini(&garden);
}

/* ---- Plots at random ------------------------------------------------------------------------- */

static void set_one_of(struct random *random, char letter, enum attribute attribute,
	const char *const *values)
{
	int count = 0;

	while (values[count])
		count++;
	int chosen = random_below(random, count + 1);

	if (chosen < count)
		plot_set(&garden.plot, letter, attribute, values[chosen]);
}

static void set_bed_at_random(struct random *random, char letter)
{
	static const char *const builds[] = { "raised", "raised", "level", NULL };
	static const char *const blocks[] = { "1 ft x 6 in x 4 in", "8 in x 4 in x 4 in",
		"400 mm x 200 mm x 150 mm", "11 5/8 in x 3 5/8 in x 5 in", NULL };
	static const char *const caps[] = { "none", "1 ft x 6 in x 2 in", "14 in x 9 in x 2 in",
		NULL };
	static const char *const courses[] = { "1", "2", "5", "13", NULL };
	static const char *const insides[] = { "undug", "filled", "base", NULL };
	static const char *const mixes[] = { "topsoil 1", "topsoil 5, compost 4, sharp-sand 1",
		"loam 0.333, grit 0.667", NULL };
	static const char *const depths[] = { "0 in", "1 in", "6 in", "1 ft", NULL };
	static const char *const words[] = { "no", "yes", NULL };

	set_one_of(random, letter, BED_BUILD, builds);
	set_one_of(random, letter, BED_BLOCK, blocks);
	set_one_of(random, letter, BED_CAP, caps);
	set_one_of(random, letter, BED_COURSES, courses);
	set_one_of(random, letter, BED_INSIDE, insides);
	set_one_of(random, letter, BED_MIX, mixes);
	set_one_of(random, letter, BED_MULCH, depths);
	set_one_of(random, letter, BED_FREEBOARD, depths);
	set_one_of(random, letter, BED_AMEND, depths);
	set_one_of(random, letter, BED_REPLACE, words);
}

static void random_garden(void)
{
	static const char *const percents[] = { "0 %", "3.5 %", "100 %", NULL };
	struct random random = { (uint64_t)seed };

	garden = (struct garden){ .arena = ARENA_EMPTY };
	plot_at_random(&garden.plot, &random, SIDE, "aabbc.pplS");
	for (const char *letter = "abc"; *letter; letter++)
		if (plot_entry(&garden.plot, *letter))
			set_bed_at_random(&random, *letter);
	set_one_of(&random, 0, ALLOW_BREAKAGE, percents);
	set_one_of(&random, 0, ALLOW_SETTLEMENT, percents);
	garden_count(&garden);
}

/* Runs a check over random plots. */
static void over_plots(void (*check)(const struct takeoff *))
{
	for (seed = 1; seed <= PLOTS; seed++) {
		random_garden();
		check(&garden.takeoff);
		if (seed < PLOTS)
			garden_fini(&garden);
	}
}

/* ---- Laws ------------------------------------------------------------------------------------ */

static void check_near(double found, double expected)
{
	double room = EXACT * (1 + fabs(expected));

	ck_assert_msg(fabs(found - expected) <= room, "seed %d: %.12g, not %.12g", seed, found,
		expected);
}

static void check_not_negative(double value)
{
	ck_assert_msg(isfinite(value) && value >= 0, "seed %d: %g", seed, value);
}

static void areas_add_up(const struct takeoff *takeoff)
{
	const struct survey *survey = &takeoff->survey;
	int64_t cells = 0, plan = (int64_t)survey->columns * survey->rows;
	double area = 0;

	for (int i = 0; i < takeoff->areas.count; i++) {
		cells += takeoff->areas.list[i].cells;
		area += takeoff->areas.list[i].area;
	}
	ck_assert_msg(cells == plan, "seed %d", seed);
	check_near(area, survey_area(plan, survey->cell));
	ck_assert_ptr_null(takeoff->areas.list[takeoff->areas.count - 1].entry);
	for (int i = 0; i + 1 < takeoff->areas.count; i++)
		ck_assert_ptr_eq(takeoff->areas.list[i].entry, &takeoff->plot.details.legend[i]);
}

START_TEST(areas_of_the_legend_and_open_ground_make_up_the_plan)
{
	over_plots(areas_add_up);
}
END_TEST

static void areas_match_letters(const struct takeoff *takeoff)
{
	const struct ground *ground = &garden.plot.ground;

	for (int i = 0; i < takeoff->areas.count; i++) {
		const struct area_row *area = &takeoff->areas.list[i];
		char letter = area->entry ? area->entry->letter : OPEN_GROUND;
		int64_t cells = 0;

		for (int at = 0; at < ground->columns * ground->rows; at++)
			cells += ground->cells[at] == letter;
		ck_assert_msg(area->cells == cells, "seed %d: %c", seed, letter);
	}
}

START_TEST(an_area_counts_the_cells_of_its_letter)
{
	over_plots(areas_match_letters);
}
END_TEST

static void check_fill(const struct fill *fill)
{
	double parts = 0;

	for (int i = 0; i < fill->part_count; i++) {
		check_not_negative(fill->parts[i].volume);
		parts += fill->parts[i].volume;
	}
	check_near(parts, fill->order);
	check_not_negative(fill->soil);
	check_not_negative(fill->mulch);
	ck_assert_msg(fill->order >= fill->soil - EXACT, "seed %d", seed);
	ck_assert_msg(fill->soil_depth >= 0, "seed %d", seed);
}

static void parts_make_up_orders(const struct takeoff *takeoff)
{
	for (int i = 0; i < takeoff->fills.count; i++)
		check_fill(&takeoff->fills.list[i]);
}

START_TEST(parts_of_a_fill_add_up_to_its_order)
{
	over_plots(parts_make_up_orders);
}
END_TEST

/* Every raised bed is laid out or not, once; every bed at ground level has a fill. */
static void beds_have_their_rows(const struct takeoff *takeoff)
{
	int laid = 0, not_laid = 0, fills = 0;

	for (int i = 0; i < takeoff->survey.region_count; i++) {
		const struct region *region = &takeoff->survey.regions[i];
		bool is_bed = region->entry->class == CLASS_BED;
		bool is_raised = region_is_raised(region);
		bool has_wall = walls_find(&takeoff->walls, i) != NULL;
		bool has_fill = fills_find(&takeoff->fills, i) != NULL;

		ck_assert_msg(!has_wall || is_raised, "seed %d region %d", seed, i);
		ck_assert_msg(is_bed || !has_fill, "seed %d region %d", seed, i);
		ck_assert_msg(!is_bed || is_raised || has_fill, "seed %d region %d", seed, i);
		ck_assert_msg(!is_raised || has_wall || !has_fill, "seed %d region %d", seed, i);
		laid += has_wall;
		not_laid += is_raised && !has_wall;
		fills += has_fill;
	}
	ck_assert_msg(laid == takeoff->walls.count, "seed %d", seed);
	ck_assert_msg(not_laid == takeoff->walls.not_laid_count, "seed %d", seed);
	ck_assert_msg(fills == takeoff->fills.count, "seed %d", seed);
}

START_TEST(each_bed_has_its_wall_and_its_fill_or_is_told_as_not_laid)
{
	over_plots(beds_have_their_rows);
}
END_TEST

static bool begins(const struct item *item, const char *id)
{
	return strncmp(garden_id(&garden, item), id, strlen(id)) == 0;
}

static double items_total(const struct takeoff *takeoff, const char *id, const struct size *block)
{
	double total = 0;

	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];

		if (strcmp(garden_id(&garden, item), id) == 0 &&
			(!block || size_equal(&item->block, block)))
			total += item->laid;
	}
	return total;
}

static void items_match_blocks(const struct takeoff *takeoff)
{
	int rows = 0;

	for (int i = 0; i < takeoff->cuttings.count; i++) {
		const struct cutting *cutting = &takeoff->cuttings.list[i];

		check_near(items_total(takeoff, cutting->use == USE_CAP ? "block.cap" :
			"block.wall", &cutting->block), (double)cutting->bought);
		ck_assert_int_eq(cutting->bought, cutting->whole + cutting->cut_blocks);
	}
	for (size_t i = 0; i < takeoff->items.count; i++)
		rows += begins(&takeoff->items.list[i], "block.");
	ck_assert_msg(rows == takeoff->cuttings.count, "seed %d", seed);
}

/* Whole blocks of the cut lists are those that the walls and caps take. */
static void cuttings_match_walls(const struct takeoff *takeoff)
{
	int64_t in_walls = 0, in_caps = 0, in_lists = 0;

	for (int i = 0; i < takeoff->walls.count; i++) {
		in_walls += takeoff->walls.list[i].whole_blocks;
		in_caps += takeoff->walls.list[i].has_cap ? takeoff->walls.list[i].cap.whole : 0;
	}
	for (int i = 0; i < takeoff->cuttings.count; i++)
		in_lists += takeoff->cuttings.list[i].whole;
	ck_assert_msg(in_walls + in_caps == in_lists, "seed %d", seed);
}

static void items_match_fills(const struct takeoff *takeoff)
{
	double soil = 0, order = 0, mulch = 0, laid = 0, ordered = 0;

	for (int i = 0; i < takeoff->fills.count; i++) {
		soil += takeoff->fills.list[i].soil;
		order += takeoff->fills.list[i].order;
		mulch += takeoff->fills.list[i].mulch;
	}
	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];

		if (!begins(item, "soil."))
			continue;
		laid += item->laid;
		ordered += item->order;
		check_near(item->laid + item->spare, item->order);
	}
	check_near(laid, soil);
	check_near(ordered, order);
	check_near(items_total(takeoff, "mulch", NULL), mulch);
}

static void items_match_all(const struct takeoff *takeoff)
{
	items_match_blocks(takeoff);
	cuttings_match_walls(takeoff);
	items_match_fills(takeoff);
}

START_TEST(items_agree_with_walls_cut_lists_and_fills)
{
	over_plots(items_match_all);
}
END_TEST

/* No two rows are of the same thing. */
static void check_apart(const struct item *a, const struct item *b)
{
	const char *id = garden_id(&garden, a);

	ck_assert_msg(strcmp(id, garden_id(&garden, b)) != 0 || !size_equal(&a->block, &b->block),
		"seed %d: %s twice", seed, id);
}

static void items_are_sane(const struct takeoff *takeoff)
{
	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];
		const char *id = garden_id(&garden, item);

		check_not_negative(item->laid);
		check_not_negative(item->spare);
		check_not_negative(item->order);
		ck_assert_msg(item->order >= item->laid + item->spare - 1e-6, "seed %d: %s", seed,
			id);
		ck_assert_msg(item_unit(item) != UNIT_EACH || item->order == floor(item->order),
			"seed %d: %s", seed, id);
		for (size_t j = 0; j < i; j++)
			check_apart(item, &takeoff->items.list[j]);
	}
	for (int i = 0; i < takeoff->walls.count; i++) {
		check_not_negative(takeoff->walls.list[i].inner_area);
		check_not_negative(takeoff->walls.list[i].weight);
		check_not_negative(takeoff->walls.list[i].bead);
	}
}

START_TEST(no_figure_is_negative_or_not_a_number_and_packs_are_whole)
{
	over_plots(items_are_sane);
}
END_TEST

static void complete_is_told(const struct takeoff *takeoff)
{
	bool is_complete = takeoff->walls.not_laid_count == 0;

	for (int i = 0; i < takeoff->walls.count; i++) {
		const struct wall *wall = &takeoff->walls.list[i];

		is_complete = is_complete && (wall->has_cap ||
			size_is_none(&block_effective(wall->bed, BED_CAP)->as.size));
	}
	ck_assert_msg(takeoff->complete == is_complete, "seed %d", seed);
}

START_TEST(complete_means_that_every_wall_and_cap_is_laid_out)
{
	over_plots(complete_is_told);
}
END_TEST

static void snags_are_in_order(const struct takeoff *takeoff)
{
	for (size_t i = 1; i < takeoff->snags.count; i++)
		ck_assert_msg(takeoff->snags.list[i - 1].code <= takeoff->snags.list[i].code,
			"seed %d", seed);
}

START_TEST(snags_stand_by_code)
{
	over_plots(snags_are_in_order);
}
END_TEST

START_TEST(nothing_is_kept_between_two_takeoffs)
{
	seed = 7;
	random_garden();
	struct arena arena = ARENA_EMPTY;
	struct takeoff again, *first = &garden.takeoff;

	takeoff_compute(&again, &arena, &garden.plot, NULL);
	ck_assert_uint_eq(again.items.count, first->items.count);
	ck_assert_uint_gt(again.items.count, 0);
	for (size_t i = 0; i < again.items.count; i++) {
		const struct item *item = &again.items.list[i], *before = &first->items.list[i];

		ck_assert_str_eq(garden_id(&garden, item), garden_id(&garden, before));
		ck_assert_double_eq(item->order, before->order);
	}
	ck_assert_uint_eq(again.snags.count, first->snags.count);
	arena_clear(&arena);
}
END_TEST

/* ---- Words and finding ----------------------------------------------------------------------- */

START_TEST(units_and_sections_have_the_words_of_the_format)
{
	ck_assert_str_eq(item_unit_word(UNIT_EACH), "each");
	ck_assert_str_eq(item_unit_word(UNIT_M), "m");
	ck_assert_str_eq(item_unit_word(UNIT_M2), "m2");
	ck_assert_str_eq(item_unit_word(UNIT_M3), "m3");
	ck_assert_str_eq(item_unit_word(UNIT_KG), "kg");
	ck_assert_str_eq(section_words[SECTION_WALLS].key, "walls");
	ck_assert_str_eq(section_words[SECTION_FILL].key, "fill");
	garden_rectangle(&garden, 'b', 1, 1);
}
END_TEST

START_TEST(walls_and_fills_are_found_by_region)
{
	garden_rows(&garden, (const char *[]){ "bbbb.pp.cccc", "bbbb.pp.cccc", "bbbb.pp.cccc",
		NULL });
	plot_set(&garden.plot, 'c', BED_BUILD, "level");
	garden_count(&garden);
	ck_assert_int_eq(walls_find(&garden.takeoff.walls, 0)->region, 0);
	ck_assert_ptr_null(walls_find(&garden.takeoff.walls, 1));
	ck_assert_ptr_null(walls_find(&garden.takeoff.walls, 2));
	ck_assert_int_eq(fills_find(&garden.takeoff.fills, 0)->region, 0);
	ck_assert_ptr_null(fills_find(&garden.takeoff.fills, 1));
	ck_assert_int_eq(fills_find(&garden.takeoff.fills, 2)->region, 2);
	ck_assert(region_is_raised(&garden.takeoff.survey.regions[0]));
	ck_assert(!region_is_raised(&garden.takeoff.survey.regions[1]));
	ck_assert(!region_is_raised(&garden.takeoff.survey.regions[2]));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("takeoff");
	TCase *laws = suite_case(suite, "laws");
	TCase *words = suite_case(suite, "words");

	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_test(laws, areas_of_the_legend_and_open_ground_make_up_the_plan);
	tcase_add_test(laws, an_area_counts_the_cells_of_its_letter);
	tcase_add_test(laws, parts_of_a_fill_add_up_to_its_order);
	tcase_add_test(laws, each_bed_has_its_wall_and_its_fill_or_is_told_as_not_laid);
	tcase_add_test(laws, items_agree_with_walls_cut_lists_and_fills);
	tcase_add_test(laws, no_figure_is_negative_or_not_a_number_and_packs_are_whole);
	tcase_add_test(laws, complete_means_that_every_wall_and_cap_is_laid_out);
	tcase_add_test(laws, snags_stand_by_code);
	tcase_add_test(laws, nothing_is_kept_between_two_takeoffs);

	tcase_add_checked_fixture(words, NULL, teardown);
	tcase_add_test(words, units_and_sections_have_the_words_of_the_format);
	tcase_add_test(words, walls_and_fills_are_found_by_region);
	return suite;
}
