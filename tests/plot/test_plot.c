/* The model of a plot: what it holds, copies and compares. */
#include "plot/plot.h"
#include "base/memory.h"
#include "support/details.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <signal.h>
#include <stdio.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

static const char *const court[] = { "bb.p", "bS.p", "llll", NULL };

START_TEST(an_empty_plot_holds_nothing_and_so_does_a_finished_one)
{
	struct plot plot, none;

	plot_init(&none);
	ck_assert_uint_eq(none.details.legend_count, 0);
	ck_assert_ptr_null(none.ground.cells);
	plot_from_rows(&plot, court);
	ck_assert(!plot_equal(&plot, &none));
	plot_fini(&plot);
	ck_assert(plot_equal(&plot, &none));
	ck_assert_int_eq(plot.details.allow.kind, BLOCK_ALLOW);
	plot_fini(&none);
}
END_TEST

START_TEST(a_cell_is_found_by_column_and_row)
{
	struct plot plot;

	plot_from_rows(&plot, court);
	ck_assert_int_eq(ground_cell(&plot.ground, 3, 0), 'p');
	ck_assert_int_eq(ground_cell(&plot.ground, 1, 1), 'S');
	ck_assert_int_eq(ground_cell(&plot.ground, 0, 2), 'l');
	ck_assert(ground_holds(&plot.ground, 0, 0) && ground_holds(&plot.ground, 3, 2));
	ck_assert(!ground_holds(&plot.ground, 4, 0) && !ground_holds(&plot.ground, 0, 3));
	ck_assert(!ground_holds(&plot.ground, -1, 0) && !ground_holds(&plot.ground, 0, -1));
	plot_fini(&plot);
}
END_TEST

START_TEST(new_ground_is_open)
{
	struct ground ground;

	ground_init(&ground, 3, 2);
	ck_assert_mem_eq(ground.cells, "......", 6);
	ground_fini(&ground);
	ck_assert_ptr_null(ground.cells);
	ck_assert_int_eq(ground.columns, 0);
}
END_TEST

START_TEST(a_letter_stands_for_its_entry)
{
	struct plot plot;

	plot_from_rows(&plot, court);
	ck_assert_int_eq(plot_entry(&plot, 'S')->letter, 'S');
	ck_assert_ptr_null(plot_entry(&plot, 'x'));
	ck_assert_ptr_null(plot_entry(&plot, OPEN_GROUND));
	ck_assert_int_eq(plot_class_of(&plot, 'b'), CLASS_BED);
	ck_assert_int_eq(plot_class_of(&plot, 'p'), CLASS_PATH);
	ck_assert_int_eq(plot_class_of(&plot, 'l'), CLASS_LAWN);
	ck_assert_int_eq(plot_class_of(&plot, 'S'), CLASS_FIXTURE);
	ck_assert_int_eq(plot_class_of(&plot, OPEN_GROUND), CLASS_OPEN);
	plot_fini(&plot);
}
END_TEST

START_TEST(units_and_cell_are_the_heads)
{
	struct plot plot;

	plot_from_rows(&plot, court);
	ck_assert_int_eq(plot_units(&plot), UNITS_IMPERIAL);
	ck_assert_int_eq(plot_cell(&plot), NM_PER_FOOT);
	plot_set(&plot, 0, HEAD_UNITS, "metric");
	plot_set(&plot, 0, HEAD_CELL, "250 mm");
	ck_assert_int_eq(plot_units(&plot), UNITS_METRIC);
	ck_assert_int_eq(plot_cell(&plot), 250 * NM_PER_MM);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_class_has_a_word_a_block_and_its_letters)
{
	static const char *const words[CLASSES] = { "bed", "path", "lawn", "fixture", "open",
		"boundary" };

	for (int class = CLASS_BED; class <= CLASS_BOUNDARY; class++)
		ck_assert_str_eq(class_word((enum plot_class)class), words[class]);
	for (enum plot_class class = CLASS_BED; class <= CLASS_FIXTURE; class++) {
		bool is_capital = class == CLASS_FIXTURE;

		ck_assert_str_eq(block_keyword(class_block(class)), class_word(class));
		for (int c = 0; c < 256; c++)
			ck_assert_int_eq(class_takes_letter(class, (char)c),
				is_capital ? c >= 'A' && c <= 'Z' : c >= 'a' && c <= 'z');
	}
}
END_TEST

START_TEST(a_new_entry_has_nothing_set)
{
	struct details details = { .head.kind = BLOCK_HEAD, .allow.kind = BLOCK_ALLOW,
		.rates.kind = BLOCK_RATES };

	for (int i = 0; i < 26; i++) {
		struct entry *entry = details_add_entry(&details, CLASS_PATH, (char)('a' + i),
			memory_string("Path"));

		ck_assert_ptr_eq(entry, &details.legend[i]);
		ck_assert(block_is_empty(&entry->block));
		ck_assert_int_eq(entry->block.kind, BLOCK_PATH);
	}
	ck_assert_uint_eq(details.legend_count, 26);
	ck_assert_int_eq(details.legend[0].letter, 'a');
	details_fini(&details);
	ck_assert_uint_eq(details.legend_count, 0);
}
END_TEST

