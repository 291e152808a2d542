#include "support/runner.h"
#include "support/golden.h"
#include "support/json.h"
#include "report/json/json.h"
#include "report/words/snag_words.h"
#include "report/words/first_line.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

static struct garden garden;
static struct text json;
static cJSON *root;

static void open_file(const char *path)
{
	garden_file(&garden, path);
	root = json_of(&garden, &json);
}

static void setup(void)
{
	json = TEXT_EMPTY;
	root = NULL;
}

static void teardown(void)
{
	cJSON_Delete(root);
	text_fini(&json);
	garden_fini(&garden);
}

static const cJSON *row(const char *array, int index)
{
	const cJSON *item = cJSON_GetArrayItem(json_get(root, array), index);

	ck_assert_msg(item, "no %s[%d]", array, index);
	return item;
}

static int rows(const char *array)
{
	return cJSON_GetArraySize(json_get(root, array));
}

static double number(const cJSON *object, const char *key)
{
	ck_assert_msg(cJSON_IsNumber(json_get(object, key)), "%s is no number", key);
	return json_get(object, key)->valuedouble;
}

static const char *string(const cJSON *object, const char *key)
{
	ck_assert_msg(cJSON_IsString(json_get(object, key)), "%s is no string", key);
	return json_get(object, key)->valuestring;
}

static void length_is(const cJSON *value, nm expected)
{
	ck_assert(cJSON_IsNumber(value));
	ck_assert_int_eq(llround(value->valuedouble * 1e9), expected);
}

static void number_is(const cJSON *object, const char *key, double expected)
{
	/* Nine places after the point are printed. */
	ck_assert_double_eq_tol(number(object, key), expected, 5.1e-10 + fabs(expected) * 1e-15);
}

static void size_is(const cJSON *array, const struct size *size)
{
	ck_assert_int_eq(cJSON_GetArraySize(array), 3);
	length_is(cJSON_GetArrayItem(array, 0), size->along);
	length_is(cJSON_GetArrayItem(array, 1), size->across);
	length_is(cJSON_GetArrayItem(array, 2), size->up);
}

static void place_is(const cJSON *array, struct place place)
{
	ck_assert_int_eq(cJSON_GetArraySize(array), 2);
	ck_assert_int_eq(cJSON_GetArrayItem(array, 0)->valueint, place.x);
	ck_assert_int_eq(cJSON_GetArrayItem(array, 1)->valueint, place.y);
}

/* The object has exactly these keys in this order. */
static void keys_are(const cJSON *object, const char *expected)
{
	struct text found = TEXT_EMPTY;

	ck_assert(cJSON_IsObject(object));
	for (const cJSON *item = object->child; item; item = item->next)
		text_print(&found, "%s%s", item->prev && item != object->child ? " " : "",
			item->string);
	ck_assert_str_eq(found.bytes, expected);
	text_fini(&found);
}

/* ---- Shape ----------------------------------------------------------------------------------- */

static const char *const plots[] = { "plots/court.plot", "plots/elbow.plot", "plots/ring.plot",
	"plots/rope-walk.plot", "plots/slope.plot", "plots/snags.plot", "plots/great-court.plot",
	"tests/plots/falling.plot" };
enum { PLOTS = sizeof plots / sizeof *plots };

START_TEST(the_object_has_the_keys_of_the_format_in_their_order)
{
	const struct takeoff *takeoff = &garden.takeoff;
	char expected[400];

	open_file(plots[_i]);
	snprintf(expected, sizeof expected, "format version complete plot areas edges regions "
		"walls walls_not_laid %scutting dig dig_sums %s%s%s%sfills fence %sstone "
		"stone_orders fabric liners liner_rolls edging edging_cuts lawn items loads costs "
		"work work_sums snags setout",
		takeoff->wall_levels.count ? "wall_levels " : "",
		takeoff->earthwork.fill_count ? "dig_fills " : "",
		takeoff->levelling.is_told ? "levels level_points " : "",
		takeoff->earthwork.fill_count ? "low_ground " : "",
		!takeoff->levelling.is_told ? "" : takeoff->levelling.falls.house_count ?
		"path_falls house_falls " : "path_falls ",
		takeoff->fences.levels.count ? "fence_levels " : "");
	keys_are(root, expected);
	ck_assert_str_eq(string(root, "format"), "parterre-takeoff");
	ck_assert_double_eq(number(root, "version"), 1);
	ck_assert_int_eq(cJSON_IsTrue(json_get(root, "complete")), garden.takeoff.complete);
	keys_are(json_get(root, "plot"), "title units cell_m columns rows width_m height_m");
}
END_TEST

