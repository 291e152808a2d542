#include "support/runner.h"
#include "support/garden.h"
#include "prices/good.h"

#include <stdio.h>
#include <string.h>

static const char *const samples[] = { "court", "elbow", "great-court", "ring", "rope-walk", "snags" };

/* A price can be given for whatever a takeoff lists, and the book knows what it is counted in. */
START_TEST(every_row_of_a_takeoff_may_have_a_price)
{
	struct garden garden;
	char path[64];

	snprintf(path, sizeof path, "plots/%s.plot", samples[_i]);
	garden_file(&garden, path);
	garden_count(&garden);
	for (size_t i = 0; i < garden.takeoff.items.count; i++) {
		const struct item *item = &garden.takeoff.items.list[i];
		const struct ware *ware = ware_find(item->id);

		ck_assert_msg(ware, "%s", item->id);
		ck_assert_msg(ware->unit == item->unit, "%s", item->id);
		ck_assert_msg(ware->has_block == !size_is_none(&item->block), "%s", item->id);
	}
	garden_fini(&garden);
}
END_TEST

START_TEST(parts_of_a_mix_are_known_by_any_name)
{
	ck_assert_int_eq(ware_find("soil.topsoil")->density, ALLOW_DENSITY_SOIL);
	ck_assert_int_eq(ware_find("soil.well-rotted-manure")->density, ALLOW_DENSITY_SOIL);
	ck_assert_int_eq(ware_find("soil.compost")->density, ALLOW_DENSITY_COMPOST);
	ck_assert_int_eq(ware_find("mulch")->density, ALLOW_DENSITY_MULCH);
	ck_assert_ptr_null(ware_find("soil."));
	ck_assert_ptr_null(ware_find("soil.two words"));
	ck_assert_ptr_null(ware_find("soil"));
}
END_TEST

START_TEST(a_density_is_there_for_whatever_goes_by_volume_and_for_nothing_else)
{
	static const char *const ids[] = { "block.wall", "block.cap", "adhesive.cartridge",
		"soil.compost", "soil.sand", "mulch", "fence.post", "fence.gravel" };

	for (size_t i = 0; i < sizeof ids / sizeof *ids; i++)
		ck_assert_msg((ware_find(ids[i])->unit == UNIT_M3) ==
			(ware_find(ids[i])->density != NO_DENSITY), "%s", ids[i]);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("ware");
	TCase *wares = suite_case(suite, "wares");

	tcase_add_loop_test(wares, every_row_of_a_takeoff_may_have_a_price, 0,
		sizeof samples / sizeof *samples);
	tcase_add_test(wares, parts_of_a_mix_are_known_by_any_name);
	tcase_add_test(wares, a_density_is_there_for_whatever_goes_by_volume_and_for_nothing_else);
	return suite;
}