START_TEST(a_copy_of_the_details_is_equal_and_shares_nothing)
{
	for (uint64_t seed = 0; seed < 200; seed++) {
		struct random random = { seed };
		struct plot plot;

		whole_plot_at_random(&plot, &random, 3);
		struct details copy = details_copy(&plot.details), again = details_copy(&copy);
		ck_assert(details_equal(&plot.details, &copy));
		plot_fini(&plot);
		ck_assert(details_equal(&again, &copy));
		/* A copy may grow. */
		details_add_entry(&copy, CLASS_BED, 'b', memory_string("One more"));
		ck_assert(!details_equal(&again, &copy));
		details_fini(&copy);
		details_fini(&again);
	}
}
END_TEST

/* Changes of one thing each. */
static void change_cell(struct plot *plot)
{
	plot->ground.cells[11] = 'b';
}

static void change_shape(struct plot *plot)
{
	plot->ground.columns = 3;
	plot->ground.rows = 4;
}

static void change_head(struct plot *plot)
{
	plot_set(plot, 0, HEAD_NORTH, "1");
}

static void change_allow(struct plot *plot)
{
	plot_set(plot, 0, ALLOW_FIT, "1/8 in");
}

static void change_attribute(struct plot *plot)
{
	plot_set(plot, 'l', LAWN_COVER, "turf");
}

static void change_name(struct plot *plot)
{
	plot->details.legend[3].name[0] = 'x';
}

static void change_letter(struct plot *plot)
{
	plot->details.legend[1].letter = 'q';
}

static void change_class(struct plot *plot)
{
	plot->details.legend[1].class = CLASS_LAWN;
}

static void change_count(struct plot *plot)
{
	details_add_entry(&plot->details, CLASS_BED, 'a', memory_string("a"));
}

static void change_rate(struct plot *plot)
{
	block_set(&plot->details.rates, RATE_BLOCK, (struct value){ .set = true,
		.as.amount = { MILLION / 20, AMOUNT_H_EACH } });
}

static void change_extra_count(struct plot *plot)
{
	details_add_extra(&plot->details, memory_string("Nails"),
		(struct amount){ MILLION, AMOUNT_GOODS_KG });
}

static void change_extra_name(struct plot *plot)
{
	plot->details.extras[0].name[0] = 'x';
}

static void change_extra_amount(struct plot *plot)
{
	plot->details.extras[0].amount.millionths++;
}

static void change_extra_unit(struct plot *plot)
{
	plot->details.extras[0].amount.unit = AMOUNT_GOODS_M;
}

static void change_service(struct plot *plot)
{
	plot->details.around.services.items[0].kind = SERVICE_GAS;
}

static void change_service_state(struct plot *plot)
{
	plot->details.around.services.items[0].is_to_lay = true;
}

static void change_service_name(struct plot *plot)
{
	plot->details.around.services.items[0].name[0] = 'x';
}

static void change_service_route(struct plot *plot)
{
	plot->details.around.services.items[0].routes.items[0].points[1].x = 3;
}

static void change_house_name(struct plot *plot)
{
	plot->details.around.houses.items[0].name[0] = 'x';
}

static void change_house_cells(struct plot *plot)
{
	plot->details.around.houses.items[0].cells.bottom++;
}

static void change_house_height(struct plot *plot)
{
	plot->details.around.houses.items[0].height++;
}

static void change_shade_height(struct plot *plot)
{
	plot->details.around.shades.items[0].height++;
}

static void change_kept_radius(struct plot *plot)
{
	plot->details.around.kept.items[0].radius++;
}

static void change_kept_at(struct plot *plot)
{
	plot->details.around.kept.items[0].at.y++;
}

static void change_tie_at(struct plot *plot)
{
	plot->details.around.ties.items[0].at.x++;
}

static void change_tie_name(struct plot *plot)
{
	plot->details.around.ties.items[0].name[0] = 'x';
}

static void change_tie_length(struct plot *plot)
{
	plot->details.around.ties.items[0].length++;
}

static void change_drop(struct plot *plot)
{
	plot->details.around.drop.x++;
}

static void change_no_drop(struct plot *plot)
{
	plot->details.around.has_drop = false;
}

static void change_tap(struct plot *plot)
{
	plot->details.around.tap.x++;
}

static void change_no_tap(struct plot *plot)
{
	plot->details.around.has_tap = false;
}

static void change_level(struct plot *plot)
{
	plot->details.levels.drops[3]++;
}