/* Rare ones are left out where there is none of them. */
START_TEST(what_is_told_of_services_stands_in_its_place)
{
	const cJSON *hand;

	open_file("plots/well-yard.plot");
	keys_are(root, "format version complete plot areas edges regions walls walls_not_laid "
		"cutting dig dig_sums fills fence services keeps stone stone_orders fabric liners "
		"liner_rolls edging edging_cuts lawn items loads heaps costs work work_sums "
		"barrow_ways barrow_ways_to_fences snags setout");
	keys_are(json_get(root, "plot"), "title units cell_m columns rows width_m height_m notice "
		"notice_end");
	ck_assert_int_eq(rows("services"), 4);
	for (int i = 0; i < rows("services"); i++) {
		keys_are(row("services", i), "name kind state owner length_m depth_known depth_m "
			"trench by_hand");
		keys_are(json_get(row("services", i), "trench"), "width_m depth_m dug_m3 sleeves");
	}
	keys_are(json_get(json_get(row("services", 2), "trench"), "sleeves")->child,
		"from_m to_m length_m");
	keys_are(row("keeps", 0), "name radius_m from_m to_m by_hand");
	hand = json_get(row("keeps", 0), "by_hand");
	keys_are(hand, "area_m2 digs posts plants spikes fabric_m2");
	keys_are(json_get(hand, "digs")->child, "region part line area_m2 from_m to_m");
	keys_are(json_get(hand, "posts")->child, "fence post at_m");
}
END_TEST

static const struct { const char *array, *keys; } row_keys[] = {
	{ "areas", "class letter name cells area_m2" },
	{ "edges", "between length_m" },
	{ "regions", "id class letter first_cell cells area_m2 perimeter_m holes corners" },
	{ "walls", "bed block_m joint_m like turned inner_area_m2 whole_blocks cut_pieces courses "
		"cap" },
	{ "walls_not_laid", "bed about_blocks" },
	{ "cutting", "use block_m joint_m blocks_whole blocks_cut blocks_bought floor breakage "
		"cuts" },
	{ "dig", "region part area_m2 depth_m sod_m3 topsoil_m3 subsoil_m3" },
	{ "fills", "bed soil_depth_m strip_m2 strip_depth_m soil_m3 order_m3 parts mulch_m3" },
};

START_TEST(each_row_has_the_keys_of_the_format_in_their_order)
{
	open_file("plots/snags.plot");
	ck_assert_int_gt(rows(row_keys[_i].array), 0);
	for (int i = 0; i < rows(row_keys[_i].array); i++)
		keys_are(row(row_keys[_i].array, i), row_keys[_i].keys);
}
END_TEST

START_TEST(levels_of_walls_and_fences_have_the_keys_of_the_format_in_their_order)
{
	open_file("tests/plots/falling.plot");
	ck_assert_int_eq(rows("wall_levels"), 2);
	ck_assert_int_eq(rows("fence_levels"), 4);
	for (int i = 0; i < 2; i++)
		keys_are(row("wall_levels", i), "bed highest_ground_m lowest_ground_m formation_m "
			"base_top_m course_1_m top_m corners");
	for (int i = 0; i < 4; i++)
		keys_are(row("fence_levels", i), "fence part number from_m to_m bottom_m top_m "
			"widest_gap_m fill_or_step posts");
}
END_TEST

START_TEST(a_region_that_is_named_has_its_name_after_its_letter)
{
	static const char *const rows[] = { "b.p", NULL };

	garden_rows(&garden, rows);
	names_add(&garden.plot.details.names, (struct place){ 0, 0 },
		memory_string("Sage \"grey\""));
	garden_count(&garden);
	root = json_of(&garden, &json);
	keys_are(row("regions", 0), "id class letter name first_cell cells area_m2 perimeter_m "
		"holes corners");
	ck_assert_str_eq(string(row("regions", 0), "name"), "Sage \"grey\"");
	keys_are(row("regions", 1), "id class letter first_cell cells area_m2 perimeter_m holes "
		"corners");
}
END_TEST

