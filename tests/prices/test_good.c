/* The goods: their ids, and that trades and goods agree on what there is. */
#include "base/memory.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"
#include "support/sample_gardens.h"
#include "prices/good.h"

#include <stdio.h>
#include <string.h>

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static void sample(int i)
{
	char path[64];

	snprintf(path, sizeof path, "plots/%s.plot", sample_gardens[i]);
	garden_file(&garden, path);
	garden_count(&garden);
}

/* ---- Of a takeoff ---------------------------------------------------------------------------- */

/* A price can be given for whatever a takeoff lists, and the book knows what it is counted in. */
START_TEST(every_row_of_a_takeoff_may_have_a_price)
{
	sample(_i);
	for (size_t i = 0; i < garden.takeoff.items.count; i++) {
		const struct item *item = &garden.takeoff.items.list[i];
		const char *id = garden_id(&garden, item), *name;
		const struct good_row *row;
		enum good good;

		ck_assert_msg(good_find(id, &good, &name), "%s", id);
		ck_assert_msg(good == item->good, "%s", id);
		row = good_row(good);
		ck_assert_str_eq(name, row->varies == VARIES_BY_TITLE ? "" : item->name);
		ck_assert_msg(good == GOOD_EXTRA || row->unit == item_unit(item), "%s", id);
		ck_assert_msg((row->varies == VARIES_BY_BLOCK) == !size_is_none(&item->block), "%s",
			id);
		ck_assert_msg((row->varies == VARIES_BY_POST || row->varies == VARIES_BY_PANEL) ==
			(item->length > 0), "%s", id);
		ck_assert_msg((row->varies == VARIES_BY_PANEL) == (item->height > 0), "%s", id);
		ck_assert_msg((row->varies == VARIES_BY_POST) == (item->across > 0), "%s", id);
		ck_assert_msg((row->varies == VARIES_BY_NAME || row->varies == VARIES_BY_TITLE) ==
			(item->name[0] != '\0'), "%s", id);
	}
}
END_TEST

static void mark_goods(bool met[GOODS])
{
	for (size_t i = 0; i < garden.takeoff.items.count; i++)
		met[garden.takeoff.items.list[i].good] = true;
}

/* Capped beds of any mix, paths of either stone, turf and seed, a pad. */
static void garden_of_ground(void)
{
	garden_rows(&garden, (const char *const[]){ "bbbbbbbb.ppq", "bbbbbbbb.ppq", "bbbbbbbb.llm",
		"bbbbbbbb.llS", NULL });
	plot_set(&garden.plot, 'b', BED_CAP, "1 ft x 8 in x 2 in");
	plot_set(&garden.plot, 'b', BED_MIX, "topsoil 1, compost 1, grit 1");
	plot_set(&garden.plot, 'q', PATH_STONE, "clean");
	plot_set(&garden.plot, 'm', LAWN_COVER, "seed");
	garden_count(&garden);
}

/* A fence with a gate of one leaf and one of two, and goods nobody can reckon. */
static void garden_of_fences(void)
{
	fences_ground(&garden.plot, 60, 20);
	fences_run(&garden.plot, "1,5 41,5");
	fences_gate(&garden.plot, "5,5 8,5");
	fences_gate(&garden.plot, "20,5 30,5");
	fences_set(&garden.plot, FENCE_GRAVEL, "6 in");
	details_add_extra(&garden.plot.details, memory_string("Paint"),
		(struct amount){ 2 * MILLION, AMOUNT_GOODS_EACH });
	garden_count(&garden);
}

/* Ground a foot lower than it is to be finished. */
static void garden_of_low_ground(void)
{
	garden_rows(&garden, (const char *const[]){ "llll", "llll", NULL });
	plot_add_lines(&garden.plot, "levels 4 ft\n  1 ft, 1 ft\n  1 ft, 1 ft\nfinish 0,0 0 in\n");
	garden_count(&garden);
}

static void garden_of_plants(void)
{
	garden_rows(&garden, (const char *const[]){ "..", "..", NULL });
	plot_add_lines(&garden.plot, "plant r \"Rose\"\n  at 1,1\n");
	garden_count(&garden);
}

/* No identity is left over from a trade that is gone, or waits for one that is not there. */
START_TEST(every_good_is_some_trades)
{
	bool met[GOODS] = { false };

	for (int i = 0; i < SAMPLE_GARDENS; i++) {
		sample(i);
		mark_goods(met);
		garden_fini(&garden);
	}
	garden_of_ground();
	mark_goods(met);
	garden_fini(&garden);
	garden_of_fences();
	mark_goods(met);
	garden_fini(&garden);
	garden_of_low_ground();
	mark_goods(met);
	garden_fini(&garden);
	garden_of_plants();
	mark_goods(met);
	garden_fini(&garden);
	garden_file(&garden, "tests/plots/watered.plot");
	garden_count(&garden);
	mark_goods(met);
	for (int good = 0; good < GOOD_EXTRA; good++)
		ck_assert_msg(met[good], "no takeoff lists %s", good_row((enum good)good)->id);
}
END_TEST