static void change_finish(struct plot *plot)
{
	plot->details.finish.has_fall = true;
}

static void change_service_depth(struct plot *plot)
{
	block_set(&plot->details.around.services.items[0].block, SERVICE_DEPTH,
		(struct value){ .set = true, .as.length = 0 });
}

static void change_route_count(struct plot *plot)
{
	routes_add(&plot->details.around.services.items[0].routes);
}

static void change_service_count(struct plot *plot)
{
	services_add(&plot->details.around.services, SERVICE_OTHER, false, memory_string("O"));
}

static void change_kept_notes(struct plot *plot)
{
	notes_add(&plot->details.around.kept.items[0].notes, memory_string("a note"));
}

static void change_house_count(struct plot *plot)
{
	obstacles_remove(&plot->details.around.houses, 0);
}

static void change_shade_count(struct plot *plot)
{
	obstacles_remove(&plot->details.around.shades, 0);
}

static void change_tie_count(struct plot *plot)
{
	ties_remove(&plot->details.around.ties, 0);
}

static struct plant *rose(struct plot *plot)
{
	return &plot->details.plants.items[0];
}

static void change_plant_letter(struct plot *plot)
{
	rose(plot)->letter = 'o';
}

static void change_plant_name(struct plot *plot)
{
	rose(plot)->name[0] = 'x';
}

static void change_plant_spacing(struct plot *plot)
{
	block_set(&rose(plot)->block, PLANT_SPACING,
		(struct value){ .set = true, .as.length = NM_PER_FOOT });
}

static void change_specimen(struct plot *plot)
{
	rose(plot)->specimens[1].y++;
}

static void change_specimen_count(struct plot *plot)
{
	plant_remove_specimen(rose(plot), 0);
}

static void change_drift_letter(struct plot *plot)
{
	rose(plot)->drifts[0].letter = 0;
}

static void change_drift_at(struct plot *plot)
{
	rose(plot)->drifts[1].at.x++;
}

static void change_drift_band(struct plot *plot)
{
	rose(plot)->drifts[0].band = BAND_BACK;
}

static void change_drift_count(struct plot *plot)
{
	plant_remove_drift(rose(plot), 1);
}

static void change_plant_count(struct plot *plot)
{
	plants_remove(&plot->details.plants, 0);
}

static void (*const changes[])(struct plot *) = { change_cell, change_shape, change_head,
	change_allow, change_attribute, change_name, change_letter, change_class, change_count,
	change_rate, change_extra_count, change_extra_name, change_extra_amount,
	change_extra_unit,
	change_service, change_service_state, change_service_name, change_service_route,
	change_house_name, change_house_cells, change_house_height, change_shade_height,
	change_kept_radius, change_kept_at,
	change_tie_at, change_tie_name, change_tie_length, change_drop, change_no_drop,
	change_tap, change_no_tap,
	change_level, change_finish, change_service_depth, change_route_count,
	change_service_count, change_kept_notes, change_house_count,
	change_shade_count, change_tie_count, change_plant_letter, change_plant_name,
	change_plant_spacing, change_specimen, change_specimen_count, change_drift_letter,
	change_drift_at, change_drift_band, change_drift_count, change_plant_count };

static void with_surroundings(struct plot *plot)
{
	struct surroundings *around = &plot->details.around;
	struct route *route = routes_add(&services_add(&around->services, SERVICE_WATER, false,
		memory_string("Supply"))->routes);

	route_add(route, (struct place){ 0, 1 });
	route_add(route, (struct place){ 2, 1 });
	obstacles_add(&around->houses, memory_string("House"))->cells =
		(struct rectangle){ -4, -3, 2, -2 };
	obstacles_add(&around->shades, memory_string("Limes"))->height = NM_PER_M;
	obstacles_add(&around->kept, memory_string("Pear"))->radius = NM_PER_M;
	ties_add(&around->ties, (struct place){ 0, 0 }, memory_string("Corner"), NM_PER_M);
	around->has_drop = true;
	around->has_tap = true;
	levels_init(&plot->details.levels, NM_PER_M, 2, 2);
}

static void with_rose(struct plot *plot)
{
	struct plant *plant = plants_add(&plot->details.plants, 'r', memory_string("Rose"));

	plant_add_specimen(plant, (struct place){ 0, 0 });
	plant_add_specimen(plant, (struct place){ 1, 0 });
	plant_add_drift(plant, (struct drift){ .letter = 'b', .band = BAND_FRONT });
	plant_add_drift(plant, (struct drift){ .at = { 1, 0 }, .band = BAND_WHOLE });
}

static void with_extra(struct plot *plot)
{
	plot_from_rows(plot, court);
	with_surroundings(plot);
	with_rose(plot);
	details_add_extra(&plot->details, memory_string("String"),
		(struct amount){ 100 * MILLION, AMOUNT_GOODS_FT });
}