START_TEST(parts_of_rows_have_the_keys_of_the_format)
{
	open_file("plots/ring.plot");
	const cJSON *wall = row("walls", 0), *course = json_get(wall, "courses")->child;

	keys_are(json_get(row("regions", 0), "corners"), "convex reflex");
	keys_are(course, "course runs");
	keys_are(json_get(course, "runs")->child, "loop side from_m length_m pieces_m");
	keys_are(json_get(wall, "cap"), "block_m runs");
	keys_are(json_get(json_get(wall, "cap"), "runs")->child,
		"loop side from_m length_m pieces_m");
	keys_are(json_get(root, "dig_sums"), "bank loose backfill_m3 backfill_loose_m3 loosened_m2 "
		"reused_m3 spoil_m3 spoil_kg loads");
	keys_are(json_get(json_get(root, "dig_sums"), "bank"), "sod_m3 topsoil_m3 subsoil_m3");
	keys_are(json_get(json_get(root, "dig_sums"), "loose"), "sod_m3 topsoil_m3 subsoil_m3");
	keys_are(json_get(json_get(root, "dig_sums"), "loads"), "barrow pickup truck");
	keys_are(json_get(row("fills", 0), "parts")->child, "name m3 reused_m3 buy_m3");
}
END_TEST

static const struct { const char *plot, *golden; } as_printed[] = {
	{ "plots/court.plot", "court.json" },
	{ "plots/growing-court.plot", "growing-court.json" },
	{ "tests/plots/gallery.plot", "gallery.json" },
};
enum { AS_PRINTED = sizeof as_printed / sizeof *as_printed };

START_TEST(whole_plots_print_as_they_did)
{
	open_file(as_printed[_i].plot);
	golden_check(as_printed[_i].golden, json.bytes);
}
END_TEST

START_TEST(only_rows_of_blocks_have_a_size_and_only_what_has_a_price_a_cost)
{
	struct text keys = TEXT_EMPTY;

	open_file("plots/rope-walk.plot");
	for (int i = 0; i < rows("items"); i++) {
		const struct item *item = &garden.takeoff.items.list[i];

		text_clear(&keys);
		const struct purchase *purchase = item->purchase;

		text_print(&keys, "id section name unit %slaid spare order%s%s%s%s",
			good_row(item->good)->varies == VARIES_BY_BLOCK ? "block_m " : "",
			item->weight > 0 ? " weight_kg" : "",
			!purchase || !purchase->is_priced ? "" : purchase->count > 1 ? " cost" :
			" packs pack unit_price cost supplier",
			purchase ? " purchase" : " bought_with",
			item_purchase(&garden.takeoff.items, item)->spec[0] ? " spec" : "");
		keys_are(row("items", i), keys.bytes);
	}
	text_fini(&keys);
}
END_TEST

START_TEST(a_snag_names_loop_and_side_only_where_a_side_is_meant)
{
	int with = 0, without = 0;

	open_file("plots/snags.plot");
	for (int i = 0; i < rows("snags"); i++) {
		const struct snag *snag = &garden.takeoff.snags.list[i];

		keys_are(row("snags", i), snag->side < 0 ?
			"code region cell text source cure" :
			"code region cell loop side text source cure");
		with += snag->side >= 0;
		without += snag->side < 0;
	}
	ck_assert_int_gt(with, 0);
	ck_assert_int_gt(without, 0);
}
END_TEST

/* Looks at every number as it is spelt. */
static void check_spelling(const char *bytes)
{
	bool is_text = false;

	for (const char *c = bytes; *c; c++) {
		if (*c == '\\')
			c++;
		else if (*c == '"')
			is_text = !is_text;
		if (is_text || !strchr("-0123456789", *c))
			continue;
		size_t whole = strspn(c, "-0123456789"), places = 0;

		if (c[whole] == '.') {
			places = strspn(c + whole + 1, "0123456789");
			ck_assert_msg(places >= 1 && places <= 9, "%.30s", c);
			ck_assert_msg(c[whole + places] != '0', "a zero at the end: %.30s", c);
			places++;
		}
		c += whole + places;
		ck_assert_msg(strchr(",]} \n", *c), "an exponent? %.30s", c - whole);
		c--;
	}
}

START_TEST(numbers_have_at_most_nine_places_no_zeros_at_the_end_and_no_exponent)
{
	open_file(plots[_i]);
	check_spelling(json.bytes);
}
END_TEST

/* ---- Values ---------------------------------------------------------------------------------- */