/* ---- Ids ------------------------------------------------------------------------------------- */

static const char *id_of(enum good good, const char *name)
{
	static char id[64];
	struct text text = TEXT_EMPTY;

	good_add_id(&text, good, name);
	snprintf(id, sizeof id, "%s", text.bytes);
	text_fini(&text);
	return id;
}

START_TEST(every_good_is_found_by_its_id_and_no_two_share_one)
{
	for (int i = 0; i < GOODS; i++) {
		bool is_named = good_row((enum good)i)->varies == VARIES_BY_NAME;
		const char *id = id_of((enum good)i, is_named ? "sharp-sand" : ""), *name;
		enum good found;

		ck_assert_msg(good_find(id, &found, &name), "%s", id);
		ck_assert_msg((int)found == i, "%s", id);
		ck_assert_str_eq(name, is_named ? "sharp-sand" : "");
		/* Goods of the plot's own, and plants, have their name there. */
		ck_assert_msg((is_named || i == GOOD_EXTRA || i == GOOD_PLANT) ==
			(good_row(found)->label == NULL), "%s", id);
		for (int j = 0; j < i; j++)
			ck_assert_str_ne(good_row((enum good)j)->id, good_row((enum good)i)->id);
	}
}
END_TEST

static enum attribute density_of(const char *id)
{
	enum good good;
	const char *name;

	ck_assert_msg(good_find(id, &good, &name), "%s", id);
	return good_density(good, name);
}

static bool is_known(const char *id)
{
	enum good good;
	const char *name;

	return good_find(id, &good, &name);
}

START_TEST(parts_of_a_mix_are_known_by_any_name)
{
	ck_assert_int_eq(density_of("soil.topsoil"), ALLOW_DENSITY_SOIL);
	ck_assert_int_eq(density_of("soil.well-rotted-manure"), ALLOW_DENSITY_SOIL);
	ck_assert_int_eq(density_of("soil.sand"), ALLOW_DENSITY_STONE);
	ck_assert_int_eq(density_of("soil.washed-sharp-sand"), ALLOW_DENSITY_STONE);
	ck_assert_int_eq(density_of("soil.sand-loam"), ALLOW_DENSITY_SOIL);
	ck_assert_int_eq(density_of("soil.compost"), ALLOW_DENSITY_COMPOST);
	ck_assert_int_eq(density_of("spoil"), ALLOW_DENSITY_SPOIL);
	ck_assert_int_eq(density_of("mulch"), ALLOW_DENSITY_MULCH);
	ck_assert(!is_known("soil."));
	ck_assert(!is_known("soil.two words"));
	ck_assert(!is_known("soil"));
}
END_TEST

START_TEST(a_part_of_a_mix_is_the_good_that_its_id_names)
{
	static const char *const parts[] = { "compost", "topsoil", "sharp-sand" };

	for (size_t i = 0; i < sizeof parts / sizeof *parts; i++) {
		enum good good = good_of_soil(parts[i]), found;
		char id[32];
		const char *name;

		snprintf(id, sizeof id, "soil.%s", parts[i]);
		ck_assert_str_eq(id_of(good, parts[i]), id);
		ck_assert(good_find(id, &found, &name));
		ck_assert_int_eq(found, good);
	}
}
END_TEST

START_TEST(a_density_is_there_for_whatever_goes_by_volume_and_for_nothing_else)
{
	for (int i = 0; i < GOODS; i++) {
		const struct good_row *row = good_row((enum good)i);

		ck_assert_msg((row->unit == UNIT_M3) == (row->density != NO_DENSITY), "%s",
			row->id);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("good");
	TCase *trades = suite_case(suite, "trades"), *ids = suite_case(suite, "ids");

	tcase_add_checked_fixture(trades, NULL, teardown);
	tcase_add_loop_test(trades, every_row_of_a_takeoff_may_have_a_price, 0, SAMPLE_GARDENS);
	tcase_add_test(trades, every_good_is_some_trades);
	tcase_add_test(ids, every_good_is_found_by_its_id_and_no_two_share_one);
	tcase_add_test(ids, parts_of_a_mix_are_known_by_any_name);
	tcase_add_test(ids, a_part_of_a_mix_is_the_good_that_its_id_names);
	tcase_add_test(ids, a_density_is_there_for_whatever_goes_by_volume_and_for_nothing_else);
	return suite;
}