START_TEST(plots_that_differ_anywhere_are_not_equal)
{
	struct plot one, other;

	with_extra(&one);
	with_extra(&other);
	ck_assert(plot_equal(&one, &other));
	changes[_i](&other);
	ck_assert(!plot_equal(&one, &other));
	ck_assert(!plot_equal(&other, &one));
	plot_fini(&one);
	plot_fini(&other);
}
END_TEST

/* Damage that plot_check must see, which ends the process by abort(). */
static void damage_letter(struct plot *plot)
{
	plot->ground.cells[0] = 'x';
}

static void damage_twice(struct plot *plot)
{
	details_add_entry(&plot->details, CLASS_BED, 'b', memory_string("Again"));
}

static void damage_class(struct plot *plot)
{
	details_add_entry(&plot->details, CLASS_BED, 'B', memory_string("Capital"));
}

static void damage_block(struct plot *plot)
{
	plot->details.legend[0].block.kind = BLOCK_LAWN;
}

static void damage_name(struct plot *plot)
{
	plot->details.legend[0].name[0] = '\0';
}

static void damage_side(struct plot *plot)
{
	plot->ground.rows = 0;
}

static void damage_required(struct plot *plot)
{
	block_set(&plot->details.head, HEAD_CELL, (struct value){ .set = false });
}

static void damage_range(struct plot *plot)
{
	block_set(&plot->details.allow, ALLOW_BEADS, (struct value){ .set = true, .as.number = 5 });
}

static void damage_axis(struct plot *plot)
{
	plot_set(plot, 0, HEAD_AXIS, "8,1");
}

static void damage_note(struct plot *plot)
{
	notes_add(&plot->details.legend[0].block.notes, memory_string("two\nlines"));
}

static void damage_rate(struct plot *plot)
{
	block_set(&plot->details.rates, RATE_BLOCK, (struct value){ .set = true,
		.as.amount = { MILLION, AMOUNT_H_FT } });
}

static void damage_rates(struct plot *plot)
{
	notes_add(&plot->details.rates.notes, memory_string("a note"));
}

static void damage_extra(struct plot *plot)
{
	details_add_extra(&plot->details, memory_string("Nails"),
		(struct amount){ MILLION, AMOUNT_LB });
}

static void damage_plant(struct plot *plot)
{
	plants_add(&plot->details.plants, 'b', memory_string("Broom"));
}

static void damage_specimen(struct plot *plot)
{
	with_rose(plot);
	plant_add_specimen(rose(plot), (struct place){ 1, 0 });
}

static void damage_specimen_place(struct plot *plot)
{
	with_rose(plot);
	plant_add_specimen(rose(plot), (struct place){ plot->ground.columns, 0 });
}

static void damage_drift(struct plot *plot)
{
	with_rose(plot);
	rose(plot)->drifts[0].letter = 'p';
}

static void (*const damages[])(struct plot *) = { damage_letter, damage_twice, damage_class,
	damage_block, damage_name, damage_side, damage_required, damage_range, damage_axis,
	damage_note, damage_rate, damage_rates, damage_extra, damage_plant, damage_specimen,
	damage_specimen_place, damage_drift };

START_TEST(a_plot_that_cannot_be_is_noticed)
{
	struct plot plot;
	int status;
	pid_t child;

	plot_from_rows(&plot, court);
	plot_check(&plot);
	child = fork();
	if (child == 0) {
		fclose(stderr);
		damages[_i](&plot);
		plot_check(&plot);
		_exit(0);
	}
	ck_assert_int_eq(waitpid(child, &status, 0), child);
	ck_assert(WIFSIGNALED(status) && WTERMSIG(status) == SIGABRT);
	plot_fini(&plot);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("plot");
	TCase *holding = suite_case(suite, "holding"), *comparing = suite_case(suite, "comparing");

	tcase_add_test(holding, an_empty_plot_holds_nothing_and_so_does_a_finished_one);
	tcase_add_test(holding, a_cell_is_found_by_column_and_row);
	tcase_add_test(holding, new_ground_is_open);
	tcase_add_test(holding, a_letter_stands_for_its_entry);
	tcase_add_test(holding, units_and_cell_are_the_heads);
	tcase_add_test(holding, a_class_has_a_word_a_block_and_its_letters);
	tcase_add_test(holding, a_new_entry_has_nothing_set);
	tcase_add_test(comparing, a_copy_of_the_details_is_equal_and_shares_nothing);
	tcase_add_loop_test(comparing, plots_that_differ_anywhere_are_not_equal, 0,
		(int)(sizeof changes / sizeof *changes));
	tcase_add_loop_test(comparing, a_plot_that_cannot_be_is_noticed, 0,
		(int)(sizeof damages / sizeof *damages));
	return suite;
}