START_TEST(plot_areas_and_edges_are_those_of_the_takeoff)
{
	open_file(plots[_i]);
	const struct takeoff *takeoff = &garden.takeoff;
	const cJSON *plot = json_get(root, "plot");
	int edges = 0;

	length_is(json_get(plot, "cell_m"), takeoff->survey.cell);
	ck_assert_double_eq(number(plot, "columns"), takeoff->survey.columns);
	ck_assert_double_eq(number(plot, "rows"), takeoff->survey.rows);
	length_is(json_get(plot, "width_m"), takeoff->survey.cell * takeoff->survey.columns);
	length_is(json_get(plot, "height_m"), takeoff->survey.cell * takeoff->survey.rows);
	ck_assert_int_eq(rows("areas"), takeoff->areas.count);
	for (int i = 0; i < takeoff->areas.count; i++) {
		ck_assert_double_eq(number(row("areas", i), "cells"),
			(double)takeoff->areas.list[i].cells);
		number_is(row("areas", i), "area_m2", takeoff->areas.list[i].area);
	}
	ck_assert_str_eq(string(row("areas", takeoff->areas.count - 1), "letter"), ".");
	ck_assert_str_eq(string(row("areas", takeoff->areas.count - 1), "class"), "open");
	for (int a = 0; a < CLASSES; a++) {
		for (int b = a; b < CLASSES; b++) {
			if (takeoff->survey.edges[a][b] == 0)
				continue;
			const cJSON *edge = row("edges", edges++);

			ck_assert_str_eq(json_get(edge, "between")->child->valuestring,
				class_word((enum plot_class)a));
			ck_assert_str_eq(json_get(edge, "between")->child->next->valuestring,
				class_word((enum plot_class)b));
			length_is(json_get(edge, "length_m"),
				takeoff->survey.edges[a][b] * takeoff->survey.cell);
		}
	}
	ck_assert_int_eq(rows("edges"), edges);
}
END_TEST

START_TEST(regions_are_those_of_the_survey)
{
	open_file(plots[_i]);
	const struct survey *survey = &garden.takeoff.survey;

	ck_assert_int_eq(rows("regions"), survey->region_count);
	for (int i = 0; i < survey->region_count; i++) {
		const struct region *region = &survey->regions[i];
		const cJSON *found = row("regions", i);
		char name[REGION_NAME_MOST];

		survey_region_name(region, name);
		ck_assert_str_eq(string(found, "id"), name);
		ck_assert_str_eq(string(found, "class"), class_word(region->entry->class));
		ck_assert_int_eq(string(found, "letter")[0], region->entry->letter);
		place_is(json_get(found, "first_cell"), region->first_cell);
		ck_assert_double_eq(number(found, "cells"), (double)region->cells);
		number_is(found, "area_m2", survey_area(region->cells, survey->cell));
		length_is(json_get(found, "perimeter_m"), region->perimeter * survey->cell);
		ck_assert_double_eq(number(found, "holes"), (double)region_holes(region));
		ck_assert_double_eq(number(json_get(found, "corners"), "convex"),
			(double)region->convex);
		ck_assert_double_eq(number(json_get(found, "corners"), "reflex"),
			(double)region->reflex);
	}
}
END_TEST

static void runs_are(const cJSON *array, const struct wall_course *course)
{
	ck_assert_int_eq(cJSON_GetArraySize(array), course->run_count);
	for (int i = 0; i < course->run_count; i++) {
		const cJSON *found = cJSON_GetArrayItem(array, i);
		const struct wall_run *run = &course->runs[i];
		const cJSON *pieces = json_get(found, "pieces_m");

		ck_assert_double_eq(number(found, "loop"), run->loop);
		ck_assert_double_eq(number(found, "side"), run->side);
		length_is(json_get(found, "from_m"), run->from);
		length_is(json_get(found, "length_m"), run->length);
		ck_assert_int_eq(cJSON_GetArraySize(pieces), run->piece_count);
		for (int j = 0; j < run->piece_count; j++)
			length_is(cJSON_GetArrayItem(pieces, j), run->pieces[j]);
	}
}

static void wall_is(const cJSON *found, const struct wall *wall)
{
	const cJSON *courses = json_get(found, "courses"), *cap = json_get(found, "cap");

	size_is(json_get(found, "block_m"), &wall->block);
	number_is(found, "inner_area_m2", wall->inner_area);
	ck_assert_double_eq(number(found, "whole_blocks"), (double)wall->whole_blocks);
	ck_assert_double_eq(number(found, "cut_pieces"), (double)wall->cut_pieces);
	ck_assert_int_eq(cJSON_GetArraySize(courses), wall->courses);
	for (int i = 0; i < wall->courses; i++) {
		const cJSON *course = cJSON_GetArrayItem(courses, i);

		ck_assert_double_eq(number(course, "course"), i + 1);
		runs_are(json_get(course, "runs"), i % 2 == 0 ? &wall->odd : &wall->even);
	}
	ck_assert_int_eq(cJSON_IsNull(cap), !wall->has_cap);
	if (wall->has_cap) {
		size_is(json_get(cap, "block_m"), &wall->cap_block);
		runs_are(json_get(cap, "runs"), &wall->cap);
	}
}

START_TEST(walls_are_laid_course_by_course_as_in_the_takeoff)
{
	open_file(plots[_i]);
	const struct takeoff *takeoff = &garden.takeoff;
	char name[REGION_NAME_MOST];

	ck_assert_int_eq(rows("walls"), takeoff->walls.count);
	for (int i = 0; i < takeoff->walls.count; i++) {
		survey_region_name(&takeoff->survey.regions[takeoff->walls.list[i].region], name);
		ck_assert_str_eq(string(row("walls", i), "bed"), name);
		wall_is(row("walls", i), &takeoff->walls.list[i]);
	}
	ck_assert_int_eq(rows("walls_not_laid"), takeoff->walls.not_laid_count);
	for (int i = 0; i < takeoff->walls.not_laid_count; i++) {
		const struct wall_not_laid *not_laid = &takeoff->walls.not_laid[i];

		survey_region_name(&takeoff->survey.regions[not_laid->region], name);
		ck_assert_str_eq(string(row("walls_not_laid", i), "bed"), name);
		ck_assert_double_eq(number(row("walls_not_laid", i), "about_blocks"),
			(double)not_laid->about_blocks);
	}
}
END_TEST

static void cuts_are(const cJSON *array, const struct cutting *cutting)
{
	const cJSON *found = array->child;

	ck_assert_int_eq(cJSON_GetArraySize(array), cutting->cut_blocks);
	for (int i = 0; i < cutting->cut_count; i++) {
		const struct cut *cut = &cutting->cuts[i];

		for (int64_t block = 0; block < cut->blocks; block++, found = found->next) {
			const cJSON *pieces = json_get(found, "pieces_m");

			ck_assert_int_eq(cJSON_GetArraySize(pieces), cut->piece_count);
			for (int j = 0; j < cut->piece_count; j++)
				length_is(cJSON_GetArrayItem(pieces, j), cut->pieces[j]);
		}
	}
}

START_TEST(every_block_that_is_cut_up_has_a_row)
{
	open_file(plots[_i]);
	const struct takeoff *takeoff = &garden.takeoff;

	ck_assert_int_eq(rows("cutting"), takeoff->cuttings.count);
	for (int i = 0; i < takeoff->cuttings.count; i++) {
		const struct cutting *cutting = &takeoff->cuttings.list[i];
		const cJSON *found = row("cutting", i);

		ck_assert_str_eq(string(found, "use"), cutting->use == USE_CAP ? "cap" : "wall");
		size_is(json_get(found, "block_m"), &cutting->block);
		ck_assert_double_eq(number(found, "blocks_whole"), (double)cutting->whole);
		ck_assert_double_eq(number(found, "blocks_cut"), (double)cutting->cut_blocks);
		ck_assert_double_eq(number(found, "blocks_bought"), (double)cutting->bought);
		ck_assert_double_eq(number(found, "floor"), (double)cutting->floor);
		ck_assert_double_eq(number(found, "breakage"), (double)cutting->breakage);
		cuts_are(json_get(found, "cuts"), cutting);
	}
}
END_TEST

static void earth_is(const cJSON *object, const struct earth *earth)
{
	number_is(object, "sod_m3", earth->sod);
	number_is(object, "topsoil_m3", earth->topsoil);
	number_is(object, "subsoil_m3", earth->subsoil);
}

START_TEST(what_is_dug_is_that_of_the_takeoff)
{
	open_file(plots[_i]);
	const struct earthwork *work = &garden.takeoff.earthwork;
	const cJSON *sums = json_get(root, "dig_sums"), *loads = json_get(sums, "loads");

	ck_assert_int_eq(rows("dig"), work->count);
	for (int i = 0; i < work->count; i++) {
		const struct dig *dig = &work->rows[i];

		ck_assert_str_eq(string(row("dig", i), "part"), dig_words[dig->part].key);
		ck_assert_int_eq(cJSON_IsNull(json_get(row("dig", i), "region")),
			dig->region == NO_REGION);
		length_is(json_get(row("dig", i), "depth_m"), dig->depth);
		number_is(row("dig", i), "area_m2", dig->area);
		earth_is(row("dig", i), &dig->bank);
	}
	earth_is(json_get(sums, "bank"), &work->bank);
	earth_is(json_get(sums, "loose"), &work->loose);
	number_is(sums, "spoil_m3", work->spoil);
	number_is(sums, "spoil_kg", work->spoil_weight);
	ck_assert_double_eq(number(loads, "barrow"), (double)work->loads.barrow);
	ck_assert_double_eq(number(loads, "pickup"), (double)work->loads.pickup);
	ck_assert_double_eq(number(loads, "truck"), (double)work->loads.truck);
}
END_TEST

/* 12 sq ft of path dug 3 in into topsoil are 3 cu ft, 3.75 loose; the bed takes more. */
START_TEST(what_is_reused_of_a_part_is_not_to_buy)
{
	double reused, whole;
	const cJSON *part;

	garden_rows(&garden, (const char *[]){ "pppp.....", "pppp.bbbb", "pppp.bbbb", ".....bbbb",
		".....bbbb", NULL });
	plot_set(&garden.plot, 0, ALLOW_SOD, "0 in");
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, "6 in");
	plot_set(&garden.plot, 'p', PATH_BASE, "3 in");
	plot_set(&garden.plot, 'p', PATH_SURFACE, "0 in");
	plot_set(&garden.plot, 'b', BED_BASE, "0 in");
	plot_set(&garden.plot, 'b', BED_EMBED, "0 in");
	root = json_of(&garden, &json);
	part = cJSON_GetArrayItem(json_get(row("fills", 0), "parts"), 0);
	reused = number(part, "reused_m3");
	whole = number(part, "m3");
	number_is(json_get(root, "dig_sums"), "reused_m3", 3.75 * CUBIC_FOOT);
	ck_assert_double_eq_tol(reused, 3.75 * CUBIC_FOOT, 1e-9);
	ck_assert_double_gt(whole, reused);
	ck_assert_double_eq_tol(number(part, "buy_m3"), whole - reused, 2e-9);
	part = cJSON_GetArrayItem(json_get(row("fills", 0), "parts"), 1);
	ck_assert_double_eq(number(part, "reused_m3"), 0);
	for (int i = 0; i < rows("items"); i++) {
		const cJSON *item = row("items", i);
		bool is_topsoil = strcmp(string(item, "id"), "soil.topsoil") == 0;

		ck_assert_int_eq(cJSON_HasObjectItem(item, "reused"), is_topsoil);
		if (is_topsoil)
			ck_assert_double_eq_tol(number(item, "reused"), reused, 1e-9);
	}
}
END_TEST

START_TEST(fills_and_items_are_those_of_the_takeoff)
{
	open_file(plots[_i]);
	const struct takeoff *takeoff = &garden.takeoff;

	ck_assert_int_eq(rows("fills"), takeoff->fills.count);
	for (int i = 0; i < takeoff->fills.count; i++) {
		const struct fill *fill = &takeoff->fills.list[i];
		const cJSON *found = row("fills", i), *parts = json_get(found, "parts");

		length_is(json_get(found, "soil_depth_m"), fill->soil_depth);
		number_is(found, "strip_m2", fill->strip_area);
		length_is(json_get(found, "strip_depth_m"), fill->strip_depth);
		number_is(found, "soil_m3", fill->soil);
		number_is(found, "order_m3", fill->order);
		number_is(found, "mulch_m3", fill->mulch);
		ck_assert_int_eq(cJSON_GetArraySize(parts), fill->part_count);
		for (int j = 0; j < fill->part_count; j++) {
			ck_assert_str_eq(string(cJSON_GetArrayItem(parts, j), "name"),
				fill->parts[j].name);
			number_is(cJSON_GetArrayItem(parts, j), "m3", fill->parts[j].volume);
		}
	}
	ck_assert_int_eq(rows("items"), (int)takeoff->items.count);
	for (int i = 0; i < (int)takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];
		const cJSON *found = row("items", i);

		ck_assert_str_eq(string(found, "id"), garden_id(&garden, item));
		ck_assert_str_eq(string(found, "section"), section_words[item->section].key);
		ck_assert_str_eq(string(found, "name"), garden_label(&garden, item));
		ck_assert_str_eq(string(found, "unit"), item_unit_word(item_unit(item)));
		number_is(found, "laid", item->laid);
		number_is(found, "spare", item->spare);
		number_is(found, "order", item->order);
		if (!size_is_none(&item->block))
			size_is(json_get(found, "block_m"), &item->block);
	}
}
END_TEST

START_TEST(snags_are_those_of_the_takeoff_and_none_is_left_out)
{
	open_file("plots/snags.plot");
	const struct takeoff *takeoff = &garden.takeoff;

	ck_assert_int_eq(rows("snags"), (int)takeoff->snags.count);
	for (int i = 0; i < (int)takeoff->snags.count; i++) {
		const struct snag *snag = &takeoff->snags.list[i];
		const cJSON *found = row("snags", i);

		ck_assert_str_eq(string(found, "code"), snag_word(snag->code));
		ck_assert_str_eq(string(found, "text"), garden_sentence(&garden, snag));
		place_is(json_get(found, "cell"), snag->cell);
		ck_assert_int_eq(cJSON_IsNull(json_get(found, "region")),
			snag->region == NO_REGION);
		if (snag->side >= 0)
			ck_assert_double_eq(number(found, "side"), snag->side);
	}
}
END_TEST

/* The snag of that code that stands first. */
static const cJSON *snag_row(const char *code)
{
	int i = 0;

	while (strcmp(string(row("snags", i), "code"), code) != 0)
		i++;
	return row("snags", i);
}

START_TEST(a_snag_names_its_source_and_the_card_and_attributes_that_would_cure_it)
{
	const cJSON *cure;

	open_file("plots/snags.plot");
	ck_assert_str_eq(string(snag_row("wall-jog"), "source"), snag_source(SNAG_WALL_JOG));
	cure = json_get(snag_row("fill-none"), "cure");
	ck_assert_str_eq(string(cure, "card"), "c No room for soil");
	ck_assert_int_eq(cJSON_GetArraySize(json_get(cure, "attributes")), 3);
	ck_assert_str_eq(cJSON_GetArrayItem(json_get(cure, "attributes"), 1)->valuestring,
		"freeboard");
	ck_assert(cJSON_IsFalse(json_get(cure, "drawing")));
	cure = json_get(snag_row("mirror-broken"), "cure");
	ck_assert_str_eq(string(cure, "card"), "The plot itself");
	ck_assert(cJSON_IsTrue(json_get(cure, "drawing")));
}
END_TEST

/* ---- Edges ----------------------------------------------------------------------------------- */

START_TEST(a_plot_of_open_ground_is_one_object_with_empty_arrays)
{
	static const char *const empty[] = { "regions", "walls", "walls_not_laid", "cutting", "dig",
		"fills", "fence", "items", "snags" };

	garden_rows(&garden, (const char *[]){ ".", NULL });
	root = json_of(&garden, &json);
	for (size_t i = 0; i < sizeof empty / sizeof *empty; i++)
		ck_assert_int_eq(rows(empty[i]), 0);
	ck_assert_int_eq(rows("areas"), 1);
	ck_assert_int_eq(rows("edges"), 1);
	ck_assert_str_eq(string(json_get(root, "plot"), "title"), "");
}
END_TEST

START_TEST(texts_of_the_user_come_back_as_they_were)
{
	static const char title[] = "\"Quoted\", a \\ and \xC3\xA9 \xE8\x8A\xB1\xE5\x9C\x92 "
		"</script>";

	garden_rows(&garden, (const char *[]){ "bb", NULL });
	block_set(&garden.plot.details.head, HEAD_TITLE,
		(struct value){ .set = true, .as.text = memory_string(title) });
	free(garden.plot.details.legend[0].name);
	garden.plot.details.legend[0].name = memory_string(title);
	root = json_of(&garden, &json);
	ck_assert_str_eq(string(json_get(root, "plot"), "title"), title);
	ck_assert_str_eq(string(row("areas", 0), "name"), title);
}
END_TEST

START_TEST(two_runs_give_the_same_bytes)
{
	struct text again = TEXT_EMPTY;

	open_file(plots[_i]);
	garden_count(&garden);
	struct text_sink sink_again = text_sink(&again);

	report_json(&sink_again.sink, &garden.plot, &garden.takeoff);
	ck_assert_str_eq(again.bytes, json.bytes);
	text_fini(&again);
}
END_TEST

START_TEST(lengths_are_spelt_from_nanometres)
{
	garden_rectangle(&garden, 'b', 9, 9);
	plot_set(&garden.plot, 'b', BED_BLOCK, "15 43/64 in x 7 in x 6 in");
	root = json_of(&garden, &json);
	/* 15 43/64 in is exactly 398 065 625 nm. */
	ck_assert_ptr_nonnull(strstr(json.bytes, "\"block_m\":[0.398065625,0.1778,0.1524]"));
	ck_assert_ptr_nonnull(strstr(json.bytes, "\"cell_m\":0.3048,"));
}
END_TEST

START_TEST(the_format_is_named_within_the_first_64_bytes)
{
	garden_rows(&garden, (const char *[]){ ".", NULL });
	root = json_of(&garden, &json);
	const char *format = strstr(json.bytes, "\"format\": \"parterre-takeoff\"");

	ck_assert_ptr_nonnull(format);
	ck_assert_int_lt(format - json.bytes, 64 - 28);
	ck_assert(report_is_takeoff(json.bytes, json.length));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("json");
	TCase *shape = suite_case(suite, "shape");
	TCase *values = suite_case(suite, "values");
	TCase *edges = suite_case(suite, "edges");

	tcase_add_checked_fixture(shape, setup, teardown);
	tcase_add_loop_test(shape, the_object_has_the_keys_of_the_format_in_their_order, 0, PLOTS);
	tcase_add_test(shape, what_is_told_of_services_stands_in_its_place);
	tcase_add_loop_test(shape, each_row_has_the_keys_of_the_format_in_their_order, 0,
		sizeof row_keys / sizeof *row_keys);
	tcase_add_test(shape,
		levels_of_walls_and_fences_have_the_keys_of_the_format_in_their_order);
	tcase_add_test(shape, a_region_that_is_named_has_its_name_after_its_letter);
	tcase_add_test(shape, parts_of_rows_have_the_keys_of_the_format);
	tcase_add_loop_test(shape, whole_plots_print_as_they_did, 0, AS_PRINTED);
	tcase_add_test(shape, only_rows_of_blocks_have_a_size_and_only_what_has_a_price_a_cost);
	tcase_add_test(shape, a_snag_names_loop_and_side_only_where_a_side_is_meant);
	tcase_add_loop_test(shape,
		numbers_have_at_most_nine_places_no_zeros_at_the_end_and_no_exponent, 0, PLOTS);

	tcase_add_checked_fixture(values, setup, teardown);
	tcase_add_loop_test(values, plot_areas_and_edges_are_those_of_the_takeoff, 0, PLOTS);
	tcase_add_loop_test(values, regions_are_those_of_the_survey, 0, PLOTS);
	tcase_add_loop_test(values, walls_are_laid_course_by_course_as_in_the_takeoff, 0, PLOTS);
	tcase_add_loop_test(values, every_block_that_is_cut_up_has_a_row, 0, PLOTS);
	tcase_add_loop_test(values, what_is_dug_is_that_of_the_takeoff, 0, PLOTS);
	tcase_add_test(values, what_is_reused_of_a_part_is_not_to_buy);
	tcase_add_loop_test(values, fills_and_items_are_those_of_the_takeoff, 0, PLOTS);
	tcase_add_test(values, snags_are_those_of_the_takeoff_and_none_is_left_out);
	tcase_add_test(values,
		a_snag_names_its_source_and_the_card_and_attributes_that_would_cure_it);

	tcase_add_checked_fixture(edges, setup, teardown);
	tcase_add_test(edges, a_plot_of_open_ground_is_one_object_with_empty_arrays);
	tcase_add_test(edges, texts_of_the_user_come_back_as_they_were);
	tcase_add_loop_test(edges, two_runs_give_the_same_bytes, 0, PLOTS);
	tcase_add_test(edges, lengths_are_spelt_from_nanometres);
	tcase_add_test(edges, the_format_is_named_within_the_first_64_bytes);
	return suite;
}
